import type { Answer, Turn } from '../contract.ts';
import { oneSentence } from '../one-sentence.ts';
import {
  inSentence,
  printCount,
  printLevel,
  printList,
  printNumber,
  printP,
  printSmall,
  printSome,
} from '../phrasing.ts';
import { besideTurns } from '../shared/guard/turn-words.ts';
import { sayFolds, sayTooBroad } from '../shared/level/said.ts';
import { printSlice } from '../years.ts';
import type { ChangeInTime, ChronologyFound } from './found.ts';

/** Which kinds come later or earlier, and what that hangs on. */
export function chronologyWords(found: ChronologyFound): Answer {
  return { answer: sentence(found), because: evidence(found), unless: turns(found), next: next(found) };
}

/** Kinds that could be judged, the largest effect first. */
function largest({ changes }: ChronologyFound): ChangeInTime[] {
  const size = ({ delta }: ChangeInTime) => (typeof delta === 'number' ? Math.abs(delta) : 0);
  return changes.filter(({ verdict }) => verdict !== 'cannot be told').sort((a, b) => size(b) - size(a));
}

/** Those that come later or earlier. */
const changing = (found: ChronologyFound) =>
  largest(found).filter(({ verdict }) => verdict !== 'not told apart');

function sentence(found: ChronologyFound): string {
  const { verdict, kindsLabel, placesLabel, all, unit, changes } = found;
  const kinds = inSentence(kindsLabel);
  const place = inSentence(placesLabel);
  const told = changing(found);
  if (all.n === 0) return oneSentence([`cannot be told: no ${unit} has a date with both ends`]);
  if (verdict === 'cannot be told')
    return oneSentence([
      `cannot be told which ${kinds} comes later or earlier: ${whyNot(changes)}`,
      `cannot be told which ${kinds} comes later or earlier`,
    ]);
  if (verdict === 'none') {
    const judged = changes.filter((one) => one.verdict !== 'cannot be told').length;
    return oneSentence([
      judged === 1
        ? `${changes.find((one) => one.verdict !== 'cannot be told')?.label} is not shown to come later or earlier than the others`
        : `none of ${printSmall(judged)} kinds is shown to come later or earlier than the others`,
    ]);
  }
  if (verdict === 'across places') {
    return oneSentence([
      `on the whole ${sayAll(told, 2)}, but not shown within one ${place}`,
      `on the whole ${sayAll(told, 1)}, but not shown within one ${place}`,
      `on the whole ${printSmall(told.length)} kinds come later or earlier, but not shown within one ${place}`,
    ]);
  }
  const held = told.filter((one) => one.verdict === 'later' || one.verdict === 'earlier');
  const inside = told.filter((one) => one.verdict.endsWith('within places'));
  const across = told.length - held.length - inside.length;
  if (held.length === 0)
    return oneSentence([
      `within one ${place} ${sayAll(inside, 2)}, but not on the whole`,
      `within one ${place} ${sayAll(inside, 1)}, but not on the whole`,
    ]);
  return oneSentence(
    [`${sayAll(held, 2)}, also within one ${place}`, `${sayAll(held, 1)}, also within one ${place}`],
    across + inside.length === 0
      ? ['; of no other kind is it shown']
      : [`; of ${printSmall(across + inside.length)} more it hangs on the ${place}`],
  );
}

function whyNot(changes: readonly ChangeInTime[]): string {
  const [one] = changes;
  if (one === undefined) return 'no kind is recorded of what is dated';
  return typeof one.p === 'number' ? 'too few are dated' : one.p.why;
}

const way = ({ verdict }: ChangeInTime) => (verdict.startsWith('later') ? 'later' : 'earlier');

/** "open twining and netting come earlier and tabby comes later". */
function sayAll(changes: readonly ChangeInTime[], most: number): string {
  const sides = (['earlier', 'later'] as const).flatMap((side) => {
    const own = changes.filter((one) => way(one) === side).map(({ label }) => label);
    if (own.length === 0) return [];
    return [`${printSome(own, most)} ${own.length === 1 ? 'comes' : 'come'} ${side}`];
  });
  return printList(sides);
}

function evidence(found: ChronologyFound): string[] {
  const { all, edges, peak, options, unit, spans, phases } = found;
  const told = changing(found);
  const lines = (told.length > 0 ? told.slice(0, 2) : largest(found).slice(0, 1)).map((one) =>
    changeSaid(found, one),
  );
  if (peak !== null) {
    const { expected, apart } = all.slices[peak];
    lines.push(
      `Most fall in ${printSlice(edges[peak], edges[peak + 1])}: ${printNumber(expected)} of ${printCount(all.n, unit)}, ${printLevel(options.confidence)} limits ${apart.low} to ${apart.high}.`,
    );
  }
  const overlapping = phases.filter(({ order }) => order === 'overlaps').length;
  if (phases.length > 1)
    lines.push(
      overlapping === 0
        ? `${printList(phases.map(({ label }) => label))} follow each other without a year in common.`
        : `The order of ${printCount(overlapping, inSentence(found.phasesLabel))} of ${phases.length} cannot be told, since their years overlap.`,
    );
  else if (spans.places.length > 1)
    lines.push(
      `Half made earliest: ${spans.places[0].label}; latest: ${spans.places[spans.places.length - 1].label}.`,
    );
  return lines;
}

function changeSaid({ placesLabel }: ChronologyFound, change: ChangeInTime): string {
  const { label, n, delta, pAdjusted, within } = change;
  const [places] = within;
  const inside =
    places === undefined || typeof places.delta !== 'number'
      ? ''
      : `; within one ${inSentence(placesLabel)} ${printNumber(places.delta)}${typeof places.pAdjusted === 'number' ? `, ${printP(places.pAdjusted)}` : ''}`;
  const start = `${label.charAt(0).toUpperCase()}${label.slice(1)}`;
  return typeof delta === 'number' && typeof pAdjusted === 'number'
    ? `${start}: Cliff’s delta of its date ${printNumber(delta)} (positive is later), n = ${n}, ${printP(pAdjusted)} adjusted${inside}.`
    : `${start}: n = ${n}.`;
}

function turns(found: ChronologyFound): Turn[] {
  const { distinct, shared, all, unit, peak, edges, level, outside, placesLabel } = found;
  const told = changing(found);
  const list: Turn[] = [];
  const across = told.filter(({ verdict }) => verdict.endsWith('across places'));
  if (across.length > 0)
    list.push({
      what: `within one ${inSentence(placesLabel)}`,
      size: `no change is shown of ${printSome(
        across.map(({ label }) => label),
        3,
      )}`,
      overturns: true,
    });
  for (const [at, { label }] of (told[0]?.within ?? []).entries()) {
    if (at === 0) continue;
    const lost = told.filter(
      ({ told: whole, within }) => whole === 'told apart' && within[at].told !== 'told apart',
    );
    list.push({
      what: `within one ${inSentence(label)}`,
      size:
        lost.length === 0
          ? 'the changes are shown as well'
          : `no change is shown of ${printSome(
              lost.map((one) => one.label),
              3,
            )}`,
      overturns: lost.length > 0,
    });
  }
  const moved = found.changes.filter(({ drawn }) => !('why' in drawn) && drawn.overturns);
  if (moved.length > 0)
    list.push({
      what: 'dates drawn within the spans',
      size: printSome(
        moved.flatMap(({ label, drawn }) =>
          'why' in drawn ? [] : [`${label} is told otherwise in ${drawn.otherwise} of ${drawn.draws} draws`],
        ),
        3,
      ),
      overturns: moved.some(({ told: own }) => own === 'told apart'),
    });
  if (peak !== null) {
    const { together } = all.slices[peak];
    list.push({
      what: `were all ${unit}s of one place and span made together`,
      size: `${printSlice(edges[peak], edges[peak + 1])} could hold ${together.low} to ${together.high}`,
      overturns: false,
    });
  }
  if (all.n > 0 && distinct < all.n)
    list.push({
      what: `${shared === all.n ? 'all' : shared} of ${printCount(all.n, unit)} share ${distinct <= 5 ? printCount(distinct, 'span') : 'five spans'}`,
      size: 'a step between slices may be one between the labels of phases',
      overturns: false,
    });
  if (outside > 0)
    list.push({
      what: `${printCount(outside, unit)} outside the slices`,
      size: 'they are in no count of a slice',
      overturns: false,
    });
  if (level.differs && level.folds.length > 0)
    list.push({ what: 'what is compared', size: sayFolds(level), overturns: false });
  if (level.tooBroad.length > 0)
    list.push({ what: 'left out', size: sayTooBroad(level, unit), overturns: false });
  list.push(...besideTurns(found.beside, 'a change, or the lack of one,'));
  return list.sort((a, b) => Number(b.overturns) - Number(a.overturns));
}

function next({ n, all, unit, byPhase }: ChronologyFound): string[] {
  const lacking = n.setAside.reduce((sum, { fragments }) => sum + fragments, 0);
  if (all.n === 0) return ['Give spans of years, from the phase or the context of each find.'];
  if (lacking > n.fragments)
    return [
      `Date more: only ${printCount(n.fragments, 'fragment')} of ${n.fragments + lacking} have closed dates.`,
    ];
  return byPhase ? [`Date single ${unit}s more closely than their phase.`] : [];
}
