/** How papers, theses and programs print numbers. */
export interface Hand {
  readonly name: string;
  readonly mark: '.' | ',' | '·';
  readonly minus: string;
  /** Parts thousands; empty for none. */
  readonly thousands: string;
  /** Between the parts of a report. */
  readonly part: string;
  readonly decimals: number;
  readonly percents: number;
  /** Stands before the percent sign. */
  readonly percentSpace: string;
  /** p, r and shares without the nought before the mark. */
  readonly bare: boolean;
  /** Around relation signs. */
  readonly space: string;
  readonly pSymbol: string;
  readonly pForm: 'three' | 'two' | 'coarse' | 'stars' | 'packages' | 'digits' | 'power' | 'four';
  /** Between two ends. */
  readonly to: string;
  readonly cut?: true;
  readonly even?: true;
}

export function number(value: number, hand: Hand, decimals = hand.decimals, bare = false): string {
  const text = rounded(value, decimals, hand);
  const [whole, rest] = text.replace('-', '').split('.');
  const grouped =
    hand.thousands === '' || whole.length < 4
      ? whole
      : whole.replaceAll(/\B(?=(?:\d{3})+$)/g, hand.thousands);
  const shown = rest === undefined ? grouped : `${bare && whole === '0' ? '' : grouped}${hand.mark}${rest}`;
  return text.startsWith('-') ? `${hand.minus}${shown}` : shown;
}

/** Rounded by the decimal text, so that ties are seen as a reader sees them. */
function rounded(value: number, decimals: number, { cut, even }: Hand): string {
  const exact = Number(value.toPrecision(14));
  const scaled = Number((Math.abs(exact) * 10 ** decimals).toPrecision(14));
  const floor = Math.floor(scaled);
  const rest = Number((scaled - floor).toPrecision(9));
  const up = cut === true ? false : rest > 0.5 || (rest === 0.5 && (even !== true || floor % 2 === 1));
  const digits = String(floor + (up ? 1 : 0)).padStart(decimals + 1, '0');
  const text = decimals === 0 ? digits : `${digits.slice(0, -decimals)}.${digits.slice(-decimals)}`;
  return exact < 0 && Number(text) !== 0 ? `-${text}` : text;
}

const RAISED = '⁰¹²³⁴⁵⁶⁷⁸⁹';

/** "p = .033", "P<0.001", "p = 2.3 × 10⁻⁵". */
export function pText(p: number, hand: Hand, symbol = hand.pSymbol): string {
  const said = (relation: string, text: string) => `${symbol}${hand.space}${relation}${hand.space}${text}`;
  const at = (decimals: number) => number(p, hand, decimals, hand.bare);
  const below = (decimals: number) =>
    said('<', number(10 ** -decimals, { ...hand, cut: undefined } as unknown as Hand, decimals, hand.bare));
  switch (hand.pForm) {
    case 'three':
      return p < 0.001 ? below(3) : said('=', at(3));
    case 'four':
      return p < 0.0001 ? below(4) : said('=', at(4));
    case 'two':
      return p < 0.01 ? below(p < 0.001 ? 3 : 2) : said('=', at(2));
    case 'packages':
      return said('=', at(3));
    case 'coarse':
      if (p > 0.05) return hand.space === '' ? said('>', number(0.05, hand, 2, hand.bare)) : 'n.s.';
      return p < 0.001 ? below(3) : p < 0.01 ? below(2) : said('<', number(0.05, hand, 2, hand.bare));
    case 'stars':
      return p > 0.05 ? 'ns' : p < 0.001 ? '***' : p < 0.01 ? '**' : '*';
    case 'digits': {
      const places = Math.max(2, 1 - Math.floor(Math.log10(Math.max(p, 1e-12))));
      return p < 1e-6 ? below(6) : said('=', at(places));
    }
    case 'power': {
      if (p >= 0.001 || p === 0)
        return said(p === 0 ? '<' : '=', p === 0 ? `1${hand.space}×${hand.space}10⁻¹⁶` : at(4));
      const [digits, power] = p.toExponential(1).split('e-');
      const raised = [...power].map((digit) => RAISED[Number(digit)]).join('');
      return said('=', `${digits.replace('.', hand.mark)}${hand.space}×${hand.space}10⁻${raised}`);
    }
  }
}

export function percent(over: number, under: number, hand: Hand, decimals = hand.percents): string {
  return number((100 * over) / under, hand, decimals);
}

/** What most of them have in common. */
export const PLAIN: Omit<Hand, 'name'> = {
  mark: '.',
  minus: '−',
  thousands: '',
  part: ', ',
  decimals: 2,
  percents: 1,
  percentSpace: '',
  bare: false,
  space: ' ',
  pSymbol: 'p',
  pForm: 'three',
  to: '–',
};

export const HANDS: readonly Hand[] = [
  { ...PLAIN, name: 'social science', bare: true, thousands: ',' },
  { ...PLAIN, name: 'German thesis', mark: ',', thousands: '.', part: '; ', minus: '–', percentSpace: ' ' },
  {
    ...PLAIN,
    name: 'French journal',
    mark: ',',
    thousands: '\u202f',
    part: ' ; ',
    minus: '-',
    decimals: 1,
    percentSpace: '\u00a0',
    pForm: 'two',
    to: ' à ',
  },
  { ...PLAIN, name: 'medical', mark: '·', part: '; ', space: '', pForm: 'four', percentSpace: '' },
  {
    ...PLAIN,
    name: 'biology',
    pSymbol: 'P',
    pForm: 'digits',
    decimals: 3,
    minus: '-',
    percents: 2,
    to: ' to ',
  },
  {
    ...PLAIN,
    name: 'statistics package',
    pForm: 'packages',
    decimals: 3,
    bare: true,
    minus: '-',
    to: ' - ',
    pSymbol: 'Sig.',
  },
  { ...PLAIN, name: 'tight', space: '', part: ',', pForm: 'three', minus: '-', to: '-' },
  { ...PLAIN, name: 'stars', pForm: 'stars', decimals: 1, percents: 0, minus: '–' },
  {
    ...PLAIN,
    name: 'coarse',
    pForm: 'coarse',
    decimals: 1,
    percents: 0,
    bare: true,
    thousands: ' ',
    percentSpace: ' ',
  },
  {
    ...PLAIN,
    name: 'Spanish',
    mark: ',',
    bare: true,
    part: '; ',
    thousands: ' ',
    pForm: 'three',
    minus: '−',
  },
  { ...PLAIN, name: 'powers', pForm: 'power', decimals: 4, percents: 2, pSymbol: 'P', to: ' – ' },
  { ...PLAIN, name: 'cut off', cut: true, pForm: 'three', decimals: 2, percents: 1 },
  { ...PLAIN, name: 'half to even', even: true, pForm: 'four', decimals: 2, percents: 1, thousands: "'" },
];
