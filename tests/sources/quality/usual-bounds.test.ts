import { describe, expect, it } from 'vitest';
import { reportQuality } from '../../../src/sources/quality/quality.ts';
import { read, register } from '../support.ts';

/** What is flagged as unusual in the row's own kind of fabric: attribute and raw text. */
function unusual(csv: string): string[] {
  return reportQuality(read(csv).table, register)
    .outOfBounds.filter(({ ofStructure, beyond }) => ofStructure && beyond === 'usual')
    .map(({ attribute, raw }) => `${attribute}: ${raw}`);
}

// Common practice, no source: what is usual of a measure in one kind of fabric.
describe('what is usual of a measure depends on the kind of fabric', () => {
  it.each([
    ['twined', 'density1: 40', 'Find no.,Structure,Density 1 (per cm)\nA1,twined,40\nA2,tabby,40\n'],
    ['woven', 'density1: 1', 'Find no.,Structure,Density 1 (per cm)\nA1,tabby,1\nA2,twined,1\n'],
    ['coiled', 'coilPitch: 60', 'Find no.,Structure,Coil pitch (mm)\nA1,coiled,60\nA2,coiled,6\n'],
    ['netting', 'meshGauge: 2', 'Find no.,Structure,Mesh gauge (mm)\nA1,netting,2\nA2,netting,35\n'],
  ])('of %s: %s is looked at again, and the same of another kind or size is not', (_, flagged, csv) => {
    expect(unusual(csv)).toEqual([flagged]);
  });

  it('a kind of its own kind goes by the broader one, and a row without a structure by none', () => {
    expect(
      unusual('Find no.,Structure,Density 1 (per cm)\nA1,diagonal twining,40\nA2,,40\nA3,looped,40\n'),
    ).toEqual(['density1: 40']);
  });
});
