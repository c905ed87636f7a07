import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { checkClaims } from '../../../src/analyses/claims/compute.ts';
import { createRandom } from '../../../src/numerics/foundation/random.ts';
import { loadStudy, studyFiles } from '../../../src/study/load.ts';
import { prepareStudy } from '../../../src/study/prepare.ts';
import { reference } from '../../references/reference.ts';
import { claimsBytes, type Row } from './claims.ts';

// R 4.2.2 on the open table of penguins, printed by R itself: tests/references/scripts/printed-data.R.
const { claims } = reference<{ readonly claims: readonly Row[] }>('printed-data');

const folder = new URL('../../../datasets/open/', import.meta.url);
const study = loadStudy(readFileSync(new URL('penguins-study.json', folder), 'utf8'), 'penguins-study.json');
const { fragments, records, register } = prepareStudy(
  study,
  new Map(
    studyFiles(study).map((file) => [file, new Uint8Array(readFileSync(new URL(file, folder)))] as const),
  ),
);

function judged(rows: readonly Row[]) {
  const named = rows.map((row, i) => ({ ...row, id: `${i}` }));
  return checkClaims(
    new Map([['c.csv', claimsBytes(named)]]),
    { file: 'c.csv', tables: [] },
    createRandom(1),
    { fragments, records, register, unit: study.unit },
  ).judged;
}

describe('figures that R printed from an open table', () => {
  const found = judged(claims);

  it(`all agree with the data: ${claims.length} claims of every kind of test`, () => {
    expect(new Set(claims.map(({ test }) => test))).toContain('z');
    expect(
      found.flatMap(({ figure, says, why }) =>
        says === 'agrees' ? [] : [`${figure.method} ${figure.quantity} ${figure.printed}: ${why}`],
      ),
    ).toEqual([]);
  });

  it('differ as soon as their first digit is another', () => {
    const altered = claims.map((row) => ({
      ...row,
      printed: (row.printed ?? '').replace(/[1-9]/, (digit) => String((Number(digit) % 9) + 1)),
    }));
    const passed = judged(altered).filter(
      ({ figure, verdict }) => verdict.startsWith('agrees') && !/\(high\)$/.test(figure.id),
    );
    expect(passed.map(({ figure }) => `${figure.method} ${figure.quantity} ${figure.printed}`)).toEqual([]);
  });

  it('says which condition meets no record, and what occurs instead', () => {
    const [one] = judged([
      { quantity: 'mean', attribute: 'bodyMass', select: 'species in Gentoe', printed: '5076' },
    ]);
    expect(one?.verdict).toBe('cannot be checked');
    expect(one?.why).toContain('no record meets "species in Gentoe"');
    expect(one?.resolve).toBe('Of species there occur Adelie, Chinstrap, Gentoo.');
  });

  it('passes over a unit behind the number', () => {
    const [row] = claims.filter(
      ({ quantity, attribute }) => quantity === 'mean' && attribute === 'flipperLength',
    );
    expect(judged([{ ...row, printed: `${row?.printed} mm` }])[0]?.verdict).toBe('agrees');
  });

  it('holds both degrees of freedom of F to the data', () => {
    const df = (printed: string) =>
      judged([{ quantity: 'df', test: 'F', attribute: 'bodyMass; species', printed }])[0];
    expect(df('2, 339').verdict).toBe('agrees');
    expect(df('3, 339').verdict).toBe('differs');
    expect(df('2, 338').verdict).toBe('differs');
    expect(df('3, 339').why).toContain('2, 339 (analysis of variance)');
  });
});
