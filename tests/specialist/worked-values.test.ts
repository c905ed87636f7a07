import { describe, expect, it } from 'vitest';
import { defaultRegister } from '../../src/attributes/register.ts';
import { midpoint, termAt } from '../../src/fragments/accessors.ts';
import { readFind } from '../../src/fragments/find-table.ts';

const register = defaultRegister();
const all = [...register.attributes.values()];
const worked = all.flatMap(({ id, worked: example }) => (example === undefined ? [] : [{ id, ...example }]));

// By hand, as each definition writes it down; the sums are of arithmetic and geometry.
describe('what is derived is what one would work out by hand', () => {
  it.each(worked)('$id: $how is $gives', ({ id, cells, gives }) => {
    const column = readFind(cells, register).table.columns.get(id);
    if (typeof gives === 'string') {
      expect(column?.kind === 'term' ? termAt(column, 0) : null).toBe(gives);
      return;
    }
    const value = column?.kind === 'numeric' ? midpoint(column, 0) : Number.NaN;
    // Sums are written down to four or five figures.
    expect(Math.abs(value - gives)).toBeLessThanOrEqual(1e-4 * Math.abs(gives));
  });

  it('every derived attribute has such a sum', () => {
    const without = all.filter(({ derived, composed, worked: example }) => derived && !composed && !example);
    expect(without.map(({ id }) => id)).toEqual([]);
  });

  it('what is recorded of a fabric says how it is counted and what orientation does to it', () => {
    const silent = all.filter(
      ({ block, counted, oriented, composed }) =>
        block !== 'context' && !composed && (counted === undefined || oriented === undefined),
    );
    expect(silent.map(({ id }) => id)).toEqual([]);
  });
});

// Geometry: what the words say of orientation holds of the numbers and letters.
describe('what orientation does is as said', () => {
  const ORIENTED = { structure: 'tabby', orientation: 'warp and weft known' };
  const number = (cells: Readonly<Record<string, string>>, id: string) => {
    const column = readFind(cells, register).table.columns.get(id);
    return column?.kind === 'numeric' ? midpoint(column, 0) : Number.NaN;
  };
  const one = { ...ORIENTED, density1: '14', density2: '10', diameter1: '0.5', diameter2: '0.4' };
  const other = { ...ORIENTED, density1: '10', density2: '14', diameter1: '0.4', diameter2: '0.5' };
  const by = (effect: string) =>
    all.filter(({ oriented, derived, scale }) => oriented === effect && derived && scale !== 'ordinal');

  it('the systems the other way round', () => {
    for (const { id } of by('inverts')) expect(number(other, id)).toBeCloseTo(1 / number(one, id), 12);
    for (const { id } of by('sign')) expect(number(other, id)).toBeCloseTo(-number(one, id), 12);
    const free = by('free').filter(({ id }) => !Number.isNaN(number(one, id)));
    expect(free.length).toBeGreaterThanOrEqual(5);
    for (const { id } of free) expect(number(other, id), id).toBeCloseTo(number(one, id), 12);
    expect(number(other, 'cover2')).toBeCloseTo(number(one, 'cover1'), 12);
  });

  it('an impression mirrors what is said to be mirrored', () => {
    for (const { id } of all.filter(({ oriented }) => oriented === 'mirrors')) {
      const cell = id.startsWith('ply') ? 'S2z' : 'S';
      const column = readFind(
        { structure: 'tabby', [id]: cell, observedOn: 'impression' },
        register,
      ).table.columns.get(id);
      expect(column?.kind === 'term' ? termAt(column, 0) : null, id).toBe(id.startsWith('ply') ? 'Z2s' : 'Z');
    }
  });
});
