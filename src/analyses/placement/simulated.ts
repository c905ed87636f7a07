import { quantileSorted, sortedValues } from '../../numerics/describing/quantile.ts';
import { ln } from '../../numerics/foundation/elementary.ts';
import { type SetCell, type SetDesign, SIMULATED_LEVELS } from '../shared/simulated/cells.ts';
import { PLACEMENT_SETS } from '../shared/simulated/placement-sets.ts';
import type { Lacked } from './found.ts';
import type { SimulatedCoverage } from './sets-found.ts';
import type { Bag } from './typicality.ts';

const DESIGNS: Readonly<Record<Bag['by'], readonly SetDesign[]>> = {
  records: ['fragment, likeness 0.5', 'fragment, likeness 0.3', 'gaps by value'],
  sites: ['new site, effect 0.3', 'new site, effect 0.6'],
};
/** Items of one simulated site. */
const OF_A_SITE = 5;
/** A share this near to the level is what the level says. */
const NEAR = 0.02;

/**
 * What the simulation of sets found for placements like this one: labels judged alike, of the nearest number of items
 * (of the middle label) and the nearest share of the comparanda's measurements that is not recorded.
 */
export function simulatedCoverage(
  bags: readonly Bag[],
  lacked: Lacked,
  compared: number,
  levels: readonly number[],
): SimulatedCoverage[] {
  const missing = lacked.attributes.reduce((sum, { records }) => sum + records, 0);
  const gaps = lacked.of === 0 ? 0 : missing / (lacked.of * compared);
  return [...new Set(bags.map(({ attribute }) => attribute.label))].flatMap((attribute) => {
    const own = bags.filter((bag) => bag.attribute.label === attribute);
    const { by } = own[0];
    const middle = quantileSorted(sortedValues(own.map(({ rows }) => rows.length)), 0.5);
    const cells = PLACEMENT_SETS.cells.filter(({ design }) => DESIGNS[by].includes(design));
    const items = nearest(cells, middle * (by === 'sites' ? OF_A_SITE : 1), (cell) => cell.items, ln);
    const alike = nearest(
      items,
      gaps,
      (cell) => cell.gaps,
      (value) => value,
    );
    return SIMULATED_LEVELS.flatMap((level, place) =>
      levels.includes(level) && alike.length > 0 ? [coverageOf(attribute, by, alike, level, place)] : [],
    );
  });
}

function nearest(
  cells: readonly SetCell[],
  wanted: number,
  of: (cell: SetCell) => number,
  scale: (value: number) => number,
): readonly SetCell[] {
  const away = (cell: SetCell) => Math.abs(scale(of(cell)) - scale(wanted));
  const least = cells.reduce((best, cell) => Math.min(best, away(cell)), Infinity);
  return cells.filter((cell) => away(cell) === least);
}

function coverageOf(
  attribute: string,
  by: Bag['by'],
  cells: readonly SetCell[],
  level: number,
  place: number,
): SimulatedCoverage {
  const shares = cells.map(({ held, finds }) => held[place] / finds);
  const least = shares.reduce((a, b) => Math.min(a, b));
  const greatest = shares.reduce((a, b) => Math.max(a, b));
  const [{ labels, items, gaps }] = cells;
  return {
    attribute,
    level,
    labels,
    items,
    sites: by === 'sites' ? items / OF_A_SITE : null,
    gaps,
    finds: cells.reduce((sum, { finds }) => sum + finds, 0),
    least,
    greatest,
    verdict: verdictOn(cells, level, least, greatest),
    simulation: PLACEMENT_SETS.simulation,
    date: PLACEMENT_SETS.date,
  };
}

function verdictOn(
  cells: readonly SetCell[],
  level: number,
  least: number,
  greatest: number,
): SimulatedCoverage['verdict'] {
  if (least < level - NEAR) return 'less than asked';
  if (greatest <= level + NEAR) return 'as asked';
  if (least === 1 && cells.some(({ tooFew }) => tooFew > 0)) return 'too few to exclude';
  return cells[0].gaps > 0 ? 'gaps exclude less' : 'steps of p';
}
