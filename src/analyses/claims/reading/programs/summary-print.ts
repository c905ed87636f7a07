import { type ModelPrint, VALUE } from './print-rows.ts';

/** What programs print of groups without a test: summaries below one another or side by side, named values, frames. */
export function summaryPrint(text: string): ModelPrint | null {
  const lines = text.split(/\r?\n/).map((line) => line.trimEnd());
  return (
    tablesOfMeans(lines) ?? summariesOf(lines) ?? sideBySide(lines) ?? frameOf(lines) ?? namedValues(lines)
  );
}

const ONE = new RegExp(`^(?:${VALUE})$`, 'u');
const ALL = new RegExp(String.raw`(?<=^|\s)(?:${VALUE})(?=\s|$)`, 'gu');

/** Names over values that end where they do: names may have blanks in them. Null where a line holds anything else. */
function namedLine(
  names: string,
  values: string,
): { readonly heads: readonly string[]; readonly cells: readonly string[] } | null {
  const cells = [...values.matchAll(ALL)];
  if (cells.length < 2 || values.replaceAll(ALL, '').trim() !== '') return null;
  const ends = cells.map((match) => match.index + match[0].length);
  const heads = ends.map((end, i) =>
    names.slice(i === 0 ? 0 : ends[i - 1], i === ends.length - 1 ? undefined : end).trim(),
  );
  const plain = heads.every((head) => head !== '' && !ONE.test(head));
  return plain ? { heads, cells: cells.map(([cell]) => cell) } : null;
}

/** "Tables of means": the grand mean, then the levels of each factor over their means and, as "rep", their numbers. */
function tablesOfMeans(lines: readonly string[]): ModelPrint | null {
  const filled = lines.filter((line) => line.trim() !== '');
  if (!/^\s*Tables of means\s*$/.test(filled[0] ?? '')) return null;
  const at = filled.findIndex((line) => /^\s*Grand mean\s*$/.test(line));
  const rows: string[][] = [];
  const used = new Set([filled[0]]);
  filled.forEach((line, i) => {
    const named = namedLine(line, filled[i + 1] ?? '');
    if (named === null) return;
    const sizes = /^\s*rep\s/.test(filled[i + 2] ?? '') ? (filled[i + 2].match(ALL) ?? []) : [];
    named.heads.forEach((level, k) => {
      rows.push([level, named.cells[k], sizes[k]?.replace(/\.0+$/, '') ?? '']);
    });
    for (const one of [line, filled[i + 1], ...(sizes.length > 0 ? [filled[i + 2]] : [])]) used.add(one);
  });
  if (rows.length === 0) return null;
  const grand = at < 0 ? undefined : filled[at + 1]?.trim();
  if (grand !== undefined && ONE.test(grand)) {
    rows.push(['Overall', grand, '']);
    for (const one of [filled[at], filled[at + 1]]) used.add(one);
  }
  const isNumbered = rows.some(([, , size]) => size !== '');
  return {
    ...printOf(
      ['Level', 'Mean', ...(isNumbered ? ['n'] : [])],
      rows.map((row) => row.slice(0, isNumbered ? 3 : 2)),
    ),
    beside: filled.filter((line) => !used.has(line) && /\d/.test(line)).map((line) => line.trim()),
  };
}

/** "group: early", the names and the values of its summary, a line of dashes, the next group. */
function summariesOf(lines: readonly string[]): ModelPrint | null {
  const filled = lines.filter((line) => line.trim() !== '' && !/^\s*-{5,}\s*$/.test(line));
  const groups = filled.flatMap((line, i) => {
    const label = /^\s*\S.*?: ?(?<label>\S.*)$/u.exec(line)?.groups?.label;
    const named = label === undefined ? null : namedLine(filled[i + 1] ?? '', filled[i + 2] ?? '');
    return label === undefined || named === null ? [] : [{ label, ...named }];
  });
  if (groups.length < 2 || groups.length * 3 !== filled.length) return null;
  const heads = [...new Set(groups.flatMap((group) => group.heads))];
  const cell = ({ heads: own, cells }: (typeof groups)[number], head: string) =>
    cells[own.indexOf(head)] ?? '';
  return printOf(
    ['Group', ...heads],
    groups.map((group) => [group.label, ...heads.map((head) => cell(group, head))]),
  );
}

const SIDE = new RegExp(
  String.raw`(?<name>(?:\p{L}|\d\p{L})[\p{L}\d. ']*?)\s*:\s*(?<value>${VALUE})(?=\s|$)`,
  'gu',
);

/** Summaries of several columns of a frame: "Min.   :39.00   Min.   : 1.0" below the names of the columns. */
function sideBySide(lines: readonly string[]): ModelPrint | null {
  const filled = lines.filter((line) => line.trim() !== '');
  const [names, ...rest] = filled;
  if (names === undefined || rest.length < 4) return null;
  const measures = names.trim().split(/\s{2,}/);
  const rows = rest.map((line) => ({
    line,
    cells: [...line.matchAll(SIDE)].map(({ groups }) => groups ?? {}),
  }));
  const whole = rows.filter(({ cells }) => cells.length === measures.length && alike(cells));
  if (whole.length < 4) return null;
  return {
    ...printOf(
      ['Measure', ...whole.map(({ cells }) => cells[0].name)],
      measures.map((measure, i) => [measure, ...whole.map(({ cells }) => cells[i].value)]),
    ),
    beside: rows.filter((row) => !whole.includes(row)).map(({ line }) => line.trim().replaceAll(/\s+/g, ' ')),
  };
}

function alike(cells: readonly { readonly [name: string]: string }[]): boolean {
  return cells.every(({ name }) => name === cells[0].name);
}

/** A frame whose lines are numbered from 1: the numbers are no labels, and words before the figures are. */
function frameOf(lines: readonly string[]): ModelPrint | null {
  const [head, ...rows] = lines.filter((line) => line.trim() !== '');
  if (head === undefined || rows.length < 2) return null;
  const heads = head.trim().split(/\s+/);
  const body = rows.map((line, i) => {
    const { no, label, values } =
      new RegExp(
        String.raw`^\s*(?<no>\d+)\s+(?<label>\S.*?)\s+(?<values>(?:${VALUE})(?:\s+(?:${VALUE}))*)$`,
        'u',
      ).exec(line)?.groups ?? {};
    if (Number(no) !== i + 1 || ONE.test(label)) return null;
    return { label: label.replaceAll(/\s+/g, ' '), cells: values.split(/\s+/) };
  });
  const [first] = body;
  if (first == null || body.includes(null)) return null;
  // A label may end in a number: "diet 1".
  const width = heads.length - 1;
  if (width < 1 || body.some((row) => (row?.cells.length ?? 0) < width)) return null;
  return printOf(
    heads,
    body.map((row) => {
      const { label, cells } = row ?? first;
      const own = cells.length - width;
      return [[label, ...cells.slice(0, own)].join(' '), ...cells.slice(own)];
    }),
  );
}

/** Two lines: names, and a value below each. */
function namedValues(lines: readonly string[]): ModelPrint | null {
  const filled = lines.filter((line) => line.trim() !== '');
  if (filled.length !== 2 || /[\t;,|]/.test(filled[0])) return null;
  const named = namedLine(filled[0], filled[1]);
  return named === null ? null : printOf(['', ...named.heads], [['values', ...named.cells]]);
}

function printOf(heads: readonly string[], rows: readonly (readonly string[])[]): ModelPrint {
  return {
    table: [heads, ...rows].map((row) => row.join('\t')).join('\n'),
    caption: '',
    reports: [],
    beside: [],
  };
}
