import type { Quantity, TestMethod } from './terms.ts';

/** What a symbol of a test report stands for. */
export interface Meaning {
  readonly quantity: Quantity;
  readonly method?: TestMethod;
}

/** A difference of means, as papers name it in words. */
export const DIFFERENCE = String.raw`(?:(?:[Mm]ean|[Mm]ittlere|[Mm]edia)\s+)?(?:[Dd]ifference(?:\s+(?:of|in|between)\s+(?:the\s+)?means)?|(?:[Mm]ittelwert(?:s|e)?)?[Dd]ifferenz|[Dd]ifférence(?:\s+(?:moyenne|des?\s+moyennes))?|[Dd]ifferenza(?:\s+(?:media|tra le medie))?|[Dd]iferencia(?:\s+(?:media|de\s+(?:las\s+)?medias))?|(?:[Gg]ennemsnitlig\s+)?[Ff]orskel)`;

/** A coefficient of a fitted model. */
export const COEFFICIENT = String.raw`(?:[bB]|β|[Bb]eta|[Cc]oef(?:f(?:icient)?)?\.?|[Ee]stimate|[Ss]lope|[Ii]ntercept)`;

/** Chi-squared in the languages around. */
const CHI = String.raw`(?:[χ𝜒]\s?(?:²|\^?2)|[Cc]h?i\s?[²2]|[Kk]hi\s?[²2]?|[Cc]hi[- ]?[Ss]q(?:uared?)?\.?|[Cc]hi[- ]?(?:[Qq]uadrat[oe]?|[Cc]uadrado|[Cc]arré)|X\s?(?:²|\^?2|[- ]?squared)|K-squared)`;

/** Degrees of freedom in German, French, Italian, Spanish and Danish. */
export const DEGREES_ABROAD = String.raw`(?:FG|[Ff]g\.?|[Ff]reiheitsgrade?|ddl|d\.d\.l\.|[Dd]egrés de liberté|g\.?\s?l\.?|[Gg]radi di libertà|[Gg]rados de libertad|[Ff]rihedsgrader)`;

/**
 * The symbols of test reports as papers and programs print them, longest first where one begins another.
 * Each is matched with its case: "t" is a statistic, "d" an effect, "df" degrees of freedom.
 */
export const SYMBOLS: readonly (readonly [pattern: string, stands: Meaning])[] = [
  [
    String.raw`(?:[dD]\.?\s?[fF]\.?(?:\s?[12])?|dfs|${DEGREES_ABROAD}|[Dd]egrees of freedom|ν)`,
    { quantity: 'df' },
  ],
  [
    String.raw`(?:(?:[Aa]dj(?:usted)?\.?|[Cc]orrected|[Ee]xact|[Aa]symp(?:totic)?\.?)\s*)?(?:[pP](?:[-\s]?[Vv]alues?)?|[Pp]rob\.?|[Pp]r\s?\([^)]*\)|[Ss]ig\.?(?:nificance)?|q)(?:[_ -]?\{?(?:adj|corr|cor|holm|bonf|Bonf|Holm|perm|FDR|BH|exact)\w*\.?\}?)?`,
    { quantity: 'p' },
  ],
  [String.raw`[nN](?:\s?_?\{?[0-9₀₁₂₃]\}?)?`, { quantity: 'n' }],
  [
    String.raw`(?:[Pp]artial\s+|[Pp]art\.?\s+)?(?:η|[Ee]ta)(?:_?\{?[pGP]\}?)?\s?(?:²|\^?2|[- ]?[Ss]quared)(?:_?\{?[pGP]\}?)?`,
    { quantity: 'effect', method: 'eta-squared' },
  ],
  [String.raw`(?:ω|[Oo]mega)\s?(?:²|\^?2|[- ]?[Ss]quared)`, { quantity: 'effect', method: 'omega-squared' }],
  [
    String.raw`(?:ε|[Ee]psilon)\s?(?:²|\^?2|[- ]?[Ss]quared)`,
    { quantity: 'effect', method: 'epsilon-squared' },
  ],
  [
    String.raw`(?:(?:[Aa]dj(?:usted)?\.?|[Mm]ultiple)\s+)?(?:R\s?(?:²|\^?2|[- ]?[Ss]quared)|r\s?(?:²|\^2))`,
    { quantity: 'effect', method: 'r-squared' },
  ],
  [String.raw`(?:[Cc]ohen['’]?s?\s+)?d(?:_?\{?[sz]\}?)?`, { quantity: 'effect', method: 'cohen-d' }],
  [String.raw`(?:[Hh]edges['’]?s?\s+)?g`, { quantity: 'effect', method: 'hedges-g' }],
  [String.raw`(?:[Cc]ram[eé]rs?['’]?s?\s+)V`, { quantity: 'effect', method: 'cramer-v' }],
  [String.raw`(?:φ|ϕ|[Pp]hi)`, { quantity: 'effect', method: 'phi' }],
  [String.raw`(?:OR|[Oo]dds\s+ratio)`, { quantity: 'effect', method: 'odds-ratio' }],
  [String.raw`(?:M[Dd]|${DIFFERENCE}|Δ)`, { quantity: 'difference' }],
  [COEFFICIENT, { quantity: 'estimate' }],
  [String.raw`(?:SE|S\.E\.|s\.e\.|[Ss]td\.? [Ee]rr(?:or)?\.?|SF)`, { quantity: 'se' }],
  [
    String.raw`(?:K(?:ruskal)?[-–]?\s?W(?:allis)?\.?(?:[-\s]+[Tt]est)?:?,?\s*)(?:H|[χ𝜒][²2]|[Cc]hi[- ]?[Ss]q(?:uared?)?|test)?`,
    { quantity: 'statistic', method: 'H' },
  ],
  [
    String.raw`(?:[Ll]ikelihood[- ]ratio\s+)(?:G|[χ][²2]|[Cc]hi[- ]?[Ss]q(?:uared?)?)`,
    { quantity: 'statistic', method: 'G' },
  ],
  [String.raw`(?:[Pp]earson['’]?s?\s+)?${CHI}`, { quantity: 'statistic', method: 'chi-squared' }],
  [
    String.raw`(?:[Ss]pearman['’]?s?\s+)?(?:ρ|rho|r_?\{?[sS]\}?|rₛ)(?![A-Za-z])|[Ss]pearman['’]?s?(?:\s+r)?`,
    { quantity: 'statistic', method: 'rho' },
  ],
  [
    String.raw`(?:[Kk]endall['’]?s?\s+)?(?:τ|tau)(?:[-_ ]?\{?[abc]\}?)?|[Kk]endall['’]?s?`,
    { quantity: 'statistic', method: 'tau' },
  ],
  [
    String.raw`(?:[Mm]ann[-–]?\s?[Ww]hitney['’]?s?\s+)?U(?:[- ](?:value|statistic))?`,
    { quantity: 'statistic', method: 'U' },
  ],
  [
    String.raw`(?:(?:Student|Welch)['’]?s?\s+|[Pp]aired\s+)?[tT](?:_?\{?(?:obs|Welch)\}?)?(?:[- ]?(?:value|statistic|stat\.?|test|ratio))?`,
    { quantity: 'statistic', method: 't' },
  ],
  [
    String.raw`(?:Welch['’]?s?\s+)?F(?:[- ]?(?:value|statistic|ratio|test))?`,
    { quantity: 'statistic', method: 'F' },
  ],
  [String.raw`H`, { quantity: 'statistic', method: 'H' }],
  [String.raw`G`, { quantity: 'statistic', method: 'G' }],
  [String.raw`W(?:[- ]?(?:value|statistic))?`, { quantity: 'statistic', method: 'W' }],
  [String.raw`(?:V|T\+|S\+)`, { quantity: 'statistic', method: 'signed-rank' }],
  [String.raw`[Zz](?:[- ]?(?:value|score|statistic))?`, { quantity: 'statistic', method: 'z' }],
  [
    String.raw`(?:[Pp]earson['’]?s?\s+)?r(?:[- ]?value)?|[Cc]or(?:relation)?|[Pp]earson['’]?s?`,
    { quantity: 'statistic', method: 'r' },
  ],
  // Of a program that does not say which.
  [String.raw`association`, { quantity: 'statistic' }],
];

/** How a p value came about, where the words beside it say so. */
export type Manner =
  | 'adjusted'
  | 'permuted'
  | 'exact'
  | 'sphericity'
  | 'continuity'
  | 'welch'
  | 'variances'
  | 'another test';

const MANNERS: readonly (readonly [pattern: RegExp, manner: Manner])[] = [
  [
    /bonferroni|holm|hochberg|adjusted|\badj\b|_adj|padj|corrected for|fdr|benjamini|tukey|scheff|[sš]id[aá]k|dunn|\bbonf/i,
    'adjusted',
  ],
  [/permut|randomi[sz]|monte.carlo|resampl|simulat|bootstrap|\bperm\b|_perm/i, 'permuted'],
  [/greenhouse|geisser|huynh|feldt|spheric|\bGG\b|\bHF\b/, 'sphericity'],
  [/yates|(?<!without )continuity/i, 'continuity'],
  [/\bexact\b/i, 'exact'],
  [/welch|satterthwaite/i, 'welch'],
  [/compare two variances|ratio of variances|var\.?test/i, 'variances'],
  // Tests that print t, F, z or chi-squared and are of another question; it is not computed here.
  [
    /bartlett|levene|brown.forsythe|fligner|shapiro|kolmogorov|smirnov|\bks_?test|anderson.darling|mcnemar|friedman|cochran|\bmood\b|ansari|brunner|munzel|alexander.?govern|compare two variances|ratio of variances|log.?rank|mantel|hosmer|jonckheere|hotelling|manova|ancova|repeated.measures|mixed.model|regress|binomial test|poisson|(?:1|one)-sample proportion|heteroscedas|skew|kurtos|normality|median.?test|of another question/i,
    'another test',
  ],
];

/** What the words around a figure say of how it came about. */
export function mannersIn(text: string): readonly Manner[] {
  return MANNERS.filter(([pattern]) => pattern.test(text)).map(([, manner]) => manner);
}

/** "one-sided", "(1-tailed)"; null where nothing is said. */
export function sidesIn(text: string): 'one' | 'two' | null {
  const match =
    /\b(one|two|1|2)[- ](?:sided|tailed|tail)\b|\b(uni|bi)lat[eé]ral|\b(ein|zwei)seitig|\b(en|to)sidet/i.exec(
      text,
    );
  if (match === null) return null;
  return /^(?:one|1)$/i.test(match[1] ?? '') ||
    /^(?:uni|ein|en)$/i.test(match[2] ?? match[3] ?? match[4] ?? '')
    ? 'one'
    : 'two';
}
