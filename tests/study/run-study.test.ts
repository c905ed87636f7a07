import { describe, expect, it } from 'vitest';
import { InputError } from '../../src/errors.ts';
import { checkStudy, loadStudy, studyFiles } from '../../src/study/load.ts';
import { firstFault, prepareStudy } from '../../src/study/prepare.ts';
import { serializeResults } from '../../src/study/results/json.ts';
import { resultsSchema } from '../../src/study/results/schema.ts';
import { runStudy } from '../../src/study/run-study.ts';

const bytes = (text: string) => new TextEncoder().encode(text);

const FINDS = `Cat. no.,Item,Site,Structure,Row spacing (mm),Density 1 (per cm)
A1,I1,Grebe Holm,open twining,32,3
A2,I1,Grebe Holm,open twining,c. 34,3-4
A3,I2,Grebe Holm,twining,30,3
B1,I3,Otter Ness,tabby,,12
B2,I4,Otter Ness,tabby,,14
B3,I5,Otter Ness,twill,,<12
`;

const files = new Map([['finds.csv', bytes(FINDS)]]);
const analyses = [
  { id: 'spacing', kind: 'summary', of: ['rowSpacing', 'structure'], by: ['site'] },
  { id: 'density', kind: 'summary', of: ['density1'] },
];
const base = {
  witness: { is: 'column' },
  title: 'Two sites',
  seed: 7,
  sources: [{ file: 'finds.csv' }],
  analyses,
};
const studyOf = (more: object = {}) => checkStudy({ ...base, ...more }, 'study.json');
const tableOf = (results: ReturnType<typeof runStudy>, id: string, name: string) => {
  const table = results.analyses[id].tables[name];
  return table.rows.map((row) =>
    Object.fromEntries(row.map((cell, place) => [table.columns[place].id, cell])),
  );
};

describe("a study's run", () => {
  it('leads from the bytes of a table to its figures, items collapsed', () => {
    const results = runStudy(studyOf(), files);
    expect(results.study.n).toEqual({ fragments: 6, items: 5, setAside: [] });
    const [holm] = tableOf(results, 'spacing', 'numbers');
    // Item I1: median of the midpoints 32 and 34 = 33; I2: 30; so the median of the two items is 31.5.
    expect(holm).toMatchObject({ site: 'Grebe Holm', n: 2, fragments: 3, items: 2, median: 31.5 });
    expect(results.study.sources).toEqual([
      {
        file: 'finds.csv',
        role: 'fragments',
        // sha256sum of the same bytes, GNU coreutils 9.1.
        sha256: '4d10217ad0f1229ad1b813d5e9c95ab90cdefde0ef253b24a04d916f48660558',
        rowsRead: 6,
        rowsKept: 6,
        rowsSetAside: 0,
        ledger: { read: expect.any(Number), flagged: expect.any(Number), notUnderstood: 0 },
      },
    ]);
  });

  it('by fragments counts every fragment', () => {
    const results = runStudy(studyOf({ unit: 'fragment' }), files);
    expect(tableOf(results, 'spacing', 'numbers')[0]).toMatchObject({ n: 3, median: 32 });
  });

  it('counts fragments until somebody has said which column names the object', () => {
    const { witness: _said, ...silent } = base;
    const results = runStudy(checkStudy(silent, 'study.json'), files);
    expect(results.study).toMatchObject({
      unit: 'fragment',
      witness: { status: 'suggested' },
      n: { fragments: 6, items: 6 },
    });
  });

  it('gives the same bytes twice, whatever order the files come in', () => {
    const more = { sources: [{ file: 'finds.csv' }, { file: 'more.csv' }] };
    const second = bytes('Cat. no.,Site,Row spacing (mm)\nC1,Teal Point,4\n');
    const forth = new Map([
      ['finds.csv', bytes(FINDS)],
      ['more.csv', second],
    ]);
    const back = new Map([
      ['more.csv', second],
      ['finds.csv', bytes(FINDS)],
    ]);
    const once = serializeResults(runStudy(studyOf(more), forth));
    expect(serializeResults(runStudy(studyOf(more), back))).toBe(once);
  });

  it('writes results that their own schema accepts', () => {
    const text = serializeResults(runStudy(studyOf(), files));
    expect(resultsSchema.safeParse(JSON.parse(text)).error?.issues).toBeUndefined();
  });

  it('counts what the selection leaves out, by reason', () => {
    const { study } = runStudy(studyOf({ select: [{ attribute: 'rowSpacing', atLeast: 31 }] }), files);
    expect(study.n.fragments).toBe(1);
    const aside = study.n.setAside.reduce((total, { fragments }) => total + fragments, 0);
    expect(aside).toBe(5);
  });

  it('knows the attributes and terms that the study adds', () => {
    const own = studyOf({
      attributes: [{ id: 'whorlMass', label: 'Whorl mass', block: 'find', scale: 'ratio', unit: 'g' }],
      sources: [{ file: 'whorls.csv' }],
      analyses: [{ id: 'mass', kind: 'summary', of: ['whorlMass'] }],
    });
    const whorls = new Map([['whorls.csv', bytes('id,Site,Whorl mass (g)\nw1,Ness,20\nw2,Ness,30\n')]]);
    expect(tableOf(runStudy(own, whorls), 'mass', 'numbers')[0]).toMatchObject({ n: 2, mean: 25, unit: 'g' });
  });
});

describe('an analysis that cannot be computed', () => {
  const failing = { id: 'nothing', kind: 'summary', of: ['meshGauge'] };

  it('says why, and the others are computed all the same', () => {
    const results = runStudy(studyOf({ analyses: [failing, ...analyses] }), files);
    expect(results.analyses.nothing.why).toContain('no source records the attribute');
    expect(results.analyses.nothing.words.answer).toMatch(/^Could not be computed: .*\.$/);
    expect(results.analyses.density.why).toBeUndefined();
    expect(resultsSchema.safeParse(JSON.parse(serializeResults(results))).success).toBe(true);
  });

  it('does not move the chance of another', () => {
    const without = runStudy(studyOf(), files).analyses.density;
    const beside = runStudy(studyOf({ analyses: [failing, ...analyses] }), files).analyses.density;
    expect(beside).toEqual(without);
  });
});

describe('progress', () => {
  it('rises from 0 to 1', () => {
    const shares: number[] = [];
    runStudy(studyOf(), files, { onProgress: (share) => shares.push(share) });
    expect(shares).toEqual([...shares].sort((a, b) => a - b));
    expect(shares[0]).toBe(0);
    expect(shares.at(-1)).toBe(1);
  });

  it('may stop the run, and the stop is handed on', () => {
    const stop = new Error('stopped by the reader');
    const stopAt = (wanted: string) => () =>
      runStudy(studyOf(), files, {
        onProgress: (_, what) => {
          if (what === wanted) throw stop;
        },
      });
    expect(stopAt('reading finds.csv')).toThrow(stop);
    expect(stopAt('computing density')).toThrow(stop);
  });
});

describe('a study that cannot be run is refused in one sentence', () => {
  const refusal = (value: object) => {
    try {
      checkStudy(value, 'study.json');
    } catch (fault) {
      if (fault instanceof InputError) return fault.message;
    }
    throw new Error('expected an InputError');
  };

  it.each([
    ['no title', { sources: [{ file: 'a.csv' }] }, 'study.json, title: a text is missing; add it.'],
    [
      'a misspelt key',
      { ...base, sedd: 4 },
      'study.json: "sedd" is not known here; write "seed" if that is meant.',
    ],
    [
      'a wrong unit',
      { ...base, unit: 'items' },
      'study.json, unit: "items" is not allowed; write "item" if that is meant.',
    ],
    [
      'an unknown attribute in the selection',
      { ...base, select: [{ attribute: 'sites', in: ['x'] }] },
      'study.json, select[0].attribute: there is no attribute "sites"; write "site" if that is meant.',
    ],
    [
      'an unknown grouping',
      { ...base, analyses: [{ id: 's', kind: 'summary', of: ['length'], by: ['siet'] }] },
      'study.json, analyses[0].by[0]: there is no attribute "siet"; write "site" if that is meant.',
    ],
    [
      'an attribute that exists already',
      { ...base, attributes: [{ id: 'length', label: 'Length', block: 'find', scale: 'ratio' }] },
      /^attributes: the attribute "length" exists already; /,
    ],
  ])('%s', (_, value, expected) => {
    if (typeof expected === 'string') expect(refusal(value)).toBe(expected);
    else expect(refusal(value)).toMatch(expected);
  });

  it('no table at all, unless all that is asked is about printed figures', () => {
    expect(refusal({ ...base, sources: [] })).toMatch(/^study.json, sources: no table is named; /);
    const claims = { id: 'paper', kind: 'claims', file: 'claims.csv' };
    const counts = { id: 'counts', kind: 'summary', of: ['length'] };
    expect(refusal({ ...base, sources: [], analyses: [counts] })).toMatch(/no table is named/);
    expect(refusal({ ...base, sources: [], analyses: [claims, counts] })).toMatch(/no table is named/);
    const study = checkStudy({ title: 'A paper', sources: [], analyses: [claims] }, 'study.json');
    const printed = new Map([['claims.csv', bytes('quantity,set,step,printed\nn,s,,28\nmean,s,1,5.19\n')]]);
    // Brown & Heathers 2017: 5.19 is no mean of 28 whole numbers.
    expect(runStudy(study, printed).analyses.paper.words.answer).toBe(
      'Of 2 printed figures, 1 cannot be as printed and 1 cannot be checked.',
    );
  });

  it('a source that is missing names the file', () => {
    expect(() => runStudy(studyOf(), new Map())).toThrow('finds.csv: the file is missing');
  });

  it('a byte-order mark is no fault', () => {
    expect(loadStudy(`\uFEFF${JSON.stringify(base)}`, 'study.json').title).toBe('Two sites');
  });

  it('a ragged row is read but reported', () => {
    const ragged = new Map([['finds.csv', bytes(`${FINDS}C1,I9,Teal Point\n`)]]);
    const prepared = prepareStudy(studyOf(), ragged);
    expect(prepared.all.rows).toBe(7);
    expect(firstFault(prepared)?.message).toContain('finds.csv, row 8');
    expect(firstFault(prepareStudy(studyOf(), files))).toBeNull();
  });
});

describe('the files of a study', () => {
  it('are listed once each, profiles with their sources', () => {
    const listed = studyFiles(
      studyOf({
        sources: [
          { file: 'a.csv', profile: 'p.json' },
          { file: 'b.csv', profile: 'p.json' },
        ],
      }),
    );
    expect(listed).toEqual(['a.csv', 'p.json', 'b.csv']);
  });
});
