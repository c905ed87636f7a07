import { InputError } from '../../errors.ts';
import { isOpenEnded, pointOf, termAt } from '../../fragments/accessors.ts';
import { countBehind } from '../../fragments/behind.ts';
import { groupRows } from '../../fragments/groups.ts';
import { countByParts } from '../../fragments/kinds/mixed.ts';
import { atLevelOf } from '../../fragments/level/common-level.ts';
import { isMissing } from '../../fragments/missing.ts';
import { requireColumn } from '../../fragments/require-column.ts';
import type { Column, FragmentTable, NumericColumn, TermColumn } from '../../fragments/table.ts';
import { quantileSorted, sortedValues } from '../../numerics/describing/quantile.ts';
import type { AnalysisInput } from '../contract.ts';
import { inSentence, printList } from '../phrasing.ts';
import { type Marks, marksOf } from '../shared/figure/marks.ts';
import { conditionsBeside } from '../shared/guard/beside.ts';
import { levelSaid } from '../shared/level/said.ts';
import { isMentioned } from '../shared/mentioned.ts';
import { groupCounts } from './count.ts';
import { describeNumbers } from './describe-numbers.ts';
import { endsOf } from './ends.ts';
import { ALL, type NumberGroup, type RecordedCell, type SummaryFound, type TermGroup } from './found.ts';
import { countKinds } from './kinds.ts';
import { centreLimits } from './limits.ts';
import type { SummaryOptions } from './options.ts';
import type { Part } from './parts.ts';
import { pooledSummary } from './pooled.ts';
import { isYears, spansOf } from './spans.ts';
import { timeLines } from './time.ts';

/** Below this many values a group is too small to be quoted as typical of anything. */
const FEWEST_QUOTED = 5;
/** With fewer attributes the tables themselves are as short as a matrix of what is recorded. */
const FEWEST_FOR_MATRIX = 3;

/**
 * What is there, and how much of it? Numbers by centre, spread and the bounds that interval readings
 * allow; kinds by counts and shares with score limits; each by none, one or two groupings, gaps
 * counted by their reason. Records without a value of a grouping attribute are set aside and counted.
 *
 * @throws InputError for an attribute that no source records, that is free text, or that cannot group.
 */
export function computeSummary(input: AnalysisInput, options: SummaryOptions): SummaryFound {
  const { records, register } = input;
  const grouping = groupRows(records, options.by, register);
  const single = grouping.groups.map(
    ({ labels, rows }): Part => ({ labels, rows, whole: labels.length === 0 }),
  );
  const used = single.flatMap((part) => part.rows).sort((a, b) => a - b);
  const parts =
    single.length > 1 ? [...single, { labels: options.by.map(() => ALL), rows: used, whole: true }] : single;
  const columns = options.of.map((id) => describable(requireColumn(records, id, register), id));
  const numeric = columns.filter((column) => column.kind === 'numeric');
  const kinds = columns.filter((column) => column.kind === 'term');
  // Where nothing is compared, only the words as they stand are asked for.
  const level = options.by.length === 0 ? 'recorded' : options.level;
  const groups = single.map(({ labels, rows }) => ({ labels: [labels.join(', ')], rows }));
  const levelled = kinds.map((column) => ({
    column,
    found: atLevelOf(records, column.attribute.id, groups, register, { level }),
  }));
  const levels = new Map(
    levelled.map(({ found, column }) => [column.attribute.id, levelSaid(options.level, found)] as const),
  );
  const marksFor = (of: (id: string) => Marks) =>
    new Map(kinds.map(({ attribute }) => [attribute.id, of(attribute.id)] as const));
  const numbers = numeric.flatMap((column, at) =>
    parts.map((part, place) => {
      const share = (at + place / parts.length) / numeric.length;
      return numberGroup(within(input, share), column, part, options);
    }),
  );
  const terms = kinds.flatMap((column) =>
    parts.map((part) => termGroup(input, column, column, part, options)),
  );
  const atLevel = levelled.flatMap(({ found, column }) =>
    found.differs
      ? parts.map((part) => termGroup(input, termsOf(found.table, column), column, part, options))
      : [],
  );
  const behind = (rows: readonly number[]) => countBehind(input.fragments, records, input.unit, rows);
  return {
    options,
    unit: input.unit,
    by: options.by.map((id) => ({ id, label: register.attributes.get(id)?.label ?? id })),
    n: {
      ...behind(used),
      setAside: grouping.ungrouped.map(({ attribute, rows }) => ({
        reason: `${register.attributes.get(attribute)?.label ?? attribute} not recorded`,
        fragments: behind(rows).fragments,
      })),
    },
    beside:
      single.length < 2
        ? null
        : conditionsBeside({
            records,
            register,
            by: printList(options.by.map((id) => inSentence(register.attributes.get(id)?.label ?? id))),
            groups: single.map(({ rows }) => rows),
            about: [...options.by, ...options.of],
            across: options.by[0] ?? null,
            confidence: options.confidence,
            random: input.random.stream('conditions'),
          }),
    spans: numeric.filter(isYears).flatMap((column) => spansOf(column, single)),
    recorded:
      columns.length < FEWEST_FOR_MATRIX || options.by.length === 0 ? [] : recordedCells(columns, single),
    time: options.timeBins === undefined ? null : timeLines(input, columns, parts, options.timeBins),
    numbers,
    ends: endsOf(numbers),
    terms,
    mixed: kinds.flatMap((column) =>
      parts.flatMap(({ rows, labels, whole }) =>
        (countByParts(column, rows, register) ?? []).map((one) => ({
          ...one,
          label: column.attribute.label,
          group: labels,
          whole,
        })),
      ),
    ),
    atLevel,
    ...pooledSummary(input, numeric, single, { terms, atLevel }),
    levels,
    marks: {
      groups: options.by.length === 0 ? new Map() : marksOf(input, options.by[0]),
      recorded: marksFor((id) => marksOf(input, id)),
      atLevel: marksFor((id) => marksOf(input, id, levels.get(id)?.folds)),
    },
  };
}

/** The same input, telling how far all groups have come whenever one of them says what it does. */
function within(input: AnalysisInput, share: number): AnalysisInput {
  return { ...input, onProgress: (_, what) => input.onProgress?.(share, what) };
}

function describable(column: Column, id: string): NumericColumn | TermColumn {
  if (column.kind !== 'text') return column;
  throw new InputError(
    `"${column.attribute.label}" (${id}) is free text, which has no summary`,
    {},
    'name attributes that are numbers, grades or kinds',
  );
}

function recordedCells(
  columns: readonly (NumericColumn | TermColumn)[],
  parts: readonly Part[],
): RecordedCell[] {
  return columns.flatMap((column) =>
    parts.map(({ labels, rows }) => ({
      attribute: column.attribute.id,
      label: column.attribute.label,
      group: labels.join(', '),
      n: rows.filter((row) => !isMissing(column, row)).length,
      of: rows.length,
    })),
  );
}

function groupOf(input: AnalysisInput, column: NumericColumn | TermColumn, part: Part) {
  const counts = groupCounts(input, column, part.rows);
  const gap = counts.missing / Math.max(1, counts.n + counts.missing);
  return {
    attribute: column.attribute.id,
    label: column.attribute.label,
    group: part.labels,
    whole: part.whole,
    counts,
    missing: counts.missing,
    gap: isMentioned(gap, 'gaps') ? gap : null,
    quotable: counts.n >= FEWEST_QUOTED,
  };
}

function numberGroup(
  input: AnalysisInput,
  column: NumericColumn,
  part: Part,
  options: SummaryOptions,
): NumberGroup {
  const filled = part.rows.filter((row) => !isMissing(column, row));
  return {
    ...groupOf(input, column, part),
    unit: column.attribute.unit ?? '',
    logarithmic: column.attribute.transform === 'log',
    points: filled.map((row) => ({
      id: input.records.id[row],
      value: pointOf(column, row),
      openEnded: isOpenEnded(column, row),
    })),
    quartiles: filled.length === 0 ? null : quartilesOf(filled.map((row) => pointOf(column, row))),
    statistics: describeNumbers(column, filled),
    limits: options.resamples === 0 ? null : centreLimits(input, column, filled, part.labels, options),
  };
}

function quartilesOf(points: readonly number[]): [q1: number, median: number, q3: number] {
  const sorted = sortedValues(points);
  return [quantileSorted(sorted, 0.25), quantileSorted(sorted, 0.5), quantileSorted(sorted, 0.75)];
}

function termsOf(table: FragmentTable, column: TermColumn): TermColumn {
  const own = table.columns.get(column.attribute.id);
  return own?.kind === 'term' ? own : column;
}

function termGroup(
  input: AnalysisInput,
  column: TermColumn,
  recorded: TermColumn,
  part: Part,
  options: SummaryOptions,
): TermGroup {
  const counted = countKinds(input, column, recorded, part.rows, options);
  // A kind that says that nothing is there is counted, though a gap otherwise; what says less than the level is no gap.
  const named = part.rows.filter((row) => termAt(recorded, row) !== null).length;
  return { ...groupOf(input, recorded, part), ...counted, missing: part.rows.length - named };
}
