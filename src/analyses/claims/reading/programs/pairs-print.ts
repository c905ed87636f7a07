import { type ModelPrint, rowOf, VALUE } from './print-rows.ts';

/** Comparisons of all pairs, as programs print them: triangles of p, lists of differences. */

/** "Pairwise comparisons using t tests", a triangle of p values and how they were adjusted. */
export function pairsOf(text: string): ModelPrint | null {
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

const FOUR = String.raw`(${VALUE})\s+(${VALUE})\s+(${VALUE})\s+(${VALUE})`;
/** "(0 - 1)  2.5  0.08  -0.3  5.4", or "early late  2.5  0.08  -0.3  5.4  False" under "group1 group2 …". */
const PAIR_LINES: readonly (readonly [title: RegExp, line: RegExp])[] = [
  [/^\s*Pairwise Group Comparisons/, new RegExp(String.raw`^\s*\((.*?)\)\s+${FOUR}\s*$`, 'u')],
  [
    /^\s*Multiple Comparison of Means/,
    new RegExp(String.raw`^\s*(\S.*?)\s+${FOUR}\s+(?:True|False)\s*$`, 'u'),
  ],
];

/** A list of all pairs with difference, p and interval. */
function pairsInLines(text: string): ModelPrint | null {
  const lines = text.split(/\r?\n/).filter((line) => line.trim() !== '');
  const pattern = PAIR_LINES.find(([title]) => title.test(lines[0] ?? ''))?.[1];
  if (pattern === undefined) return null;
  const level =
    /\((\d+(?:\.\d+)?)% Confidence/.exec(lines[0])?.[1] ??
    String(100 * (1 - Number(/FWER=(0?\.\d+)/.exec(lines[0])?.[1] ?? '.05')));
  const rows = lines.slice(1).flatMap((line) => {
    const match = pattern.exec(line);
    if (match === null) return [];
    const [, pair, ...cells] = match;
    return [[pair.trim().replaceAll(/\s{2,}/g, ' vs. '), ...cells].join('\t')];
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
export function differencesOf(text: string): ModelPrint | null {
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
