import { number, percent } from '../second-bed/styles.ts';
import type { Writer } from './hands.ts';
import { at, type OpenSet, type SampleSet } from './material.ts';
import { asText, between, kind, measure, pCell, value } from './print.ts';

/** A table as printed, and what a reviewer would say of it beside. */
export interface Printed {
  readonly text: string;
  readonly says?: { readonly rows?: string; readonly columns?: string; readonly attribute?: string };
}

/** The measures of a set by the groups of one kind. */
export interface ByKind {
  readonly set: OpenSet;
  readonly by: string;
  readonly samples: readonly SampleSet[];
}

/** Kinds by which every measure has the same groups. */
export function byKinds(set: OpenSet): ByKind[] {
  return Object.keys(set.kinds).flatMap((by) => {
    const all = set.samples.filter((sample) => sample.by === by);
    const [first] = all;
    if (first === undefined) return [];
    const samples = all.filter(({ groups }) => groups.join() === first.groups.join());
    return [{ set, by, samples }];
  });
}

/** Null where a set has nothing of that form. */
type Layout = (of: ByKind, hand: Writer) => Printed | null;

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

export const SAMPLE_LAYOUTS: Readonly<Record<string, Layout>> = {
  'characteristics in rows, groups in columns': ({ set, samples }, hand) => {
    const { mean, sd, median, iqr } = hand.words;
    const [{ groups, sizes }] = samples;
    return {
      text: asText(
        [
          ['Characteristic', ...groups.map((group, g) => `${group} (n = ${number(sizes[g], hand, 0)})`)],
          ...samples.flatMap((sample) => [
            [
              `${measure(set, sample.measure)}, ${mean} (${sd})`,
              ...sample.values.map((one) => `${value(one, 'mean', hand)} (${value(one, 'sd', hand)})`),
            ],
            [
              `${measure(set, sample.measure)}, ${median} [${iqr}]`,
              ...sample.values.map(
                (one) =>
                  `${value(one, 'median', hand)} ${between(value(one, 'q1', hand), value(one, 'q3', hand), hand)}`,
              ),
            ],
          ]),
        ],
        hand,
      ),
    };
  },
  'mean and spread with n in one cell': ({ set, by, samples }, hand) => ({
    text: `Table 3. Measurements by ${kind(set, by).toLowerCase()}: ${hand.words.mean} ± ${hand.words.sd} (n)\n${asText(
      [
        [kind(set, by), ...samples.map((sample) => measure(set, sample.measure))],
        ...samples[0].groups.map((group, g) => [
          group,
          ...samples.map(
            ({ values }) =>
              `${value(values[g], 'mean', hand)} ± ${value(values[g], 'sd', hand)} (${value(values[g], 'n', hand)})`,
          ),
        ]),
      ],
      hand,
    )}`,
  }),
  'statistics down the side, a block a measure': ({ set, samples }, hand) => {
    const lines = [
      [capital(hand.words.n), 'n'],
      [capital(hand.words.mean), 'mean'],
      [capital(hand.words.sd), 'sd'],
      ['Min', 'min'],
      ['Max', 'max'],
    ] as const;
    return {
      text: asText(
        [
          ['', ...samples[0].groups],
          ...samples.flatMap((sample) => [
            [measure(set, sample.measure), ...sample.groups.map(() => '')],
            ...lines.map(([label, what]) => [label, ...sample.values.map((one) => value(one, what, hand))]),
          ]),
        ],
        hand,
      ),
    };
  },
  'heads that span measures': ({ set, by, samples }, hand) => {
    const { n, mean, sd } = hand.words;
    const used = samples.slice(0, 3);
    return {
      text: asText(
        [
          ['', ...used.flatMap((sample) => [measure(set, sample.measure), '', ''])],
          [kind(set, by), ...used.flatMap(() => [n, mean, sd])],
          ...used[0].groups.map((group, g) => [
            group,
            ...used.flatMap(({ values }) =>
              (['n', 'mean', 'sd'] as const).map((what) => value(values[g], what, hand)),
            ),
          ]),
          [
            hand.words.total,
            ...used.flatMap(({ all }) =>
              (['n', 'mean', 'sd'] as const).map((what) => value(all, what, hand)),
            ),
          ],
        ],
        hand,
      ),
    };
  },
  'a line a measure, all records': ({ set, samples }, hand) => {
    const { n, mean, sd, median, range } = hand.words;
    return {
      text: asText(
        [
          ['Variable', n, mean, sd, median, range],
          ...samples.map(({ measure: id, all }) => [
            measure(set, id, 'mm'),
            value(all, 'n', hand),
            value(all, 'mean', hand),
            value(all, 'sd', hand),
            value(all, 'median', hand),
            `${value(all, 'min', hand)}${hand.to}${value(all, 'max', hand)}`,
          ]),
        ],
        hand,
      ),
    };
  },
  'one line a group and measure': ({ set, by, samples }, hand) => {
    const { n, mean, se, interval } = hand.words;
    return {
      text: asText(
        [
          ['Measure', kind(set, by), n, capital(mean), se, interval],
          ...samples.flatMap((sample) =>
            sample.groups.map((group, g) => [
              g === 0 ? measure(set, sample.measure) : '',
              group,
              value(sample.values[g], 'n', hand),
              value(sample.values[g], 'mean', hand),
              value(sample.values[g], 'se', hand),
              between(value(sample.values[g], 'low', hand), value(sample.values[g], 'high', hand), hand),
            ]),
          ),
        ],
        hand,
      ),
    };
  },
  'a measure said in the caption': ({ set, by, samples: [sample] }, hand) => {
    const { n, mean, sd } = hand.words;
    return {
      text: `Table 1. ${measure(set, sample.measure)} by ${kind(set, by).toLowerCase()}\n${asText(
        [
          [kind(set, by), n, `${capital(mean)} ± ${sd}`, 'CV (%)', 'Min.', 'Max.'],
          ...sample.groups.map((group, g) => {
            const of = sample.values[g];
            return [
              group,
              value(of, 'n', hand),
              `${value(of, 'mean', hand)} ± ${value(of, 'sd', hand)}`,
              number(100 * of[at.cv], hand, hand.percents),
              value(of, 'min', hand),
              value(of, 'max', hand),
            ];
          }),
        ],
        hand,
      )}`,
    };
  },
  'groups compared, with F and p at the end of the line': ({ set, by, samples }, hand) => {
    const { mean, sd } = hand.words;
    const lines = samples.flatMap((sample) => {
      const found = set.several.find((one) => one.measure === sample.measure && one.by === by);
      return found === undefined ? [] : [{ sample, f: found.f }];
    });
    if (lines.length === 0) return null;
    return {
      text: asText(
        [
          [
            'Variable',
            ...samples[0].groups.map((group) => `${group}, ${mean} (${sd})`),
            'F',
            'df',
            hand.pSymbol === 'P' ? 'P' : 'p',
          ],
          ...lines.map(({ sample, f }) => [
            measure(set, sample.measure),
            ...sample.values.map((one) => `${value(one, 'mean', hand)} (${value(one, 'sd', hand)})`),
            number(f[0], hand),
            `${f[1]}${hand.mark === ',' ? '; ' : ', '}${f[2]}`,
            pCell(f[3], hand),
          ]),
        ],
        hand,
      ),
    };
  },
  'rows named by measure and statistic, totals first': ({ set, samples }, hand) => {
    const { mean, sd, n } = hand.words;
    return {
      text: asText(
        [
          ['', hand.words.total, ...samples[0].groups],
          ...samples.flatMap((sample) => [
            [
              `${measure(set, sample.measure)}, ${n}`,
              value(sample.all, 'n', hand),
              ...sample.values.map((one) => value(one, 'n', hand)),
            ],
            [
              `${measure(set, sample.measure)}, ${mean} ± ${sd}`,
              ...[sample.all, ...sample.values].map(
                (one) => `${value(one, 'mean', hand)} ± ${value(one, 'sd', hand)}`,
              ),
            ],
          ]),
        ],
        hand,
      ),
    };
  },
  'comparisons in rows, t with its df': ({ set, by, samples: [{ measure: id }] }, hand) => {
    const pairs = set.pairs.filter((pair) => pair.measure === id && pair.by === by).slice(0, 6);
    if (pairs.length === 0) return null;
    return {
      text: `Table 5. ${measure(set, id)}, groups compared\n${asText(
        [
          ['Comparison', `Difference [${hand.words.interval}]`, 't (df)', 'd', 'p'],
          ...pairs.map(({ a, b, difference, welch, d }) => [
            `${a} vs. ${b}`,
            `${number(difference[0], hand)} ${between(number(welch[3], hand), number(welch[4], hand), { ...hand, to: hand.mark === ',' ? '; ' : ', ' })}`,
            `${number(welch[0], hand)} (${number(welch[1], hand, 1)})`,
            number(d[0], hand),
            pCell(welch[2], hand),
          ]),
        ],
        hand,
      )}`,
    };
  },
  'measures two by two': ({ set }, hand) => {
    if (set.together.length === 0) return null;
    const two = (one: number) => number(one, hand, Math.max(2, hand.decimals), hand.bare);
    return {
      text: asText(
        [
          ['Measures', 'n', 'r_s', 'p'],
          ...set.together.map(({ a, b, n, rho }) => [
            `${measure(set, a)} × ${measure(set, b)}`,
            number(n[0], hand, 0),
            two(rho[0]),
            pCell(rho[1], hand),
          ]),
        ],
        hand,
      ),
    };
  },
  'table one: means and kinds together': ({ set, by, samples }, hand) => {
    const other = set.counts.find(({ columns }) => columns === by);
    const { mean, sd } = hand.words;
    if (other === undefined || other.columnTerms.join() !== samples[0].groups.join()) return null;
    const sizes = other.columnTerms.map((_, c) => other.cells.reduce((sum, row) => sum + row[c], 0));
    return {
      text: asText(
        [
          ['', ...samples[0].groups],
          ...samples.map((sample) => [
            `${measure(set, sample.measure)}, ${mean} (${sd})`,
            ...sample.values.map((one) => `${value(one, 'mean', hand)} (${value(one, 'sd', hand)})`),
          ]),
          [`${kind(set, other.rows)}, ${hand.words.countAndShare}`, ...other.columnTerms.map(() => '')],
          ...other.rowTerms.map((term, r) => [
            `  ${term}`,
            ...other.cells[r].map((one, c) => `${number(one, hand, 0)} (${percent(one, sizes[c], hand)})`),
          ]),
        ],
        hand,
      ),
    };
  },
};
