import { isWithin } from '../../attributes/tree.ts';
import { termAt } from '../../fragments/accessors.ts';
import { termLabel } from '../../fragments/groups.ts';
import type { TermColumn } from '../../fragments/table.ts';
import { exactShareLimits, jeffreysShareLimits } from '../../numerics/assemblages/shares.ts';
import { wilsonLimits } from '../../numerics/describing/wilson.ts';
import { signTest } from '../../numerics/tests/sign-test.ts';
import type { AnalysisInput } from '../contract.ts';
import { toldAt } from '../verdicts.ts';
import type { TermCount, TermGroup } from './found.ts';
import type { SummaryOptions } from './options.ts';

const SHARE_LIMITS = {
  wilson: wilsonLimits,
  exact: exactShareLimits,
  jeffreys: jeffreysShareLimits,
} as const;

/**
 * Counts and shares of one attribute of kinds, and which kinds are the commonest.
 *
 * @param recorded the same attribute by the words as recorded: what says less than the level of `column` is in no
 * count, but could be of any of the kinds under it.
 */
export function countKinds(
  input: AnalysisInput,
  column: TermColumn,
  recorded: TermColumn,
  rows: readonly number[],
  options: SummaryOptions,
): Pick<TermGroup, 'counted' | 'n' | 'leading' | 'tie' | 'couldLead'> {
  const tally = new Map<string, number>();
  const leftOut = new Map<string, number>();
  for (const row of rows) {
    const term = termAt(column, row);
    if (term !== null) tally.set(term, (tally.get(term) ?? 0) + 1);
    const own = term === null ? termAt(recorded, row) : null;
    if (own !== null) leftOut.set(own, (leftOut.get(own) ?? 0) + 1);
  }
  const n = [...tally.values()].reduce((total, count) => total + count, 0);
  const order = new Map([...column.levels, 'absent'].map((level, place) => [level, place]));
  const broader = broaderThan(input, column, [...tally.keys(), ...leftOut.keys()]);
  const named = [...leftOut.values()].reduce((total, count) => total + count, n);
  const counted = [...tally]
    .sort(([a], [b]) => (order.get(a) ?? 0) - (order.get(b) ?? 0))
    .map(([term, count]): TermCount => {
      const couldBe = broader(term).reduce(
        (sum, broad) => sum + (tally.get(broad) ?? 0) + (leftOut.get(broad) ?? 0),
        0,
      );
      return {
        term: termLabel(column.attribute, term, input.register),
        count,
        share: count / n,
        limits: SHARE_LIMITS[options.limits](count, n, options.confidence),
        couldBe,
        bounds: { low: count / named, high: (count + couldBe) / named },
      };
    });
  const most = counted.reduce((best, { count }) => Math.max(best, count), 0);
  const leads = ({ count }: TermCount) =>
    count === most || toldAt(signTest(count, count + most), options.confidence) === 'not told apart';
  const leading = [...counted].filter(leads).sort((a, b) => b.count - a.count);
  return {
    counted,
    n,
    leading: leading.map(({ term }) => term),
    tie: leading.every(({ count }) => count === most),
    couldLead: counted.filter((one) => !leads(one) && one.count + one.couldBe > most).map(({ term }) => term),
  };
}

/** The terms present that are broader than a term: what they count may be of it. */
function broaderThan({ register }: AnalysisInput, column: TermColumn, present: readonly string[]) {
  const name = column.attribute.vocabulary;
  const vocabulary = name === undefined ? undefined : register.vocabularies.get(name);
  return (term: string): readonly string[] =>
    vocabulary === undefined
      ? []
      : [...new Set(present)].filter((other) => other !== term && isWithin(vocabulary, term, other));
}
