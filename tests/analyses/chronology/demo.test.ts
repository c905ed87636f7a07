import { describe, expect, it } from 'vitest';
import { faultsOfAnswer } from '../answer-rules.ts';
import { linesOf } from '../ask.ts';
import { demoAnswer, numbersWithoutSource, readable } from '../demo-answer.ts';

describe('the demo through time', () => {
  const result = demoAnswer('time');

  it('is answered by the rules, as reviewed', async () => {
    expect(faultsOfAnswer(result.words)).toEqual([]);
    await expect(readable(result)).toMatchFileSnapshot('snapshots/demo-time.txt');
  });

  it('tells what lies behind it: sites keep their kinds from phase to phase', () => {
    // The truth of the demo (datasets/demo/README.md): no kind changes within a site.
    expect(result.words.answer).toMatch(/^None of five kinds is shown to come later or earlier/);
    const sites = linesOf(result.tables.within).filter(({ within }) => within === 'Site');
    for (const { effect } of sites)
      if (typeof effect === 'number') expect(Math.abs(effect)).toBeLessThan(0.05);
    expect(linesOf(result.tables.phases).map(({ phase }) => phase)).toEqual(['Early', 'Middle', 'Late']);
    expect(numbersWithoutSource(result.words, result.tables, [result.n.items])).toEqual([]);
  });
});
