import { describe, expect, it } from 'vitest';
import { read } from '../support.ts';
import { FRESH_TABLES } from './fresh-tables.ts';
import { mayBe, silentlyWrong } from './judged.ts';

describe('tables of other finds, other hands and other habits', () => {
  it.each(FRESH_TABLES)('$sort: every find is a row and every head a column', (table) => {
    const reading = read(table.text);
    expect(reading.columns.map(({ header }) => header)).toEqual(Object.keys(table.right));
    expect(reading.rowsKept).toBe(table.finds);
  });

  it('have no column read wrongly in silence, whether or not all beyond doubt is taken', () => {
    expect(FRESH_TABLES.flatMap((table) => silentlyWrong(table, false))).toEqual([]);
    expect(FRESH_TABLES.flatMap((table) => silentlyWrong(table, true))).toEqual([]);
  });

  it('are asked about rightly, and nine in ten of the columns that Thrum knows are taken or asked about', () => {
    const asked = FRESH_TABLES.flatMap((table) =>
      read(table.text).columns.flatMap(({ header, suggestion }) =>
        suggestion === undefined ? [] : [{ table, header, attribute: suggestion.attribute }],
      ),
    );
    expect(asked.length).toBeGreaterThan(15);
    const wrong = asked.filter(({ table, header, attribute }) => !mayBe(table, header).includes(attribute));
    expect(wrong.map(({ table, header, attribute }) => `${table.sort}: ${header}, ${attribute}`)).toEqual([]);
    const known = FRESH_TABLES.flatMap((table) =>
      read(table.text).columns.filter(({ header }) => !mayBe(table, header).includes(null)),
    );
    const missed = known.filter(({ status }) => status !== 'matched' && status !== 'suggested');
    expect(known.length).toBeGreaterThan(75);
    expect(missed.length).toBeLessThanOrEqual(0.1 * known.length);
  });
});
