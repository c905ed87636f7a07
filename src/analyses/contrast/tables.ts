import type { ResultTable, TableCell } from '../contract.ts';
import { printLevel } from '../phrasing.ts';
import { guardTable } from '../shared/guard/tables.ts';
import { pooledTable } from '../shared/pooled/faces.ts';
import { col, effectCells, pooledAttribute } from './cells.ts';
import type { ContrastFound, TestQuestion } from './found.ts';
import { pairsTable } from './pairs-table.ts';
import { togetherTable } from './together-table.ts';
import { trendTable } from './trend-table.ts';

/** Every table of a contrast; those without a line are left out. */
export function contrastTables(found: ContrastFound): Record<string, ResultTable> {
  const tables: Record<string, ResultTable> = {
    ...(found.attributes.length > 0
      ? { groups: groupsTable(found), tests: testsTable(found), pairs: pairsTable(found) }
      : {}),
    ...otherwiseTable(found),
    ...pooledTable(found.attributes.map(pooledAttribute), found.by),
    ...guardTable([
      ...found.attributes.map(({ samples, guard }) => ({ of: samples.attribute.label, guard })),
      ...togetherGuard(found),
    ]),
    ...trendTable(found),
    ...togetherTable(found),
  };
  return tables;
}

function togetherGuard({ together }: ContrastFound) {
  if (together === null || 'why' in together || together.guard === null) return [];
  return [{ of: 'all together', guard: together.guard }];
}

function groupsTable({ attributes, by, options }: ContrastFound): ResultTable {
  return {
    title: 'Groups',
    columns: [
      col('attribute', 'attribute'),
      col('unit', 'unit'),
      col('group', by),
      col('n', 'n'),
      col('fragments', 'fragments'),
      col('items', 'items'),
      col('missing', 'missing'),
      col('openEnded', 'open-ended readings'),
      col('median', 'median'),
      col('medianLow', 'median at least'),
      col('medianHigh', 'median at most'),
      col('q1', 'lower quartile'),
      col('q3', 'upper quartile'),
      col('min', 'smallest'),
      col('max', 'largest'),
      col('tested', 'tested'),
    ],
    rows: attributes.flatMap(({ samples, medians }) =>
      samples.groups.map((group): TableCell[] => {
        const [q1, median, q3] = group.quartiles;
        const place = samples.tested.indexOf(group);
        const interval = place < 0 ? { why: 'a single item' } : medians[place];
        const ends = 'why' in interval ? [interval, interval] : [interval.low, interval.high];
        return [
          samples.attribute.label,
          samples.graded ? 'grade' : (samples.attribute.unit ?? ''),
          group.label,
          group.rows.length,
          group.fragments,
          group.points.count,
          group.missing,
          group.openEnded,
          median,
          ...ends,
          q1,
          q3,
          group.points.values.reduce((a, b) => Math.min(a, b)),
          group.points.values.reduce((a, b) => Math.max(a, b)),
          place >= 0,
        ];
      }),
    ),
    briefly: ['attribute', 'group', 'n', 'items', 'missing', 'median', 'medianLow', 'medianHigh', 'q1', 'q3'],
    note:
      `Limits of the median at ${printLevel(options.confidence)} by drawing items again (BCa, Efron 1987), widened for few items (Hesterberg 2015). ` +
      'Quartiles are type 7. A reading that is a range stands at its middle, an open-ended one at its known end.',
  };
}

function testsTable({ attributes, options }: ContrastFound): ResultTable {
  const lines = attributes.flatMap((contrast) => [
    {
      contrast,
      question: 'place' as TestQuestion,
      name: contrast.samples.tested.length > 2 ? 'Kruskal-Wallis' : 'Mann-Whitney',
      answer: contrast.place,
      pAdjusted: contrast.pAdjusted,
      told: contrast.told,
    },
    ...contrast.further.map((test) => ({ contrast, ...test })),
  ]);
  return {
    title: 'Tests',
    columns: [
      col('attribute', 'attribute'),
      col('question', 'do the groups differ in'),
      col('test', 'test'),
      col('statistic', 'statistic'),
      col('df', 'df'),
      col('dfWithin', 'df within'),
      col('p', 'p'),
      col('pAdjusted', 'p adjusted'),
      col('told', 'verdict'),
      col('method', 'p from'),
      col('epsilonSquared', 'epsilon squared'),
      col('low', 'epsilon squared at least'),
      col('high', 'epsilon squared at most'),
    ],
    rows: lines.map((line): TableCell[] => {
      const { contrast, question, name, answer } = line;
      const head = [contrast.samples.attribute.label, ASKED[question]];
      const effect = question === 'place' ? effectCells(contrast.epsilonSquared) : [null, null, null];
      if ('why' in answer) {
        const why = { why: answer.why };
        return [...head, name, why, null, null, why, why, line.told, '', ...effect];
      }
      return [
        ...head,
        `${answer.name} ${answer.symbol}`,
        answer.statistic,
        answer.df,
        answer.dfWithin,
        answer.p,
        line.pAdjusted,
        line.told,
        answer.method,
        ...effect,
      ];
    }),
    briefly: ['attribute', 'question', 'test', 'statistic', 'df', 'p', 'pAdjusted', 'method'],
    note: `Adjusted over the attributes asked, test by test (${options.adjust}). U is that of the first group; ties are corrected for.`,
  };
}

const ASKED: Readonly<Record<TestQuestion, string>> = {
  place: 'place',
  shape: 'place, spread or shape',
  curve: 'place, spread or shape',
  spread: 'spread',
  means: 'mean, equal spreads assumed',
  welch: 'mean, spreads may differ',
};

function otherwiseTable({ attributes }: ContrastFound): Record<string, ResultTable> {
  const rows = attributes.flatMap(({ samples, place, told, otherwise }) =>
    otherwise.length === 0
      ? []
      : [
          { change: 'as asked', what: 'all readings at their middles', answer: place, told },
          ...otherwise,
        ].map(({ change, what, answer, told: verdict }): TableCell[] => [
          samples.attribute.label,
          change,
          what,
          'why' in answer ? answer : answer.statistic,
          'why' in answer ? answer : answer.p,
          verdict,
          'why' in answer ? '' : answer.method,
        ]),
  );
  if (rows.length === 0) return {};
  return {
    otherwise: {
      title: 'The test of place, asked otherwise',
      columns: [
        col('attribute', 'attribute'),
        col('change', 'what is done'),
        col('what', 'how'),
        col('statistic', 'statistic'),
        col('p', 'p'),
        col('told', 'verdict'),
        col('method', 'p from'),
      ],
      rows,
      note: 'Readings that are ranges or approximate stand at one of their ends; groups are left out in turn; Welch’s test on ranks takes no equal spreads for granted.',
    },
  };
}
