import { escapeText, FIGURE_FONT, figureLayout, GROUND } from './style.ts';

/** Small multiples: equal panels in rows, each with its heading, sharing their axes where they are alike. */
export interface Panels {
  readonly headings: readonly string[];
  /** Axes of a panel without their titles; `outer` where it carries the numbers of its side. */
  readonly x: (place: number, outer: boolean) => Readonly<Record<string, unknown>>;
  readonly y: (place: number, outer: boolean) => Readonly<Record<string, unknown>>;
  /** Titles under and beside all panels together. */
  readonly xTitle: string;
  readonly yTitle: string;
  readonly across: number;
  /** CSS pixels at print width of the inside of one panel. */
  readonly height: number;
  /** Whether every panel has numbers of its own on both sides. */
  readonly own?: boolean;
  /** Room on the left for the numbers of the outer panels, CSS pixels. */
  readonly left?: number;
  /** Room between panels that have numbers of their own, CSS pixels. */
  readonly side?: number;
  /** How far headings begin before their panel, over the names of its rows, CSS pixels. */
  readonly before?: number;
  /** Room above for a legend of what all panels share, CSS pixels; none without it. */
  readonly legend?: number;
}

/** CSS pixels at print width. */
const ROOM = { top: 22, bottom: 46, left: 62, right: 14, heading: 22, numbers: 22, side: 40 };
const GAP = 14;
const PRINT = 643;

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

export function panelsLayout(panels: Panels): Readonly<Record<string, unknown>> {
  const {
    headings,
    across,
    own = false,
    left = ROOM.left,
    side = ROOM.side,
    before = 0,
    legend = 0,
  } = panels;
  const down = Math.ceil(headings.length / across);
  const step = panels.height + ROOM.heading + (own ? ROOM.numbers : 0);
  const tall = down * step - (own ? ROOM.numbers : 0);
  const wide = PRINT - left - ROOM.right;
  const between = own ? side : GAP;
  const width = (wide - (across - 1) * between) / across;
  const axes: Record<string, unknown> = {};
  const texts: Record<string, unknown>[] = [];
  headings.forEach((heading, place) => {
    const column = place % across;
    const row = Math.floor(place / across);
    const { xaxis, yaxis } = panelAxes(place);
    const key = xaxis.slice(1);
    const from = column * (width + between);
    const top = tall - row * step - ROOM.heading;
    const lowest = place + across >= headings.length;
    axes[`xaxis${key}`] = {
      ...panels.x(place, own || lowest),
      title: { text: '' },
      automargin: false,
      domain: [from / wide, (from + width) / wide],
      anchor: yaxis,
      showticklabels: own || lowest,
    };
    axes[`yaxis${key}`] = {
      ...panels.y(place, own || column === 0),
      title: { text: '' },
      automargin: false,
      domain: [Math.max(0, (top - panels.height) / tall), Math.min(1, top / tall)],
      anchor: xaxis,
      showticklabels: own || column === 0,
    };
    texts.push({
      text: escapeText(shortened(heading, width + before)),
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
    height: ROOM.top + legend + tall + ROOM.bottom,
    more: {
      ...axes,
      margin: { l: left, r: ROOM.right, t: ROOM.top + legend, b: ROOM.bottom, pad: 0 },
      showlegend: legend > 0,
      annotations: [
        ...texts,
        sideTitle(panels.xTitle, { x: 0.5, y: 0, yanchor: 'top', yshift: own ? -22 : -24 }),
        sideTitle(panels.yTitle, { x: 0, y: 0.5, textangle: -90, xanchor: 'right', xshift: 22 - left }),
      ].filter(({ text }) => text !== ''),
    },
  });
}

function sideTitle(
  text: string,
  where: Readonly<Record<string, unknown>>,
): Record<string, unknown> & { text: string } {
  return {
    text: escapeText(text),
    xref: 'paper',
    yref: 'paper',
    showarrow: false,
    font: { size: FIGURE_FONT.size, color: GROUND.ink },
    ...where,
  };
}

/** Mean width of a letter at 10 px, on the wide side. */
const LETTER = 5.8;

/** A heading that fits over its panel; the table behind the figure holds it in full. */
function shortened(text: string, width: number): string {
  const most = Math.floor(width / LETTER);
  return text.length <= most ? text : `${text.slice(0, most - 1)}…`;
}
