import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { posix } from 'node:path';
import { describe, expect, it } from 'vitest';
import { checkProfile } from '../../src/sources/profile/profile.ts';
import { checkStudy } from '../../src/study/load.ts';
import { study } from '../../src/study/schema.ts';
import { thrum } from '../cli/thrum.ts';

const read = (path: string) => readFileSync(new URL(`../../${path}`, import.meta.url), 'utf8');
const exists = (path: string) => existsSync(new URL(`../../${path}`, import.meta.url));

const FILES = ['src', 'tests', 'docs', 'datasets'].flatMap((folder) =>
  readdirSync(new URL(`../../${folder}/`, import.meta.url), { recursive: true, encoding: 'utf8' }).map(
    (file) => `${folder}/${file}`,
  ),
);

describe('docs/file-formats.md', () => {
  const examples = [...read('docs/file-formats.md').matchAll(/```json\n([\s\S]*?)```/g)].map(
    ([, json]) => json,
  );

  it('shows a study and a profile that Thrum accepts', () => {
    expect(examples.length).toBeGreaterThanOrEqual(3);
    expect(() => checkStudy(JSON.parse(examples[0]), 'example')).not.toThrow();
    expect(() => checkProfile(JSON.parse(examples[1]), 'example')).not.toThrow();
  });

  it('names every part of a study', () => {
    const parts = Object.keys(study.shape).filter((part) => part !== '$schema');
    const named = new Set(
      [...read('docs/file-formats.md').matchAll(/^\| (`[^|]*) \|/gm)].flatMap(([, cell]) =>
        cell.match(/\w+/g),
      ),
    );
    expect(parts.length).toBeGreaterThan(15);
    expect(parts.filter((part) => !named.has(part))).toEqual([]);
  });
});

describe('docs/workbench.md', () => {
  // What stands on a button or at a field, without quotation marks of either form and line ends.
  const plain = (text: string) => text.replace(/\s+/g, ' ').replaceAll('’', "'");
  const sources = plain(
    readdirSync(new URL('../../src/', import.meta.url), { recursive: true, encoding: 'utf8' })
      .filter((file) => /\.tsx?$/.test(file))
      .map((file) => read(`src/${file}`))
      .join('\n'),
  );

  it('names what can be pressed and chosen by the words that stand there', () => {
    const page = read('docs/workbench.md').replaceAll(/`[^`]*`/g, '');
    const named = [...page.matchAll(/(?<!\*)\*([^*]{3,60})\*(?!\*)/g)].map(([, words]) => plain(words));
    expect(named.length).toBeGreaterThan(20);
    // "Placed is:" and "a whole site" are a label and one of its choices; what is meant is filled in.
    const parted = named.flatMap((words) => words.replace(/^(It means) .*$/, '$1').split(/(?<=:) /));
    expect(parted.filter((words) => !sources.includes(words))).toEqual([]);
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
    const files = [...text.matchAll(/((?:[a-z-]+\/)+[a-z-]+\.ts)\b/g)].map(([, file]) => file);
    const absent = files.filter(
      (file) => !exists(`src/${file}`) && !exists(`tests/${file}`) && !exists(file),
    );
    expect(absent).toEqual([]);
  });
});

describe('docs/cli.md', () => {
  const text = read('docs/cli.md');
  const section = (verb: string) =>
    text.split(/^## /m).find((part) => part.startsWith(`thrum ${verb} `)) ?? '';
  // What holds for every verb is said once; the options of `check` stand where printed figures are explained.
  const everywhere = ['--help', '--json', '--allow-outside', '--trace'];

  it.each(['read', 'run', 'place', 'check', 'open'])('names every option of thrum %s', async (verb) => {
    const { out } = await thrum(verb, '--help');
    const options = [...out.matchAll(/^ +(?:-\w, )?(--[a-z-]+)/gm)].map(([, option]) => option);
    expect(options.length).toBeGreaterThan(1);
    const said = verb === 'check' ? section(verb) + read('docs/printed-figures.md') : section(verb);
    const named = new Set(said.match(/--[a-z][a-z-]*/g));
    expect(options.filter((option) => !named.has(option) && !everywhere.includes(option))).toEqual([]);
  });
});

describe('docs/methods', () => {
  const rows = readdirSync(new URL('../../docs/methods/', import.meta.url)).flatMap((page) => {
    // The lines of a table below a head that ends with "checked in".
    const tables = read(`docs/methods/${page}`).matchAll(/^\|.*\| checked in \|\n((?:\|.*\n)+)/gm);
    return [...tables].flatMap(([, lines]) =>
      lines.split('\n').map((line) => ({ page, cell: line.split('|').at(-2) ?? '' })),
    );
  });

  it('name tests and references that exist where they say what is checked', () => {
    const names = rows.flatMap(({ page, cell }) =>
      [...cell.matchAll(/`([a-z/-]+)`/g)].map(([, name]) => ({ page, name })),
    );
    expect(names.length).toBeGreaterThan(25);
    const absent = names.filter(
      ({ name }) =>
        !FILES.some((file) => file.endsWith(`/${name}.test.ts`) || file.endsWith(`/${name}.json`)),
    );
    expect(absent).toEqual([]);
  });
});

const PAGES = [
  'README.md',
  'DEVELOPERS.md',
  'SECURITY.md',
  'datasets/demo/README.md',
  'datasets/open/README.md',
  ...readdirSync(new URL('../../docs/', import.meta.url), { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.md'))
    .map((file) => `docs/${file}`),
];

/** The anchor that a heading gets where Markdown is rendered. */
const anchorOf = (heading: string) =>
  heading
    .toLowerCase()
    .replace(/[^\p{L}\p{N} _-]/gu, '')
    .replaceAll(' ', '-');

describe.each(PAGES)('%s', (page) => {
  const text = read(page);

  it('links to files and headings that exist', () => {
    const links = [...text.matchAll(/\]\((?!https?:)([^)\s]+)\)/g)].map(([, link]) => link);
    const dead = links.filter((link) => {
      const [file, anchor] = link.split('#');
      const target = file === '' ? page : posix.join(posix.dirname(page), file);
      if (!exists(target)) return true;
      if (anchor === undefined) return false;
      return ![...read(target).matchAll(/^#+ (.*)$/gm)].some(([, heading]) => anchorOf(heading) === anchor);
    });
    expect(dead).toEqual([]);
  });

  it('names paths of the repository that exist', () => {
    const paths = [
      ...text.matchAll(/`((?:src|tests|docs|datasets|notebooks)\/[\w./-]*)`/g),
      ...text.matchAll(/\bnpx tsx ([\w./-]+\.ts)/g),
    ].map(([, path]) => path);
    // A file of the package that the open data come from, named as it is there.
    const elsewhere = ['src/data/iris.json'];
    expect(paths.filter((path) => !exists(path) && !elsewhere.includes(path))).toEqual([]);
  });

  it.skipIf(page === 'docs/changelog.md')('names files, by their own name alone too, that exist', () => {
    const named = [...text.matchAll(/`((?:[\w.-]+\/)*[\w.-]+\.(?:tsx?|R|py))`/g)].map(([, name]) => name);
    expect(named.filter((name) => !FILES.some((file) => file === name || file.endsWith(`/${name}`)))).toEqual(
      [],
    );
  });

  it('names scripts of package.json that exist', () => {
    const { scripts } = JSON.parse(read('package.json')) as { scripts: Record<string, string> };
    const named = [...text.matchAll(/\bnpm run (?:--silent )?([a-z][\w:-]*)/g)].map(([, name]) => name);
    expect(named.filter((name) => !(name in scripts))).toEqual([]);
  });

  it('names verbs and options of the command line that exist', async () => {
    const lines = [...text.matchAll(/\bthrum (read|run|place|check|open)\b([^`\n#]*)/g)];
    for (const [line, verb, rest] of lines) {
      const { out } = await thrum(verb, '--help');
      for (const [option] of rest.matchAll(/--[a-z][a-z-]*/g)) expect(out, line).toContain(option);
    }
  });
});

describe('the version', () => {
  it('is the same in the code and in package.json', async () => {
    const { VERSION } = await import('../../src/study/version.ts');
    expect((JSON.parse(read('package.json')) as { version: string }).version).toBe(VERSION);
  });
});
