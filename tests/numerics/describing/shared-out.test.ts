import { describe, expect, it } from 'vitest';
import { sharedOutQuantile } from '../../../src/numerics/describing/shared-out.ts';
import { reference } from '../../references/reference.ts';
import { available, expectClose } from '../close.ts';

interface Values {
  readonly spread: readonly {
    readonly from: readonly number[];
    readonly to: readonly number[];
    readonly share: number;
    readonly at: number;
  }[];
}

describe('where a share of spans shared out evenly is reached', () => {
  it.each(reference<Values>('time-counts').spread)(
    'is as scipy finds it, $share',
    ({ from, to, share, at }) => {
      expectClose(available(sharedOutQuantile(from, to, share)), at, 1e-9);
    },
  );

  it('is the quartile of one span, the year of single years, and nothing of none', () => {
    expect(sharedOutQuantile([0], [100], 0.25)).toBeCloseTo(25, 9);
    expect(sharedOutQuantile([10, 20, 30], [10, 20, 30], 0.5)).toBeCloseTo(20, 9);
    expect(sharedOutQuantile([], [], 0.5)).toEqual({ why: 'there is no span' });
  });
});
