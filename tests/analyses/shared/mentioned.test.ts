import { describe, expect, it } from 'vitest';
import { isMentioned, MENTIONED_FROM } from '../../../src/analyses/shared/mentioned.ts';

describe('from which share something is mentioned', () => {
  it('is judged as the share is printed', () => {
    for (const about of ['ties', 'gaps', 'setAside'] as const) {
      const from = MENTIONED_FROM[about];
      expect(isMentioned(from, about)).toBe(true);
      expect(isMentioned(from - 0.004, about)).toBe(true);
      expect(isMentioned(from - 0.006, about)).toBe(false);
    }
  });

  it('names gaps and ties from a quarter on, and what was set aside from a tenth', () => {
    expect(isMentioned(0.2, 'gaps')).toBe(false);
    expect(isMentioned(0.2, 'ties')).toBe(false);
    expect(isMentioned(0.2, 'setAside')).toBe(true);
  });
});
