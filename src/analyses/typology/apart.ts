import type { Register } from '../../attributes/definition.ts';
import { defaultAttributes } from '../../fragments/compared-by-default.ts';
import { type ComparisonSettings, compareRecords } from '../../fragments/comparison/comparison.ts';
import { viewRows } from '../../fragments/subset.ts';
import type { FragmentTable } from '../../fragments/table.ts';
import { type Condensed, takeRecords } from '../../numerics/dissimilarity/condensed.ts';
import { dissimilarities } from '../../numerics/dissimilarity/dissimilarity.ts';
import type { Random } from '../../numerics/foundation/random.ts';
import { knownRecords } from '../../numerics/grouping/known-records.ts';
import { silhouette } from '../../numerics/grouping/silhouette.ts';
import { principalCoordinates } from '../../numerics/ordination/principal-coordinates.ts';
import { drawnByGroup } from '../../numerics/resampling/drawn-by-group.ts';
import { dispersionTest } from '../../numerics/tests/dispersion.ts';
import { permanova } from '../../numerics/tests/permanova.ts';
import type { Unavailable } from '../contract.ts';
import { printCount } from '../phrasing.ts';
import { toldAt } from '../verdicts.ts';
import type { Apart, NotApart, TypeMap } from './apart-found.ts';
import { computedFrom } from './computed-from.ts';
import { conditionsOf, kindsOf } from './conditions.ts';
import { denseItems, finerOrCoarser } from './finer-coarser.ts';
import { groupFreely } from './free-groups.ts';
import { predictByDiscriminant, predictByNeighbours } from './predict.ts';
import { withinKinds } from './within.ts';

export interface ApartRequest {
  readonly table: FragmentTable;
  readonly register: Register;
  readonly settings: ComparisonSettings;
  /** Whether a test on an attribute would be circular. */
  readonly circular: (id: string) => boolean;
  readonly defining: readonly string[];
  /** Rows and types of the records that have a type. */
  readonly rows: Int32Array;
  readonly types: Int32Array;
  readonly count: number;
  /** Fold of each of them. */
  readonly fold: Int32Array;
  readonly neighbours: number;
  readonly relabellings: number;
  /** Attribute within whose kinds the types are compared once more. */
  readonly within: string;
  /** At which the tests are judged. */
  readonly confidence: number;
  readonly random: Random;
}

const FEWEST = 4;
/** More records than these are drawn from: each is compared with each, time and again. */
const MOST_COMPARED = 1000;
/** Of a rare type no fewer are drawn, so that it does not vanish. */
const LEAST_OF_A_TYPE = 100;

/**
 * Compares the types in attributes that did not define them; a test on a defining attribute would be
 * circular. Needs four records, two types and one free attribute. Of very many records some of each type are drawn by
 * chance, as the types are frequent but of a rare one more, and the answer says so.
 */
export function howApart(request: ApartRequest): Apart | NotApart {
  const { register, settings, types, count, random, relabellings, confidence } = request;
  const drawn = drawnByGroup(types, { most: MOST_COMPARED, leastOfEach: LEAST_OF_A_TYPE, random });
  const typed = viewRows(
    request.table,
    drawn.map((place) => request.rows[place]),
  );
  const wanted = settings.of.length > 0 ? settings.of : defaultAttributes(typed);
  const usedTwice = settings.of.filter(request.circular);
  const candidates = wanted.filter((id) => !request.circular(id) && hasValue(typed, id));
  const all = Int32Array.from({ length: typed.rows }, (_, row) => row);
  const computed = candidates.flatMap((id) => computedFrom(typed, all, request.defining, id) ?? []);
  const free = candidates.filter((id) => !computed.some((one) => one.id === id));
  if (free.length === 0)
    return {
      circular: wanted.some(request.circular) || computed.length > 0,
      usedTwice,
      why:
        wanted.some(request.circular) || computed.length > 0
          ? 'every attribute that could be compared defines the types or is computed from what does'
          : 'no attribute is recorded in which they could be compared',
    };
  const taken = takeComparable(typed, register, { ...settings, of: free });
  if ('why' in taken) return { ...taken, circular: false, usedTwice };
  const { matrix } = taken;
  const table = viewRows(typed, taken.places);
  const places = taken.places.map((place) => drawn[place]);
  const labels = Int32Array.from(places, (place) => types[place]);
  const items = denseItems(table.item);
  const present = [...new Set(labels)].sort((a, b) => a - b);
  const dense = labels.map((type) => present.indexOf(type));
  const widths = silhouette(matrix, labels);
  const options = { random: random.stream('difference'), relabellings };
  const predicting = {
    labels,
    fold: Int32Array.from(places, (place) => request.fold[place]),
    count,
    relabellings,
    random: random.stream('prediction'),
  };
  const difference = permanova(matrix, dense, options);
  const dispersion: Apart['dispersion'] =
    present.length < 2
      ? { why: 'a comparison needs two groups' }
      : dispersionTest(matrix, dense, { ...options, random: random.stream('dispersion') });
  const prediction = predictByNeighbours(matrix, predicting, request.neighbours, free);
  return {
    compared: free,
    usedTwice,
    computed,
    places,
    labels,
    drawnFrom: drawn.length === types.length ? null : types.length,
    difference,
    differ: toldAt('why' in difference ? difference : difference.p, confidence),
    dispersion,
    differInSpread: toldAt('why' in dispersion ? dispersion : dispersion.p, confidence),
    silhouettes: Array.from({ length: count }, (_, type) =>
      present.includes(type) && widths !== null ? widths.groups[type] : null,
    ),
    meanSilhouette: widths === null ? { why: 'only one type has records to compare' } : widths.mean,
    prediction,
    predicted: toldAt('why' in prediction ? prediction : prediction.p, confidence),
    discriminant: predictByDiscriminant(table, free, {
      ...predicting,
      random: random.stream('discriminant'),
    }),
    freeGroups: groupFreely(matrix, labels, count, items, random.stream('stability')),
    finerCoarser: finerOrCoarser(matrix, labels, items, {
      relabellings,
      confidence,
      random: random.stream('finer'),
    }),
    map: mapOf(matrix),
    within: withinKinds(kindsOf(table, request.within, register), matrix, labels, {
      relabellings,
      confidence,
      random: random.stream('within'),
    }),
    conditions: conditionsOf({
      table,
      matrix,
      labels,
      register,
      within: request.within,
      about: [...request.defining, ...free],
      relabellings,
      confidence,
      random: random.stream('conditions'),
    }),
  };
}

function mapOf(matrix: Condensed): TypeMap | Unavailable {
  const found = principalCoordinates(matrix, 2);
  if ('why' in found) return found;
  if (found.axes < 2) return { why: 'the records lie on a line' };
  const { coordinates, eigenvalues, positive } = found;
  return {
    x: Float64Array.from({ length: matrix.n }, (_, i) => coordinates[2 * i]),
    y: Float64Array.from({ length: matrix.n }, (_, i) => coordinates[2 * i + 1]),
    shares: [eigenvalues[0] / positive, eigenvalues[1] / positive],
  };
}

function hasValue(table: FragmentTable, id: string): boolean {
  const column = table.columns.get(id);
  if (column === undefined || column.kind === 'text') return true;
  return column.kind === 'numeric'
    ? column.low.some((value) => !Number.isNaN(value))
    : column.codes.some((code) => code >= 0) || column.attribute.scale === 'presence';
}

function takeComparable(
  typed: FragmentTable,
  register: Register,
  settings: ComparisonSettings,
): { places: Int32Array; matrix: Condensed } | Unavailable {
  const all = dissimilarities(compareRecords(typed, register, settings).spec);
  const { kept } = knownRecords(all);
  if (kept.length < FEWEST)
    return {
      why: `only ${printCount(kept.length, 'record')} can be compared in attributes that do not define the types`,
    };
  return { places: Int32Array.from(kept), matrix: takeRecords(all, kept) };
}
