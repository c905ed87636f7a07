import { defaultRegister } from '../../src/attributes/register.ts';
import { readSource } from '../../src/sources/read-source.ts';

/**
 * How long tables of odd shapes take, beside plain tables of as many cells or letters: growth with the number of
 * cells alone gives ratios near 1.
 * Run: npx tsx tests/bench/odd-shapes.ts
 */

const register = defaultRegister();
const HEAD = 'Find no.,Site,Structure';
const lines = (rows: number, line: (row: number) => string): string =>
  Array.from({ length: rows }, (_, row) => line(row)).join('\n');
const wide = (columns: number): string =>
  [0, 1, 2]
    .map((row) =>
      Array.from({ length: columns }, (_, i) => (row === 0 ? `V${i}` : (i * 7 + row) % 10)).join(','),
    )
    .join('\n');
const plain = (rows: number): string => `${HEAD}\n${lines(rows, (row) => `T${row},Pell,tabby`)}`;

const CASES: readonly (readonly [what: string, odd: string, yardstick: string])[] = [
  ['200,000 columns beside 20,000, a tenth of the cells; times ten', wide(200_000), wide(20_000)],
  [
    '50,000 blank rows beside 50,000 filled ones',
    `${HEAD}\nT,Pell,tabby\n${',,\n'.repeat(50_000)}U,Pell,tabby`,
    plain(50_000),
  ],
  [
    'a cell of 50,000 letters beside 1,000 cells of 50',
    `${plain(3)}${'y'.repeat(50_000)}`,
    `${HEAD}\n${lines(1000, (row) => `T${row},Pell,${'y'.repeat(40)}${row}`)}`,
  ],
];

function secondsFor(text: string): number {
  const content = new TextEncoder().encode(text);
  const times = [0, 1, 2].map(() => {
    const start = performance.now();
    readSource(content, { name: 'bench.csv', register });
    return (performance.now() - start) / 1000;
  });
  return Math.min(...times);
}

for (const [what, odd, yardstick] of CASES) {
  const scale = what.includes('times ten') ? 10 : 1;
  const [took, expected] = [secondsFor(odd), scale * secondsFor(yardstick)];
  console.log(
    `${what}: ${took.toFixed(2)} s, ${expected.toFixed(2)} s; ratio ${(took / expected).toFixed(2)}`,
  );
}
