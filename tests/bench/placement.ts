import { placement } from '../../src/analyses/placement/index.ts';
import { dissimilaritiesTo } from '../../src/numerics/dissimilarity/dissimilarity.ts';
import { prepareComparison } from '../../src/numerics/dissimilarity/prepare.ts';
import type { RecordValue, Variable } from '../../src/numerics/dissimilarity/variables.ts';
import { createRandom } from '../../src/numerics/foundation/random.ts';
import { attribute, type MadeColumn, madeInput } from '../analyses/grouping/made-table.ts';
import { asked, handOver, python, report, seconds } from './tools/yardstick.ts';

/**
 * How long does one find take against 100,000 comparanda, eight numbers and five kinds with 10 % gaps: its
 * distances beside a vectorised numpy loop over the same columns, and the whole answer once all is loaded (a find
 * with one value changed, as when somebody types)?
 *
 *   npx tsx tests/bench/placement.ts
 */

const N = 100_000;
const NUMBERS = 8;
const COLUMNS = NUMBERS + 5;
const LEVELS = 6;

const random = createRandom(12);
const columns = Array.from({ length: COLUMNS }, (_, c) =>
  Float64Array.from({ length: N }, () => {
    const value = c < NUMBERS ? 10 * random.next() : random.integer(LEVELS);
    return random.next() < 0.1 ? Number.NaN : value;
  }),
);
const blockOf = (c: number) => (c < 5 ? 1 : c < NUMBERS ? 2 : 0);

function variable(values: Float64Array, c: number): Variable {
  if (c < NUMBERS)
    return { kind: 'quantity', low: values, high: values, range: 10, block: blockOf(c), weight: 1 };
  const between = Float64Array.from({ length: LEVELS * LEVELS }, (_, at) =>
    Math.floor(at / LEVELS) === at % LEVELS ? 0 : 1,
  );
  const codes = Int32Array.from(values, (value) => (Number.isNaN(value) ? -1 : value));
  return { kind: 'kinds', codes, between, levels: LEVELS, block: blockOf(c), weight: 1 };
}

if (asked('distances')) {
  const table = new Float64Array(N * COLUMNS);
  columns.forEach((values, c) => {
    values.forEach((value, i) => {
      table[i * COLUMNS + c] = value;
    });
  });
  const path = handOver('comparanda.bin', table);
  const [numpy] = python(
    `x = np.asfortranarray(numbers(${JSON.stringify(path)}, ${COLUMNS}))
find = [5.0] * ${NUMBERS} + [2.0] * 5
known = ~np.isnan(x)
blocks = [[c for c in range(${COLUMNS}) if (1 if c < 5 else 2 if c < ${NUMBERS} else 0) == b] for b in range(3)]
def distances():
    total = np.zeros(len(x)); weight = np.zeros(len(x))
    for block in blocks:
        part = np.zeros(len(x)); there = np.zeros(len(x))
        for c in block:
            apart = np.abs(x[:, c] - find[c]) / 10 if c < ${NUMBERS} else (x[:, c] != find[c]).astype(float)
            part += np.where(known[:, c], apart, 0.0); there += known[:, c]
        has = there > 0
        total += np.where(has, part / np.maximum(there, 1), 0.0); weight += has
    return total / weight
best(distances, 9)`,
    1,
  );
  const prepared = prepareComparison({
    variables: columns.map(variable),
    blockWeights: [1, 1, 1],
    mode: 'blocks',
    intervals: 'midpoint',
    minimumOverlap: 0,
  });
  const find = columns.map((_, c): RecordValue => ({ low: 5, high: 5, code: c < NUMBERS ? 0 : 2 }));
  const ours = seconds(() => dissimilaritiesTo(prepared, find), 15);
  report('one find, distances to 100,000', ours, { 'vectorised numpy': { seconds: numpy, atMost: 1 } });
}

if (asked('answer')) {
  const names = columns.map((_, c) => (c < NUMBERS ? `number${c}` : `kind${c}`));
  const made = columns.map((values, c): MadeColumn => {
    const block = ['structure', 'spacing', 'fibre'][blockOf(c)] as 'structure' | 'spacing' | 'fibre';
    return c < NUMBERS
      ? { attribute: attribute(names[c], block, 'ratio', { unit: 'mm' }), values: [...values] }
      : {
          attribute: attribute(names[c], block, 'nominal'),
          values: Array.from(values, (value) => (Number.isNaN(value) ? null : `k${value}`)),
        };
  });
  const sites = Array.from({ length: N }, () => `site ${random.integer(30)}`);
  const input = madeInput([{ attribute: attribute('site', 'context', 'nominal'), values: sites }, ...made], {
    unit: 'item',
  });
  const answer = (first: string, quick: boolean) => {
    const find = Object.fromEntries(names.map((name, c) => [name, c < NUMBERS ? '5' : 'k2']));
    const options = placement.options.parse({
      find: { ...find, [names[0]]: first },
      ...(quick ? { moves: false, next: false, draws: 20 } : {}),
    });
    return placement.compute(input, options);
  };
  for (const quick of [true, false]) {
    const loading = seconds(() => answer('5', quick), 1);
    let value = 0;
    const again = seconds(() => answer(String(1 + value++), quick), 9);
    report(
      `one find, whole answer at 100,000${quick ? ', as while typing' : ', with moves and what to measure next'}`,
      again,
      { 'asked for': { seconds: 0.05, atMost: 1 } },
    );
    console.log(`  the first one, with all that is kept for the next: ${loading.toFixed(2)} s`);
  }
}
