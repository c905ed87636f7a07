import { describe, expect, it } from 'vitest';
import type { ProfileInput } from '../../../src/sources/profile/profile.ts';
import { lostCells, numbers, read } from '../support.ts';

/** How the sizes of finds get from a cell into the table. Invented tables; what is expected follows from their texts. */

const split = (unit: string, third = false): ProfileInput => ({
  columns: [
    {
      header: 'Maße',
      split: {
        by: 'systems',
        into: ['length', 'width', ...(third ? ['thickness'] : [])].map((attribute) => ({ attribute, unit })),
      },
    },
  ],
});
const table = (...cells: string[]) => `Nr.;Maße\n${cells.map((cell, i) => `A${i};"${cell}"`).join('\n')}\n`;
const sizes = (reading: ReturnType<typeof read>, id = 'length') => [
  ...numbers(reading, id).low,
  ...numbers(reading, id).high,
];

describe('the sizes of several pieces in one cell', () => {
  const text = table('5 x 3; 12 x 8 cm', '120 x 80 mm; 9 x 90 cm', '7 x 6');

  it('are those of the piece of the greatest area until somebody says otherwise, flagged', () => {
    const reading = read(text, split('cm'));
    // 9 x 90 cm = 81,000 mm² is more than 120 x 80 mm = 9,600 mm².
    expect([...numbers(reading, 'length').low]).toEqual([120, 90, 70]);
    expect([...numbers(reading, 'width').low]).toEqual([80, 900, 60]);
    expect(reading.columns[1]?.severalPieces).toBe(2);
    expect(reading.ledger.filter(({ rule }) => rule === 'several-pieces')).toMatchObject([
      { row: 2, raw: '5 x 3; 12 x 8 cm', readAs: '12 cm | 8 cm', level: 'flagged' },
      { row: 3, level: 'flagged' },
    ]);
    expect(reading.ledger.find(({ rule }) => rule === 'several-pieces')?.why).toMatch(
      /the largest is read, "12 x 8 cm", and "5 x 3 cm" stands here only/,
    );
    expect(lostCells(reading)).toEqual([]);
  });

  it('are those that the profile says, and then nobody is asked', () => {
    const first = read(text, { ...split('cm'), pieces: 'first' });
    expect([...numbers(first, 'length').low]).toEqual([50, 120, 70]);
    expect(first.columns[1]?.severalPieces).toBeUndefined();
    expect(first.ledger.find(({ rule }) => rule === 'several-pieces')?.level).toBe('read');
    expect(first.profile.pieces).toBe('first');
    const unread = read(text, { ...split('cm'), pieces: 'unread' });
    expect([...numbers(unread, 'length').low]).toEqual([Number.NaN, Number.NaN, 70]);
  });

  it('are never taken for two systems of threads', () => {
    const counts = read('Nr.;Dichte\nA;12 x 8; 5 x 3\n'.replace('12 x 8; 5 x 3', '"12 x 8; 5 x 3"'), {
      columns: [
        {
          header: 'Dichte',
          split: { by: 'systems', into: [{ attribute: 'density1' }, { attribute: 'density2' }] },
        },
      ],
    });
    expect([...numbers(counts, 'density1').low]).toEqual([Number.NaN]);
  });
});

describe('words beside sizes', () => {
  it('"max." means the greatest sizes measured, of both alike, and of one number an upper bound', () => {
    const reading = read(table('max. 12 x 8', '12 x max. 8', 'max. 12', '12 x 8 (max.)'), split('mm'));
    expect(sizes(reading)).toEqual([12, 12, 0, 12, 12, 12, 12, 12]);
    expect([...numbers(reading, 'width').low]).toEqual([8, 8, Number.NaN, 8]);
  });

  it('"erh." makes each a lower bound; "c." holds for all', () => {
    const reading = read(table('erh. 12 x 8', 'c. 20 x 10'), split('mm'));
    expect(sizes(reading)).toEqual([12, 18, Number.POSITIVE_INFINITY, 22]);
    expect(sizes(reading, 'width')).toEqual([8, 9, Number.POSITIVE_INFINITY, 11]);
  });
});

describe('a third size', () => {
  it('is the thickness where the profile says so, and stands in the ledger where it does not', () => {
    const three = read(table('12 x 8 x 2', '9 x 7'), split('mm', true));
    expect([...numbers(three, 'thickness').low]).toEqual([2, Number.NaN]);
    const two = read(table('12 x 8 x 2'), split('mm'));
    expect(two.ledger.find(({ raw }) => raw === '12 x 8 x 2')?.why).toMatch(/no attribute takes "2"/);
  });

  it('is suggested with the split where some cells give it, and no other column holds it', () => {
    const into = (text: string) =>
      read(text).columns[1]?.suggestion?.split?.into.map(({ attribute }) => attribute);
    expect(into('Nr.;Maße (mm)\nA;12 x 8 x 2\nB;9 x 7\nC;5 x 4\n')).toEqual(['length', 'width', 'thickness']);
    expect(into('Nr.;Maße (mm)\nA;12 x 8\nB;9 x 7\nC;5 x 4\n')).toEqual(['length', 'width']);
    expect(into('Nr.;Maße (mm);Thickness (mm)\nA;12 x 8 x 2;1\nB;9 x 7;2\nC;5 x 4;1\n')).toEqual([
      'length',
      'width',
    ]);
  });
});

it('a column headed "Maße" whose cells are pairs is one of sizes and no weight, though "Masse" is one', () => {
  const columns = read('Nr.;Maße\nA;12 x 8\nB;9 x 7\nC;5 x 4\n').columns;
  expect(columns[1]).toMatchObject({ status: 'suggested', suggestion: { attribute: 'length' } });
  expect(read('Nr.;Masse (g)\nA;12\nB;9\n').columns[1]?.attributes).toEqual(['weight']);
});

describe('a measurement without a unit', () => {
  const assumed = (text: string, profile?: ProfileInput) =>
    read(text, profile).columns.map(({ assumedUnit }) => assumedUnit);

  it('is taken in the unit of its attribute, and that is said', () => {
    const reading = read('Find no.,Length\nA,35\nB,12\n');
    expect(reading.columns[1]?.assumedUnit).toBe('mm');
    expect(reading.ledger).toMatchObject([
      { row: 0, column: 'Length', rule: 'unit-assumed', level: 'flagged' },
    ]);
  });

  it('is not asked about where header, note, profile or every cell states one, or none is needed', () => {
    expect(assumed('Find no.,Length (cm)\nA,35\n')).toEqual([undefined, undefined]);
    expect(assumed('Find no.,Length\nA,35 mm\nB,2 cm\n')).toEqual([undefined, undefined]);
    expect(
      assumed('Find no.,Length\nA,35\n', {
        columns: [{ header: 'Length', attribute: 'length', unit: 'mm' }],
      }),
    ).toEqual([undefined, undefined]);
    expect(assumed('Find no.,rowSpacing\nA,35\n')).toEqual([undefined, undefined]);
  });
});
