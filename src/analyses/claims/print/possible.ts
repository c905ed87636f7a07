import { powerOfTen } from '../../../numerics/printed/printed-number.ts';
import type { FigureCheck } from '../found.ts';
import { rangeOfFigure } from '../judging/check.ts';
import type { PrintedFigure } from '../reading/claim.ts';
import { BOUNDED_EFFECTS } from '../reading/terms.ts';
import type { Evidence } from './evidence.ts';

/** What no figure of its kind can be, whatever the records: a p above 1, half a record, a negative count. */
export function checkPossible({ figures }: Evidence): FigureCheck[] {
  return figures.flatMap((figure) => {
    const why = impossible(figure);
    return why === null
      ? []
      : [
          {
            figure: figure.id,
            name: 'possible figure',
            from: 'print' as const,
            outcome: 'cannot be' as const,
            working: why,
            resolve: 'Look up the figure, its sign and its decimal point.',
            with: [],
          },
        ];
  });
}

/** Effects that may be negative: phi has a sign, an adjusted R² falls below 0, a silhouette goes from −1. */
const SIGNED: ReadonlySet<string> = new Set(['phi', 'r-squared', 'silhouette']);

function impossible(figure: PrintedFigure): string | null {
  const { quantity, method, values, vague } = figure;
  if (vague || values.length === 0) return null;
  const [value] = values;
  const { low, high } = rangeOfFigure(figure, 'any');
  if (quantity === 'p') {
    // "p < 1" and "p > 0" say nothing, and can be.
    if (value.relation === '=' && (low > 1 || high < 0)) return 'A p value lies between 0 and 1.';
    if (value.relation === '>' && low >= 1) return 'A p value lies between 0 and 1.';
    return null;
  }
  if (value.relation !== '=') return null;
  if (quantity === 'n' || quantity === 'count') {
    if (high < 0) return 'A number of records cannot be negative.';
    const { digits, decimals } = value.number;
    if (
      !value.percent &&
      decimals > 0 &&
      digits % powerOfTen(decimals) !== 0n &&
      (digits * 2n) % powerOfTen(decimals) !== 0n
    )
      return 'A number of records is whole.';
    if (quantity === 'n' && !value.percent && decimals > 0 && digits % powerOfTen(decimals) !== 0n)
      return 'A number of records is whole.';
    return null;
  }
  if (quantity === 'share' && (high < 0 || (low > 1 && value.percent)))
    return 'A share of records lies between 0 and 100 %.';
  if (quantity === 'cv' || quantity === 'correlation') {
    if (quantity === 'correlation' && (low > 1 || high < -1)) return 'A correlation lies between −1 and 1.';
    return null;
  }
  if (quantity === 'df' && high <= 0) return 'Degrees of freedom are above 0.';
  if (
    (quantity === 'sd' ||
      quantity === 'se' ||
      quantity === 'iqr' ||
      quantity === 'sum-of-squares' ||
      quantity === 'mean-square') &&
    high < 0
  )
    return 'A spread cannot be negative.';
  if (
    quantity === 'effect' &&
    BOUNDED_EFFECTS.has(method ?? '') &&
    (low > 1 || high < -1 || (high < 0 && !SIGNED.has(method ?? '')))
  )
    return `This figure lies between ${SIGNED.has(method ?? '') ? '−1' : '0'} and 1.`;
  if (quantity === 'effect' && method === 'odds-ratio' && high < 0)
    return 'An odds ratio cannot be negative.';
  if (quantity === 'similarity') {
    const most = method === 'bray-curtis' || method === 'morisita-horn' || method === 'jaccard' ? 1 : 200;
    if (high < 0) return 'A likeness cannot be negative.';
    if (low > most && !(most === 1 && low <= 100)) return `This coefficient is at most ${most}.`;
  }
  if (quantity === 'diversity') {
    if (high < 0) return 'An index of diversity cannot be negative.';
    if (method === 'evenness' && low > 1) return 'Evenness is at most 1.';
    if (method === 'richness' && value.number.decimals === 0 && low < 0)
      return 'A number of kinds cannot be negative.';
  }
  return null;
}
