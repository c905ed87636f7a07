import { linkage } from '../../src/numerics/grouping/linkage.ts';
import { medoids } from '../../src/numerics/grouping/medoids.ts';
import { createRandom } from '../../src/numerics/random.ts';

const cpu = () => {
  const u = process.cpuUsage();
  return (u.user + u.system) / 1000;
};

function cloud(n: number, columns: number, centres: number, seed: number): Float64Array {
  const random = createRandom(seed);
  const at = Array.from({ length: centres * columns }, () => 6 * random.next());
  const points = new Float64Array(n * columns);
  for (let i = 0; i < n; i++) {
    const centre = random.integer(centres) * columns;
    for (let c = 0; c < columns; c++) {
      points[i * columns + c] =
        at[centre + c] + random.next() + random.next() + random.next() + random.next() - 2;
    }
  }
  return points;
}
function distances(points: Float64Array, n: number, columns: number) {
  const values = new Float64Array((n * (n - 1)) / 2);
  let place = 0;
  for (let i = 0; i < n; i++)
    for (let j = i + 1; j < n; j++) {
      let s = 0;
      for (let c = 0; c < columns; c++) {
        const d = points[i * columns + c] - points[j * columns + c];
        s += d * d;
      }
      values[place++] = Math.sqrt(s);
    }
  return { n, values };
}
const m = distances(cloud(5000, 5, 6, 1), 5000, 5);
for (const method of ['average', 'complete', 'ward', 'single', 'centroid'] as const) {
  const t = cpu();
  linkage(m, method);
  console.log(method, cpu() - t);
}
for (let r = 0; r < 2; r++) {
  const t = cpu();
  const f = medoids(m, 6);
  console.log('medoids', cpu() - t, f.swaps, f.cost);
}
