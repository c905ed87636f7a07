import { condensedIndex } from '../../numerics/dissimilarity/condensed.ts';
import { NAMED, SAID } from '../coefficient-option.ts';
import type { ResultColumn, ResultTable, TableCell } from '../contract.ts';
import { levelNote } from '../level-said.ts';
import { printLevel, printNumber } from '../phrasing.ts';
import { YEARS_IN_FILES, yearColumn } from '../years.ts';
import { axesTables } from './axes-tables.ts';
import type { SimilarityFound } from './found.ts';
import { newcomerTables } from './newcomer-tables.ts';

/** Counts, likeness, diversity, axes, and distances against distances. */
export function similarityTables(found: SimilarityFound): Record<string, ResultTable> {
  return {
    counts: countsTable(found),
    matrix: matrixTable(found),
    pairs: pairsTable(found),
    diversity: diversityTable(found),
    ...axesTables(found),
    ...newcomerTables(found),
    distances: distancesTable(found),
  };
}

const col = (id: string, label: string): ResultColumn => ({ id, label });

function countsTable({ table, assemblagesLabel, whereWhen, unit, level }: SimilarityFound): ResultTable {
  return {
    title: `Counts of ${unit}s`,
    columns: [
      col('assemblage', assemblagesLabel),
      ...table.columns.map((label, place) => col(`kind${place + 1}`, label)),
      col('n', 'n'),
      yearColumn('from', 'from'),
      yearColumn('to', 'to'),
    ],
    rows: table.rows.map((label, row): TableCell[] => {
      const span = whereWhen.spans[row];
      return [
        label,
        ...table.counts[row],
        table.counts[row].reduce((sum, count) => sum + count, 0),
        ...(span === null ? [{ why: 'not dated' }, { why: 'not dated' }] : [span.from, span.to]),
      ];
    }),
    note: `${YEARS_IN_FILES}${levelNote(level, unit)}`,
  };
}

function matrixTable({
  table,
  likeness,
  foundOrder,
  assemblagesLabel,
  options,
}: SimilarityFound): ResultTable {
  return {
    title: 'Likeness in found order',
    columns: [
      col('assemblage', assemblagesLabel),
      ...foundOrder.map((row, place) => col(`order${place + 1}`, table.rows[row])),
    ],
    rows: foundOrder.map((row): TableCell[] => [
      table.rows[row],
      ...foundOrder.map((other) =>
        row === other ? null : likeness.values[condensedIndex(likeness.n, row, other)],
      ),
    ]),
    note: `${SAID[options.coefficient]}. Neighbours in the order of an average-linkage tree.`,
  };
}

function pairsTable({ table, likeness, intervals, sameSource, options }: SimilarityFound): ResultTable {
  const rows: TableCell[][] = [];
  let place = 0;
  for (const [first, label] of table.rows.entries()) {
    for (const other of table.rows.slice(first + 1)) {
      const interval = intervals[place];
      rows.push([
        label,
        other,
        likeness.values[place],
        ...('why' in interval ? [interval, interval] : [interval.low, interval.high]),
        sameSource[place].p,
        sameSource[place].pAdjusted,
        sameSource[place].told,
        sameSource[place].method,
      ]);
      place++;
    }
  }
  return {
    title: 'Likeness of pairs',
    columns: [
      col('first', 'first'),
      col('second', 'second'),
      col('likeness', NAMED[options.coefficient]),
      col('low', 'at least'),
      col('high', 'at most'),
      col('p', 'p, one source'),
      col('pAdjusted', 'p adjusted'),
      col('told', 'one source'),
      col('method', 'p from'),
    ],
    rows,
    note: `${SAID[options.coefficient]}; limits: ${printLevel(options.confidence)} of draws of the items of both, moved so that their middle is the value found (draws are less alike than what they are drawn from). p: that both are draws from one source, items dealt between them (DeBoer, Kintigh & Rostoker 1996), adjusted over the pairs (Holm).`,
  };
}

function diversityTable({
  table,
  diversity,
  rarefiedTo,
  assemblagesLabel,
  options,
  unit,
}: SimilarityFound): ResultTable {
  const limits = (id: string, label: string) => [
    col(id, label),
    col(`${id}Low`, `${label} at least`),
    col(`${id}High`, `${label} at most`),
  ];
  return {
    title: 'Diversity',
    columns: [
      col('assemblage', assemblagesLabel),
      col('n', 'n'),
      col('items', 'items'),
      col('richness', 'kinds'),
      ...limits('rarefied', `kinds in ${rarefiedTo} ${unit}s`),
      ...limits('shannon', 'Shannon'),
      ...limits('simpson', 'Simpson'),
      ...limits('evenness', 'evenness'),
      ...limits('chao1', 'Chao 1'),
    ],
    rows: table.rows.map((label, row): TableCell[] => {
      const { n, items, richness, ...measures } = diversity[row];
      const { rarefied, shannon, simpson, evenness, chao1 } = measures;
      return [
        label,
        n,
        items,
        richness,
        ...[rarefied, shannon, simpson, evenness, chao1].flatMap(({ value, low, high }) => [
          value,
          low,
          high,
        ]),
      ];
    }),
    briefly: ['assemblage', 'n', 'richness', 'rarefied', 'shannon', 'simpson', 'evenness', 'chao1'],
    note:
      `Shannon in natural units, Simpson as 1 - sum p², evenness after Pielou; limits at ${printNumber(options.confidence * 100)} % by drawing items again, ` +
      'for Chao 1 log-normal (Chao 1987). What a draw never saw it cannot show again, so resampled limits of richness are low rather than high.',
  };
}

function distancesTable({ distances, options, whereWhen }: SimilarityFound): ResultTable {
  const { measure } = whereWhen;
  return {
    title: 'Unlikeness against distance',
    columns: [
      col('against', 'distance in'),
      col('apartFrom', 'apart from distance in'),
      col('statistic', 'rank correlation'),
      col('p', 'p'),
      col('told', 'verdict'),
      col('method', 'p from'),
      col('n', 'assemblages'),
    ],
    rows: distances.map(({ against, apartFrom, answer, told }): TableCell[] =>
      'why' in answer
        ? [against, apartFrom, answer, answer, told, '', null]
        : [
            against,
            apartFrom,
            answer.statistic,
            answer.p,
            told,
            answer.method === 'exact'
              ? `exact, all ${answer.relabellings} orders`
              : `${answer.relabellings} random orders`,
            answer.n,
          ],
    ),
    note:
      `Mantel tests on ranks, one-sided for "the further, the less alike" (${NAMED[options.coefficient]}); ` +
      `time between the middles of the spans; space: ${'why' in measure ? measure.why : measure.said}.`,
  };
}
