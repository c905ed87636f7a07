import type { Figure } from '../contract.ts';
import { inSentence, printCount, printQuantity } from '../phrasing.ts';
import { GROUND } from '../shared/figure/colours.ts';
import { type KindStyle, kindMarker, MOST_KINDS } from '../shared/figure/kinds.ts';
import { logTicks, placeOnLog } from '../shared/figure/log-axis.ts';
import { markStyle } from '../shared/figure/marks.ts';
import { panelAxes, panelsLayout } from '../shared/figure/panels.ts';
import { shortNames } from '../shared/figure/short-names.ts';
import { axis, escapeText } from '../shared/figure/style.ts';
import type { Beside, BesideKind, BesideNumber, StandingFound } from './found.ts';

/** Kinds of a panel; the rarer ones are in the table. */
const MOST_KINDS_SHOWN = 6;
/** Panels that are read on one page. */
const MOST_PANELS = 8;
const LETTERS = 20;
/** Beyond the outermost value, as a share of all. */
const ROOM = 0.06;
/** A site beyond those that have a look of their own is filled all the same. */
const UNMARKED: KindStyle = { colour: GROUND.ink, symbol: 'circle', dash: 'solid', pattern: '' };
const OTHERS: KindStyle = { colour: GROUND.sheet, symbol: 'circle', dash: 'solid', pattern: '' };

/** One page of small multiples: the site beside all others together; null where nothing is recorded. */
export function besideFigure(found: StandingFound): Figure | null {
  const { options } = found;
  const siteMark = found.marks.get(options.site) ?? null;
  const shown = found.beside.slice(0, MOST_PANELS);
  if (shown.length === 0) return null;
  const style = siteMark === null || siteMark >= MOST_KINDS ? UNMARKED : markStyle(siteMark);
  return {
    data: shown.flatMap((one, place) =>
      (one.kind === 'kinds' ? kindTraces(one, style) : numberTraces(one, style)).map((trace) => ({
        ...trace,
        ...panelAxes(place),
        showlegend: false,
      })),
    ),
    layout: panelsLayout({
      headings: shown.map(headingOf),
      x: (place) => measureAxis(shown[place]),
      y: (place) =>
        axis('', {
          type: 'category',
          categoryorder: 'array',
          categoryarray: rowsOf(shown[place]),
          autorange: 'reversed',
          showgrid: false,
        }),
      xTitle: '',
      yTitle: '',
      across: 2,
      height: shown.map((one) => 10 + 16 * Math.max(2, rowsOf(one).length)),
      own: true,
      left: 124,
      side: 138,
      before: 112,
    }),
    caption:
      `${options.site} (filled) beside all others together (hollow), one panel an attribute; in brackets items with a value, of ${options.site} and of the others. ` +
      `Kinds by their share in per cent, at the level that all record; numbers by the median, with a thick line over the middle half. Thin lines: between what the other ${inSentence(found.amongLabel)}s of five items or more lie one by one (shares, medians).` +
      `${shown.some((one) => one.kind === 'numbers' && one.logarithmic) ? ' Axes marked so are logarithmic.' : ''}${more(found.beside)}`,
  };
}

const headingOf = (one: Beside) =>
  `${one.label}${one.kind === 'kinds' ? ', %' : ''}${one.kind === 'numbers' && one.unit !== '' ? `, ${one.unit}` : ''}${one.kind === 'numbers' && one.logarithmic ? ', logarithmic' : ''} (${one.siteN}; ${one.othersN})`;

function more(beside: readonly Beside[]): string {
  const rarer = beside.some((one) => one.kind === 'kinds' && one.kinds.length > MOST_KINDS_SHOWN);
  const rest = beside.length - MOST_PANELS;
  const open = beside.reduce((sum, one) => sum + (one.kind === 'numbers' ? one.openEnded : 0), 0);
  return `${open > 0 ? ` ${printCount(open, 'open-ended reading')} at their known end.` : ''}${rarer ? ` Of kinds the ${MOST_KINDS_SHOWN} commonest.` : ''}${rest > 0 ? ` ${printCount(rest, 'attribute')} more in the table.` : ''}`;
}

function rowsOf(one: Beside): string[] {
  if (one.kind === 'numbers') return ['this one', 'all others'];
  const names = one.kinds.slice(0, MOST_KINDS_SHOWN).map(({ label }) => label);
  return shortNames(names, ({ length }) => length <= LETTERS).map(escapeText);
}

function measureAxis(one: Beside): Readonly<Record<string, unknown>> {
  if (one.kind === 'kinds') {
    const most = one.kinds.reduce(
      (high, { site, others, range }) => Math.max(high, site ?? 0, others ?? 0, range?.[1] ?? 0),
      0,
    );
    return axis('', { range: [-3, Math.min(103, 100 * most + 5)], nticks: 5 });
  }
  const values = [one.site, one.others]
    .flatMap((quartiles) => (quartiles === null ? [] : [quartiles.q1, quartiles.q3]))
    .concat(one.range ?? []);
  if (!one.logarithmic) {
    const [from, to] = [Math.min(...values), Math.max(...values)];
    const room = ROOM * (to - from) || 1;
    return axis('', { nticks: 5, range: [from - room, to + room] });
  }
  const [low, high] = [Math.min(...values) / 1.2, Math.max(...values) * 1.2];
  return axis('', { ...logTicks([low * 2, high / 2]), range: [placeOnLog(low), placeOnLog(high)] });
}

const line = (x: readonly (number | null)[], y: readonly string[], width: number, color: string) => ({
  type: 'scatter',
  mode: 'lines',
  x,
  y,
  line: { color, width },
  hoverinfo: 'skip',
});

const points = (x: readonly number[], y: readonly string[], text: readonly string[], marker: object) => ({
  type: 'scatter',
  mode: 'markers',
  x,
  y,
  text,
  hovertemplate: '%{text}<extra></extra>',
  marker,
});

function kindTraces(one: BesideKind, style: KindStyle) {
  const kinds = one.kinds.slice(0, MOST_KINDS_SHOWN);
  const names = rowsOf(one);
  const side = (
    which: 'site' | 'others',
    count: 'siteCount' | 'othersCount',
    n: number,
    said: string,
    marker: object,
  ) => {
    const own = kinds.flatMap((kind, at) => {
      const share = kind[which];
      return share === null
        ? []
        : [{ share, at, text: escapeText(`${said}, ${kind.label}: ${kind[count]} of ${n}`) }];
    });
    return points(
      own.map(({ share }) => 100 * share),
      own.map(({ at }) => names[at]),
      own.map(({ text }) => text),
      marker,
    );
  };
  const ranged = kinds.flatMap(({ range }, at) => (range === null ? [] : [{ range, at }]));
  return [
    line(
      ranged.flatMap(({ range }) => [100 * range[0], 100 * range[1], null]),
      ranged.flatMap(({ at }) => [names[at], names[at], names[at]]),
      1,
      GROUND.inkSoft,
    ),
    side('others', 'othersCount', one.othersN, 'all others', kindMarker(OTHERS, 8)),
    side('site', 'siteCount', one.siteN, 'this one', kindMarker(style, 9)),
  ];
}

function numberTraces(one: BesideNumber, style: KindStyle) {
  const [own, rest] = rowsOf(one);
  const sides = [
    { quartiles: one.site, name: own, marker: kindMarker(style, 9), n: one.siteN },
    { quartiles: one.others, name: rest, marker: kindMarker(OTHERS, 8), n: one.othersN },
  ];
  return [
    ...(one.range === null ? [] : [line([...one.range], [rest, rest], 1, GROUND.inkSoft)]),
    ...sides.flatMap(({ quartiles, name, marker, n }) =>
      quartiles === null
        ? []
        : [
            line([quartiles.q1, quartiles.q3], [name, name], 6, GROUND.line),
            points(
              [quartiles.median],
              [name],
              [escapeText(`${name}: median ${printQuantity(quartiles.median, one.unit)}, n = ${n}`)],
              marker,
            ),
          ],
    ),
  ];
}
