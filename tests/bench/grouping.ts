import { grouping } from '../../src/analyses/grouping/index.ts';
import { groupingOptions } from '../../src/analyses/grouping/options.ts';
import { createRandom } from '../../src/numerics/foundation/random.ts';
import { densityGroups } from '../../src/numerics/grouping/density.ts';
import { kmeans } from '../../src/numerics/grouping/kmeans.ts';
import { type Linkage, linkage } from '../../src/numerics/grouping/linkage.ts';
import { medoids } from '../../src/numerics/grouping/medoids.ts';
import { attribute, madeInput } from '../analyses/grouping/made-table.ts';
import { cloud, distances } from './tools/cloud.ts';
import { asked, handOver, memory, python, report, rscript, seconds } from './tools/yardstick.ts';

/**
 * How long does grouping take, beside fastcluster, scipy, scikit-learn and R's cluster on the same data in
 * the same run?
 *
 *   npx tsx tests/bench/grouping.ts [linkage|medoids|density|kmeans|large|memory …]
 */

const N = 5000;

if (asked('linkage')) {
  const methods: readonly Linkage[] = ['average', 'complete', 'ward', 'single', 'centroid'];
  const points = cloud(N, 5, 6, 1);
  const path = handOver('points.bin', points);
  const theirs = python(
    `import fastcluster
from scipy.cluster.hierarchy import linkage
from scipy.spatial.distance import pdist
d = pdist(numbers(${JSON.stringify(path)}, 5))
for m in ${JSON.stringify(methods)}:
    best(lambda: fastcluster.linkage(d, m)); best(lambda: linkage(d, m), 1)`,
    2 * methods.length,
  );
  const [ordinary] = python(
    `import fastcluster
from scipy.spatial.distance import pdist
d = pdist(numbers(${JSON.stringify(path)}, 5))
best(lambda: fastcluster.linkage(d, 'average'))`,
    1,
    // numpy asks for large pages of memory; the memory of an engine comes in ordinary ones.
    { NUMPY_MADVISE_HUGEPAGE: '0' },
  );
  const matrix = distances(points, N);
  for (const [place, method] of methods.entries()) {
    const yardsticks = {
      fastcluster: { seconds: theirs[2 * place], ...(method === 'average' ? { atMost: 1 } : {}) },
      ...(method === 'average' ? { 'fastcluster in ordinary pages': { seconds: ordinary } } : {}),
      scipy: { seconds: theirs[2 * place + 1] },
    };
    report(
      `${method} linkage, n = 5,000`,
      seconds(() => linkage(matrix, method)),
      yardsticks,
    );
  }
}

if (asked('medoids')) {
  const points = cloud(N, 5, 6, 1);
  const path = handOver('points.bin', points);
  const [pam] = rscript(
    `d <- dist(numbers(${JSON.stringify(path)}, 5))
best(function() cluster::pam(d, 6, diss = TRUE, pamonce = 5, keep.diss = FALSE))`,
    1,
  );
  const matrix = distances(points, N);
  report(
    'medoids, k = 6, n = 5,000',
    seconds(() => medoids(matrix, 6)),
    {
      'R cluster::pam (fast variant)': { seconds: pam, atMost: 0.2 },
    },
  );
}

if (asked('density')) {
  const matrix = distances(cloud(N, 5, 6, 1), N);
  const settings = { smallestGroup: 10, neighbours: 5 };
  report(
    'density, n = 5,000',
    seconds(() => densityGroups(matrix, settings)),
    {},
  );
}

if (asked('kmeans')) {
  const n = 100_000;
  const values = cloud(n, 6, 8, 2);
  const path = handOver('many.bin', values);
  const [theirs] = python(
    `from sklearn.cluster import KMeans
x = numbers(${JSON.stringify(path)}, 6)
best(lambda: KMeans(8, n_init=10, random_state=1, algorithm='lloyd').fit(x))`,
    1,
  );
  const settings = { k: 8, starts: 10, random: createRandom(3) };
  report(
    'k-means, 100,000 x 6, k = 8, ten starts',
    seconds(() => kmeans({ values, n, columns: 6 }, settings)),
    {
      'scikit-learn': { seconds: theirs, atMost: 3 },
    },
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
  report('grouping of 100,000 fragments, every step (asked for under 30 s and 1 GB)', ours, {});
  console.log(`  (${((performance.now() - start) / 1000).toFixed(1)} s by the clock, ${memory()})`);
}

if (asked('memory')) {
  const matrix = distances(cloud(10_000, 5, 6, 5), 10_000);
  const ours = seconds(() => linkage(matrix, 'average'), 1);
  report('average linkage, n = 10,000 (asked for under 1 GB)', ours, {});
  console.log(`  (${memory()})`);
}
