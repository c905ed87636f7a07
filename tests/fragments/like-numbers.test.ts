import { expect, it } from 'vitest';
import { likeNumbers } from '../../src/fragments/like-numbers.ts';

it('parts a hundred numbers into ten classes of ten, by size', () => {
  const { kinds, of } = likeNumbers(Array.from({ length: 100 }, (_, at) => 100 - at));
  expect(kinds).toHaveLength(10);
  expect(kinds[0]).toBe('1 to 10');
  expect(of[0]).toBe(9);
  expect(of[99]).toBe(0);
  for (const kind of kinds.keys()) expect(of.filter((own) => own === kind)).toHaveLength(10);
});

it('keeps equal numbers together and leaves out what is no number', () => {
  const values = [5, 5, 5, 5, 5, 5, 5, 5, 5, 9, Number.NaN, Number.POSITIVE_INFINITY];
  const { kinds, of } = likeNumbers(values);
  expect(new Set(of.slice(0, 9)).size).toBe(1);
  expect(of[9]).not.toBe(of[0]);
  expect([of[10], of[11]]).toEqual([-1, -1]);
  expect(kinds).toEqual(['5', '9']);
});

it('has one class where all are equal, and none where there are none', () => {
  expect(likeNumbers([3, 3, 3]).kinds).toEqual(['3']);
  expect(likeNumbers([Number.NaN]).kinds).toEqual([]);
});
