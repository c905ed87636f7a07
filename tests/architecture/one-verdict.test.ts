import { describe, expect, it } from 'vitest';
import { ANALYSES } from '../../src/analyses/register.ts';
import { sourceFiles } from './source-files.ts';

/**
 * A verdict is made once, in compute.ts, and a default stands once, in options.ts. What shows an answer (its tables,
 * figures and words, the terminal, the screens, the report) compares nothing with a level and holds no default.
 */
const SHOWS =
  /^(?:cli|app|report)\/|^analyses\/[^/]+\/(?:.*\/)?(?:words|tables|figures|.*-(?:words|tables?|figures?))\.ts$/;

const LEVEL = String.raw`(?:[\w.]*\b(?:p|pAdjusted|pValue|alpha|level|noneLevel|confidence|significance)\b)`;
const LITERAL = String.raw`0?\.\d+\b`;

const FORBIDDEN: readonly (readonly [name: string, pattern: RegExp])[] = [
  ['a p or a level compared', new RegExp(String.raw`\b${LEVEL}\s(?:<=?|>=?)\s[\w.(]`, 'g')],
  [
    'compared with a p or a level',
    new RegExp(String.raw`[\w.)]\s(?:<=?|>=?)\s(?:1\s*-\s*)?${LEVEL}(?![\w(])`, 'g'),
  ],
  [
    'a level written out',
    new RegExp(String.raw`\b(?:p|pAdjusted|outcome\.p)\b[^\n;]{0,20}(?:<=?|>=?)\s*${LITERAL}`, 'g'),
  ],
  ['a default of an option', /\boptions\??\.(?!trace\b|study\b)\w+\s*\?\?\s*(?:[\d.'"[]|true|false)/g],
  ['a verdict made', /\btoldAt\(|\bverdictAt\(/g],
];

function faultsOf(path: string, text: string): string[] {
  return FORBIDDEN.flatMap(([name, pattern]) =>
    [...withoutStrings(text).matchAll(pattern)].map((match) => `${path}: ${name} (${match[0].trim()})`),
  );
}

/** What stands in quotation marks is shown, not compared. */
function withoutStrings(text: string): string {
  return text.replace(/'[^'\n]*'|"[^"\n]*"/g, "''");
}

describe('one verdict, said the same through every door', () => {
  const showing = sourceFiles().filter(({ path }) => SHOWS.test(path));

  it('what shows an answer makes no verdict and holds no default', () => {
    expect(showing.length).toBeGreaterThan(100);
    expect(showing.flatMap(({ path, text }) => faultsOf(path, text))).toEqual([]);
  });

  it('every analysis has its faces, and only its index knows compute.ts', () => {
    const files = sourceFiles();
    const present = new Set(files.map(({ path }) => path));
    const kinds = ANALYSES.map(({ kind }) => kind);
    const lacking = [...kinds].flatMap((kind) =>
      ['options', 'found', 'compute', 'tables', 'figures', 'words', 'index']
        .map((face) => `analyses/${kind}/${face}.ts`)
        .filter((face) => !present.has(face)),
    );
    expect(lacking).toEqual([]);
    const reaching = files.flatMap(({ path, imports }) =>
      imports
        .filter(
          (to) => /^analyses\/[^/]+\/compute\.ts$/.test(to) && path !== to.replace('compute.ts', 'index.ts'),
        )
        .map((to) => `${path} imports ${to}`),
    );
    expect(reaching).toEqual([]);
  });

  it('the check itself sees a level and a default where they do not belong', () => {
    for (const bad of [
      'if (p < 0.05) say();',
      'const told = outcome.p <= 1 - options.confidence;',
      'const few = judged.pAdjusted > alpha;',
      'options.level ?? 0.9',
      "options.method ?? 'wilson'",
      'toldAt(p, 0.95)',
      'if (1 - level > p) say();',
    ])
      expect(faultsOf('x', bad), bad).not.toEqual([]);
    for (const good of [
      'p: number',
      'const { level } = options;',
      '<p className="soft">',
      'a => b',
      'x < rows.length',
    ])
      expect(faultsOf('x', good), good).toEqual([]);
  });
});
