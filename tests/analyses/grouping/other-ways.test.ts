import { describe, expect, it } from 'vitest';
import type { AnalysisInput } from '../../../src/analyses/contract.ts';
import type { GroupingFound } from '../../../src/analyses/grouping/found.ts';
import { grouping } from '../../../src/analyses/grouping/index.ts';
import { nearestMedoids } from '../../../src/analyses/grouping/nearest-medoids.ts';
import { type GroupingOptions, groupingOptions } from '../../../src/analyses/grouping/options.ts';
import { comparisonSettings } from '../../../src/analyses/shared/options/comparison.ts';
import { dissimilarityAt } from '../../../src/numerics/dissimilarity/condensed.ts';
import { createRandom } from '../../../src/numerics/foundation/random.ts';
import { attribute, type MadeColumn, madeInput } from './made-table.ts';

const spacing = attribute('rowSpacing', 'spacing', 'ratio', { unit: 'mm', transform: 'log' });
const structure = attribute('structure', 'structure', 'nominal');
const sites = ['Vorral', 'Emsk', 'Tharn', 'Ulm-Orr'];

/** Three kinds of 20; the last one lies wholly at Vorral, the others at the other sites in turn. */
function planted(): { columns: MadeColumn[]; kind: number[]; assemblage: string[] } {
  const random = createRandom(4);
  const kind = Array.from({ length: 60 }, (_, i) => i % 3);
  const columns = [
    { attribute: spacing, values: kind.map((k) => [2, 8, 30][k] * (0.9 + 0.2 * random.next())) },
    { attribute: structure, values: kind.map((k) => ['close', 'open', 'netting'][k]) },
  ];
  const assemblage = kind.map((k, i) => (k === 2 ? sites[0] : sites[1 + (Math.floor(i / 3) % 3)]));
  return { columns, kind, assemblage };
}

function run(more: Partial<GroupingOptions>, columns?: MadeColumn[], assemblage?: string[]): GroupingFound {
  const made = planted();
  const input = madeInput(columns ?? made.columns);
  const records = { ...input.records, assemblage: assemblage ?? made.assemblage };
  const options = { k: 3, resamples: 0, permutations: 0, ...more };
  const whole: AnalysisInput = { ...input, records, fragments: records };
  return grouping.compute(whole, groupingOptions.parse(options));
}

describe('other ways to group', () => {
  it('pairs of planted kinds fall together in every way that has as many groups, and apart in most', () => {
    const { trust } = run({});
    if ('why' in trust.variants) throw new Error(trust.variants.why);
    const { variants, groups, records } = trust.variants;
    // Three methods, three weightings (as given, either block twice), two to four groups.
    expect(variants).toHaveLength(27);
    for (const one of variants) if (one.k === 3) expect(one.adjustedRand).toBe(1);
    for (const [a, line] of groups.entries()) {
      for (const [b, share] of line.entries()) {
        if (a === b) expect(share).toBeGreaterThan(0.8);
        else expect(share).toBeLessThan(0.34);
      }
    }
    expect(records.every(({ own, other }) => (own ?? 0) > (other ?? 1))).toBe(true);
  });

  it('shares are those counted over the groupings by hand', () => {
    const values = [1, 1.1, 5, 5.1, 20, 20.1, 22];
    const columns = [{ attribute: attribute('length', 'find', 'ratio'), values }];
    const { trust } = run(
      { of: ['length'], weights: { find: 1 } as never, skewed: 'plain' },
      columns,
      values.map(String),
    );
    if ('why' in trust.variants) throw new Error(trust.variants.why);
    const { variants, together } = trust.variants;
    // 1 and 1.1 are never parted; 1.1 and 5 fall together where there are two groups only.
    expect(dissimilarityAt(together, 0, 1)).toBe(1);
    const two = variants.filter(({ k }) => k === 2).length;
    expect(dissimilarityAt(together, 1, 2)).toBeCloseTo(two / variants.length, 15);
  });

  it('left out, the only assemblage of a group takes the group with it; the others change nothing', () => {
    const found = run({});
    const { leftOut } = found.trust;
    if ('why' in leftOut) throw new Error(leftOut.why);
    const alone = found.records[2].group;
    expect(leftOut.map(({ assemblage, records }) => [assemblage, records])).toEqual([
      ['Vorral', 20],
      ['Emsk', 14],
      ['Tharn', 14],
      ['Ulm-Orr', 12],
    ]);
    for (const { assemblage, groups, adjustedRand } of leftOut) {
      if (assemblage === 'Vorral') expect(groups[alone]).toBeNull();
      else {
        expect(groups).toEqual([1, 1, 1]);
        expect(adjustedRand).toBe(1);
      }
    }
    expect(grouping.words(found).unless).toContainEqual({
      what: 'if Vorral had never been found',
      size: `gone would be ${found.groups[alone].name}`,
      overturns: false,
    });
  });

  it('left out, a far heap lets the rest part anew: Jaccard and adjusted Rand by hand', () => {
    const values = [0, 1, 2, 10, 11, 12, 100, 101, 102];
    const assemblage = ['P', 'P', 'P', 'Q', 'Q', 'Q', 'R', 'R', 'R'];
    const columns = [{ attribute: attribute('length', 'spacing', 'ratio'), values }];
    const { trust } = run({ k: 2, of: ['length'] }, columns, assemblage);
    if ('why' in trust.leftOut) throw new Error(trust.leftOut.why);
    const found = trust.leftOut.find((one) => one.assemblage === 'R');
    // Six stayed together; without R three and three: 3 of 6. All in one against two halves agree by chance alone.
    expect(found?.groups).toEqual([0.5, null]);
    expect(found?.adjustedRand).toBe(0);
  });

  it('a block that counts twice makes its own groups', () => {
    const columns = [
      {
        attribute: spacing,
        values: Array.from({ length: 40 }, (_, i) => (i % 2 === 0 ? 2 : 30)),
      },
      {
        attribute: structure,
        values: Array.from({ length: 40 }, (_, i) => (i % 4 < 2 ? 'close' : 'open')),
      },
    ];
    const weights = { structure: 1.5, spacing: 1 };
    const found = run(
      { k: 2, weights: weights as never, method: 'medoids' },
      columns,
      columns[0].values.map((_, i) => `site ${i % 3}`),
    );
    const { variants } = found.trust;
    if ('why' in variants) throw new Error(variants.why);
    const two = (name: string) =>
      variants.variants.filter(({ k, weights: said }) => k === 2 && said.toLowerCase().startsWith(name));
    expect(two('structure').map(({ adjustedRand }) => adjustedRand)).toEqual([1, 1, 1]);
    const bySpacing = two('spacing');
    expect(bySpacing).toHaveLength(3);
    for (const { adjustedRand, meanSilhouette } of bySpacing) {
      expect(adjustedRand).toBeLessThan(0);
      expect(meanSilhouette).toBeGreaterThan(0.4);
    }
  });

  it('who cannot be compared under other weights is in none of their groups, and the others in their own', () => {
    const { columns, assemblage } = planted();
    const gappy = columns.map(({ attribute: one, values }) => ({
      attribute: one,
      values: values.map((value, row) => (row === 30 && one === spacing ? null : value)),
    }));
    // Without a spacing it has a half of the weight in common with others, and a third when spacing counts twice.
    const { variants } = run({ minimumOverlap: 0.5 }, gappy, assemblage).trust;
    if ('why' in variants) throw new Error(variants.why);
    for (const one of variants.variants) if (one.k === 3) expect(one.adjustedRand).toBe(1);
    const placing = variants.variants.filter(({ weights }) => !weights.toLowerCase().startsWith('spacing'));
    expect(placing.length).toBeLessThan(variants.variants.length);
    expect(variants.records[30].own).toBeGreaterThan(0.8);
  });

  it('the figure of shares is dark within planted kinds and light between them, ordered by group', () => {
    const found = run({});
    const data = grouping.figures(found).together.data as unknown as Trace[];
    const heat = data.find(({ type }) => type === 'heatmap') as unknown as {
      z: number[][];
      meta: string[][];
    };
    const groupOf = new Map(found.records.map(({ id, group }) => [id, group]));
    const groups = heat.meta.map(([id]) => groupOf.get(id)!);
    expect(groups).toEqual([...groups].sort());
    expect(
      Math.min(...groups.flatMap((a, i) => groups.flatMap((b, j) => (a === b ? [heat.z[i][j]] : [])))),
    ).toBeGreaterThan(0.6);
    expect(
      Math.max(...groups.flatMap((a, i) => groups.flatMap((b, j) => (a === b ? [] : [heat.z[i][j]])))),
    ).toBeLessThan(0.4);
  });

  it('says why nothing can be left out of a single assemblage', () => {
    const { trust } = run(
      {},
      undefined,
      planted().assemblage.map(() => 'Emsk, early'),
    );
    expect(trust.leftOut).toEqual({ why: expect.stringContaining('one assemblage') });
    const quick = run({ variants: false });
    expect(quick.trust.variants).toEqual({ why: 'not asked for' });
    expect(Object.keys(grouping.tables(quick))).not.toContain('together');
  });

  it('graded membership is in proportion to 1 / dissimilarity at fuzziness 2 and sums to 1', () => {
    const found = run({ variants: false });
    const { rows } = grouping.tables(found).graded;
    const medoids = found.groups.map(({ medoid }) => medoid);
    for (const [place, row] of rows.entries()) {
      const shares = row.slice(2) as number[];
      expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 12);
      if (medoids.includes(place)) continue;
      const inverse = medoids.map((medoid) => 1 / dissimilarityAt(found.matrix, place, medoid));
      const total = inverse.reduce((sum, value) => sum + value, 0);
      for (const [group, share] of shares.entries()) expect(share).toBeCloseTo(inverse[group] / total, 12);
    }
    expect(
      grouping
        .tables(run({ fuzziness: 1.05 }))
        .graded.rows[0].slice(2)
        .some((share) => Number(share) > 0.999),
    ).toBe(true);
  });
});

describe('nearest medoids', () => {
  it('are those of the medoid groups under the same weights; a medoid that is not there attracts nobody', () => {
    const { columns } = planted();
    const { records, register } = madeInput(columns);
    const found = run({ variants: false });
    const ids = found.groups.map(({ medoid }) => found.records[medoid].id);
    const settings = comparisonSettings(groupingOptions.parse({}));
    expect([...nearestMedoids(records, register, settings, ids)]).toEqual(
      found.records.map(({ group }) => group),
    );
    const two = nearestMedoids(records, register, settings, ['nobody', ids[1], ids[2]]);
    expect(new Set(two)).toEqual(new Set([1, 2]));
  });
});

type Trace = Record<string, unknown> & { type: string; name?: string };

describe('all against all', () => {
  it.each(['average', 'medoids'] as const)(
    '%s: strip and lines of the heat map are of the same records',
    (method) => {
      const found = run({ method, variants: false });
      const data = grouping.figures(found).matrix.data as unknown as Trace[];
      const heat = data.find(({ type }) => type === 'heatmap') as unknown as {
        z: number[][];
        meta: string[][];
      };
      const groupOf = new Map(found.records.map(({ id, group }) => [id, group]));
      expect(heat.meta).toHaveLength(60);
      const place = new Map(found.records.map(({ id }, at) => [id, at]));
      for (const [a, [left]] of heat.meta.entries()) {
        const [b, [right]] = [59 - a, heat.meta[59 - a]];
        const expected = dissimilarityAt(found.matrix, place.get(left)!, place.get(right)!);
        expect(heat.z[a][b]).toBe(expected);
      }
      const strips = data.filter(({ type }) => type === 'bar') as unknown as { y: number[]; name: string }[];
      expect(strips).toHaveLength(3);
      for (const { y, name } of strips) {
        for (const at of y)
          expect(name).toMatch(new RegExp(`^${groupOf.get(heat.meta[at][0])! + 1} .* \\(20\\)$`));
      }
    },
  );

  it('each pair of leaves that joins first is joined at its own dissimilarity, on its own two lines', () => {
    const found = run({ method: 'average', variants: false });
    const data = grouping.figures(found).matrix.data as unknown as Trace[];
    const heat = data.find(({ type }) => type === 'heatmap') as unknown as { z: number[][] };
    const branches = data.filter(({ type, mode }) => type === 'scatter' && mode === 'lines');
    let pairs = 0;
    for (const { x, y } of branches as unknown as { x: (number | null)[]; y: (number | null)[] }[]) {
      for (let from = 0; from < x.length; from += 5) {
        if (x[from] !== 0 || x[from + 3] !== 0) continue;
        pairs++;
        expect(heat.z[y[from]!][y[from + 3]!]).toBe(x[from + 1]);
      }
    }
    expect(pairs).toBeGreaterThan(10);
  });

  it('of a large tree each line is a cluster, with the mean dissimilarity between clusters', () => {
    const random = createRandom(9);
    const values = Array.from({ length: 200 }, () => 1 + 30 * random.next());
    const columns = [{ attribute: spacing, values }];
    const found = run(
      { method: 'average', variants: false, of: ['rowSpacing'] },
      columns,
      values.map(String),
    );
    const data = grouping.figures(found).matrix.data as unknown as Trace[];
    const heat = data.find(({ type }) => type === 'heatmap') as unknown as {
      z: number[][];
      meta: string[][];
    };
    expect(heat.meta).toHaveLength(150);
    expect(heat.meta.flat()).toHaveLength(200);
    const a = heat.meta.findIndex((members) => members.length > 1);
    const b = (a + 75) % 150;
    const place = new Map(found.records.map(({ id }, at) => [id, at]));
    const all = heat.meta[a].flatMap((i) =>
      heat.meta[b].map((j) => dissimilarityAt(found.matrix, place.get(i)!, place.get(j)!)),
    );
    expect(heat.z[a][b]).toBeCloseTo(
      all.reduce((sum, value) => sum + value / all.length, 0),
      12,
    );
  });
});
