import { conditionsOf, type RecordsCondition } from '../../fragments/conditions.ts';
import type { FragmentTable } from '../../fragments/table.ts';
import { quantileSorted } from '../../numerics/describing/quantile.ts';
import { exp, ln } from '../../numerics/foundation/elementary.ts';
import { midranks } from '../../numerics/foundation/ranks.ts';
import { type MixedEstimate, mixedModel } from '../../numerics/models/mixed-model.ts';
import type { AnalysisInput, Unavailable } from '../contract.ts';
import { guardAgainst } from '../shared/guard/compute.ts';
import type { AdjustedEffect, Guard } from '../shared/guard/found.ts';
import { bridges } from '../shared/guard/strata.ts';
import type { Told } from '../verdicts.ts';
import type { AttributeSamples, JudgedPair } from './found.ts';
import type { ContrastOptions } from './options.ts';
import { strongestOf } from './strongest.ts';

/** Relabellings within a condition: only whether p passes the level is asked of them. */
const RELABELLINGS = 1999;

/** The records of one attribute with a value, laid out for models. */
interface Laid {
  readonly rows: readonly number[];
  readonly labels: Int32Array;
  readonly labelCount: number;
  /** Logarithms where ratios matter. */
  readonly values: Float64Array;
  readonly items: readonly string[];
}

/** Is a difference of one attribute, or the lack of one, made by who recorded, by preservation, structure, period? */
export function guarded(
  { records, register, random }: AnalysisInput,
  { samples, told, pairs }: { samples: AttributeSamples; told: Told; pairs: readonly JudgedPair[] },
  options: ContrastOptions,
): Guard {
  const laid = layOut(samples, records);
  const pair = strongestOf(pairs) ?? pairs[0];
  const named = pair === undefined ? [] : [pair.first, pair.second];
  return guardAgainst({
    ...laid,
    by: register.attributes.get(options.by)?.label ?? options.by,
    names: samples.tested.map(({ label }) => label),
    told,
    named,
    conditions: conditionsOf(records, laid.rows, [options.by, samples.attribute.id], options.by, register),
    scores: (strata, rows) => [alignedRanks(laid.values, strata, rows)],
    ...(samples.graded || pair === undefined
      ? {}
      : {
          adjust: (condition: RecordsCondition) => adjusted(laid, pair, condition, records, samples, options),
        }),
    confidence: options.confidence,
    relabellings: Math.min(options.relabellings, RELABELLINGS),
    random: random.stream(`conditions of ${samples.attribute.id}`),
  });
}

function layOut({ tested, logarithmic }: AttributeSamples, records: FragmentTable): Laid {
  const rows = tested.flatMap((group) => group.rows);
  return {
    rows,
    labels: Int32Array.from(tested.flatMap((group, label) => group.rows.map(() => label))),
    labelCount: tested.length,
    values: Float64Array.from(
      tested.flatMap(({ points }) => Array.from(points.values, (value) => (logarithmic ? ln(value) : value))),
    ),
    items: rows.map((row) => records.item[row]),
  };
}

/** Ranks of what is left when each stratum's median is taken off (Hodges & Lehmann 1962, Ann. Math. Stat. 33:482). */
function alignedRanks(
  values: Float64Array,
  strata: ArrayLike<number>,
  rows: readonly number[],
): Float64Array {
  const held = new Map<number, number[]>();
  rows.forEach((row, at) => {
    const own = held.get(strata[at]);
    if (own === undefined) held.set(strata[at], [values[row]]);
    else own.push(values[row]);
  });
  const medians = new Map(
    [...held].map(([stratum, own]) => [
      stratum,
      quantileSorted(
        own.sort((a, b) => a - b),
        0.5,
      ),
    ]),
  );
  return midranks(rows.map((row, at) => values[row] - (medians.get(strata[at]) ?? 0))).ranks;
}

/**
 * The named pair by linear mixed models, with and without the condition, of the records whose condition is known and
 * whose labels can be compared with the pair; items and sites as random parts where they repeat.
 */
function adjusted(
  laid: Laid,
  { first, second }: JudgedPair,
  condition: RecordsCondition,
  records: FragmentTable,
  { logarithmic }: AttributeSamples,
  { by }: ContrastOptions,
): AdjustedEffect | Unavailable {
  const { of, kinds } = condition;
  const set = bridges(condition, laid.labels, laid.labelCount);
  if (set[first] !== set[second]) return { why: 'the two share no kind of it' };
  const places = Array.from(of.keys()).filter((at) => of[at] >= 0 && set[laid.labels[at]] === set[first]);
  const y = places.map((at) => laid.values[at]);
  const indicator = (values: ArrayLike<number>, value: number) =>
    places.map((at) => (values[at] === value ? 1 : 0));
  const present = (values: ArrayLike<number>, count: number) =>
    Array.from({ length: count }, (_, value) => value).filter((value) =>
      places.some((at) => values[at] === value),
    );
  const others = present(laid.labels, laid.labelCount).filter((label) => label !== second && label !== first);
  const plain = [
    places.map(() => 1),
    indicator(laid.labels, first),
    ...others.map((label) => indicator(laid.labels, label)),
  ];
  const [, ...further] = present(of, kinds.length);
  const random = randomParts(places, laid, records, by);
  const groups = random.map(({ codes, count }) => ({ codes, count }));
  const [without, within] = [plain, [...plain, ...further.map((kind) => indicator(of, kind))]].map((fixed) =>
    mixedModel({ y, fixed, groups }),
  );
  if ('why' in without) return without;
  if ('why' in within) return within;
  const said = ({ estimate, se }: MixedEstimate) =>
    logarithmic ? { estimate: exp(estimate), se } : { estimate, se };
  return {
    plain: said(without.fixed[1]),
    within: said(within.fixed[1]),
    scale: logarithmic ? 'ratio' : 'difference',
    random: random.map(({ name }) => name),
  };
}

/** Items with several readings; sites, where labels are not sites and several stand under them. */
function randomParts(
  places: readonly number[],
  { rows, items, labels }: Laid,
  records: FragmentTable,
  by: string,
) {
  const coded = (name: string, of: readonly string[]) => {
    const names = [...new Set(of)];
    const numbers = new Map(names.map((one, at) => [one, at]));
    return { name, codes: Int32Array.from(of, (one) => numbers.get(one) ?? 0), count: names.length };
  };
  const item = coded(
    'item',
    places.map((at) => items[at]),
  );
  const site = records.columns.get('site');
  const sites =
    site === undefined || site.kind === 'numeric' || by === 'site' || by === 'assemblage'
      ? null
      : coded(
          'site',
          places.map((at) => site.raw[rows[at]]),
        );
  const labelled = new Set(places.map((at) => labels[at])).size;
  return [
    ...(item.count < places.length && item.count > 1 ? [item] : []),
    ...(sites !== null && sites.count > labelled && sites.count < places.length ? [sites] : []),
  ];
}
