import { describe, expect, it } from 'vitest';
import { numbers, read, termsOf } from '../sources/support.ts';

/** A column of four equal cells under a header, beside a structure. */
const column = (header: string, cell: string, structure = 'tabby') => {
  const rows = [1, 2, 3, 4].map((n) => `F${n},${structure},"${cell}"\n`);
  return read(`Find no.,Structure,"${header}"\n${rows.join('')}`);
};

// Common practice, no source.
describe('headers of thread counts, in six languages', () => {
  const HEADERS =
    'Weave count|Thread count|Fadenzahl|Gewebedichte|Fadendichte|Gewebeeinstellung|Compte de fils|Réduction|Numero di fili|' +
    'Conteggio fili|Riduzione|Número de hilos|Recuento de hilos|Densidad|Trådtal|Trådtæthed|Antall tråder|Trådtetthet';

  it.each(HEADERS.split('|'))(
    '%s: both counts where the cells hold two, else asked of which system',
    (header) => {
      const two = column(header, '14 x 12').columns[2]!;
      expect(two.suggestion?.attribute).toBe('density1');
      expect(two.suggestion?.reason).toContain('two values');
      const one = column(header, '14').columns[2]!;
      expect(one.suggestion).toMatchObject({ attribute: 'density1' });
      expect(one.suggestion?.reason).toContain('either system or of both');
    },
  );
});

describe('"rows touch" where a spacing should stand is the spacing class', () => {
  it.each<[header: string, cell: string, term: string]>([
    ['Row spacing (mm)', 'rows touch', 'close'],
    ['Spacing', 'rows touch', 'close'],
    ['Reihenabstand', 'Reihen berühren sich', 'close'],
    ['Espacement', 'rangs serrés', 'close'],
    ['Spaziatura', 'file serrate', 'close'],
    ['Separación de filas', 'filas contiguas', 'close'],
    ['Rækkeafstand', 'tæt', 'close'],
    ['Reihenabstand', 'mit Abstand', 'open'],
    ['Gap between rows', 'no gap', 'close'],
  ])('%s: %s', (header, cell, term) => {
    expect(termsOf(column(header, cell, 'twining'), 'spacingClass')).toEqual([term, term, term, term]);
  });

  it('in a column of numbers the words alone go there, and the numbers stay', () => {
    const reading = read(
      'Find no.,Structure,Row spacing (mm)\nA,twining,rows touch\nB,twining,5\nC,twining,rows touch?\nD,twining,12\n',
    );
    expect([...numbers(reading, 'rowSpacing').low]).toEqual([Number.NaN, 5, Number.NaN, 12]);
    expect(termsOf(reading, 'spacingClass')).toEqual(['close', null, 'close', null]);
    expect(reading.ledger.filter(({ rule }) => rule === 'spacing-class')).toHaveLength(2);
  });
});

describe('headers that are exact, and those that are asked', () => {
  it.each<[header: string, cell: string, structure: string, id: string]>([
    ['Slant of rows', 'S', 'twining', 'rowSlant'],
    ['Mesh gauge, bar', '20', 'netting', 'meshGauge'],
    ['Space between rows', '3 mm', 'twining', 'rowGap'],
    ['espace entre les rangs', '3 mm', 'twining', 'rowGap'],
    ['Fibre prep', 'spliced', 'tabby', 'processing'],
  ])('%s: %s of a %s is taken', (header, cell, structure, id) => {
    expect(column(header, cell, structure).columns[2]?.attributes).toEqual([id]);
  });

  it.each(
    'mesh size|Maschenweite|taille des mailles|dimensione maglie|tamaño de malla|maskestørrelse'.split('|'),
  )('%s: bar, opening or stretched mesh is asked', (header) => {
    const { attributes, suggestion } = column(header, '20', 'netting').columns[2]!;
    expect(attributes).toEqual([]);
    expect(suggestion?.reason).toContain('it may be the bar');
  });
});
