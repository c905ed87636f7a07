import { InputError } from '../../errors.ts';

/** A line of a coast or a border: places in their order. */
export interface Outline {
  readonly x: readonly number[];
  readonly y: readonly number[];
}

/**
 * The lines of a GeoJSON text (RFC 7946), whatever holds them: collections, features, lines and rings of areas. Points are
 * passed over, heights too.
 *
 * @throws InputError for text that is no GeoJSON.
 */
export function outlinesOf(bytes: Uint8Array, file: string): readonly Outline[] {
  const mend = 'save the coast or the borders as GeoJSON (RFC 7946), in the coordinates of the places';
  let read: unknown;
  try {
    read = JSON.parse(new TextDecoder('utf-8').decode(bytes));
  } catch {
    throw new InputError('the coast is not valid JSON', { file }, mend);
  }
  const lines = linesIn(read);
  if (lines === null) throw new InputError('the coast is no GeoJSON', { file }, mend);
  return lines;
}

function linesIn(value: unknown): Outline[] | null {
  if (typeof value !== 'object' || value === null) return null;
  const { type, coordinates, features, geometries, geometry } = value as Readonly<Record<string, unknown>>;
  switch (type) {
    case 'FeatureCollection':
      return listOf(features, linesIn);
    case 'GeometryCollection':
      return listOf(geometries, linesIn);
    case 'Feature':
      return geometry === null ? [] : linesIn(geometry);
    case 'Point':
    case 'MultiPoint':
      return [];
    case 'LineString':
      return lineOf(coordinates);
    case 'MultiLineString':
    case 'Polygon':
      return listOf(coordinates, lineOf);
    case 'MultiPolygon':
      return listOf(coordinates, (rings) => listOf(rings, lineOf));
    default:
      return null;
  }
}

function listOf(value: unknown, of: (one: unknown) => Outline[] | null): Outline[] | null {
  if (!Array.isArray(value)) return null;
  const found = value.map(of);
  return found.some((one) => one === null) ? null : found.flatMap((one) => one ?? []);
}

function lineOf(value: unknown): Outline[] | null {
  if (!Array.isArray(value)) return null;
  const places = value.map((place): [number, number] | null =>
    Array.isArray(place) && Number.isFinite(place[0]) && Number.isFinite(place[1])
      ? [place[0], place[1]]
      : null,
  );
  if (places.some((place) => place === null)) return null;
  const sure = places.flatMap((place) => (place === null ? [] : [place]));
  return [{ x: sure.map(([x]) => x), y: sure.map(([, y]) => y) }];
}
