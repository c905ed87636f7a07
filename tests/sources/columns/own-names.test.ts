import { describe, expect, it } from 'vitest';
import { extendRegister } from '../../../src/attributes/register.ts';
import { numbers, read, register } from '../support.ts';

const HEAD = 'Find no.,Site,Structure,';
const table = (header: string, values: readonly string[]): string =>
  `${HEAD}${header}\n${values.map((value, row) => `${row + 1},Holm,twined,${value}`).join('\n')}\n`;
const column = (text: string, more: Parameters<typeof read>[2] = {}) => {
  const reading = read(text, {}, more);
  return { reading, last: reading.columns.at(-1)! };
};
const ZEROS = ['0', '0', '0', '0', '0', '0', '0'];
const HUGE = ['90000', '120000', '95000', '110000', '100000', '97000', '99000'];
const NEGATIVE = ['-12', '-8', '-15', '-20', '-11', '-13', '-7'];

describe("a column under an attribute's own name", () => {
  it.each([
    ['all nought', 'Row spacing (mm)', ZEROS],
    ['all nought, without a unit', 'Row spacing', ZEROS],
    ['under its id', 'rowSpacing', ZEROS],
    ['beyond what is possible', 'Row spacing (mm)', HUGE],
    ['below nought', 'Row spacing (mm)', NEGATIVE],
    ['small whole numbers beside a unit', 'Row spacing (mm)', ['0', '1', '2', '1', '0', '3', '0']],
    ['a known wording beside its unit', 'Spacing between rows (mm)', HUGE],
  ])('is taken, every number kept, and what is odd is said: %s', (_, header, values) => {
    const { reading, last } = column(table(header, values));
    expect([last.status, last.attributes]).toEqual(['matched', ['rowSpacing']]);
    // What a minus before such a measure means cannot be told; the cell says so and keeps its text.
    const kept = values.map(Number).map((value) => (value < 0 ? Number.NaN : value));
    expect([...numbers(reading, 'rowSpacing').low]).toEqual(kept);
    expect([...numbers(reading, 'rowSpacing').raw]).toEqual(values);
    expect(reading.ledger.some(({ column: of, level }) => of === header && level === 'flagged')).toBe(true);
  });

  it('says once of the column what speaks against it', () => {
    const { reading, last } = column(table('Row spacing (mm)', HUGE));
    expect(last.doubt).toContain('its middle value of 99000 is hardly possible in mm');
    expect(reading.ledger.filter(({ rule }) => rule === 'column-doubted')).toHaveLength(1);
    const plain = column(table('Row spacing (mm)', ['2', '3', '4', '3', '5', '2', '3']));
    expect(plain.last.doubt).toBeUndefined();
    expect(plain.reading.ledger.some(({ rule }) => rule === 'column-doubted')).toBe(false);
  });

  it('is not displaced by a column that suits the attribute better', () => {
    const rows = ZEROS.map((_, row) => `${row + 1},Holm,twined,0,${row + 2}`);
    const reading = read(`${HEAD}Row spacing (mm),Row spacng\n${rows.join('\n')}\n`);
    expect(reading.columns.map(({ attributes }) => attributes[0])).toEqual([
      'fragment',
      'site',
      'structure',
      'rowSpacing',
      undefined,
    ]);
  });

  it('is taken for one known kind among unknown ones, which a word of many meanings is not', () => {
    const under = (header: string, cells: readonly string[]) =>
      read(`Find no.,${header}\n${cells.map((cell, row) => `A${row + 1},${cell}`).join('\n')}\n`).columns[1]!;
    for (const header of ['Fibre', 'fibre', 'Structure']) {
      const known = header === 'Structure' ? 'tabby' : 'oak';
      const column = under(header, [known, 'glarb', 'drosk', 'glarb']);
      expect([column.status, column.attributes], header).toEqual(['matched', [header.toLowerCase()]]);
    }
    const species = under('Species', ['oak', 'ash', 'yew', 'ash']);
    expect(species.attributes).toEqual([]);
    const none = under('Fibre', ['drosk', 'glarb', 'merl', 'glarb']);
    expect(none.attributes).toEqual([]);
    expect(none.doubt).toContain('none of its wordings is a term of "Fibre"');
  });

  it("holds for a study's own attributes", () => {
    const own = extendRegister(register, {
      attributes: [
        {
          id: 'whorlMass',
          label: 'Whorl mass',
          block: 'find',
          scale: 'ratio',
          unit: 'g',
          plausible: { limit: [1, 300] },
          source: 'invented',
        },
      ],
    });
    const { reading, last } = column(table('Whorl mass', ZEROS), { register: own });
    expect([last.status, last.attributes]).toEqual(['matched', ['whorlMass']]);
    expect(reading.ledger.some(({ rule }) => rule === 'column-doubted')).toBe(true);
  });

  it('is still left where its cells are grades or words', () => {
    expect(column(table('Length', ['0', '1', '2', '1', '0', '3', '0'])).last.status).toBe('unknown');
    expect(
      column(table('Row spacing (mm)', ['fine', 'coarse', 'fine', 'coarse', 'fine', 'coarse', 'fine'])).last
        .status,
    ).toBe('unknown');
  });
});
