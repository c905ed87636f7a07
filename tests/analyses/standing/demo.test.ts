import { describe, expect, it } from 'vitest';
import { printNumber } from '../../../src/analyses/phrasing.ts';
import { faultsOfAnswer } from '../answer-rules.ts';
import { cellOf, demoResults, readAloud } from '../demo-answer.ts';

describe('the demo’s wreck among the sites', () => {
  const { standing: result } = demoResults(['standing']);

  it('is answered by the rules, as reviewed', async () => {
    expect(faultsOfAnswer(result.words)).toEqual([]);
    await expect(readAloud(result)).toMatchFileSnapshot('snapshots/demo.txt');
  });

  it('says the numbers that its tables hold', () => {
    const { likeness, nearer } = result.tables;
    const [best, next] = likeness.rows;
    const [label, items, value] = best;
    // Two sites of the same counts: the one is not to be named without the other.
    expect(next[2]).toBe(value);
    expect(result.words.answer).toContain(`equally like ${label} and ${next[0]}, a tie of two`);
    expect(result.words.because[0]).toContain(`${label} ${printNumber(value as number)} of 200`);
    expect(result.words.because[0]).toContain(`(${items} items)`);
    const r = cellOf(nearer, ['all assemblages', 'space', null], 'statistic') as number;
    expect(result.words.because[3]).toContain(`space (r = ${printNumber(r, 2)}`);
  });
});
