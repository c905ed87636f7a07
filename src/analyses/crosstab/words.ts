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
import type { CountedOtherwise, CrosstabFound, QuotedCell } from './found.ts';
import { share } from './tables.ts';

/** Whether the two go together, how strongly, which cells say so, and what that hangs on. */
export function crosstabWords(found: CrosstabFound): Answer {
  return {
    answer: answerOf(found),
    because: because(found),
    unless: [...found.hangsOn.map((one) => overturning(found, one)), ...doubts(found)],
    next: next(found),
  };
}

const pairOf = ({ rowsLabel, columnsLabel }: CrosstabFound) =>
  `${inSentence(rowsLabel)} and ${inSentence(columnsLabel)}`;

function answerOf(found: CrosstabFound): string {
  const { test, told, quoted, hangsOn } = found;
  const pair = pairOf(found);
  if ('why' in test) return firstShort([`whether ${pair} go together cannot be told: ${test.why}.`]);
  if (told === 'not told apart') return firstShort([`${pair} are not told apart from unrelated.`]);
  const [worst] = hangsOn;
  if (worst !== undefined)
    return firstShort([
      worst.change === 'line left out'
        ? `${pair} go together only as long as ${printList(worst.names)} is counted.`
        : `${pair} go together only while ${printList(worst.names)} stand${worst.names.length === 1 ? 's' : ''} beside narrower kinds of the same.`,
      `${pair} go together, but not when the table is counted otherwise.`,
    ]);
  const said = (cells: readonly QuotedCell[]) => `${pair} go together: ${printList(cells.map(cellOf))}.`;
  const more = quoted.filter(({ stands }) => stands === 'more');
  const named = more.length > 0 ? more : quoted;
  return firstShort([
    ...[3, 2, 1].filter((count) => count <= named.length).map((count) => said(named.slice(0, count))),
    `${pair} go together.`,
  ]);
}

const cellOf = ({ stands, column, row }: QuotedCell) => `${stands} ${column} in ${row}`;

function because(found: CrosstabFound): string[] {
  const { table, association, test, interval, quoted, n, options } = found;
  const size =
    n.fragments === n.items
      ? printCount(n.items, 'item')
      : `${printCount(n.items, 'item')} in ${printCount(n.fragments, 'fragment')}`;
  const tested =
    'why' in test
      ? 'no test'
      : `${test.name}, ${printP(test.p)}${['exact', 'chi-squared'].includes(test.method) ? '' : ` (${test.method})`}`;
  const limits =
    'why' in interval
      ? ''
      : `, ${printLevel(options.confidence)} limits ${printNumber(interval.low, 2)} to ${printNumber(interval.high, 2)}`;
  return [
    `n = ${size}, ${printSmall(table.rows.length)} by ${printSmall(table.columns.length)}: ${tested}; chi-square ${printNumber(association.chiSquared, 4)}, df ${association.df}.`,
    `Strength: bias-corrected Cramér’s V ${printNumber(association.cramersVCorrected, 2)}${limits}.`,
    ...(quoted.length === 0
      ? ['No single cell with enough records stands out.']
      : [
          `${table.nested.length > 0 ? 'With narrower kinds counted under broad ones, of' : 'Of'} their row: ${printList(
            quoted.slice(0, 4).map((cell) => `${cellOf(cell)} (${share(cell.count, cell.of)})`),
          )}.`,
        ]),
    ...standing(found),
  ];
}

/** What was tried and did not change the verdict. */
function standing({ otherwise, hangsOn, told }: CrosstabFound): string[] {
  const stays = otherwise.filter((one) => !hangsOn.includes(one));
  const lines = stays.filter(({ change }) => change === 'line left out');
  const folded = stays.find(({ change }) => change === 'broad kinds folded');
  const said = [
    ...(lines.length > 0 && hangsOn.every(({ change }) => change !== 'line left out')
      ? [`with any one of the ${lines.length} largest rows and columns left out (${strengths(lines)})`]
      : []),
    ...(folded === undefined
      ? []
      : [`with ${printList(folded.names)} taking in their narrower kinds (${strengths([folded])})`]),
  ];
  return said.length === 0
    ? []
    : [
        `That ${told === 'told apart' ? 'they go together' : 'they are not told apart from unrelated'} stays so ${printList(said)}.`,
      ];
}

function strengths(tried: readonly CountedOtherwise[]): string {
  const values = tried.flatMap(({ v }) => (typeof v === 'number' ? [v] : [])).sort((a, b) => a - b);
  if (values.length === 0) return 'V not to be had';
  const [low, high] = [values[0], values[values.length - 1]].map((value) => printNumber(value, 2));
  return low === high ? `V ${low}` : `V ${low} to ${high}`;
}

function overturning(found: CrosstabFound, { change, names, told, p, v }: CountedOtherwise): Turn {
  const numbers = [
    ...(typeof p === 'number' ? [printP(p)] : []),
    ...(typeof v === 'number' ? [`V ${printNumber(v, 2)}`] : []),
  ];
  return {
    what:
      change === 'line left out'
        ? `with ${printList(names)} left out`
        : `with narrower kinds counted under ${printList(names)}`,
    size: `${pairOf(found)} are ${told === 'told apart' ? 'told apart from unrelated' : told === 'not told apart' ? 'not told apart from unrelated' : 'no longer to be tested'}${numbers.length > 0 ? ` (${numbers.join(', ')})` : ''}`,
    overturns: true,
  };
}

/** Share of fragments set aside from which gaps are named. */
const MANY_ASIDE = 10;

function doubts(found: CrosstabFound): Turn[] {
  const { table, smallLines, n, unit, rowsLabel, association } = found;
  const turns: Turn[] = [];
  if (found.doubtful)
    turns.push({
      what: 'chi-square was asked for where the expected counts do not carry it',
      size: `its p is doubtful, the smallest expected count is ${printNumber(association.smallestExpected, 2)}`,
      overturns: false,
    });
  if (found.oneSourceEach)
    turns.push({
      what: `each ${inSentence(rowsLabel)} was recorded in a table of its own`,
      size: 'a recorder’s habit of naming would look the same as a difference',
      overturns: false,
    });
  const aside = n.setAside.reduce((sum, { fragments }) => sum + fragments, 0);
  if (aside * MANY_ASIDE >= n.fragments)
    turns.push({
      what: `${printCount(aside, 'fragment')} could not be counted (${printList(n.setAside.map(({ reason }) => inSentence(reason)))})`,
      size: `beside ${n.fragments} that were`,
      overturns: false,
    });
  if (table.nested.length > 0)
    turns.push({
      what: `${printList(table.nested)} stand${table.nested.length === 1 ? 's' : ''} beside narrower kinds of the same`,
      size: 'lines differ there by how closely they were recorded',
      overturns: false,
    });
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

function next({ table, told, columnsLabel, oneSourceEach }: CrosstabFound): string[] {
  return [
    ...(table.nested.length > 0
      ? [`Record ${printList(table.nested)} more closely where it can still be seen.`]
      : []),
    ...(oneSourceEach && told === 'told apart'
      ? [`Let one person record ${inSentence(columnsLabel)} of some finds of each again.`]
      : []),
    ...(told === 'not told apart' ? ['More records in the smallest lines.'] : []),
  ];
}
