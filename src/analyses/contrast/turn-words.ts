import type { Turn } from '../contract.ts';
import {
  inSentence,
  printCount,
  printLevel,
  printList,
  printNumber,
  printP,
  printQuantity,
} from '../phrasing.ts';
import type { GuardVerdict } from '../shared/guard/found.ts';
import { conditionTurns, unseenTurn } from '../shared/guard/turn-words.ts';
import type { AskedOtherwise, AttributeContrast, ContrastFound } from './found.ts';
import { missingTurn } from './missing-words.ts';
import { strongestOf } from './strongest.ts';
import { togetherTurns } from './together-words.ts';

/** What would change the verdicts, what was tried and does first. */
export function turnsOf(found: ContrastFound): Turn[] {
  const { attributes, kinds, together } = found;
  const turns = likewise(
    attributes.flatMap((contrast) =>
      attributeTurns(found, contrast).map((turn) => ({
        ...turn,
        of: inSentence(contrast.samples.attribute.label),
      })),
    ),
  );
  turns.push(...unseenTurns(attributes));
  if (kinds.length > 0)
    turns.push({
      what: `${printList(kinds.map(inSentence))} ${kinds.length === 1 ? 'is' : 'are'} of kinds`,
      size: 'compared only together with the other attributes; a crosstab shows the counts',
      overturns: false,
    });
  if (together !== null && !('why' in together)) turns.push(...togetherTurns(together));
  return [...turns].sort((a, b) => Number(b.overturns) - Number(a.overturns));
}

/** What could not be looked at, in one line for all attributes; of some only, it is said of which. */
function unseenTurns(attributes: readonly AttributeContrast[]): Turn[] {
  const seen = attributes.flatMap(({ guard, samples }) =>
    guard.unseen.map(({ id, label, verdict }) => ({
      id,
      label,
      verdict,
      of: inSentence(samples.attribute.label),
    })),
  );
  const once = [...new Map(seen.map((one) => [`${one.verdict} ${one.id}`, one])).values()].map((one) => {
    const of = seen
      .filter(({ id, verdict }) => id === one.id && verdict === one.verdict)
      .map((also) => also.of);
    const where = of.length === attributes.length ? '' : ` (of finds with ${printList(of)})`;
    return { label: `${one.label}${where}`, verdict: one.verdict };
  });
  const by = (wanted: GuardVerdict) => once.filter(({ verdict }) => verdict === wanted);
  return unseenTurn(by('unknown'), by('scarce'));
}

/** A doubt on one attribute, with what it is about: said once where several attributes share it. */
interface Doubt extends Turn {
  readonly about: string;
}

/** Doubts of one sort are said of the first attribute in full, and named for the others. */
function likewise(doubts: readonly (Doubt & { readonly of: string })[]): Turn[] {
  const sorts = [...new Set(doubts.map(({ about }) => about))];
  return sorts.map((about) => {
    const [{ what, size, overturns }, ...others] = doubts.filter((doubt) => doubt.about === about);
    const also = [...new Set(others.map(({ of }) => of))].filter((name) => !what.includes(name));
    return { what, overturns, size: also.length === 0 ? size : `${size}; likewise ${printList(also)}` };
  });
}

function attributeTurns(found: ContrastFound, contrast: AttributeContrast): Doubt[] {
  const { samples, hangsOn, further, told, tied, leastP, trend, shared } = contrast;
  const name = inSentence(samples.attribute.label);
  const said = (about: string, what: string, size: string): Doubt => ({
    about,
    what,
    size,
    overturns: false,
  });
  const turns: Doubt[] = hangsOn.map((other) => ({
    ...overturning(name, other),
    about: `${name} ${other.what}`,
  }));
  const spread = further.find(({ question }) => question === 'spread');
  if (told === 'told apart' && spread?.told === 'told apart' && !('why' in spread.answer))
    turns.push(
      said(
        'spread',
        `the groups spread unequally in ${name}`,
        `Brown-Forsythe F ${printNumber(spread.answer.statistic)}, ${printP(spread.answer.p)}; ${withstood(contrast)}`,
      ),
    );
  turns.push(
    ...conditionTurns(contrast.guard, habit(contrast)).map((turn) => ({
      ...turn,
      about: `${turn.what} ${turn.overturns ? name : ''}`,
    })),
  );
  turns.push(...missingTurn(contrast).map(({ what, size }) => said(`missing ${name}`, what, size)));
  if (leastP !== null)
    turns.push(
      said(
        'least p',
        `so few items (${printList(samples.tested.map(({ points }) => String(points.count)))}) allow no p below ${printNumber(leastP, 2)} in ${name}`,
        `it could not be told apart at ${printLevel(found.options.confidence)}`,
      ),
    );
  const few = samples.tested.filter(({ quotable }) => !quotable);
  if (few.length > 0)
    turns.push(
      said(
        'few items',
        `few items with ${name} in ${printList(few.map(({ label, points }) => `${label} (${points.count})`))}`,
        'tested, but not quoted',
      ),
    );
  const single = samples.groups.filter((group) => !samples.tested.includes(group)).map(({ label }) => label);
  if (single.length > 0)
    turns.push(
      said('single items', `a single item with ${name} in ${printList(single)}`, 'shown, but not tested'),
    );
  if (tied !== null)
    turns.push(
      said(
        'ties',
        `readings of ${name} are rounded or graded`,
        `${Math.round(tied * 100)} % equal another; the tests correct for ties but lose power by them`,
      ),
    );
  if (shared) {
    const fragments = samples.tested.reduce((sum, group) => sum + group.points.values.length, 0);
    const items = samples.tested.reduce((sum, group) => sum + group.points.count, 0);
    turns.push(
      said(
        'items',
        `several fragments with ${name} are of one item`,
        `${fragments} fragments of ${items} items, which were dealt and drawn whole`,
      ),
    );
  }
  if (samples.straddling > 0)
    turns.push(
      said(
        'straddling',
        `${printCount(samples.straddling, 'item')} ${samples.straddling === 1 ? 'has' : 'have'} fragments in more than one group`,
        'taken as one thing in each',
      ),
    );
  if (trend !== null && 'why' in trend)
    turns.push(said('trend', `no trend of ${name} was tested`, trend.why));
  if (trend !== null && !('why' in trend))
    turns.push(
      said(
        'dates',
        `the dates come in ${printCount(trend.spans, 'distinct span')}`,
        'a trend rests on so many dates, whatever the number of items',
      ),
    );
  return turns;
}

function overturning(name: string, { change, what, answer, told }: AskedOtherwise): Turn {
  const how = {
    'ends of the readings': `with ${what} of ${name}`,
    'spreads may differ': `where spreads of ${name} may differ (${what})`,
    'a group left out': `with ${what} left out of ${name}`,
    'small groups left out': `with groups of few items left out of ${name} (${what})`,
  }[change];
  return {
    what: how,
    size: `the groups are ${told}${'why' in answer ? '' : ` (${printP(answer.p)})`}`,
    overturns: true,
  };
}

/** Whether a test that takes no equal spreads for granted agrees. */
function withstood({ otherwise, told }: AttributeContrast): string {
  const other = otherwise.find(({ change }) => change === 'spreads may differ');
  if (other === undefined || 'why' in other.answer) return 'a difference of place may then be one of spread';
  return other.told === told
    ? `a test that allows for it agrees (${printP(other.answer.p)})`
    : 'a difference of place may then be one of spread';
}

/** How large a habit of one recorder would have to be. */
function habit(contrast: AttributeContrast): string {
  const widest = strongestOf(contrast.pairs.filter(({ told }) => told === 'told apart'));
  const unit = contrast.samples.attribute.unit ?? '';
  if (widest === undefined || 'why' in widest.shift) return '';
  const [first, second] = [widest.first, widest.second].map((place) => contrast.samples.tested[place].label);
  return `a habit of reading ${printQuantity(Math.abs(widest.shift.estimate), unit, 2)} more or less would look the same (${first} against ${second})`;
}
