import { expect, it } from 'vitest';
import { contrastOptions } from '../../../src/analyses/contrast/options.ts';
import { contrastTogether } from '../../../src/analyses/contrast/together.ts';
import { comparisonSettings } from '../../../src/analyses/shared/options/comparison.ts';
import { compareRecords } from '../../../src/fragments/comparison/comparison.ts';
import { dissimilarities } from '../../../src/numerics/dissimilarity/dissimilarity.ts';
import { createRandom } from '../../../src/numerics/foundation/random.ts';
import { standardNormal } from '../../../src/numerics/modes/mixture-parts.ts';
import { permanova } from '../../../src/numerics/tests/permanova.ts';
import { available } from '../../numerics/close.ts';
import { attribute, madeInput } from '../grouping/made-table.ts';

it('of very many items some of each group are compared in all attributes: the share and the verdict of all of them', () => {
  const random = createRandom(17);
  const n = 4500;
  const group = Array.from({ length: n }, (_, at) => (at % 3 === 0 ? 1 : 0));
  const input = madeInput([
    { attribute: attribute('site', 'context', 'nominal'), values: group.map((g) => ['Holm', 'Ness'][g]!) },
    {
      attribute: attribute('a', 'spacing', 'interval'),
      values: group.map((g) => 0.7 * g + standardNormal(random)),
    },
    {
      attribute: attribute('fibre', 'fibre', 'nominal'),
      values: group.map((g) => (random.next() < [0.5, 0.65][g]! ? 'flax' : 'bast')),
    },
  ]);
  const options = contrastOptions.parse({
    of: ['a', 'fibre'],
    by: 'site',
    relabellings: 99,
  });
  const drawn = available(contrastTogether(input, options, createRandom(1)));
  expect([drawn.items, drawn.drawnFrom]).toEqual([3000, 4500]);
  expect(drawn.groups.map(({ items }) => items).sort()).toEqual([1000, 2000]);

  const { spec } = compareRecords(input.records, input.register, comparisonSettings(options));
  const whole = available(
    permanova(dissimilarities(spec), group, { random: createRandom(2), relabellings: 99 }),
  );
  const place = available(drawn.place);
  expect(whole.rSquared).toBeGreaterThan(0.02);
  expect(Math.abs(place.rSquared - whole.rSquared)).toBeLessThan(0.012);
  expect([whole.p, place.p, drawn.told]).toEqual([0.01, 1 / 200, 'told apart']);
}, 120_000);
