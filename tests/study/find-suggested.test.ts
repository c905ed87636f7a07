import { expect, it } from 'vitest';
import { checkStudy } from '../../src/study/load.ts';
import { runStudy } from '../../src/study/run-study.ts';

const TABLE = [
  'id,site,structure,fibre',
  ...Array.from(
    { length: 12 },
    (_, i) => `f${i},${i % 2 ? 'Ness' : 'Holm'},tabby,${i % 3 ? 'flax' : 'wool'}`,
  ),
].join('\n');

/** What a placement says of a find described so. */
function said(fibre: string): string {
  const study = checkStudy(
    {
      title: 'Small',
      sources: [{ file: 'finds.csv' }],
      analyses: [{ id: 'where', kind: 'placement', find: { fibre } }],
    },
    'study.json',
  );
  const files = new Map([['finds.csv', new TextEncoder().encode(TABLE)]]);
  const { answer, because } = runStudy(study, files).analyses.where.words;
  return [answer, ...because].join(' ');
}

it.each([
  ['bast', 'bast, kind not said'],
  ['lime bst', 'lime bast'],
])(
  'what %s of a find may mean is named by its label, and that can be written in its place',
  (written, meant) => {
    expect(said(written)).toContain(`it may mean "${meant}"`);
    expect(said(meant)).not.toContain('is not known');
  },
);
