import { exp } from '../../numerics/foundation/elementary.ts';
import type { ResultTable, TableCell } from '../contract.ts';
import { printLevel } from '../phrasing.ts';
import { col, effectCells } from './cells.ts';
import type { ContrastFound, JudgedPair } from './found.ts';

/** Every pair of groups of every attribute: p, effects, likeness, and what could have been missed. */
export function pairsTable({
  attributes,
  options,
}: Pick<ContrastFound, 'attributes' | 'options'>): ResultTable {
  const lines = attributes.flatMap((contrast) => contrast.pairs.map((pair) => ({ contrast, pair })));
  return {
    title: 'Pairs',
    columns: [
      col('attribute', 'attribute'),
      col('first', 'first'),
      col('second', 'second'),
      col('firstItems', 'items, first'),
      col('secondItems', 'items, second'),
      col('statistic', 'Dunn z'),
      col('p', 'p'),
      col('pAdjusted', 'p adjusted'),
      col('told', 'verdict'),
      col('method', 'p from'),
      col('delta', 'Cliff’s delta'),
      col('deltaLow', 'delta at least'),
      col('deltaHigh', 'delta at most'),
      col('shift', 'shift (Hodges-Lehmann)'),
      col('shiftLow', 'shift at least'),
      col('shiftHigh', 'shift at most'),
      col('ratio', 'ratio of medians'),
      col('ratioLow', 'ratio at least'),
      col('ratioHigh', 'ratio at most'),
      col('meanRatio', 'ratio of geometric means'),
      col('meanRatioLow', 'that ratio at least'),
      col('meanRatioHigh', 'that ratio at most'),
      col('alikeP', 'p, unlike beyond the margin'),
      col('alikePAdjusted', 'that p adjusted'),
      col('alike', 'alike within the margin'),
      col('detectableDelta', 'smallest detectable delta'),
      col('detectable', 'smallest detectable shift or factor'),
    ],
    rows: lines.map(({ contrast, pair }): TableCell[] => {
      const { tested, attribute } = contrast.samples;
      const { equivalence } = pair;
      const why = 'why' in equivalence ? { why: equivalence.why } : null;
      const ratios =
        'why' in equivalence
          ? [why, why, why]
          : [equivalence.difference, equivalence.low, equivalence.high].map(exp);
      return [
        attribute.label,
        tested[pair.first].label,
        tested[pair.second].label,
        tested[pair.first].points.count,
        tested[pair.second].points.count,
        pair.z,
        pair.p,
        pair.pAdjusted,
        pair.told,
        pair.method,
        ...effectCells(pair.delta),
        ...effectCells(pair.shift),
        ...effectCells(pair.ratio),
        ...ratios,
        'why' in equivalence ? why : equivalence.p,
        pair.alikePAdjusted,
        LIKENESS[pair.alike],
        pair.detectableDelta,
        pair.detectable,
      ];
    }),
    briefly: [
      'attribute',
      'first',
      'second',
      'p',
      'pAdjusted',
      'delta',
      'deltaLow',
      'deltaHigh',
      'alikePAdjusted',
      'detectableDelta',
    ],
    note:
      `Effects are first against second: positive, or above 1, where the first is larger; limits at ${printLevel(options.confidence)} by drawing items again (BCa), those of the delta of groups wholly apart by a score interval (Newcombe 2006), those of a shift between few by inverting the exact test. ` +
      `Alike: two one-sided Welch tests on logarithms, one median an item, within a factor of ${Number((1 + options.within).toPrecision(6))}; their limits are at ${printLevel(2 * options.confidence - 1)}. ` +
      `Smallest detectable: found with ${printLevel(options.power)} chance, alpha shared among the pairs of an attribute (Noether 1987); as a shift in the unit, or a factor where ratios matter, for normal values with the spread at hand. ` +
      `p adjusted over all pairs (${options.adjust}).`,
  };
}

const LIKENESS: Readonly<Record<JudgedPair['alike'], string>> = {
  'told apart': 'shown',
  'not told apart': 'not shown',
  'cannot be told': 'cannot be told',
};
