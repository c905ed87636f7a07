import { describe, expect, it } from 'vitest';
import { matchAttribute, matchTerm } from '../../src/attributes/matching.ts';
import { defaultRegister } from '../../src/attributes/register.ts';
import { read } from '../sources/support.ts';

const register = defaultRegister();

/** Headers cut short as catalogues cut them: common practice, no source. */
// biome-ignore format: one attribute a line
const TAKEN: readonly (readonly [attribute: string, ...headers: string[]])[] = [
  ['fragment', 'Obj. no.', 'Obj.-Nr.', 'Fragm.-Nr.', 'Frag. no.'],
  ['rowSpacing', 'Row dist.', 'Row dist. (mm)', 'Reihen-Abst. (mm)', 'Esp. rangs (mm)'],
  ['diameter1', 'Fadendurchm. Kette', 'Fadendurchm. Kette (mm)', 'Diam. urd. (mm)', 'Diam. ord.'],
  ['density1', 'Trådtæth. trend', 'Dens. ordito'],
  ['density2', 'Dens. trame (/cm)', 'Dens. trama'],
  ['twist1', 'Dir. torsione ord.'],
  ['context', 'Trench/context', 'Grave / Feature'],
];

describe('a header cut short is read by the words that it begins', () => {
  it.each(TAKEN.flatMap(([id, ...headers]) => headers.map((header) => ({ id, header }))))(
    '$header is $id',
    ({ id, header }) => {
      expect(matchAttribute(header, register)).toMatchObject({ kind: 'exact', id });
    },
  );

  it.each([
    ['without points', 'Row dist (mm)', 'rowSpacing'],
    ['as one word', 'Struct.', 'structure'],
    ['as one compound', 'Fundkompl.', 'context'],
    ['written together', 'Rowdist', 'rowSpacing'],
    ['by its first and last letters', 'Warp ct. (/cm)', 'density1'],
    ['as one compound', 'Rekkeavst. (mm)', 'rowSpacing'],
  ])('%s it is only suggested: %s', (_, header, id) => {
    expect(matchAttribute(header, register)).toMatchObject({
      kind: 'suggested',
      id,
      reason: expect.stringContaining('may be short for'),
    });
  });

  it('what may be short for words of several attributes is none of them, and says which', () => {
    const match = matchAttribute('Per.', register);
    expect(match).toMatchObject({ kind: 'none', reason: expect.stringContaining('may be short for') });
  });

  it('names of two attributes are neither of them', () => {
    expect(matchAttribute('Site/Phase', register)).toMatchObject({
      kind: 'none',
      reason: '"Site/Phase" names two things, Site and Phase',
    });
    const { columns } = read('Site/Phase,Structure\nHarrow I,tabby\nHarrow II,twill\nKelder,twill\n');
    expect(columns[0]).toMatchObject({
      status: 'unknown',
      doubt: expect.stringContaining('names two things'),
    });
  });

  it('what may be short for several is asked about where its cells speak for one alone', () => {
    const rows = ['Vestkær', 'Vestkær', 'Østholt', 'Østholt'].map(
      (site, at) => `${at + 1},${site},kiper 2/2`,
    );
    const { columns } = read(`Fundnr.,Lok.,Teknik\n${rows.join('\n')}\n`);
    expect(columns[1]).toMatchObject({ status: 'suggested', suggestion: { attribute: 'site', sure: false } });
  });

  it.each(['Temp.', 'Nr.', 'T.', 'Obj.', 'W. G.'])('%s is no attribute for that', (header) => {
    expect(matchAttribute(header, register).kind).not.toBe('exact');
  });

  it('a term cut short is asked about by its name', () => {
    expect(matchTerm('Weidenb.', register.vocabularies.get('fibre')!)).toMatchObject({
      kind: 'suggested',
      id: 'willowBast',
    });
  });
});

describe('a header that names a distance or two measurements', () => {
  const table = (header: string, cells: readonly string[]) =>
    read(
      `Find no.,Structure,${header}\n${cells.map((cell, row) => `${row + 1},open twining,${cell}`).join('\n')}\n`,
    ).columns[2]!;

  it.each(['Warp spacing (mm)', 'Kettabst. (mm)', 'Kettfadenabstand (mm)', 'espacement des montants (mm)'])(
    '%s is never a spacing of rows: it is asked about as a count turned over',
    (header) => {
      const { status, suggestion } = table(header, ['4', '4.5', '5', '6']);
      expect([status, suggestion?.attribute]).toEqual(['suggested', 'density1']);
    },
  );

  it.each(['Warp row pitch (mm)', 'Kette Zwischenraum (mm)', 'Warp clear distance (mm)'])(
    '%s is of the other system than the rows, and is offered as nothing of theirs',
    (header) => {
      expect(table(header, ['4', '4.5', '5', '6'])).toMatchObject({ status: 'unknown', attributes: [] });
    },
  );

  it.each(['L x W (cm)', 'Length × width (cm)', 'Länge x Breite [cm]', 'L/B (cm)'])(
    '%s parts into both, in the unit beside them',
    (header) => {
      const { suggestion } = table(header, ['12 x 8', '10.5 x 4', '9 x 8', '3 x 2']);
      expect(suggestion?.split?.into).toMatchObject([
        { attribute: 'length', unit: 'cm' },
        { attribute: 'width', unit: 'cm' },
      ]);
      expect(suggestion?.sure).toBe(true);
    },
  );
});
