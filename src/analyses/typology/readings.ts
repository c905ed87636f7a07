import { midpoint } from '../../fragments/accessors.ts';
import type { FragmentTable, NumericColumn } from '../../fragments/table.ts';
import { stepOf } from '../../numerics/describing/reading-step.ts';
import { fitsLogarithm } from '../../numerics/describing/scale-by-fit.ts';
import { addTo } from '../../numerics/foundation/lists.ts';
import type { Random } from '../../numerics/foundation/random.ts';
import { sampleRows } from '../../numerics/grouping/sampled-medoids.ts';
import { type Rounded, roundedReadings } from '../../numerics/modes/rounded-tests.ts';
import { denseItems } from './finer-coarser.ts';

/** The readings of one attribute as they can be tested: one a record, each with its step and its item. */
export interface Readings {
  readonly rounded: Rounded;
  /** Item of each reading, 0 …. */
  readonly items: Int32Array;
  readonly logarithm: boolean;
  /** Why that scale: the attribute's definition says so, or the readings fit it better. */
  readonly scaleBy: 'definition' | 'fit';
  /** Smallest and largest step of the readings, in the attribute's unit; 0 where one is exact. */
  readonly steps: { readonly least: number; readonly most: number };
  /** How many readings there are, where those given are a sample of them; null where they are all. */
  readonly drawnFrom: number | null;
}

/** Splits are looked for in so many readings at most: more take minutes to draw again, and see no more. */
const MOST_READINGS = 3000;

/**
 * Readings of these rows with a single value. A step is the larger of what the digits printed and what the readings
 * of one source are multiples of. Where the definition does not say how a ratio is compared, the scale is the one
 * on which the readings are more like a normal. Of very many readings some are drawn by chance, which the answer says.
 */
export function readingsOf(
  table: FragmentTable,
  column: NumericColumn,
  rows: ArrayLike<number>,
  random: Random,
): Readings {
  const { attribute } = column;
  const known = Array.from(rows).filter((row) => !Number.isNaN(midpoint(column, row)));
  const defined = attribute.transform === 'log' || attribute.scale !== 'ratio';
  const logarithm =
    attribute.transform === 'log' || (!defined && fitsLogarithm(known.map((row) => midpoint(column, row))));
  const used = logarithm ? known.filter((row) => midpoint(column, row) > 0) : known;
  const all = Float64Array.from(used, (row) => midpoint(column, row));
  const allSteps = stepsOf(table, column, used, all);
  const many = used.length > MOST_READINGS;
  const places = many ? sampleRows(used.length, MOST_READINGS, random) : Int32Array.from(used.keys());
  const values = Float64Array.from(places, (place) => all[place]);
  const steps = Float64Array.from(places, (place) => allSteps[place]);
  return {
    rounded: roundedReadings(values, steps, logarithm),
    items: denseItems(Array.from(places, (place) => table.item[used[place]])),
    drawnFrom: many ? used.length : null,
    logarithm,
    scaleBy: defined ? 'definition' : 'fit',
    steps: {
      least: steps.reduce((least, step) => Math.min(least, step), steps[0] ?? 0),
      most: steps.reduce((most, step) => Math.max(most, step), 0),
    },
  };
}

function stepsOf(
  table: FragmentTable,
  column: NumericColumn,
  rows: readonly number[],
  values: Float64Array,
): Float64Array {
  const bySource = new Map<number, number[]>();
  rows.forEach((row, place) => {
    const { source } = table.origin[row];
    addTo(bySource, source, values[place]);
  });
  const heaped = new Map([...bySource].map(([source, own]) => [source, stepOf(own)]));
  return Float64Array.from(rows, (row) => {
    const printed = column.step[row];
    return Math.max(Number.isFinite(printed) ? printed : 0, heaped.get(table.origin[row].source) ?? 0);
  });
}
