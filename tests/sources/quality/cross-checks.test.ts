import { describe, expect, it } from 'vitest';
import { read } from '../support.ts';

const flags = (csv: string) =>
  read(csv)
    .ledger.filter(({ level }) => level === 'flagged')
    .map(({ rule, raw, row }) => ({ rule, raw, row }));
const rules = (csv: string) => flags(csv).map(({ rule }) => rule);

// Geometry and common practice, no source. Every case stands beside one in which the two cells agree.
describe('cells of one row that do not go together are flagged, both of them', () => {
  it.each<[rule: string, header: string, wrong: string, right: string, raw: string]>([
    // 4 rows per cm are 2.5 mm apart.
    [
      'density-against-spacing',
      'Structure,Weft density (per cm),Row spacing (mm)',
      'twining,4.0,10.0',
      'twining,4.0,2.5',
      '4.0 | 10.0',
    ],
    ['ply-against-twist', 'Structure,Warp ply,Warp twist', 'tabby,S2z,Z', 'tabby,S2z,S', 'S2z | Z'],
    [
      'pile-absent-and-measured',
      'Structure,Pile,Pile length (mm)',
      'twining,absent,20',
      'twining,present,20',
      'absent | 20',
    ],
    [
      'larger-than-piece',
      'Structure,Row spacing (mm),Length (mm),Width (mm)',
      'twining,80,60,40',
      'twining,30,60,40',
      '80 | 60 | 40',
    ],
    [
      'counted-beyond-piece',
      'Structure,Rows per 5 cm,Length (mm),Width (mm)',
      'twining,9,30,20',
      'twining,9,60,20',
      '9 | 30 | 20',
    ],
    [
      'fibre-on-impression',
      'Structure,Fibre,Preservation',
      'tabby,flax,impression',
      'tabby,flax?,impression',
      'flax | impression',
    ],
    [
      'fibre-by-method',
      'Structure,Fibre,Identification method',
      'tabby,cotton,by eye',
      'tabby,cotton,SEM',
      'cotton | by eye',
    ],
    ['not-of-this-structure', 'Structure,Coil pitch (mm)', 'tabby,5', 'coiled,5', '5 | tabby'],
    ['not-of-this-structure', 'Structure,Warp density (per cm)', 'coiled,12', 'tabby,12', '12 | coiled'],
    [
      'spacing-class-against-gap',
      'Structure,Spacing class,Row spacing (mm),Row width (mm)',
      'twining,rows touch,9.0,3.0',
      'twining,rows touch,3.0,3.0',
      'rows touch | 9.0 | 3.0',
    ],
    [
      'rows-overlap',
      'Structure,Row spacing (mm),Row width (mm)',
      'twining,2.0,4.0',
      'twining,4.0,2.0',
      '2.0 | 4.0',
    ],
  ])('%s: %s', (rule, header, wrong, right, raw) => {
    const found = flags(`Find no.,${header}\nA,${wrong}\nB,${right}\n`).filter((one) => one.rule === rule);
    expect(found).toEqual([{ rule, raw, row: 2 }]);
  });

  it('"per 5 cm" in the cell itself is the length counted over', () => {
    const csv =
      'Find no.,Structure,Weft density,Length (mm),Width (mm)\nA,twining,9 per 5 cm,30,20\nB,twining,2 per cm,30,20\n';
    expect(rules(csv)).toContain('counted-beyond-piece');
    expect(flags(csv).filter(({ rule }) => rule === 'counted-beyond-piece')).toHaveLength(1);
  });

  it('rounding is no contradiction: 3 per cm and 3.3 mm', () => {
    expect(
      rules('Find no.,Structure,Weft density (per cm),Row spacing (mm)\nA,twining,3,3.3\n'),
    ).not.toContain('density-against-spacing');
  });

  it('a ply whose singles have the twist that stands beside it says so', () => {
    const { ledger } = read('Find no.,Structure,Warp ply,Warp twist\nA,tabby,S2z,Z\n');
    expect(ledger.find(({ rule }) => rule === 'ply-against-twist')?.why).toContain('that of the singles');
  });
});

describe('which system is the warp', () => {
  it.each<[header: string, told: string | null]>([
    ['Warp density (per cm),Weft density (per cm)', 'warpWeft'],
    ['Kettdichte (/cm),Schussdichte (/cm)', 'warpWeft'],
    ['Passive elements per cm,Active rows per cm', 'passiveActive'],
    ['Density system 1 (per cm),Density system 2 (per cm)', 'untold'],
  ])('%s: %s', (header, told) => {
    const { table, ledger } = read(`Find no.,Structure,${header}\nA,tabby,14,10\n`);
    const column = table.columns.get('orientation');
    expect(column?.kind === 'term' ? column.levels : null).toEqual(told === null ? null : [told]);
    expect(ledger.some(({ rule }) => rule === 'systems-untold')).toBe(told === 'untold');
  });

  it('what the profile says goes before the headers', () => {
    const { table } = read(
      'Find no.,Structure,Density system 1 (per cm),Density system 2 (per cm)\nA,tabby,14,10\n',
      {
        constants: { orientation: 'warp and weft known' },
      },
    );
    const column = table.columns.get('orientation');
    expect(column?.kind === 'term' ? column.levels : null).toEqual(['warpWeft']);
  });
});
