import { beforeAll, describe, expect, it } from 'vitest';
import { renderBrief } from '../../src/report/brief.ts';
import { dataPackage } from '../../src/report/data-package.ts';
import { renderReport } from '../../src/report/html.ts';
import { checkStudy } from '../../src/study/load.ts';
import { type Prepared, prepareStudy } from '../../src/study/prepare.ts';
import type { Results } from '../../src/study/results/results.ts';
import { analyse } from '../../src/study/run-study.ts';
import { VERSION } from '../../src/study/version.ts';

/**
 * The pages of a small study as a reader reads them, kept to be read again when they change: headings, captions, notes,
 * what was set aside, methods, sources. The material has a bit of everything: items in several pieces that disagree,
 * ranges, doubts, gaps, a broad term, a cell that cannot be read.
 */

const HEAD = 'id,item,site,structure,row spacing (mm),fibre,period,preservation,recorder';
const SPACINGS = [
  ['4', '5', '3-4', 'c. 6', '5,5'],
  ['12-14', '> 20', '18', '16', '15'],
  ['8', 'n.m.', '7', '', '9'],
];
const LINES = Array.from({ length: 40 }, (_, i) =>
  [
    `f${i + 1}`,
    `i${Math.floor(i / 2) + 1}`,
    ['Ness', 'Holm', 'Ayre'][Math.floor(i / 2) % 3],
    ['tabby', 'open twining', 'tabby?', '2/2 twill', 'twining', 'open twining', 'tabby'][
      Math.floor((i + 1) / 2) % 7
    ],
    SPACINGS[Math.floor(i / 2) % 3][Math.floor(i / 3) % 5],
    ['wool', 'flax', 'tree bast', ''][i % 4],
    i % 3 === 0 ? 'Late' : 'Early',
    i % 6 < 3 ? 'charred' : 'waterlogged',
    i < 20 ? 'A. Miller' : 'B. Weaver',
  ].join(','),
);
const TABLE = [HEAD, ...LINES, 'f41,i21,Ness,tabby,about four,wool,Late,charred,A. Miller'].join('\n');

const STUDY = {
  title: 'Small but mixed',
  authors: 'C. Tester',
  seed: 5,
  unit: 'item',
  witness: { is: 'column' },
  sources: [{ file: 'finds.csv' }],
  select: [{ attribute: 'period', in: ['Early', 'Late'] }],
  brief: ['differ', 'kinds'],
  analyses: [
    { id: 'there', kind: 'summary', of: ['rowSpacing', 'structure'], by: ['site'], resamples: 99 },
    { id: 'differ', kind: 'contrast', of: ['rowSpacing'], by: 'site', resamples: 199, relabellings: 199 },
    { id: 'kinds', kind: 'crosstab', rows: 'site', columns: 'structure', resamples: 199, relabellings: 199 },
    {
      id: 'alike',
      kind: 'similarity',
      assemblages: 'site',
      of: 'structure',
      resamples: 199,
      relabellings: 199,
    },
    { id: 'nothing', kind: 'contrast', of: ['density1'], by: 'site' },
  ],
};

/** What stands on a page, a line each, without its drawings. */
function readText(html: string): string {
  return html
    .replace(/<style>[\s\S]*?<\/style>/g, '')
    .replace(/<svg[\s\S]*?<\/svg>/g, '[drawing]')
    .replace(/<(?:td|th)[^>]*>/g, ' | ')
    .replace(
      /<\/?(?:p|h\d|li|ul|ol|section|tr|table|caption|figcaption|figure|details|summary|div|header|main|dt|dd|nav|body|title)\b[^>]*>/g,
      '\n',
    )
    .replace(/<[^>]+>/g, '')
    .replace(/&lt;/g, '<')
    .replace(/&gt;/g, '>')
    .replace(/&quot;/g, '"')
    .replace(/&#39;/g, "'")
    .replace(/&amp;/g, '&')
    .replaceAll(VERSION, 'VERSION')
    .replace(/\b[0-9a-f]{64}\b/g, 'HASH')
    .split('\n')
    .map((line) => line.replace(/\s+/g, ' ').trim())
    .filter((line) => line !== '' && line !== '|')
    .join('\n');
}

describe('the pages of a small study', () => {
  let prepared: Prepared;
  let results: Results;
  beforeAll(() => {
    const files = new Map([['finds.csv', new TextEncoder().encode(TABLE)]]);
    prepared = prepareStudy(checkStudy(STUDY, 'study.json'), files);
    results = analyse(prepared, files);
  }, 120_000);

  it('the report reads as it was read and kept', async () => {
    const text = readText(renderReport({ prepared, results, parts: {} }));
    expect(text).toContain('Could not be computed: ');
    await expect(`${text}\n`).toMatchFileSnapshot('./snapshots/report.txt');
  });

  it('the brief reads as it was read and kept', async () => {
    await expect(`${readText(renderBrief({ prepared, results, parts: {} }))}\n`).toMatchFileSnapshot(
      './snapshots/brief.txt',
    );
  });

  it('the ledger and the description of the tables read as they were read and kept', async () => {
    const files = dataPackage(prepared, results);
    const kept = ['ledger.csv', 'datapackage.json'].map((name) => `[${name}]\n${files.get(name) ?? ''}`);
    // Sizes and hashes of the other files move with every word in them.
    const text = kept
      .join('\n')
      .replaceAll(VERSION, 'VERSION')
      .replace(/"bytes": \d+/g, '"bytes": N')
      .replace(/\b[0-9a-f]{64}\b/g, 'HASH');
    await expect(text).toMatchFileSnapshot('./snapshots/package.txt');
  });
});
