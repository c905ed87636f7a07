import { describe, expect, it } from 'vitest';
import { summary } from '../../../src/analyses/summary/index.ts';
import { tablePart } from '../../../src/report/page/table-part.ts';
import { tableCsv } from '../../../src/report/table-csv.ts';
import { ask, inputFrom, linesOf } from '../ask.ts';

describe('spans of time and what is recorded where', () => {
  const rows = [
    { site: 'p', date: [100, 200] as const, density1: 5, fibre: 'k0' },
    { site: 'p', date: [150, 300] as const, density1: 6 },
    { site: 'q', date: [-100, -50] as const, fibre: 'k1' },
    { site: 'q', fibre: 'k1', structure: 'tabby' },
    { site: 'r', density1: 7 },
  ];
  it('a span is the hull of the dates, earliest middle first, the undated last and said', () => {
    const {
      tables: made,
      words,
      figures,
    } = ask(summary, inputFrom(rows), {
      of: ['date'],
      by: ['site'],
      resamples: 0,
    });
    const lines = linesOf(made.spans).map(({ site, from, to, middle, n, missing }) => [
      site,
      from,
      to,
      middle,
      n,
      missing,
    ]);
    const undated = { why: 'not dated' };
    expect(lines).toEqual([
      ['q', -100, -50, -75, 1, 1],
      ['p', 100, 300, 187.5, 2, 0],
      ['r', undated, undated, undated, 0, 1],
    ]);
    expect(words.answer).toBe('Of two dated groups the middle is earliest in q and latest in p.');
    expect(words.because).toEqual([
      'date, hull of the spans: q 101 BC to 51 BC (n = 1) and p AD 100 to AD 300 (n = 2).',
    ]);
    expect(figures.date.caption).toContain('2 fragments without a closed date left out');
    expect(figures.date.data[0]).toMatchObject({ base: [-100, 100], x: [50, 200] });
    expect(figures.date.data[1].text).toEqual(['76 BC', 'AD 188']);
    expect(figures.date.layout.xaxis).toMatchObject({
      ticktext: ['200 BC', '100 BC', 'AD 1', 'AD 100', 'AD 200', 'AD 300'],
    });
    const tables = Object.values(made);
    expect(tables.map((table) => tableCsv(table).split('\r\n')[0])).toEqual([
      expect.stringContaining('site'),
      'site,from (astronomical year; 0 = 1 BC),to (astronomical year; 0 = 1 BC),median of the middles (astronomical year; 0 = 1 BC),n dated,undated',
    ]);
    expect(tableCsv(made.spans)).toContain('q,-100,-50,-75,1,1');
    const page = tablePart(made.spans);
    expect(page).toContain('<th scope="col">from</th>');
    expect(page).toContain('<td title="astronomical year -100">101 BC</td>');
  });
  it('counts the values of each attribute at each place', () => {
    const { tables: made, figures } = ask(summary, inputFrom(rows), {
      of: ['density1', 'fibre', 'structure'],
      by: ['site'],
      resamples: 0,
    });
    expect(made.recorded.columns.map(({ label }) => label)).toEqual(['attribute', 'p (2)', 'q (2)', 'r (1)']);
    expect(made.recorded.rows).toEqual([
      ['density1', 2, 0, 1],
      ['fibre', 1, 2, 0],
      ['structure', 0, 1, 0],
    ]);
    expect(figures.recorded.data[0]).toMatchObject({
      z: [
        [100, 0, 100],
        [50, 100, 0],
        [0, 50, 0],
      ],
    });
  });
});
