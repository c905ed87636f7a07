import { describe, expect, it } from 'vitest';
import { read } from '../support.ts';
import { FIELD_TABLES } from './field-tables.ts';
import { mayBe, silentlyWrong } from './judged.ts';

describe('whole tables in the image of the field’s', () => {
  it('are twenty-five at least, in six languages and as many odd layouts as there are', () => {
    expect(FIELD_TABLES.length).toBeGreaterThanOrEqual(25);
  });

  it.each(FIELD_TABLES)('$sort: every find is a row and every head a column', (table) => {
    const reading = read(table.text);
    expect(reading.columns.map(({ header }) => header)).toEqual(Object.keys(table.right));
    expect(reading.rowsKept).toBe(table.finds);
  });

  it('have no column read wrongly in silence, whether or not all beyond doubt is taken', () => {
    expect(FIELD_TABLES.flatMap((table) => silentlyWrong(table, false))).toEqual([]);
    expect(FIELD_TABLES.flatMap((table) => silentlyWrong(table, true))).toEqual([]);
  });

  it('are asked about rightly', () => {
    const asked = FIELD_TABLES.flatMap((table) =>
      read(table.text).columns.flatMap(({ header, suggestion }) =>
        suggestion === undefined
          ? []
          : [
              {
                what: `${table.sort}: ${header}, ${suggestion.attribute}`,
                right: mayBe(table, header).includes(suggestion.attribute),
              },
            ],
      ),
    );
    expect(asked.length).toBeGreaterThan(8);
    expect(asked.filter(({ right }) => !right)).toEqual([]);
  });

  it('have nine in ten of the columns that Thrum has an attribute for taken unasked', () => {
    const known = FIELD_TABLES.flatMap((table) =>
      read(table.text)
        .columns.filter(({ header }) => !mayBe(table, header).includes(null))
        .map(({ header, status }) => ({ what: `${table.sort}: ${header}`, taken: status === 'matched' })),
    );
    expect(known.length).toBeGreaterThan(90);
    const open = known.filter(({ taken }) => !taken).map(({ what }) => what);
    expect(open.length, open.join('; ')).toBeLessThanOrEqual(0.1 * known.length);
  });
});

describe('a word with a partner', () => {
  const columns = (text: string) =>
    Object.fromEntries(
      read(text).columns.map(({ header, status, attributes, suggestion }) => [
        header,
        status === 'matched' ? attributes[0] : `${suggestion?.attribute ?? 'nothing'}?`,
      ]),
    );
  it('is a coordinate beside the other one', () => {
    expect(columns('Find,Lat.,Long.\nA1,47.1,8.2\nA2,47.3,8.4\nA3,46.9,8.0\n')).toMatchObject({
      'Lat.': 'latitude',
      'Long.': 'longitude',
    });
  });
  it('is a length beside a width', () => {
    expect(columns('Find,Long.,Larg.\nA1,47.1,8.2\nA2,47.3,8.4\nA3,46.9,8.0\n')['Long.']).toBe('length?');
  });
  it('is left alone by itself, while the whole word is not', () => {
    expect(columns('Find,Long.,Rim\nA1,47.1,8.2\nA2,47.3,8.4\nA3,46.9,8.0\n')['Long.']).toBe('nothing?');
    expect(columns('Find,Longitude,Rim\nA1,47.1,8.2\nA2,47.3,8.4\nA3,46.9,8.0\n').Longitude).toBe(
      'longitude',
    );
  });
});
