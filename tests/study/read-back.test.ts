import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { dataPackage } from '../../src/report/data-package.ts';
import { checkStudy, loadStudy, studyFiles } from '../../src/study/load.ts';
import { prepareStudy } from '../../src/study/prepare.ts';
import { analyse } from '../../src/study/run-study.ts';

const DEMO = new URL('../../datasets/demo/', import.meta.url);
const bytes = (text: string) => new TextEncoder().encode(text);

/** The demo with questions that take little time: what is compared is how the table comes back. */
const QUICK = ['summary', 'crosstab', 'similarity', 'ordination', 'contrast'];
const written = JSON.parse(readFileSync(new URL('study.json', DEMO), 'utf8')) as {
  brief?: unknown;
  analyses: { kind: string }[];
};
delete written.brief;
written.analyses = written.analyses.filter(({ kind }) => QUICK.includes(kind));

function packaged(study: ReturnType<typeof checkStudy>, files: ReadonlyMap<string, Uint8Array>) {
  const prepared = prepareStudy(study, files);
  const texts = dataPackage(prepared);
  const again = loadStudy(texts.get('fragments.study.json') ?? '', 'fragments.study.json');
  const brought = new Map([...texts].map(([name, text]) => [name, bytes(text)]));
  return { prepared, texts, again, brought };
}

describe('a data package', () => {
  const study = checkStudy(written, 'study.json');
  const files = new Map(
    studyFiles(study).map((name) => [name, new Uint8Array(readFileSync(new URL(name, DEMO)))]),
  );
  const { prepared, texts, again, brought } = packaged(study, files);
  const back = prepareStudy(again, brought);

  it('reads back with the same results byte for byte', () => {
    const once = analyse(prepared, files).analyses;
    const twice = analyse(back, brought).analyses;
    expect(Object.keys(twice).length).toBeGreaterThan(4);
    for (const [id, result] of Object.entries(twice))
      expect(JSON.stringify(result), id).toBe(JSON.stringify(once[id]));
  });

  it('keeps where each row came from, and what each source tells apart', () => {
    expect(back.fragments.sources).toEqual(prepared.fragments.sources);
    expect(back.fragments.origin).toEqual(prepared.fragments.origin);
    expect(back.fragments.tells).toEqual(prepared.fragments.tells);
    expect(prepared.fragments.tells?.some((ids) => ids.length > 0)).toBe(true);
    expect(back.fragments.item).toEqual(prepared.fragments.item);
  });

  it('is written again as it was', () => {
    const once = texts.get('fragments.csv')?.split('\r\n') ?? [];
    const twice = dataPackage(back).get('fragments.csv')?.split('\r\n') ?? [];
    const sorted = (header: string) => header.split(',').sort();
    expect(sorted(twice[0])).toEqual(sorted(once[0]));
    expect(twice.length).toBe(once.length);
  });

  it('leaves out questions whose rules lie in files of their own', () => {
    const asked = { ...written, analyses: [{ id: 'figures', kind: 'claims', file: 'claims.csv' }] };
    const { again: left } = packaged(
      checkStudy(asked, 'study.json'),
      new Map([...files, ['claims.csv', new Uint8Array(readFileSync(new URL('claims.csv', DEMO)))]]),
    );
    expect(left.analyses).toEqual([]);
  });

  it('keeps certainty, state, step and text of small and open readings', () => {
    const text = 'Find no.,Row spacing (mm),Structure\nA1,c. 3.0-4.25,tabby ?\nA2,>20,-\nA3,"34; 36",n/a\n';
    const small = checkStudy({ title: 'Small', sources: [{ file: 'a.csv' }], analyses: [] }, 'study.json');
    const first = packaged(small, new Map([['a.csv', bytes(text)]]));
    const second = prepareStudy(first.again, first.brought);
    for (const id of ['rowSpacing', 'structure'])
      expect(second.fragments.columns.get(id), id).toEqual(first.prepared.fragments.columns.get(id));
  });

  it('refuses a profile that would read its columns otherwise, unless it is to be read like any table', () => {
    const profile = { columns: [{ header: 'fragment', attribute: 'item' }] };
    const named = { ...again, sources: [{ file: 'fragments.csv', profile: 'p.json' }] };
    const given = (value: object) => new Map([...brought, ['p.json', bytes(JSON.stringify(value))]]);
    expect(() => prepareStudy(named, given(profile))).toThrow(
      /taken as it stands.*"columns".*"normalised": false/,
    );
    const plain = prepareStudy(named, given({ normalised: false }));
    expect(plain.fragments.sources).toEqual(['fragments.csv']);
  });
});
