import { describe, expect, it } from 'vitest';
import { howToConfirm, witnessCandidates } from '../../../src/sources/names/witness-candidates.ts';
import { read, register } from '../support.ts';

/** Invented finds; what is expected follows from how each table is made. */
const STRUCTURES = ['tabby', '2/2 twill', 'weft-faced tabby', '2/1 twill'];
const FIBRES = ['wool', 'flax', 'hemp'];

/** Twelve objects in three rows each, the rows of an object told alike and scattered through the table. */
const OBJECTS = Array.from({ length: 36 }, (_, row) => row % 12);
const describedBy = (object: number) => `${STRUCTURES[object % 4]},${FIBRES[object % 3]}`;
const SITE = (object: number) => (object < 6 ? 'Ottmere' : 'Sallow Ness');

function table(headers: string, cells: (object: number, row: number) => string) {
  const lines = OBJECTS.map(
    (object, row) => `F${row},${cells(object, row)},${SITE(object)},${describedBy(object)}`,
  );
  return read(`Find no.,${headers},Site,Structure,Fibre\n${lines.join('\n')}\n`);
}

const candidates = (reading: ReturnType<typeof read>) => witnessCandidates(reading, register);

describe('columns that may name the object', () => {
  it('are found by their rows where no header says so, and are not taken', () => {
    const reading = table('Bundle,Drawer', (object, row) => `B${object},D${row % 5}`);
    const found = candidates(reading);
    expect(found.map(({ header, names, rows }) => [header, names, rows])).toEqual([['Bundle', 12, 36]]);
    expect(found[0]).toMatchObject({ attribute: null, needsProfile: true });
    expect(found[0]?.says).toMatch(
      /^for it: 12 names in 36 rows, 3\.0 rows each, rows of one name agree in 100 of 100 pairs, rows of different names in 0, none lies in more than one site; nothing against it\.$/,
    );
    expect(howToConfirm(found[0]!)).toBe(
      'To confirm "Bundle": "witness": { "is": "column" } in the study, and { "header": "Bundle", "attribute": "item" } under "columns" of the profile.',
    );
    expect(new Set(reading.table.item).size).toBe(36);
  });

  it('rank by what the rows say: one whose rows contradict each other comes after one whose rows agree', () => {
    const found = candidates(table('Item,Bundle', (object, row) => `I${row % 7},B${object}`));
    expect(found.map(({ header }) => header)).toEqual(['Bundle', 'Item']);
    expect(found[0]).toMatchObject({ needsProfile: true, insteadOf: 'Item' });
    expect(found[1]?.speaksAgainst.join()).toMatch(/rows of one name agree in \d+ of 100 pairs/);
    expect(found[1]?.needsProfile).toBe(false);
  });

  it('are found where names, kinds and rows go in turn, so that one distance in the list would meet like with like', () => {
    const lines = Array.from(
      { length: 24 },
      (_, i) => `${i},b${i % 8},${STRUCTURES[i % 4]},${FIBRES[i % 2]}`,
    );
    const found = candidates(read(`Find no.,Bundle,Structure,Fibre\n${lines.join('\n')}\n`));
    expect(found.map(({ header }) => header)).toEqual(['Bundle']);
    const short = candidates(
      read('No.,Bundle,Structure\n1,a,tabby\n2,b,2/2 twill\n3,a,tabby\n4,b,2/2 twill\n'),
    );
    expect(short.map(({ header }) => header)).toEqual(['Bundle']);
  });

  it('say that numbers recur from place to place, and how many rows have none', () => {
    const found = candidates(table('Bundle', (object, row) => (row < 6 ? '' : `B${object % 6}`)));
    expect(found[0]?.speaksAgainst).toEqual([
      expect.stringMatching(/^6 of the 6 names that repeat lie in more than one site/),
      '6 of 36 rows have none',
    ]);
  });

  it('are none where nothing repeats, where names go through all rows alike, and among measurements', () => {
    expect(candidates(table('Bundle', (_, row) => `B${row}`))).toEqual([]);
    expect(candidates(table('Drawer', (_, row) => `D${row % 5}`))).toEqual([]);
    expect(candidates(table('Bundle', (object) => `${object}.5`))).toEqual([]);
  });

  it('count once the profile says so', () => {
    const text = 'Find no.,Bundle,Fibre\n1,a,wool\n2,a,wool\n3,b,flax\n4,b,flax\n';
    expect(candidates(read(text)).map(({ header }) => header)).toEqual(['Bundle']);
    const mapped = read(text, { columns: [{ header: 'Bundle', attribute: 'item' }] });
    expect(mapped.table.item).toEqual(['a', 'a', 'b', 'b']);
    expect(candidates(mapped)[0]).toMatchObject({ header: 'Bundle', attribute: 'item', needsProfile: false });
  });
});
