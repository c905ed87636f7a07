import { describe, expect, it } from 'vitest';
import { read } from '../sources/support.ts';
import { HEADERS_1 } from './rounds/headers-1.ts';

interface Head {
  readonly header: string;
  readonly means: string;
  readonly got: string;
}

/** What each header is taken for above four equal cells, beside a structure. */
const taken = (round: string): readonly Head[] =>
  round
    .trim()
    .split('\n')
    .flatMap((line) => {
      const [means = '', structure = '', cell = '', headers = ''] = line
        .split(' | ')
        .map((part) => part.trim());
      return headers.split('¦').map((text): Head => {
        const header = text.trim();
        const rows = [1, 2, 3, 4].map((n) => `F${n},${structure},"${cell}"\n`).join('');
        const attributes = read(`Find no.,Structure,"${header}"\n${rows}`).columns[2]?.attributes ?? [];
        return { header, means, got: attributes.length === 0 ? 'ask' : attributes.join(' + ') };
      });
    });

describe('a round of headers, decided by hand before any was read', () => {
  const all = taken(HEADERS_1);

  it('holds more than a hundred, of which none is taken for what it does not say', () => {
    expect(all.length).toBeGreaterThan(100);
    expect(all.filter(({ means, got }) => got !== means && got !== 'ask')).toEqual([]);
  });

  it('nine in ten are taken or asked about as they should be', () => {
    const right = all.filter(({ means, got }) => got === means).length;
    expect(right / all.length).toBeGreaterThanOrEqual(0.9);
  });
});
