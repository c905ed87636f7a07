import type { Figure } from '../contract.ts';
import { labelled, namesOrNumbers } from '../label-places.ts';
import { printCount, printList, printNumber } from '../phrasing.ts';
import { GROUND } from '../shared/figure/colours.ts';
import { findMarker, kindMarker, kindStyle } from '../shared/figure/kinds.ts';
import { limitBars, partByLimits } from '../shared/figure/limit-bars.ts';
import { markersOf } from '../shared/figure/marks.ts';
import { axis, escapeText, figureLayout } from '../shared/figure/style.ts';
import { NAMED } from '../shared/options/coefficient.ts';
import { besideFigure } from './beside-figure.ts';
import type { Likeness, StandingFound } from './found.ts';

/** Likeness with intervals, the map with the site as a star, and the ranked effects. */
export function standingFigures(found: StandingFound): Readonly<Record<string, Figure>> {
  const map = mapFigure(found);
  const apart = apartFigure(found);
  const beside = besideFigure(found);
  const figures: Record<string, Figure> = {
    likeness: likenessFigure(found),
    ...(map === null ? {} : { map }),
    ...(apart === null ? {} : { apart }),
    ...(beside === null ? {} : { beside }),
  };
  if (found.region.length === 0) return figures;
  const only = printList(found.region.map(({ attribute, value }) => `${attribute.toLowerCase()} ${value}`));
  return Object.fromEntries(
    Object.entries(figures).map(([name, figure]) => [
      name,
      { ...figure, caption: `${figure.caption} Only items of ${only} are compared.` },
    ]),
  );
}

function likenessFigure(found: StandingFound): Figure {
  const { likeness, sameWithin, options, siteItems, marks } = found;
  const names = new Map(likeness.map(({ label, items }) => [label, escapeText(`${label} (${items})`)]));
  const same = sameWithin.flatMap((one) => ('why' in one || one.likeness.length === 0 ? [] : [one]));
  const traces = (name: string, lines: readonly Likeness[], place: number) => {
    const { barred, bare } = partByLimits(
      lines.map(({ label, value, interval }) => ({
        label,
        y: names.get(label) ?? escapeText(label),
        value,
        low: 'why' in interval ? null : interval.low,
        high: 'why' in interval ? null : interval.high,
      })),
    );
    return [barred, bare]
      .filter((points) => points.length > 0)
      .map((points, part) => ({
        type: 'scatter',
        mode: 'markers',
        name,
        legendgroup: name,
        showlegend: part === 0 && same.length > 0,
        x: points.map(({ value }) => value),
        y: points.map(({ y }) => y),
        ...(points === barred ? { error_x: limitBars(barred, GROUND.ink) } : {}),
        marker:
          place === 0
            ? markersOf(
                marks,
                points.map(({ label }) => label),
                10,
              )
            : { symbol: `${kindStyle(place).symbol}-open`, size: 8, color: GROUND.ink, line: { width: 1.2 } },
      }));
  };
  const all = [
    { name: 'all items', lines: likeness },
    ...same.map((one) => ({ name: escapeText(`${one.value} only (${one.items})`), lines: one.likeness })),
  ];
  return {
    data: all.flatMap(({ name, lines }, place) => traces(name, lines, place)),
    layout: figureLayout({
      x: axis(NAMED[options.coefficient]),
      y: axis('', {
        type: 'category',
        categoryorder: 'array',
        categoryarray: likeness.map(({ label }) => names.get(label)).reverse(),
      }),
      height: 130 + 34 * Math.max(likeness.length, 3),
    }),
    caption:
      `How alike ${options.site} (${printCount(siteItems, 'item')}) is to each other in ${found.kindsLabel.toLowerCase()}: ${NAMED[options.coefficient]}, most alike above; ` +
      `bars: ${printNumber(options.confidence * 100)} % of draws of the items; no bar where draws cannot tell; in brackets items counted.` +
      `${same.length > 0 ? ` Hollow: items of the same ${same.map(({ attribute }) => attribute.toLowerCase()).join(', ')} only.` : ''}`,
  };
}

/** Draws shown; more make the cloud no clearer. */
const MOST_SHOWN = 300;

const HEIGHT = 520;

function mapFigure({ axes, options, kindsLabel, siteItems, marks }: StandingFound): Figure | null {
  if ('why' in axes || axes.shares.length < 2) return null;
  const cloud = axes.cloud.slice(0, MOST_SHOWN);
  const share = (place: number) => `${printNumber(100 * axes.shares[place])} %`;
  const named = [
    { x: axes.site[0], y: axes.site[1], name: `${options.site} (${siteItems})` },
    ...axes.others.map(({ label, items, at }) => ({ x: at[0], y: at[1], name: `${label} (${items})` })),
    ...axes.kinds.map(({ label, at }) => ({ x: at[0], y: at[1], name: label })),
  ];
  const { labels, said: names } = namesOrNumbers(named, { height: HEIGHT, equal: true });
  const points = (
    name: string,
    of: typeof axes.others,
    first: number,
    marker: Readonly<Record<string, unknown>>,
    below: boolean,
  ) => ({
    type: 'scatter',
    mode: 'markers+text',
    name,
    x: of.map(({ at }) => at[0]),
    y: of.map(({ at }) => at[1]),
    ...labelled(labels.slice(first, first + of.length), named.slice(first, first + of.length)),
    textfont: { size: 10, ...(below ? { color: GROUND.inkSoft } : {}) },
    marker,
  });
  const cross = kindStyle(4).colour;
  return {
    data: [
      {
        type: 'scatter',
        mode: 'markers',
        name: 'its items drawn again',
        x: cloud.map(([x]) => x),
        y: cloud.map(([, y]) => y),
        hoverinfo: 'skip',
        marker: { symbol: 'circle', size: 4, color: GROUND.neutral, opacity: 0.5 },
      },
      points(
        escapeText(kindsLabel),
        axes.kinds,
        1 + axes.others.length,
        { symbol: 'x-thin', size: 7, line: { color: cross, width: 2 } },
        true,
      ),
      {
        ...points(
          'the others',
          axes.others,
          1,
          markersOf(
            marks,
            axes.others.map(({ label }) => label),
            9,
          ),
          false,
        ),
        showlegend: false,
      },
      {
        type: 'scatter',
        mode: 'markers+text',
        name: escapeText(options.site),
        x: [axes.site[0]],
        y: [axes.site[1]],
        ...labelled(labels.slice(0, 1), named.slice(0, 1)),
        textfont: { size: 10 },
        marker: findMarker(),
      },
    ],
    layout: figureLayout({
      x: axis(`axis 1 (${share(0)})`),
      y: axis(`axis 2 (${share(1)})`, { scaleanchor: 'x' }),
      height: HEIGHT,
    }),
    caption:
      `Correspondence map of ${printCount(axes.others.length, 'other assemblage')} in ${kindsLabel.toLowerCase()}, with ${options.site} (star) placed afterwards; ` +
      `crosses: kinds; dots: ${cloud.length} draws of its items; in brackets items counted. Distances among assemblages are chi-square distances; to kinds only directions compare.${names}`,
  };
}

/** Attributes shown, by size of effect. */
const MOST_EFFECTS = 15;

function apartFigure({ apart, options }: StandingFound): Figure | null {
  const shown = apart
    .flatMap((one) => (typeof one.effect === 'number' ? [{ ...one, effect: one.effect }] : []))
    .slice(0, MOST_EFFECTS);
  if (shown.length === 0) return null;
  const name = ({ attribute, siteItems, otherItems }: (typeof shown)[number]) =>
    escapeText(`${attribute} (${siteItems}, ${otherItems})`);
  const trace = (title: string, lines: typeof shown, place: number, open: boolean) => ({
    type: 'scatter',
    mode: 'markers',
    name: title,
    x: lines.map(({ effect }) => effect),
    y: lines.map(name),
    marker: {
      ...kindMarker(kindStyle(place), 10),
      ...(open
        ? { symbol: `${kindStyle(place).symbol}-open`, line: { color: kindStyle(place).colour, width: 1 } }
        : {}),
    },
  });
  const sure = ({ told }: (typeof shown)[number]) => told === 'told apart';
  const isNumber = ({ measure }: (typeof shown)[number]) => measure === 'Cliff’s delta';
  return {
    data: [
      trace(
        'Cliff’s delta',
        shown.filter((one) => isNumber(one) && sure(one)),
        0,
        false,
      ),
      trace(
        'Cliff’s delta, not told apart',
        shown.filter((one) => isNumber(one) && !sure(one)),
        0,
        true,
      ),
      trace(
        'Cramér’s V',
        shown.filter((one) => !isNumber(one) && sure(one)),
        1,
        false,
      ),
      trace(
        'Cramér’s V, not told apart',
        shown.filter((one) => !isNumber(one) && !sure(one)),
        1,
        true,
      ),
    ].filter(({ x }) => x.length > 0),
    layout: figureLayout({
      x: axis('effect', { range: [-1.05, 1.05] }),
      y: axis('', { type: 'category', categoryorder: 'array', categoryarray: shown.map(name).reverse() }),
      height: 130 + 26 * Math.max(shown.length, 3),
    }),
    caption:
      `What sets ${options.site} apart from all others together, largest effect above: Cliff’s delta of numbers and grades (right: larger at the site), corrected Cramér’s V of kinds (0 to 1); ` +
      `filled where told apart at ${printNumber(options.confidence * 100)} % confidence (Holm); in brackets items of the site and of the others.`,
  };
}
