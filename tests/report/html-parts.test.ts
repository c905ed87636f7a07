import { describe, expect, it } from 'vitest';
import { escapeHtml, figurePart, tablePart } from '../../src/report/html-parts.ts';

const HOSTILE = "\"><script>alert(1)</script><img src=x onerror='alert(2)'>";

describe('texts of a source in the report', () => {
  it('cannot leave the place they stand in', () => {
    const table = tablePart({
      title: HOSTILE,
      columns: [{ id: 'a', label: HOSTILE, unit: HOSTILE }],
      rows: [[HOSTILE], [{ why: HOSTILE }]],
      note: HOSTILE,
    });
    const figure = figurePart(HOSTILE, { data: [{ x: [HOSTILE] }], layout: {}, caption: HOSTILE });
    for (const html of [table, figure, escapeHtml(HOSTILE)]) {
      expect(html).not.toContain('<script>');
      expect(html).not.toContain('<img');
      expect(html).not.toMatch(/="[^"]*"><script/);
    }
  });

  it('reach the figure unchanged', () => {
    const html = figurePart('a', { data: [{ text: [HOSTILE, 1, Infinity] }], layout: {}, caption: '' });
    const json = /<script type="application\/json"[^>]*>(.*?)<\/script>/s.exec(html)?.[1] ?? '';
    expect(JSON.parse(json)).toEqual({ data: [{ text: [HOSTILE, 1, null] }], layout: {} });
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
    expect(html).toContain('<span title="1.23456">1.23</span>');
  });
});
