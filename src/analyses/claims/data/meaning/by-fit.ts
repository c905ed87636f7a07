import { fitOfWays } from '../../conventions/way.ts';
import type { PrintedFigure } from '../../reading/claim.ts';
import { SAMPLED } from '../../reading/table/role-kinds.ts';
import { recompute } from '../quantities.ts';
import type { View } from '../values.ts';

/** What the data give for a figure that knows its records; null where they cannot. */
export function attempt(figure: PrintedFigure, view: View) {
  if (figure.values.length > 1) return null;
  const found = recompute(figure, view);
  return 'why' in found ? null : found.ways;
}

/** The one measure that gives most of what has none yet; two of equal claim are none. */
export function withMeasure(figures: readonly PrintedFigure[], view: View): readonly PrintedFigure[] {
  const open = figures.filter(
    ({ placed, quantity, attributes }) => placed === true && SAMPLED.has(quantity) && attributes.length === 0,
  );
  const tested = open.filter(({ vague }) => !vague);
  if (tested.length < 2) return figures;
  const scored = [...view.table.columns]
    .flatMap(([attribute, { kind }]) => (kind === 'numeric' ? [attribute] : []))
    .map((attribute) => ({
      attribute,
      fits: tested.filter((figure) => {
        const found = attempt({ ...figure, attributes: [attribute] }, view);
        return found !== null && fitOfWays(figure, found) !== null;
      }).length,
    }))
    .sort((a, b) => b.fits - a.fits);
  const [best, next] = scored;
  if (best === undefined || best.fits * 2 <= tested.length || best.fits === next?.fits) return figures;
  return figures.map((figure) =>
    figure.placed === true &&
    figure.attributes.length === 0 &&
    (SAMPLED.has(figure.quantity) || figure.quantity === 'n')
      ? { ...figure, attributes: [best.attribute] }
      : figure,
  );
}

/** Percentages are of their row, their column, or the whole: of whichever gives most of them. */
export function withBase(figures: readonly PrintedFigure[], view: View): readonly PrintedFigure[] {
  const isShare = ({ placed, quantity, counted, values: [value] }: PrintedFigure) =>
    placed === true &&
    counted.length > 0 &&
    (quantity === 'share' || (quantity === 'total' && value.percent));
  const turned = [
    (figure: PrintedFigure) => figure,
    (figure: PrintedFigure) => ({ ...figure, select: figure.counted, counted: figure.select }),
    (figure: PrintedFigure) => ({
      ...figure,
      select: [],
      selectOr: [],
      counted: [...figure.select, ...figure.counted],
    }),
  ].map(
    (turn) =>
      (figure: PrintedFigure): PrintedFigure => ({ ...turn(figure), quantity: 'share' }),
  );
  const shares = figures.filter(isShare);
  if (shares.length === 0) return figures;
  const fits = turned.map(
    (turn) =>
      shares.filter((figure) => {
        const other = turn(figure);
        const found = other.counted.length === 0 ? null : attempt(other, view);
        return found !== null && fitOfWays(other, found) !== null;
      }).length,
  );
  const best = turned[fits.indexOf(Math.max(...fits))];
  return figures.map((figure) => (isShare(figure) && best !== undefined ? best(figure) : figure));
}
