import { type Hand, number, pText } from './styles.ts';
import { asCsv, inColumns } from './table-text.ts';
import { type Described, described, type SampleSet } from './values.ts';

type Layout = (set: SampleSet, hand: Hand) => string;

const places = (step: number) => (step >= 1 ? 0 : step >= 0.1 ? 1 : 2);
const groupsOf = (set: SampleSet): readonly (readonly [string, Described])[] =>
  set.groups.map((label, g) => [label, described(set.values[g])]);
const ends = (low: string, high: string, { to, mark }: Hand) =>
  low.startsWith('-') || high.startsWith('-') || /[−–]/.test(low + high)
    ? `${low}${mark === ',' ? '; ' : ', '}${high}`
    : `${low}${to}${high}`;

export const SAMPLE_TABLES: Readonly<Record<string, Layout>> = {
  'descriptives as programs print them': (set, hand) => {
    const line = (label: string, d: Described) => [
      label,
      String(d.n),
      number(d.mean, hand),
      number(d.sd, hand),
      number(d.se, hand),
      number(d.low, hand),
      number(d.high, hand),
      number(d.min, hand, places(set.step)),
      number(d.max, hand, places(set.step)),
    ];
    return asCsv(
      [
        [
          '',
          'N',
          'Mean',
          'Std. Deviation',
          'Std. Error',
          '95% CI Lower',
          '95% CI Upper',
          'Minimum',
          'Maximum',
        ],
        ...groupsOf(set).map(([label, d]) => line(label, d)),
        line('Total', described(set.all)),
      ],
      '\t',
    );
  },
  'six figures of a summary': (set, hand) =>
    inColumns(
      [
        [set.of, 'Min.', '1st-Qu.', 'Median', 'Mean', '3rd-Qu.', 'Max.', 'n'],
        ...groupsOf(set).map(([label, d]) => [
          label,
          number(d.min, hand, places(set.step)),
          number(d.q1, hand),
          number(d.median, hand),
          number(d.mean, hand),
          number(d.q3, hand),
          number(d.max, hand, places(set.step)),
          String(d.n),
        ]),
      ].map((row, r) => (r === 0 ? row.map((cell) => cell.replace('-Qu', ' Qu')) : row)),
    ),
  'bone measurements with s and V': (set, hand) =>
    asCsv(
      [
        ['Measurement', 'n', 'min–max', 'x̄', 's', 'V'],
        ...groupsOf(set).map(([label, d]) => [
          label,
          String(d.n),
          ends(number(d.min, hand, places(set.step)), number(d.max, hand, places(set.step)), hand),
          number(d.mean, hand),
          number(d.sd, hand),
          number(100 * d.cv, hand, 1),
        ]),
      ],
      ';',
    ),
  'median with quartiles in square brackets': (set, hand) =>
    asCsv(
      [
        ['Group', 'n', 'Median [IQR]', 'Range', 'Mean ± SE'],
        ...groupsOf(set).map(([label, d]) => [
          label,
          String(d.n),
          `${number(d.median, hand)} [${ends(number(d.q1, hand), number(d.q3, hand), hand)}]`,
          ends(number(d.min, hand, places(set.step)), number(d.max, hand, places(set.step)), hand),
          `${number(d.mean, hand)} ± ${number(d.se, hand)}`,
        ]),
      ],
      ';',
    ),
  'mean with its interval in brackets': (set, hand) =>
    asCsv(
      [
        ['Group', 'N', 'Mean (95% CI)', 'SD'],
        ...groupsOf(set).map(([label, d]) => [
          label,
          String(d.n),
          `${number(d.mean, hand)} (${ends(number(d.low, hand), number(d.high, hand), hand)})`,
          number(d.sd, hand),
        ]),
      ],
      ';',
    ),
  'size in the label, letters of a comparison': (set, hand) =>
    asCsv(
      [
        [`${set.of}`, 'Mean ± SD', 'Median (min–max)'],
        ...groupsOf(set).map(([label, d], g) => [
          `${label} (n = ${d.n})`,
          `${number(d.mean, hand)} ± ${number(d.sd, hand)}${g % 2 === 0 ? 'a' : 'ab'}`,
          `${number(d.median, hand)} (${ends(number(d.min, hand, places(set.step)), number(d.max, hand, places(set.step)), hand)})`,
        ]),
      ],
      ';',
    ),
  'groups across, statistics down': (set, hand) =>
    inColumns([
      ['', ...set.groups.map((label) => label.replaceAll(' ', '-'))],
      ['No. of specimens', ...groupsOf(set).map(([, d]) => String(d.n))],
      ['Mean', ...groupsOf(set).map(([, d]) => number(d.mean, hand))],
      ['Standard deviation', ...groupsOf(set).map(([, d]) => number(d.sd, hand))],
      ['Coefficient of variation', ...groupsOf(set).map(([, d]) => number(100 * d.cv, hand, 1))],
      ['Minimum', ...groupsOf(set).map(([, d]) => number(d.min, hand, places(set.step)))],
      ['Maximum', ...groupsOf(set).map(([, d]) => number(d.max, hand, places(set.step)))],
      ['Range', ...groupsOf(set).map(([, d]) => number(d.range, hand, places(set.step)))],
    ]),
  'n in brackets behind the mean': (set, hand) =>
    asCsv(
      [
        ['Site', 'Mean (n)', 's.d.', 'IQR', 'Sum'],
        ...groupsOf(set).map(([label, d]) => [
          label,
          `${number(d.mean, hand)} (${d.n})`,
          number(d.sd, hand),
          number(d.iqr, hand),
          number(d.total, hand, places(set.step)),
        ]),
      ],
      ';',
    ),
  'two heads with a test': (set, hand) => {
    const groups = groupsOf(set).slice(0, 2);
    return asCsv(
      [
        ['Variable', ...groups.flatMap(([label]) => [label, '', '']), 't', 'p'],
        ['', ...groups.flatMap(() => ['n', 'M', 'SD']), '', ''],
        [
          set.of,
          ...groups.flatMap(([, d]) => [String(d.n), number(d.mean, hand), number(d.sd, hand)]),
          '',
          '',
        ],
        [
          `${set.of} again`,
          ...groups.flatMap(([, d]) => [String(d.n), number(d.mean, hand), number(d.sd, hand)]),
          '',
          '',
        ],
      ],
      ';',
    );
  },
  'mean and deviation over n in brackets': (set, hand) =>
    asCsv(
      [
        ['Group', 'M', '(SD)', 'SEM', 'n'],
        ...groupsOf(set).map(([label, d]) => [
          label,
          number(d.mean, hand),
          `(${number(d.sd, hand)})`,
          number(d.se, hand),
          String(d.n),
        ]),
        ((d: Described) => [
          'All',
          number(d.mean, hand),
          `(${number(d.sd, hand)})`,
          number(d.se, hand),
          String(d.n),
        ])(described(set.all)),
      ],
      ';',
    ),
};

/** Analyses of variance as programs and papers print them. */
export function anovaTable(
  table: {
    readonly rows: readonly string[];
    readonly df: readonly number[];
    readonly ss: readonly number[];
    readonly ms: readonly number[];
    readonly f: readonly (number | null)[];
    readonly p: readonly (number | null)[];
  },
  hand: Hand,
  form: number,
): string {
  const heads = [
    ['Source', 'df', 'SS', 'MS', 'F', 'p'],
    ['Source of variation', 'Sum of Squares', 'd.f.', 'Mean Square', 'F', 'Sig.'],
    ['', 'Df', 'Sum Sq', 'Mean Sq', 'F value', 'Pr(>F)'],
  ][form % 3];
  const bare = (text: string) => text.replace(/^\S+?\s?=\s?/, '').replace(/^[A-Za-z.]+\s?(?=[<>])/, '');
  const rows = table.rows.map((label, r) => {
    const [df, ss, ms] = [String(table.df[r]), number(table.ss[r], hand), number(table.ms[r], hand)];
    const [f, p] = [
      table.f[r] === null ? '' : number(table.f[r] ?? 0, hand),
      table.p[r] === null ? '' : bare(pText(table.p[r] ?? 0, hand)),
    ];
    const name =
      label === 'Residuals' && form % 3 !== 2 ? (form % 2 === 0 ? 'Error' : 'Within groups') : label;
    return form % 3 === 1 ? [name, ss, df, ms, f, p] : [name, df, ss, ms, f, p];
  });
  const total = [
    'Total',
    ...(form % 3 === 1
      ? [
          number(
            table.ss.reduce((a, b) => a + b, 0),
            hand,
          ),
          String(table.df.reduce((a, b) => a + b, 0)),
        ]
      : [
          String(table.df.reduce((a, b) => a + b, 0)),
          number(
            table.ss.reduce((a, b) => a + b, 0),
            hand,
          ),
        ]),
    '',
    '',
    '',
  ];
  return asCsv([heads, ...rows, ...(form % 3 === 2 ? [] : [total])], ';');
}
