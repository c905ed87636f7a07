/**
 * The ordinary ways in which figures are computed and printed, as data: what is tried before a figure is said to
 * be impossible, in the words of the answer. A check that tries a convention names it by its key here, so that
 * the list of what was tried and the trying cannot part.
 */
interface Convention {
  /** What is tried, to follow "Tried:". */
  readonly tried: string;
  /** What a figure agrees under, to follow "agrees under"; none where it is the first to be thought of. */
  readonly under?: string;
  /** Where the convention is from; common practice where nobody is named. */
  readonly source?: string;
}

export const CONVENTIONS = {
  rounding: { tried: 'rounded half up, half to even, and cut off' },
  sides: { tried: 'one and two sides' },
  degrees: { tried: 'degrees of freedom as printed and before rounding' },
  welch: {
    tried: 'Welch’s degrees of freedom, broken or printed whole',
    under: "Welch's degrees of freedom, printed as a whole number",
    source: 'Welch 1947, Biometrika 34:28',
  },
  pairs: {
    tried: 'n in place of the degrees of freedom',
    under: 'the number of pairs in brackets instead of the degrees of freedom',
  },
  bothTails: {
    tried: 'both tails, and the lower tail, of a ratio of two variances',
    under: 'both tails of a ratio of two variances',
    source: 'R, var.test',
  },
  lowerTail: { tried: 'the lower tail', under: 'the lower tail of a ratio of two variances' },
  adjusted: { tried: 'adjusted for several tests', source: 'Bonferroni; Holm 1979, Scand. J. Stat. 6:65' },
  permuted: { tried: 'from permutations, or exact' },
  sphericity: {
    tried: 'corrected for sphericity',
    source: 'Greenhouse & Geisser 1959, Psychometrika 24:95',
  },
  continuity: {
    tried: 'corrected for continuity',
    source: 'Yates 1934, J. R. Stat. Soc. Suppl. 1:217',
  },
  ties: { tried: 'exact, both normal approximations, and ties' },
  zeros: {
    tried: 'pairs without a difference left out',
    under: 'some pairs without a difference, left out',
    source: 'Wilcoxon 1945, Biom. Bull. 1:80',
  },
  rankSums: { tried: 'the rank sum of either group, or less its least' },
  divisor: { tried: 'divisors n − 1 and n' },
  pooledError: { tried: 'an error from the spread of all groups together' },
  smallSample: {
    tried: 'corrected for small samples',
    under: 'the correction for small samples, 1 + 1/(4n)',
    source: 'Sokal & Rohlf 1995, Biometry, 58',
  },
  droppedKind: { tried: 'kinds or groups left out one at a time' },
  pooledMeans: { tried: 'weighted and plain means of the groups' },
  otherBase: { tried: 'other printed numbers as the base' },
  sumOfPrint: { tried: 'sums of what is printed and of what stands behind it' },
  yearsBefore: { tried: 'years before the era, which run backwards' },
  readingEnds: { tried: 'every reading that the ends and the grid allow' },
  levels: { tried: 'levels of 90, 95 and 99 %' },
  distribution: { tried: 'Student’s distribution and the normal one' },
  estimators: {
    tried: 'the other ordinary forms of the coefficient',
    source: 'Hedges 1981, J. Educ. Stat. 6:107; Tomczak & Tomczak 2014',
  },
} as const satisfies Readonly<Record<string, Convention>>;

export type ConventionKey = keyof typeof CONVENTIONS;

/** What each check tries before it says that a figure cannot be; a check that is not listed tries roundings alone. */
const TRIED_BY_CHECK: Readonly<Record<string, readonly ConventionKey[]>> = {
  'mean on a grid': ['rounding'],
  'median on a grid': ['rounding'],
  'standard deviation on a grid': ['rounding', 'divisor'],
  'bounds of the standard deviation': ['rounding', 'divisor', 'readingEnds'],
  'coefficient of variation from mean and deviation': ['rounding', 'smallSample'],
  'standard error from the deviation': ['rounding', 'divisor', 'pooledError'],
  'interval of the mean': ['rounding', 'levels', 'distribution'],
  'interval beside its test': ['rounding', 'levels', 'distribution'],
  'p of its statistic': ['rounding', 'sides', 'degrees', 'adjusted', 'permuted'],
  'degrees of freedom from n': ['welch', 'pairs'],
  'effect size of its statistic': ['rounding', 'estimators'],
  't of the printed samples': ['rounding', 'welch'],
  'line of all groups': ['rounding', 'pooledMeans', 'divisor'],
  'mean of all groups': ['rounding', 'pooledMeans'],
  'percentage of its base': ['rounding', 'otherBase'],
  'share of its count': ['rounding', 'otherBase'],
  'total of its parts': ['sumOfPrint'],
  'range from its ends': ['rounding'],
};
/** What can be no other way under any convention: a p above 1, ends in the wrong order. */
const BEYOND_CONVENTION: ReadonlySet<string> = new Set([
  'possible figure',
  'possible statistic',
  'order',
  'order of the ends',
  'sign',
  'number of printed readings',
]);

/** The working of a figure that cannot be, with what was tried at its end. */
export function withTried(working: string, check: string): string {
  if (/\bTried: /.test(working)) return working;
  if (BEYOND_CONVENTION.has(check)) return `${working} No convention allows it.`;
  return `${working} ${triedText(TRIED_BY_CHECK[check] ?? ['rounding'])}`;
}

/** "Tried: one and two sides; adjusted for several tests." */
export function triedText(keys: readonly ConventionKey[]): string {
  return `Tried: ${keys.map((key) => CONVENTIONS[key].tried).join('; ')}.`;
}
