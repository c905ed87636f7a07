import type { Check, Outcome, Verdict } from './check.ts';
import type { PrintedFigure } from './claim.ts';
import type { Quantity } from './terms.ts';

/** A printed figure with everything that was found about it. */
export interface Judged {
  readonly figure: PrintedFigure;
  readonly verdict: Verdict;
  /** As a reader reads it: "agrees only if rounded half to even". */
  readonly says: string;
  readonly checks: readonly Check[];
  /** Of the check that decides. */
  readonly why: string;
  readonly explained: string;
  readonly resolve: string;
}

/** From the gravest. */
const WEIGHT: readonly Outcome[] = [
  'cannot be',
  'differs',
  'agrees only if rounded',
  'agrees',
  'passes',
  'open',
];

/** Checks that rest on what the claims file says of the grid of the readings. */
const ON_A_GRID = new Set(['mean on a grid', 'standard deviation on a grid']);

/** One verdict a figure: the gravest that any check gives; what only passes is not settled. */
export function judge(
  figures: readonly PrintedFigure[],
  checks: readonly Check[],
  withData: boolean,
): Judged[] {
  const byFigure = new Map<string, Check[]>();
  for (const check of checks) byFigure.set(check.figure, [...(byFigure.get(check.figure) ?? []), check]);
  const leaningOn = new Map<string, Check[]>();
  for (const check of checks)
    for (const id of check.with) leaningOn.set(id, [...(leaningOn.get(id) ?? []), check]);
  return figures.map((figure) => {
    const own = settleGrid(byFigure.get(figure.id) ?? []);
    const ordered = [...own].sort((a, b) => WEIGHT.indexOf(a.outcome) - WEIGHT.indexOf(b.outcome));
    const [first] = ordered;
    if (first === undefined || first.outcome === 'passes' || first.outcome === 'open')
      return unsettled(figure, ordered, leaningOn.get(figure.id) ?? [], withData);
    return {
      figure,
      verdict: first.outcome,
      says:
        first.outcome === 'agrees only if rounded'
          ? `${first.outcome} ${first.rounded ?? ''}`
          : first.outcome,
      checks: ordered,
      why: first.working,
      explained: first.explained ?? ordered.find(({ explained }) => explained !== undefined)?.explained ?? '',
      resolve: first.resolve ?? '',
    };
  });
}

/** Where the data give the figure, the readings were not all on the grid that was stated. */
function settleGrid(checks: readonly Check[]): readonly Check[] {
  const given = checks.some(({ from, outcome }) => from === 'data' && outcome.startsWith('agrees'));
  if (!given) return checks;
  return checks.map((check) =>
    check.outcome === 'cannot be' && ON_A_GRID.has(check.name)
      ? {
          ...check,
          outcome: 'passes' as const,
          working: `${check.working} But the data give this figure, so the readings are not all on that grid.`,
        }
      : check,
  );
}

/**
 * No check of its own settles the figure. Agreement is mutual: where the figures that rest on it agree with
 * it, it agrees with them; where one does not, either may be the slip.
 */
function unsettled(
  figure: PrintedFigure,
  checks: readonly Check[],
  leaning: readonly Check[],
  withData: boolean,
): Judged {
  const against = leaning.filter(({ outcome }) => outcome === 'cannot be' || outcome === 'differs');
  const fitting = leaning.filter(({ outcome }) => outcome.startsWith('agrees'));
  const passed = checks.filter(({ outcome }) => outcome === 'passes');
  const base = { figure, checks, explained: '' } as const;
  if (against.length === 0 && fitting.length > 0) {
    const why = `Figures that rest on it agree with it: ${idsOf(fitting)}.`;
    return { ...base, verdict: 'agrees', says: 'agrees', why, resolve: '' };
  }
  const open =
    checks.find(({ outcome, from }) => outcome === 'open' && from === 'data') ??
    checks.find(({ outcome }) => outcome === 'open');
  const parts = [
    passed.length > 0 ? `Nothing speaks against it: ${passed.map(({ working }) => working).join(' ')}` : '',
    against.length > 0 ? `It and what rests on it cannot both stand as printed: ${idsOf(against)}.` : '',
    open?.working ?? missingFor(figure, withData),
  ];
  return {
    ...base,
    verdict: 'cannot be checked',
    says: 'cannot be checked',
    why: parts.filter((part) => part !== '').join(' '),
    resolve: open?.resolve ?? needFor(figure, withData),
  };
}

function idsOf(checks: readonly Check[]): string {
  return [...new Set(checks.map(({ figure }) => figure))].join(', ');
}

/** What, in the same set, would let a figure be held against others. */
const NEEDS: Partial<Record<Quantity, string>> = {
  mean: 'n and the step of the readings',
  sd: 'mean, n and the step of the readings, or the smallest and largest reading',
  se: 'standard deviation and n',
  cv: 'mean and standard deviation',
  share: 'the count, and n',
  count: 'the total, with the other counts',
  total: 'the parts that it sums',
  n: 'the single readings',
  range: 'the smallest and the largest reading',
  difference: 'the two means',
  ratio: 'the two means',
  p: 'the statistic with its degrees of freedom, and the name of the test',
  statistic: 'p and the degrees of freedom, or the printed table',
  df: 'the numbers of records',
  low: 'mean, standard deviation and n',
  high: 'mean, standard deviation and n',
  correlation: 'p and n',
  similarity: 'the counts or percentages of both assemblages',
  diversity: 'the counts or percentages of the assemblage',
};

function missingFor(figure: PrintedFigure, withData: boolean): string {
  const need = NEEDS[figure.quantity] ?? 'the single readings';
  return `Missing: ${need}${withData ? '' : '; or the data'}.`;
}

function needFor(figure: PrintedFigure, withData: boolean): string {
  const need = NEEDS[figure.quantity] ?? 'the single readings';
  return `Print ${need} beside it${withData ? '' : ', or give the table of readings'}.`;
}
