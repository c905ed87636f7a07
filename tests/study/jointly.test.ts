import { describe, expect, it } from 'vitest';
import { checkStudy } from '../../src/study/load.ts';
import { changeOf } from '../../src/study/otherwise/change-of.ts';
import { runStudy } from '../../src/study/run-study.ts';
import type { StudyInput } from '../../src/study/schema.ts';
import { faultsOfAnswer } from '../analyses/answer-rules.ts';

/**
 * Two things are open at once: what counts as one (a column of objects that nobody confirmed) and doubtful attributions.
 * Fragments of one object are alike, and so are doubtful ones: each by itself leaves the difference standing.
 */
const HEAD = 'ID,Item no.,Site,Fibre';
function rows(
  of: readonly (readonly [site: string, fibre: string, object: string, fragments: number])[],
): string {
  const lines = of.flatMap(([site, fibre, object, fragments]) =>
    Array.from({ length: fragments }, (_, at) => `${object}.${at + 1},${object},${site},${fibre}`),
  );
  return [HEAD, ...lines].join('\n');
}

function answerTo(table: string, more: Partial<StudyInput> = {}) {
  const study = checkStudy(
    {
      title: 'Two things open',
      seed: 3,
      sources: [{ file: 'finds.csv' }],
      analyses: [
        { id: 'table', kind: 'crosstab', rows: 'site', columns: 'fibre', relabellings: 199, resamples: 199 },
      ],
      ...more,
    },
    'study',
  );
  const files = new Map([['finds.csv', new TextEncoder().encode(table)]]);
  return runStudy(study, files).analyses.table.words;
}

// Of each site so many objects of each fibre, certain and doubtful, one or several fragments each.
const objects = (
  site: string,
  parts: readonly (readonly [fibre: string, count: number, fragments: number])[],
) =>
  parts.flatMap(([fibre, count, fragments], part) =>
    Array.from(
      { length: count },
      (_, at) => [site, fibre, `${site.slice(0, 1)}${part}${at}`, fragments] as const,
    ),
  );
// Chi-square by hand: p far below 0.001 of fragments, 0.009 of objects, below 0.001 of certain ones, 0.16 of certain objects.
const OPEN = [
  ...objects('Aldum', [
    ['wool', 5, 2],
    ['wool?', 8, 2],
    ['flax', 4, 1],
  ]),
  ...objects('Berrow', [
    ['wool', 4, 1],
    ['wool?', 1, 1],
    ['flax', 11, 2],
  ]),
];

describe('several things open at once', () => {
  it('turn the verdict together where none does by itself', () => {
    const words = answerTo(rows(OPEN));
    const said = words.unless.map(({ what, size, overturns }) => ({ what, size, overturns }));
    const single = said.filter(({ what }) => /^(Counted by the|Of \d+ unmarked)/.test(what));
    expect(single).toHaveLength(2);
    expect(single.every(({ overturns }) => !overturns)).toBe(true);
    expect(said.find(({ what }) => what.startsWith('All at once: counted by'))?.overturns).toBe(true);
    expect(words.answer).toBe(
      'Cannot be told yet: taken otherwise at once, what counts as one and doubtful attributions turn the answer.',
    );
    expect(faultsOfAnswer(words)).toEqual([]);
  });

  it('are not tried together where one of them is settled', () => {
    const words = answerTo(rows(OPEN), { witness: { is: 'row' } });
    expect(words.unless.some(({ what }) => what.startsWith('All at once'))).toBe(false);
  });

  it('a verdict that is the same is no turn', () => {
    const told = [{ of: 'table', told: 'told apart', under: [] }];
    expect(changeOf(told, told).how).toBe('the same');
  });
});
