import { describe, expect, it } from 'vitest';
import { standing } from '../../../src/analyses/standing/index.ts';
import { ask, inputFrom, linesOf } from '../ask.ts';

const options = { site: 'p', of: 'fibre', resamples: 199, relabellings: 99 };
const items = (
  site: string,
  rows: readonly (readonly [fibre: string, density: number, preservation: string])[],
) =>
  rows.map(([fibre, density1, preservation], i) => ({
    item: `${site}${i}`,
    site,
    fibre,
    density1,
    preservation,
  }));
const rows = [
  ...items('p', [
    ['limeBast', 4, 'wet'],
    ['limeBast', 6, 'wet'],
    ['limeBast', 8, 'wet'],
    ['nettle', 10, 'wet'],
  ]),
  ...items('q', [
    ['limeBast', 10, 'dry'],
    ['nettle', 12, 'dry'],
    ['nettle', 14, 'wet'],
    ['nettle', 16, 'dry'],
    ['nettle', 18, 'dry'],
  ]),
  ...items('r', [
    ['limeBast', 20, 'dry'],
    ['nettle', 30, 'dry'],
  ]),
];

describe('a site beside all others', () => {
  const { found, tables, figures } = ask(standing, inputFrom(rows), options);
  const lines = linesOf(tables.beside);
  const of = (attribute: string, what: string) =>
    lines.find((line) => line.attribute === attribute && line.what === what) ?? {};

  it('sets its shares beside those of all others together, with both n', () => {
    expect(of('fibre', 'nettle')).toMatchObject({ siteN: 4, site: 1 / 4, othersN: 7, others: 5 / 7 });
    expect(of('preservation', 'wet')).toMatchObject({ siteN: 4, site: 1, othersN: 7, others: 1 / 7 });
  });

  it('sets medians and quartiles of numbers beside each other (R 4.2.2, quantile of type 7)', () => {
    // R: quantile(c(4, 6, 8, 10)); quantile(c(10, 12, 14, 16, 18, 20, 30))
    expect(of('density1', 'median')).toMatchObject({ siteN: 4, site: 7, othersN: 7, others: 16 });
    expect(of('density1', 'lower quartile')).toMatchObject({ site: 5.5, others: 13 });
    expect(of('density1', 'upper quartile')).toMatchObject({ site: 8.5, others: 19 });
  });

  it('lets assemblages of five items or more alone say what single ones range over', () => {
    expect(of('fibre', 'nettle')).toMatchObject({ min: 4 / 5, max: 4 / 5 });
    expect(of('density1', 'median')).toMatchObject({ min: 14, max: 14 });
  });

  it('is one panel an attribute, kinds first, with n in the headings and logarithmic axes named', () => {
    const headings = (figures.beside.layout.annotations as readonly { text: string }[]).map(
      ({ text }) => text,
    );
    expect(headings).toEqual(['fibre, % (4; 7)', 'density1, per cm (4; 7)', 'preservation, % (4; 7)']);
    expect(figures.beside.caption).toContain('p (filled) beside all others together (hollow)');
  });

  it('passes over what nobody recorded', () => {
    expect(found.beside.map(({ label }) => label)).toEqual(['fibre', 'density1', 'preservation']);
  });

  it('counts kinds at the level that all record', () => {
    const broad = items(
      'q',
      Array.from({ length: 6 }, () => ['treeBast', 5, 'dry'] as const),
    );
    const { tables: counted } = ask(
      standing,
      inputFrom([...rows.filter(({ site }) => site === 'p'), ...broad]),
      options,
    );
    const kinds = linesOf(counted.beside).filter(({ attribute }) => attribute === 'fibre');
    expect(kinds.map(({ what, site, others }) => [what, site, others])).toEqual([
      ['tree bast', 3 / 4, 1],
      ['nettle', 1 / 4, 0],
    ]);
  });
});
