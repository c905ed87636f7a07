/** Words that belong to a report without saying anything that is checked. */
const EXPECTED =
  /^(?:and|num|denom|numerator|denominator|with|by|of|the|a|an|test|two|one|sample|samples|sided|tailed|tail|rank|sum|signed|ranks|for|on|in|was|is|welch|student|students|mann|whitney|wilcoxon|kruskal|wallis|spearman|kendall|pearson|chi|squared|square|anova|way|data|paired|unpaired|independent|between|groups|effect|size|significant|bonferroni|holm|adjusted|corrected|correction|exact|permutation|permutations|yates|continuity|greenhouse|geisser|huynh|feldt|cramer|cramér|cohen|hedges|fisher|goodness|fit|likelihood|ratio|correlation|bartlett|levene|shapiro|wilk|brown|forsythe|friedman|mcnemar|cochran|fligner|killeen|kolmogorov|smirnov|regression|linear|model|overall|not|assumed|prueba|de|di|des|la|le|del|r|t|f|u|z|zweiseitig|einseitig|bilateral|bilatéral|unilateral|unilatéral|varianzanalyse|variansanalyse|analyse|analisi|análisis|korrelationskoefficient|korrelation|corrélation|korrelationskoeffizient|chi²|rang|rangs|equal|unequal|variances|variance|s)$/i;

/** A unit behind a number that was read. */
const UNIT = /(?<=¦\s*)(?:mm|cm|m|µm|g|kg|mg|ml|l|°C?|h|min|years?|yrs?|days?|%)(?![\p{L}\d])/gu;

/** Words and numbers that nothing was made of. */
export function leftOver(rest: string): string[] {
  return rest
    .replaceAll(UNIT, ' ')
    .split(/[¦\s,;:()[\]=]+/u)
    .map((word) => word.replace(/^[.'’"“”\-–]+|[.'’"“”\-–]+$/gu, ''))
    .flatMap((word) => (/\d/.test(word) ? [word] : word.split(/[-–'’]/)))
    .filter((word) => word !== '' && /[\p{L}\p{N}]/u.test(word) && !EXPECTED.test(word));
}
