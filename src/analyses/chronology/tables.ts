import type { ResultColumn, ResultTable, TableCell } from '../contract.ts';
import { inSentence, printLevel } from '../phrasing.ts';
import { levelNote } from '../shared/level/said.ts';
import { YEARS_IN_FILES, yearColumn } from '../years.ts';
import type { ChronologyFound, FindsSpan, Series } from './found.ts';

export function chronologyTables(found: ChronologyFound): Readonly<Record<string, ResultTable>> {
  return {
    changes: changesTable(found),
    within: withinTable(found),
    slices: slicesTable(found),
    spans: spansTable(found),
    ...(found.phases.length === 0 ? {} : { phases: phasesTable(found) }),
  };
}

function changesTable({ changes, kindsLabel, options, level, unit }: ChronologyFound): ResultTable {
  return {
    title: `Which ${inSentence(kindsLabel)} comes later or earlier than the others`,
    columns: [
      { id: 'kind', label: kindsLabel },
      { id: 'n', label: 'n' },
      { id: 'effect', label: 'Cliff’s delta' },
      { id: 'p', label: 'p' },
      { id: 'pAdjusted', label: 'p adjusted (Holm)' },
      { id: 'method', label: 'method' },
      { id: 'drawnLow', label: 'delta with dates drawn, from' },
      { id: 'drawnHigh', label: 'to' },
      { id: 'otherwise', label: 'draws told otherwise' },
      { id: 'verdict', label: 'verdict' },
    ],
    rows: changes.map(({ label, n, delta, p, pAdjusted, method, drawn, verdict }) => [
      label,
      n,
      delta,
      p,
      pAdjusted,
      method,
      ...('why' in drawn ? [drawn, drawn, drawn] : [drawn.low, drawn.high, drawn.otherwise]),
      verdict,
    ]),
    briefly: ['kind', 'n', 'effect', 'pAdjusted', 'verdict'],
    note: `Positive: later than ${unit}s of other kinds, by the middles of their spans. Dates drawn evenly within the spans ${options.draws} times: central part at ${printLevel(options.confidence)}.${levelNote(level, unit)}`,
  };
}

function withinTable({ changes, kindsLabel }: ChronologyFound): ResultTable {
  return {
    title: 'The same within groups',
    columns: [
      { id: 'kind', label: kindsLabel },
      { id: 'within', label: 'within groups of' },
      { id: 'groups', label: 'groups' },
      { id: 'n', label: 'n' },
      { id: 'effect', label: 'Cliff’s delta within' },
      { id: 'p', label: 'p' },
      { id: 'pAdjusted', label: 'p adjusted (Holm)' },
      { id: 'told', label: 'verdict' },
    ],
    rows: changes.flatMap(({ label, within }) =>
      within.map((one) => [label, one.label, one.groups, one.n, one.delta, one.p, one.pAdjusted, one.told]),
    ),
    note: 'Groups that have the kind and others; each weighs by its pairs. Kinds are dealt again within each group.',
  };
}

function slicesTable(found: ChronologyFound): ResultTable {
  const { all, kinds, places, edges, unit, options, kindsLabel, placesLabel } = found;
  const lines = (what: string, { label, slices }: Series): TableCell[][] =>
    slices.map((one, slice) => [
      what,
      label,
      edges[slice],
      edges[slice + 1] - 1,
      one.expected,
      one.apart.low,
      one.apart.high,
      one.together.low,
      one.together.high,
      one.sure,
      one.possible,
    ]);
  return {
    title: `Counts of ${unit}s through time`,
    columns: [
      { id: 'of', label: 'of' },
      { id: 'label', label: 'which' },
      yearColumn('from', 'from'),
      yearColumn('to', 'to'),
      { id: 'expected', label: 'expected' },
      { id: 'low', label: 'lower limit' },
      { id: 'high', label: 'upper limit' },
      { id: 'togetherLow', label: 'lower limit, made together' },
      { id: 'togetherHigh', label: 'upper limit, made together' },
      { id: 'sure', label: 'wholly within' },
      { id: 'possible', label: 'possible' },
    ],
    rows: [
      ...lines('all', { ...all, label: 'all' }),
      ...kinds.flatMap((one) => lines(kindsLabel, one)),
      ...places.flatMap((one) => lines(placesLabel, one)),
    ],
    briefly: ['label', 'from', 'to', 'expected', 'low', 'high'],
    note: `Expected: each ${unit} shared out evenly over its span. Limits at ${printLevel(options.confidence)}: of counts, each ${unit} having a date of its own within its span; made together: all of one place and span in one year of it. No dates within the spans pass “wholly within” and “possible”. ${YEARS_IN_FILES}`,
  };
}

const SPAN_COLUMNS: readonly ResultColumn[] = [
  { id: 'n', label: 'n' },
  yearColumn('from', 'first year'),
  yearColumn('to', 'last year'),
  yearColumn('q1', 'a quarter made by'),
  yearColumn('median', 'half made by'),
  yearColumn('q3', 'three quarters made by'),
];

const spanCells = ({ n, from, to, q1, median, q3 }: FindsSpan): TableCell[] => [n, from, to, q1, median, q3];

function spansTable({ spans, placesLabel, kindsLabel, unit }: ChronologyFound): ResultTable {
  const lines = (what: string, list: readonly FindsSpan[]) =>
    list.map((span): TableCell[] => [what, span.label, ...spanCells(span)]);
  return {
    title: 'When they were made',
    columns: [{ id: 'of', label: 'of' }, { id: 'label', label: 'which' }, ...SPAN_COLUMNS],
    rows: [...lines(placesLabel, spans.places), ...lines(kindsLabel, spans.kinds)],
    note: `First and last year: hull of the spans of the ${unit}s. Quarters: each ${unit} shared out evenly over its span. ${YEARS_IN_FILES}`,
  };
}

const ORDER = {
  first: 'the earliest',
  after: 'after the one before',
  overlaps: 'cannot be told: shares years with the one before',
};

function phasesTable({ phases, phasesLabel, kinds, unit }: ChronologyFound): ResultTable {
  return {
    title: `${phasesLabel}s in the order of time`,
    columns: [
      { id: 'phase', label: phasesLabel },
      ...SPAN_COLUMNS,
      { id: 'order', label: 'order' },
      ...kinds.map(({ label }, at) => ({ id: `kind${at + 1}`, label })),
    ],
    rows: phases.map((phase) => [phase.label, ...spanCells(phase), ORDER[phase.order], ...phase.counts]),
    briefly: ['phase', 'n', 'from', 'to', 'order'],
    note: `In the order of the years by which half of their ${unit}s were made. ${YEARS_IN_FILES}`,
  };
}
