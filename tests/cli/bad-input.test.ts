import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { freshFolder, thrum } from './thrum.ts';

const folder = freshFolder();
const file = (name: string, content: string | Uint8Array) => {
  writeFileSync(join(folder, name), content);
  return join(folder, name);
};

/** Status 2 and one line on standard error that is one sentence: what, where, remedy; no stack trace. */
async function refusal(...args: readonly string[]): Promise<string> {
  const out = args[0] === 'run' && args.length > 1 ? ['--out', join(folder, 'out')] : [];
  const { status, err } = await thrum(...args, ...out);
  expect(status, err).toBe(2);
  expect(err.trimEnd().split('\n'), err).toHaveLength(1);
  expect(err, err).toMatch(/^[^;]+; [^;]+\.\n$/);
  expect(err).not.toMatch(/\bat .*:\d+:\d+|Error:/);
  return err;
}

describe('thrum read', () => {
  it('a missing file', async () => {
    expect(await refusal('read', join(folder, 'nowhere.csv'))).toContain(
      'nowhere.csv: there is no such file',
    );
  });

  it('a folder', async () => {
    mkdirSync(join(folder, 'a-folder'), { recursive: true });
    expect(await refusal('read', join(folder, 'a-folder'))).toContain('a-folder: this is a folder');
  });

  it('a binary file', async () => {
    const png = Uint8Array.from([
      0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 13, 73, 72, 68, 82,
    ]);
    expect(await refusal('read', file('picture.csv', png))).toContain('picture.csv: ');
  });

  it('an empty file', async () => {
    expect(await refusal('read', file('empty.csv', ''))).toContain('empty.csv: ');
  });

  it('a ragged row', async () => {
    const table = 'id,site,length (mm)\na,Ness,3\nb,Ness,4,5\n';
    const said = await refusal('read', file('ragged.csv', table));
    expect(said).toContain('ragged.csv, row 3, column "length (mm)"');
    expect(said).toContain('4 cells where the header has 3');
  });

  it('a duplicated header', async () => {
    const table = 'id,length (mm),length (mm)\na,1,2\n';
    const said = await refusal('read', file('twice.csv', table));
    expect(said).toContain('twice.csv, row 1, column "length (mm)": columns 2 and 3 are both headed');
  });

  it('a profile that is not JSON', async () => {
    const table = file('good.csv', 'id,site\na,Ness\n');
    const profile = file('bad.profile.json', '{\n  "columns": [\n    { "header" "id" }\n  ]\n}\n');
    expect(await refusal('read', table, '--profile', profile)).toContain('line 3, column 16: not valid JSON');
  });
});

describe('thrum run', () => {
  const study = (name: string, content: object | string) =>
    file(name, typeof content === 'string' ? content : JSON.stringify(content));
  const source = () => file('finds.csv', 'id,site,length (mm)\na,Ness,3\nb,Ness,4\n');

  it('malformed JSON', async () => {
    const said = await refusal('run', study('broken.json', '{\n  "title": "t",\n  "sources": [,]\n}\n'));
    expect(said).toContain('broken.json, line 3, column 15: not valid JSON: a value is missing before ","');
  });

  it('an unknown attribute, with near matches', async () => {
    source();
    const said = await refusal(
      'run',
      study('attribute.json', {
        title: 't',
        sources: [{ file: 'finds.csv' }],
        analyses: [{ id: 's', kind: 'summary', of: ['rowSpaceing'] }],
      }),
    );
    expect(said).toContain('attribute.json, analyses[0].of[0]: there is no attribute "rowSpaceing"');
    expect(said).toContain('"rowSpacing"');
  });

  it('an unknown kind of analysis, with near matches', async () => {
    const said = await refusal(
      'run',
      study('kind.json', {
        title: 't',
        sources: [{ file: 'finds.csv' }],
        analyses: [{ id: 's', kind: 'sumary' }],
      }),
    );
    expect(said).toContain('kind.json, analyses[0].kind: there is no analysis of kind "sumary"');
    expect(said).toContain('"summary"');
  });

  it('an unknown key, with near matches', async () => {
    const said = await refusal(
      'run',
      study('key.json', {
        title: 't',
        sources: [{ file: 'finds.csv' }],
        analyses: [{ id: 's', kind: 'summary', of: ['length'], byy: ['site'] }],
      }),
    );
    expect(said).toBe(
      `${join(folder, 'key.json')}, analyses[0]: "byy" is not known here; write "by" if that is meant.\n`,
    );
  });

  it('a source that is missing', async () => {
    const said = await refusal('run', study('missing.json', { title: 't', sources: [{ file: 'gone.csv' }] }));
    expect(said).toContain('gone.csv: there is no such file');
  });

  it('a source with a ragged row', async () => {
    file('ragged-source.csv', 'id,site,length (mm)\na,Ness,1\nb,Ness,2,x\nc,Ness,3\n');
    const said = await refusal(
      'run',
      study('ragged.json', { title: 't', sources: [{ file: 'ragged-source.csv' }] }),
    );
    expect(said).toContain('ragged-source.csv, row 3');
  });

  it('two analyses of one id', async () => {
    const entry = { id: 's', kind: 'summary', of: ['length'] };
    const said = await refusal(
      'run',
      study('double.json', { title: 't', sources: [{ file: 'finds.csv' }], analyses: [entry, entry] }),
    );
    expect(said).toContain('analyses[1]: two analyses are called "s"');
  });
});

describe('thrum run, before it computes', () => {
  const table = () => file('small.csv', 'id,site,length (mm)\na,Ness,3\nb,Ness,4\n');
  const study = () => {
    table();
    const analyses = [{ id: 's', kind: 'summary', of: ['length'] }];
    return file('small.json', JSON.stringify({ title: 't', sources: [{ file: 'small.csv' }], analyses }));
  };

  it('a table where a study is meant', async () => {
    expect(await refusal('run', table())).toContain(
      'small.csv: this is a table, and a study file (JSON) is meant; "thrum read TABLE --save-study"',
    );
  });

  it('a folder that cannot be made', async () => {
    const inTheWay = file('in-the-way', '');
    const { status, out, err } = await thrum('run', study(), '--out', join(inTheWay, 'out'));
    expect([status, out]).toEqual([2, '']);
    expect(err).toBe(
      `${join(inTheWay, 'out')}: nothing was written (a file stands where a folder is meant); choose a place that you may write to.\n`,
    );
  });

  it('a bound that is passed', async () => {
    table();
    const analyses = [{ id: 's', kind: 'summary', of: ['length'], resamples: 99_999 }];
    const said = await refusal(
      'run',
      file('bound.json', JSON.stringify({ title: 't', sources: [{ file: 'small.csv' }], analyses })),
    );
    expect(said).toContain('analyses[0].resamples: 99999 is too large; give at most 19999.');
  });
});

describe('thrum place', () => {
  const study = () => {
    file('kin.csv', 'id,site,structure\na,Ness,tabby\nb,Ness,twill\n');
    return file('kin.json', JSON.stringify({ title: 't', sources: [{ file: 'kin.csv' }] }));
  };

  it('an attribute that is given twice', async () => {
    const said = await refusal('place', study(), '--find', 'structure=tabby', '--find', 'structure=twill');
    expect(said).toContain('--find gives "structure" twice');
  });

  it('a find of which nothing is understood: answered, and refused', async () => {
    const { status, out, err } = await thrum('place', study(), '--find', 'structure=zzyx');
    expect(status).toBe(2);
    expect(out).toContain('"zzyx" is not known');
    expect(err).toMatch(/kin\.json: where the find belongs cannot be told: .*; give readings .*\.\n$/);
  });
});

describe('usage', () => {
  it('a JSON file where a table is meant', async () => {
    expect(await refusal('read', file('a.json', '{}'))).toContain(
      'this is a JSON file, and a table is meant',
    );
  });

  it('a sheet of a table that has none', async () => {
    const table = file('sheetless.csv', 'id,site\na,Ness\n');
    expect(await refusal('read', table, '--sheet', 'x')).toContain('only a workbook has sheets');
  });

  it('a port that is none', async () => {
    expect(await refusal('open', '--port', 'abc')).toContain('--port abc is no port');
  });

  it('help about a verb that is none', async () => {
    expect(await refusal('help', 'nope')).toContain('there is no such verb');
  });

  it('an unknown verb', async () => {
    expect(await refusal('raed', 'x.csv')).toContain("unknown command 'raed'");
  });

  it('an unknown option', async () => {
    expect(await refusal('read', 'x.csv', '--jsn')).toContain("unknown option '--jsn'");
  });

  it('a missing argument', async () => {
    expect(await refusal('run')).toContain("missing required argument 'study'");
  });

  it('help and version are no fault', async () => {
    expect((await thrum('--version')).out).toBe('0.7.0\n');
    const help = await thrum('read', '--help');
    expect([help.status, help.err]).toEqual([0, '']);
    expect(help.out).toContain('--accept-suggestions');
  });
});
