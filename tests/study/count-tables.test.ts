import { describe, expect, it } from 'vitest';
import { extendRegister } from '../../src/attributes/register.ts';
import { crossedTable } from '../../src/fragments/crossed-table.ts';
import { countOf, oneRowEach } from '../../src/fragments/quantity.ts';
import { correspondence, projectRow } from '../../src/numerics/ordination/correspondence.ts';
import { readSource } from '../../src/sources/read-source.ts';
import { checkStudy } from '../../src/study/load.ts';
import { prepareStudy } from '../../src/study/prepare.ts';
import { reference } from '../references/reference.ts';
import { bytes, register as standard } from '../sources/support.ts';

/**
 * Tables of counts as they are printed, one row a place and one column a kind. Inertias and coordinates: R package
 * ca, see references/scripts/count-tables.R; what is expected of the small tables follows from their texts.
 */
interface Solved {
  readonly table: { readonly rows: string[]; readonly columns: string[]; readonly counts: number[][] };
  readonly inertias: number[];
  readonly coordinates: [number[], number[]];
}
const { smoke, author, hair, smokeSupplementary, authorSupplementary } = reference<
  Record<'smoke' | 'author' | 'hair', Solved> &
    Record<'smokeSupplementary' | 'authorSupplementary', Solved & { readonly supplementary: string }>
>('count-tables');

const KIND = { id: 'kind', label: 'Kind', block: 'structure', scale: 'nominal', source: 'test' } as const;
const register = extendRegister(standard, { attributes: [KIND] });

/** The table as somebody prints it. */
const printed = ({ table }: Solved): string =>
  [['', ...table.columns], ...table.rows.map((row, i) => [row, ...table.counts[i].map(String)])]
    .map((cells) => cells.map((cell) => (/[",]/.test(cell) ? `"${cell}"` : cell)).join(','))
    .join('\n');

const readCounts = (text: string, counts: { base?: string } = {}) =>
  readSource(bytes(text), {
    name: 'counts.csv',
    register,
    profile: { layout: { counts: { attribute: 'kind', place: 'site', ...counts } } },
  });

const crossed = (text: string, counts: { base?: string } = {}) =>
  crossedTable(oneRowEach(readCounts(text, counts).table), 'site', 'kind', register);

/** Counts of the rows and columns by name, in the order of the reference. */
const inOrder = (solved: Solved): number[][] => {
  const found = crossed(printed(solved));
  const { rows, columns } = solved.table;
  return rows.map((row) =>
    columns.map((column) => found.counts[found.rows.indexOf(row)]?.[found.columns.indexOf(column)] ?? 0),
  );
};

describe.each([
  ['smoke', smoke],
  ['author', author],
  ['hair', hair],
])('%s, read as it is printed', (_, solved) => {
  const counts = inOrder(solved);

  it('has its counts', () => {
    expect(counts).toEqual(solved.table.counts);
  });

  it('has the inertias of R ca', () => {
    const found = correspondence(counts.flat(), counts.length, counts[0].length);
    if ('why' in found) throw new Error(found.why);
    for (const [k, inertia] of solved.inertias.entries())
      expect(Math.abs(found.eigenvalues[k] - inertia)).toBeLessThan(1e-9);
  });
});

it.each([
  ['smoke', smokeSupplementary],
  ['author', authorSupplementary],
])('%s with a supplementary row: it lies where R ca puts it and has no say', (_, solved) => {
  const counts = inOrder(solved);
  const passive = solved.table.rows.indexOf(solved.supplementary);
  const active = counts.filter((_, row) => row !== passive);
  const found = correspondence(active.flat(), active.length, counts[0].length);
  if ('why' in found) throw new Error(found.why);
  expect(Math.abs(found.eigenvalues[0] - solved.inertias[0])).toBeLessThan(1e-9);
  const at = projectRow(found, counts[passive]);
  if ('why' in at) throw new Error(at.why);
  for (const k of [0, 1])
    expect(Math.abs(Math.abs(at.coordinates[k]) - Math.abs(solved.coordinates[k][passive]))).toBeLessThan(
      1e-9,
    );
});

describe('tables of counts', () => {
  it('count in every door: a study sees the objects, not the lines', () => {
    const study = checkStudy(
      {
        title: 'counts',
        attributes: [KIND],
        sources: [{ file: 'smoke.csv', profile: 'smoke.profile.json' }],
        analyses: [],
      },
      'study.json',
    );
    const profile = JSON.stringify({ layout: { counts: { attribute: 'kind' } } });
    const prepared = prepareStudy(
      study,
      new Map([
        ['smoke.csv', bytes(printed(smoke))],
        ['smoke.profile.json', bytes(profile)],
      ]),
    );
    // 193 employees: Greenacre 1984, p. 55.
    expect([prepared.fragments.rows, prepared.all.rows]).toEqual([193, 20]);
    expect(countOf(prepared.fragments, prepared.fragments.id.keys())).toBe(193);
    expect(new Set(prepared.fragments.item).size).toBe(193);
  });

  it('in per cent with a base become the counts that print so', () => {
    const text = 'Site,disc,cone,sphere,n\nHolm,25.0,50.0,25.0,8\nPell,33.3,66.7,0,3\n';
    const { rows, columns, counts } = crossed(text, { base: 'n' });
    expect([rows, columns]).toEqual([
      ['Holm', 'Pell'],
      ['cone', 'disc', 'sphere'],
    ]);
    expect(counts).toEqual([
      [4, 2, 2],
      [2, 1, 0],
    ]);
  });

  it('keep half counts in the total', () => {
    const { table } = readCounts('Site,disc,cone\nHolm,2.5,1.5\nPell,0.5,3\n');
    expect(countOf(table, table.id.keys())).toBe(7.5);
    expect(oneRowEach(table).rows).toBe(8);
  });

  it('lose no cell: nought and totals are in the ledger', () => {
    const reading = readCounts('Site,disc,cone,Total\nHolm,0,3,3\nPell,2,-,2\n');
    expect(reading.table.rows).toBe(2);
    expect(
      reading.ledger.filter(({ rule }) => rule === 'counted').map(({ raw, readAs }) => [raw, readAs]),
    ).toEqual([
      ['3', 'total of the row'],
      ['0', 'none'],
      ['3', '3 of "cone"'],
      ['2', 'total of the row'],
      ['2', '2 of "disc"'],
      ['-', 'none'],
    ]);
    expect([reading.rowsRead, reading.rowsKept]).toEqual([2, 2]);
  });

  it('measure a find once: copies hold no measurement', () => {
    const { table } = readSource(bytes('Site,Kind,Length (mm),quantity\nHolm,disc,30,3\nPell,cone,20,1\n'), {
      name: 'finds.csv',
      register,
      profile: { columns: [{ header: 'quantity', attribute: 'quantity' }] },
    });
    const length = oneRowEach(table).columns.get('length');
    expect(length?.kind === 'numeric' && [...length.low]).toEqual([30, Number.NaN, Number.NaN, 20]);
  });
});
