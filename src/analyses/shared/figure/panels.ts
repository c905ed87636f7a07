import { GROUND } from './colours.ts';
import { shortNames } from './short-names.ts';
import { escapeText, FIGURE_FONT, figureLayout, PRINT_WIDTH } from './style.ts';

/** Small multiples: equal panels in rows, each with its heading, sharing their axes where they are alike. */
export interface Panels extends PanelPlan {
  /** Axes of a panel without their titles. */
  readonly x: (place: number) => Plain;
  readonly y: (place: number) => Plain;
}

/** How panels are arranged; a layout carries it (`meta.panels`), so that it can be arranged again for another width. */
interface PanelPlan {
  readonly headings: readonly string[];
  /** Titles under and beside all panels together. */
  readonly xTitle: string;
  readonly yTitle: string;
  /** Panels in a row across both columns of a page. */
  readonly across: number;
  /** CSS pixels at print width of the inside of every panel, or of each. */
  readonly height: number | readonly number[];
  /** Whether every panel has numbers of its own on both sides. */
  readonly own?: boolean;
  /** Room on the left for the numbers of the outer panels, CSS pixels. */
  readonly left?: number;
  /** Room between panels that have numbers of their own, CSS pixels. */
  readonly side?: number;
  /** How far headings begin before their panel, over the names of its rows, CSS pixels. */
  readonly before?: number;
  /** Names in a legend of what all panels share; no legend without them. */
  readonly legend?: readonly string[];
}

type Plain = Readonly<Record<string, unknown>>;

/** CSS pixels at print width. */
const ROOM = { top: 22, bottom: 46, left: 62, right: 14, heading: 22, numbers: 22, side: 40 };
const GAP = 14;

/** Panels in a row: three, or four where that leaves fewer standing alone below. */
export function acrossFor(many: number): number {
  if (many <= 3) return many;
  const alone = (across: number) => (across - (many % across)) % across;
  return alone(4) < alone(3) || many > 9 ? 4 : 3;
}

/** The plotly names of a panel's axes, to be given to its traces. */
export function panelAxes(place: number): { readonly xaxis: string; readonly yaxis: string } {
  const key = place === 0 ? '' : String(place + 1);
  return { xaxis: `x${key}`, yaxis: `y${key}` };
}

export function panelsLayout({ x, y, ...plan }: Panels): Plain {
  return arranged(plan, PRINT_WIDTH.double, { x, y });
}

/** The same panels for one column of a page: two in a row, or one where each has numbers of its own; null where there are none. */
export function panelsInColumn(layout: Plain): Plain | null {
  const { panels: plan } = (layout.meta ?? {}) as { readonly panels?: PanelPlan };
  if (plan === undefined) return null;
  const axis = (letter: string) => (place: number) =>
    layout[`${letter}axis${place === 0 ? '' : place + 1}`] as Plain;
  const { width: _wide, ...rest } = layout;
  const across = Math.min(plan.own ? 1 : 2, plan.headings.length);
  return { ...rest, ...arranged({ ...plan, across }, PRINT_WIDTH.single, { x: axis('x'), y: axis('y') }) };
}

function arranged(plan: PanelPlan, print: number, { x, y }: Pick<Panels, 'x' | 'y'>): Plain {
  const { across, own = false, left = ROOM.left, side = ROOM.side, before = 0, legend = [] } = plan;
  const names = legendRoom(legend, print);
  const rows = rowHeights(plan, across);
  const around = ROOM.heading + (own ? ROOM.numbers : 0);
  const above = (row: number) => rows.slice(0, row).reduce((sum, height) => sum + height + around, 0);
  const tall = above(rows.length) - (own ? ROOM.numbers : 0);
  const wide = print - left - ROOM.right;
  const between = own ? side : GAP;
  const width = (wide - (across - 1) * between) / across;
  const headings = shortNames(plan.headings, (text) => text.length <= (width + before + GAP / 2) / LETTER);
  const axes: Record<string, unknown> = {};
  const texts: Record<string, unknown>[] = [];
  headings.forEach((heading, place) => {
    const column = place % across;
    const row = Math.floor(place / across);
    const { xaxis, yaxis } = panelAxes(place);
    const key = xaxis.slice(1);
    const from = column * (width + between);
    const top = tall - above(row) - ROOM.heading;
    const lowest = place + across >= headings.length;
    axes[`xaxis${key}`] = {
      ...x(place),
      title: { text: '' },
      automargin: false,
      domain: [from / wide, (from + width) / wide],
      anchor: yaxis,
      showticklabels: own || lowest,
    };
    axes[`yaxis${key}`] = {
      ...y(place),
      title: { text: '' },
      automargin: false,
      domain: [Math.max(0, (top - (rows[row] as number)) / tall), Math.min(1, top / tall)],
      anchor: xaxis,
      showticklabels: own || column === 0,
    };
    texts.push({
      text: escapeText(heading),
      xref: 'paper',
      yref: 'paper',
      x: from / wide,
      y: top / tall,
      xanchor: 'left',
      yanchor: 'bottom',
      yshift: 1,
      ...(before === 0 ? {} : { xshift: -before }),
      showarrow: false,
      font: { size: 10, color: GROUND.ink },
    });
  });
  return figureLayout({
    width: print === PRINT_WIDTH.single ? 'single' : 'double',
    height: ROOM.top + names + tall + ROOM.bottom,
    more: {
      ...axes,
      meta: { panels: plan },
      margin: { l: left, r: ROOM.right, t: ROOM.top + names, b: ROOM.bottom, pad: 0 },
      showlegend: names > 0,
      annotations: [
        ...texts,
        sideTitle(plan.xTitle, { x: 0.5, y: 0, yanchor: 'top', yshift: own ? -22 : -24 }),
        sideTitle(plan.yTitle, { x: 0, y: 0.5, textangle: -90, xanchor: 'right', xshift: 22 - left }),
      ].filter(({ text }) => text !== ''),
    },
  });
}

function sideTitle(text: string, where: Plain): Record<string, unknown> & { text: string } {
  return {
    text: escapeText(text),
    xref: 'paper',
    yref: 'paper',
    showarrow: false,
    font: { size: FIGURE_FONT.size, color: GROUND.ink },
    ...where,
  };
}

/** Panels side by side are as high as the highest of them. */
function rowHeights({ headings, height }: PanelPlan, across: number): readonly number[] {
  const own = headings.map((_, place) => (typeof height === 'number' ? height : (height[place] as number)));
  return Array.from({ length: Math.ceil(own.length / across) }, (_, row) =>
    own.slice(row * across, (row + 1) * across).reduce((most, one) => Math.max(most, one), 0),
  );
}

/** Mean width of a letter at 10 px, on the wide side. */
const LETTER = 5.5;

/** What a legend takes above the panels: columns as wide as its longest name, as plotly lays it out. */
function legendRoom(names: readonly string[], print: number): number {
  if (names.length === 0) return 0;
  const longest = names.reduce((most, { length }) => Math.max(most, length), 0);
  const column = LEGEND.symbol + (longest * LETTER * FIGURE_FONT.size) / 10;
  return LEGEND.around + Math.ceil(names.length / Math.max(1, Math.floor(print / column))) * LEGEND.line;
}

const LEGEND = { symbol: 45, line: 18, around: 8 };
