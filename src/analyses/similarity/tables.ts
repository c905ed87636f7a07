import { condensedIndex } from '../../numerics/dissimilarity/condensed.ts';
import type { ResultColumn, ResultTable, TableCell } from '../contract.ts';
import { printLevel, printNumber } from '../phrasing.ts';
import { guardTable } from '../shared/guard/tables.ts';
import { levelNote } from '../shared/level/said.ts';
import { NAMED, SAID } from '../shared/options/coefficient.ts';
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
    ...guardTable([{ of: found.kindsLabel, guard: found.guard }]),
  };
}

const col = (id: string, label: string): ResultColumn => ({ id, label });

function countsTable({
  table,
  assemblagesLabel,
  whereWhen,
  unit,
  level,
  mixtures,
}: SimilarityFound): ResultTable {
  return {
    title: mixtures === null ? `Counts of ${unit}s` : `Mentions, of ${unit}s`,
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
    note: `${YEARS_IN_FILES}${levelNote(level, unit)}${mixtures === null ? '' : ' A record of a mixture counts in each of its kinds, so that n is of mentions.'}`,
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

function diversityTable(found: SimilarityFound): ResultTable {
  const { table, diversity, rarefiedTo, coverageTo, assemblagesLabel, options, unit } = found;
  const limits = (id: string, label: string) => [
    col(id, label),
    col(`${id}Low`, `${label} at least`),
    col(`${id}High`, `${label} at most`),
  ];
  const equal = typeof coverageTo === 'number' ? ` of ${printNumber(coverageTo * 100)} %` : '';
  return {
    title: 'Diversity',
    columns: [
      col('assemblage', assemblagesLabel),
      col('n', 'n'),
      col('items', 'items'),
      col('richness', 'kinds'),
      col('coverage', 'coverage'),
      ...limits('rarefied', `kinds in ${rarefiedTo} ${unit}s`),
      ...limits('atCoverage', `kinds at coverage${equal}`),
      ...limits('chao1', 'all kinds'),
      ...limits('common', 'common kinds'),
      ...limits('dominant', 'dominant kinds'),
      ...limits('shannon', 'Shannon'),
      ...limits('simpson', 'Simpson'),
      col('evenness', 'evenness of the kinds seen'),
    ],
    rows: table.rows.map((label, row): TableCell[] => {
      const { n, items, richness, coverage, evenness, ...measures } = diversity[row];
      const { rarefied, atCoverage, chao1, common, dominant, shannon, simpson } = measures;
      return [
        label,
        n,
        items,
        richness,
        coverage,
        ...[rarefied, atCoverage, chao1, common, dominant, shannon, simpson].flatMap(
          ({ value, low, high }) => [value, low, high],
        ),
        evenness,
      ];
    }),
    briefly: ['assemblage', 'n', 'richness', 'coverage', 'atCoverage', 'chao1', 'common', 'dominant'],
    note:
      'Of the whole that each was drawn from, kinds not met made up for: all kinds after Chao 1984, common ones from Shannon (Chao, Wang & Jost 2013), dominant ones from Simpson without bias: ' +
      'Hill numbers of order 0, 1 and 2. Coverage: the share of the whole that is of kinds seen; at equal coverage samples are equally complete (Chao & Jost 2012). ' +
      `Limits at ${printLevel(options.confidence)}: the estimate and its own error, of all kinds log-normal (Chao 1987), of dominant kinds on the logarithm; of kinds that are nearly even they are wider than they need be. Evenness after Pielou, of the sample.`,
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
