import { COMPARED_BLOCKS } from '../../fragments/comparison/comparison.ts';
import type { Random } from '../../numerics/foundation/random.ts';
import { isUnavailable } from '../../numerics/foundation/unavailable.ts';
import { type CloudShape, cloudMaker } from '../../numerics/grouping/cloud-reference.ts';
import { type Gap, gapStatistic, groupsByGap } from '../../numerics/grouping/gap.ts';
import { permutedVariables } from '../../numerics/grouping/permuted.ts';
import { predictionStrength } from '../../numerics/grouping/prediction-strength.ts';
import { type GroupStability, groupStability } from '../../numerics/grouping/stability.ts';
import {
  type PrincipalCoordinates,
  principalCoordinates,
} from '../../numerics/ordination/principal-coordinates.ts';
import type { Unavailable } from '../contract.ts';
import { type Compared, compareAll, takeCompared } from './compared.ts';
import type { Partition } from './found.ts';
import { leaveOneOut } from './leave-out.ts';
import type { GroupingOptions } from './options.ts';
import { partitionsOf } from './partition.ts';
import type { Reference, Trust } from './trust-found.ts';
import { type Base, type TrustRequest, withinReach } from './trust-sample.ts';
import { variantsOf } from './variants.ts';
import { dispersionsOf, referenceTables } from './without-groups.ts';

/** Axes that clouds and heaps are drawn on; the rest of the spread is the same for every pair. */
const CLOUD_AXES = 20;
const MOST_SPLITS = 20;

/** Judges the groups by resampling, by splitting in halves, and against tables that hold none. */
export function trustIn(request: TrustRequest): Trust {
  const { options, random } = request;
  const base = withinReach(request);
  const steps = (from: number, to: number, what: string) => (share: number) =>
    request.onProgress(from + share * (to - from), what);
  const { permutations: tables, confidence } = options;
  const draws = { how: options, tables, confidence, tried: base.tried };
  const notAsked = { why: 'not asked for' };
  const shuffled =
    options.permutations === 0
      ? notAsked
      : base.spec.variables.length < 2
        ? { why: 'with one attribute, shuffling changes nothing but the names of the records' }
        : referenceTables({
            ...draws,
            draw: (chance) => {
              const variables = permutedVariables(base.spec.variables, base.items, chance);
              return compareAll({ ...base.spec, variables }, options.method);
            },
            random: random.stream('shuffled tables'),
            onProgress: steps(0.3, 0.6, 'grouping shuffled tables'),
          });
  const axes = options.permutations === 0 ? notAsked : principalCoordinates(base.compared.matrix, CLOUD_AXES);
  const against = (shape: CloudShape, from: number, what: string) =>
    isUnavailable(axes)
      ? axes
      : referenceTables({
          ...draws,
          draw: oneCloud(axes, base.items, shape),
          random: random.stream(what),
          onProgress: steps(from, from + 0.2, `grouping ${what}`),
        });
  const even = against('even', 0.6, 'even clouds');
  const heap = against('heap', 0.8, 'single heaps');
  const gaps = gapsOf(base.compared, base.tried, even, options);
  return {
    records: base.items.length,
    stability: stabilityOf(base, options, random.stream('stability'), steps(0, 0.3, 'resampling items')),
    shuffled,
    even,
    heap,
    gaps,
    groupsByGap: isUnavailable(gaps) ? gaps : groupsByGap(gaps),
    predictionStrength: strengthOf(base, options, random.stream('halves')),
    variants: options.variants
      ? variantsOf({
          ...base,
          how: options,
          blocks: COMPARED_BLOCKS,
          random: random.stream('variants'),
          onProgress: steps(0.3, 0.35, 'grouping in other ways'),
        })
      : notAsked,
    leftOut: options.variants
      ? leaveOneOut({
          ...base,
          how: options,
          random: random.stream('assemblages'),
          onProgress: steps(0.35, 0.4, 'leaving assemblages out'),
        })
      : notAsked,
    places: base.places,
  };
}

function oneCloud(
  axes: PrincipalCoordinates,
  items: Int32Array,
  shape: CloudShape,
): (random: Random) => Compared {
  const make = cloudMaker(axes, items, shape);
  return (random) => {
    const { n, values, coordinates, columns } = make(random);
    return { matrix: { n, values }, points: { values: coordinates, n, columns } };
  };
}

function stabilityOf(
  { compared, items, chosen }: Base,
  options: GroupingOptions,
  random: Random,
  onProgress: (share: number) => void,
): readonly GroupStability[] | Unavailable {
  if (options.resamples === 0) return { why: 'not asked for' };
  if (chosen.k === 0) return { why: 'no group was found' };
  return groupStability({
    membership: chosen.membership,
    items,
    resamples: options.resamples,
    regroup: (rows) => {
      const k = Math.min(chosen.k, rows.length);
      const { partitions } = partitionsOf(
        takeCompared(compared, rows),
        options,
        k,
        k,
        random.stream('again'),
      );
      return partitions[0]?.membership ?? new Int32Array(rows.length).fill(-1);
    },
    random,
    onProgress,
  });
}

function strengthOf(
  { compared, items, tried }: Base,
  options: GroupingOptions,
  random: Random,
): Trust['predictionStrength'] {
  if (options.resamples === 0) return { why: 'not asked for' };
  if (options.method === 'density') return { why: 'by density the number of groups is not chosen' };
  const counts = tried.map(({ k }) => k);
  const means = predictionStrength({
    matrix: compared.matrix,
    items,
    counts,
    regroup: (rows, k) =>
      partitionsOf(takeCompared(compared, rows), options, k, k, random.stream('half')).partitions[0]
        ?.membership ?? new Int32Array(rows.length),
    classify: options.method === 'medoids' || options.method === 'kmeans' ? 'medoid' : 'average',
    splits: Math.min(MOST_SPLITS, options.resamples),
    random,
  });
  return counts.map((k, place) => ({ k, mean: means[place] }));
}

function gapsOf(
  compared: Compared,
  tried: readonly Partition[],
  even: Reference | Unavailable,
  options: GroupingOptions,
): readonly Gap[] | Unavailable {
  if (isUnavailable(even)) return even;
  if (options.method === 'density' || tried.length < 2 || tried.some(({ k }, step) => k !== step + 2)) {
    return { why: 'it needs every number of groups from 2 on' };
  }
  const observed = dispersionsOf(compared, tried);
  const references = even.dispersions.filter((row) => row.length === observed.length);
  if (![observed, ...references].every((row) => row.every(Number.isFinite)) || references.length === 0) {
    return { why: 'some grouping leaves no difference within any group' };
  }
  return gapStatistic(observed, references);
}
