import { GROUND, KIND_COLOURS } from './colours.ts';

/**
 * The looks of kinds, sites, fibres and groups. Colours come round after seven, shapes after eleven, hatchings after eight and
 * dashes after six, so that a look repeats in no two of these rounds at once: what has the same shape (or hatching) differs in
 * its colour, and by at least 8 steps of lightness in a grey print.
 */

/** Shapes that are told apart at 6 px; fillings are left free, since they say what is excluded, supplementary or too few. */
export const KIND_SYMBOLS = [
  'circle',
  'square',
  'triangle-up',
  'diamond',
  'cross',
  'triangle-down',
  'hourglass',
  'x',
  'triangle-left',
  'triangle-right',
  'bowtie',
] as const;

/** Hatching of bars, so that stacked shares survive a grey print. */
const KIND_PATTERNS = ['', '/', '.', '\\', '-', 'x', '|', '+'] as const;

const KIND_DASHES = ['solid', 'dash', 'dot', 'dashdot', 'longdash', 'longdashdot'] as const;

/** Kinds with a look of their own: as many as colour and hatching tell apart in bars. */
export const MOST_KINDS = KIND_COLOURS.length * KIND_PATTERNS.length;

export interface KindStyle {
  readonly colour: string;
  readonly symbol: string;
  readonly dash: string;
  readonly pattern: string;
}

const OTHERS: KindStyle = { colour: GROUND.neutral, symbol: 'circle-open', dash: 'dot', pattern: '' };

/** Look of the kind at this place in its fixed order; beyond `MOST_KINDS` all share one neutral look. */
export function kindStyle(index: number): KindStyle {
  if (!Number.isInteger(index) || index < 0 || index >= MOST_KINDS) return OTHERS;
  return {
    colour: inTurn(KIND_COLOURS, index),
    symbol: inTurn(KIND_SYMBOLS, index),
    dash: inTurn(KIND_DASHES, index),
    pattern: inTurn(KIND_PATTERNS, index),
  };
}

function inTurn(looks: readonly string[], index: number): string {
  return looks[index % looks.length] as string;
}

/** One style a label, in the order given; the empty label ("not recorded") is always neutral. */
export function assignStyles(labels: readonly string[]): ReadonlyMap<string, KindStyle> {
  const styles = new Map<string, KindStyle>();
  let next = 0;
  for (const label of labels) {
    if (styles.has(label)) continue;
    styles.set(label, label === '' ? OTHERS : kindStyle(next++));
  }
  return styles;
}

/** A plotly marker: filled in the kind's colour, outlined in ink so that light kinds stay visible. */
export function kindMarker(style: KindStyle, size = 8): Readonly<Record<string, unknown>> {
  const open = style.symbol.endsWith('-open');
  return {
    color: style.colour,
    symbol: style.symbol,
    size,
    line: { color: open ? style.colour : GROUND.ink, width: open ? 1 : 0.7 },
  };
}

/** Of what has no say in a picture: the kind's shape, hollow, in a heavy line of ink that no filled mark has. */
export function passiveMarker({ symbol }: KindStyle, size = 8): Readonly<Record<string, unknown>> {
  const open = symbol.endsWith('-open');
  return {
    color: open ? GROUND.ink : GROUND.sheet,
    symbol: open ? `${symbol}-dot` : symbol,
    size,
    line: { color: GROUND.ink, width: 1.8 },
  };
}

/** A plotly marker for bars: the kind's colour with its hatching laid over it in the sheet's colour. */
export function kindBar(style: KindStyle, size = 6): Readonly<Record<string, unknown>> {
  return {
    color: style.colour,
    line: { width: 0 },
    // Without `overlay` plotly takes the colour for the hatching alone and leaves the bar blank.
    pattern: {
      shape: style.pattern,
      fillmode: 'overlay',
      fgcolor: GROUND.sheet,
      fgopacity: 1,
      solidity: 0.2,
      size,
    },
  };
}

/** Counts written inside bars: in ink with a halo of the sheet, legible over any colour and hatching. */
export const BAR_TEXT: Readonly<Record<string, unknown>> = {
  textposition: 'inside',
  insidetextanchor: 'middle',
  textangle: 0,
  insidetextfont: {
    color: GROUND.ink,
    shadow: ['1px 0', '-1px 0', '0 1px', '0 -1px', '1px 1px', '-1px -1px', '1px -1px', '-1px 1px']
      .map((shift) => `${shift} 1px ${GROUND.sheet}`)
      .join(', '),
    size: 12,
  },
};

/** The find that is being placed: a large star, heavy black outline, on top of everything. */
export function findMarker(size = 20): Readonly<Record<string, unknown>> {
  return { symbol: 'star', size, color: '#FFFFFF', line: { color: '#000000', width: 2 } };
}
