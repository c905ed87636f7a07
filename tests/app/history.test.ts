import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { commit, redo, startHistory, undo } from '../../src/app/state/history.ts';

describe('the history of a study', () => {
  it('undo takes back exactly the last step and redo brings it back', () => {
    const history = commit(commit(startHistory('a'), 'b', 'to b'), 'c', 'to c');
    expect(undo(history).present.value).toBe('b');
    expect(undo(undo(history)).present.value).toBe('a');
    expect(redo(undo(history)).present).toEqual({ value: 'c', what: 'to c' });
  });

  it('a new step after an undo drops what was undone', () => {
    const history = commit(undo(commit(startHistory(1), 2, 'two')), 3, 'three');
    expect(history.future).toEqual([]);
    expect(undo(history).present.value).toBe(1);
  });

  it('an update that changes nothing is no step', () => {
    const value = { same: true };
    expect(commit(startHistory(value), value, 'nothing').past).toEqual([]);
  });

  it('as many undos as steps lead back to the start, as many redos to the end', () => {
    fc.assert(
      fc.property(fc.array(fc.integer(), { minLength: 1, maxLength: 40 }), (steps) => {
        const start = startHistory<object>({});
        const full = steps.reduce((now, step) => commit(now, { step }, String(step)), start);
        const back = steps.reduce((now) => undo(now), full);
        expect(back.present.value).toBe(start.present.value);
        expect(steps.reduce((now) => redo(now), back).present.value).toBe(full.present.value);
      }),
    );
  });
});
