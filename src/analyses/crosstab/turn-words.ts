import type { Turn } from '../contract.ts';
import { inSentence, printCount, printList, printNumber, printP, printSome } from '../phrasing.ts';
import { guardNext } from '../shared/guard/words.ts';
import type { LevelSaid } from '../shared/level/said.ts';
import { missingKindsTurn } from '../shared/missing/words.ts';
import type { CountedOtherwise, CrosstabFound } from './found.ts';

/** "site and structure". */
export const pairOf = ({ rowsLabel, columnsLabel }: CrosstabFound) =>
  `${inSentence(rowsLabel)} and ${inSentence(columnsLabel)}`;

export const LEVELS: Readonly<Record<CountedOtherwise['change'], string>> = {
  'line left out': 'with lines left out',
  'look-alikes as one': 'with look-alikes as one kind',
  'told more closely': 'more closely, without the few that say no more',
  'as recorded': 'by the words as recorded',
  'at the common level': 'at the level that all record',
};

/** "Linking and sprang, which a piece may show alike, counted as one". */
const lookAlikeSaid = (names: readonly string[]) =>
  `${printList(names)}, which a piece may show alike, counted as one`;

/** Look-alikes counted as one where that changes nothing: an answer leans on them less than it could. */
export function lookAlikesThatStay({ otherwise, hangsOn, told }: CrosstabFound): Turn[] {
  return otherwise
    .filter((one) => one.change === 'look-alikes as one' && !hangsOn.includes(one))
    .map(({ names, p, v }) => ({
      what: lookAlikeSaid(names),
      size: `still ${told}${typeof p === 'number' && typeof v === 'number' ? ` (${printP(p)}, V ${printNumber(v, 2)})` : ''}`,
      overturns: false,
    }));
}

export function overturning(found: CrosstabFound, { change, names, told, p, v }: CountedOtherwise): Turn {
  const numbers = [
    ...(typeof p === 'number' ? [printP(p)] : []),
    ...(typeof v === 'number' ? [`V ${printNumber(v, 2)}`] : []),
  ];
  return {
    what:
      change === 'line left out'
        ? `with ${printList(names)} left out`
        : change === 'look-alikes as one'
          ? lookAlikeSaid(names)
          : `counted ${LEVELS[change]}`,
    size: `${pairOf(found)} ${told === 'told apart' ? 'go together' : told === 'not told apart' ? 'could not be shown to go together' : 'can no longer be tested'}${numbers.length > 0 ? ` (${numbers.join(', ')})` : ''}`,
    overturns: true,
  };
}

/** What could change the verdict and was not tried. */
export function doubts(found: CrosstabFound): Turn[] {
  const { table, level, smallLines, n, unit, association, manyAside } = found;
  const turns: Turn[] = [];
  if (found.doubtful)
    turns.push({
      what: 'chi-square was asked for where the expected counts do not carry it',
      size: `its p is doubtful, the smallest expected count is ${printNumber(association.smallestExpected, 2)}`,
      overturns: false,
    });
  if (manyAside !== null)
    turns.push({
      what: `${printCount(manyAside, 'fragment')} could not be counted (${printList(n.setAside.map(({ reason }) => inSentence(reason)))})`,
      size: `beside ${n.fragments} that were`,
      overturns: false,
    });
  if (level.asked !== 'common' && table.nested.length > 0)
    turns.push({
      what: `${printList(table.nested)} stand${table.nested.length === 1 ? 's' : ''} beside narrower kinds of the same`,
      size: 'lines differ there by how closely they were recorded',
      overturns: false,
    });
  turns.push(...missingTurn(found), ...boundsTurn(found));
  if (smallLines.length > 0)
    turns.push({
      what: `few ${unit}s in ${printSome(
        smallLines.map(({ label, records }) => `${label} (${records})`),
        6,
      )}`,
      size: 'their shares say little and are not quoted',
      overturns: false,
    });
  return turns;
}

/** What the records without a kind would have to be. */
function missingTurn({ missing, told, unit, guard, rowsLabel, columnsLabel }: CrosstabFound): Turn[] {
  const kinds = inSentence(guard.by === rowsLabel ? columnsLabel : rowsLabel);
  const apart = told === 'told apart';
  return missingKindsTurn(missing, {
    kinds,
    unit,
    turned: apart ? 'the two could not be shown to go together' : 'the two would go together',
    stands: apart ? 'the two would still go together' : 'the two could still not be shown to go together',
  });
}

/** How far the share moves that broad records leave widest open. */
function boundsTurn({ bounds }: CrosstabFound): Turn[] {
  const open = bounds.filter(({ could }) => could > 0).sort((a, b) => b.high - b.low - (a.high - a.low));
  if (open.length === 0) return [];
  const [{ group, kind, certain, could, of }] = open;
  return [
    {
      what: 'if broader words were recorded more closely',
      size: `${kind} in ${group} could be ${certain} to ${certain + could} of ${of}`,
      overturns: false,
    },
  ];
}

/** What would settle whether the two go together. */
export function whatWouldSettle({ level, table, told, columnsLabel, guard }: CrosstabFound): string[] {
  return [
    ...nextOfLevel(level, table.nested),
    ...(told === 'told apart' ? guardNext(guard, `record ${inSentence(columnsLabel)} of`) : []),
    ...(told === 'not told apart' ? ['More records in the smallest lines.'] : []),
  ];
}

function nextOfLevel(level: LevelSaid, nested: readonly string[]): string[] {
  const [worst] = level.folds;
  if (worst?.because[0] !== undefined)
    return [
      `${worst.label} of ${worst.because[0].label} told apart as elsewhere: ${printSome(worst.narrower, 3)}.`,
    ];
  if (level.asked !== 'recorded' || nested.length === 0) return [];
  return [`Record ${printList(nested)} more closely where it can still be seen.`];
}
