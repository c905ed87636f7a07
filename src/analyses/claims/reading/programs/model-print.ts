import { NUMBER } from '../numbers.ts';
import { differencesOf, pairsOf } from './pairs-print.ts';
import { type ModelPrint, rowOf, VALUE } from './print-rows.ts';
import { summaryPrint } from './summary-print.ts';
import { variancePrint } from './variance-print.ts';

/**
 * The summary of a fitted model (a block of coefficients between quantiles of residuals, formulas, information
 * criteria), comparisons of all pairs, an analysis of variance, or summaries of groups; null for any other text.
 */
export function modelPrint(text: string): ModelPrint | null {
  return pairsOf(text) ?? differencesOf(text) ?? variancePrint(text) ?? summaryOf(text) ?? summaryPrint(text);
}

const HEADS =
  /^\s*(?:Estimate|Value|coef)\s+Std\.?\s?[Ee]rr(?:or)?\b|^\s*coef\s+std err\b|^\s*meandiff\s|^\s*Value\s+Std\.Error\b/;
const RULE = /^\s*[-=*]{3,}\s*$/;
const CODES = /^\s*(?:Signif\. codes|---)/;
function summaryOf(text: string): ModelPrint | null {
  const lines = text.split(/\r?\n/);
  const at = lines.findIndex((line) => HEADS.test(line));
  if (at < 0) return null;
  const heads = headsOf(lines[at]);
  const body: string[][] = [];
  let end = at + 1;
  for (; end < lines.length; end++) {
    if (RULE.test(lines[end]) && body.length === 0) continue;
    const row = rowOf(lines[end], heads.length);
    if (row === null) break;
    body.push(row);
  }
  if (body.length === 0) return null;
  const others = [...lines.slice(0, at), ...lines.slice(end)].filter(
    (line) => line.trim() !== '' && !RULE.test(line) && !CODES.test(line),
  );
  const { reports, beside } = saidOf(others);
  return {
    table: [['Term', ...heads], ...body].map((row) => row.join('\t')).join('\n'),
    caption: '',
    reports,
    beside,
  };
}

const HEAD =
  /Std\.?\s?Err(?:or)?\.?|std err|\[0\.025|0\.975\]|P>\|[tz]\||Pr\(>\|[tz]\|\)|[tz][ -]value|p-value|\S+/g;

function headsOf(line: string): string[] {
  return (line.match(HEAD) ?? []).map((head) => (head === 'Value' ? 'Estimate' : head));
}

/** Pairs of a name and a value in the other lines. */
function saidOf(lines: readonly string[]): { readonly reports: string[]; readonly beside: string[] } {
  const text = lines.join('\n');
  const find = (pattern: string) => new RegExp(pattern, 'u').exec(text)?.groups;
  const overall =
    find(
      String.raw`F-statistic:\s+(?<f>${VALUE}) on (?<a>\d+) and (?<b>\d+) DF,\s+p-value:\s+(?<p>${VALUE})`,
    ) ??
    find(
      String.raw`F-statistic:\s+(?<f>${VALUE})[\s\S]*?Prob \(F-statistic\):\s+(?<p>${VALUE})[\s\S]*?Df Residuals:\s+(?<b>\d+)[\s\S]*?Df Model:\s+(?<a>\d+)`,
    );
  const explained = find(String.raw`(?:Multiple )?R-squared:\s+(?<r>${VALUE})`)?.r;
  const adjusted = find(String.raw`Adj(?:usted|\.) R-squared:\s+(?<r>${VALUE})`)?.r;
  const residual = find(
    String.raw`(?:error|deviance):\s+${VALUE}\s+on\s+(?<df>\d+)\s+degrees of freedom`,
  )?.df;
  const reports: string[] = [];
  if (overall !== undefined)
    reports.push(
      [
        `F(${overall.a}, ${overall.b}) = ${overall.f}`,
        `p ${/^</.test(overall.p) ? overall.p : `= ${overall.p}`}`,
        ...(explained === undefined ? [] : [`R² = ${explained}`]),
        ...(adjusted === undefined ? [] : [`adjusted R² = ${adjusted}`]),
      ].join(', '),
    );
  const used = new Set(
    [overall?.f, overall?.p, overall?.a, overall?.b, explained, adjusted].filter((one) => one !== undefined),
  );
  if (overall !== undefined && residual !== undefined) used.add(residual);
  const beside = lines.flatMap((line) => {
    const numbers = line.match(new RegExp(`(?<![\\p{L}\\d.])(?:${NUMBER}(?:e[-+]?\\d+)?)`, 'gu')) ?? [];
    const isCall = /^(?:Call|Formula|Model|\s*Data|Fit|lm\(|glm\()/.test(line.trim());
    return !isCall && numbers.some((one) => !used.has(one)) ? [line.trim().replaceAll(/\s+/g, ' ')] : [];
  });
  return { reports, beside };
}
