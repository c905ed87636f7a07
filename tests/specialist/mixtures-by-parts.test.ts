import { describe, expect, it } from 'vitest';
import { checkStudy } from '../../src/study/load.ts';
import { prepareStudy } from '../../src/study/prepare.ts';
import { analyse } from '../../src/study/run-study.ts';

/** Twelve finds a place; at Holm half of the woollen ones have silk too. */
const FIBRES = {
  Holm: ['wool and silk', 'wool and silk', 'wool', 'wool', 'wool and silk', 'flax'],
  Ness: ['flax', 'flax', 'wool', 'flax', 'flax', 'flax'],
};
const csv = [
  'Find no.,Site,Structure,Fibre',
  ...Object.entries(FIBRES).flatMap(([site, fibres]) =>
    Array.from({ length: 12 }, (_, i) => `${site}${i},${site},tabby,${fibres[i % fibres.length]}`),
  ),
].join('\n');
const files = new Map([['a.csv', new TextEncoder().encode(csv)]]);

const run = (mixtures: 'whole' | 'each') => {
  const study = {
    title: 't',
    sources: [{ file: 'a.csv' }],
    witness: { is: 'row' },
    analyses: [
      { id: 'table', kind: 'crosstab', rows: 'site', columns: 'fibre', mixtures, relabellings: 999 },
      {
        id: 'alike',
        kind: 'similarity',
        assemblages: 'site',
        of: 'fibre',
        mixtures,
        resamples: 199,
        relabellings: 999,
      },
    ],
  };
  const prepared = prepareStudy(checkStudy(study, 'study.json'), files);
  return analyse(prepared, files).analyses;
};
const whole = run('whole');
const each = run('each');
type Answer = (typeof each)[string];
const columns = ({ tables }: Answer, name = 'counts') => tables[name]!.columns.map(({ label }) => label);

describe('mixtures in a table of kinds', () => {
  it('are kinds of their own by default, and every record counts once', () => {
    expect(columns(whole.table!)).toContain('silk and sheep wool');
    expect(whole.table!.tables.counts!.rows.at(-1)?.at(-1)).toBe(24);
  });

  it('count in each of their kinds where asked: by hand, Holm has 10 with wool, 6 with silk, 2 with flax of 12', () => {
    expect(columns(each.table!)).toEqual(['Site', 'flax', 'sheep wool', 'silk', 'all']);
    expect(each.table!.tables.counts!.rows).toEqual([
      ['Holm', 2, 10, 6, 18],
      ['Ness', 10, 2, 0, 12],
      ['all', 12, 12, 6, 30],
    ]);
  });

  it('shares are of the records and add up to more than one, which is said', () => {
    const { rows, note } = each.table!.tables.rowShares!;
    expect(rows[0]).toEqual(['Holm', '2/12', '10/12', '6/12', 'n = 12']);
    expect(note).toContain('more than 100 %');
    expect(each.table!.words.because[0]).toMatch(/^n = 24 items; 6 mixtures counted in each of their kinds/);
  });

  it('figures are of mentions, and say so on their axes and beneath', () => {
    const drawn = JSON.stringify(each.table!.figures);
    expect(drawn).toContain('share of mentions (%)');
    expect(drawn).toContain('30 mentions of 24 items');
    expect(drawn).not.toContain('share of items (%)');
    expect(JSON.stringify(whole.table!.figures)).toContain('share of items (%)');
  });

  it('the test deals whole items, and no p is given that takes the mentions for independent', () => {
    const tests = each.table!.tables.tests!;
    const line = (start: string) => tests.rows.find(([name]) => String(name).startsWith(start))!;
    expect(String(line('chosen').at(4))).toMatch(/random|ways/);
    expect(line('chi-square').at(3)).toMatchObject({ why: expect.stringContaining('not independent') });
    expect(line('likelihood').at(3)).toMatchObject({ why: expect.stringContaining('not independent') });
    // The same finds, each counted once, carry their p.
    expect(whole.table!.tables.tests!.rows.find(([name]) => name === 'chi-square')!.at(3)).toBeTypeOf(
      'number',
    );
    expect(each.table!.n).toMatchObject({ fragments: 24, items: 24 });
  });

  it('and without any mixture both ways of counting are one', () => {
    const plain = csv.replaceAll('wool and silk', 'silk');
    const of = (mixtures: 'whole' | 'each') => {
      const own = new Map([['a.csv', new TextEncoder().encode(plain)]]);
      const study = {
        title: 't',
        sources: [{ file: 'a.csv' }],
        witness: { is: 'row' },
        analyses: [{ id: 'table', kind: 'crosstab', rows: 'site', columns: 'fibre', mixtures }],
      };
      return analyse(prepareStudy(checkStudy(study, 'study.json'), own), own).analyses.table!;
    };
    expect(of('each').tables.tests!.rows).toEqual(of('whole').tables.tests!.rows);
    expect(of('each').words.answer).toBe(of('whole').words.answer);
  });
});

describe('mixtures in the likeness of assemblages', () => {
  // By hand, of mentions: Holm 2/18, 10/18, 6/18, Ness 10/12, 2/12, 0: 200 - 100 (13 + 7 + 6) / 18 = 55.56.
  it('are counted in each of their kinds where asked, and the answer says so', () => {
    const pair = each.alike!.tables.pairs!.rows[0]!;
    expect(
      pair.some((cell) => typeof cell === 'number' && Math.abs(cell - (200 - (100 * 26) / 18)) < 1e-9),
    ).toBe(true);
    expect(each.alike!.words.because[0]).toContain('6 mixtures counted in each of their kinds');
    expect(whole.alike!.words.because[0]).not.toContain('mixtures');
    expect(each.alike!.n).toMatchObject({ fragments: 24, items: 24 });
  });
});
