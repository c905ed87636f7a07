import type { Answer } from '../contract.ts';
import {
  firstShort,
  inSentence,
  printCount,
  printLevel,
  printList,
  printNumber,
  printP,
  printSmall,
} from '../phrasing.ts';
import { guardTurns } from '../shared/guard/turn-words.ts';
import { guardClauses, guardEvidence, guardLead } from '../shared/guard/words.ts';
import { sayFolds } from '../shared/level/said.ts';
import { saysMixtures } from '../shared/options/mixtures.ts';
import { survivalTurns } from '../shared/survival/words.ts';
import type { Told } from '../verdicts.ts';
import type { CountedOtherwise, CrosstabFound, QuotedCell } from './found.ts';
import { share } from './tables.ts';
import { doubts, LEVELS, lookAlikesThatStay, overturning, pairOf, whatWouldSettle } from './turn-words.ts';

/** Whether the two go together, how strongly, which cells say so, and what that hangs on. */
export function crosstabWords(found: CrosstabFound): Answer {
  const guard = guardTurns(found.guard);
  return {
    answer: answerOf(found),
    because: because(found),
    unless: [
      ...guard.filter(({ overturns }) => overturns),
      ...found.hangsOn.map((one) => overturning(found, one)),
      ...lookAlikesThatStay(found),
      ...survivalTurns(found.losses),
      ...doubts(found),
      ...guard.filter(({ overturns }) => !overturns),
    ],
    next: whatWouldSettle(found),
  };
}

function answerOf(found: CrosstabFound): string {
  const { test, told, named, hangsOn } = found;
  const pair = pairOf(found);
  if ('why' in test) return firstShort([`whether ${pair} go together cannot be told: ${test.why}.`]);
  const level = hangsOn.find(({ change }) => change !== 'line left out' && change !== 'look-alikes as one');
  if (level !== undefined) return firstShort(byLevel(found, level));
  const clauses = guardClauses(found.guard, 'are');
  if (told === 'not told apart')
    return firstShort(
      (clauses.length > 0 ? clauses : ['']).map(
        (clause) => `${pair} could not be shown to go together${clause}.`,
      ),
    );
  if (clauses.length > 0) return guardedAnswer(found, clauses);
  const [worst] = hangsOn;
  if (worst !== undefined)
    return firstShort([
      worst.change === 'look-alikes as one'
        ? `${pair} go together only as long as ${printList(worst.names)} are told apart.`
        : `${pair} go together only as long as ${printList(worst.names)} is counted.`,
      `${pair} go together, but not when the table is counted otherwise.`,
    ]);
  const said = (cells: readonly QuotedCell[]) => `${pair} go together: ${printList(cells.map(cellOf))}.`;
  return firstShort([
    ...[3, 2, 1].filter((count) => count <= named.length).map((count) => said(named.slice(0, count))),
    `${pair} go together.`,
  ]);
}

/** What goes together, and the condition that it may stand for. */
function guardedAnswer(found: CrosstabFound, clauses: readonly string[]): string {
  const pair = pairOf(found);
  const { named } = found;
  const kinds = inSentence(found.guard.by === found.rowsLabel ? found.columnsLabel : found.rowsLabel);
  return firstShort([
    ...guardLead(found.guard, kinds),
    ...[2, 1, 0]
      .filter((count) => count <= named.length)
      .flatMap((count) => {
        const cells = count === 0 ? '' : ` (${printList(named.slice(0, count).map(cellOf))})`;
        return clauses.map((clause) => `${pair} go together${cells}${clause}.`);
      }),
  ]);
}

/** Both verdicts, where the depth to which kinds were recorded makes the difference. */
function byLevel(found: CrosstabFound, { change, told }: CountedOtherwise): string[] {
  const pair = pairOf(found);
  const [here, there] =
    change === 'at the common level'
      ? ['by the words as recorded', LEVELS[change]]
      : ['at the level that all record', change === 'as recorded' ? LEVELS[change] : 'in narrower kinds'];
  const other = VERDICTS[told];
  return [`${pair} ${VERDICTS[found.told]} ${here}; ${there} they ${other}.`];
}

const VERDICTS: Readonly<Record<Told, string>> = {
  'told apart': 'go together',
  'not told apart': 'could not be shown to go together',
  'cannot be told': 'cannot be compared',
};

const cellOf = (cell: QuotedCell) => `${cell.stands} ${cell.column} in ${cell.row}${whyOf(cell)}`;

/** "fewer flax in Pell where plant fibre would be lost": what could not survive is never called fewer without it. */
function whyOf({ lost, row }: QuotedCell): string {
  if (lost === null) return '';
  return row === lost.place
    ? ` where ${lost.fibre} would be lost`
    : ` though ${lost.fibre} would be lost at ${lost.place}`;
}

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
    `n = ${size}${saysMixtures(found.mixtures)}, ${printSmall(table.rows.length)} by ${printSmall(table.columns.length)}: ${tested}; chi-square ${printNumber(association.chiSquared, 4)}, df ${association.df}.`,
    `Strength: bias-corrected Cramér’s V ${printNumber(association.cramersVCorrected, 2)}${limits}.`,
    ...guardEvidence(found.guard, ''),
    ...(quoted.length === 0
      ? ['No single cell with enough records stands out.']
      : [
          `${counted(found)} their row: ${printList(
            quoted.slice(0, 4).map((cell) => `${cellOf(cell)} (${share(cell.count, cell.of)})`),
          )}.`,
        ]),
    ...standing(found),
  ].slice(0, MOST_LINES);
}

/** Lines of evidence that an answer may have. */
const MOST_LINES = 4;

/** "Counted as twined for open twining and close twining, since Pell says no more of 9 of 9, of". */
function counted({ level }: CrosstabFound): string {
  if (level.asked === 'recorded') return 'At the level that all record, of';
  return level.folds.length === 0 ? 'Of' : `Counted as ${sayFolds(level)}; of`;
}

/** What was tried and did not change the verdict. */
function standing({ otherwise, hangsOn, told }: CrosstabFound): string[] {
  const stays = otherwise.filter((one) => !hangsOn.includes(one));
  const lines = stays.filter(({ change }) => change === 'line left out');
  const levels = stays.filter(({ change }) => change !== 'line left out' && change !== 'look-alikes as one');
  const said = [
    ...(lines.length > 0 && hangsOn.every(({ change }) => change !== 'line left out')
      ? [`with any one of the ${lines.length} largest rows and columns left out (${strengths(lines)})`]
      : []),
    ...levels.map((level) => `${LEVELS[level.change]} (${strengths([level])})`),
  ];
  return said.length === 0
    ? []
    : [
        `That ${told === 'told apart' ? 'they go together' : 'they could not be shown to go together'} stays so ${printList(said)}.`,
      ];
}

function strengths(tried: readonly CountedOtherwise[]): string {
  const values = tried.flatMap(({ v }) => (typeof v === 'number' ? [v] : [])).sort((a, b) => a - b);
  if (values.length === 0) return 'V not to be had';
  const [low, high] = [values[0], values[values.length - 1]].map((value) => printNumber(value, 2));
  return low === high ? `V ${low}` : `V ${low} to ${high}`;
}
