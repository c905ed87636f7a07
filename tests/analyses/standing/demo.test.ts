import { describe, expect, it } from 'vitest';
import { printNumber } from '../../../src/analyses/phrasing.ts';
import { faultsOfAnswer } from '../answer-rules.ts';
import { demoAnswer, numbersWithoutSource, readable } from '../demo-answer.ts';

describe('the demo’s wreck among the sites', () => {
  const result = demoAnswer('standing');

  it('is answered by the rules, as reviewed', async () => {
    expect(faultsOfAnswer(result.words)).toEqual([]);
    await expect(readable(result)).toMatchFileSnapshot('snapshots/demo-standing.txt');
  });

  it('says the numbers that its tables hold', () => {
    const { likeness, nearer } = result.tables;
    const [best] = likeness.rows;
    const [label, items, value] = best;
    expect(result.words.answer).toMatch(new RegExp(`like ${label}`));
    // Its catalogue writes "twined" of everything twined: that alone must not make it the least alike.
    const drommavel = likeness.rows.findIndex(([name]) => name === 'Drommavel Landing');
    expect(drommavel).toBeLessThan(likeness.rows.length - 1);
    expect(result.words.because[0]).toContain(`${label} ${printNumber(value as number)} of 200`);
    expect(result.words.because[0]).toContain(`(${items} items)`);
    const [space] = nearer.rows;
    expect(space.slice(0, 3)).toEqual(['all assemblages', 'space', null]);
    expect(result.words.because[3]).toContain(`space (r = ${printNumber(space[3] as number, 2)}`);
    const tested = result.tables.apart.rows.filter((row) => typeof row[7] === 'number').length;
    expect(numbersWithoutSource(result.words, result.tables, [tested])).toEqual([]);
  });
});
