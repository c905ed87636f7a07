import { type Hand, PLAIN } from '../second-bed/styles.ts';

/** A hand with the words of its language and trade. */
export interface Writer extends Hand {
  readonly words: {
    readonly mean: string;
    readonly sd: string;
    readonly se: string;
    readonly median: string;
    readonly n: string;
    readonly range: string;
    readonly iqr: string;
    readonly interval: string;
    readonly total: string;
    readonly share: string;
    readonly countAndShare: string;
    readonly group: string;
  };
  /** Brackets around quartiles and ends. */
  readonly ends: readonly [string, string];
  readonly delimiter: ',' | ';' | '\t' | 'blanks';
}

const english = {
  mean: 'mean',
  sd: 'SD',
  se: 'SE',
  median: 'median',
  n: 'n',
  range: 'range',
  iqr: 'IQR',
  interval: '95% CI',
  total: 'Total',
  share: '%',
  countAndShare: 'n (%)',
  group: 'Group',
};

const plain: Omit<Writer, 'name'> = {
  ...PLAIN,
  words: english,
  ends: ['[', ']'],
  delimiter: ',',
};

export const WRITERS: readonly Writer[] = [
  { ...plain, name: 'psychology', bare: true, words: { ...english, mean: 'M', median: 'Mdn' } },
  {
    ...plain,
    name: 'clinic',
    pSymbol: 'P',
    space: '',
    bare: true,
    decimals: 1,
    thousands: ',',
    ends: ['(', ')'],
    delimiter: '\t',
    words: { ...english, mean: 'Mean', median: 'Median', countAndShare: 'No. (%)', n: 'No.' },
  },
  {
    ...plain,
    name: 'Dissertation',
    mark: ',',
    part: '; ',
    percentSpace: ' ',
    thousands: '.',
    delimiter: ';',
    words: {
      mean: 'Mittelwert',
      sd: 'Standardabweichung',
      se: 'Standardfehler',
      median: 'Median',
      n: 'Anzahl',
      range: 'Spannweite',
      iqr: 'Quartile',
      interval: '95 %-KI',
      total: 'Gesamt',
      share: 'Anteil (%)',
      countAndShare: 'n (%)',
      group: 'Gruppe',
    },
  },
  {
    ...plain,
    name: 'thèse',
    mark: ',',
    part: ' ; ',
    percentSpace: '\u00a0',
    thousands: '\u202f',
    delimiter: ';',
    minus: '-',
    to: ' à ',
    pForm: 'two',
    words: {
      mean: 'moyenne',
      sd: 'écart-type',
      se: 'erreur type',
      median: 'médiane',
      n: 'effectif',
      range: 'étendue',
      iqr: 'quartiles',
      interval: 'IC à 95 %',
      total: 'Ensemble',
      share: '%',
      countAndShare: 'n (%)',
      group: 'Groupe',
    },
  },
  {
    ...plain,
    name: 'console',
    decimals: 4,
    percents: 2,
    minus: '-',
    to: ' - ',
    pForm: 'digits',
    pSymbol: 'p-value',
    words: { ...english, sd: 'sd', se: 'se', total: 'all' },
  },
  {
    ...plain,
    name: 'old journal',
    pForm: 'coarse',
    pSymbol: 'P',
    thousands: ' ',
    ends: ['(', ')'],
    delimiter: 'blanks',
    words: { ...english, mean: 'x̄', sd: 's', n: 'N', range: 'O.R.', total: 'Sum' },
  },
  {
    ...plain,
    name: 'excavation report',
    decimals: 1,
    percents: 0,
    pForm: 'coarse',
    minus: '–',
    delimiter: 'blanks',
    words: { ...english, mean: 'Average', sd: 'St. dev.', n: 'No.', total: 'All', range: 'Min–max' },
  },
  {
    ...plain,
    name: 'stars',
    decimals: 3,
    pForm: 'stars',
    percentSpace: ' ',
    to: '-',
    minus: '-',
    delimiter: '\t',
    words: { ...english, mean: 'Mean', sd: 'Std. Dev.', se: 'Std. Error', total: 'TOTAL' },
  },
  { ...plain, name: 'cut off', cut: true, delimiter: 'blanks', words: { ...english, mean: 'Mean' } },
];
