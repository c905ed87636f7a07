import type { Answer, Turn } from '../contract.ts';
import {
  firstShort,
  inSentence,
  printCount,
  printLevel,
  printList,
  printNumber,
  printP,
  printSmall,
  printSome,
} from '../phrasing.ts';
import type { Change, JudgedLabel, LabelSet, Move, Novelty, PlacementFound } from './found.ts';

/** Which labels may hold the find, at which level, and from how much; never what the find is. */
export function placementWords(found: PlacementFound): Answer {
  if (found.unplaced !== null) return unplaced(found, found.unplaced);
  return {
    answer: answerOf(found),
    because: because(found),
    unless: [...fragile(found), ...doubts(found)],
    next: next(found),
  };
}

function unplaced({ notes, lacking }: PlacementFound, why: string): Answer {
  return {
    answer: firstShort([
      `where the find belongs cannot be told: ${why}.`,
      'where the find belongs cannot be told.',
    ]),
    because: notes.slice(0, 4).map(sentenceOf),
    unless: [],
    next: [
      lacking.length > 0
        ? `Give at least one of what the comparanda record: ${printSome(lacking, 8)}.`
        : 'Bring comparanda that record what is known of the find.',
    ],
  };
}

const sentenceOf = (note: string): string => (/[.!?]$/.test(note) ? note : `${note}.`);

const askedSets = ({ sets }: PlacementFound) => sets.filter(({ asked }) => asked);

function answerOf(found: PlacementFound): string {
  const [first, ...others] = askedSets(found);
  if (first === undefined)
    return firstShort(['where the find belongs cannot be told: the comparanda carry no labels to judge.']);
  const hangs = found.moves.some((move) => move.fragile && move.verdict === 'excluded')
    ? ', as finds are weighed and recorded here'
    : '';
  const rest = others.map((set) => inShort(found, set));
  const said = (most: number, more: readonly string[]) =>
    `${[leading(found, first, most), ...more].join('; ')}${hangs}.`;
  return firstShort([
    ...[rest, rest.slice(0, 2), rest.slice(0, 1), []].map((more) => said(4, more)),
    ...[rest, rest.slice(0, 2), []].map((more) => said(0, more)),
  ]);
}

/** "by site three of six cannot be excluded at 90 % (A, B and C)"; without names where there are more than `most`. */
function leading(found: PlacementFound, set: LabelSet, most: number): string {
  const by = `by ${inSentence(set.attribute)}`;
  const at = `at ${printLevel(set.level)}`;
  const left = [...set.kept, ...set.tooFew];
  const all = left.length + set.excluded.length;
  if (set.kept.length === 0 && set.excluded.length === 0)
    return `${by} nothing can be told: all ${printSmall(all)} have too few ${set.by} to judge ${at}`;
  if (set.kept.length === 0) return `${by} ${nothingKept(set, noveltyOf(found, set), most)}`;
  if (set.excluded.length === 0) return `${by} none of ${printSmall(all)} can be excluded ${at}`;
  const names = left.length <= most ? ` (${printList(left)})` : '';
  return `${by} ${printSmall(left.length)} of ${printSmall(all)} cannot be excluded ${at}${names}`;
}

/** "region two of three", for the attributes after the first. */
function inShort(found: PlacementFound, set: LabelSet): string {
  const by = `by ${inSentence(set.attribute)}`;
  const left = set.kept.length + set.tooFew.length;
  const all = left + set.excluded.length;
  if (set.kept.length === 0 && set.excluded.length > 0)
    return `${by} ${nothingKept(set, noveltyOf(found, set), 0)}`;
  if (set.kept.length === 0) return `${by} all ${printSmall(all)} have too few ${set.by}`;
  return `${by} ${set.excluded.length === 0 ? `all ${printSmall(all)}` : `${printSmall(left)} of ${printSmall(all)}`}`;
}

const noveltyOf = ({ novelty }: PlacementFound, { attribute }: LabelSet) =>
  novelty.find((one) => one.attribute === attribute);

function nothingKept(set: LabelSet, novelty: Novelty | undefined, most: number): string {
  if (set.tooFew.length > 0)
    return set.tooFew.length <= most
      ? `only ${printList(set.tooFew)} ${set.tooFew.length === 1 ? 'is' : 'are'} left, of too few ${set.by} to exclude`
      : `only ${printSmall(set.tooFew.length)} of too few ${set.by} to exclude are left`;
  return novelty?.verdict === 'none of these'
    ? `it is unlike all ${printSmall(set.excluded.length)} known here`
    : `all ${printSmall(set.excluded.length)} are unlikely, though not all excluded at the stricter level`;
}

/** Attributes of labels whose evidence is given. */
const MOST_ATTRIBUTES = 3;
/** Labels that a line of evidence names. */
const MOST_NAMED = 5;

function because(found: PlacementFound): string[] {
  const { neighbours, comparedOn, n, unit, options } = found;
  const near = neighbours
    .slice(0, 3)
    .map(({ id, assemblage, distance }) =>
      assemblage === ''
        ? `${id} (distance ${printNumber(distance, 2)})`
        : `${id} (${assemblage}, distance ${printNumber(distance, 2)})`,
    );
  const among = printCount(unit === 'item' ? n.items : n.fragments, unit);
  const standing = found.standsFor === 'one fragment an item' ? ', each by one of its fragments' : '';
  return [
    `Nearest of ${among}${standing}, compared on ${printCount(comparedOn.length, 'attribute')}: ${printList(near)}.`,
    ...askedSets(found)
      .slice(0, MOST_ATTRIBUTES)
      .map(
        (set) => `${set.attribute} at ${printLevel(options.level)}: ${printParts(found, set).join('; ')}.`,
      ),
  ];
}

function printParts(found: PlacementFound, set: LabelSet): string[] {
  const pOf = (label: string) => {
    const judged = found.judged.find((one) => one.attribute === set.attribute && one.label === label);
    return judged === undefined ? label : withP(judged);
  };
  return [
    ...(set.kept.length === 0 ? [] : [`not excluded ${printSome(set.kept.map(pOf), MOST_NAMED)}`]),
    ...(set.tooFew.length === 0
      ? []
      : [
          `too few ${set.by} to exclude ${printSome(
            set.tooFew.map((label) => withCount(found, set, label)),
            MOST_NAMED,
          )}`,
        ]),
    ...(set.excluded.length === 0 ? [] : [`excluded ${printSome(set.excluded.map(pOf), MOST_NAMED)}`]),
  ];
}

function withCount(found: PlacementFound, set: LabelSet, label: string): string {
  const judged = found.judged.find((one) => one.attribute === set.attribute && one.label === label);
  return judged === undefined ? label : `${label} (${judged.judgedBy})`;
}

const withP = ({ label, outcome }: JudgedLabel): string =>
  'why' in outcome ? label : `${label} (${printP(outcome.p)}, n = ${outcome.n})`;

const CHANGED: Readonly<Record<Change, string>> = {
  'its own ranges': 'the find’s values moved within their ranges',
  'other weights': 'a block counted double or not at all',
  'an assemblage left out': 'an assemblage left out',
};

/** Verdicts that were seen to turn, labels that would come in first: they are what an exclusion hangs on. */
function fragile({ moves }: PlacementFound): Turn[] {
  const turns = moves.filter((move) => move.fragile);
  const groups = (['excluded', 'cannot be excluded', 'too few to judge'] as const).flatMap((verdict) =>
    (Object.keys(CHANGED) as Change[]).map((change) => ({
      verdict,
      change,
      own: turns.filter((move) => move.verdict === verdict && move.change === change),
    })),
  );
  return groups
    .filter(({ own }) => own.length > 0)
    .map(({ verdict, change, own }) => ({
      what: `with ${CHANGED[change]}`,
      size: `${printSome(own.map(turned), 4)} ${verdict === 'excluded' ? 'would come in' : 'would drop out or be too few to judge'}`,
      overturns: true,
    }));
}

function turned({ label, by, turned: times, tried }: Move): string {
  return by.length > 0 && by.length <= 2 ? `${label} (${printList(by)})` : `${label} (${times} of ${tried})`;
}

function doubts(found: PlacementFound): Turn[] {
  const { lacking, percentiles, judged, circular, options, n } = found;
  const turns: Turn[] = found.notes.map((note) => ({ what: sentenceOf(note), size: '', overturns: false }));
  for (const { label, by, bounds } of percentiles)
    if (by === '' && !('why' in bounds) && bounds.outside !== null)
      turns.push({
        what: `${inSentence(label)} lies ${bounds.outside} everything recorded`,
        size: `n = ${bounds.n}`,
        overturns: false,
      });
  if (circular.length > 0)
    turns.push({
      what: `${printList(circular.map(inSentence))} ${circular.length === 1 ? 'is' : 'are'} also compared`,
      size: 'those labels are judged by themselves',
      overturns: false,
    });
  if (found.standsFor === 'dependent fragments')
    turns.push({
      what: 'fragments of one item are not independent',
      size: `${n.fragments} fragments come from ${n.items} items, so p values are too sure`,
      overturns: false,
    });
  if (found.judged.some(({ by }) => by === 'sites'))
    turns.push({
      what: `the find may come from another site, so that ${printList([...new Set(found.judged.filter(({ by }) => by === 'sites').map(({ attribute }) => inSentence(attribute)))])} ${new Set(found.judged.filter(({ by }) => by === 'sites').map(({ attribute }) => attribute)).size === 1 ? 'is' : 'are'} judged by whole sites`,
      size: 'were it from a site of the study, single records would judge',
      overturns: false,
    });
  if (lacking.length > 0)
    turns.push({
      what: `not known of the find, and so not compared`,
      size: printSome(lacking.map(inSentence), 6),
      overturns: false,
    });
  const drawn = judged.filter(({ size, judgedBy, by }) => by === 'records' && judgedBy !== size);
  if (drawn.length > 0)
    turns.push({
      what: `${printCount(drawn.length, 'label')} with many records ${drawn.length === 1 ? 'was' : 'were'} judged by a draw`,
      size: `${options.calibration} records each`,
      overturns: false,
    });
  return turns;
}

/** The measurement that is expected to leave fewest labels. */
function next({ next: measurements }: PlacementFound): string[] {
  const [best] = [...measurements].sort((a, b) => b.now - b.expected - (a.now - a.expected));
  if (best === undefined || printNumber(best.expected, 2) === printNumber(best.now, 2)) return [];
  return [
    `Measure ${inSentence(best.label)}: of ${inSentence(best.of)} about ${printNumber(best.expected, 2)} would be left instead of ${printNumber(best.now, 2)}.`,
  ];
}
