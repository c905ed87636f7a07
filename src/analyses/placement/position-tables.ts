import type { ResultTable } from '../contract.ts';
import type { PlacementFound } from './found.ts';

const axisColumns = (shares: readonly number[]) =>
  shares.map((share, axis) => ({
    id: `axis${axis + 1}`,
    label: `axis ${axis + 1} (${(share * 100).toFixed(1)} %)`,
  }));

export function positionTable({ position }: PlacementFound): ResultTable {
  const columns = [{ id: 'what', label: 'what' }, ...axisColumns('why' in position ? [] : position.shares)];
  return {
    title: 'Position of the find',
    columns,
    rows:
      'why' in position
        ? []
        : [['find', ...position.find], ...position.cloud.map((place) => ['within its ranges', ...place])],
    note: 'Principal coordinates of the comparanda; the find is added by Gower 1968.',
  };
}

export function coordinatesTable({ position, unit }: PlacementFound): ResultTable {
  return {
    title: 'Positions of the comparanda',
    columns: [{ id: 'id', label: unit }, ...axisColumns('why' in position ? [] : position.shares)],
    rows: 'why' in position ? [] : position.places.map(({ id, x, y }) => [id, x, y]),
  };
}
