import { beforeAll, describe, expect, it } from 'vitest';
import { createEngine } from '../../src/app/engine/engine.ts';
import type { StudyView } from '../../src/app/engine/views/study.ts';
import { complete, type StudyAnalysis } from '../../src/app/state/workspace.ts';

/** What the worker hands to the screens, of a table small enough to be reckoned by hand. */

const TABLE = `id,item,site,structure,row spacing (mm),fibre,period,remark
f1,i1,Ness,twining,5,wool,Early,
f2,i1,Ness,twining,5,wool,Early,torn
f3,i2,Holm,twining,c. 10,wool,Late,
f4,i3,Holm,twining,20,wool,Late,
f5,i4,Ayre,tabby,n.m.,flax,Late,
f6,i5,Ness,twining,> 30,,Early,
f7,i6,Ness,twining,8-12,qqq,Early,
`;
const study = complete({
  title: 'Small',
  unit: 'item',
  witness: { is: 'column' },
  sources: [{ file: 'finds.csv' }],
} as never);
const bytes = (text: string) => new TextEncoder().encode(text);
const engine = createEngine();
engine.keepFiles(new Map([['finds.csv', bytes(TABLE)]]), []);
const analysis = (more: object) => ({ id: 'a', ...more }) as unknown as StudyAnalysis;

describe('what every screen knows of a study', () => {
  let view: StudyView;
  beforeAll(async () => {
    view = await engine.open(study);
  });
  const attribute = (id: string) => view.attributes.find(({ definition }) => definition.id === id);

  it('counts fragments, items, and what the selection leaves', async () => {
    expect([view.fragments, view.items, view.selected, view.unit]).toEqual([7, 6, 7, 'item']);
    const early = await engine.open({ ...study, select: [{ attribute: 'period', in: ['Early'] }] } as never);
    expect([early.fragments, early.items, early.selected]).toEqual([7, 6, 4]);
  });

  it('says of each attribute how many records have it, and which terms occur, most frequent first', () => {
    // Five of the six items: "n.m." is a gap; all seven fragments say something.
    expect(attribute('rowSpacing')).toMatchObject({ filled: 5, records: 6, recorded: 7, levels: [] });
    expect(attribute('fibre')).toMatchObject({ filled: 4, records: 6, recorded: 6 });
    expect(attribute('fibre')?.levels.map(({ label, count }) => [label, count])).toEqual([
      ['sheep wool', 3],
      ['flax', 1],
    ]);
    expect(attribute('site')?.levels.map(({ id, count }) => [id, count])).toEqual([
      ['Ness', 3],
      ['Holm', 2],
      ['Ayre', 1],
    ]);
  });

  it('shows of a source its size, examples, filling and the texts that are no term', () => {
    const [source] = view.sources;
    expect([source.gridRows, source.gridColumns, source.rowsKept]).toEqual([8, 8, 7]);
    expect(source.examples[2]).toEqual(['Ness', 'Holm', 'Ayre']);
    expect(source.examples[0]).toEqual(['f1', 'f2', 'f3', 'f4', 'f5']);
    expect(source.filledShare[5]).toBeCloseTo(6 / 7, 12);
    expect(source.openTerms).toMatchObject([{ header: 'fibre', attribute: 'fibre', text: 'qqq', count: 1 }]);
    expect(engine.gridRows(0, 1, 2).map(([id]) => id)).toEqual(['f1', 'f2']);
  });
});

describe('a record behind a point', () => {
  it('has its fragments, each with its cells and the line of the file', async () => {
    const record = await engine.record(study, 'i1');
    expect([record?.item, record?.assemblage.startsWith('Ness')]).toEqual(['i1', true]);
    expect(record?.fragments.map(({ id, source, row }) => [id, source, row])).toEqual([
      ['f1', 'finds.csv', 2],
      ['f2', 'finds.csv', 3],
    ]);
    const cell = (id: string) =>
      record?.fragments[0].cells.find(({ attribute: of }) => of === id) ?? { raw: 'no such cell' };
    expect(cell('rowSpacing')).toMatchObject({ raw: '5', readAs: '5 mm', state: 'measured', unit: 'mm' });
    expect(record?.fragments[1].line).toContainEqual({ header: 'remark', text: 'torn' });
    expect(record?.fragments[0].line.map(({ header }) => header)).not.toContain('remark');
    expect(record?.fragments[0].drawing?.title).toMatch(/twined/i);
    expect(await engine.record(study, 'nobody')).toBeNull();
  });

  it('is one fragment where fragments count', async () => {
    const record = await engine.record({ ...study, unit: 'fragment' }, 'f2');
    expect(record?.fragments.map(({ id }) => id)).toEqual(['f2']);
  });

  it.each([
    ['i2', '9 to 11 mm, about'],
    ['i5', '30 mm or more'],
    ['i6', '8 to 12 mm'],
    ['i4', ''],
  ])('%s reads "%s"', async (id, says) => {
    const { ids, labels } = await engine.labels(study, ['rowSpacing']);
    expect(labels.rowSpacing[ids.indexOf(id)]).toBe(says);
  });

  it('has labels for the plots', async () => {
    const { ids, labels } = await engine.labels(study, ['fibre', 'assemblage', 'nothing']);
    expect(ids).toEqual(['i1', 'i2', 'i3', 'i4', 'i5', 'i6']);
    expect(labels.fibre).toEqual(['sheep wool', 'sheep wool', 'sheep wool', 'flax', '', '']);
    expect(labels.assemblage.map((label) => label.split(/[ ,]/)[0])).toEqual([
      'Ness',
      'Holm',
      'Holm',
      'Ayre',
      'Ness',
      'Ness',
    ]);
    expect(labels.nothing).toEqual(['', '', '', '', '', '']);
  });
});

describe('why two records are alike', () => {
  // Item 1 stands at 5 mm, item 2 at 10, item 3 at 20; the range is 5 to 30, where ratios matter.
  const spacing = analysis({ kind: 'grouping', of: ['rowSpacing', 'fibre'], mode: 'plain' });

  it('each attribute has its distance and its share of the whole', async () => {
    const pair = await engine.pair(study, spacing, 'i1', 'i3');
    const [rows, fibre] = ['Row spacing', 'Fibre'].map((label) =>
      pair.attributes.find((one) => one.label === label),
    );
    expect(rows).toMatchObject({ block: 'spacing', left: '5 mm', right: '20 mm', share: 1 });
    expect(rows?.distance).toBeCloseTo(Math.log(4) / Math.log(6), 12);
    expect(fibre).toMatchObject({
      block: 'fibre',
      left: 'sheep wool',
      right: 'sheep wool',
      distance: 0,
      share: 0,
    });
    expect(pair.distance).toBeCloseTo(Math.log(4) / Math.log(6) / 2, 12);
    expect(pair.blocks.map(({ block }) => block)).toEqual(['all attributes']);
    expect(pair.blocks[0].share).toBeCloseTo(1, 12);
  });

  it('by blocks each block has a name and a share', async () => {
    const blocks = await engine.pair(
      study,
      analysis({ kind: 'grouping', of: ['rowSpacing', 'fibre'] }),
      'i1',
      'i3',
    );
    expect(blocks.blocks.map(({ block, share }) => [block, share])).toEqual(
      expect.arrayContaining([
        ['spacing', 1],
        ['fibre', 0],
      ]),
    );
  });

  it('nothing is shared out where nothing differs or nothing can be compared', async () => {
    const same = await engine.pair(
      study,
      analysis({ kind: 'grouping', of: ['fibre'], mode: 'plain' }),
      'i1',
      'i2',
    );
    expect([same.distance, same.attributes[0].share]).toEqual([0, null]);
    const none = await engine.pair(
      study,
      analysis({ kind: 'grouping', of: ['fibre'], mode: 'plain' }),
      'i1',
      'i5',
    );
    expect([none.distance, none.attributes[0]?.distance ?? null]).toEqual([null, null]);
  });

  it('a record goes to its nearest medoid, and to none where nothing can be compared', async () => {
    const groups = await engine.nearest(study, spacing, ['i1', 'i3']);
    expect([groups.get('i1'), groups.get('i3'), groups.get('i5')]).toEqual([0, 1, 1]);
    const fibre = await engine.nearest(study, analysis({ kind: 'grouping', of: ['fibre'] }), ['i1', 'i4']);
    expect([...fibre]).toEqual([
      ['i1', 0],
      ['i2', 0],
      ['i3', 0],
      ['i4', 1],
    ]);
  });
});

describe('what is typed for a find', () => {
  it.each([
    ['rowSpacing', 'c. 3.2 cm', '28.8 to 35.2 mm, about'],
    ['rowSpacing', '4,5', '4.5 mm'],
    ['rowSpacing', '4.5', '4.5 mm'],
    ['rowSpacing', '> 20', '20 mm or more'],
    ['rowSpacing', '8-12', '8 to 12 mm'],
    ['rowSpacing', 'n.m.', 'not observed'],
    ['structure', 'tabby', 'tabby'],
    ['rowSpacing', '  ', ''],
    ['no such attribute', '4', ''],
  ])('%s: "%s" is read as "%s"', async (id, text, said) => {
    expect(await engine.typed(study, id, text)).toMatchObject({ said, understood: true });
  });

  it.each([
    ['rowSpacing', 'about four'],
    ['structure', 'qwerty'],
  ])('%s: "%s" is not understood, with the reason', async (id, text) => {
    const reading = await engine.typed(study, id, text);
    expect(reading.understood).toBe(false);
    expect(reading.warnings.length).toBeGreaterThan(0);
  });

  it('has a drawing where its structure has one', async () => {
    expect(await engine.drawing(study, { structure: 'open twining' })).toMatchObject({
      title: expect.stringMatching(/twining/i),
      svg: expect.stringMatching(/^<svg/),
    });
    expect(await engine.drawing(study, { fibre: 'wool' })).toBeNull();
  });
});

describe('rules of types as they are written', () => {
  const rules = JSON.stringify({
    title: 'Fine and coarse',
    types: [
      { id: 'fine', label: 'Fine', when: { attribute: 'rowSpacing', below: 9 } },
      { id: 'coarse', label: 'Coarse', when: { attribute: 'rowSpacing', atLeast: 9 } },
    ],
  });

  it('say of each type how many it fits, how many it does not, and of how many it cannot say', async () => {
    const view = await engine.types(study, rules, 'types.json');
    // 5 mm is fine; 9 to 11, 20 and more than 30 are coarse; 8 to 12 may be either; one has no reading.
    expect(
      view.types.map(({ label, fits, out, cannotSay, taken }) => [label, fits, out, cannotSay, taken]),
    ).toEqual([
      ['Fine', 1, 3, 2, 1],
      ['Coarse', 3, 1, 2, 3],
    ]);
    expect([view.fault, view.records, view.none, view.several, view.undecided]).toEqual([null, 6, 0, 0, 2]);
    expect(view.cuts).toEqual([
      { attribute: 'rowSpacing', label: 'Row spacing', unit: 'mm', cuts: [9], least: 5, most: 30 },
    ]);
  });

  it('that cannot be read say why, and nothing else', async () => {
    const view = await engine.types(study, '{"title": 1', 'types.json');
    expect(view.fault).toContain('types.json');
    expect([view.records, view.types, view.cuts]).toEqual([0, [], []]);
  });
});

describe('files that are brought', () => {
  it('a study is opened, another file is none, a broken study is refused with the reason', () => {
    expect(engine.studyFile(JSON.stringify(study), 'study.json')).toMatchObject({
      study: { title: 'Small' },
      fault: null,
    });
    expect(engine.studyFile('{"rules": []}', 'x.json')).toEqual({ study: null, fault: null });
    const broken = engine.studyFile('{"title": "x", "sources": [{"fil": 1}]}', 'x.json');
    expect(broken.study).toBeNull();
    expect(broken.fault).toContain('x.json');
  });

  it('one that cannot be read is said first under every answer, and nothing is taken away', async () => {
    const other = createEngine();
    other.keepFiles(
      new Map([
        ['finds.csv', bytes(TABLE)],
        ['empty.csv', new Uint8Array()],
      ]),
      [],
    );
    const both = { ...study, sources: [{ file: 'finds.csv' }, { file: 'empty.csv' }] } as typeof study;
    const summary = analysis({ kind: 'summary', of: ['rowSpacing'], resamples: 0 });
    const { words } = await other.run(both, summary, () => {});
    expect(words.unless[0]).toEqual({
      what: 'empty.csv could not be read',
      size: 'not part of this',
      overturns: false,
    });
    await expect(other.results(both, () => {})).rejects.toThrow('empty.csv');
    const whole = await other.run(study, summary, () => {});
    expect(whole.words.unless.map(({ what }) => what)).not.toContain('empty.csv could not be read');
  });

  it('finds of a table are placed one after the other', async () => {
    const placement = analysis({ kind: 'placement', of: ['rowSpacing', 'fibre'], calibration: 20, draws: 5 });
    const file = { name: 'new.csv', bytes: bytes('id,row spacing (mm),fibre\nA,5,wool\nB,20,flax\n') };
    const told: string[] = [];
    const placed = await engine.placeFinds(study, placement, file, (_, what) => told.push(what));
    expect(placed.finds.map(({ name, given }) => [name, given.fibre])).toEqual([
      ['A', 'wool'],
      ['B', 'flax'],
    ]);
    expect(placed.table.rows).toHaveLength(2);
    expect(told).toEqual(['placing A', 'placing B']);
  });
});
