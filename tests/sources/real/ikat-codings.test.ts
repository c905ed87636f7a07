import { describe, expect, it } from 'vitest';
import { extendRegister } from '../../../src/attributes/register.ts';
import { proposeAttributes } from '../../../src/sources/columns/propose-attributes.ts';
import type { SourceReading } from '../../../src/sources/source-reading.ts';
import { lostCells, readReal, realTablesMissing, register, termsOf } from '../support.ts';

/**
 * 36 traditions of warp ikat by 110 characters (Buckley 2012, PLOS ONE 7(12) e52064, CC-BY), in two codings
 * of the same facts: 0/1/? and TRUE/FALSE/NA. Documented: 872 ones and one "?".
 */
const FILES = ['ikat-textiles/ikat_Data_S1.csv', 'ikat-textiles/textiles_ikat_seasia_decoded.csv'] as const;

function readCoding(path: string): SourceReading {
  const characters = readReal(path).columns.slice(1);
  const own = extendRegister(register, {
    attributes: characters.map(({ index, header }) => ({
      id: `character${index}`,
      label: header,
      block: 'structure',
      scale: 'presence',
      source: 'Buckley 2012',
    })),
  });
  const columns = [
    { header: 'tradition', attribute: 'fragment' },
    ...characters.map(({ index, header }) => ({ header, attribute: `character${index}` })),
  ];
  return readReal(path, { columns }, own);
}

describe.skipIf(realTablesMissing)('two codings of one table', () => {
  const readings = realTablesMissing ? [] : FILES.map(readCoding);
  const ids = Array.from({ length: 110 }, (_, i) => `character${i + 1}`);

  it('keep all 36 traditions and 110 characters, and no cell is lost', () => {
    for (const reading of readings) {
      expect([reading.rowsKept, reading.rowsSetAside, reading.columns.length, reading.faults]).toEqual([
        36,
        [],
        111,
        [],
      ]);
      expect(lostCells(reading)).toEqual([]);
    }
  });

  it('say the same of every character of every tradition: 872 present, one not observed', () => {
    const [digits, words] = readings.map((reading) =>
      ids.map((id) => {
        const column = reading.table.columns.get(id);
        return termsOf(reading, id).map(
          (term, row) => term ?? (column?.state[row] === 4 ? 'absent' : 'not observed'),
        );
      }),
    );
    expect(words).toEqual(digits);
    const all = digits.flat();
    expect(all.filter((state) => state === 'present')).toHaveLength(872);
    expect(all.filter((state) => state === 'not observed')).toHaveLength(1);
    expect(all).toHaveLength(36 * 110);
  });

  it('are proposed as presences, so that a reader need not define 110 attributes by hand', () => {
    const reading = readReal(FILES[0]);
    const proposals = proposeAttributes(reading, register);
    expect(proposals.filter(({ attribute }) => attribute.scale === 'presence').length).toBeGreaterThan(100);
  });
});
