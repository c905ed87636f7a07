import type { Figure } from '../../../analyses/contract.ts';
import { GROUND } from '../../../analyses/shared/figure/colours.ts';
import {
  assignStyles,
  findMarker,
  kindMarker,
  kindStyle,
  MOST_KINDS,
  passiveMarker,
} from '../../../analyses/shared/figure/kinds.ts';
import { axis, escapeText, figureLayout } from '../../../analyses/shared/figure/style.ts';
import { append } from '../../../numerics/foundation/lists.ts';
import { count } from '../numbers.ts';

/** The map of kin: records as points on two axes, told apart by shape and colour. */

export interface MapPoint {
  readonly id: string;
  readonly x: number;
  readonly y: number;
  /** What the symbol stands for; "" where it is not recorded. */
  readonly kind: string;
  /** Whether it had no say in the axes. */
  readonly passive?: boolean;
  /** Lines shown when the pointer rests on the point. */
  readonly about: readonly string[];
}

export interface MapFind {
  readonly name: string;
  readonly x: number;
  readonly y: number;
  /** Where the find may lie within its own uncertainty. */
  readonly cloud: readonly (readonly [x: number, y: number])[];
}

export interface MapRequest {
  readonly points: readonly MapPoint[];
  readonly axes: readonly [string, string];
  /** What the symbols stand for, such as "group" or "site". */
  readonly by: string;
  /** Kinds in the study's order of symbols and colours; by how many points have them, where they have no such order. */
  readonly order?: readonly string[];
  readonly picked: readonly string[];
  readonly finds?: readonly MapFind[];
  /** What a point is: an item or a fragment. */
  readonly unit: string;
  /** What the axes rest on; by how unlike the points are, where nothing else is said. */
  readonly spreadBy?: string;
  readonly height?: number;
}

type Marker = Readonly<Record<string, unknown>>;

export function kinMap(request: MapRequest): Figure {
  const { points, axes, by, picked, finds = [], unit } = request;
  const kinds = byFrequency(points.map((point) => point.kind));
  const order = request.order ?? kinds.filter((kind) => kind !== '');
  const shown = order.slice(0, MOST_KINDS).filter((kind) => kinds.includes(kind));
  const others = kinds.filter((kind) => kind !== '' && !shown.includes(kind));
  const styles = assignStyles(order.slice(0, MOST_KINDS));
  const dim = picked.length > 2;
  const placed = points.filter(({ passive }) => passive).length;
  const chosen = new Set(picked);
  const trace = (name: string, members: readonly MapPoint[], marker: Readonly<Record<string, unknown>>) => ({
    type: 'scatter',
    mode: 'markers',
    name: `${escapeText(name)} (${members.length})`,
    x: members.map((point) => point.x),
    y: members.map((point) => point.y),
    customdata: members.map((point) => point.id),
    text: members.map((point) =>
      [`<b>${escapeText(point.id)}</b>`, ...point.about.map(escapeText)].join('<br>'),
    ),
    hovertemplate: '%{text}<extra></extra>',
    marker: { ...marker, opacity: members.map((point) => (dim && !chosen.has(point.id) ? 0.3 : 1)) },
  });
  const neutral = {
    color: GROUND.neutral,
    symbol: 'circle-open',
    size: 7,
    line: { color: GROUND.neutral, width: 1.2 },
  };
  const data: Record<string, unknown>[] = [];
  const rest = points.filter((point) => others.includes(point.kind));
  const blank = points.filter((point) => point.kind === '');
  const hollows: Record<string, unknown>[] = [];
  const both = (name: string, members: readonly MapPoint[], marker: Marker, open: Marker) => {
    const [active, passive] = [false, true].map((given) =>
      members.filter((point) => (point.passive ?? false) === given),
    );
    if (active.length > 0) data.push(trace(name, active, marker));
    if (passive.length > 0) hollows.push(trace(`${name}, supplementary`, passive, open));
  };
  const hollow = passiveMarker(kindStyle(MOST_KINDS), 9);
  both('not recorded', blank, neutral, hollow);
  both(
    others.length === 1 ? others[0] : count(others.length, 'other'),
    rest,
    { ...neutral, symbol: 'diamond-open' },
    { ...hollow, symbol: 'diamond-open-dot' },
  );
  for (const kind of shown) {
    const style = styles.get(kind);
    if (style === undefined) continue;
    const members = points.filter((point) => point.kind === kind);
    both(kind, members, kindMarker(style, 9), passiveMarker(style, 9));
  }
  append(data, hollows);
  const ringed = points.filter((point) => chosen.has(point.id));
  if (ringed.length > 0)
    data.push({
      type: 'scatter',
      mode: 'markers',
      showlegend: false,
      hoverinfo: 'skip',
      x: ringed.map((point) => point.x),
      y: ringed.map((point) => point.y),
      marker: { symbol: 'circle-open', size: 18, color: '#000', line: { width: 2 } },
    });
  finds.forEach((find, i) => {
    if (find.cloud.length > 1)
      data.push({
        type: 'scatter',
        mode: 'markers',
        name: 'within its measurements',
        showlegend: i === 0,
        hoverinfo: 'skip',
        x: find.cloud.map(([x]) => x),
        y: find.cloud.map(([, y]) => y),
        marker: { symbol: 'circle', size: 4, color: '#000', opacity: 0.28, line: { width: 0 } },
      });
    data.push({
      type: 'scatter',
      mode: finds.length > 1 ? 'markers+text' : 'markers',
      name: escapeText(find.name),
      text: [escapeText(find.name)],
      textposition: 'top center',
      x: [find.x],
      y: [find.y],
      hovertemplate: `${escapeText(find.name)}<extra></extra>`,
      marker: findMarker(22),
    });
  });
  return {
    data,
    layout: figureLayout({
      x: axis(axes[0]),
      y: axis(axes[1], { scaleanchor: 'x', scaleratio: 1 }),
      legend: by,
      height: request.height ?? 520,
      more: { dragmode: 'select', hovermode: 'closest', uirevision: axes.join() },
    }),
    caption: `${count(points.length, unit)}, one point each, by ${request.spreadBy ?? 'how unlike they are'}; points that lie close are alike. Symbol: ${by}; numbers in brackets are n.${
      placed === 0 ? '' : ` Hollow: ${placed} supplementary, placed without a say in the axes.`
    }${
      finds.length === 0 ? '' : ' Star: the find; small dots: where it may lie within its own measurements.'
    }`,
  };
}

/** Distinct texts, most frequent first, equal ones in the order of the alphabet. */
export function byFrequency(texts: readonly string[]): string[] {
  const counts = new Map<string, number>();
  for (const text of texts) counts.set(text, (counts.get(text) ?? 0) + 1);
  return [...counts.keys()].sort(
    (a, b) => (counts.get(b) ?? 0) - (counts.get(a) ?? 0) || a.localeCompare(b, 'en', { numeric: true }),
  );
}
