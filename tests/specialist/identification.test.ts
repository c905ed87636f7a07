import { describe, expect, it } from 'vitest';
import { METHOD_REACH, reachOf } from '../../src/attributes/method-reach.ts';
import { defaultRegister } from '../../src/attributes/register.ts';
import { CERTAINTIES } from '../../src/cells/reading.ts';
import { selectRows } from '../../src/fragments/select.ts';
import { reportQuality } from '../../src/sources/quality/quality.ts';
import { checkStudy } from '../../src/study/load.ts';
import { prepareStudy } from '../../src/study/prepare.ts';
import { readinessOf } from '../../src/study/readiness/readiness.ts';
import { read, termsOf } from '../sources/support.ts';

const register = defaultRegister();
const fibres = register.vocabularies.get('fibre')!;
const methods = register.vocabularies.get('fibreMethod')!;
const HEAD = 'Find no.,Structure,Fibre,Identification method\n';

/** The certainty that a fibre has after reading, one a row. */
function certainties(rows: readonly string[], id = 'fibre'): (string | null)[] {
  const column = read(HEAD + rows.map((row, at) => `F${at},tabby,${row}\n`).join('')).table.columns.get(id);
  if (column?.kind !== 'term') return [];
  return [...column.codes].map((code, row) => (code < 0 ? null : CERTAINTIES[column.certainty[row]!]!));
}

// Flax, nettle and hemp: Haugan & Holst 2014, Archaeometry. The rest: common practice, no source.
describe('a method of identification lowers what it cannot tell', () => {
  it.each<[fibre: string, method: string, certainty: string]>([
    ['flax', 'by eye', 'possible'],
    ['plant fibre', 'by eye', 'probable'],
    ['feather', 'by eye', 'certain'],
    ['wool', 'hand lens', 'possible'],
    ['hair', 'hand lens', 'probable'],
    ['animal fibre', 'hand lens', 'certain'],
    ['flax', 'transmitted light', 'probable'],
    ['lime bast', 'transmitted light', 'certain'],
    ['cotton', 'transmitted light', 'certain'],
    ['lime bast', 'SEM', 'probable'],
    ['wool', 'peptide mass fingerprint', 'certain'],
    ['flax', 'peptide mass fingerprint', 'indeterminate'],
    ['flax', 'aDNA', 'certain'],
    ['silk', 'FTIR', 'probable'],
    ['flax', 'FTIR', 'possible'],
    // What the recorder doubted more is not made surer.
    ['flax??', 'transmitted light', 'possible'],
    ['flax?', 'by eye', 'possible'],
    // Of several methods the best counts, of a microscope without a name the least.
    ['flax', '"by eye, aDNA"', 'certain'],
    ['flax', 'microscope', 'possible'],
    // A mixture is as sure as its least sure part: protein tells the wool and not the flax.
    ['wool and flax', 'proteomics', 'indeterminate'],
    ['wool and silk', 'proteomics', 'certain'],
  ])('%s by %s: %s', (fibre, method, certainty) => {
    expect(certainties([`${fibre},${method}`])).toEqual([certainty]);
  });

  it('without a method, or with one of no rule, nothing is lowered', () => {
    expect(certainties(['flax,', 'flax?,', 'flax,dice'])).toEqual(['certain', 'probable', 'certain']);
  });

  it('the second system is lowered as well', () => {
    expect(certainties(['"warp wool, weft flax",by eye'], 'fibre2')).toEqual(['possible']);
  });

  it('every method has a rule for plants, animals and metal, and says why', () => {
    const roots = ['plantFibre', 'animalFibre', 'metalThread'];
    for (const { id } of methods.terms) {
      for (const root of roots)
        expect(reachOf(root, id, fibres, methods)?.reach, `${id} ${root}`).toBeDefined();
    }
    for (const { why, source } of METHOD_REACH) expect([why, source]).not.toContain('');
  });
});

describe('methods are read as catalogues in six languages write them', () => {
  it.each<[term: string, texts: string]>([
    ['byEye', 'eye|naked eye|mit bloßem Auge|à l’œil nu|a occhio nudo|a simple vista|med det blotte øje'],
    ['lowPower', 'hand lens|Stereomikroskop|loupe binoculaire|stereomicroscopio|lupa binocular|stereolup'],
    [
      'transmittedLight',
      'PLM|light microscope|Durchlichtmikroskopie|microscopie optique|luce trasmessa|luz transmitida|lysmikroskopi',
    ],
    ['sem', 'SEM|REM|MEB|scanning electron microscope|Rasterelektronenmikroskop'],
    ['protein', 'ZooMS|proteomics|Proteinanalyse|protéomique|proteomica|proteómica'],
    ['dna', 'aDNA|DNA|DNS|ADN ancien|DNA antico|ADN antiguo'],
  ])('%s', (term, texts) => {
    const rows = texts.split('|').map((text, at) => `F${at},tabby,flax,${text}\n`);
    expect(termsOf(read(HEAD + rows.join('')), 'fibreMethod')).toEqual(rows.map(() => term));
  });
});

describe('a lowered fibre is seen', () => {
  const csv = `${HEAD}A,tabby,flax,by eye\nB,tabby,flax?,by eye\nC,tabby,wool,ZooMS\nD,tabby,hemp,ZooMS\nE,tabby,flax,\n`;

  it('in the ledger, with both cells and the reason', () => {
    const entries = read(csv).ledger.filter(({ rule }) => rule === 'fibre-by-method');
    expect(entries.map(({ row, raw, level }) => ({ row, raw, level }))).toEqual([
      { row: 2, raw: 'flax | by eye', level: 'flagged' },
      { row: 3, raw: 'flax? | by eye', level: 'flagged' },
      { row: 5, raw: 'hemp | ZooMS', level: 'flagged' },
    ]);
    expect(entries[0]?.why).toContain('possible at best');
    expect(entries[0]?.why).toContain('common practice');
    expect(entries[2]?.why).toContain('cannot tell');
  });

  it('in the report on quality', () => {
    const { table, columns } = read(csv);
    const rows = reportQuality(table, register, columns).crossChecks;
    expect(rows.filter(({ rule }) => rule === 'fibre-by-method').map(({ row }) => row)).toEqual([0, 1, 3]);
  });

  const prepared = prepareStudy(
    checkStudy({ title: 't', sources: [{ file: 'a.csv' }] }, 'study.json'),
    new Map([['a.csv', new TextEncoder().encode(csv)]]),
  );

  it('in readiness: how many methods are known, how many fibres they lower', () => {
    const line = readinessOf(prepared).find(({ topic }) => topic === 'identification');
    expect(line).toMatchObject({ state: 'mind' });
    expect(line?.says).toBe(
      'How the fibre was identified is said of 4 of 5 fragments; 3 are given as surer than the method can tell, and count as doubtful: by eye 2 and protein or peptides 1.',
    );
  });

  it('in conditions: "certainty" leaves out what a method cannot tell', () => {
    const kept = (certainty: 'certain' | 'probable' | 'possible') =>
      selectRows(
        prepared.all,
        [{ attribute: 'fibre', in: ['plantFibre', 'animalFibre'], certainty }],
        register,
      ).rows.length;
    expect([kept('certain'), kept('probable'), kept('possible')]).toEqual([2, 2, 4]);
  });
});
