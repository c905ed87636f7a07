import { expect, it } from 'vitest';
import { contrast } from '../../../src/analyses/contrast/index.ts';
import { faultsOfAnswer } from '../answer-rules.ts';
import { ask, inputFrom } from '../ask.ts';

/** Broad words at their place in the tree, where they are a kind of their own. */
const quick = {
  ...{ of: ['structure', 'fibre'], by: 'site', relabellings: 199, resamples: 199 },
  broad: 'place',
};

/** Two places alike in what was found; one names only the broad word. */
const rows = ['Holm', 'Pell'].flatMap((site) =>
  Array.from({ length: 40 }, (_, i) => ({
    site,
    structure:
      i % 8 === 0 ? 'woven' : site === 'Holm' ? 'twined' : i % 2 === 0 ? 'openTwining' : 'closeTwining',
    fibre: i % 9 === 0 ? 'wool' : site === 'Holm' ? 'treeBast' : i % 2 === 0 ? 'limeBast' : 'willowBast',
  })),
);

it('compares kinds among the attributes at the level that all groups record, and says what the words would make', () => {
  const { words, found, tables } = ask(contrast, inputFrom(rows), quick);
  expect(found.together).toMatchObject({ told: 'not told apart', asRecorded: 'told apart' });
  expect(words.answer).toContain(
    'Together the groups are not told apart, but would be by the words as recorded',
  );
  expect(words.unless[0]).toEqual({
    what: 'kinds counted by the words as recorded',
    size: 'together they differ',
    overturns: true,
  });
  expect(tables.together?.note).toContain('tree bast for');
  expect(faultsOfAnswer(words)).toEqual([]);
});

it('asked for by the words as recorded, it takes them so', () => {
  const { found } = ask(contrast, inputFrom(rows), { ...quick, level: 'recorded' });
  expect(found.together).toMatchObject({ told: 'told apart', asRecorded: null });
});

it('where a broad word may be any of the kinds under it, the words make no difference at either level', () => {
  for (const level of ['common', 'recorded']) {
    const { found, words } = ask(contrast, inputFrom(rows), { ...quick, broad: 'expected', level });
    expect(found.together).toMatchObject({ told: 'not told apart' });
    expect(words.answer).not.toContain('by the words as recorded');
  }
});
