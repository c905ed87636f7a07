import { describe, expect, it } from 'vitest';
import { ANALYSES } from '../../src/analyses/register.ts';
import { inputOf } from '../../src/study/analysis-input.ts';
import { checkStudy } from '../../src/study/load.ts';
import { prepareStudy } from '../../src/study/prepare.ts';

/** Sixty finds of two places and two kinds, with enough recorded for each of these questions. */
const rows = Array.from({ length: 60 }, (_, at) => {
  const open = at % 2 === 0;
  const spacing = (open ? 18 : 4) + ((at * 7) % 5) / 2;
  const fibre = at % 3 === 0 ? 'lime bast' : 'wool';
  return `f${at},${at % 4 < 2 ? 'Ness' : 'Holm'},${at % 5 < 2 ? 'tabby' : 'open twining'},${spacing},${(at % 6) + 3},${fibre}`;
});
const rules = JSON.stringify({
  title: 'Open and close',
  types: [
    { id: 'close', label: 'Close', when: { attribute: 'rowSpacing', below: 10 } },
    { id: 'open', label: 'Open', when: { attribute: 'rowSpacing', atLeast: 10 } },
  ],
});
const files = new Map(
  Object.entries({
    'finds.csv': `id,site,structure,row spacing (mm),warp density (per cm),fibre\n${rows.join('\n')}\n`,
    'rules.json': rules,
  }).map(([name, text]) => [name, new TextEncoder().encode(text)]),
);
const prepared = prepareStudy(
  checkStudy({ title: 't', sources: [{ file: 'finds.csv' }], analyses: [] }, 'study.json'),
  files,
);

const few = { resamples: 199, relabellings: 99 };
const ASKED: Readonly<Record<string, object>> = {
  summary: { of: ['rowSpacing'], by: ['site'], resamples: 49 },
  contrast: { of: ['rowSpacing'], by: 'site', ...few },
  crosstab: { rows: 'site', columns: 'structure' },
  similarity: { assemblages: 'site', of: 'structure', ...few },
  grouping: { of: ['rowSpacing', 'density1', 'fibre'], resamples: 9, permutations: 9 },
  ordination: { method: 'pcoa', of: ['rowSpacing', 'density1', 'fibre'], resamples: 9 },
  typology: { rules: 'rules.json', of: ['density1', 'fibre'], ...few },
  placement: { find: { rowSpacing: '5' }, of: ['rowSpacing', 'fibre'] },
};

describe('a question asked for its verdict alone', () => {
  it.each(Object.entries(ASKED))('%s answers as it does with all that it shows', (kind, options) => {
    const analysis = ANALYSES.find((one) => one.kind === kind);
    const ask = (alone: boolean) =>
      analysis?.run(
        inputOf(prepared, 'q', files, () => undefined, []),
        options,
        alone,
      );
    const [whole, alone] = [ask(false), ask(true)];
    expect(Object.keys(whole?.tables ?? {})).not.toEqual([]);
    expect([alone?.tables, alone?.figures]).toEqual([{}, {}]);
    expect(alone?.verdict).toEqual(whole?.verdict);
    expect(alone?.words.answer).toBe(whole?.words.answer);
    // A description is held against the first line of what it rests on.
    expect(alone?.words.because[0]).toBe(whole?.words.because[0]);
  });
});
