import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { checkProfile } from '../../src/sources/profile.ts';
import { checkStudy } from '../../src/study/load.ts';

const read = (path: string) => readFileSync(new URL(`../../${path}`, import.meta.url), 'utf8');
const exists = (path: string) => existsSync(new URL(`../../${path}`, import.meta.url));

describe('docs/file-formats.md', () => {
  const examples = [...read('docs/file-formats.md').matchAll(/```json\n([\s\S]*?)```/g)].map(
    ([, json]) => json,
  );

  it('shows a study and a profile that Thrum accepts', () => {
    expect(examples.length).toBeGreaterThanOrEqual(3);
    expect(() => checkStudy(JSON.parse(examples[0]), 'example')).not.toThrow();
    expect(() => checkProfile(JSON.parse(examples[1]), 'example')).not.toThrow();
  });
});

describe('docs/architecture.md', () => {
  const text = read('docs/architecture.md');
  // "study/load.ts          loadStudy": a file under src and a function in it.
  const arrows = [...text.matchAll(/([a-z-]+\/[a-z-]+\.ts)\s{1,}([a-z][A-Za-z]+|ANALYSES)\b/g)];

  it('names functions that exist in the files it names', () => {
    expect(arrows.length).toBeGreaterThan(15);
    const wrong = arrows
      .filter(([, file]) => exists(`src/${file}`))
      .filter(([, file, name]) => !new RegExp(`\\b(?:function|const) ${name}\\b`).test(read(`src/${file}`)))
      .map(([, file, name]) => `${file} has no ${name}`);
    expect(wrong).toEqual([]);
  });

  it('names files that exist', () => {
    const files = [...text.matchAll(/`?([a-z]+\/[a-z-]+\.ts)\b/g)].map(([, file]) => file);
    const absent = files.filter(
      (file) => !exists(`src/${file}`) && !exists(`tests/${file}`) && !exists(file),
    );
    expect(absent).toEqual([]);
  });
});

describe('links of the documents', () => {
  it.each(['docs/file-formats.md', 'docs/cli.md', 'docs/architecture.md'])(
    '%s leads to files that exist',
    (path) => {
      const links = [...read(path).matchAll(/\]\((?!https?:)([^)#]+)/g)].map(([, link]) => link);
      expect(links.filter((link) => !exists(`docs/${link}`))).toEqual([]);
    },
  );
});

describe('the version', () => {
  it('is the same in the code and in package.json', async () => {
    const { VERSION } = await import('../../src/study/version.ts');
    expect((JSON.parse(read('package.json')) as { version: string }).version).toBe(VERSION);
  });
});
