/** The closed lists of a claims file: what a printed figure may be, and what it may come from. */

/** Quantity -> what it is, as the documentation and the template say it. */
export const QUANTITIES = {
  n: 'number of records that a figure rests on',
  count: 'number of records of one kind; "counted" says which kind',
  total: 'sum of the counts (or percentages) of its set; of an attribute: the sum of its readings',
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
  reading: 'one single reading; a column of them is tested for preferred last digits',
  difference: 'mean of "select" less mean of "versus"',
  ratio: 'mean of "select" over mean of "versus"',
  correlation: 'correlation of two attributes',
  statistic: 'test statistic; "t(18) = 2.31, p = .03" gives its degrees of freedom and p too',
  df: 'degrees of freedom; "2, 27" for F',
  p: 'p value; "p < .05", "n.s."',
  low: 'lower end of a confidence interval',
  high: 'upper end; "3.1-4.2" under "interval" gives both',
  interval: 'both ends of a confidence interval',
  similarity: 'likeness of two assemblages; "test" names the coefficient',
  diversity: 'diversity of an assemblage; "test" names the index',
} as const;

export type Quantity = keyof typeof QUANTITIES;

export const QUANTITY_NAMES = Object.keys(QUANTITIES) as readonly Quantity[];

const TESTS = ['t', 'F', 'chi-squared', 'z', 'r', 'U', 'fisher'] as const;
const COEFFICIENTS = ['brainerd-robinson', 'bray-curtis', 'morisita-horn', 'jaccard'] as const;
const INDICES = ['shannon', 'simpson', 'evenness', 'richness'] as const;

export const METHODS = [...TESTS, ...COEFFICIENTS, ...INDICES] as const;
export type Method = (typeof METHODS)[number];

/** Other ways to write a method, folded to small letters without spaces. */
const OTHER_NAMES: Readonly<Record<string, Method>> = {
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
};

/** The method that a text names; undefined for none known. */
export function methodNamed(text: string): Method | undefined {
  const folded = text.trim().toLowerCase().replaceAll(' ', '');
  return METHODS.find((method) => method === text.trim() || method === folded) ?? OTHER_NAMES[folded];
}
