/**
 * An interval that leaves out its own estimate contradicts itself, and one without width claims a certainty that no
 * sample gives: over every analysis that gives limits, on small, tied, gappy and lopsided tables.
 */
import { describe, expect, it } from 'vitest';
import type { AnalysisInput, ResultTable, TableCell } from '../../src/analyses/contract.ts';
import { ANALYSES, type Answered } from '../../src/analyses/register.ts';
import { collapseItems } from '../../src/fragments/items.ts';
import { exp } from '../../src/numerics/foundation/elementary.ts';
import { createRandom, type Random } from '../../src/numerics/foundation/random.ts';
import { attribute, madeInput } from './grouping/made-table.ts';

/** Limits stand by these names beside what they are limits of; `low` and `high` alone beside the column named here. */
const PLAIN: Readonly<Record<string, string>> = {
  'summary made': 'share',
  'summary kindsAtLevel': 'share',
  'contrast tests': 'epsilonSquared',
  'crosstab tests': 'statistic',
  'similarity pairs': 'likeness',
  'standing likeness': 'likeness',
  'standing sameWithin': 'likeness',
  'typology splits': 'threshold',
};

interface Faulty {
  readonly limits: number;
  readonly faults: readonly string[];
}

function faultsOf(kind: string, name: string, table: ResultTable): Faulty {
  const at = (id: string) => table.columns.findIndex((column) => column.id === id);
  const own = PLAIN[`${kind} ${name}`];
  const triples = [
    ...(own === undefined ? [] : [{ of: own, low: 'low', high: 'high' }]),
    ...table.columns.flatMap(({ id }) =>
      // Of a summary's numbers these are bounds that ranges leave, not limits of a sample.
      id.endsWith('Low') && `${kind} ${name}` !== 'summary numbers'
        ? [{ of: id.slice(0, -3), low: id, high: `${id.slice(0, -3)}High` }]
        : [],
    ),
  ].filter((triple) => Object.values(triple).every((id) => at(id) >= 0));
  let limits = 0;
  const faults = table.rows.flatMap((row) =>
    triples.flatMap(({ of, low, high }) => {
      const number = (id: string): TableCell => row[at(id)];
      const [estimate, least, most] = [number(of), number(low), number(high)];
      if (typeof estimate !== 'number' || typeof least !== 'number' || typeof most !== 'number') return [];
      limits++;
      const slack = 1e-9 * (1 + Math.abs(estimate));
      const says = `${kind} ${name} ${of}: ${estimate} in ${least} to ${most}`;
      return [
        ...(least > estimate + slack || estimate > most + slack ? [`leaves itself out: ${says}`] : []),
        ...(most - least <= slack ? [`has no width: ${says}`] : []),
      ];
    }),
  );
  return { limits, faults };
}

/** Ways in which the numbers of two to four sites may be spread. */
const SPREADS: Readonly<Record<string, (random: Random, site: number) => number | null>> = {
  even: (random) => random.next(),
  'rounded to few values': (random) => 1 + random.integer(3),
  'all equal': () => 4,
  'wholly apart': (random, site) => 1 + 10 * site + random.next(),
  lognormal: (random) => exp(3 * random.next() + 2 * random.next()),
  'mostly gaps': (random) => (random.next() < 0.7 ? null : 1 + random.next()),
  'all equal but one': (random) => (random.next() < 0.1 ? 9 : 4),
};

function tableOf(random: Random, spread: string, unit: 'fragment' | 'item'): AnalysisInput {
  const sites = 2 + random.integer(3);
  const rows = Array.from({ length: sites }, (_, site) =>
    Array.from({ length: 2 + random.integer(14) }, (__, item) =>
      Array.from({ length: 1 + (unit === 'item' ? random.integer(3) : 0) }, () => ({
        site: `s${site}`,
        item: `s${site} i${item}`,
        size: SPREADS[spread](random, site),
        kind: spread === 'all equal' ? 'a' : spread === 'wholly apart' ? `k${site}` : `k${random.integer(3)}`,
      })),
    ).flat(),
  ).flat();
  const input = madeInput(
    [
      { attribute: attribute('site', 'context', 'nominal'), values: rows.map(({ site }) => site) },
      {
        attribute: attribute('size', 'spacing', 'ratio', { unit: 'mm' }),
        values: rows.map(({ size }) => size),
      },
      { attribute: attribute('kind', 'structure', 'nominal'), values: rows.map(({ kind }) => kind) },
    ],
    { items: rows.map(({ item }) => item), unit, seed: random.integer(1000) },
  );
  return unit === 'fragment'
    ? input
    : { ...input, records: collapseItems(input.fragments, input.register).table };
}

const QUICK = { resamples: 199, relabellings: 99 };
const ASKED: readonly { readonly kind: string; readonly options: Readonly<Record<string, unknown>> }[] = [
  { kind: 'summary', options: { of: ['size', 'kind'], by: ['site'] } },
  { kind: 'contrast', options: { of: ['size'], by: 'site', ...QUICK } },
  { kind: 'crosstab', options: { rows: 'site', columns: 'kind', ...QUICK } },
  { kind: 'similarity', options: { assemblages: 'site', of: 'kind', resamples: 199 } },
];

describe.each(Object.keys(SPREADS))('limits of numbers that are %s', (spread) => {
  it.each(ASKED)('hold their own estimate and have a width: $kind', ({ kind, options }) => {
    let limits = 0;
    const faults: string[] = [];
    for (let table = 0; table < 12; table++) {
      const unit = table % 2 === 0 ? 'fragment' : 'item';
      const random = createRandom(40 + table).stream(spread);
      let found: Answered | undefined;
      try {
        found = ANALYSES.find((one) => one.kind === kind)?.run(tableOf(random, spread, unit), options);
      } catch (fault) {
        // A table too poor to be asked at all says so in a sentence.
        expect(fault).toHaveProperty('message');
        continue;
      }
      for (const [name, one] of Object.entries(found?.tables ?? {})) {
        const seen = faultsOf(kind, name, one);
        limits += seen.limits;
        faults.push(...seen.faults);
      }
    }
    expect([...new Set(faults)]).toEqual([]);
    if (spread === 'even') expect(limits).toBeGreaterThanOrEqual(10);
  });
});
