import { describe, expect, it } from 'vitest';
import { checkStudy } from '../../src/study/load.ts';
import { runStudy } from '../../src/study/run-study.ts';
import { faultsOfAnswer } from '../analyses/answer-rules.ts';

const quick = { relabellings: 499, resamples: 199 };

function answerTo(rows: readonly string[], analysis: object, more: object = {}) {
  const study = checkStudy(
    { title: 't', sources: [{ file: 'finds.csv' }], analyses: [{ id: 'a', ...analysis, ...quick }], ...more },
    'study.json',
  );
  const results = runStudy(study, new Map([['finds.csv', new TextEncoder().encode(`${rows.join('\n')}\n`)]]));
  return results.analyses.a.words;
}

/** 72 fragments of six objects, three a site: each object has its own spacing, sites have none. */
function sixObjects(numbered: boolean): readonly string[] {
  const middles = [4, 9, 14, 10, 15, 20];
  return [
    `No.,${numbered ? 'Item,' : ''}Site,Row spacing (mm)`,
    ...middles.flatMap((middle, object) =>
      Array.from({ length: 12 }, (_, i) => {
        const site = object < 3 ? 'Ostrel Hollow' : 'Keshem Quay';
        return `${object * 12 + i + 1},${numbered ? `T${object + 1},` : ''}${site},${middle + ((i * 7) % 5) / 10}`;
      }),
    ),
  ];
}
const contrast = { kind: 'contrast', of: ['rowSpacing'], by: 'site' };

describe('72 fragments of six objects', () => {
  it('without a column that names the object, the answer says what it takes as independent', () => {
    const words = answerTo(sixObjects(false), contrast);
    expect(words.answer).toContain('Row spacing tends to be larger in Keshem Quay than in Ostrel Hollow');
    expect(words.answer).toContain('if each fragment is a find of its own');
  });
  it('with one that nobody has confirmed, the answer is that it cannot be told yet', () => {
    const words = answerTo(sixObjects(true), contrast);
    expect(words.answer).toBe(
      'Cannot be told yet: counted by fragments and by the objects that their numbers seem to name, the answers differ.',
    );
    expect(words.unless[0]).toMatchObject({ overturns: true });
    expect(words.unless[0].what).toContain('Counted by the 6 objects');
    expect(faultsOfAnswer(words)).toEqual([]);
  });
  it('confirmed, six objects are six objects', () => {
    const words = answerTo(sixObjects(true), contrast, { witness: { is: 'column' } });
    expect(words.answer).toContain('could not be shown to differ between');
    expect(words.because.join(' ')).toContain('3 items');
  });
});

/** Three places, one of them in two spellings that are most alike of all. */
const spelled = [
  'No.,Site,Structure',
  ...['Ostrel Hollow', 'Ostrel Holl.', 'Keshem Quay', 'Tull Barrow'].flatMap((site, place) =>
    Array.from({ length: 20 }, (_, i) => {
      const twined = place < 2 ? 16 : place === 2 ? 3 : 8;
      return `${place * 20 + i + 1},${site},${i < twined ? 'open twining' : i < 18 ? 'tabby' : 'knotted netting'}`;
    }),
  ),
];

describe('two spellings of one place', () => {
  const alike = { kind: 'similarity', assemblages: 'site', of: 'structure' };
  it('are not announced as the most alike: they are taken as one, on a condition', () => {
    const words = answerTo(spelled, alike, { witness: { is: 'row' } });
    expect(words.answer).toBe(
      'In structure most alike are Keshem Quay and Tull Barrow, though Ostrel Hollow with Tull Barrow cannot be ruled out, if Ostrel Holl. and Ostrel Hollow are one name.',
    );
    expect(words.unless[0]).toMatchObject({
      what: 'Kept apart, as they are written: Ostrel Hollow and Ostrel Holl.',
      overturns: true,
    });
    expect(words.unless[0].size).toContain('most alike are Ostrel Holl. and Ostrel Hollow');
    expect(words.next?.[0]).toContain('"names" in the study, or on Sources');
  });
  it('go under the spelling that the question names', () => {
    const words = answerTo(
      spelled,
      { kind: 'standing', site: 'Ostrel Holl.', of: 'structure' },
      { witness: { is: 'row' } },
    );
    expect(words.answer).toContain('Ostrel Holl. is most like Tull Barrow');
    expect(words.answer).toContain(', if Ostrel Hollow and Ostrel Holl. are one name');
  });
  it('that differ in capitals alone are one without a word of condition', () => {
    const words = answerTo(
      spelled.map((row) => row.replace('Ostrel Holl.', 'OSTREL HOLLOW')),
      alike,
      { witness: { is: 'row' } },
    );
    expect(words.answer).toContain('most alike are Keshem Quay and Tull Barrow');
    expect(words.answer).not.toContain('one name');
    expect(words.unless.map(({ what }) => what).join()).not.toContain('Kept apart');
  });
  it('that may be a slip of the pen are two until somebody says, and the answer waits where it turns', () => {
    const words = answerTo(
      spelled.map((row) => row.replace('Ostrel Holl.', 'Ostrel Hallow')),
      alike,
      { witness: { is: 'row' } },
    );
    expect(words.answer).toBe(
      'Cannot be told yet: Ostrel Hallow and Ostrel Hollow may be one name, and taken as one the answer differs.',
    );
  });
  it('of a phase leave no contrast of four groups where there are two', () => {
    const rows = Array.from({ length: 60 }, (_, i) => {
      const early = i % 2 === 0;
      const phase = early ? (i % 4 === 0 ? 'früh' : 'Early') : 'Late';
      return `${i + 1},${phase},${(early ? 5 : 9) + ((i * 7) % 10) / 10}`;
    });
    const words = answerTo(
      ['No.,Phase,Row spacing (mm)', ...rows],
      { kind: 'contrast', of: ['rowSpacing'], by: 'phase' },
      { witness: { is: 'row' } },
    );
    expect(words.answer).toContain('larger in Late than in');
    expect(faultsOfAnswer(words)).toEqual([]);
  });
  it('once decided, they are one', () => {
    const names = [{ attribute: 'site', name: 'Ostrel Hollow', also: ['Ostrel Holl.'] }];
    const words = answerTo(
      spelled,
      { kind: 'similarity', assemblages: 'site', of: 'structure' },
      { witness: { is: 'row' }, names },
    );
    expect(words.answer).not.toContain('Ostrel Holl.');
    expect(words.answer).not.toContain('may be one name');
  });
});

describe('the place of a find', () => {
  /** The doubtful attributions to Holm are what looks like the find; the sure ones do not. */
  const rows = (doubt: string) => [
    'No.,Site,Row spacing (mm),Warp density (per cm)',
    ...Array.from({ length: 60 }, (_, i) => {
      const near = i % 20 < (i < 20 ? 10 : 0);
      const site = ['Holm', 'Ness', 'Tarn'][Math.floor(i / 20)];
      return `${i + 1},${site}${near ? doubt : ''},${(near ? 9 : 30 + 15 * Math.floor(i / 20)) + (i % 5) / 10},${near ? 9 : 3 + (i % 3) / 10}`;
    }),
  ];
  const where = {
    kind: 'placement',
    find: { rowSpacing: '9', density1: '9' },
    labels: ['site'],
    findFrom: 'a site of the study',
  };
  const placed = (doubt: string, more: object) => {
    const study = checkStudy(
      { title: 't', sources: [{ file: 'finds.csv' }], analyses: [{ id: 'a', ...where }], ...more },
      'study.json',
    );
    return runStudy(study, new Map([['finds.csv', new TextEncoder().encode(`${rows(doubt).join('\n')}\n`)]]))
      .analyses.a.words;
  };

  it('is asked again without what is marked as doubtful, and where no label stays of both, it cannot be told', () => {
    const words = placed(' ?', { witness: { is: 'row' } });
    expect(words.answer).toBe(
      'Cannot be told yet: with and without the attributions marked as doubtful, the answers differ.',
    );
    expect(words.because[0]).toMatch(/^By site .*\(Holm\)/);
    expect(words.unless[0]).toMatchObject({ overturns: true });
    expect(words.unless[0].what).toContain('without 10 marked as doubtful (site)');
    expect(placed('', { witness: { is: 'row' } }).answer).toMatch(/^By site .*\(Holm\)/);
  });
  it('says what it takes as independent, where nobody has said what an object is', () => {
    expect(placed('', {}).answer).toMatch(/each fragment is a find of its own|counted by fragments/);
  });
});

/** Numbers that restart in every grave, whose column nobody mapped: "2" is a coarse piece of Early and a fine one of Late. */
describe('confirmed objects that cannot each be one', () => {
  const restarting = (row: (number: number, phase: string, i: number) => string) => [
    'No.,Object no.,Site,Phase,Structure,Row spacing (mm)',
    ...['Early', 'Late'].flatMap((phase, p) =>
      Array.from(
        { length: 20 },
        (_, i) => `${p * 20 + i + 1},${row(Math.floor(i / 2) + 1 + 2 * p, phase, i)}`,
      ),
    ),
  ];
  const spacing = (phase: string, i: number) => (phase === 'Early' ? 6 : 7.2) + ((i * 7) % 10) / 5;
  const crossing = restarting((n, phase, i) => `${n},Holm,${phase},open twining,${spacing(phase, i)}`);
  const apart = restarting(
    (n, phase, i) => `${phase[0]}${n},Holm,${phase},open twining,${spacing(phase, i)}`,
  );
  const ask = (rows: readonly string[]) =>
    answerTo(rows, { kind: 'contrast', of: ['rowSpacing'], by: 'phase' }, { witness: { is: 'column' } });

  it('are tried as several objects, and the answer waits where it turns', () => {
    const words = ask(crossing);
    expect(words.unless.map(({ what }) => what)).toContain(
      'Taken apart: 8 items whose fragments differ in phase',
    );
    expect(ask(apart).answer).toContain('larger in Late than in Early');
    expect(words.answer).toBe(
      'Cannot be told yet: 8 of 12 items cannot each be one (their fragments differ in phase), and taken apart the answers differ.',
    );
  });
  it('are nothing to speak of where each is of one phase', () => {
    expect(
      ask(apart)
        .unless.map(({ what }) => what)
        .join(),
    ).not.toContain('Taken apart');
  });
});
