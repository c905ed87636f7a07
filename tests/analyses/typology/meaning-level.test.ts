import { expect, it } from 'vitest';
import { meaningOf } from '../../../src/analyses/typology/meaning.ts';
import { createRandom } from '../../../src/numerics/foundation/random.ts';
import { makeTable, register } from '../../fragments/make-table.ts';

/** Two types of twenty, alike in fibre; of the second only the broad word is known. */
const table = makeTable(
  [0, 1].flatMap((type) =>
    Array.from({ length: 20 }, (_, i) => ({
      site: 'Holm',
      fibre: i < 5 ? 'wool' : type === 1 ? 'treeBast' : i % 2 === 0 ? 'limeBast' : 'willowBast',
    })),
  ),
);
const rows = Int32Array.from({ length: 40 }, (_, row) => row);
const types = rows.map((row) => (row < 20 ? 0 : 1));

function fibreOf(level: 'common' | 'recorded') {
  const options = { against: ['fibre'], level, confidence: 0.95 };
  const [fibre] = meaningOf(table, rows, types, ['fine', 'coarse'], options, register, createRandom(1));
  return fibre;
}

it('what types go with is counted at the level recorded of every type, the words as recorded beside it', () => {
  const fibre = fibreOf('common');
  expect(fibre.kinds).toEqual(['tree bast', 'wool']);
  expect(fibre).toMatchObject({ told: 'not told apart', asRecorded: 'told apart' });
  expect(fibre.level.folds[0]).toMatchObject({
    label: 'tree bast',
    because: [{ label: 'coarse', broad: 15, of: 15 }],
  });
});

it('by the words as recorded they seem to go together', () => {
  const fibre = fibreOf('recorded');
  expect(fibre.kinds).toEqual(['tree bast', 'lime bast', 'willow bast', 'wool']);
  expect(fibre).toMatchObject({ told: 'told apart', asRecorded: null });
});
