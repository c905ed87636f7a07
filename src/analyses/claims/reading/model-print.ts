import { NUMBER } from './numbers.ts';
import { variancePrint } from './variance-print.ts';

/** What a statistics program printed of a fitted model, parted into what the readers of tables and reports know. */
export interface ModelPrint {
  /** The table of coefficients, or of comparisons, as it stands or with its heads in words. */
  readonly table: string;
  readonly caption: string;
  /** Its other lines, said again as a paper reports them. */
  readonly reports: readonly string[];
  /** Lines and values of which nothing is made. */
  readonly beside: readonly string[];
}

/**
 * The summary of a fitted model (a block of coefficients between quantiles of residuals, formulas, information
 * criteria) or a triangle of p values of all pairs; null for any other text.
 */
export function modelPrint(text: string): ModelPrint | null {
  return pairsOf(text) ?? differencesOf(text) ?? variancePrint(text) ?? summaryOf(text);
}

const HEADS =
  /^\s*(?:Estimate|Value|coef)\s+Std\.?\s?[Ee]rr(?:or)?\b|^\s*coef\s+std err\b|^\s*meandiff\s|^\s*Value\s+Std\.Error\b/;
const RULE = /^\s*[-=*]{3,}\s*$/;
const CODES = /^\s*(?:Signif\. codes|---)/;
/** "1.5e-05", ".5", "< 2.2e-16", "NA": what stands in a cell of a program's table. */
export const VALUE = String.raw`(?:<\s?)?[-+]?(?:\d+\.?\d*|\.\d+)(?:e[-+]?\d+)?|NA|NaN|nan|inf|-?Inf`;

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

/** A label and as many values as there are heads, or fewer where the last are empty; null for another line. */
function rowOf(line: string, count: number): string[] | null {
  const bare = line.replace(/\s*(?:\*{1,3}|\.|(?<=\s)\+)?\s*$/, '');
  const match = new RegExp(
    String.raw`^\s*(?<label>\S.*?)\s+(?<values>(?:${VALUE})(?:\s+(?:${VALUE}))*)$`,
    'u',
  ).exec(bare)?.groups;
  if (match === undefined) return null;
  const values = match.values.match(new RegExp(VALUE, 'gu')) ?? [];
  if (values.length < count) return values.length >= 2 ? [match.label, ...values] : null;
  const more = values.length - count;
  // A label may end in a number: "phase 2".
  return [
    [match.label, ...values.slice(0, more)].join(' '),
    ...values.slice(more).map((one) => one.replace(/^(?:NA|NaN|nan)$/, '')),
  ];
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

/** "Pairwise comparisons using t tests", a triangle of p values and how they were adjusted. */
function pairsOf(text: string): ModelPrint | null {
  if (!/^\s*Pairwise comparisons using/u.test(text)) return pairsInLines(text);
  const lines = text.split(/\r?\n/).filter((line) => line.trim() !== '');
  const title = lines[0].trim();
  const how = /P value adjustment method:\s*(\S+)/.exec(text)?.[1] ?? '';
  const from = lines.findIndex((line) => /^data:/.test(line));
  const body = lines.slice(from + 1).filter((line) => !/^P value adjustment/.test(line));
  const [head, ...rows] = body;
  if (head === undefined || rows.length === 0) return null;
  const cells = rows.map(
    (line) => line.match(new RegExp(String.raw`(?<=\s)(?:${VALUE}|-)(?=\s|$)`, 'gu')) ?? [],
  );
  const starts = rows.map((line, i) => line.slice(0, line.length - tailLength(line, cells[i].length)).trim());
  const heads = head.trim().split(/\s{2,}|\s(?=\S)/u);
  const count = Math.max(...cells.map((row) => row.length));
  // Names with blanks in them cannot be told apart: columns are the rows before, the first one is left.
  const columns =
    heads.length === count
      ? heads
      : [heads.slice(0, heads.length - count + 1).join(' '), ...starts.slice(0, count - 1)];
  const pairs = cells.flatMap((row, r) =>
    row.flatMap((cell, c) =>
      cell === '-' || cell === 'NA'
        ? []
        : [`${starts[r]} vs. ${columns[c] ?? ''}\t${cell.replace(/\s/g, '')}`],
    ),
  );
  if (pairs.length === 0) return null;
  const adjusted = how !== '' && how !== 'none';
  return {
    table: [`Comparison\tp value${adjusted ? ` (${how})` : ''}`, ...pairs].join('\n'),
    caption: title,
    reports: [],
    beside: [],
  };
}

/** Length of the last so many values of a line, with the blanks before them. */
function tailLength(line: string, count: number): number {
  const tail = new RegExp(String.raw`(?:\s+(?:${VALUE}|-)){${count}}\s*$`, 'u').exec(line);
  return tail === null ? 0 : tail[0].length;
}

/** A list of all pairs with difference, p and interval. */
function pairsInLines(text: string): ModelPrint | null {
  const lines = text.split(/\r?\n/).filter((line) => line.trim() !== '');
  if (!/^\s*Pairwise Group Comparisons/.test(lines[0] ?? '')) return null;
  const level = /\((\d+(?:\.\d+)?)% Confidence/.exec(lines[0])?.[1] ?? '95';
  const rows = lines.slice(2).flatMap((line) => {
    const match = new RegExp(
      String.raw`^\s*\((.*?)\)\s+(${VALUE})\s+(${VALUE})\s+(${VALUE})\s+(${VALUE})\s*$`,
      'u',
    ).exec(line);
    return match === null ? [] : [match.slice(1).join('\t')];
  });
  return rows.length === 0
    ? null
    : {
        table: [
          [
            'Comparison',
            'Difference',
            'p (Tukey)',
            `Lower ${Math.round(Number(level))}%`,
            `Upper ${Math.round(Number(level))}%`,
          ].join('\t'),
          ...rows,
        ].join('\n'),
        caption: lines[0].trim(),
        reports: [],
        beside: [],
      };
}

/** Differences of all pairs of each factor, below one another: "diff lwr upr p adj". */
function differencesOf(text: string): ModelPrint | null {
  const level = /(\d+)% family-wise confidence level/.exec(text)?.[1];
  if (level === undefined) return null;
  const rows = text.split(/\r?\n/).flatMap((line) => {
    const row = rowOf(line, 4);
    return row !== null && row.length === 5 ? [row.join('\t')] : [];
  });
  if (rows.length === 0) return null;
  return {
    table: [
      ['Comparison', 'Difference', `Lower ${level}%`, `Upper ${level}%`, 'p (Tukey)'].join('\t'),
      ...rows,
    ].join('\n'),
    caption: text.trim().split(/\r?\n/)[0]!.trim(),
    reports: [],
    beside: [],
  };
}
