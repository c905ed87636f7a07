import type { CrossedTable } from '../../fragments/crossed-table.ts';
import { itemCounts } from '../../fragments/items/counts.ts';
import { drawnCounts } from '../../numerics/assemblages/draws.ts';
import type { Random } from '../../numerics/foundation/random.ts';
import { correspondence, projectRow } from '../../numerics/ordination/correspondence.ts';
import { percentileLimits } from '../../numerics/resampling/percentile-limits.ts';
import type { Unavailable } from '../contract.ts';
import type { AssemblagePoint, AxesPlace } from './found.ts';
import type { StandingOptions } from './options.ts';

/** Axes that are told and drawn. */
const SHOWN = 2;

/**
 * Correspondence analysis of the other assemblages, and the site placed among them afterwards, with a cloud
 * of its items drawn again: the site does not help to make the axes that it is judged by.
 */
export function axesPlace(
  table: CrossedTable,
  site: number,
  options: StandingOptions,
  random: Random,
): AxesPlace | Unavailable {
  const columns = table.columns.length;
  const others = table.rows.flatMap((_, row) => (row === site ? [] : [row]));
  const found = correspondence(
    others.flatMap((row) => table.counts[row]),
    others.length,
    columns,
  );
  if ('why' in found) return { why: `among the other assemblages ${found.why}` };
  const at = projectRow(found, table.counts[site]);
  if ('why' in at) return { why: 'no other assemblage has any kind of this one' };
  const items = itemCounts(table)[site];
  const choice = new Int32Array(items.length);
  const shown = Math.min(SHOWN, found.axes);
  const cloud: (readonly number[])[] = [];
  for (let draw = 0; draw < options.resamples; draw++) {
    for (let i = 0; i < choice.length; i++) choice[i] = random.integer(choice.length);
    const place = projectRow(found, drawnCounts(items, choice, columns));
    if (!('why' in place)) cloud.push(Array.from(place.coordinates.subarray(0, shown)));
  }
  const tail = (1 - options.confidence) / 2;
  const points = (
    kept: readonly number[],
    coordinates: Float64Array,
    name: (index: number) => AssemblagePoint,
  ) =>
    kept.map((index, place) => ({
      ...name(index),
      at: Array.from(coordinates.subarray(place * found.axes, place * found.axes + shown)),
    }));
  const kept = new Set(found.keptColumns);
  return {
    shares: Array.from(found.eigenvalues.subarray(0, shown), (value) => value / found.totalInertia),
    others: points(found.keptRows, found.rows.coordinates, (index) => ({
      label: table.rows[others[index]],
      items: sum(table.counts[others[index]]),
      at: [],
    })),
    kinds: points(found.keptColumns, found.columns.coordinates, (index) => ({
      label: table.columns[index],
      items: sum(others.map((row) => table.counts[row][index])),
      at: [],
    })),
    site: Array.from(at.coordinates.subarray(0, shown)),
    cloud,
    limits: Array.from(at.coordinates.subarray(0, shown), (own, axis) =>
      percentileLimits(
        own,
        cloud.map((place) => place[axis]),
        tail,
      ),
    ),
    unplaced: sum(table.counts[site].filter((_, column) => !kept.has(column))),
  };
}

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
