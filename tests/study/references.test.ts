import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { findReferences } from '../../src/study/references.ts';

const attribute = () => z.string().meta({ refersTo: 'attribute' });

describe('names that options refer to', () => {
  it('are found in lists, records, unions and behind defaults', () => {
    const schema = z.strictObject({
      of: z.array(attribute()).default([]),
      by: attribute().exactOptional(),
      find: z.record(attribute(), z.string()),
      either: z.union([z.strictObject({ n: z.number() }), z.strictObject({ a: attribute() })]),
      pair: z.tuple([attribute(), z.number()]),
      free: z.string(),
    });
    const found = findReferences(schema, {
      of: ['x', 'y'],
      find: { z: 'open' },
      either: { a: 'w' },
      pair: ['v', 1],
      free: 'no name',
    });
    expect(found.map(({ name, path }) => [name, path.join('.')])).toEqual([
      ['x', 'of.0'],
      ['y', 'of.1'],
      ['z', 'find.z'],
      ['w', 'either.a'],
      ['v', 'pair.0'],
    ]);
  });
});
