import type { Comparison } from '../../fragments/comparison/comparison.ts';
import { isKnown } from '../../fragments/comparison/find.ts';
import type { NearestFirst } from '../../numerics/dissimilarity/nearest-first.ts';
import { type RecordValue, valueAt } from '../../numerics/dissimilarity/variables.ts';
import { verdictAt } from '../../numerics/tests/conformal.ts';
import type { NextMeasurement } from './found.ts';
import type { LabelAttribute } from './labels.ts';
import { type Bag, typicality } from './typicality.ts';

/** Values of the nearest comparanda that are tried for a missing attribute. */
const VALUES = 12;
/** Fewest such values for an expectation worth giving. */
const FEWEST_VALUES = 4;
/** Records of a label that are judged by here: an expectation needs less than a verdict. */
const MOST_RECORDS = 80;

/**
 * Which missing measurement would settle most? For each attribute of the comparison that the find lacks,
 * the values of its nearest comparanda are tried one by one, and the labels that could then not be
 * excluded are counted. An expectation over plausible values, not a promise.
 *
 * @param order the comparanda, nearest first.
 * @param bagsOn bags of all labels compared on these variables, with at most so many records a label.
 */
export function nextMeasurements(
  comparison: Comparison,
  record: readonly RecordValue[],
  order: NearestFirst,
  attributes: readonly LabelAttribute[],
  level: number,
  bagsOn: (places: readonly number[], most: number) => readonly Bag[],
): readonly NextMeasurement[] {
  const { spec } = comparison;
  const known = spec.variables.flatMap((_, place) => (isKnown(record[place]) ? [place] : []));
  const count = (places: readonly number[]) => {
    const bags = bagsOn(places, MOST_RECORDS);
    return (values: readonly RecordValue[]) =>
      attributes.map(
        (attribute) =>
          bags.filter((one) => {
            if (one.attribute !== attribute) return false;
            const outcome = typicality(one, values);
            return 'why' in outcome || verdictAt(level, outcome) !== 'excluded';
          }).length,
      );
  };
  const now = count(known)(known.map((place) => record[place]));
  return spec.variables.flatMap((variable, place) => {
    if (isKnown(record[place])) return [];
    const plausible = order
      .firstWhere((row) => isKnown(valueAt(variable, row)), VALUES)
      .map((row) => valueAt(variable, row));
    if (plausible.length < FEWEST_VALUES) return [];
    const counted = count([...known, place]);
    const totals = attributes.map(() => 0);
    for (const value of plausible) {
      const sizes = counted([...known.map((one) => record[one]), value]);
      sizes.forEach((size, at) => {
        totals[at] += size / plausible.length;
      });
    }
    const { attribute } = comparison.attributes[place];
    return attributes.map(({ label }, at) => ({
      id: attribute.id,
      label: attribute.label,
      of: label,
      now: now[at],
      expected: totals[at],
      values: plausible.length,
    }));
  });
}
