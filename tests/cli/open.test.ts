import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { servedFiles } from '../../src/cli/verbs/open.ts';
import { freshFolder, ROOT } from './thrum.ts';

const folder = freshFolder();
const put = (name: string, text: string) => {
  writeFileSync(join(folder, name), text);
  return join(folder, name);
};

describe('what "thrum open" hands to the workbench', () => {
  it('is nothing where nothing is named, and a study with all that it names', async () => {
    expect(await servedFiles([])).toBeNull();
    const served = await servedFiles([join(ROOT, 'datasets/demo/study.json')]);
    expect([...(served?.files.keys() ?? [])]).toContain('pellunar-wreck.csv');
  });

  it('is a new study of the tables that are named, with the profiles beside them', async () => {
    const first = put('finds.csv', 'No;Site\n1;A\n');
    put('finds.profile.json', '{"columns":[]}');
    const second = put('more.TSV', 'No\tSite\n2\tB\n');
    const served = await servedFiles([first, second]);
    expect(JSON.parse(served?.text ?? '')).toEqual({
      title: 'Untitled study',
      sources: [{ file: 'finds.csv', profile: 'finds.profile.json' }, { file: 'more.TSV' }],
      analyses: [],
    });
    expect([...(served?.files.keys() ?? [])]).toEqual(['finds.csv', 'finds.profile.json', 'more.TSV']);
  });

  it('is refused in one sentence where it cannot be one study', async () => {
    const table = put('finds.csv', 'No;Site\n1;A\n');
    const study = put('study.json', '{}');
    await expect(servedFiles([table, study])).rejects.toThrow(
      `${study}: only tables can be opened together; name one study file, or tables as CSV, TSV or XLSX.`,
    );
    mkdirSync(join(folder, 'b'));
    const namesake = put('b/finds.csv', 'No;Site\n2;B\n');
    await expect(servedFiles([table, namesake])).rejects.toThrow('finds.csv: two tables have this name');
    await expect(servedFiles([join(folder, 'none.csv')])).rejects.toThrow('there is no such file');
  });
});
