import { describe, expect, it } from 'vitest';
import { ANALYSES, type RegisteredAnalysis } from '../../src/analyses/register.ts';
import { checkStudy } from '../../src/study/load.ts';
import type { Results } from '../../src/study/results/results.ts';
import { runStudy } from '../../src/study/run-study.ts';
import { LONG } from '../long.ts';
import { legalValues, type Material } from '../study/legal-options.ts';
import { faultsOfAnswer } from './answer-rules.ts';
import { linesSaid } from './lines-said.ts';

/**
 * Every analysis at every legal value of every option, on tables that are poor or odd: it gives results that can be
 * written and an answer in form, or says why it cannot. The values are read from the schemas, so that a new option is
 * tried on the day it is made. The quick run tries each value on one table in turn, the long run on two.
 */

const HEADS = 'id,item,site,structure,row spacing (mm),warp density (per cm),fibre,period,easting,northing';
type Cells = readonly (string | number)[];

/** @param line what a fragment says after its id and item: site to period. */
function table(count: number, line: (i: number) => Cells, item = (i: number) => `i${i}`): string {
  const lines = Array.from({ length: count }, (_, i) =>
    [`f${i}`, item(i), ...line(i), 10 + i, 20 - i].join(','),
  );
  return [HEADS, ...lines].join('\n');
}

const site = (i: number) => (i % 2 ? 'Ness' : 'Holm');
const structure = (i: number) => ['tabby', 'twined', '2/2 twill'][i % 3];

const TABLES: Readonly<Record<string, string>> = {
  ordinary: table(24, (i) => [
    site(i),
    structure(i),
    2 + (i % 7),
    4 + (i % 5),
    i % 3 ? 'wool' : 'flax',
    i % 5 ? 'Early' : 'Late',
  ]),
  'one record': table(1, () => ['Ness', 'tabby', 3, 4, 'wool', 'Early']),
  'two records, one site': table(2, (i) => ['Ness', structure(i), 3 + i, 4, 'wool', 'Early']),
  'all gaps': table(8, (i) => [site(i), '', '', '', '', '']),
  constant: table(12, () => ['Ness', 'tabby', 3, 4, 'wool', 'Early']),
  'noughts alone': table(12, (i) => [site(i), structure(i), 0, 0, 'wool', 'Early']),
  'wholly apart': table(12, (i) => [
    site(i),
    i % 2 ? 'tabby' : 'twined',
    i % 2 ? 3 : 9,
    i % 2 ? 4 : 2,
    i % 2 ? 'wool' : 'flax',
    i % 2 ? 'Early' : 'Late',
  ]),
  'a site for every record': table(9, (i) => [`Place ${i}`, structure(i), 2 + i, 3, 'wool', 'Early']),
  'two items in many pieces': table(
    16,
    (i) => [site(i), structure(i), 2 + (i % 4), 4, 'wool', 'Early'],
    (i) => site(i),
  ),
  'ranges and doubts': table(14, (i) => [
    site(i),
    `${structure(i)}${i % 2 ? '?' : ''}`,
    i % 3 ? `${i + 1}-${i + 9}` : '<5',
    '> 4',
    'c. wool',
    i % 4 ? 'Early?' : 'n.r.',
  ]),
};

const MATERIAL: Material = {
  attributes: ['rowSpacing', 'density1', 'structure', 'fibre'],
  groupings: ['site', 'structure', 'period', 'assemblage', 'fibre'],
  files: ['types.json'],
  terms: ['Ness', 'tabby', 'woven'],
};

const RULES = {
  title: 'Fine and coarse',
  types: [
    { id: 'fine', label: 'Fine', when: { attribute: 'rowSpacing', below: 4 } },
    { id: 'coarse', label: 'Coarse', when: { attribute: 'rowSpacing', atLeast: 4 } },
  ],
};

/** What a kind cannot do without, and few draws where there are any. */
const LEAST: Readonly<Record<string, Readonly<Record<string, unknown>>>> = {
  summary: { of: ['rowSpacing', 'structure'], by: ['site'], resamples: 19 },
  contrast: { of: ['rowSpacing'], by: 'site', resamples: 199, relabellings: 99 },
  crosstab: { rows: 'site', columns: 'structure', resamples: 199, relabellings: 99 },
  similarity: { assemblages: 'site', of: 'structure', resamples: 199, relabellings: 99 },
  grouping: { of: ['structure', 'rowSpacing', 'fibre'], resamples: 9, permutations: 9, starts: 5 },
  ordination: { of: ['structure', 'rowSpacing', 'fibre'], resamples: 9 },
  typology: { rules: 'types.json', resamples: 19, relabellings: 99 },
  placement: { find: { structure: 'tabby', rowSpacing: 'c. 4 mm' }, calibration: 20, draws: 5 },
  standing: { site: 'Ness', resamples: 199, relabellings: 99 },
  chronology: { draws: 5, relabellings: 99 },
  threadcount: { x: 'rowSpacing', y: 'density1', draws: 5 },
  map: { places: ['rowSpacing', 'density1'], deals: 99 },
  claims: { file: 'claims.csv' },
};
const CLAIMS = 'id,printed\na,"t(18) = 2.31, p = .03"\n';

/** Columns that one kind alone asks for, so that the others read the same tables as before. */
const ALSO: Readonly<
  Record<
    string,
    {
      readonly heads: string;
      readonly attributes: readonly string[];
      readonly line: (i: number, name: string) => Cells;
    }
  >
> = {
  chronology: {
    heads: 'phase,date',
    attributes: ['date', 'rowSpacing'],
    line: (i, name) => {
      const phase = i % 3 ? 'First' : 'Second';
      if (name === 'all gaps') return ['', ''];
      if (name === 'constant') return [phase, '300 BC'];
      if (name === 'wholly apart') return i % 2 ? ['First', '400-350 BC'] : ['Second', 'AD 20-60'];
      if (name === 'ranges and doubts')
        return [phase, ['before 200 BC', '', 'c. 90 BC', '50 BC - AD 10'][i % 4]];
      return [phase, i % 3 ? `${400 + i}-${300 - i} BC` : `${310 - 9 * i}-${210 - 4 * i} BC`];
    },
  },
};

function withAlso(kind: string, name: string): string {
  const also = ALSO[kind];
  if (also === undefined) return TABLES[name];
  const [heads, ...lines] = TABLES[name].split('\n');
  return [`${heads},${also.heads}`, ...lines.map((line, i) => [line, ...also.line(i, name)].join(','))].join(
    '\n',
  );
}

const bytes = (text: string) => new TextEncoder().encode(text);

interface Tried {
  /** What is wrong with what the analyses gave; empty when nothing is. */
  readonly faults: readonly string[];
  readonly results: Results['analyses'];
}

function tryOn(text: string, analyses: readonly object[]): Tried {
  const document = {
    title: 'Every option',
    witness: { is: 'column' },
    sources: [{ file: 'finds.csv' }],
    analyses,
  };
  const files = new Map([
    ['finds.csv', bytes(text)],
    ['types.json', bytes(JSON.stringify(RULES))],
    ['claims.csv', bytes(CLAIMS)],
  ]);
  const faults: string[] = [];
  const results = runStudy(checkStudy(document, 'study.json'), files, {
    onFault: (id, fault) => faults.push(`${id}: ${fault instanceof Error ? fault.stack : String(fault)}`),
  });
  // A refusal quotes what was asked, ids and all, as long as it must be.
  for (const [id, { words, why }] of Object.entries(results.analyses))
    if (why === undefined) faults.push(...faultsOfAnswer(words).map((fault) => `${id}: ${fault}`));
    else if (!/^Could not be computed: .+\.$/s.test(words.answer)) faults.push(`${id}: ${words.answer}`);
  return { faults, results: results.analyses };
}

/** The entries that try each value of each option once. */
function entriesOf(analysis: RegisteredAnalysis): { id: string }[] {
  const { kind } = analysis;
  const values = legalValues(analysis, {
    ...MATERIAL,
    attributes: ALSO[kind]?.attributes ?? MATERIAL.attributes,
  });
  return values.map(([option, value], at) => ({
    id: `${kind}-${at}-${option}`,
    kind,
    ...LEAST[kind],
    [option]: value,
  }));
}

const NAMES = Object.keys(TABLES);

/** The tests of one kind of analysis, for `tests/analyses/<kind>/options.test.ts`; the snapshot lies beside that file. */
export function everyOption(kind: string): void {
  const analysis = ANALYSES.find((known) => known.kind === kind);
  if (analysis === undefined) throw new Error(`there is no analysis of kind "${kind}"`);
  describe(`${kind} at every option`, () => {
    const entries = entriesOf(analysis);
    const said = new Map<string, readonly string[]>();

    it('has values to try for every option', () => {
      const tried = new Set(entries.flatMap((entry) => Object.keys(entry)));
      expect(Object.keys(analysis.options.shape).filter((option) => !tried.has(option))).toEqual([]);
      expect(LEAST[kind]).toBeDefined();
    });

    it.each(NAMES)('answers on %s, or says why it cannot', { timeout: 300_000 }, (name) => {
      const at = NAMES.indexOf(name);
      const turns = LONG ? [0, 5] : [0];
      const mine = entries.filter((_, i) => turns.includes((i + at) % NAMES.length));
      const { faults, results } = tryOn(withAlso(kind, name), mine);
      expect(faults).toEqual([]);
      entries.forEach(({ id }, i) => {
        if ((i + at) % NAMES.length === 0) said.set(`${name}, ${id}`, linesSaid(results[id]));
      });
    });

    it('says what was read and kept, and heads its tables and figures so', async () => {
      // Each line once, under the first question that it answers.
      const before = new Set<string>();
      const kept = [...said].flatMap(([question, lines]) => {
        const fresh = lines.filter((line) => !before.has(line));
        for (const line of fresh) before.add(line);
        return fresh.length === 0 ? [] : [`# ${question}`, ...fresh, ''];
      });
      await expect(kept.join('\n')).toMatchFileSnapshot('./snapshots/options.txt');
    });
  });
}
