import type { QuantileType } from '../../../../numerics/describing/quantile.ts';
import { printList } from '../../../phrasing.ts';
import { fitOfWays } from '../../conventions/way.ts';
import { isCorrelation, type Quantity, type TestMethod } from '../../reading/terms.ts';
import { recompute } from '../quantities.ts';
import { describe } from '../samples.ts';
import { known, rowsOf, valuesOf } from '../values.ts';
import { fits, gives, IN_UNITS, type Reason, SPREADS, type Trial } from './trial.ts';

/** Other ways to compute: a right computation of something else. */
export const METHODS: readonly Reason[] = [
  otherUnit,
  missingAsZero,
  divisorN,
  otherQuantile,
  wrongBase,
  otherSides,
  unitSlip,
  swapped,
  otherStatistic,
  otherTest,
  signTurned,
  squared,
];

function otherUnit(trial: Trial): string | null {
  if (!gives(trial, trial.otherView)) return null;
  return trial.view.unit === 'item'
    ? 'fragments counted instead of items'
    : 'items counted instead of fragments';
}

function missingAsZero(trial: Trial): string | null {
  const { quantity, counted } = trial.figure;
  // Of shares this is a matter of the base.
  if (quantity === 'share' || quantity === 'count' || counted.length > 0) return null;
  if (!gives(trial, { ...trial.view, zeros: true })) return null;
  return quantity === 'n' ? 'records without a reading counted too' : 'missing readings counted as 0';
}

function divisorN(trial: Trial): string | null {
  if (!SPREADS.has(trial.figure.quantity)) return null;
  return gives(trial, trial.view, { divisor: 'n' }) ? 'the divisor n instead of n − 1' : null;
}

const TYPES: readonly QuantileType[] = [1, 2, 3, 4, 5, 6, 8, 9];

function otherQuantile(trial: Trial): string | null {
  const { quantity } = trial.figure;
  if (quantity !== 'q1' && quantity !== 'q3' && quantity !== 'median' && quantity !== 'iqr') return null;
  const types = TYPES.filter((quantileType) => gives(trial, trial.view, { quantileType }));
  return types.length === 0
    ? null
    : `another type of quantile (${printList(types.map(String))} of Hyndman & Fan 1996, instead of 7)`;
}

function wrongBase({ figure, view }: Trial): string | null {
  if (figure.quantity !== 'share') return null;
  const count = rowsOf(view, [...figure.select, ...figure.counted]).length;
  const selected = rowsOf(view, figure.select).length;
  const bases = [
    { said: `all ${selected} selected records, those without a record of it included`, size: selected },
    { said: 'all records of the study', size: view.table.rows },
    { said: 'all records of that kind, wherever they are from', size: rowsOf(view, figure.counted).length },
    {
      said: 'all records of that kind that belong to one of the groups',
      size: rowsOf(view, [...figure.counted, ...known(figure.select)]).length,
    },
    { said: 'all records that have a record of it', size: rowsOf(view, known(figure.counted)).length },
    ...(figure.versus.length > 0
      ? [{ said: 'the records of the other group', size: rowsOf(view, figure.versus).length }]
      : []),
  ].filter(({ size }) => size > 0 && fits(figure, count / size));
  const [base] = bases;
  return base === undefined ? null : `a percentage of ${base.said}: ${count}/${base.size}`;
}

function otherSides({ figure, value }: Trial): string | null {
  if (figure.quantity !== 'p') return null;
  if (figure.sided !== 'one' && fits(figure, value / 2)) return 'a one-sided p';
  return figure.sided === 'one' && fits(figure, value * 2) ? 'a two-sided p' : null;
}

const FACTORS: readonly (readonly [by: number, said: string])[] = [
  [10, 'a unit slip: ten times too large'],
  [0.1, 'a unit slip: ten times too small'],
  [100, 'a unit slip: a hundred times too large'],
  [0.01, 'a unit slip: a hundred times too small'],
  [2.54, 'a unit slip: 2.54 times too large, inches for centimetres'],
  [1 / 2.54, 'a unit slip: 2.54 times too small, inches for centimetres'],
];

function unitSlip({ figure, value }: Trial): string | null {
  if (!IN_UNITS.has(figure.quantity)) return null;
  return FACTORS.find(([by]) => fits(figure, value * by))?.[1] ?? null;
}

/** The other group's figure, or the figure of another claim that in turn has this one's. */
function swapped({ figure, view, value, peers }: Trial): string | null {
  if (figure.versus.length > 0) {
    const turned = { ...figure, select: figure.versus, versus: figure.select };
    const found = recompute(turned, view);
    return !('why' in found) && fitOfWays(figure, found.ways) !== null ? 'the two groups swapped' : null;
  }
  const partner = peers.find(
    (peer) => peer.value !== null && fits(figure, peer.value) && fits(peer.figure, value),
  );
  return partner === undefined ? null : `its figure swapped with that of ${partner.figure.id}`;
}

const ALIKE: Partial<Record<Quantity, readonly (readonly [Quantity, string])[]>> = {
  mean: [['median', 'the median instead of the mean']],
  median: [['mean', 'the mean instead of the median']],
  sd: [['se', 'the standard error instead of the standard deviation']],
  se: [['sd', 'the standard deviation instead of the standard error']],
};

function otherStatistic({ figure, view }: Trial): string | null {
  const others = ALIKE[figure.quantity] ?? [];
  const [attribute] = figure.attributes;
  if (others.length === 0 || attribute === undefined || figure.vague) return null;
  const values = valuesOf(view, attribute, rowsOf(view, figure.select));
  if ('why' in values) return null;
  return others.find(([other]) => fitOfWays(figure, describe(other, values)) !== null)?.[1] ?? null;
}

/** What is printed as one statistic, and was another of the same groups. */
const TESTS_ALIKE: Partial<Record<TestMethod, readonly (readonly [other: TestMethod, said: string])[]>> = {
  H: [['F', 'the F of an analysis of variance instead of the H of ranks']],
  F: [['H', 'the H of ranks instead of the F of an analysis of variance']],
  r: [
    ['rho', 'a correlation of ranks (rho) instead of r'],
    ['tau', 'a correlation of pairs (tau) instead of r'],
  ],
  rho: [
    ['r', 'Pearson’s r instead of a correlation of ranks'],
    ['tau', 'tau instead of rho'],
  ],
  tau: [
    ['r', 'Pearson’s r instead of tau'],
    ['rho', 'rho instead of tau'],
  ],
};

function otherTest(trial: Trial): string | null {
  const { figure, view } = trial;
  const { quantity, method } = figure;
  if (quantity !== 'statistic' && quantity !== 'correlation') return null;
  const others = TESTS_ALIKE[method ?? 'r'] ?? [];
  return (
    others.find(([other]) => gives({ ...trial, figure: { ...figure, method: other } }, view))?.[1] ?? null
  );
}

/** Of one attribute with another, whose order does not matter: there nothing can be swapped. */
function signTurned({ figure, value }: Trial): string | null {
  const signed = figure.quantity === 'correlation' || isCorrelation(figure.method ?? undefined);
  return signed && figure.versus.length === 0 && fits(figure, -value) ? 'its sign turned' : null;
}

function squared({ figure, value }: Trial): string | null {
  if (isCorrelation(figure.method ?? undefined) || figure.quantity === 'correlation')
    return fits(figure, value * value) ? 'its square instead of the correlation' : null;
  const root = Math.sqrt(value);
  return figure.method === 'r-squared' && (fits(figure, root) || fits(figure, -root))
    ? 'the correlation instead of its square'
    : null;
}
