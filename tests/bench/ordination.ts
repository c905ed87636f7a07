import { EigenvalueDecomposition, Matrix } from 'ml-matrix';
import { symmetricEigen } from '../../src/numerics/foundation/eigen.ts';
import { createRandom } from '../../src/numerics/foundation/random.ts';
import { principalCoordinates } from '../../src/numerics/ordination/principal-coordinates.ts';
import { permanova } from '../../src/numerics/tests/permanova.ts';
import { cloud, distances } from './tools/cloud.ts';
import { asked, handOver, report, rscript, seconds } from './tools/yardstick.ts';

/**
 * How long do the leading principal coordinates, a permutational analysis of variance and a full set of
 * eigenpairs take, beside R's cmdscale, vegan's adonis2 and ml-matrix on the same numbers?
 *
 *   npx tsx tests/bench/ordination.ts [axes|variance|eigen …]
 */

if (asked('axes')) {
  const n = 5000;
  const points = cloud(n, 5, 6, 1);
  const path = handOver('axes.bin', points);
  const [theirs] = rscript(
    `d <- dist(numbers(${JSON.stringify(path)}, 5)); best(function() cmdscale(d, k = 3, eig = FALSE))`,
    1,
  );
  const matrix = distances(points, n);
  report(
    'first three principal coordinates, n = 5,000',
    seconds(() => principalCoordinates(matrix, 3)),
    {
      'R cmdscale': { seconds: theirs, atMost: 0.1 },
    },
  );
}

if (asked('variance')) {
  const n = 1000;
  const points = cloud(n, 5, 4, 2);
  const path = handOver('variance.bin', points);
  const [theirs] = rscript(
    `suppressMessages(library(vegan)); d <- dist(numbers(${JSON.stringify(path)}, 5)); g <- factor(rep(1:4, 250))
best(function() adonis2(d ~ g, permutations = 999))`,
    1,
  );
  const matrix = distances(points, n);
  const labels = Int32Array.from({ length: n }, (_, i) => i % 4);
  report(
    'permutational analysis of variance, n = 1,000, 999 permutations',
    seconds(() => permanova(matrix, labels, { random: createRandom(1), relabellings: 999 })),
    { 'vegan adonis2': { seconds: theirs, atMost: 0.1 } },
  );
}

if (asked('eigen')) {
  for (const n of [100, 200, 500]) {
    const random = createRandom(n);
    const square = new Float64Array(n * n);
    for (let i = 0; i < n; i++) {
      for (let j = 0; j <= i; j++) square[i * n + j] = square[j * n + i] = random.next() - 0.5;
    }
    const wide = new Matrix(Array.from({ length: n }, (_, i) => [...square.subarray(i * n, (i + 1) * n)]));
    let library: EigenvalueDecomposition | null = null;
    const solve = () => {
      library = new EigenvalueDecomposition(wide, { assumeSymmetric: true });
    };
    const theirs = seconds(solve);
    const ours = seconds(() => symmetricEigen(square, n));
    report(`all eigenpairs, n = ${n}`, ours, { 'ml-matrix': { seconds: theirs } });
    const own = symmetricEigen(square, n);
    console.log(`  greatest |Ax - lx|: ${residual(square, n, own.values, (k, i) => own.vectors[k * n + i])}`);
    const { realEigenvalues, eigenvectorMatrix } = library as unknown as EigenvalueDecomposition;
    console.log(
      `  ml-matrix: ${residual(square, n, realEigenvalues, (k, i) => eigenvectorMatrix.get(i, k))}`,
    );
  }
}

function residual(
  square: Float64Array,
  n: number,
  values: ArrayLike<number>,
  vector: (k: number, i: number) => number,
): string {
  let worst = 0;
  for (let k = 0; k < n; k++) {
    for (let i = 0; i < n; i++) {
      let sum = -values[k] * vector(k, i);
      for (let j = 0; j < n; j++) sum += square[i * n + j] * vector(k, j);
      worst = Math.max(worst, Math.abs(sum));
    }
  }
  return worst.toExponential(1);
}
