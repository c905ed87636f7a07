import { GROUND } from '../shared/figure/colours.ts';
import { placeOnLog } from '../shared/figure/log-axis.ts';
import type { RecordPoint } from './found.ts';

/** Ratios whose lines are drawn where points lie near them: even, and each double. */
const RATIOS = [
  [16, 1],
  [8, 1],
  [4, 1],
  [2, 1],
  [1, 1],
  [1, 2],
  [1, 4],
  [1, 8],
  [1, 16],
] as const;

/** Lines of equal ratio of the two measurements over the reach of the points, each with its name at its upper end. */
export function ratioLines(points: readonly Pick<RecordPoint, 'x' | 'y'>[], logarithmic: boolean) {
  const box = boxOf(points, logarithmic);
  const lines = RATIOS.flatMap(([first, second]) => {
    const slope = second / first;
    const from = Math.max(box.left, box.bottom / slope);
    const to = Math.min(box.right, box.top / slope);
    if (from >= to) return [];
    return [
      { name: `${first} : ${second}`, even: first === second, x: [from, to], y: [from * slope, to * slope] },
    ];
  });
  return {
    traces: lines.map(({ name, even, x, y }) => ({
      type: 'scatter',
      mode: 'lines',
      name,
      x,
      y,
      line: { color: GROUND.neutral, width: even ? 1.6 : 0.8, ...(even ? {} : { dash: 'dot' }) },
      hovertemplate: `ratio ${name}<extra></extra>`,
      showlegend: false,
    })),
    labels: lines.map(({ name, x, y }) => ({
      text: name,
      x: logarithmic ? placeOnLog(x[1]) : x[1],
      y: logarithmic ? placeOnLog(y[1]) : y[1],
      xanchor: 'right',
      yanchor: 'bottom',
      showarrow: false,
      font: { size: 10, color: GROUND.inkSoft },
    })),
  };
}

/** What is drawn around the points, so that lines end within the axes. */
const AROUND = 1.2;

function boxOf(points: readonly Pick<RecordPoint, 'x' | 'y'>[], logarithmic: boolean) {
  const box = { left: Infinity, right: -Infinity, bottom: Infinity, top: -Infinity };
  for (const { x, y } of points) {
    box.left = Math.min(box.left, x.point);
    box.right = Math.max(box.right, x.point);
    box.bottom = Math.min(box.bottom, y.point);
    box.top = Math.max(box.top, y.point);
  }
  return {
    left: logarithmic ? box.left / AROUND : 0,
    right: box.right * AROUND,
    bottom: logarithmic ? box.bottom / AROUND : 0,
    top: box.top * AROUND,
  };
}
