import { beforeAll, describe, expect, it } from 'vitest';
import { typology } from '../../../src/analyses/typology/index.ts';
import { createRandom } from '../../../src/numerics/foundation/random.ts';
import { standardNormal } from '../../../src/numerics/modes/mixture-parts.ts';
import { attribute, madeInput } from '../grouping/made-table.ts';

const RULES = JSON.stringify({
  title: 'Close and open',
  types: [
    { id: 'close', label: 'Close', when: { attribute: 'rowSpacing', below: 8 } },
    { id: 'open', label: 'Open', when: { attribute: 'rowSpacing', atLeast: 8 } },
  ],
});

/** Two kinds as often as each other: close ones about 3 mm and thin, open ones about 20 mm and thick. */
function ask(n: number) {
  const random = createRandom(n);
  const kind = Array.from({ length: n }, (_, at) => at % 2);
  const values = (means: readonly number[], spread: number, decimals: number) =>
    kind.map((k) => Number(Math.max(0.1, means[k] + spread * standardNormal(random)).toFixed(decimals)));
  const input = madeInput([
    {
      attribute: attribute('rowSpacing', 'spacing', 'ratio', { label: 'Row spacing', unit: 'mm' }),
      values: kind.map((k) => Math.round([3, 20][k] + [0.8, 3][k] * standardNormal(random))),
    },
    {
      attribute: attribute('diameter1', 'spacing', 'ratio', { label: 'Diameter', unit: 'mm' }),
      values: values([1, 1.6], 0.4, 1),
    },
    {
      attribute: attribute('fibre', 'fibre', 'nominal', { label: 'Fibre' }),
      values: kind.map((k) => (random.next() < [0.8, 0.3][k] ? 'flax' : 'bast')),
    },
  ]);
  const records = { ...input.records, assemblage: input.records.id.map((_, at) => `Site ${at % 4}`) };
  const options = typology.options.parse({
    rules: 'r.json',
    of: ['diameter1', 'fibre'],
    resamples: 49,
    relabellings: 99,
  });
  const files = new Map([['r.json', new TextEncoder().encode(RULES)]]);
  const found = typology.compute({ ...input, records, fragments: records, files }, options);
  if ('why' in found.apart) throw new Error(found.apart.why);
  return { found, apart: found.apart, words: typology.words(found), tables: typology.tables(found) };
}

describe('a typology of very many records', () => {
  let all: ReturnType<typeof ask>;
  let drawn: ReturnType<typeof ask>;
  beforeAll(() => {
    all = ask(1000);
    drawn = ask(7000);
  }, 120_000);

  it('is tested on some that are drawn, and says so where it tells of them', () => {
    expect(drawn.apart.drawnFrom).toBe(7000);
    expect(drawn.apart.places.length).toBe(1000);
    expect(drawn.words.because[0]).toContain(
      '7000 of 7000 fragments have a type, 1000 of them compared, drawn by chance',
    );
    expect(drawn.words.because[1]).toContain('3000 readings drawn by chance from 7000');
    expect(drawn.tables.apart?.note).toContain('1000 records, drawn by chance from 7000');
    expect(drawn.tables.splits?.note).toContain('3000 of 7000 readings drawn by chance');
    expect(drawn.found.assignment.rows.length).toBe(7000);
  });

  it('comes to the verdict and about the numbers of records that are all compared', () => {
    expect(all.apart.drawnFrom).toBeNull();
    expect(all.words.because.join()).not.toContain('by chance');
    expect(drawn.found.verdict).toBe(all.found.verdict);
    expect(all.found.verdict).toBe('supported');
    const share = ({ apart }: typeof all) => ('why' in apart.difference ? -1 : apart.difference.rSquared);
    expect(Math.abs(share(drawn) - share(all))).toBeLessThan(0.03);
    expect(share(all)).toBeGreaterThan(0.1);
  });
});
