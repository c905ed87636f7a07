import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { grouping } from '../../src/analyses/grouping/index.ts';
import { groupingOptions } from '../../src/analyses/grouping/options.ts';
import type { Condensed } from '../../src/numerics/condensed.ts';
import { densityGroups } from '../../src/numerics/grouping/density.ts';
import { kmeans } from '../../src/numerics/grouping/kmeans.ts';
import { type Linkage, linkage } from '../../src/numerics/grouping/linkage.ts';
import { medoids } from '../../src/numerics/grouping/medoids.ts';
import { createRandom } from '../../src/numerics/random.ts';
import { attribute, madeInput } from '../analyses/grouping/made-table.ts';

/**
 * How long does grouping take, beside fastcluster, scipy, scikit-learn (/usr/bin/python3) and R's cluster on
 * the same data in the same run? Ratios are in processor time of one thread, so that a busy machine disturbs
 * both alike; without the yardsticks the time stands alone.
 *
 *   npx tsx tests/bench/grouping.ts [linkage|medoids|density|kmeans|large|memory …]
 */

const wanted = process.argv.slice(2);
const asked = (name: string) => wanted.length === 0 || wanted.includes(name);

function cloud(n: number, columns: number, centres: number, seed: number): Float64Array {
  const random = createRandom(seed);
  const at = Array.from({ length: centres * columns }, () => 6 * random.next());
  return Float64Array.from({ length: n }, () => random.integer(centres)).reduce(
    (points, centre, i) => {
      for (let c = 0; c < columns; c++) {
        const spread = random.next() + random.next() + random.next() + random.next() - 2;
        points[i * columns + c] = at[centre * columns + c] + spread;
      }
      return points;
    },
    new Float64Array(n * columns),
  );
}

function distances(points: Float64Array, n: number): Condensed {
  const columns = points.length / n;
  const values = new Float64Array((n * (n - 1)) / 2);
  let pair = 0;
  for (let i = 0; i < n; i++) {
    for (let j = i + 1; j < n; j++) {
      let square = 0;
      for (let c = 0; c < columns; c++) {
        const difference = points[i * columns + c] - points[j * columns + c];
        square += difference * difference;
      }
      values[pair++] = Math.sqrt(square);
    }
  }
  return { n, values };
}

/** Best of several runs, in seconds of processor time. */
function seconds(run: () => void, runs = 3): number {
  let best = Number.POSITIVE_INFINITY;
  for (let i = 0; i < runs; i++) {
    const start = process.cpuUsage();
    run();
    const used = process.cpuUsage(start);
    best = Math.min(best, (used.user + used.system) / 1e6);
  }
  return best;
}

function report(name: string, ours: number, yardsticks: Readonly<Record<string, number | null>>): void {
  const parts = Object.entries(yardsticks).map(([tool, theirs]) =>
    theirs === null
      ? `${tool} not here`
      : `${tool} ${theirs.toFixed(2)} s (ratio ${(ours / theirs).toFixed(2)})`,
  );
  console.log([`${name}: ${ours.toFixed(2)} s`, ...parts].join('; '));
}

const folder = mkdtempSync(join(tmpdir(), 'thrum-bench-'));
const file = join(folder, 'points.bin');

/** Runs a script that prints one number a line; null for each where the interpreter or a package is missing. */
function yardstick(command: string, args: readonly string[], count: number): (number | null)[] {
  const done = spawnSync(command, args, { encoding: 'utf8', env: { ...process.env, OMP_NUM_THREADS: '1' } });
  const lines = done.status === 0 ? done.stdout.trim().split('\n').map(Number) : [];
  return Array.from({ length: count }, (_, i) => (Number.isFinite(lines[i]) ? lines[i] : null));
}
const python = (code: string, count: number) =>
  yardstick('/usr/bin/python3', ['-c', `${CLOCK}\n${code}`], count);
const CLOCK = `
import time, numpy as np
def best(f, runs=3):
    out = []
    for _ in range(runs):
        t = time.process_time(); f(); out.append(time.process_time() - t)
    print(min(out))
def points(columns): return np.fromfile(${JSON.stringify(file)}).reshape(-1, columns)`;

const points = cloud(5000, 5, 6, 1);
if (asked('linkage') || asked('medoids') || asked('density')) {
  const matrix = distances(points, 5000);
  writeFileSync(file, points);
  if (asked('linkage')) {
    const methods: readonly Linkage[] = ['average', 'complete', 'ward', 'single', 'centroid'];
    const theirs = python(
      `import fastcluster
from scipy.cluster.hierarchy import linkage
from scipy.spatial.distance import pdist
d = pdist(points(5))
for m in ${JSON.stringify(methods)}:
    best(lambda: fastcluster.linkage(d, m)); best(lambda: linkage(d, m), 1)`,
      2 * methods.length,
    );
    for (const [place, method] of methods.entries()) {
      const ours = seconds(() => linkage(matrix, method));
      report(`${method} linkage, n = 5,000`, ours, {
        fastcluster: theirs[2 * place],
        scipy: theirs[2 * place + 1],
      });
    }
  }
  if (asked('medoids')) {
    const [pam] = yardstick(
      'Rscript',
      [
        '-e',
        `x <- matrix(readBin(${JSON.stringify(file)}, "double", 25000), ncol = 5, byrow = TRUE); d <- dist(x)
t <- system.time(cluster::pam(d, 6, diss = TRUE, pamonce = 5, keep.diss = FALSE)); cat(t[["user.self"]] + t[["sys.self"]])`,
      ],
      1,
    );
    report(
      'medoids, k = 6, n = 5,000',
      seconds(() => medoids(matrix, 6)),
      { 'R cluster::pam (fast variant)': pam },
    );
  }
  if (asked('density')) {
    report(
      'density, n = 5,000',
      seconds(() => densityGroups(matrix, { smallestGroup: 10, neighbours: 5 })),
      {},
    );
  }
}

if (asked('kmeans')) {
  const many = cloud(100_000, 6, 8, 2);
  writeFileSync(file, many);
  const [theirs] = python(
    `from sklearn.cluster import KMeans
x = points(6)
best(lambda: KMeans(8, n_init=10, random_state=1, algorithm='lloyd').fit(x), 1)`,
    1,
  );
  const settings = { k: 8, starts: 10, random: createRandom(3) };
  report(
    'k-means, 100,000 x 6, k = 8, ten starts',
    seconds(() => kmeans({ values: many, n: 100_000, columns: 6 }, settings), 1),
    { 'scikit-learn': theirs },
  );
}

if (asked('large')) {
  const n = 100_000;
  const random = createRandom(4);
  const kind = Array.from({ length: n }, () => random.integer(4));
  const input = madeInput([
    ...['rowSpacing', 'density1', 'diameter1'].map((id) => ({
      attribute: attribute(id, 'spacing', 'ratio', { transform: 'log' }),
      values: kind.map((k) => (random.next() < 0.1 ? null : (k + 1) * (1 + random.next()))),
    })),
    {
      attribute: attribute('structure', 'structure', 'nominal'),
      values: kind.map((k) => (random.next() < 0.9 ? 'abcd'[k] : 'abcd'[random.integer(4)])),
    },
    { attribute: attribute('fibre', 'fibre', 'nominal'), values: kind.map((k) => 'xxyz'[k]) },
  ]);
  const start = performance.now();
  const ours = seconds(() => grouping.compute(input, groupingOptions.parse({})), 1);
  report('grouping of 100,000 fragments, every step', ours, {});
  console.log(`  (${((performance.now() - start) / 1000).toFixed(1)} s by the clock, ${memory()})`);
}

if (asked('memory')) {
  const matrix = distances(cloud(10_000, 5, 6, 5), 10_000);
  report(
    'average linkage, n = 10,000',
    seconds(() => linkage(matrix, 'average'), 1),
    {},
  );
  console.log(`  (${memory()})`);
}

function memory(): string {
  return `at most ${(process.resourceUsage().maxRSS / 1024).toFixed(0)} MB resident`;
}

rmSync(folder, { recursive: true });
