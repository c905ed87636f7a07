import { it } from 'vitest';
import { createRandom } from '../../../src/numerics/foundation/random.ts';
import { fisherExact } from '../../../src/numerics/tests/fisher-exact.ts';
import { available, expectClose } from '../close.ts';

const random = () => createRandom(11);

// Fisher 1935, The Design of Experiments: the lady tasting tea; table from memory, p by arithmetic.
it('Fisher’s tea: two-sided p 34/70', () => {
  expectClose(
    available(
      fisherExact(
        [
          [3, 1],
          [1, 3],
        ],
        random(),
      ),
    ).p,
    34 / 70,
  );
});
