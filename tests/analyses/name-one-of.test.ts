import { describe, expect, it } from 'vitest';
import { nameOneOf } from '../../src/analyses/phrasing.ts';

describe('what mends a label that does not occur', () => {
  it.each([
    [[], 'choose an attribute that some record has'],
    [['Ness'], 'name one of "Ness"'],
    [['a', 'b', 'c'], 'name one of "a", "b", "c"'],
    [['a', 'b', 'c', 'd'], 'name one of "a", "b", "c" and 1 more'],
  ])('%j', (labels, says) => {
    expect(nameOneOf(labels, 3)).toBe(says);
  });
});
