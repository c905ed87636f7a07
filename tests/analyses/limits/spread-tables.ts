import type { AnalysisInput } from '../../../src/analyses/contract.ts';
import { collapseItems } from '../../../src/fragments/items/items.ts';
import { exp } from '../../../src/numerics/foundation/elementary.ts';
import type { Random } from '../../../src/numerics/foundation/random.ts';
import { attribute, type MadeColumn, madeInput } from '../grouping/made-table.ts';

type Spread = (random: Random, site: number) => number | null;

/** Ways in which the numbers of two to four sites may be spread: even, tied, gappy, lopsided, apart. */
export const SPREADS: Readonly<Record<string, Spread>> = {
  even: (random) => random.next(),
  'rounded to few values': (random) => 1 + random.integer(3),
  'all equal': () => 4,
  'wholly apart': (random, site) => 1 + 10 * site + random.next(),
  lognormal: (random) => exp(3 * random.next() + 2 * random.next()),
  'mostly gaps': (random) => (random.next() < 0.7 ? null : 1 + random.next()),
  'all equal but one': (random) => (random.next() < 0.1 ? 9 : 4),
  'two heaps': (random) => (random.next() < 0.5 ? 3 : 9) + random.next() + random.next(),
};

const RULES = {
  title: 'Small and large',
  types: [
    { id: 'small', label: 'Small', when: { attribute: 'size', below: 4.5 } },
    { id: 'large', label: 'Large', when: { attribute: 'size', atLeast: 4.5 } },
  ],
};

const CLAIMS = `id,quantity,step,attribute,select,versus,counted,printed
c1,count,,,site in s0,,,5
c2,mean,,size,site in s0,,,4.5
c3,median,,size,site in s1,,,4
c4,share,,kind,kind in k0,,,33 %`;

const bytes = (text: string) => new TextEncoder().encode(text);
const FILES = new Map([
  ['types.json', bytes(JSON.stringify(RULES))],
  ['claims.csv', bytes(CLAIMS)],
]);

/** Sites of 2 to 15 items, of one fragment or of up to three; all that the analyses ask for is recorded. */
export function spreadTable(random: Random, spread: string, unit: 'fragment' | 'item'): AnalysisInput {
  const sites = 2 + random.integer(3);
  const rows = Array.from({ length: sites }, (_, site) =>
    Array.from({ length: 2 + random.integer(14) }, (__, item) =>
      Array.from({ length: 1 + (unit === 'item' ? random.integer(3) : 0) }, () => {
        const size = SPREADS[spread](random, site);
        return {
          site: `s${site}`,
          item: `s${site} i${item}`,
          size,
          width: size === null ? null : size * (0.5 + random.next()),
          kind:
            spread === 'all equal' ? 'a' : spread === 'wholly apart' ? `k${site}` : `k${random.integer(3)}`,
          kept: `kept ${random.integer(2)}`,
          date: size === null ? null : Math.round(100 * size) - 400,
          east: 10 * site + random.next(),
          north: 5 * site * site + random.next(),
        };
      }),
    ).flat(),
  ).flat();
  type Row = (typeof rows)[number];
  const column = (
    id: keyof Row,
    ...more: [MadeColumn['attribute']['block'], MadeColumn['attribute']['scale']]
  ) => ({
    attribute: attribute(id === 'kept' ? 'preservation' : id, ...more),
    values: rows.map((row) => row[id]),
  });
  const input = madeInput(
    [
      column('site', 'context', 'nominal'),
      column('kept', 'context', 'nominal'),
      column('size', 'spacing', 'ratio'),
      column('width', 'spacing', 'ratio'),
      column('kind', 'structure', 'nominal'),
      column('date', 'context', 'interval'),
      column('east', 'context', 'interval'),
      column('north', 'context', 'interval'),
    ],
    { items: rows.map(({ item }) => item), unit, seed: random.integer(1000) },
  );
  const whole = { ...input, files: FILES };
  return unit === 'fragment'
    ? whole
    : { ...whole, records: collapseItems(whole.fragments, whole.register).table };
}
