import { describe, expect, it } from 'vitest';
import { faultsOfAnswer } from '../answer-rules.ts';
import { linesOf } from '../ask.ts';
import { demoAnswer, numbersWithoutSource, readable } from '../demo-answer.ts';

describe('the demo’s thread counts', () => {
  const result = demoAnswer('threads');

  it('are answered by the rules, as reviewed', async () => {
    expect(faultsOfAnswer(result.words)).toEqual([]);
    await expect(readable(result)).toMatchFileSnapshot('snapshots/demo-threads.txt');
  });

  it('tell what lies behind them: kinds that differ in both counts, and nothing within a kind', () => {
    // The truth of the demo (datasets/demo/README.md): within a kind the two counts vary by themselves.
    expect(result.words.answer).toMatch(/on the whole, but are not shown to do so within one kind of fabric/);
    const ratios = new Map(
      linesOf(result.tables.relation).map(({ group, median }) => [group, median as number]),
    );
    // Tabby 11 x 10, weft-faced repp 6 x 21, open twining 2.4 by one row in 27 mm.
    expect(ratios.get('balanced tabby')).toBeGreaterThan(1);
    expect(ratios.get('weft-faced tabby')).toBeLessThan(0.5);
    expect(ratios.get('open twining')).toBeGreaterThan(4);
    expect(numbersWithoutSource(result.words, result.tables, [0.001])).toEqual([]);
  });
});
