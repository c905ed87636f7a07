import type { Row } from '../claims.ts';
import { number, pText } from '../second-bed/styles.ts';
import type { Writer } from './hands.ts';
import { at, type OpenSet, type Pair, type SampleSet } from './material.ts';
import { between, value } from './print.ts';

/** "(17.776)", "(2, 27)", "(2; 27)" or, where the hand sets them low, "2,27". */
function degrees(df: readonly number[], hand: Writer): string {
  const each = df.map((one) => (Number.isInteger(one) ? String(one) : number(one, hand, 3)));
  if (hand.name === 'old journal' && df.every(Number.isInteger)) return each.join(',');
  return `(${each.join(hand.mark === ',' ? '; ' : ', ')})`;
}

const equals = (symbol: string, text: string, hand: Writer) => `${symbol}${hand.space}=${hand.space}${text}`;

function pairRows(pair: Pair, hand: Writer): Row[] {
  const who = {
    attribute: pair.measure,
    select: `${pair.by} in ${pair.a}`,
    versus: `${pair.by} in ${pair.b}`,
  };
  const p = (one: number) => pText(one, hand);
  const [t, df, pt] = pair.student;
  const [w, wdf, pw, low, high] = pair.welch;
  const [u, pu, pc] = pair.u;
  const two = (quantity: string, printed: string, more: Row = {}): Row => ({
    ...who,
    quantity: quantity as never,
    printed,
    ...more,
  });
  const packaged = hand.name === 'console';
  return [
    two(
      'statistic',
      packaged
        ? `t = ${number(t, hand)}, df = ${df}, ${p(pt)}`
        : `${equals(`t${degrees([df], hand)}`, number(t, hand), hand)}${hand.part}${p(pt)}${hand.part}${equals('d', number(pair.d[0], hand), hand)}`,
      { test: 't' },
    ),
    two(
      'statistic',
      packaged
        ? `t = ${number(w, hand)}, df = ${number(wdf, hand, 3)}, ${p(pw)}`
        : `${equals(`t${degrees([wdf], hand)}`, number(w, hand), hand)}${hand.part}${p(pw)}`,
      { test: 't' },
    ),
    two('statistic', `${equals('U', number(u, hand, 1), hand)}${hand.part}${p(pu)}`, { test: 'U' }),
    two('statistic', `${equals('W', number(u, hand, 1), hand)}${hand.part}${p(pc)}`, { test: 'U' }),
    two('difference', number(pair.difference[0], hand)),
    two('interval', between(number(low, hand), number(high, hand), hand)),
    two('interval', `${number(pair.student[3], hand)} to ${number(pair.student[4], hand)}`),
    two('effect', number(pair.d[0], hand), { test: 'cohen-d' }),
    two('effect', `g = ${number(pair.g[0], hand)}`, { test: 'hedges-g' }),
  ];
}

function sampleRows(sample: SampleSet, hand: Writer): Row[] {
  return sample.groups.flatMap((group, g): Row[] => {
    const of = sample.values[g];
    const who = { attribute: sample.measure, select: `${sample.by} in ${group}`, set: group };
    const { mean, sd } = hand.words;
    const say = (what: keyof typeof at) => value(of, what, hand);
    return [
      { ...who, quantity: 'mean', printed: `${say('mean')} ± ${say('sd')} (n = ${say('n')})` },
      { ...who, quantity: 'median', printed: `${say('median')} ${between(say('q1'), say('q3'), hand)}` },
      { ...who, quantity: 'interval', printed: between(say('low'), say('high'), hand) },
      { ...who, quantity: 'range', printed: `${say('min')}${hand.to}${say('max')}` },
      {
        ...who,
        quantity: 'cv',
        printed: `${number(100 * of[at.cv], hand, hand.percents)}${hand.percentSpace}%`,
      },
      ...(hand.mark === '.' && /^[Mm]/.test(mean) && /^[Ss][Dd]$/.test(sd)
        ? [{ ...who, quantity: 'mean' as const, printed: `${mean} = ${say('mean')}, ${sd} = ${say('sd')}` }]
        : []),
    ];
  });
}

/** Figures of the running text, each with the records that it is of. */
export function sentences(set: OpenSet, hand: Writer): Row[] {
  const p = (one: number) => pText(one, hand);
  return [
    ...set.samples.flatMap((sample) => sampleRows(sample, hand)),
    ...set.pairs.flatMap((pair) => pairRows(pair, hand)),
    ...set.several.flatMap(({ measure, by, f, welch, h, eta }): Row[] => {
      const who = { attribute: `${measure}; ${by}`, quantity: 'statistic' as const };
      const packaged = hand.name === 'console';
      return [
        {
          ...who,
          test: 'F',
          printed: packaged
            ? `F = ${number(f[0], hand)}, num df = ${f[1]}, denom df = ${f[2]}, ${p(f[3])}`
            : `${equals(`F${degrees([f[1], f[2]], hand)}`, number(f[0], hand), hand)}${hand.part}${p(f[3])}${hand.part}${equals('η²', number(eta[0], hand, Math.max(2, hand.decimals), hand.bare), hand)}`,
        },
        {
          ...who,
          test: 'F',
          printed: `${equals(`F${degrees([welch[1], welch[2]], hand)}`, number(welch[0], hand), hand)}${hand.part}${p(welch[3])}`,
        },
        {
          ...who,
          test: 'H',
          printed: packaged
            ? `Kruskal-Wallis chi-squared = ${number(h[0], hand)}, df = ${h[1]}, ${p(h[2])}`
            : `${equals(`H${degrees([h[1]], hand)}`, number(h[0], hand), hand)}${hand.part}${p(h[2])}`,
        },
      ];
    }),
    ...set.together.flatMap(({ a, b, n, r, rho, tau }): Row[] => {
      const who = { attribute: `${a}; ${b}`, quantity: 'correlation' as const };
      const two = (one: number) => number(one, hand, Math.max(2, hand.decimals), hand.bare);
      return [
        {
          ...who,
          test: 'r',
          printed: `${equals(`r(${r[1]})`, two(r[0]), hand)}${hand.part}${p(r[2])}`,
        },
        {
          ...who,
          test: 'r',
          printed: `r = ${two(r[0])}, 95% CI [${two(r[3])}, ${two(r[4])}], n = ${number(n[0], hand, 0)}`,
        },
        { ...who, test: 'rho', printed: `${equals('r_s', two(rho[0]), hand)}${hand.part}${p(rho[1])}` },
        { ...who, test: 'tau', printed: `${equals('τ', two(tau[0]), hand)}${hand.part}${p(tau[1])}` },
      ];
    }),
    ...set.counts.flatMap(({ rows, columns, cells, chi, v, two }): Row[] => {
      const all = cells.flat().reduce((sum, one) => sum + one, 0);
      const who = { attribute: `${rows}; ${columns}` };
      const listed = hand.mark === ',' ? '; ' : ', ';
      return [
        {
          ...who,
          quantity: 'statistic',
          test: 'chi-squared',
          printed: `${equals(`χ²(${chi[1]}${listed}N = ${number(all, hand, 0)})`, number(chi[0], hand), hand)}${hand.part}${p(chi[2])}${hand.part}${equals('V', number(v[0], hand, Math.max(2, hand.decimals), hand.bare), hand)}`,
        },
        ...(two.length === 0
          ? []
          : [
              {
                ...who,
                quantity: 'statistic' as const,
                test: 'chi-squared',
                printed: `Yates’ ${equals('χ²(1)', number(two[0], hand), hand)}${hand.part}${p(two[1])}`,
              },
              { ...who, quantity: 'p' as const, test: 'fisher', printed: p(two[2]) },
              {
                ...who,
                quantity: 'effect' as const,
                test: 'odds-ratio',
                printed: `OR = ${number(two[3], hand)} ${between(number(two[4], hand), number(two[5], hand), hand)}`,
              },
            ]),
      ];
    }),
  ];
}
