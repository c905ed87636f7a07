import { viewItems } from '../../../fragments/items/items.ts';
import type { AnalysisInput } from '../../contract.ts';
import type { FigureCheck } from '../found.ts';
import { collect } from '../print/evidence.ts';
import type { PrintedFigure } from '../reading/claim.ts';
import { type Attempt, attempt, valueIn } from './attempt.ts';
import { checkFigure } from './check-figure.ts';
import { indicatedWays } from './indicated.ts';
import { countedOtherwise } from './other-counting.ts';
import type { Peer } from './reasons/trial.ts';
import { checkSizes } from './sizes.ts';
import type { View } from './values.ts';

/** What the figures are recomputed from. */
export type Material = Pick<AnalysisInput, 'fragments' | 'records' | 'unit' | 'register'>;

/**
 * Every figure recomputed from the records, in the study's unit, by the ordinary functions: it agrees where
 * the result prints so; where it does not, the usual reasons are tried. Figures of one text are of one test: where
 * its degrees of freedom say which way it was computed, the others are held to that way.
 */
export function checkData(
  figures: readonly PrintedFigure[],
  material: Material,
  onProgress?: AnalysisInput['onProgress'],
): FigureCheck[] {
  const view = viewOf(material);
  const otherView = otherViewOf(material);
  const found = new Map<PrintedFigure, Attempt>(
    figures.map((figure, i) => {
      onProgress?.(i / figures.length, 'recomputing printed figures');
      return [figure, attempt(figure, view)];
    }),
  );
  const peers = figures.map((figure): Peer => ({ figure, value: valueIn(found.get(figure)) }));
  const lines = collect(figures, ({ cell, line, id }) => (cell === null ? line : id));
  const checked = [...lines.values()].flatMap((line) => {
    const checks = checkLine(line, found, { view, otherView, peers });
    return checks.some(({ outcome }) => outcome === 'differs')
      ? (countedOtherwise(line, checks, view, (other, seen) =>
          checkLine(other, new Map(other.map((figure) => [figure, attempt(figure, seen)])), {
            view: seen,
            otherView,
            peers,
          }),
        ) ?? checks)
      : checks;
  });
  const byId = new Map(checked.map((check) => [check.figure, check]));
  return figures.flatMap(({ id }) => byId.get(id) ?? []);
}

interface Asked {
  readonly view: View;
  readonly otherView: View;
  readonly peers: readonly Peer[];
}

/** All figures of one text. */
function checkLine(
  line: readonly PrintedFigure[],
  found: ReadonlyMap<PrintedFigure, Attempt>,
  asked: Asked,
): FigureCheck[] {
  const sizes = checkSizes(line, asked.view);
  const indicated = indicatedWays(line, found, asked.view);
  return line.map(
    (figure) =>
      sizes.get(figure.id) ??
      checkFigure(figure, found.get(figure) ?? { why: 'nothing to compute it from' }, {
        ...asked,
        indicated: indicated.get(figure) ?? null,
      }),
  );
}

function viewOf({ records, register, unit }: Material): View {
  return { table: records, register, unit };
}

function otherViewOf({ fragments, register, unit }: Material): View {
  return unit === 'item'
    ? { table: fragments, register, unit: 'fragment' }
    : { table: viewItems(fragments, register), register, unit: 'item' };
}
