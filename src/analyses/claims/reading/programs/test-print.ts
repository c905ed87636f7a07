import { NUMBER } from '../numbers.ts';

/** What a statistics program printed, said again as a paper reports it. */
export interface ProgramPrint {
  /** The figures, in the words of a report: "t = 2.31, df = 18, p-value = .033, 95 % CI [0.1, 1.9]". */
  readonly report: string;
  /** Words that name the test and hold no figure. */
  readonly title: string;
  /** Means of the groups that were tested. */
  readonly means: readonly GroupMean[];
  /** What it also printed and no report says: other estimates, arrays. */
  readonly beside: readonly string[];
}

export interface GroupMean {
  /** As the program calls it: a term of the groups, or "x" and "y", in the order in which they were given. */
  readonly group: string;
  readonly value: string;
}

/**
 * The printed answer of a test as statistics programs give it: a block under "data:" with its interval and its
 * estimates, or a named record such as `TtestResult(statistic=2.31, pvalue=0.033, df=18)`. Null for any other text.
 */
export function programPrint(text: string): ProgramPrint | null {
  return recordPrint(text) ?? tablePrint(text) ?? blockPrint(text);
}

/** Programs' names of records -> the symbol of their statistic; those of tests that have none keep their name. */
const STATISTICS: Readonly<Record<string, string>> = {
  ttest: 't',
  mannwhitneyu: 'U',
  kruskal: 'H',
  foneway: 'F',
  pearsonr: 'r',
  chi2contingency: 'χ²',
  powerdivergence: 'χ²',
  wilcoxon: 'V',
  ranksums: 'z',
  levene: 'F',
  bartlett: 'χ²',
  fligner: 'χ²',
  friedmanchisquare: 'χ²',
  median: 'χ²',
  alexandergovern: 'χ²',
};

const RECORD = /^\s*(?<name>[A-Za-z_]\w*?)_?(?:Result|Interval)\s*\((?<inner>[\s\S]*)\)\s*$/u;

function recordPrint(text: string): ProgramPrint | null {
  const { name, inner } = RECORD.exec(text)?.groups ?? {};
  if (name === undefined || inner === undefined || !inner.includes('=')) return null;
  const plain = inner.replaceAll(/(?:\w+\.)?(?:float|u?int)\d*\(([^()]*)\)/g, '$1');
  const arrays = [...plain.matchAll(/(\w+)=(?:\w+\.)?array\(([^()]*)\)/g)].map(
    ([, said, held]) => `${said} ${held.replaceAll(/\s+/g, ' ')}`,
  );
  const fields = [...plain.matchAll(new RegExp(`(\\w+)=(${NUMBER})(?=[,)\\s]|$)`, 'gu'))].map(
    ([, field, value]) => ({ field: field.toLowerCase(), value }),
  );
  if (fields.length === 0) return null;
  const symbol = STATISTICS[name.toLowerCase().replaceAll('_', '')] ?? null;
  const [low, high] = ['low', 'high'].map((end) => fields.find(({ field }) => field === end)?.value);
  const beside: string[] = [...arrays];
  const said = fields.flatMap(({ field, value }) => {
    if (field === 'statistic') {
      if (symbol !== null) return [`${symbol} = ${value}`];
      // The statistic of a coefficient is the coefficient.
      if (/significance/i.test(name)) return [`association = ${value}`];
      beside.push(`${field} ${value}`);
      return [];
    }
    if (field === 'rvalue') return [`r = ${value}`];
    if (field === 'pvalue') return [`p = ${value}`];
    if (field === 'df' || field === 'dof') return [`df = ${value}`];
    if (field !== 'low' && field !== 'high') beside.push(`${field} ${value}`);
    return [];
  });
  if (low !== undefined && high !== undefined) said.push(`CI [${low}; ${high}]`);
  // A record of a name that is not known here is of a test that is not computed here.
  const known = symbol !== null || /significance|linregress|confidence|fisher|permutation/i.test(name);
  return { report: said.join('; '), title: known ? name : `${name}, of another question`, means: [], beside };
}

/** The summary of a table of counts: its number of cases and the test of independence. */
function tablePrint(text: string): ProgramPrint | null {
  const { n, chi, df, p } =
    new RegExp(
      `Number of cases in table:\\s*(?<n>\\d+)[\\s\\S]*?Chisq\\s*=\\s*(?<chi>${NUMBER}), df\\s*=\\s*(?<df>\\d+), p-value\\s*(?<p>[=<]\\s*[\\d.e-]+)`,
      'u',
    ).exec(text)?.groups ?? {};
  if (n === undefined) return null;
  return { report: `χ² = ${chi}; df = ${df}; n = ${n}; p ${p}`, title: '', means: [], beside: [] };
}

const ESTIMATES: Readonly<Record<string, string>> = {
  cor: 'r',
  rho: 'rho',
  tau: 'tau',
  'odds ratio': 'OR',
  'mean difference': 'mean difference',
  'mean of the differences': 'mean difference',
};

/** A block: title, "data: …", the statistic, what it is tested against, an interval, estimates. */
function blockPrint(text: string): ProgramPrint | null {
  // What the data were called ends with its line, where lines were kept.
  const flat = text
    .replace(/\bdata:[^\n]*\n/u, 'data: … ')
    .replaceAll(/\s+/g, ' ')
    .trim();
  const parts =
    /^(?<title>.*?)\s*\bdata: (?<data>.*?) (?<figures>(?:[\p{L}][\p{L}\p{N}'’-]*(?: [\p{L}][\p{L}'’-]*){0,3} ?(?:=|<)|p-value).*)$/u.exec(
      flat,
    )?.groups;
  if (parts === undefined) return null;
  const estimates = /\bsample estimates: (?<estimates>.*)$/u.exec(parts.figures)?.groups?.estimates ?? '';
  const interval = new RegExp(
    `(?<level>\\d+(?:\\.\\d+)?) percent confidence interval: (?<low>${NUMBER}|-?Inf) (?<high>${NUMBER}|Inf)`,
    'u',
  ).exec(parts.figures);
  const tested = parts.figures
    .replace(/\bsample estimates: .*$/u, '')
    .replace(interval?.[0] ?? '\0', '')
    .replace(/\balternative hypothesis: .*?(?= \d+(?:\.\d+)? percent|$)/u, '')
    .replaceAll(/(?<=[\d.)]) (?=[\p{L}])/gu, '; ')
    .replace(/\bnumber of trials =/u, 'n =')
    .trim();
  const beside: string[] = [];
  // "T = 90", of an exact tau, counts pairs that agree; it is no t.
  const pairs = /Kendall/.test(parts.title) ? /^T = \S+/.exec(tested)?.[0].replace(/;$/, '') : undefined;
  if (pairs !== undefined) beside.push(pairs);
  const named = new RegExp(`^(?<names>.*?) (?<values>${NUMBER}(?: ${NUMBER})*)$`, 'u').exec(
    estimates,
  )?.groups;
  const symbol = named === undefined ? undefined : ESTIMATES[named.names];
  const means = named === undefined ? [] : meansOf(named.names, named.values);
  if (estimates !== '' && symbol === undefined && means.length === 0) beside.push(estimates);
  const tried = /\balternative hypothesis: .*?\b(?:equal to|greater than|less than) (-?[\d.]+)/u.exec(
    parts.figures,
  )?.[1];
  // Against any other value than nought (or one, of a ratio) it is another question than is computed here.
  const shifted = tried !== undefined && tried !== '0' && tried !== '1';
  if (shifted) beside.push(`tested against ${tried}`);
  const one = /\balternative hypothesis: .*?\b(?:greater|less) than\b/u.test(parts.figures);
  return {
    report: [
      pairs === undefined ? tested : tested.slice(pairs.length).replace(/^[;,\s]+/, ''),
      ...(symbol === undefined || named === undefined ? [] : [`${symbol} = ${named.values}`]),
      ...(interval?.groups === undefined || /Inf/.test(interval[0])
        ? []
        : [`${interval.groups.level} % CI [${interval.groups.low}; ${interval.groups.high}]`]),
    ].join('; '),
    title: `${parts.title}${one ? ' (one-sided)' : ''}${shifted ? ', of another question' : ''}`,
    means,
    beside,
  };
}

/** "mean in group early mean in group late", "mean of x mean of y" over as many values. */
function meansOf(names: string, values: string): GroupMean[] {
  const groups = names.split(/(?:^|\s)mean (?:in group|of) /u).slice(1);
  const each = values.split(' ');
  return /^mean (?:in group|of) /u.test(names) && groups.length === each.length
    ? groups.map((group, i) => ({ group, value: each[i] }))
    : [];
}
