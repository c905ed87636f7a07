import type { Figure } from '../contract.ts';
import { SEQUENTIAL } from '../shared/figure/colours.ts';
import { axis, escapeText, figureLayout } from '../shared/figure/style.ts';
import type { RecordedCell } from './found.ts';

const distinct = (values: readonly string[]) => [...new Set(values)];

/** The same as a matrix, darker where more is recorded. */
export function recordedFigure(cells: readonly RecordedCell[], by: string, unit: string): Figure {
  const groups = distinct(cells.map(({ group }) => group));
  const labels = distinct(cells.map(({ label }) => label));
  const cellOf = (label: string, group: string) =>
    cells.find((cell) => cell.label === label && cell.group === group);
  const sizes = groups.map((group) => cells.find((cell) => cell.group === group)?.of ?? 0);
  const share = (cell: RecordedCell | undefined) =>
    cell === undefined || cell.of === 0 ? null : (100 * cell.n) / cell.of;
  return {
    data: [
      {
        type: 'heatmap',
        x: groups.map((group, place) => escapeText(`${group} (${sizes[place]})`)),
        y: labels.map(escapeText),
        z: labels.map((label) => groups.map((group) => share(cellOf(label, group)))),
        text: labels.map((label) => groups.map((group) => String(cellOf(label, group)?.n || '–'))),
        texttemplate: '%{text}',
        textfont: { size: 10 },
        zmin: 0,
        zmax: 100,
        colorscale: SEQUENTIAL,
        xgap: 1,
        ygap: 1,
        colorbar: { thickness: 12, title: { text: '%' } },
        hovertemplate: '%{y}, %{x}: %{text} (%{z:.0f} %)<extra></extra>',
      },
    ],
    layout: figureLayout({
      x: axis('', { type: 'category', showgrid: false, tickangle: -35 }),
      y: axis('', { type: 'category', autorange: 'reversed', showgrid: false }),
      height: 170 + 24 * labels.length,
    }),
    caption: `How many ${unit}s of each ${by.toLowerCase()} have a value of each attribute (numbers; in brackets all of it), darker: a greater share. A dash: none has, so that nothing can be said of it there.`,
  };
}
