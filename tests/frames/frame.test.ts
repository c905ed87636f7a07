import { beforeAll, describe, expect, it } from 'vitest';
import { plainColumns } from '../../src/frames/columns.ts';
import type { DataFrame } from '../../src/frames/danfo.ts';
import { toFrame } from '../../src/frames/frame.ts';
import { SAMPLE } from './sample-table.ts';

describe('plainColumns', () => {
  it('gives a column for each end where readings are ranges, one where all are exact', () => {
    const names = plainColumns(SAMPLE, 'ends').map(({ name }) => name);
    expect(names).toEqual([
      'fragment',
      'item',
      'assemblage',
      'width',
      'rowSpacing low',
      'rowSpacing high',
      'structure',
    ]);
  });

  it('leaves gaps and open ends empty', () => {
    const columns = new Map(plainColumns(SAMPLE, 'ends').map(({ name, values }) => [name, values]));
    expect(columns.get('width')).toEqual([10, 12.5, null, 7]);
    expect(columns.get('rowSpacing low')).toEqual([3, 35, null, 20]);
    expect(columns.get('rowSpacing high')).toEqual([4, 35, null, null]);
    expect(columns.get('structure')).toEqual(['tabby', 'openTwining', null, 'tabby']);
    expect(columns.get('assemblage')).toEqual(['Cave, upper', 'Cave, upper', null, 'Cave, upper']);
  });
});

describe('toFrame', () => {
  let frame: DataFrame;
  beforeAll(async () => {
    frame = await toFrame(SAMPLE);
  });

  it('has a row a fragment and keeps identifiers as text', () => {
    expect(frame.shape).toEqual([4, 6]);
    expect(frame.column('fragment').values).toEqual(['001', '002', '010', '=1+1']);
    expect(frame.column('fragment').dtype).toBe('string');
  });

  it('gives a range by its midpoint, and no number for an open end', () => {
    expect(frame.column('rowSpacing').values).toEqual([3.5, 35, NaN, NaN]);
  });

  it('has columns whose mean passes over gaps: (10 + 12.5 + 7) / 3', () => {
    expect(frame.column('width').mean()).toBeCloseTo(29.5 / 3, 14);
    expect(frame.column('width').count()).toBe(3);
  });

  it('can be filtered by a kind', () => {
    const tabby = frame.query(frame.column('structure').eq('tabby'));
    expect(tabby.column('fragment').values).toEqual(['001', '=1+1']);
  });

  it('keeps its columns where no fragment is left', async () => {
    const empty = await toFrame({ ...SAMPLE, rows: 0, id: [], item: [], assemblage: [], columns: new Map() });
    expect(empty.shape).toEqual([0, 3]);
  });
});
