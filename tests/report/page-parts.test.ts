import { describe, expect, it } from 'vitest';
import { escapeHtml } from '../../src/report/html-parts.ts';
import { figurePart } from '../../src/report/page/figure-part.ts';
import { tablePart } from '../../src/report/page/table-part.ts';

const HOSTILE = "\"><script>alert(1)</script><img src=x onerror='alert(2)'>";

describe('texts of a source in the report', () => {
  it('cannot leave the place they stand in', () => {
    const table = tablePart({
      title: HOSTILE,
      columns: [{ id: 'a', label: HOSTILE, unit: HOSTILE }],
      rows: [[HOSTILE], [{ why: HOSTILE }]],
      note: HOSTILE,
    });
    const trace = {
      type: 'bar',
      name: HOSTILE,
      x: [HOSTILE, 'b'],
      y: [1, 2],
      text: [HOSTILE, 'b'],
      textposition: 'outside',
    };
    const figure = figurePart({
      number: 1,
      name: HOSTILE,
      figure: { data: [trace, trace], layout: { xaxis: { title: { text: HOSTILE } } }, caption: HOSTILE },
    }).html;
    expect(figure).toContain('alert(1)');
    for (const html of [table, figure, escapeHtml(HOSTILE)]) {
      expect(html).not.toContain('<script>');
      expect(html).not.toContain('<img');
      expect(html).not.toMatch(/="[^"]*"><script/);
    }
  });
});

describe('a table in the report', () => {
  it('says below it why a number is not given, each reason once', () => {
    const html = tablePart({
      title: 't',
      columns: [{ id: 'sd', label: 'sd' }],
      rows: [[1.23456], [{ why: 'too few' }], [{ why: 'too few' }], [{ why: 'open-ended' }]],
    });
    expect(html.match(/–<sup>a<\/sup>/g)).toHaveLength(2);
    expect(html).toContain('<sup>b</sup> not given: open-ended.');
    expect(html).toContain('<td title="1.23456">1.23</td>');
  });

  it('of more than 60 lines shows these and names the file of all, and is whole where there is none', () => {
    const long = {
      title: 'Long',
      columns: [{ id: 'a', label: 'a' }],
      rows: Array.from({ length: 130 }, (_, at) => [at]),
    };
    const html = tablePart(long, { file: 'tables/a-long.csv' });
    expect(html.split('<tr><td>')).toHaveLength(61);
    expect(html).toContain('70 further lines: tables/a-long.csv.');
    expect(tablePart(long).split('<tr><td>')).toHaveLength(131);
  });

  const wide = {
    title: 'Wide',
    columns: [
      { id: 'site', label: 'site' },
      ...Array.from({ length: 30 }, (_, at) => ({ id: `c${at}`, label: `column ${at}` })),
    ],
    rows: ['Holm', 'Pell'].map((site) => [site, ...Array.from({ length: 30 }, (_, at) => at + 0.25)]),
    briefly: ['site', 'c3'],
  };

  it('too wide for a page is split, the first column again before each part and no column lost', () => {
    const html = tablePart(wide, { number: 7 });
    const parts = html.split('<table>').slice(1);
    expect(parts.length).toBeGreaterThan(2);
    for (const part of parts) expect(part).toMatch(/<thead><tr><th scope="col" class="t">site<\/th>/);
    for (let at = 0; at < 30; at++) expect(html.split(`>column ${at}</th>`)).toHaveLength(2);
    expect(html).toContain('<caption><b>Table 7.</b> Wide, continued</caption>');
  });

  it('stands in the text with the columns that matter most, and says where the others are', () => {
    const html = tablePart(wide, { number: 7, briefly: true, file: 'tables/a-wide.csv' });
    expect(html.split('<table>')).toHaveLength(2);
    expect(html).toContain('>column 3</th>');
    expect(html).not.toContain('>column 4</th>');
    expect(html).toContain('29 further columns: tables/a-wide.csv.');
  });
});
