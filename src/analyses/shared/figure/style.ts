/**
 * The one look of every figure, as plain data: colours, symbols, axes, print sizes. Analyses build
 * their plotly figures from these, so that a printed page and a screen never disagree.
 * The reasons are in docs/look.md.
 */

/** Grounds and inks; the workbench and the report use the same values. */
export const GROUND = {
  /** The page. */
  paper: '#F5EEE0',
  /** Sheets that lie on the page, and the ground of every figure. */
  sheet: '#FCF9F2',
  ink: '#2A2420',
  /** Secondary text; 4.5:1 and better on both grounds. */
  inkSoft: '#655A4F',
  /** Hairlines and grid. */
  line: '#DDD2BF',
  /** What is set aside, unknown or beyond the seven kinds. */
  neutral: '#A79C8D',
} as const;

/**
 * Seven kinds at most, then facet. Ordered dark to light so that a grey print keeps them apart
 * (at least 8 steps of CIE L* between neighbours); shapes double the colour.
 */
export const KIND_COLOURS = [
  '#1E2C5C', // woad
  '#DB8436', // copper
  '#1F6A53', // moss
  '#83BADC', // sky
  '#8C2418', // madder
  '#EBCE62', // weld
  '#8571AE', // heather
] as const;

export const KIND_SYMBOLS = [
  'circle',
  'square',
  'triangle-up',
  'diamond',
  'cross',
  'triangle-down',
  'hourglass',
] as const;

const KIND_DASHES = ['solid', 'dash', 'dot', 'dashdot', 'longdash', 'longdashdot', 'solid'] as const;

/** Hatching of bars, so that stacked shares survive a grey print. */
const KIND_PATTERNS = ['', '/', '.', '\\', '-', 'x', '|'] as const;

export const MOST_KINDS = 7;

/** The three parts of a dissimilarity keep these colours on every screen and page. */
export const BLOCK_COLOURS = { structure: '#1E2C5C', spacing: '#DB8436', fibre: '#1F6A53' } as const;

/** Little to much, for matrices and heat maps: lightness falls evenly, so it prints in grey. */
export const SEQUENTIAL: readonly (readonly [share: number, colour: string])[] = [
  [0, '#FCF9F2'],
  [0.2, '#EAD9B8'],
  [0.4, '#D3AE7C'],
  [0.6, '#AE7A51'],
  [0.8, '#734737'],
  [1, '#2F1D22'],
];

/** Below and above expectation, for residuals and differences; the middle is the sheet itself. */
export const DIVERGING: readonly (readonly [share: number, colour: string])[] = [
  [0, '#1E2C5C'],
  [0.25, '#7F8DB8'],
  [0.5, '#FCF9F2'],
  [0.75, '#D2846B'],
  [1, '#8C2418'],
];

/** Print widths in CSS pixels (96 an inch): one column is 85 mm, two are 170 mm. */
export const PRINT_WIDTH = { single: 321, double: 643 } as const;

/** 11 px prints at 8.25 pt; nothing in a figure is set smaller than 10 px (7.5 pt). */
export const FIGURE_FONT = {
  family:
    '"Atkinson Hyperlegible Next Variable", "Atkinson Hyperlegible Next", "Helvetica Neue", Arial, sans-serif',
  size: 11,
  color: GROUND.ink,
} as const;

export interface KindStyle {
  readonly colour: string;
  readonly symbol: string;
  readonly dash: string;
  readonly pattern: string;
}

const OTHERS: KindStyle = { colour: GROUND.neutral, symbol: 'circle-open', dash: 'dot', pattern: '' };

/** Style of the kind at this place in its fixed order; from the eighth on all share one neutral style. */
export function kindStyle(index: number): KindStyle {
  if (!Number.isInteger(index) || index < 0 || index >= MOST_KINDS) return OTHERS;
  return {
    colour: KIND_COLOURS[index] ?? OTHERS.colour,
    symbol: KIND_SYMBOLS[index] ?? OTHERS.symbol,
    dash: KIND_DASHES[index] ?? OTHERS.dash,
    pattern: KIND_PATTERNS[index] ?? OTHERS.pattern,
  };
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

/** An axis: ink line and outward ticks on the two sides that carry numbers, a faint grid, no zero line. */
export function axis(
  title: string,
  more: Readonly<Record<string, unknown>> = {},
): Readonly<Record<string, unknown>> {
  return {
    title: { text: escapeText(title), standoff: 8, font: { size: FIGURE_FONT.size } },
    showline: true,
    linecolor: GROUND.ink,
    linewidth: 1,
    ticks: 'outside',
    ticklen: 4,
    tickcolor: GROUND.ink,
    tickfont: { size: 10 },
    gridcolor: GROUND.line,
    gridwidth: 0.5,
    zeroline: false,
    automargin: true,
    ...more,
  };
}

export interface LayoutRequest {
  readonly x?: Readonly<Record<string, unknown>>;
  readonly y?: Readonly<Record<string, unknown>>;
  /** What the symbols stand for; heads the legend. */
  readonly legend?: string;
  readonly width?: keyof typeof PRINT_WIDTH;
  /** CSS pixels at print width. */
  readonly height?: number;
  readonly more?: Readonly<Record<string, unknown>>;
}

/** A plotly layout of the house: no title (the caption carries it), sheet ground, legend above the plot. */
export function figureLayout(request: LayoutRequest = {}): Readonly<Record<string, unknown>> {
  return {
    width: PRINT_WIDTH[request.width ?? 'double'],
    height: request.height ?? 400,
    margin: { l: 56, r: 16, t: 16, b: 48, pad: 2 },
    paper_bgcolor: GROUND.sheet,
    plot_bgcolor: GROUND.sheet,
    font: FIGURE_FONT,
    colorway: [...KIND_COLOURS],
    hoverlabel: {
      bgcolor: GROUND.sheet,
      bordercolor: GROUND.ink,
      font: { ...FIGURE_FONT, size: 13 },
      align: 'left',
    },
    legend: {
      orientation: 'h',
      x: 0,
      xanchor: 'left',
      // Hung from the edge of the figure, plotly keeps room for as many lines as it takes.
      y: 1,
      yref: 'container',
      yanchor: 'top',
      itemsizing: 'constant',
      // In the order in which bars are stacked; plotly would turn it round.
      traceorder: 'normal',
      font: { size: FIGURE_FONT.size },
      ...(request.legend === undefined ? {} : { title: { text: `${escapeText(request.legend)}  ` } }),
    },
    ...(request.x === undefined ? {} : { xaxis: request.x }),
    ...(request.y === undefined ? {} : { yaxis: request.y }),
    ...request.more,
  };
}

/** Text of a source is shown as it stands: plotly would read `<b>`, `<a href>` and entities in it. */
export function escapeText(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
}
