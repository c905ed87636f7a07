import { describe, expect, it } from 'vitest';
import { recordView } from '../../src/app/engine/record-view.ts';
import { viewStudy } from '../../src/app/engine/study-view.ts';
import { renderBrief } from '../../src/report/brief.ts';
import { dataPackage } from '../../src/report/data-package.ts';
import { renderReport } from '../../src/report/html.ts';
import { checkStudy } from '../../src/study/load.ts';
import { prepareStudy } from '../../src/study/prepare.ts';
import { serializeResults } from '../../src/study/results/json.ts';
import { analyse } from '../../src/study/run-study.ts';

/** Names that only restricted records have; none may be met behind any door. */
const SECRETS = [
  'Hollin Cave',
  'Sedge Hollow',
  'HC-',
  'SH-',
  'Grave 7',
  'Tuppen',
  '53.1234',
  '8.7654',
  '53.4321',
];

const HEAD =
  'Cat. no.,Item,Site,Region,Context,Structure,Row spacing (mm),Density 1 (per cm),Fibre,Latitude,Longitude,Recorder,Restriction,Remarks';
const open = (n: number, site: string, at: string, spacing: (i: number) => number) =>
  Array.from(
    { length: n },
    (_, i) =>
      `${site.slice(0, 2)}${i},${site.slice(0, 2)}i${i},${site},North,Pit ${i},${i % 2 === 0 ? 'twining' : 'tabby'},${spacing(i)},${2 + (i % 4)},flax,${at},Orrin,open,`,
  );
const ROWS = [
  ...open(8, 'Grebe Holm', '50.1,7.1', (i) => 20 + i),
  ...open(8, 'Otter Ness', '50.9,7.9', (i) => 30 + i),
  'HC-1,HC-i1,Hollin Cave,South,Grave 7,twining,25,3,flax,53.1234,8.7654,Tuppen,withheld,seen at Hollin Cave',
  'HC-2,HC-i2,Hollin Cave,South,Grave 7,twinning,26,3?,flaks,53.1234,8.7654,Tuppen,ask the elders first,near Sedge Hollow',
  'SH-1,SH-i1,Sedge Hollow,North,Grave 7,twining,24,3,flax,53.4321,8.7654,Tuppen,place withheld (to 0.5 degree),from Sedge Hollow',
];
const bytes = (text: string) => new TextEncoder().encode(text);
const files = new Map([['finds.csv', bytes(`${HEAD}\n${ROWS.join('\n')}\n`)]]);
const study = checkStudy(
  {
    title: 'Two sites and what is withheld',
    sources: [{ file: 'finds.csv' }],
    analyses: [
      { id: 'counts', kind: 'summary', of: ['rowSpacing', 'structure'], by: ['site'] },
      { id: 'alike', kind: 'similarity', assemblages: 'site', of: 'structure' },
      { id: 'axes', kind: 'ordination', method: 'pcoa', of: ['structure', 'rowSpacing', 'fibre'] },
      { id: 'groups', kind: 'grouping', of: ['structure', 'rowSpacing', 'fibre'], k: 2 },
      { id: 'where', kind: 'placement', find: { rowSpacing: '24', structure: 'twining' }, nearest: 19 },
    ],
  },
  'study.json',
);
const prepared = prepareStudy(study, files);
const results = analyse(prepared, files);

function leaks(text: string): string[] {
  return SECRETS.filter((secret) => text.includes(secret));
}

// CARE principles: that something is withheld is shown, what it is is not.
describe('what a source withholds', () => {
  it('is counted: two withheld, one without its place; words that are not understood withhold', () => {
    expect(prepared.restriction).toEqual({ withheld: 2, placeWithheld: 1 });
    expect(prepared.all.rows).toBe(17);
    expect(results.study.n.setAside).toContainEqual({ reason: 'withheld by the source', fragments: 2 });
    expect(results.study.cautions.join(' ')).toContain('2 withheld; 1 more shown without name and place');
    for (const result of Object.values(results.analyses)) {
      expect(result.why).toBeUndefined();
      expect(result.n.setAside).toContainEqual({ reason: 'withheld by the source', fragments: 2 });
    }
  });

  it('does not appear in results, figures and maps', () => {
    expect(leaks(serializeResults(results))).toEqual([]);
    expect(serializeResults(results)).toContain('Grebe Holm');
  });

  it('is met among comparanda only under a number', () => {
    const near = JSON.stringify(results.analyses.where.tables);
    expect(leaks(near)).toEqual([]);
    expect(near).toMatch(/withheld (?:item )?1/);
  });

  it('does not appear in the report', () => {
    const html = renderReport({ prepared, results, parts: {} });
    expect(leaks(html)).toEqual([]);
    expect(html).toContain('withheld');
    expect(leaks(renderBrief({ prepared, results, parts: {} }))).toEqual([]);
  });

  it.each([...dataPackage(prepared, results)])('does not appear in %s of the data package', (_name, text) => {
    expect(leaks(text)).toEqual([]);
  });

  it('does not appear in the ledger or among duplicates, faults and lists of names', () => {
    expect(leaks(JSON.stringify([prepared.ledger, prepared.duplicates, prepared.faults]))).toEqual([]);
    const site = prepared.all.columns.get('site');
    expect(site?.kind === 'term' ? site.levels : null).toEqual(['Grebe Holm', 'Otter Ness']);
  });

  it('does not appear behind a point of the workbench, nor in what its screens list', () => {
    const id = prepared.records.id.find((name) => name.startsWith('withheld')) ?? '';
    const record = recordView(prepared, id);
    expect(record?.fragments).toHaveLength(1);
    expect(leaks(JSON.stringify(record))).toEqual([]);
    expect(leaks(JSON.stringify(viewStudy(prepared, [])))).toEqual([]);
  });

  it('coordinates are as coarse as the source says: 53.4321 to half a degree is 53 to 53.5', () => {
    const latitude = prepared.all.columns.get('latitude');
    const row = prepared.all.id.findIndex((name) => name.startsWith('withheld'));
    expect(latitude?.kind === 'numeric' ? [latitude.low[row], latitude.high[row]] : null).toEqual([53, 53.5]);
  });

  it('a profile may withhold a whole table', () => {
    const whole = prepareStudy(
      { ...study, sources: [{ file: 'finds.csv', profile: 'p.json' }] },
      new Map([
        ...files,
        [
          'p.json',
          bytes(
            '{"columns":[{"header":"Restriction","ignore":true}],"constants":{"restriction":"withheld"}}',
          ),
        ],
      ]),
    );
    expect(whole.all.rows).toBe(0);
    expect(whole.restriction.withheld).toBe(19);
  });
});
