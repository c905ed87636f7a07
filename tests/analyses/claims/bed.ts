import { reference } from '../../references/reference.ts';
import type { Row } from './claims.ts';

/** Values that R computed of open data sets: tests/references/scripts/printed-bed.R. */
interface Bed {
  readonly samples: readonly {
    readonly data: string;
    readonly of: string;
    readonly step: number;
    readonly groups: readonly string[];
    /** n, mean, sd, se, cv, median, q1, q3, min, max, low, high of each group. */
    readonly values: readonly (readonly number[])[];
    readonly all: readonly number[];
  }[];
  readonly tests: readonly BedTest[];
  readonly counts: readonly {
    readonly rows: readonly string[];
    readonly columns: readonly string[];
    readonly cells: readonly (readonly number[])[];
    readonly chi: readonly number[];
    readonly df: readonly number[];
    readonly p: readonly number[];
    readonly v: readonly number[];
    readonly yates: readonly number[];
  }[];
}

export interface BedTest {
  readonly kind: string;
  readonly statistic: readonly number[];
  readonly df: readonly number[];
  readonly p: readonly number[];
  readonly n: readonly number[];
  readonly effect?: readonly number[];
  readonly ci?: readonly number[];
  readonly eta?: readonly number[];
  readonly epsilon?: readonly number[];
  readonly table?: readonly number[];
}

export const bed = reference<Bed>('printed-bed');

/** How a paper prints its numbers. */
export interface Style {
  readonly name: string;
  readonly decimals: number;
  readonly percents: number;
  readonly mark: '.' | ',';
  readonly minus: string;
  /** The nought before the point is left out of p, r and effect sizes. */
  readonly bare: boolean;
  readonly p: (p: number, style: Style) => string;
  readonly cut?: true;
}

function fixed(value: number, decimals: number, cut = false): string {
  const exact = Number(value.toPrecision(14));
  const scale = 10 ** decimals;
  const scaled = Number((Math.abs(exact) * scale).toPrecision(14));
  const whole = cut ? Math.floor(scaled) : Math.round(scaled);
  const digits = String(whole).padStart(decimals + 1, '0');
  const text = decimals === 0 ? digits : `${digits.slice(0, -decimals)}.${digits.slice(-decimals)}`;
  return exact < 0 && whole > 0 ? `-${text}` : text;
}

export function printed(value: number, style: Style, decimals = style.decimals, bare = false): string {
  const text = fixed(value, decimals, style.cut === true);
  return (bare ? text.replace(/^(-?)0\./, '$1.') : text).replace('.', style.mark).replace('-', style.minus);
}

const exactP = (decimals: number) => (p: number, style: Style) =>
  p < 10 ** -decimals
    ? `< ${printed(10 ** -decimals, style, decimals, style.bare)}`
    : `= ${printed(p, style, decimals, style.bare)}`;

export const STYLES: readonly Style[] = [
  { name: 'psychology', decimals: 2, percents: 1, mark: '.', minus: '−', bare: true, p: exactP(3) },
  {
    name: 'program',
    decimals: 4,
    percents: 2,
    mark: '.',
    minus: '-',
    bare: false,
    p: (p, style) => (p < 1e-4 ? `= ${p.toExponential(3)}` : `= ${printed(p, style, 5)}`),
  },
  { name: 'German', decimals: 2, percents: 1, mark: ',', minus: '–', bare: false, p: exactP(3) },
  {
    name: 'coarse',
    decimals: 1,
    percents: 0,
    mark: '.',
    minus: '-',
    bare: false,
    p: (p) => (p < 0.001 ? '< 0.001' : p < 0.01 ? '< 0.01' : p < 0.05 ? '< 0.05' : '> 0.05'),
  },
  { name: 'fine', decimals: 3, percents: 2, mark: '.', minus: '−', bare: false, p: exactP(4) },
  { name: 'cut off', decimals: 2, percents: 1, mark: '.', minus: '-', bare: true, p: exactP(3), cut: true },
  { name: 'two places', decimals: 2, percents: 0, mark: '.', minus: '-', bare: true, p: exactP(2) },
  { name: 'French', decimals: 1, percents: 1, mark: ',', minus: '-', bare: false, p: exactP(3) },
];

/** A test as the style reports it; null where that style prints no such test. */
export function report(test: BedTest, style: Style): { readonly text: string; readonly row: Row } | null {
  const [s] = test.statistic;
  const [p] = test.p;
  const stat = printed(s, style);
  const df = test.df.map((one) =>
    Number.isInteger(one) ? String(one) : printed(one, style, Math.max(1, style.decimals)),
  );
  const part = style.mark === ',' ? '; ' : ', ';
  const ending = `${part}p ${style.p(p, style)}`;
  const named = (name: string, separate = ', ') =>
    style.name === 'program'
      ? `${name} = ${stat}, df = ${df.join(separate)}${ending.replace('p ', 'p-value ')}`
      : `${name}(${df.join(part)}) = ${stat}${ending}`;
  const own = (text: string, more: Row = {}) => ({
    text,
    row: { quantity: 'statistic', printed: text, ...more } as Row,
  });
  switch (test.kind) {
    case 'student':
    case 'welch':
    case 'paired': {
      const effect =
        test.effect === undefined || style.cut ? '' : `${part}d = ${printed(test.effect[0], style)}`;
      const { n } = test;
      const sizes = n.length === 2 && style.name === 'fine' ? `${part}n1 = ${n[0]}${part}n2 = ${n[1]}` : '';
      return own(`${named('t')}${effect}${sizes}`);
    }
    case 'u':
      return own(
        style.decimals > 2
          ? `U = ${printed(s, style, 1)}, n1 = ${test.n[0]}, n2 = ${test.n[1]}${ending}`
          : `U(${test.n.join(part)}) = ${printed(s, style, Number.isInteger(s) ? 0 : 1)}${ending}`,
      );
    case 'u-tied':
      return own(
        `W = ${printed(s, style, Number.isInteger(s) ? 0 : 1)}${part}n1 = ${test.n[0]}${part}n2 = ${test.n[1]}${ending}`,
      );
    case 'anova':
    case 'welch-anova': {
      const eta =
        test.eta === undefined || style.cut
          ? ''
          : `${part}η² = ${printed(test.eta[0], style, Math.max(2, style.decimals), style.bare)}`;
      return own(
        style.name === 'program'
          ? `F = ${stat}, num df = ${df[0]}, denom df = ${df[1]}${ending.replace('p ', 'p-value ')}`
          : `${named('F')}${eta}`,
      );
    }
    case 'kruskal':
      return own(
        style.name === 'program'
          ? `Kruskal-Wallis chi-squared = ${stat}, df = ${df[0]}${ending.replace('p ', 'p-value ')}`
          : `H(${df[0]}${part}N = ${test.n[0]}) = ${stat}${ending}`,
      );
    case 'pearson':
      return own(`${named('r')}`, { quantity: 'correlation' });
    case 'spearman':
      return own(
        `rho = ${printed(s, style, Math.max(2, style.decimals), style.bare)}${part}n = ${test.n[0]}${ending}`,
        { quantity: 'correlation' },
      );
    case 'kendall':
      return own(
        `tau = ${printed(s, style, Math.max(2, style.decimals), style.bare)}${part}n = ${test.n[0]}${ending}`,
        { quantity: 'correlation' },
      );
    case 'signed':
      return own(`V = ${printed(s, style, 0)}${part}n = ${test.n[0]}${ending}`);
    default:
      return null;
  }
}
