import { describe, expect, it } from 'vitest';
import { printTurn } from '../../../src/analyses/phrasing.ts';
import { placement } from '../../../src/analyses/placement/index.ts';
import { faultsOfAnswer } from '../answer-rules.ts';
import { ask, inputFrom, linesOf } from '../ask.ts';

/** Twelve finds of lime bast, twelve of willow bast, and twelve of a catalogue that writes only "tree bast". */
const rows = ['North/limeBast', 'East/willowBast', 'South/treeBast'].flatMap((place) => {
  const [site, fibre] = place.split('/');
  return Array.from({ length: 12 }, () => ({ site, fibre }));
});
const place = (fibre: string, more: object = {}) =>
  ask(placement, inputFrom(rows), {
    of: ['fibre'],
    labels: ['site'],
    find: { fibre },
    findFrom: 'a site of the study',
    moves: false,
    next: false,
    map: false,
    ...more,
  });
const verdicts = ({ found }: ReturnType<typeof place>) =>
  Object.fromEntries(found.judged.map(({ label, verdict }) => [label, verdict]));

describe('a place whose catalogue uses broad words', () => {
  it('is not excluded for them: its finds are as far from each other as from the find', () => {
    // Of lime and willow, twelve and a half each of 25: two of tree bast differ with chance 1/2, as one and lime do.
    const placed = place('lime bast');
    expect(verdicts(placed)).toEqual({
      North: 'cannot be excluded',
      East: 'excluded',
      South: 'cannot be excluded',
    });
    expect(placed.found.moves.filter(({ change, turned }) => change === 'broad terms' && turned > 0)).toEqual(
      [],
    );
  });

  it('where its words alone exclude it, the answer hangs on them, and names them', () => {
    const { found, words } = place('lime bast', { broad: 'place' });
    expect(found.judged.find(({ label }) => label === 'South')?.verdict).toBe('excluded');
    expect(words.answer).toContain('hangs on broad terms (tree bast)');
    // As near, as far and as often as its kinds: by each of the three it would come in.
    const turn = words.unless.map(printTurn).find((text) => text.includes('would come in'));
    expect(turn).toContain('South (3 of 3)');
    expect(faultsOfAnswer(words)).toEqual([]);
  });

  it('gives each of the nearest the least and the greatest distance, and says whether others may be nearer', () => {
    const { found, tables, words } = place('tree bast', { nearest: 8 });
    const [first] = linesOf(tables.neighbours);
    // Tree bast to tree bast: 0 where both are of one tree, 1/2 where they are not (Wu & Palmer 1994).
    expect([first.least, first.greatest]).toEqual([0, 0.5]);
    expect(found.broad).toEqual({ terms: ['tree bast'], nearest: 'others may be nearer', more: 28 });
    expect(words.because[0]).toContain('0 to 0.5 as broad terms are read');
    expect(words.unless.map(printTurn).join()).toContain('28 more comparanda may be among the nearest 8');
  });

  it('where no term is broad nothing is said of it, and no column added', () => {
    const narrow = rows.filter(({ fibre }) => fibre !== 'treeBast');
    const { found, tables, words } = ask(placement, inputFrom(narrow), {
      of: ['fibre'],
      labels: ['site'],
      find: { fibre: 'lime bast' },
    });
    expect(found.broad).toBeNull();
    expect(found.moves.some(({ change }) => change === 'broad terms')).toBe(false);
    expect(tables.neighbours.columns.map(({ id }) => id)).not.toContain('least');
    expect(JSON.stringify(words)).not.toContain('broad term');
  });
});
