import type { ModelPrint } from './print-rows.ts';

/**
 * Tables of an analysis of variance or deviance as programs set them: heads of several words one blank apart, cells
 * set to the right below them, empty ones left out, strata below one another.
 */
export function variancePrint(text: string): ModelPrint | null {
  const lines = text.split(/\r?\n/);
  const caption: string[] = [];
  const beside: string[] = [];
  const rows: { readonly label: string; readonly cells: readonly string[] }[] = [];
  let heads: readonly Head[] = [];
  let first: readonly Head[] | null = null;
  let stratum = '';
  for (const line of lines) {
    const met = headsIn(line);
    if (met !== null) {
      heads = met;
      first ??= met;
      continue;
    }
    if (line.trim() === '' || /^\s*(?:---|Signif\. codes)/.test(line)) continue;
    const row = heads.length === 0 ? null : cellsUnder(line, heads);
    if (row !== null) rows.push({ ...row, label: stratum === '' ? row.label : `${stratum}, ${row.label}` });
    else if (/^Error: /.test(line)) stratum = line.trim();
    else if (rows.length === 0 && !/^\S+:?\s.*~|~/.test(line)) caption.push(line.trim());
    else if (/\d/.test(line) && !line.includes('~')) beside.push(line.trim());
  }
  if (first === null || rows.length === 0) return null;
  const width = first.length;
  const table = [
    ['Source', ...first.map(({ name }) => name.replace('_', ' '))],
    ...rows.map(({ label, cells }) => [label, ...cells.slice(0, width)]),
  ];
  return {
    table: table.map((row) => row.join('\t')).join('\n'),
    caption: caption.join(' '),
    reports: [],
    beside,
  };
}

interface Head {
  readonly name: string;
  /** Where it ends, and with it the cells below. */
  readonly end: number;
}

const HEAD =
  /Sum (?:of )?Sq|Mean Sq|F value|F-value|p-value|Resid\. Df|Resid\. Dev|Res\.Df|Pr\(>\w+\)|PR\(>\w+\)|sum_sq|mean_sq|SumOfSqs|Deviance|deviance|logLik|(?:num|den|Num|Den)DF|npar|Chisq|AIC|BIC|RSS|R2|Df|df|F(?=\s|$)/g;
/** What makes a line of heads one of variances. */
const OF_VARIANCE = /Sum (?:of )?Sq|sum_sq|SumOfSqs|Resid\. Df|Res\.Df|npar|numDF/;

function headsIn(line: string): Head[] | null {
  if (!OF_VARIANCE.test(line) || /\d/.test(line.replace(/R2/g, ''))) return null;
  const heads = [...line.matchAll(HEAD)].map((match) => ({
    name: match[0],
    end: match.index + match[0].length,
  }));
  const covered = heads.reduce((sum, { name }) => sum + name.replaceAll(' ', '').length, 0);
  return heads.length >= 2 && covered === line.replaceAll(/\s/g, '').length ? heads : null;
}

const CELL = /(?<=\s)(?:<\s?)?[-+]?(?:\d+\.?\d*|\.\d+)(?:e[-+]?\d+)?(?=\s|$)|(?<=\s)(?:NaN|NA)(?=\s|$)/g;

/** A label and its cells, each under the head that ends nearest; null where none stands under a head. */
function cellsUnder(line: string, heads: readonly Head[]): { label: string; cells: string[] } | null {
  const cells = heads.map(() => '');
  let from = line.length;
  for (const match of line.matchAll(CELL)) {
    const end = match.index + match[0].length;
    const distances = heads.map((head) => Math.abs(head.end - end));
    const at = distances.indexOf(Math.min(...distances));
    if (distances[at]! > 1 || cells[at] !== '') continue;
    cells[at] = /^Na?N?A?$/i.test(match[0]) ? '' : match[0];
    from = Math.min(from, match.index);
  }
  const label = line.slice(0, from).trim();
  return cells.every((cell) => cell === '') || label === '' ? null : { label, cells };
}
