import { describe, expect, it } from 'vitest';
import { checkStudy } from '../../src/study/load.ts';
import { runStudy } from '../../src/study/run-study.ts';
import { linesOf } from '../analyses/ask.ts';

/** Twelve finds of two sites; four attributions of the fibre are doubtful, and all of these are wool. */
const TABLE = [
  'No.,Site,Fibre,Row spacing (mm)',
  ...Array.from({ length: 12 }, (_, i) => {
    const doubtful = i % 3 === 0;
    return `${i + 1},${i < 6 ? 'Holm' : 'Ness'},${doubtful ? 'wool ?' : i % 2 === 0 ? 'flax' : 'wool'},${doubtful ? 20 : 5 + i / 10}`;
  }),
].join('\n');

const answerTo = (analysis: object) =>
  runStudy(
    checkStudy(
      {
        title: 't',
        witness: { is: 'row' },
        sources: [{ file: 'finds.csv' }],
        analyses: [{ id: 'a', ...analysis }],
      },
      'study.json',
    ),
    new Map([['finds.csv', new TextEncoder().encode(TABLE)]]),
  ).analyses.a;

describe('certainty as a grouping', () => {
  it('counts the certain and the doubtful apart', () => {
    const { tables } = answerTo({ kind: 'crosstab', rows: 'fibre.certainty', columns: 'fibre' });
    // By the table above: four doubtful, all wool; of the eight certain, four of either.
    expect(tables.counts.rows.slice(0, 2).map((row) => row.slice(0, 3))).toEqual([
      ['doubtful', 0, 4],
      ['certain', 4, 4],
    ]);
    expect(tables.counts.columns[0].label).toBe('Certainty of fibre');
  });
  it('describes and contrasts by it', () => {
    const described = answerTo({ kind: 'summary', of: ['rowSpacing'], by: ['fibre.certainty'] });
    const medians = linesOf(described.tables.numbers ?? Object.values(described.tables)[0]).map(
      ({ median }) => median,
    );
    expect(medians).toContain(20);
    const contrast = answerTo({
      kind: 'contrast',
      of: ['rowSpacing'],
      by: 'fibre.certainty',
      resamples: 199,
    });
    expect(contrast.words.answer).toContain('larger in doubtful than in certain');
  });
  it('is refused of what does not exist, with the name that was meant', () => {
    expect(() => answerTo({ kind: 'contrast', of: ['rowSpacing'], by: 'fiber.certainty' })).toThrow(
      /no attribute "fiber"/,
    );
  });
});

describe('results that merge certain and doubtful', () => {
  it('say how many of each, and what the certain alone say where they differ', () => {
    const { words } = answerTo({ kind: 'summary', of: ['fibre'] });
    const turn = words.unless.find(({ what }) => what.includes('doubtful'));
    expect(turn?.what).toBe('Of 8 unmarked fragments alone, without 4 marked as doubtful (fibre)');
    // Eight of twelve are wool with the doubtful ones, half of eight without.
    expect(turn?.size).toMatch(/4/);
    expect(turn?.size).not.toBe('the answer is the same');
  });
});
