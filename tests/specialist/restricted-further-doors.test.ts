import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { strFromU8, unzipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { archive } from '../../src/app/archive.ts';
import { viewStudy } from '../../src/app/engine/study-view.ts';
import { addressOf, readAddress, withAsks } from '../../src/app/state/address.ts';
import { EMPTY_WORKSPACE, type StudyAnalysis, type StudyDocument } from '../../src/app/state/workspace.ts';
import { toFrame } from '../../src/frames/index.ts';
import { runFiles } from '../../src/report/run-files.ts';
import { readParquet } from '../../src/sources/formats/parquet.ts';
import { writeParquet } from '../../src/sources/formats/write-parquet.ts';
import { checkStudy } from '../../src/study/load.ts';
import { prepareStudy } from '../../src/study/prepare.ts';
import { analyse } from '../../src/study/run-study.ts';
import { thrum } from '../cli/thrum.ts';

/** The doors that hand a study on: data frames of notebooks, Parquet, the letter to an author, addresses, the archive. */
const SECRETS = ['Hollin', 'North chamber', 'HC-', 'Tuppen', '3456789'];
const CSV = [
  'Cat. no.,Site,Structure,Row spacing (mm),Fibre,Context,Recorder,Longitude,Restriction',
  ...Array.from(
    { length: 8 },
    (_, i) => `OP-${i},Grebe Holm,${i % 2 === 0 ? 'twining' : 'tabby'},${20 + i},flax,Hall,Orrin,10,open`,
  ),
  ...[1, 2].map((i) => `HC-${i},Hollin Cave,twining,2${i},nettle,North chamber,Tuppen,10.3456789,withheld`),
  'HC-3,Hollin Cave,twining,26,nettle,North chamber,Tuppen,10.3456789,place withheld',
].join('\n');
const bytes = (text: string) => new TextEncoder().encode(text);
const files = new Map([['finds.csv', bytes(CSV)]]);
const TABLE = {
  id: 'table',
  kind: 'crosstab',
  rows: 'site',
  columns: 'fibre',
  relabellings: 99,
  resamples: 199,
};
const document = {
  title: 'One cave that is not named',
  witness: { is: 'row' },
  sources: [{ file: 'finds.csv' }],
  analyses: [{ id: 'counts', kind: 'summary', of: ['rowSpacing'], by: ['site'] }],
};
const prepare = (analyses: readonly object[] = document.analyses) =>
  prepareStudy(checkStudy({ ...document, analyses }, 'study.json'), files);
const prepared = prepare();
const leaks = (text: string) => SECRETS.filter((secret) => text.includes(secret));

describe('what is withheld is handed on at no further door', () => {
  it('not in the data frame of a notebook, which has what is open', async () => {
    const frame = await toFrame(prepared.fragments);
    const text = JSON.stringify([frame.columns, frame.values]);
    expect(text).toContain('Grebe Holm');
    expect(leaks(text)).toEqual([]);
  });

  it('not in Parquet, neither as its bytes nor read again', async () => {
    const written = await writeParquet(prepared.fragments);
    expect(leaks(Buffer.from(written).toString('latin1'))).toEqual([]);
    const text = JSON.stringify(await readParquet(written, 'fragments.parquet'));
    expect(text).toContain('OP-1');
    expect(leaks(text)).toEqual([]);
  });

  it('not in the letter to an author, whose figures count it', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'thrum-letter-'));
    const at = (name: string) => join(folder, name);
    writeFileSync(at('finds.csv'), CSV);
    writeFileSync(at('study.json'), JSON.stringify(document));
    writeFileSync(
      at('claims.csv'),
      'id,place,quantity,attribute,select,printed\nc1,Table 1,n,,,11\nc2,Table 1,count,fibre,fibre in nettle,3\nc3,Table 1,mean,rowSpacing,,23.3\nc4,Table 1,count,,site in Holin Cave,3\n',
    );
    const { out, err } = await thrum(
      'check',
      at('claims.csv'),
      '--study',
      at('study.json'),
      '--markdown',
      at('letter.md'),
    );
    const letter = readFileSync(at('letter.md'), 'utf8');
    expect(letter).toContain('Table 1');
    expect(leaks(out + err + letter)).toEqual([]);
  });

  it('not in an address, whatever the screen offers to ask', () => {
    const { attributes } = viewStudy(prepared, []);
    const offered = attributes.flatMap(({ definition, levels }) =>
      levels.map(({ id }) => ({ ...TABLE, rows: definition.id, supplementary: [id] })),
    );
    expect(offered.length).toBeGreaterThan(3);
    for (const ask of offered)
      expect(leaks(decodeURIComponent(addressOf('assemblages', [ask as unknown as StudyAnalysis])))).toEqual(
        [],
      );
  });

  it.each([
    ['standing', (site: string) => ({ id: 'ask', kind: 'standing', site, resamples: 199 })],
    ['map', (to: string) => ({ id: 'ask', kind: 'map', to, deals: 99 })],
  ])('an address that asks for it by name (%s) is answered as for a name that nobody has', (kind, ask) => {
    const answerTo = (name: string) => {
      const hash = addressOf(kind === 'map' ? 'region' : 'placement', [
        ask(name) as unknown as StudyAnalysis,
      ]);
      const asks = readAddress(hash, ['region', 'placement'])!.asks;
      const workspace = {
        study: { ...EMPTY_WORKSPACE.study, ...document } as unknown as StudyDocument,
        files,
      };
      const { study } = withAsks(workspace, asks);
      const of = prepare(study.analyses.filter(({ id }) => id === 'ask'));
      return JSON.stringify(analyse(of, files).analyses).replaceAll(name, 'NAME');
    };
    expect(answerTo('Hollin Cave')).toBe(answerTo('Nowhere Fell'));
  });

  it('not in the archive of a study: its tables stay where they are, and the study in it runs', () => {
    const results = analyse(prepared, files);
    const workspace = { study: { ...EMPTY_WORKSPACE.study, ...document } as unknown as StudyDocument, files };
    const written = runFiles(prepared, results, {});
    const { restricted } = viewStudy(prepared, []);
    expect(restricted).toBe(3);
    const entries = unzipSync(archive(workspace, written, restricted));
    for (const [name, content] of Object.entries(entries))
      expect(leaks(strFromU8(content)), name).toEqual([]);
    expect(Object.keys(entries)).not.toContain('finds.csv');
    expect(strFromU8(entries['left-out.txt']!)).toContain('Of 3 records the source withholds');
    const again = prepareStudy(
      checkStudy(JSON.parse(strFromU8(entries['study.json']!)), 'study.json'),
      new Map(Object.entries(entries)),
    );
    expect(again.all.rows).toBe(9);
    // Without a restriction the tables go with it, as they were.
    expect(Object.keys(unzipSync(archive(workspace, written, 0)))).toContain('finds.csv');
  });
});
