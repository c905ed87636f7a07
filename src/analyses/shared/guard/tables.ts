import type { ResultTable, TableCell } from '../../contract.ts';
import type { Guard, LookedAt } from './found.ts';

/** Every condition looked at, with the effect within it beside the plain one. */
export function guardTable(
  guards: readonly { readonly of: string; readonly guard: Guard }[],
): Record<string, ResultTable> {
  const rows = guards.flatMap(({ of, guard }) =>
    guard.conditions.map((one) => conditionRow(of, guard.n, one)),
  );
  if (rows.length === 0) return {};
  return {
    conditions: {
      title: 'Conditions that may stand for the difference',
      columns: [
        { id: 'of', label: 'compared' },
        { id: 'condition', label: 'condition' },
        { id: 'verdict', label: 'verdict' },
        { id: 'known', label: 'known of' },
        { id: 'n', label: 'n' },
        { id: 'kinds', label: 'kinds' },
        { id: 'pAdjusted', label: 'goes with the labels, p adjusted' },
        { id: 'v', label: "Cramér's V, bias-corrected" },
        { id: 'shared', label: 'n that share it' },
        { id: 'strata', label: 'kinds that labels share' },
        { id: 'plain', label: 'strength, taken together' },
        { id: 'within', label: 'strength within it' },
        { id: 'statistic', label: 'Cochran-Mantel-Haenszel statistic' },
        { id: 'df', label: 'df' },
        { id: 'p', label: 'p within it' },
        { id: 'method', label: 'p from' },
        { id: 'scale', label: 'effect of the named pair' },
        { id: 'plainEffect', label: 'plain' },
        { id: 'plainSe', label: 'standard error' },
        { id: 'adjustedEffect', label: 'adjusted for it' },
        { id: 'adjustedSe', label: 'standard error' },
      ],
      rows,
      briefly: ['of', 'condition', 'verdict', 'pAdjusted', 'shared', 'plain', 'within', 'p'],
      note:
        'Association with the labels: Holm over the conditions looked at, items as units. Strength: root of the share of spread between the labels, less chance, ' +
        'for the records in kinds that labels share, with the condition left out of account and within it. p within it: labels dealt again within the condition. ' +
        'Effects, with the condition left out and taken into account: linear mixed models (REML) of the records whose condition is known, odds ratios by Mantel and Haenszel; errors of ratios are those of their logarithm.',
    },
  };
}

function conditionRow(of: string, n: number, one: LookedAt): TableCell[] {
  const { shared, adjusted } = one;
  const sharing: TableCell[] =
    'why' in shared
      ? [null, null, shared, shared, null, null, shared, '']
      : [
          shared.n,
          shared.strata,
          shared.plain,
          shared.within,
          shared.statistic,
          shared.df,
          shared.p,
          shared.method,
        ];
  const effects: TableCell[] =
    adjusted === null
      ? ['', null, null, null, null]
      : 'why' in adjusted
        ? ['', adjusted, null, adjusted, null]
        : [
            `${adjusted.scale}${adjusted.random.length > 0 ? `, random ${adjusted.random.join(' and ')}` : ''}`,
            adjusted.plain.estimate,
            adjusted.plain.se,
            adjusted.within.estimate,
            adjusted.within.se,
          ];
  return [of, one.label, said(one), one.known, n, one.kinds, one.p, one.v, ...sharing, ...effects];
}

function said({ verdict }: LookedAt): string {
  switch (verdict) {
    case 'unknown':
      return 'not recorded, could not be looked at';
    case 'scarce':
      return 'known of less than half, could not be looked at';
    case 'one':
      return 'the same for all';
    default:
      return verdict;
  }
}
