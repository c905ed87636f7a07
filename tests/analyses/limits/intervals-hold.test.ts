/**
 * An interval that leaves out its own estimate contradicts itself, and one without width claims a certainty that no
 * sample gives: over every analysis and every table of its answers, on small, tied, gappy and lopsided tables.
 */
import { describe, expect, it } from 'vitest';
import { ANALYSES, type Answered } from '../../../src/analyses/register.ts';
import { InputError } from '../../../src/errors.ts';
import { createRandom } from '../../../src/numerics/foundation/random.ts';
import { LONG } from '../../long.ts';
import { faultsOf } from './limits-of.ts';
import { SPREADS, spreadTable } from './spread-tables.ts';

const QUICK = { resamples: 199, relabellings: 99 };
/** One question to each analysis; and of how many tables, since some take long. */
const ASKED: Readonly<Record<string, { readonly tables: number; readonly options: object }>> = {
  summary: { tables: 12, options: { of: ['size', 'kind'], by: ['site'] } },
  contrast: { tables: 12, options: { of: ['size'], by: 'site', ...QUICK } },
  crosstab: { tables: 12, options: { rows: 'site', columns: 'kind', ...QUICK } },
  similarity: { tables: 12, options: { assemblages: 'site', of: 'kind', resamples: 199 } },
  grouping: { tables: 2, options: { of: ['size', 'kind'], resamples: 0, permutations: 19 } },
  ordination: { tables: 4, options: { method: 'pcoa', of: ['size', 'width', 'kind'] } },
  typology: {
    tables: 3,
    options: { rules: 'types.json', of: ['width', 'kind'], resamples: 99, relabellings: 99 },
  },
  placement: {
    tables: 6,
    options: { of: ['size', 'width', 'kind'], find: { size: '4-5', kind: 'k0' }, labels: ['site'] },
  },
  standing: { tables: 8, options: { site: 's0', of: 'kind', attributes: ['size', 'kind'], ...QUICK } },
  chronology: { tables: 6, options: { of: 'kind', draws: 19, relabellings: 99 } },
  threadcount: { tables: 8, options: { x: 'size', y: 'width', by: 'site', draws: 9 } },
  map: { tables: 4, options: { places: ['east', 'north'], of: 'kind', deals: 99 } },
  claims: { tables: 2, options: { file: 'claims.csv' } },
};
/** Analyses that give no ends of anything: they still say so of every table. */
const NONE = new Set(['grouping', 'ordination', 'map', 'claims']);

it('asks every analysis that there is', () => {
  expect(Object.keys(ASKED).sort()).toEqual(ANALYSES.map(({ kind }) => kind).sort());
});

describe.each(ANALYSES.map(({ kind }) => kind))('ends in the tables of %s', (kind) => {
  const { tables, options } = ASKED[kind];
  it('hold their own values, and have a width where they are limits', () => {
    let ends = 0;
    let answers = 0;
    const faults = new Set<string>();
    for (const spread of Object.keys(SPREADS))
      for (let table = 0; table < (LONG ? tables : Math.ceil(tables / 3)); table++) {
        const random = createRandom(40 + table).stream(spread);
        const input = spreadTable(random, spread, table % 2 === 0 ? 'fragment' : 'item');
        let found: Answered | undefined;
        try {
          found = ANALYSES.find((one) => one.kind === kind)?.run(input, options);
        } catch (fault) {
          // A table too poor to be asked at all says so in a sentence.
          expect(fault).toBeInstanceOf(InputError);
          continue;
        }
        answers++;
        for (const [name, one] of Object.entries(found?.tables ?? {})) {
          const seen = faultsOf(kind, name, one);
          ends += seen.ends;
          for (const fault of seen.faults) faults.add(`${spread}: ${fault}`);
        }
      }
    expect([...faults]).toEqual([]);
    expect(answers).toBeGreaterThanOrEqual(Object.keys(SPREADS).length / 2);
    if (!NONE.has(kind)) expect(ends).toBeGreaterThanOrEqual(kind === 'typology' ? 1 : 5);
  });
});
