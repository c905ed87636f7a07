import { printCount, printSome } from '../analyses/phrasing.ts';
import { viewItems } from '../fragments/items/items.ts';
import { joinNear } from '../sources/names/names.ts';
import { type NearNames, spellings } from '../sources/names/near-names.ts';
import type { WhatIf } from './otherwise.ts';
import type { Material } from './prepare.ts';

/**
 * The material as a question is asked of it: names that are likely to be spellings of one are taken as one, since two
 * spellings of one place would be compared as two places and be the most alike of all.
 */
export interface Spelled {
  readonly prepared: Material;
  /** The same kept apart, as it is written; null where nothing was taken as one that somebody could doubt. */
  readonly apart: WhatIf | null;
}

/**
 * @param used attributes that the question rests on.
 * @param named texts that its options hold, names of places among them: such a spelling is the one that stays, and two
 * that are both named are two.
 */
export function namesAsOne(prepared: Material, used: readonly string[], named: ReadonlySet<string>): Spelled {
  const pairs = nearPairs(prepared, used).filter(
    ({ sure, names }) => sure !== 'doubtful' && !names.every((name) => named.has(name)),
  );
  if (pairs.length === 0) return { prepared, apart: null };
  const kept = pairs.map((pair) => keeping(pair, named));
  const likely = kept.filter(({ sure }) => sure === 'likely');
  const [first] = likely;
  return {
    prepared: joined(prepared, kept),
    apart:
      first === undefined
        ? null
        : {
            what: `Kept apart, as they are written: ${listed(likely)}`,
            open: 'which names are one',
            onlyIf: [
              `, if ${first.names[1]} and ${first.names[0]} are one name${likely.length > 1 ? ` (as ${printCount(likely.length - 1, 'more pair')})` : ''}`,
              `, with ${printCount(likely.length, 'pair')} of near names taken as one`,
              ', near names as one',
            ],
            hangsOn: '',
            next: whether(likely),
            calls: spellings(kept),
            prepared: () =>
              joined(
                prepared,
                kept.filter(({ sure }) => sure === 'certain'),
              ),
          },
  };
}

/** Names that may differ by a slip of the pen, tried as one. */
export function slipsAsOne(
  prepared: Material,
  used: readonly string[],
  named: ReadonlySet<string>,
): WhatIf | null {
  const pairs = nearPairs(prepared, used).filter(({ sure }) => sure === 'doubtful');
  const [first] = pairs;
  if (first === undefined) return null;
  const [a, b] = first.names;
  return {
    what: `Taken as one: ${listed(pairs)}`,
    open: 'which names are one',
    hangsOn: `Cannot be told yet: ${a} and ${b} may be one name${pairs.length > 1 ? `, as ${printCount(pairs.length - 1, 'more pair')} may` : ''}, and taken as one the answer differs.`,
    next: whether(pairs),
    prepared: () =>
      joined(
        prepared,
        pairs.map((pair) => keeping(pair, named)),
      ),
  };
}

function nearPairs({ nearNames }: Material, used: readonly string[]): readonly NearNames[] {
  const asked = new Set(used.flatMap((id) => (id === 'assemblage' ? ['site', 'phase'] : [id])));
  return nearNames.filter(({ attribute }) => asked.has(attribute));
}

/** The spelling that the question names stays. */
const keeping = (pair: NearNames, named: ReadonlySet<string>): NearNames =>
  named.has(pair.names[1]) ? { ...pair, names: [pair.names[1], pair.names[0]] } : pair;

const listed = (pairs: readonly NearNames[]) =>
  printSome(
    pairs.map(({ names: [a, b] }) => `${a} and ${b}`),
    3,
  );
const whether = (pairs: readonly NearNames[]) =>
  `Say of ${listed(pairs)} whether they are one ("names" in the study, or on Sources).`;

function joined(prepared: Material, pairs: readonly NearNames[]): Material {
  if (pairs.length === 0) return prepared;
  const fragments = joinNear(prepared.fragments, pairs);
  const records = prepared.unit === 'item' ? viewItems(fragments, prepared.register) : fragments;
  return { ...prepared, fragments, records };
}
