import { describe, expect, it } from 'vitest';
import { faultsOfAnswer } from '../answer-rules.ts';
import { readable } from '../demo-answer.ts';
import { shown } from '../shown.ts';
import { regionAnswers } from './region.ts';

const FEW = { resamples: 199, relabellings: 199 };

/** What each kind of analysis is asked here, in ways in which the demo does not ask it. */
const ASKED: Readonly<Record<string, readonly Readonly<Record<string, unknown>>[]>> = {
  summary: [
    { of: ['structure', 'density1', 'date'], by: ['region', 'phase'], resamples: 99, limits: 'exact' },
    { of: ['fibre', 'length'], by: ['site'], resamples: 0, level: 'recorded' },
  ],
  contrast: [
    { of: ['rowSpacing', 'length'], by: 'recorder', means: true, ...FEW },
    { of: ['density1', 'density2'], by: 'region', adjust: 'benjamini-hochberg', ...FEW },
    { of: ['density1'], by: 'phase', trend: true, ...FEW },
    { of: ['length'], by: 'site', ...FEW },
  ],
  crosstab: [
    { rows: 'site', columns: 'structure', ...FEW },
    { rows: 'region', columns: 'structure', level: 'recorded', ...FEW },
    { rows: 'phase', columns: 'fibre', mixtures: 'each', ...FEW },
    { rows: 'recorder', columns: 'fibre', test: 'exact', ...FEW },
  ],
  similarity: [
    { assemblages: 'site', of: 'structure', ...FEW },
    { assemblages: 'region', of: 'fibre', level: 'recorded', mixtures: 'whole', ...FEW },
    {
      assemblages: 'region',
      of: 'structure',
      supplementary: ['Moor'],
      newSites: [{ label: 'Wether Sands', counts: { tabby: 6, 'open twining': 3 } }],
      ...FEW,
    },
  ],
  grouping: [
    {
      of: ['structure', 'fibre'],
      method: 'average',
      k: 3,
      resamples: 9,
      permutations: 9,
      compareWith: 'region',
    },
    { of: ['density1', 'density2'], method: 'kmeans', resamples: 9, permutations: 9, starts: 5 },
    { of: ['rowSpacing', 'structure'], method: 'density', resamples: 9, permutations: 9 },
  ],
  ordination: [
    { method: 'ca', rows: 'site', columns: 'structure', supplementary: ['Kest', 'coiled'], resamples: 19 },
    { method: 'mca', of: ['structure', 'fibre'], by: 'region', resamples: 19 },
    {
      method: 'mixed',
      of: ['structure', 'length'],
      supplementaryAttributes: ['recovery', 'density1'],
      supplementaryRecords: [{ attribute: 'region', in: ['Moor'] }],
      gaps: 'mean',
      resamples: 19,
    },
    { method: 'pca', of: ['density1', 'density2', 'length'], by: 'recorder', resamples: 19 },
    { of: ['structure', 'fibre'], correction: 'cailliez', by: 'site', resamples: 0 },
  ],
  typology: [{ rules: 'types.json', fold: 'site', resamples: 19, relabellings: 99 }],
  placement: [
    {
      find: { structure: 'open twining', rowSpacing: '5-7 mm', fibre: 'herb bast' },
      labels: ['region', 'phase'],
      calibration: 40,
      draws: 9,
    },
    {
      find: { structure: '2/2 twill', density1: '11', density2: '9' },
      findFrom: 'a site of the study',
      findIs: 'item',
      labels: ['site', 'region'],
      calibration: 40,
      draws: 9,
    },
  ],
  standing: [
    { site: 'Kest', ...FEW },
    { site: 'Coast', among: 'region', ...FEW },
    { site: 'Quern Hollow', confineTo: ['region'], of: 'fibre', ...FEW },
  ],
  chronology: [
    { of: 'fibre', places: 'region', draws: 9, relabellings: 99 },
    { of: 'structure', slice: 50, from: -450, to: -100, draws: 9, relabellings: 99 },
  ],
  threadcount: [
    { by: 'region', find: { density1: '9', density2: '7-8' }, draws: 9 },
    { x: 'rowSpacing', y: 'length', by: 'site', scale: 'plain', contoursFrom: 30, draws: 9 },
  ],
  map: [
    { of: 'structure', coast: 'coast.json', deals: 99 },
    { of: 'fibre', to: 'Kest', group: 'recorder', deals: 99 },
    { assemblages: 'region', of: 'structure', deals: 99 },
  ],
};

describe('a region recorded by three hands', () => {
  it.each(Object.keys(ASKED))(
    'is answered by %s as it was read, in the form of every answer',
    {
      timeout: 300_000,
    },
    async (kind) => {
      const answers = regionAnswers(
        ASKED[kind].map((asked, i) => ({ id: `${kind}${i + 1}`, kind, ...asked })),
      );
      const read: string[] = [];
      for (const [id, answer] of Object.entries(answers)) {
        expect(answer.why, id).toBeUndefined();
        expect(faultsOfAnswer(answer.words), id).toEqual([]);
        read.push(`# ${id}: ${JSON.stringify(ASKED[kind][read.length])}`, readable(answer), shown(answer));
      }
      await expect(read.join('\n')).toMatchFileSnapshot(`./snapshots/${kind}.txt`);
    },
  );
});
