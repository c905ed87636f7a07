import { describe, expect, it } from 'vitest';
import { faultsOfAnswer } from '../answer-rules.ts';
import { linesOf } from '../ask.ts';
import { demoAnswer, readable } from '../demo-answer.ts';

describe('the demo’s map', () => {
  const result = demoAnswer('map');

  it('is answered by the rules, as reviewed', async () => {
    expect(faultsOfAnswer(result.words)).toEqual([]);
    await expect(readable(result)).toMatchFileSnapshot('snapshots/demo-map.txt');
  });

  it('joins the places of one tradition, and the wreck, which mixes two, with none', () => {
    // The truth of the demo (datasets/demo/README.md): Quorrimel and Ulvombre are Shelf, Drommavel and Ysketh Strand.
    const drawn = linesOf(result.tables.lines)
      .filter(({ drawn }) => drawn === 'yes')
      .map(({ first, second }) => `${first}, ${second}`);
    expect(drawn.sort()).toEqual(['Drommavel Landing, Ysketh Pans', 'Quorrimel Cave, Ulvombre Terraces']);
  });
});
