import { InputError } from '../../errors.ts';
import { countBehind } from '../../fragments/behind.ts';
import { type Grouping, groupRows } from '../../fragments/groups.ts';
import { requireColumn } from '../../fragments/require-column.ts';
import type { Column } from '../../fragments/table.ts';
import type { AnalysisInput, SetAside } from '../contract.ts';
import { marksOf } from '../shared/figure/marks.ts';
import { withKindsBeside } from '../shared/kinds-beside.ts';
import { type Computed, contrastAttribute } from './computed.ts';
import type { ContrastFound } from './found.ts';
import { guarded } from './guarded.ts';
import { judged } from './judged.ts';
import type { ContrastOptions } from './options.ts';
import { canBeContrasted } from './samples.ts';
import { contrastTogether } from './together.ts';

/**
 * Do these groups differ, by how much, and what could have been missed? Numbers and grades one by one
 * (place, spread, shape, every pair, ends of ranges, trend), several attributes together as well.
 *
 * @throws InputError for kinds alone (that is a crosstab), for text, and when fewer than two groups
 * have values.
 */
export function computeContrast(asked: AnalysisInput, options: ContrastOptions): ContrastFound {
  const input = withKindsBeside(asked, [options.by], options.of);
  const { records, register, unit } = input;
  const columns = [...new Set(options.of)].map((id) =>
    contrastable(requireColumn(records, id, register), id),
  );
  const single = columns.filter(canBeContrasted);
  if (single.length === 0 && columns.length === 1) {
    const { id, label } = columns[0].attribute;
    throw new InputError(
      `"${label}" (${id}) is an attribute of kinds, whose counts a contrast of numbers cannot compare`,
      { path: 'of' },
      `ask for a crosstab with "rows": "${options.by}" and "columns": "${id}"`,
    );
  }
  const grouping = groupRows(records, [options.by], register);
  const by = register.attributes.get(options.by)?.label ?? options.by;
  const steps = single.length + (columns.length > 1 ? 1 : 0);
  const computed = single.map((column, place) =>
    contrastAttribute(input, column, grouping, options, (share) =>
      input.onProgress?.((place + share) / steps, `contrasting ${column.attribute.label}`),
    ),
  );
  refuseWithoutGroups(computed, by);
  const attributes = judged(computed, options).map((one) => ({
    ...one,
    guard: guarded(input, one, options),
  }));
  const compared = {
    options,
    unit,
    by,
    marks: marksOf(input, options.by),
    attributes,
    tests: attributes.length + attributes.reduce((sum, { pairs }) => sum + pairs.length, 0),
    together: columns.length > 1 ? contrastTogether(input, options, input.random.stream('together')) : null,
    kinds: columns.filter((column) => !canBeContrasted(column)).map((column) => column.attribute.label),
  };
  input.onProgress?.(1, 'contrasted');
  const used = new Set(attributes.flatMap(({ samples }) => samples.tested.flatMap((group) => group.rows)));
  const rows = attributes.length > 0 ? [...used] : grouping.groups.flatMap((group) => group.rows);
  return {
    ...compared,
    n: {
      ...countBehind(input.fragments, records, unit, rows),
      setAside: setAside(input, grouping, by, computed),
    },
  };
}

/** One attribute that only one group records leaves the others their answer; where all are so there is none. */
function refuseWithoutGroups(attributes: readonly Computed[], by: string): void {
  if (attributes.length === 0 || attributes.some(({ samples }) => samples.groups.length >= 2)) return;
  const [{ attribute, groups }] = attributes.map(({ samples }) => samples);
  const has = groups.length === 0 ? 'no group of' : `only one group ("${groups[0].label}") of`;
  throw new InputError(
    `${has} "${by}" has a value of "${attribute.label}" (${attribute.id}), and a contrast needs two`,
    {},
    'choose another grouping or attribute, or select more fragments',
  );
}

function contrastable(column: Column, id: string): Column {
  if (column.kind !== 'text') return column;
  throw new InputError(
    `"${column.attribute.label}" (${id}) is free text, which cannot be contrasted`,
    { path: 'of' },
    'name attributes that are numbers or grades',
  );
}

function setAside(
  input: AnalysisInput,
  grouping: Grouping,
  by: string,
  attributes: readonly Computed[],
): SetAside[] {
  const behind = (rows: readonly number[]) =>
    countBehind(input.fragments, input.records, input.unit, rows).fragments;
  const asides = grouping.ungrouped.map(({ rows }) => ({
    reason: `${by} not recorded`,
    fragments: behind(rows),
  }));
  for (const { samples } of attributes) {
    const { label } = samples.attribute;
    const lacking = new Set(samples.groups.flatMap((group) => group.rows));
    const without = grouping.groups.flatMap((group) => group.rows).filter((row) => !lacking.has(row));
    if (without.length > 0) asides.push({ reason: `${label} without a value`, fragments: behind(without) });
    const single = samples.groups.filter((group) => !samples.tested.includes(group));
    for (const group of single) {
      asides.push({
        reason: `${label}: group "${group.label}" has a single item and is shown but not tested`,
        fragments: behind(group.rows),
      });
    }
  }
  return asides;
}
