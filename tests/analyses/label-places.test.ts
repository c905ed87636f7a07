import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { leftOut, placeLabels } from '../../src/analyses/label-places.ts';

const room = { height: 520, equal: true };

describe('names of points in a figure', () => {
  it('stand above where nothing is in the way', () => {
    const placed = placeLabels(
      [
        { x: 0, y: 0, name: 'one' },
        { x: 1, y: 1, name: 'two' },
      ],
      room,
    );
    expect(placed).toEqual([
      { text: 'one', textposition: 'top center' },
      { text: 'two', textposition: 'top center' },
    ]);
  });
  it('of points at one place stand on different sides', () => {
    const same = Array.from({ length: 3 }, (_, i) => ({ x: 0.5, y: 0.5, name: `name ${i}` }));
    const placed = placeLabels([...same, { x: 0, y: 0, name: 'a' }, { x: 1, y: 1, name: 'b' }], room);
    expect(new Set(placed.slice(0, 3).map(({ textposition }) => textposition)).size).toBe(3);
  });
  it('are left out, and counted, where every place is taken', () => {
    const crowd = Array.from({ length: 40 }, () => ({ x: 0, y: 0, name: 'crowded' }));
    const placed = placeLabels(crowd, room);
    const shown = placed.filter(({ text }) => text !== '');
    expect(shown.length).toBeLessThanOrEqual(8);
    expect(leftOut(placed)).toBe(` ${40 - shown.length} names are left out for want of room.`);
    expect(leftOut(shown)).toBe('');
  });
  it('keep their order, and none is invented (property)', () => {
    const point = fc.record({
      x: fc.double({ min: -3, max: 3, noNaN: true }),
      y: fc.double({ min: -3, max: 3, noNaN: true }),
      name: fc.string({ minLength: 1, maxLength: 20 }),
    });
    fc.assert(
      fc.property(fc.array(point, { maxLength: 25 }), fc.boolean(), (points, equal) => {
        const placed = placeLabels(points, { height: 420, equal });
        expect(placed).toHaveLength(points.length);
        for (const [i, { text }] of placed.entries()) expect(['', points[i].name]).toContain(text);
      }),
      { numRuns: 60 },
    );
  });
});
