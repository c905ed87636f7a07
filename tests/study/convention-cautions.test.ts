import { expect, it } from 'vitest';
import { conventionCautions } from '../../src/study/cautions/conventions.ts';
import { register } from '../analyses/ask.ts';
import { makeTable } from '../fragments/make-table.ts';

const ORIENTATION = {
  id: 'orientation',
  label: 'orientation',
  block: 'context',
  scale: 'nominal',
  source: 'test',
} as const;
(register.attributes as Map<string, typeof ORIENTATION>).set('orientation', ORIENTATION);

const said = (orientations: readonly string[]) =>
  conventionCautions(makeTable(orientations.map((orientation) => ({ orientation })))).filter((one) =>
    one.startsWith('Systems'),
  );

it('what tells warp from weft is minded only where some finds tell and others do not', () => {
  expect(said(['warp', 'warp'])).toEqual([]);
  expect(said(['untold', 'untold'])).toEqual([]);
  expect(said(['untold', 'warp', 'warp'])).toEqual([
    expect.stringMatching(
      /^Systems: of 1 find nothing tells warp from weft.*; 2 others have theirs as recorded/,
    ),
  ]);
});
