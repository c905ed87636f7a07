import { describe, expect, it } from 'vitest';
import { viewStudy } from '../../src/app/engine/study-view.ts';
import { renderBrief } from '../../src/report/brief.ts';
import { dataPackage } from '../../src/report/data-package.ts';
import { renderReport } from '../../src/report/html.ts';
import { checkStudy } from '../../src/study/load.ts';
import { prepareStudy } from '../../src/study/prepare.ts';
import { serializeResults } from '../../src/study/results/json.ts';
import { analyse } from '../../src/study/run-study.ts';

/**
 * As one would who looks for the place of a find that is shown without it: under heads of the study's own, in
 * coordinates that are not called so, in hover texts, groupings and tables.
 */
const SECRETS = [
  'Hollin Cave',
  'North chamber',
  'Upper ledge',
  '3456789',
  '5654321',
  '345678',
  'HC-',
  'Tuppen',
];
const HEAD =
  'Cat. no.,Site,Structure,Row spacing (mm),Fibre,Chamber,Where found,Rechtswert,Map sheet no.,Recorder,Restriction';
const ROWS = [
  ...Array.from(
    { length: 9 },
    (_, i) =>
      `OP-${i},Grebe Holm,${i % 2 === 0 ? 'twining' : 'tabby'},${20 + i},flax,Hall,Floor,3400000,${100 + i},Orrin,open`,
  ),
  ...Array.from(
    { length: 3 },
    (_, i) =>
      `HC-${i},Hollin Cave,twining,${24 + i},nettle,North chamber,Upper ledge,3456789,5654321,Tuppen,place withheld (to 50 km)`,
  ),
];
const bytes = (text: string) => new TextEncoder().encode(text);
const own = (id: string, label: string, scale: string) => ({
  id,
  label,
  block: 'find',
  scale,
  source: 'the study',
});
const study = checkStudy(
  {
    title: 'One cave that is not named',
    witness: { is: 'row' },
    attributes: [
      own('chamber', 'Chamber', 'nominal'),
      own('whereFound', 'Where found', 'text'),
      { ...own('surveyed', 'Rechtswert', 'interval'), unit: 'm' },
      own('mapSheet', 'Map sheet no.', 'interval'),
    ],
    sources: [{ file: 'finds.csv' }],
    analyses: [
      { id: 'counts', kind: 'summary', of: ['rowSpacing', 'surveyed', 'mapSheet'], by: ['chamber'] },
      { id: 'alike', kind: 'similarity', assemblages: 'chamber', of: 'structure' },
      { id: 'table', kind: 'crosstab', rows: 'chamber', columns: 'structure' },
      { id: 'axes', kind: 'ordination', method: 'pcoa', of: ['structure', 'rowSpacing', 'chamber'] },
      {
        id: 'where',
        kind: 'placement',
        find: { rowSpacing: '25', structure: 'twining' },
        labels: ['chamber'],
        nearest: 12,
      },
    ],
  },
  'study.json',
);
const files = new Map([['finds.csv', bytes(`${HEAD}\n${ROWS.join('\n')}\n`)]]);
const prepared = prepareStudy(study, files);
const results = analyse(prepared, files);
const leaks = (text: string) => SECRETS.filter((secret) => text.includes(secret));

// CARE principles: that something is withheld is shown, what it is is not.
describe('a place that is withheld comes out at no door, under whatever head it stands', () => {
  it('three are without their place, and the study goes on', () => {
    expect(prepared.restriction).toEqual({ withheld: 0, placeWithheld: 3 });
    expect(prepared.all.rows).toBe(12);
    expect(serializeResults(results)).toContain('Hall');
  });

  it('neither in results and their figures', () => {
    expect(leaks(serializeResults(results))).toEqual([]);
  });

  it('nor in the report and the brief', () => {
    expect(leaks(renderReport({ prepared, results, parts: {} }))).toEqual([]);
    expect(leaks(renderBrief({ prepared, results, parts: {} }))).toEqual([]);
  });

  it('nor in the data package', () => {
    for (const [name, text] of dataPackage(prepared, results)) expect(leaks(text), name).toEqual([]);
  });

  it('nor in what the workbench is given, and not in the ledger', () => {
    expect(leaks(JSON.stringify(viewStudy(prepared, [])))).toEqual([]);
    expect(leaks(JSON.stringify(prepared.ledger))).toEqual([]);
  });

  it('a coordinate under a German head is a cell of the grid: 3456789 m to 50 km is 3450 to 3500 km', () => {
    const east = prepared.all.columns.get('surveyed');
    const row = prepared.all.id.findIndex((id) => id.startsWith('withheld'));
    expect(east?.kind === 'numeric' ? [east.low[row], east.high[row]] : null).toEqual([3450000, 3500000]);
  });

  it('measures stay: what is withheld is the place', () => {
    const spacing = prepared.all.columns.get('rowSpacing');
    const row = prepared.all.id.findIndex((id) => id.startsWith('withheld'));
    expect(spacing?.kind === 'numeric' ? spacing.low[row] : null).toBe(24);
  });
});
