import { describe, expect, it } from 'vitest';
import { checkStudy } from '../../src/study/load.ts';
import { runStudy } from '../../src/study/run-study.ts';

/**
 * Seventy-two fragments of six objects, three a site: the objects of Ness happen to be a little coarser. Counted as
 * 72 finds that is told apart, counted as six objects nothing is.
 */
const HEAD = 'id,item,site,row spacing (mm)';
const ROWS = Array.from({ length: 72 }, (_, i) => {
  const object = i % 6;
  const spacing = [4, 6, 8, 5, 7, 10][object] + (i % 5) / 20;
  return `f${i},o${object},${object < 3 ? 'Holm' : 'Ness'},${spacing}`;
});
const ask = (head: string, rows: readonly string[], more: object = {}) =>
  runStudy(
    checkStudy(
      {
        title: 't',
        sources: [{ file: 'finds.csv' }],
        analyses: [
          {
            id: 'differ',
            kind: 'contrast',
            of: ['rowSpacing'],
            by: 'site',
            resamples: 199,
            relabellings: 999,
          },
        ],
        ...more,
      },
      'study.json',
    ),
    new Map([['finds.csv', new TextEncoder().encode([head, ...rows].join('\n'))]]),
  ).analyses.differ.words;

describe('fragments of a few objects', () => {
  it('are not told apart as so many finds where their numbers seem to name the objects', () => {
    const words = ask(HEAD, ROWS);
    expect(words.answer).toBe(
      'Cannot be told yet: counted by fragments and by the objects that their numbers seem to name, the answers differ.',
    );
    expect(words.because[0]).toBe('Row spacing tends to be larger in Ness than in Holm.');
    expect(words.next?.[0]).toContain('"witness"');
  });

  it('are said to be taken as finds of their own where no column could name the objects', () => {
    const bare = ROWS.map((row) => row.replace(/,o\d/, ''));
    expect(ask('id,site,row spacing (mm)', bare).answer).toBe(
      'Row spacing tends to be larger in Ness than in Holm, if each fragment is a find of its own.',
    );
  });

  it('are six objects once somebody says so, and then not told apart', () => {
    expect(ask(HEAD, ROWS, { witness: { is: 'column' } }).answer).toMatch(
      /could not be shown|cannot be told/i,
    );
  });
});
