import { countRelabellings } from '../../numerics/resampling/permutation.ts';
import { printCount, printList, printNumber } from '../phrasing.ts';
import type { AttributeContrast, ContrastFound } from './compute.ts';

/** Below this many items a group is too small to be typical of anything. */
const SMALL_GROUP = 5;

/** What to mind: few items, ties, unequal spread, fragments of one item, many tests, ends of ranges. */
export function contrastCautions(found: ContrastFound): string[] {
  const alpha = 1 - found.options.confidence;
  const cautions = found.attributes.flatMap((contrast) => attributeCautions(contrast, alpha));
  if (found.kinds.length > 0) {
    cautions.push(
      `${printList(found.kinds)}: kinds, compared only together with the other attributes; a crosstab shows their counts.`,
    );
  }
  const tests = found.attributes.length + found.attributes.reduce((sum, { pairs }) => sum + pairs.length, 0);
  if (tests > 2) {
    cautions.push(
      `${tests} tests of place were asked (attributes and pairs): the adjusted p allows for the others of its family, the plain p does not; tests looked at after the fact are exploration.`,
    );
  }
  if (found.together !== null && !('why' in found.together)) {
    if (found.together.setAside > 0) {
      cautions.push(
        `${printCount(found.together.setAside, 'item')} could not be compared with all others and stayed out of the joint tests.`,
      );
    }
    cautions.push(...found.together.notes.map((note) => `${note}.`));
  }
  return [...new Set(cautions)];
}

function attributeCautions(contrast: AttributeContrast, alpha: number): string[] {
  const { samples, place, further, shared, sensitivity, trend } = contrast;
  const { label } = samples.attribute;
  const cautions: string[] = [];
  const { tested, groups, straddling } = samples;
  const single = groups.filter((group) => !tested.includes(group)).map((group) => `"${group.label}"`);
  if (single.length > 0)
    cautions.push(
      `${label}: ${printList(single)} ${single.length === 1 ? 'has' : 'have'} a single item, shown but not tested.`,
    );
  const small = tested
    .filter((group) => group.points.count < SMALL_GROUP)
    .map((group) => `"${group.label}" (${group.points.count})`);
  if (small.length > 0)
    cautions.push(
      `${label}: fewer than ${SMALL_GROUP} items in ${printList(small)}; nothing is typical of so few.`,
    );
  if (tested.length === 2) {
    const ways = countRelabellings(
      Int32Array.from(tested.flatMap((group, g) => new Array<number>(group.points.count).fill(g))),
    );
    if (2 / ways > alpha) {
      cautions.push(
        `${label}: with ${tested[0].points.count} and ${tested[1].points.count} items no p below ${printNumber(2 / ways, 2)} is possible.`,
      );
    }
  }
  if (shared) {
    const fragments = tested.reduce((sum, group) => sum + group.points.values.length, 0);
    const items = tested.reduce((sum, group) => sum + group.points.count, 0);
    cautions.push(
      `${label}: ${fragments} fragments come from ${items} items; fragments of one item are not independent, so items were dealt and drawn whole.`,
    );
  }
  if (straddling > 0) {
    cautions.push(
      `${label}: ${printCount(straddling, 'item')} ${straddling === 1 ? 'has' : 'have'} fragments in more than one group; they are taken as one thing in each, which ignores that they belong together.`,
    );
  }
  if ('why' in place) return cautions;
  if (tieShare(contrast) > 0.25) {
    cautions.push(
      `${label}: many readings are equal (rounding or grades); the tests correct for ties but lose power by them.`,
    );
  }
  const spread = further.find((test) => test.question === 'spread');
  if (spread !== undefined && !('why' in spread) && spread.p < alpha) {
    cautions.push(
      `${label}: the groups spread unequally (Brown-Forsythe F = ${printNumber(spread.statistic)}); a difference of place may then be one of spread.`,
    );
  }
  if (sensitivity !== null) {
    const changed = sensitivity.filter(
      ({ answer }) => !('why' in answer) && answer.p < alpha !== place.p < alpha,
    );
    cautions.push(
      changed.length === 0
        ? `${label}: some readings are ranges; with any of their ends tried the verdict stays the same.`
        : `${label}: some readings are ranges, and the verdict changes with ${printList(changed.map(({ at }) => at))}.`,
    );
  }
  if (trend !== null && 'why' in trend) cautions.push(`${label}: no trend was tested, ${trend.why}.`);
  if (trend !== null && !('why' in trend)) {
    cautions.push(
      `${label}: the dates come in ${trend.spans} distinct spans, and items of one span share whatever else was particular to it; a trend over so many dates rests on them, not on the number of items.`,
    );
  }
  return cautions;
}

/** Share of values that equal another one. */
function tieShare({ samples }: AttributeContrast): number {
  const values = samples.tested.flatMap((group) => Array.from(group.points.values));
  const counts = new Map<number, number>();
  for (const value of values) counts.set(value, (counts.get(value) ?? 0) + 1);
  const tied = values.filter((value) => (counts.get(value) ?? 0) > 1).length;
  return values.length === 0 ? 0 : tied / values.length;
}
