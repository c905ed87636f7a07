import type { Turn } from '../contract.ts';
import { inSentence, printCount, printList, printNumber, printSome } from '../phrasing.ts';
import { guardTurns } from '../shared/guard/turn-words.ts';
import type { BroadFound, KindOfChange, LessKnown, Move, PlacementFound } from './found.ts';

export const sentenceOf = (note: string): string => (/[.!?]$/.test(note) ? note : `${note}.`);

const CHANGED: Readonly<Record<KindOfChange, string>> = {
  'its own ranges': 'the find’s values moved within their ranges',
  'broad terms': 'broad terms read otherwise',
  'other weights': 'a block counted double or not at all',
  'an assemblage left out': 'an assemblage left out',
  'complete records alone': 'only those records that lack nothing of what the find has',
};

/** Verdicts that were seen to turn, labels that would come in first: they are what an exclusion hangs on. */
export function fragile({ moves }: PlacementFound): Turn[] {
  const turns = moves.filter((move) => move.fragile);
  const groups = (['excluded', 'cannot be excluded', 'too few to judge'] as const).flatMap((verdict) =>
    (Object.keys(CHANGED) as KindOfChange[]).map((change) => ({
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

/** Broad terms: whether the nearest comparanda stay what they are. */
function nearestTurn({ terms, more, nearest }: BroadFound, listed: number): Turn {
  const size = {
    stay: 'the nearest comparanda stay the nearest, in their order',
    'order may differ': `the nearest ${listed} stay, in another order perhaps`,
    'others may be nearer': `${printCount(more, 'more comparandum', 'more comparanda')} may be among the nearest ${listed}`,
  };
  return {
    what: `with broad terms (${printSome(terms, 4)}) read as near or as far as they allow`,
    size: size[nearest],
    overturns: false,
  };
}

/** The nearest, where less is known of them than of others, and who is nearest of those of whom as much is known. */
function lessKnownTurn({ named, shared, others, of, lacking, whole }: LessKnown): Turn {
  const [has, have] = [shared, others].map((mean) => printNumber(mean, 2));
  const among =
    whole === null
      ? 'every comparandum lacks something'
      : `nearest of those that lack nothing: ${whole.id} (${whole.assemblage === '' ? '' : `${whole.assemblage}, `}distance ${printNumber(whole.distance, 2)})`;
  return {
    what: `the nearest may be nearest because less is known of ${named === 1 ? 'it' : 'them'} (${printSome(lacking.map(inSentence), 3)} not recorded)`,
    size: `of ${of} attributes of the find ${named === 1 ? 'it has' : 'they have'} ${has}, all comparanda ${have} on average; ${among}`,
    overturns: false,
  };
}

/** Conditions that may stand for what excludes a label, what all attributes share said once. */
export function guardedTurns({ guarded }: PlacementFound): Turn[] {
  const said = guarded.flatMap(({ attribute, guard }) =>
    guardTurns(guard).map((turn) =>
      turn.overturns ? { ...turn, what: `by ${inSentence(attribute)}, ${turn.what}` } : turn,
    ),
  );
  return said.filter((turn, at) => said.findIndex(({ what }) => what === turn.what) === at);
}

/** What could change the verdict, though it was not tried, or must be known to read it. */
export function doubts(found: PlacementFound): Turn[] {
  const { lacking, percentiles, judged, circular, options, n } = found;
  const turns: Turn[] = [
    ...(found.lessKnown === null ? [] : [lessKnownTurn(found.lessKnown)]),
    ...found.notes.map((note) => ({ what: sentenceOf(note), size: '', overturns: false })),
  ];
  if (found.broad !== null) turns.push(nearestTurn(found.broad, found.neighbours.length));
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
  const { lacked } = found;
  if (lacked.records > 0)
    turns.push({
      what: `${lacked.records} of ${lacked.of} comparanda lack something that the find has, and are set against it without that`,
      size: `${printSome(
        lacked.attributes.map(({ label, records }) => `${inSentence(label)} ${records}`),
        4,
      )}; sets are the larger for it`,
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
