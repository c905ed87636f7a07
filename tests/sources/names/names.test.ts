import { describe, expect, it } from 'vitest';
import { defaultRegister } from '../../../src/attributes/register.ts';
import { type NameDecision, nameDecision } from '../../../src/sources/names/name-decision.ts';
import { nearNames } from '../../../src/sources/names/near-names.ts';
import { readSource } from '../../../src/sources/read-source.ts';

const near = (names: readonly string[]) =>
  nearNames('site', new Map(names.map((name, place) => [name, 10 - place]))).map(({ names: pair, why }) => [
    ...pair,
    why,
  ]);

describe('names that may be one', () => {
  it.each([
    ['Drommavel Landing', 'Drommavel ldg', 'one may abbreviate the other'],
    ['Drommavel Landing', 'Landing, Drommavel', 'they are the same words in another order'],
    ['Ysketh Pans', 'YSKETH PANS', 'they differ in capitals alone'],
    ['Quorrimel Cave', 'Quorimel Cave', 'they differ by a letter or two'],
    ['Early', 'früh', 'they may be the same word in two languages'],
    ['Spät', 'Tardif', 'they may be the same word in two languages'],
    ['Phase 2', 'Stufe 2', 'they may be the same word in two languages'],
    ['Earl', 'Früh', 'one may be short for the same word in another language'],
    ['Tazzimbe', 'Tazzimbé', 'they differ in capitals, accents or signs'],
    ['Tazzimbe Nord', 'North Tazzimbe', 'they may be the same word in two languages'],
  ])('%s and %s: %s', (first, second, why) => {
    expect(near([first, second])).toEqual([[first, second, why]]);
  });

  it.each([
    ['Ysketh Pans', 'YSKETH PANS', 'certain'],
    ['Ysketh-Pans', 'Ysketh Pans', 'likely'],
    ['Layer IIa', 'Layer IIA', 'likely'],
    ['Drommavel Landing', 'Drommavel ldg', 'likely'],
    ['Ostrel Hollow', 'Ostrel Holl.', 'likely'],
    ['Early', 'früh', 'likely'],
    ['Quorrimel Cave', 'Quorimel Cave', 'doubtful'],
    ['Varn Hill', 'Vart Hill', 'doubtful'],
  ])('%s and %s: %s', (first, second, sure) => {
    const counts = new Map([first, second].map((name, place) => [name, 10 - place] as const));
    expect(nearNames('site', counts).map((pair) => pair.sure)).toEqual([sure]);
  });

  it('are called by the whole name where one abbreviates the other, else by the one of more records', () => {
    const counts = new Map([
      ['Ostrel Holl.', 9],
      ['Ostrel Hollow', 2],
      ['early', 9],
      ['Early', 2],
    ]);
    expect(nearNames('site', counts).map(({ names }) => names)).toEqual([
      ['early', 'Early'],
      ['Ostrel Hollow', 'Ostrel Holl.'],
    ]);
  });

  it.each([
    ['Trench 1', 'Trench 2'],
    ['Phase I', 'Phase II'],
    ['Layer A', 'Layer B'],
    ['Early', 'Late'],
    ['Früh', 'Spät'],
    ['Earl', 'Spät'],
    ['Holm', 'Hull'],
    ['Upper Ness', 'Lower Ness'],
    ['North Tazzimbe', 'South Tazzimbe'],
    ['Ulvombre', 'Ysketh'],
  ])('%s and %s are two', (first, second) => {
    expect(near([first, second])).toEqual([]);
  });

  it('are asked about once', () => {
    const counts = new Map([
      ['Drommavel Landing', 8],
      ['Drommavel ldg', 2],
    ]);
    const same = nameDecision.parse({
      attribute: 'site',
      name: 'Drommavel Landing',
      also: ['drommavel LDG'],
    });
    const other = nameDecision.parse({
      attribute: 'site',
      name: 'Drommavel Landing',
      not: ['Drommavel ldg'],
    });
    expect(nearNames('site', counts, [same])).toEqual([]);
    expect(nearNames('site', counts, [other])).toEqual([]);
    expect(nearNames('phase', counts, [same])).toHaveLength(1);
  });
});

describe('a name of the study', () => {
  const text =
    'Cat. no.,Item no.,Site,Phase\n1,7,Drommavel Landing,Early\n2,7,drommavel ldg,früh\n3,7,Ness,Late\n';
  const names = [
    { attribute: 'site', name: 'Drommavel Landing', also: ['Drommavel ldg'], not: [] },
    { attribute: 'phase', name: 'Early', also: ['Früh'], not: [] },
  ];
  const read = (with_: readonly NameDecision[]) =>
    readSource(new TextEncoder().encode(text), {
      name: 'finds.csv',
      register: defaultRegister(),
      names: with_,
    });

  it('stands in place of its other spellings, in assemblages and items too, with a line in the ledger for each', () => {
    const { table, ledger } = read(names);
    expect(table.assemblage).toEqual(['Drommavel Landing, Early', 'Drommavel Landing, Early', 'Ness, Late']);
    expect(table.item[0]).toBe(table.item[1]);
    expect(table.item[2]).not.toBe(table.item[0]);
    expect(
      ledger.filter(({ rule }) => rule === 'name').map(({ row, raw, readAs }) => [row, raw, readAs]),
    ).toEqual([
      [3, 'drommavel ldg', 'Drommavel Landing'],
      [3, 'früh', 'Early'],
    ]);
  });

  it('is not waited for to count the objects of a place that one table spells in two ways', () => {
    const { table } = read([]);
    expect(table.item[0]).toBe(table.item[1]);
    const two: readonly NameDecision[] = [
      { attribute: 'site', name: 'Drommavel Landing', also: [], not: ['drommavel ldg'] },
    ];
    expect(new Set(read(two).table.item).size).toBe(3);
  });

  it('changes nothing where nothing was decided', () => {
    const { table, ledger } = read([]);
    expect(new Set(table.assemblage).size).toBe(3);
    expect(ledger.filter(({ rule }) => rule === 'name')).toEqual([]);
  });
});
