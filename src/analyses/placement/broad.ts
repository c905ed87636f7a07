import type { BroadRule } from '../../fragments/comparison/broad.ts';
import { type Comparison, compareRecords } from '../../fragments/comparison/comparison.ts';
import { recordOfRow } from '../../fragments/comparison/find.ts';
import type { FragmentTable } from '../../fragments/table.ts';
import { dissimilaritiesTo, pickVariables } from '../../numerics/dissimilarity/dissimilarity.ts';
import type { NearestFirst } from '../../numerics/dissimilarity/nearest-first.ts';
import type { DissimilaritySpec, RecordValue } from '../../numerics/dissimilarity/variables.ts';
import type { AnalysisInput } from '../contract.ts';
import type { BroadFound } from './found.ts';
import type { PlacementOptions } from './options.ts';
import type { Comparanda } from './prepare.ts';

/** The find and its comparanda with every broad term read by one rule. */
export interface BroadReading {
  readonly rule: BroadRule;
  readonly spec: DissimilaritySpec;
  readonly record: readonly RecordValue[];
  /** Of the find to every record. */
  readonly distances: Float64Array;
}

export interface BroadReadings {
  /** Every rule but the one that the comparison follows; the least and the greatest always among them or it. */
  readonly others: readonly BroadReading[];
  readonly least: Float64Array;
  readonly greatest: Float64Array;
  /** "tree bast", "openness not recorded". */
  readonly terms: readonly string[];
}

const RULES: readonly BroadRule[] = ['least', 'expected', 'greatest'];

/** The same comparison under each rule for broad terms; kept with the comparanda, since every find asks for it. */
function comparisonsOf(
  comparanda: Comparanda,
  { records, register }: Pick<AnalysisInput, 'records' | 'register'>,
): ReadonlyMap<BroadRule, Comparison> {
  const { byRule, comparison, settings } = comparanda;
  for (const rule of RULES)
    if (!byRule.has(rule))
      byRule.set(
        rule,
        rule === settings.broad
          ? comparison
          : compareRecords(records, register, { ...settings, broad: rule }),
      );
  return byRule;
}

/**
 * What a broad term of the find or of a comparandum allows: "tree bast" may be lime or willow, a twining whose openness
 * nobody recorded open or close. Null where nothing that is compared says less than a kind.
 *
 * @param known places of the attributes that the find has.
 */
export function broadReadings(
  comparanda: Comparanda,
  input: AnalysisInput,
  options: PlacementOptions,
  find: FragmentTable,
  known: readonly number[],
): BroadReadings | null {
  const { comparison } = comparanda;
  if (!known.some((place) => comparison.attributes[place].coding.kind === 'terms')) return null;
  const byRule = comparisonsOf(comparanda, input);
  const bounded = byRule.get('least') ?? comparison;
  const readings = [...byRule].map(([rule, made]): BroadReading => {
    const whole = recordOfRow(made, find, 0);
    const [spec, record] = [pickVariables(made.spec, known), known.map((place) => whole[place])];
    return { rule, spec, record, distances: dissimilaritiesTo(spec, record) };
  });
  const [least, greatest] = (['least', 'greatest'] as const).map(
    (rule) => readings.find((one) => one.rule === rule)!,
  );
  const wide = known.flatMap((place, at) => (isWide(least, greatest, at) ? [place] : []));
  if (wide.length === 0) return null;
  return {
    others: readings.filter(({ rule }) => rule !== options.broad),
    least: least.distances,
    greatest: greatest.distances,
    terms: wide.flatMap((place) => termsAt(bounded, place, find)),
  };
}

/** Whether two of the values that records or the find have are less far apart at the least than at the most. */
function isWide(least: BroadReading, greatest: BroadReading, at: number): boolean {
  const [near, far] = [least.spec.variables[at], greatest.spec.variables[at]];
  if (near.kind !== 'kinds' || far.kind !== 'kinds') return false;
  const codes = [...new Set([...near.codes, least.record[at].code])].filter((code) => code >= 0);
  return codes.some((a) =>
    codes.some((b) => near.between[a * near.levels + b] < far.between[a * far.levels + b]),
  );
}

function termsAt({ attributes, broad }: Comparison, place: number, find: FragmentTable): readonly string[] {
  const { attribute, coding } = attributes[place];
  const own = broad.find(({ label }) => label === attribute.label)?.terms.map(({ label }) => label) ?? [];
  const column = find.columns.get(attribute.id);
  const term = column?.kind === 'term' ? column.levels[column.codes[0]] : undefined;
  const ofFind =
    term !== undefined && coding.kind === 'terms' && coding.broad.has(term)
      ? [column?.raw[0].trim() ?? term]
      : [];
  const said = [...new Set([...ofFind, ...own])];
  return said.length > 0 ? said : [`${attribute.label.toLowerCase()} not recorded`];
}

/** Distances that differ by less are equal. */
const SAME = 1e-12;

/** Whether the nearest comparanda stay the nearest, whatever the broad terms mean. */
export function broadFound(
  { least, greatest, terms }: BroadReadings,
  order: NearestFirst,
  nearest: number,
): BroadFound {
  const listed = order.first(nearest);
  const inList = new Set(listed);
  const farthest = listed.reduce((most, row) => Math.max(most, greatest[row]), 0);
  let more = 0;
  for (const row of order.reached) if (!inList.has(row) && least[row] < farthest - SAME) more++;
  const turns = listed.some((row, place) =>
    listed.slice(place + 1).some((later) => least[later] < greatest[row] - SAME),
  );
  return { terms, more, nearest: more > 0 ? 'others may be nearer' : turns ? 'order may differ' : 'stay' };
}
