/** The closed lists of a claims file: what a printed figure may be, and what it may come from. */

/** Quantity -> what it is, as the documentation and the template say it. */
export const QUANTITIES = {
  n: 'number of records that a figure rests on',
  count: 'number of records of one kind; "counted" says which kind',
  total: 'sum of the counts (or percentages) of its set; of an attribute: the sum of its readings',
  expected: 'count expected of a cell if its row and column had nothing to do with each other',
  share: 'count over n; "34 %", or "0.34", or "34"',
  mean: 'arithmetic mean',
  median: 'median',
  sd: 'standard deviation',
  se: 'standard error of the mean',
  cv: 'coefficient of variation, standard deviation over mean; "23 %", or "0.23", or "23"',
  min: 'smallest reading',
  max: 'largest reading',
  range: 'largest less smallest; "2.1-5.4" gives the two ends',
  q1: 'lower quartile',
  q3: 'upper quartile',
  iqr: 'upper less lower quartile; "2.1-5.4" gives the two quartiles',
  reading: 'one single reading; a column of them is tested for preferred last digits',
  difference: 'mean of "select" less mean of "versus"',
  ratio: 'mean of "select" over mean of "versus"',
  estimate: 'coefficient of a fitted model; "b = 0.53, SE = 0.10, t(94) = 5.3" gives its error and test too',
  correlation: 'correlation of two attributes',
  statistic: 'test statistic; "t(18) = 2.31, p = .03" gives its degrees of freedom and p too',
  df: 'degrees of freedom; "2, 27" for F',
  p: 'p value; "p < .05", "n.s."',
  'sum-of-squares': 'sum of squares of an analysis of variance',
  'mean-square': 'mean square of an analysis of variance',
  effect: 'effect size; "test" names it: d, eta-squared, V',
  low: 'lower end of a confidence interval',
  high: 'upper end; "3.1-4.2" under "interval" gives both',
  interval: 'both ends of a confidence interval',
  similarity: 'likeness of two assemblages; "test" names the coefficient',
  diversity: 'diversity of an assemblage; "test" names the index',
} as const;

const SAID: Readonly<Record<keyof typeof QUANTITIES, string>> = {
  n: 'number of records',
  count: 'count',
  total: 'total',
  expected: 'expected count',
  share: 'share',
  mean: 'mean',
  median: 'median',
  sd: 'standard deviation',
  se: 'standard error',
  cv: 'coefficient of variation',
  min: 'smallest',
  max: 'largest',
  range: 'range',
  q1: 'lower quartile',
  q3: 'upper quartile',
  iqr: 'quartile distance',
  reading: 'single reading',
  difference: 'difference of means',
  ratio: 'ratio of means',
  estimate: 'coefficient',
  correlation: 'correlation',
  statistic: 'test statistic',
  df: 'degrees of freedom',
  p: 'p value',
  'sum-of-squares': 'sum of squares',
  'mean-square': 'mean square',
  effect: 'effect size',
  low: 'lower limit',
  high: 'upper limit',
  interval: 'limits',
  similarity: 'likeness',
  diversity: 'diversity',
};

/** What a figure is, in the few words that a picture or a line has room for; a word that is no quantity as it stands. */
export function quantitySaid(quantity: string): string {
  return quantity in SAID ? SAID[quantity as keyof typeof SAID] : quantity;
}

/** Sizes of an effect that can only lie between 0 and 1. */
export const BOUNDED_EFFECTS: ReadonlySet<string> = new Set([
  'eta-squared',
  'r-squared',
  'cramer-v',
  'phi',
  'silhouette',
]);

export type Quantity = keyof typeof QUANTITIES;

export const QUANTITY_NAMES = Object.keys(QUANTITIES) as readonly Quantity[];

const TESTS = [
  't',
  'F',
  'chi-squared',
  'G',
  'z',
  'r',
  'rho',
  'tau',
  'U',
  'W',
  'signed-rank',
  'H',
  'fisher',
] as const;
const EFFECTS = [
  'cohen-d',
  'hedges-g',
  'eta-squared',
  'omega-squared',
  'epsilon-squared',
  'r-squared',
  'cramer-v',
  'phi',
  'odds-ratio',
  'silhouette',
] as const;
const COEFFICIENTS = ['brainerd-robinson', 'bray-curtis', 'morisita-horn', 'jaccard'] as const;
const INDICES = ['shannon', 'simpson', 'evenness', 'richness'] as const;

export const METHODS = [...TESTS, ...EFFECTS, ...COEFFICIENTS, ...INDICES] as const;
export type TestMethod = (typeof METHODS)[number];

/** Whether it is a coefficient of correlation. */
export function isCorrelation(method: TestMethod | undefined): boolean {
  return method === 'r' || method === 'rho' || method === 'tau';
}

/** Other ways to write a method, folded to small letters without spaces. */
const OTHER_NAMES: Readonly<Record<string, TestMethod>> = {
  f: 'F',
  u: 'U',
  student: 't',
  welch: 't',
  anova: 'F',
  'chi-square': 'chi-squared',
  chisquare: 'chi-squared',
  chisquared: 'chi-squared',
  chi2: 'chi-squared',
  x2: 'chi-squared',
  'x²': 'chi-squared',
  χ2: 'chi-squared',
  'χ²': 'chi-squared',
  'mann-whitney': 'U',
  pearson: 'r',
  spearman: 'rho',
  kendall: 'tau',
  'kruskal-wallis': 'H',
  h: 'H',
  g: 'G',
  'g-test': 'G',
  'likelihood-ratio': 'G',
  w: 'W',
  v: 'signed-rank',
  wilcoxon: 'W',
  'wilcoxon-rank-sum': 'W',
  ranksum: 'W',
  'rank-sum': 'W',
  signedrank: 'signed-rank',
  'wilcoxon-signed-rank': 'signed-rank',
  d: 'cohen-d',
  "cohen'sd": 'cohen-d',
  'cohen’sd': 'cohen-d',
  "hedges'g": 'hedges-g',
  'η²': 'eta-squared',
  eta2: 'eta-squared',
  'ω²': 'omega-squared',
  'r²': 'r-squared',
  r2: 'r-squared',
  "cramer'sv": 'cramer-v',
  cramersv: 'cramer-v',
  cramer: 'cramer-v',
  cramérsv: 'cramer-v',
  'cramér’sv': 'cramer-v',
  φ: 'phi',
  or: 'odds-ratio',
  oddsratio: 'odds-ratio',
  'fisher’sexact': 'fisher',
  "fisher'sexact": 'fisher',
  'fisher-exact': 'fisher',
  fisherexact: 'fisher',
};

/** The method that a text names; undefined for none known. */
export function methodNamed(text: string): TestMethod | undefined {
  const folded = text.trim().toLowerCase().replaceAll(' ', '');
  return METHODS.find((method) => method === text.trim() || method === folded) ?? OTHER_NAMES[folded];
}
