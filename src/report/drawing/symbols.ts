import { boxPath, circlePath, linePath } from './marks.ts';

/** The shape of a marker as a path around a point; sizes as plotly has them, so that areas look alike. */
export function symbolPath(name: string, x: number, y: number, size: number): string {
  const r = size / 2;
  const at = (points: readonly (readonly [number, number])[]) =>
    `${linePath(points.map(([dx, dy]) => [x + dx * r, y + dy * r] as const))}Z`;
  switch (name.replace(/-(?:open|dot)/g, '')) {
    case 'square':
      return boxPath({ x: x - r, y: y - r, width: size, height: size });
    case 'diamond':
      return at([
        [0, -1.3],
        [1.3, 0],
        [0, 1.3],
        [-1.3, 0],
      ]);
    case 'cross':
      return at([
        [-0.4, -1.2],
        [0.4, -1.2],
        [0.4, -0.4],
        [1.2, -0.4],
        [1.2, 0.4],
        [0.4, 0.4],
        [0.4, 1.2],
        [-0.4, 1.2],
        [-0.4, 0.4],
        [-1.2, 0.4],
        [-1.2, -0.4],
        [-0.4, -0.4],
      ]);
    case 'triangle-up':
      return at([
        [0, -1.1547],
        [1.1547, 0.57735],
        [-1.1547, 0.57735],
      ]);
    case 'triangle-down':
      return at([
        [0, 1.1547],
        [1.1547, -0.57735],
        [-1.1547, -0.57735],
      ]);
    case 'triangle-left':
      return at([
        [-1.1547, 0],
        [0.57735, -1.1547],
        [0.57735, 1.1547],
      ]);
    case 'triangle-right':
      return at([
        [1.1547, 0],
        [-0.57735, -1.1547],
        [-0.57735, 1.1547],
      ]);
    case 'hourglass':
      return at([
        [-1, -1],
        [1, -1],
        [-1, 1],
        [1, 1],
      ]);
    case 'bowtie':
      return at([
        [-1, -1],
        [1, 1],
        [1, -1],
        [-1, 1],
      ]);
    case 'star':
      return at([
        [0, -1.4],
        [0.314, -0.433],
        [1.331, -0.433],
        [0.509, 0.165],
        [0.823, 1.133],
        [0, 0.535],
        [-0.823, 1.133],
        [-0.509, 0.165],
        [-1.331, -0.433],
        [-0.314, -0.433],
      ]);
    case 'pentagon':
      return at([
        [0, -1.1],
        [1.046, -0.34],
        [0.647, 0.89],
        [-0.647, 0.89],
        [-1.046, -0.34],
      ]);
    case 'hexagon':
      return at([
        [0, -1.1],
        [0.953, -0.55],
        [0.953, 0.55],
        [0, 1.1],
        [-0.953, 0.55],
        [-0.953, -0.55],
      ]);
    case 'x':
      return at([
        [0, -0.57],
        [0.57, -1.13],
        [1.13, -0.57],
        [0.57, 0],
        [1.13, 0.57],
        [0.57, 1.13],
        [0, 0.57],
        [-0.57, 1.13],
        [-1.13, 0.57],
        [-0.57, 0],
        [-1.13, -0.57],
        [-0.57, -1.13],
      ]);
    case 'x-thin':
      return (
        linePath([
          [x - r, y - r],
          [x + r, y + r],
        ]) +
        linePath([
          [x - r, y + r],
          [x + r, y - r],
        ])
      );
    case 'line-ns':
      return linePath([
        [x, y - r * 1.4],
        [x, y + r * 1.4],
      ]);
    case 'line-ew':
      return linePath([
        [x - r * 1.4, y],
        [x + r * 1.4, y],
      ]);
    default:
      return circlePath(x, y, r);
  }
}
