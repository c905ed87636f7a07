import { describe, expect, it } from 'vitest';
import { read } from '../support.ts';
import { FRESH_TABLES } from './fresh-tables.ts';
import { mayBe, silentlyWrong } from './judged.ts';
import { LATER_TABLES } from './later-tables.ts';

describe.each([
  ['other finds, other hands and other habits', FRESH_TABLES, { asked: 15, known: 75 }],
  ['heads over two rows and words of two meanings', LATER_TABLES, { asked: 25, known: 110 }],
] as const)('tables of %s', (_, tables, least) => {
  it.each(tables)('$sort: every find is a row and every head a column', (table) => {
    const reading = read(table.text);
    expect(reading.columns.map(({ header }) => header).sort()).toEqual(Object.keys(table.right).sort());
    expect(reading.rowsKept).toBe(table.finds);
  });

  it('have no column read wrongly in silence, whether or not all beyond doubt is taken', () => {
    expect(tables.flatMap((table) => silentlyWrong(table, false))).toEqual([]);
    expect(tables.flatMap((table) => silentlyWrong(table, true))).toEqual([]);
  });

  it('are asked about rightly, and nine in ten of the columns that Thrum knows are taken or asked about', () => {
    const asked = tables.flatMap((table) =>
      read(table.text).columns.flatMap(({ header, suggestion }) =>
        suggestion === undefined ? [] : [{ table, header, attribute: suggestion.attribute }],
      ),
    );
    expect(asked.length).toBeGreaterThan(least.asked);
    const wrong = asked.filter(({ table, header, attribute }) => !mayBe(table, header).includes(attribute));
    expect(wrong.map(({ table, header, attribute }) => `${table.sort}: ${header}, ${attribute}`)).toEqual([]);
    const known = tables.flatMap((table) =>
      read(table.text).columns.filter(({ header }) => !mayBe(table, header).includes(null)),
    );
    const missed = known.filter(({ status }) => status !== 'matched' && status !== 'suggested');
    expect(known.length).toBeGreaterThan(least.known);
    expect(missed.length).toBeLessThanOrEqual(0.1 * known.length);
  });
});
