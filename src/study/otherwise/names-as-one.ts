import { printCount, printSome } from '../../analyses/phrasing.ts';
import { joinNear } from '../../sources/names/names.ts';
import { type NearNames, spellings } from '../../sources/names/near-names.ts';
import type { Material } from '../prepare.ts';
import { withFragments } from '../with-fragments.ts';
import { compoundsLeftOut } from './names-of-several.ts';
import type { WhatIf } from './otherwise.ts';

/**
 * The material as a question is asked of it: names that are likely to be spellings of one are taken as one, since two
 * spellings of one place would be compared as two places and be the most alike of all; and a name made up of others is no
 * further place.
 */
export interface Spelled {
  readonly prepared: Material;
  /** The same kept apart, as it is written, and with what names of several may mean; empty where nobody could doubt. */
  readonly apart: readonly WhatIf[];
}

/**
 * @param used attributes that the question rests on.
 * @param named texts that its options hold, names of places among them: such a spelling is the one that stays, and two
 * that are both named are two.
 */
export function namesAsOne(given: Material, used: readonly string[], named: ReadonlySet<string>): Spelled {
  const several = compoundsLeftOut(given, asked(used), named);
  const { prepared } = several;
  const pairs = nearPairs(prepared, used).filter(
    ({ sure, names }) => sure !== 'doubtful' && !names.every((name) => named.has(name)),
  );
  if (pairs.length === 0) return several;
  const kept = pairs.map((pair) => keeping(pair, named));
  const likely = kept.filter(({ sure }) => sure === 'likely');
  const [first] = likely;
  const asOne = (material: Material, names: readonly NearNames[]) =>
    withFragments(material, joinNear(material.fragments, names));
  return {
    prepared: asOne(prepared, kept),
    apart: [
      ...(first === undefined
        ? []
        : [
            {
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
                asOne(
                  prepared,
                  kept.filter(({ sure }) => sure === 'certain'),
                ),
            },
          ]),
      ...several.apart.map((whatIf) => ({ ...whatIf, prepared: () => asOne(whatIf.prepared(), kept) })),
    ],
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
      withFragments(
        prepared,
        joinNear(
          prepared.fragments,
          pairs.map((pair) => keeping(pair, named)),
        ),
      ),
  };
}

/** An assemblage is a site and a phase. */
const asked = (used: readonly string[]): ReadonlySet<string> =>
  new Set(used.flatMap((id) => (id === 'assemblage' ? ['site', 'phase'] : [id])));

function nearPairs({ nearNames }: Material, used: readonly string[]): readonly NearNames[] {
  const rested = asked(used);
  return nearNames.filter(({ attribute }) => rested.has(attribute));
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
