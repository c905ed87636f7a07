import { type Hand, number, pText } from './styles.ts';
import type { TestValues } from './values.ts';

/** One printed report, and what its row of the claims file says that it is. */
export interface Said {
  readonly text: string;
  readonly quantity: string;
  readonly test?: string;
  readonly sided?: string;
}

const NAMES: Readonly<
  Record<string, { readonly symbol: string; readonly test: string; readonly words: string }>
> = {
  student: { symbol: 't', test: 't', words: 'Student’s t-test' },
  welch: { symbol: 't', test: 't', words: 'Welch’s t-test' },
  greater: { symbol: 't', test: 't', words: 't-test' },
  paired: { symbol: 't', test: 't', words: 'paired t-test' },
  'one-sample': { symbol: 't', test: 't', words: 'one-sample t-test' },
  anova: { symbol: 'F', test: 'F', words: 'one-way ANOVA' },
  'welch-anova': { symbol: 'F', test: 'F', words: 'Welch’s ANOVA' },
  variance: { symbol: 'F', test: 'F', words: 'F-test' },
  regression: { symbol: 'F', test: 'F', words: 'regression' },
  kruskal: { symbol: 'H', test: 'H', words: 'Kruskal–Wallis test' },
  bartlett: { symbol: 'χ²', test: 'chi-squared', words: 'Bartlett’s test' },
};

/** Degrees of freedom as printed: whole ones bare, broken ones to one place or to those of the style. */
function degrees(test: TestValues, hand: Hand, places = Math.max(1, Math.min(3, hand.decimals))): string[] {
  return test.df.map((df) => (Number.isInteger(df) ? String(df) : number(df, hand, places)));
}

/** Statistic with its df and p, in ten forms. */
const FORMS: readonly ((parts: Parts, hand: Hand) => string)[] = [
  ({ s, df, value, p }, { part, space }) =>
    `${s}(${df.join(part.trim() === ',' ? part : `${part.trimStart()}`)})${space}=${space}${value}${part}${p}`,
  ({ s, df, value, p }, { part, space }) =>
    `${s}${space}=${space}${value}${part}df${space}=${space}${df.join(part)}${part}${p}`,
  ({ s, df, value, p, comma }, { part, space }) =>
    `${s}${df.join(comma ? ';' : ',')}${space}=${space}${value}${part}${p}`,
  ({ s, df, value, p, comma }, { part, space }) =>
    `(${s}${space}=${space}${value}${part}d.f.${space}=${space}${df.join(comma ? '; ' : ', ')}${part}${p})`,
  ({ s, df, value, p, comma }, { part, space }) =>
    `${s}[${df.join(comma ? '; ' : ', ')}]${space}=${space}${value}${part}${p}`,
  ({ s, df, value, p, comma }, { space }) =>
    `${s}(${df.join(comma ? '; ' : ', ')})${space}=${space}${value} (${p})`,
  ({ s, df, value, p, comma }, { part }) => `$${s}_{${df.join(comma ? ';' : ',')}} = ${value}$${part}$${p}$`,
  ({ s, df, value, p, words, comma }, { part, space }) =>
    `${words}: ${s}(${df.join(comma ? '; ' : ', ')})${space}=${space}${value}${part}${p}`,
  ({ s, df, value, p, comma }, { part, space }) =>
    `${s}${space}=${space}${value} (${df.join(comma ? '; ' : ', ')} df)${part}${p}`,
  ({ s, df, value, p }, { part, space }) =>
    `${p}${part}${s}${space}=${space}${value}${part}${df.length === 2 ? `df1${space}=${space}${df[0]}${part}df2${space}=${space}${df[1]}` : `df${space}=${space}${df[0]}`}`,
];

interface Parts {
  readonly s: string;
  readonly df: readonly string[];
  readonly value: string;
  readonly p: string;
  readonly words: string;
  readonly comma: boolean;
}

function pOf(test: TestValues, hand: Hand): string {
  const text = pText(test.p[0], hand);
  return /^\*|^ns/.test(text)
    ? text === 'ns'
      ? 'ns'
      : `p < ${number(text.length === 1 ? 0.05 : text.length === 2 ? 0.01 : 0.001, hand, text.length === 3 ? 3 : 2)}`
    : text;
}

/** The test as this hand prints it in this form; null where nobody would. */
export function report(test: TestValues, hand: Hand, form: number): Said | null {
  const [s] = test.statistic;
  if (s === undefined) return null;
  const p = pOf(test, hand);
  const { part, space } = hand;
  const is = (symbol: string, text: string) => `${symbol}${space}=${space}${text}`;
  const places = Math.max(2, hand.decimals);
  const named = NAMES[test.kind];
  const comma = hand.mark === ',' || hand.part.trim() === ';';
  if (named !== undefined) {
    const name =
      test.kind === 'bartlett' || test.kind === 'kruskal'
        ? form % 2 === 0
          ? named.symbol
          : 'χ2'
        : named.symbol;
    const symbol = test.kind === 'kruskal' && name !== 'H' ? 'H' : name;
    const text = FORMS[form % FORMS.length](
      { s: symbol, df: degrees(test, hand), value: number(s, hand), p, words: named.words, comma },
      hand,
    );
    const effects = effectsOf(test, hand, is);
    const extra = effects.length === 0 || form % 3 === 0 ? '' : `${part}${effects[form % effects.length]}`;
    const sided = test.kind === 'greater' ? ' (one-tailed)' : '';
    return {
      quantity: 'statistic',
      text: text.startsWith('(') || text.startsWith('$') ? text : `${text}${sided === '' ? extra : sided}`,
      ...(test.kind === 'greater' ? { sided: 'one' } : {}),
      ...(form % 4 === 0 ? { test: named.test } : {}),
    };
  }
  const [n1, n2] = test.n;
  const whole = number(s, hand, Number.isInteger(s) ? 0 : 1);
  switch (test.kind) {
    case 'u':
    case 'u-tied': {
      const z = test.z?.[0];
      const withZ =
        z === undefined || z === null || form % 2 === 0
          ? ''
          : `${part}${is(form % 4 === 1 ? 'Z' : 'z', number(z, hand, places))}`;
      const r =
        test.r === undefined || form % 3 !== 1 || withZ === ''
          ? ''
          : `${part}${is('r', number(test.r[0], hand, places, hand.bare))}`;
      const forms = [
        `${is('U', whole)}${withZ}${part}${p}${r}`,
        `${is('U', whole)}${part}${is('n1', String(n1))}${part}${is('n2', String(n2))}${withZ}${part}${p}${r}`,
        `U(${n1}${part}${n2})${space}=${space}${whole}${withZ}${part}${p}`,
        `Mann–Whitney ${is('U', whole)}${withZ}${part}${p}${r}`,
        `${is('W', whole)}${part}${p}`,
        `U(N1${space}=${space}${n1}${part}N2${space}=${space}${n2})${space}=${space}${whole}${part}${p}`,
        `Mann-Whitney U test: ${is('U', whole)}${part}${is('n₁', String(n1))}${part}${is('n₂', String(n2))}${part}${p}`,
      ];
      return { quantity: 'statistic', text: forms[form % forms.length] };
    }
    case 'pearson': {
      const value = number(s, hand, places, hand.bare);
      const [low, high] = (test.ci ?? []).map((end) => number(end, hand, places, hand.bare));
      const forms = [
        `r(${test.df[0]})${space}=${space}${value}${part}${p}`,
        `${is('r', value)}${part}${is('n', String(n1))}${part}${p}`,
        `r${test.df[0]}${space}=${space}${value}${part}${p}`,
        `Pearson’s ${is('r', value)} (${p}${part}${is('N', String(n1))})`,
        `r(${test.df[0]})${space}=${space}${value}${part}95${hand.percentSpace}% CI [${low}${comma ? '; ' : ', '}${high}]${part}${p}`,
        `${is('r', value)}${part}${p}${part}${is('R²', number((test.r2 ?? [0])[0], hand, places, hand.bare))}`,
        `t = ${number((s * Math.sqrt(n1 - 2)) / Math.sqrt(1 - s * s), hand, places)}${part}${is('df', String(n1 - 2))}${part}${p}`,
      ];
      const at = form % forms.length;
      return { quantity: at === 6 ? 'statistic' : 'correlation', text: forms[at] };
    }
    case 'spearman':
    case 'kendall': {
      const value = number(s, hand, places, hand.bare);
      const symbols =
        test.kind === 'spearman'
          ? ['rho', 'ρ', 'rs', 'Spearman’s ρ', 'r_s']
          : ['tau', 'τ', 'τb', 'Kendall’s τ', 'tau-b'];
      const symbol = symbols[form % 5];
      const forms = [
        `${is(symbol, value)}${part}${is('n', String(n1))}${part}${p}`,
        `${is(symbol, value)}${part}${p}`,
        `${symbol}(${test.kind === 'spearman' ? n1 - 2 : n1})${space}=${space}${value}${part}${p}`,
      ];
      return {
        quantity: 'correlation',
        text: forms[form % 3],
        test: test.kind === 'spearman' ? 'rho' : 'tau',
      };
    }
    case 'signed': {
      const forms = [
        `${is('V', whole)}${part}${p}`,
        `Wilcoxon signed-rank test: ${is('V', whole)}${part}${is('n', String(n1))}${part}${p}`,
        `${is('T', whole)}${part}${p}`,
      ];
      return form % 3 === 2 ? null : { quantity: 'statistic', text: forms[form % 3], test: 'signed-rank' };
    }
    default:
      return null;
  }
}

function effectsOf(test: TestValues, hand: Hand, is: (symbol: string, text: string) => string): string[] {
  const at = (list: readonly number[] | undefined) =>
    list === undefined ? null : number(list[0], hand, Math.max(2, hand.decimals), hand.bare);
  const [low, high] = (test.ci ?? []).map((end) => number(end, hand));
  const comma = hand.mark === ',' || hand.part.trim() === ';';
  const [d, g, eta, omega, epsilon] = [test.cohen, test.hedges, test.eta, test.omega, test.epsilon].map(at);
  const r2 = at(test.r2);
  return [
    ...(d === null ? [] : [is('d', d), is('Cohen’s d', d)]),
    ...(g === null ? [] : [is('Hedges’ g', g)]),
    ...(eta === null
      ? []
      : test.kind === 'kruskal'
        ? [is('η²H', eta)].slice(1)
        : [is('η²', eta), is(test.kind === 'anova' ? 'η2' : 'η²', eta)]),
    ...(omega === null ? [] : [is('ω²', omega)]),
    ...(epsilon === null ? [] : [is('ε²', epsilon)]),
    ...(r2 === null ? [] : [is('R²', r2)]),
    ...(low === undefined
      ? []
      : [
          `95${hand.percentSpace}% CI [${low}${comma ? '; ' : ', '}${high}]`,
          `95${hand.percentSpace}% CI: ${low}${hand.to}${high}`,
        ]),
  ];
}
