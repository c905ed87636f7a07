import type { Quantity, TestMethod } from '../terms.ts';

/** What a column (or a row of a table laid the other way) holds. */
export type Role = Quantity | 'cumulative' | 'not part' | 'step' | 'unknown';

/** What a head says of the numbers below it. */
export interface HeadReading {
  readonly role: Role;
  readonly method?: TestMethod;
  /** The second number of a cell: sd, se. */
  readonly second?: Quantity;
  /** What two ends behind a middle are. */
  readonly ends?: 'range' | 'interval' | 'iqr';
  /** Cells also hold per cents or counts: "n (%)". */
  readonly both?: true;
}

export const MEAN = String.raw`(?:(?:arithm(?:etic|\.)\s+)?mean|average|avg\.?|m|x̄|mw|mittel(?:wert)?|moy(?:enne|\.)|media|promedio|gennemsnit|middelværdi|gemiddelde)`;
export const MEDIAN = String.raw`(?:median(?:wert)?|med\.?|mdn|md|médiane|mediana|mediaan)`;
const QUARTILES = String.raw`(?:i\.?q\.?r\.?|q1.{1,3}q3|quartiles?|quartilsabstand|interquartile range|p25.{1,3}p75|25.{1,6}75.{0,3})`;
export const RANGE = String.raw`(?:(?:obs(?:erved|\.)\s+)?range|o\.\s?r\.|min(?:imum|\.)?\s?(?:[-–—/]|to|bis|à)\s?max(?:imum|\.)?|spannweite|span|variationsbreite|étendue|extrêmes|rango)`;
const INTERVAL = String.raw`(?:ci|c\.\s?i\.|confidence interval|ki|konfidenzintervall|vertrauensintervall|ic|i\.\s?c\.|intervalle de confiance)`;
export const SD = String.raw`(?:s|s\.?\s?d\.?|std\.?\s?dev(?:iation)?\.?|st\.?\s?dev\.?|stdev\.?|standard\s?deviation|(?:standard|std\.?)[-\s]?abw(?:eichung|\.)|écart[-\s]type|é\.\s?t\.|et|desv(?:iación|\.)\s?(?:estándar|típica|est\.?)|d\.?\s?e\.?|deviazione\s?standard|dev\.\s?st\.?|d\.?\s?s\.?|standardafvigelse|σ)`;
export const SE = String.raw`(?:s\.?\s?e\.?(?:\s?m\.?)?|s\.?e\.?\s+(?:of\s+)?mean|std\.?\s?err(?:or)?\.?|standard\s?error(?:\s+of\s+the\s+mean)?|standardfehler|erreur[-\s](?:type|standard)|errore\s?standard|error\s?estándar|e\.?\s?e\.?|standardfejl|1\s?se)`;
const ESTIMATE = String.raw`(?:(?:unstandardi[sz]ed |standardi[sz]ed |parameter |regression )?(?:estimates?|est\.?|coef(?:f(?:icients?)?)?\.?|b|β|beta)|regressionskoeffizient|koeffizient|coefficiente|coeficiente|schätz(?:er|wert|ung)|estimation)`;
const JOIN = String.raw`\s*(?:±|\+\/?-|[([,;/]|and)\s*(?:1\s?)?`;

const PATTERNS: readonly (readonly [pattern: string, reading: HeadReading])[] = [
  [String.raw`(?:0|2)\.5\s?%|\[?0\.0(?:0|2)5`, { role: 'low' }],
  [String.raw`9(?:7|9)\.5\s?%|0\.9(?:7|9)5\]?`, { role: 'high' }],
  [`${MEAN}${JOIN}${SD}[)\\]]?`, { role: 'mean', second: 'sd' }],
  [`${MEAN}${JOIN}${SE}[)\\]]?`, { role: 'mean', second: 'se' }],
  [
    `${MEAN}\\s*[([](?:9\\d\\s?%[-\\s]*)?${INTERVAL}(?:\\s+à)?(?:\\s*9\\d\\s?%)?[)\\]]`,
    { role: 'mean', ends: 'interval' },
  ],
  [`${MEAN}\\s*[([]${RANGE}[)\\]]`, { role: 'mean', ends: 'range' }],
  [`${MEDIAN}\\s*(?:,\\s*)?[([]?${QUARTILES}[)\\]]?`, { role: 'median', ends: 'iqr' }],
  [`${MEDIAN}\\s*(?:,\\s*)?[([]?${RANGE}[)\\]]?`, { role: 'median', ends: 'range' }],
  [`${MEDIAN}\\s*[([].*${INTERVAL}.*[)\\]]`, { role: 'median', ends: 'interval' }],
  [
    `(?:(?:95|90|99)\\s?%[-\\s]*)?${INTERVAL}(?:\\s*(?:of|for|der|des?) .*)?(?:(?:\\s+à)?\\s*(?:95|90|99)\\s?%)?`,
    { role: 'interval' },
  ],
  [
    String.raw`(?:cum(?:ulative|\.)?\s*(?:%|per\s?cent(?:age)?|pct\.?|share|freq.*)?|kumuliert.*|.*\scum(?:ulative|\.)?\s?%)`,
    { role: 'cumulative' },
  ],
  [`${MEAN}\\s*[([]\\s*n\\s*[)\\]]`, { role: 'mean', second: 'n' }],
  [`${MEDIAN}\\s*[([]\\s*n\\s*[)\\]]`, { role: 'median', second: 'n' }],
  [
    String.raw`(?:n|no\.?|nos\.?|nr\.?|count|number|anzahl|effectif|freq(?:uency)?\.?)\s*[([,;/]\s*(?:%|in %|per\s?cent|percentage|prozent)\s*[)\]]?`,
    { role: 'count', both: true },
  ],
  [
    String.raw`(?:%|per\s?cent|percentage)\s*[([,;/]\s*(?:n|no\.?|count)\s*[)\]]?`,
    { role: 'share', both: true },
  ],
  [
    String.raw`(?:n|nos?\.|nr\.|number(?: of \w+)?|sample size|stichprobe(?:numfang)?|effectifs?|anz\.|antal|numero|número|n\.?º|núm\.|n (?:fragments|items|sherds|pieces|records|finds))`,
    { role: 'n' },
  ],
  [String.raw`(?:counts?|freq(?:uency|uencies)?\.?|anzahl|nombre)`, { role: 'count' }],
  [
    String.raw`(?:%|valid\s(?:%|per\s?cent)|%\s?of.*|.*\s%|%\s.*|per\s?cent(?:age)?s?(?: of .*)?|pct\.?|prozent|procent|proportions?|prop\.?|share|anteil(?:\s?\(?%\)?)?)`,
    { role: 'share' },
  ],
  [
    `(?:mean\\s*)?(?:difference|diff\\.?|Δ|differenz|différence)(?:\\s+(?:of|in)\\s+means?)?(?:\\s*[([].*${INTERVAL}.*[)\\]])?`,
    { role: 'difference', ends: 'interval' },
  ],
  [
    `(?:a?or|odds ratio|exp\\s?\\(b(?:eta)?\\))(?:\\s*[([].*${INTERVAL}.*[)\\]])?`,
    { role: 'effect', method: 'odds-ratio', ends: 'interval' },
  ],
  [
    `(?:d|cohen['’]?s d)\\s*[([].*${INTERVAL}.*[)\\]]`,
    { role: 'effect', method: 'cohen-d', ends: 'interval' },
  ],
  [`r\\s*[([].*${INTERVAL}.*[)\\]]`, { role: 'correlation', method: 'r', ends: 'interval' }],
  [String.raw`t\s*[([]\s*d\.?f\.?\s*[)\]]`, { role: 'statistic', method: 't', second: 'df' }],
  [String.raw`f\s*[([]\s*d\.?f\.?\s*[)\]]`, { role: 'statistic', method: 'F', second: 'df' }],
  [`${ESTIMATE}\\s*[([]\\s*${SE}\\s*[)\\]]`, { role: 'estimate', second: 'se' }],
  [`${ESTIMATE}\\s*[([].*${INTERVAL}.*[)\\]]`, { role: 'estimate', ends: 'interval' }],
  [ESTIMATE, { role: 'estimate' }],
  [MEAN, { role: 'mean' }],
  [SD, { role: 'sd' }],
  [SE, { role: 'se' }],
  [
    String.raw`(?:v|c\.?\s?v\.?|coeff(?:icient|\.)?\s+of\s+var(?:iation|\.)?|var(?:iations|\.)?[-\s]?koeff(?:izient|\.)?|v\.?\s?k\.?|coeff?(?:icient|\.)?\s+de\s+variation|coefficiente?\s+(?:di\s+variazione|de\s+variación)|variationskoefficient)\s*%?`,
    { role: 'cv' },
  ],
  [MEDIAN, { role: 'median' }],
  [
    String.raw`(?:q1|q₁|lower quartile|1st qu\.?(?:artile)?|first quartile|25\s?%|25th(?: percentile)?|p25|q25|q\.?25)`,
    { role: 'q1' },
  ],
  [
    String.raw`(?:q3|q₃|upper quartile|3rd qu\.?(?:artile)?|third quartile|75\s?%|75th(?: percentile)?|p75|q75|q\.?75)`,
    { role: 'q3' },
  ],
  [QUARTILES, { role: 'iqr' }],
  [String.raw`(?:min(?:imum|imo)?\.?|mínimo|smallest|lowest|least)`, { role: 'min' }],
  [String.raw`(?:max(?:imum)?\.?|maks(?:imum)?\.?|massimo|máximo|largest|highest|greatest)`, { role: 'max' }],
  [RANGE, { role: 'range' }],
  [
    String.raw`(?:(?:95|90|99)\s?%\s*)?(?:ci\s*)?(?:lower(?: (?:ci|limit|bound|end))?|lcl|ll|lwr|low)(?:\s*(?:95|90|99)\s?%)?`,
    { role: 'low' },
  ],
  [
    String.raw`(?:(?:95|90|99)\s?%\s*)?(?:ci\s*)?(?:upper(?: (?:ci|limit|bound|end))?|ucl|ul|upr|high)(?:\s*(?:95|90|99)\s?%)?`,
    { role: 'high' },
  ],
  [String.raw`step`, { role: 'step' }],
  [String.raw`(?:d\.?\s?f\.?|degrees of freedom)`, { role: 'df' }],
  [
    String.raw`(?:p|p[- ]?values?)[ _-]?\(?(?:adj(?:usted|\.)?|corrected|corr\.|bonf(?:erroni|\.)?|holm|hochberg|bh|fdr|tukey)\)?\.?(?:\s.*)?|adj(?:usted|\.)?\s?p(?:[- ]?values?)?(?:\s.*)?`,
    { role: 'p' },
  ],
  [String.raw`(?:p|p[- ]?values?|sig\.?|pr\s?\(.*\)|prob\.?|p\s?>\s?\|?[tzf]\|?)`, { role: 'p' }],
  [String.raw`(?:ss|sum of sq(?:uares|\.)?|sum sq\.?|sums of squares)`, { role: 'sum-of-squares' }],
  [String.raw`(?:ms|mean sq(?:uares?|\.)?)`, { role: 'mean-square' }],
  [String.raw`(?:t|t[- ]?(?:value|statistic|ratio))`, { role: 'statistic', method: 't' }],
  [String.raw`(?:f|f[- ]?(?:value|statistic|ratio))`, { role: 'statistic', method: 'F' }],
  [
    String.raw`(?:wald(?: χ²| chi-squared?)?|[χx]\s?(?:²|\^?2)|chi[- ]?sq(?:uared?|\.)?|x-squared)`,
    { role: 'statistic', method: 'chi-squared' },
  ],
  [String.raw`(?:z|z[- ]?(?:value|score))`, { role: 'statistic', method: 'z' }],
  [String.raw`(?:u|mann[- ]whitney u)`, { role: 'statistic', method: 'U' }],
  [String.raw`h`, { role: 'statistic', method: 'H' }],
  [String.raw`r`, { role: 'correlation', method: 'r' }],
  [String.raw`(?:rho|ρ|r_?s)`, { role: 'correlation', method: 'rho' }],
  [String.raw`(?:tau|τ)`, { role: 'correlation', method: 'tau' }],
  [String.raw`(?:d|cohen['’]?s d)`, { role: 'effect', method: 'cohen-d' }],
  [String.raw`(?:η\s?²|eta\s?(?:²|2|squared))`, { role: 'effect', method: 'eta-squared' }],
  [
    String.raw`(?:area|trench(?:es)?|date|dates|years?|context|square|layer|level|spit|grid|plan|plate|fig\.?|figure|ref(?:erence)?s?\.?|source|phase|period|volume|density|weight|wt\.?|mass|length|width|depth|height|thickness|diameter|elevation|m²|m2|m³|ha|rank|order|id|cat\.?(?: no\.?)?|inv\.?(?: no\.?)?|bone|soil|excavated.*|distance.*|altitude.*|easting|northing|lat(?:itude)?|long(?:itude)?)(?:[\s-].*)?`,
    { role: 'not part' },
  ],
];

const COMPILED = PATTERNS.map(
  ([pattern, reading]) => [new RegExp(`^(?:${pattern})$`, 'u'), reading] as const,
);

/** What a head says; undefined where it names a kind, a place or anything else. */
export function readHead(head: string): HeadReading | undefined {
  const plain = head
    .toLowerCase()
    .replaceAll(/[*†‡§¹²³ᵃᵇᶜ]+$/gu, '')
    .replaceAll(/\s+/g, ' ')
    .trim();
  const find = (text: string) => COMPILED.find(([pattern]) => pattern.test(text))?.[1];
  const whole = find(plain);
  if (whole !== undefined) return whole;
  const inner = /\(([^)]*)\)/.exec(plain)?.[1] ?? '';
  const bare = plain.replaceAll(/\s*[([][^)\]]*[)\]]/g, '').trim();
  // "Weight (g)" is a measure; "Spindle whorls (%)" are percentages.
  if (/^(?:%|per\s?cent)$/.test(inner) && /[\s,;:]n$/.test(bare)) return { role: 'count', both: true };
  if (/^(?:%|per\s?cent)$/.test(inner)) return find(bare)?.role === 'cv' ? find(bare) : { role: 'share' };
  if (/^(?:n|counts?)$/.test(inner)) return { role: 'count' };
  const stripped = find(bare) ?? find(bare.replace(/,.*$/, ''));
  if (stripped !== undefined && stripped.role === 'not part' && bare !== plain) return stripped;
  return bare === plain ? undefined : stripped;
}

/** A number of records that a head or a label gives in words: "Early (n = 34)", "Late, N=12". */
export function sizeIn(label: string): number | null {
  const match = /(?:^|[\s(,;[])n\s*=\s*(\d{1,3}(?:[ ,.'’\u00a0\u202f\u2009]\d{3})+|\d+)\s*[)\]]?\s*$/iu.exec(
    label,
  );
  return match === null ? null : Number(match[1].replaceAll(/\D/g, ''));
}
