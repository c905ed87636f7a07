import { describe, it } from 'vitest';
import { signTest } from '../../../src/numerics/tests/sign-test.ts';
import { expectClose } from '../close.ts';

describe('the sign test, against R 4.2.2 binom.test(k, n)$p.value', () => {
  it.each([
    [9, 21, 0.6636238098],
    [37, 93, 0.0613858987045],
    [0, 6, 0.03125],
    [5, 10, 1],
  ])('%i of %i', (k, n, p) => expectClose(signTest(k, n), p, 1e-8));
});
