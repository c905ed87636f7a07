import { dissimilarities, plainRows } from '../../src/numerics/dissimilarity/dissimilarity.ts';
import { prepareComparison } from '../../src/numerics/dissimilarity/prepare.ts';
import type { DissimilaritySpec, Variable } from '../../src/numerics/dissimilarity/variables.ts';
import { createRandom } from '../../src/numerics/foundation/random.ts';
import { asked, handOver, python, report, rscript, seconds } from './tools/yardstick.ts';

/**
 * How long does the block dissimilarity of 5,000 records take, 13 columns (eight numbers, five kinds) with
 * 10 % gaps, beside Gower's coefficient in numpy, one record against all others at a time, and R's cluster::daisy?
 *
 * And how much more with eight facets of the structure, each known of two records in five, beside the same without?
 *
 *   npx tsx tests/bench/dissimilarity.ts [dissimilarity | facets]
 */

const N = 5000;
const NUMBERS = 8;
const KINDS = 5;
const LEVELS = 6;

const random = createRandom(11);
const table = new Float64Array(N * (NUMBERS + KINDS)).fill(Number.NaN);
for (let i = 0; i < N; i++) {
  for (let c = 0; c < NUMBERS + KINDS; c++) {
    const value = c < NUMBERS ? 10 * random.next() : random.integer(LEVELS);
    if (random.next() >= 0.1) table[i * (NUMBERS + KINDS) + c] = value;
  }
}

function variable(c: number): Variable {
  const values = Float64Array.from({ length: N }, (_, i) => table[i * (NUMBERS + KINDS) + c]);
  const block = c < 5 ? 1 : c < NUMBERS ? 2 : 0;
  if (c >= NUMBERS) {
    const between = Float64Array.from({ length: LEVELS * LEVELS }, (_, at) =>
      Math.floor(at / LEVELS) === at % LEVELS ? 0 : 1,
    );
    const codes = Int32Array.from(values, (value) => (Number.isNaN(value) ? -1 : value));
    return { kind: 'kinds', codes, between, levels: LEVELS, block, weight: 1 };
  }
  const known = values.filter((value) => !Number.isNaN(value));
  const range = known.reduce((a, b) => Math.max(a, b)) - known.reduce((a, b) => Math.min(a, b));
  return { kind: 'quantity', low: values, high: values, range, block, weight: 1 };
}

const spec: DissimilaritySpec = {
  variables: Array.from({ length: NUMBERS + KINDS }, (_, c) => variable(c)),
  blockWeights: [1, 1, 1],
  mode: 'blocks',
  intervals: 'midpoint',
  minimumOverlap: 0,
};

if (asked('dissimilarity')) {
  const path = handOver('table.bin', table);
  const [numpy] = python(
    `x = numbers(${JSON.stringify(path)}, ${NUMBERS + KINDS})
n, columns = x.shape
known = (~np.isnan(x)).astype(float).T.copy()
span = np.array([np.ptp(x[known[c] > 0, c]) if c < ${NUMBERS} else 1.0 for c in range(columns)])
filled = (np.where(np.isnan(x), 0.0, x) / span).T.copy()
def gower():
    out = np.empty(n * (n - 1) // 2); place = 0
    for i in range(n - 1):
        rest = filled[:, i + 1:] - filled[:, i:i + 1]
        np.abs(rest, out=rest)
        rest[${NUMBERS}:] = rest[${NUMBERS}:] != 0
        both = known[:, i + 1:] * known[:, i:i + 1]
        out[place:place + n - 1 - i] = np.einsum('cj,cj->j', rest, both) / both.sum(axis=0)
        place += n - 1 - i
    return out
best(gower)`,
    1,
  );
  const [daisy] = rscript(
    `x <- as.data.frame(numbers(${JSON.stringify(path)}, ${NUMBERS + KINDS}))
for (c in ${NUMBERS + 1}:${NUMBERS + KINDS}) x[[c]] <- factor(x[[c]])
best(function() cluster::daisy(x, metric = "gower"))`,
    1,
  );
  const into = new Float64Array((N * (N - 1)) / 2);
  const yardsticks = {
    'vectorised numpy': { seconds: numpy, atMost: 0.25 },
    'R cluster::daisy': { seconds: daisy, atMost: 1 / 30 },
  };
  report(
    'block dissimilarity, 5,000 x 13 with 10 % gaps',
    seconds(() => dissimilarities(spec, into), 5),
    yardsticks,
  );
  report(
    '  the same into new memory',
    seconds(() => dissimilarities(spec)),
    {},
  );
  const plain = plainRows(prepareComparison(spec));
  const plainly = () => {
    for (let i = 0, place = 0; i < N - 1; place += N - 1 - i++) plain(i, into, place);
  };
  report('  the same by the plain loops', seconds(plainly), {});
}

/** A facet of three values that applies to some structures only and is recorded in some catalogues only. */
function facet(): Variable {
  const codes = Int32Array.from({ length: N }, () => (random.next() < 0.4 ? random.integer(3) : -1));
  const between = Float64Array.from({ length: 9 }, (_, at) => (Math.floor(at / 3) === at % 3 ? 0 : 1));
  return { kind: 'kinds', codes, between, levels: 3, block: 0, weight: 1 };
}

if (asked('facets')) {
  const into = new Float64Array((N * (N - 1)) / 2);
  const facets = { ...spec, variables: [...spec.variables, ...Array.from({ length: 8 }, facet)] };
  const without = seconds(() => dissimilarities(spec, into), 5);
  report(
    'the same with eight facets more',
    seconds(() => dissimilarities(facets, into), 5),
    { 'without them': { seconds: without, atMost: 1.3 } },
  );
}
