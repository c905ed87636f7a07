import { describe, expect, it } from 'vitest';
import { ANALYSES } from '../../src/analyses/register.ts';
import { faultsOfAnswer } from './answer-rules.ts';
import { inputFrom } from './ask.ts';

const SITES = ['Holm', 'Pell', 'Arn'];

/** Ten fragments a site; of as many more nobody knows the site. */
const rows = [...SITES, null].flatMap((site, place) =>
  Array.from({ length: 10 }, (_, i) => ({
    ...(site === null ? {} : { site }),
    fibre: i % 3 === 0 ? 'wool' : (i + place) % 2 === 0 ? 'limeBast' : 'willowBast',
    structure: i % 4 === 0 ? 'woven' : 'openTwining',
    density1: 3 + ((i * 3 + place) % 7),
  })),
);
const quick = { relabellings: 199, resamples: 199 };
const QUESTIONS: Readonly<Record<string, object>> = {
  contrast: { of: ['density1'], by: 'site', ...quick },
  crosstab: { rows: 'site', columns: 'fibre', ...quick },
  similarity: { assemblages: 'site', of: 'fibre', ...quick },
  standing: { site: 'Holm', of: 'fibre', attributes: ['density1', 'fibre'], ...quick },
  placement: { of: ['density1', 'fibre'], find: { density1: '4', fibre: 'wool' }, draws: 0, map: false },
};

function asked(kind: string, from: readonly object[], options = QUESTIONS[kind]) {
  const analysis = ANALYSES.find((one) => one.kind === kind);
  if (analysis === undefined) throw new Error(`no analysis ${kind}`);
  return analysis.run(inputFrom(from as typeof rows), options).words;
}

describe.each(Object.keys(QUESTIONS))('%s', (kind) => {
  it('counts in its lead the fragments whose site nobody knows', () => {
    const words = asked(kind, rows);
    expect(`${words.answer} ${words.because[0]}`).toMatch(/of 40 fragments 10 without site left aside/i);
    expect(words.unless.map(({ what }) => what)).toContain(
      'of 40 fragments 10 have no site, and were left out',
    );
    expect(faultsOfAnswer(words)).toEqual([]);
  });
  it('says nothing of it where every fragment has one', () => {
    const words = asked(kind, rows.slice(0, 30));
    expect(JSON.stringify(words)).not.toContain('left aside');
  });
});

it('a gap in what was observed is no missing label', () => {
  const gap = rows.slice(0, 30).map((row, at) => (at < 5 ? { ...row, fibre: '-not-observed' } : row));
  expect(JSON.stringify(asked('crosstab', gap))).not.toContain('left aside');
});

it('an answer that is full hands the count to the head of its evidence', () => {
  const words = asked('contrast', rows, { ...QUESTIONS.contrast, of: ['density1'] });
  const long = asked(
    'crosstab',
    rows.map((row, at) => ({
      ...row,
      fibre: at % 40 < 10 ? 'wool' : at % 40 < 20 ? 'limeBast' : 'willowBast',
    })),
  );
  expect(words.answer).toMatch(/left aside\.$/);
  expect(long.answer).toContain('go together: more');
  expect([long.answer, long.because[0]].filter((line) => line.includes('left aside'))).toHaveLength(1);
});
