import { strFromU8, Unzip, UnzipInflate } from 'fflate';
import { describe, expect, it } from 'vitest';
import { archive } from '../../src/app/archive.ts';
import { EMPTY_WORKSPACE, type StudyDocument } from '../../src/app/state/workspace.ts';

/** Entry by entry, as `unzipSync` would lose the names that objects keep for themselves. */
function entriesOf(bytes: Uint8Array): [name: string, text: string][] {
  const found: [string, string][] = [];
  const reader = new Unzip((file) => {
    let text = '';
    file.ondata = (fault, chunk, final) => {
      if (fault !== null) throw fault;
      text += strFromU8(chunk);
      if (final) found.push([file.name, text]);
    };
    file.start();
  });
  reader.register(UnzipInflate);
  reader.push(bytes, true);
  return found;
}

const bytes = (text: string) => new TextEncoder().encode(text);

function packed(files: readonly string[], written: readonly string[] = []) {
  const study: StudyDocument = {
    ...EMPTY_WORKSPACE.study,
    sources: files.map((file) => ({ file })),
    analyses: [{ id: 'types', kind: 'typology', rules: files[0]! }],
  };
  const entries = entriesOf(
    archive(
      { study, files: new Map(files.map((name, at) => [name, bytes(`file ${at}`)])) },
      new Map(written.map((name) => [name, 'written'])),
    ),
  );
  const names = entries.map(([name]) => name);
  return { entries: new Map(entries), names, study: JSON.parse(entries[0]![1]) as StudyDocument };
}

describe('a study saved as one archive', () => {
  it('leaves plain names as they are', () => {
    const { names, study } = packed(['a.csv', 'tables/b.csv', 'Früh Ä.csv'], ['results.json']);
    expect(names).toEqual(['study.json', 'a.csv', 'tables/b.csv', 'Früh Ä.csv', 'out/results.json']);
    expect(study.sources.map(({ file }) => file)).toEqual(['a.csv', 'tables/b.csv', 'Früh Ä.csv']);
  });

  it.each([
    ['../a.csv', 'a.csv'],
    ['../../../etc/passwd', 'etc/passwd'],
    ['/etc/passwd', 'etc/passwd'],
    ['C:\\finds\\a.csv', 'finds/a.csv'],
    ['..\\a.csv', 'a.csv'],
    ['a/../../b.csv', 'a/b.csv'],
    ['....//a.csv', 'a.csv'],
    ['..', 'file'],
    ['con.csv', '_con.csv'],
    ['a\u0000b.csv', 'a_b.csv'],
    ['a.csv:hidden', 'a.csv_hidden'],
    ['gnp.\u202evsc.exe', 'gnp._vsc.exe'],
    ['finds.csv. ', 'finds.csv_'],
    ['\ufeff/a.csv', '_/a.csv'],
    ['a\ud800.csv', 'a_.csv'],
  ])('keeps %s inside the folder, and the study finds it', (name, safe) => {
    const { entries, study } = packed([name]);
    expect([...entries.keys()]).toEqual(['study.json', safe]);
    expect(study.sources[0]!.file).toBe(safe);
    expect(study.analyses[0]).toMatchObject({ rules: safe });
    expect(entries.get(safe)).toBe('file 0');
  });

  it('keeps files under names that objects have for themselves', () => {
    const { entries } = packed(['__proto__', 'constructor', 'toString'], ['__proto__']);
    expect([...entries.keys()]).toEqual([
      'study.json',
      '__proto__',
      'constructor',
      'toString',
      'out/__proto__',
    ]);
    expect(entries.get('__proto__')).toBe('file 0');
  });

  it('gives no two files one name, whether capitals count or not', () => {
    const { names, entries, study } = packed(
      ['study.json', 'A.csv', 'a.csv', '../a.csv', 'out/results.json', 'Out/Results.json'],
      ['results.json'],
    );
    expect(new Set(names.map((name) => name.toLowerCase())).size).toBe(names.length);
    expect(entries.get('out/results.json')).toBe('written');
    expect(study.sources.map(({ file }) => entries.get(file))).toEqual(
      [0, 1, 2, 3, 4, 5].map((at) => `file ${at}`),
    );
    expect(study.sources[1]!.file).toBe('A.csv');
  });

  it('shortens a name that no disk takes, and keeps its ending', () => {
    const { names, study } = packed([`${'ä'.repeat(400)}.csv`]);
    expect(new TextEncoder().encode(names[1]).length).toBeLessThanOrEqual(200);
    expect(names[1]).toMatch(/^ä+\.csv$/);
    expect(study.sources[0]!.file).toBe(names[1]);
  });

  it('is the same bytes for the same study', () => {
    const workspace = { ...EMPTY_WORKSPACE, files: new Map([['a.csv', bytes('a,b\n1,2\n')]]) };
    expect(archive(workspace, new Map())).toEqual(archive(workspace, new Map()));
  });
});
