import type { Figure } from '../contract.ts';
import { printCount } from '../phrasing.ts';
import { GROUND } from '../shared/figure/colours.ts';
import { BAR_TEXT, kindBar, kindMarker, kindStyle } from '../shared/figure/kinds.ts';
import { logTicks } from '../shared/figure/log-axis.ts';
import { styleOf } from '../shared/figure/marks.ts';
import { axis, escapeText, figureLayout } from '../shared/figure/style.ts';
import { levelNote } from '../shared/level/said.ts';
import { pooledFigure } from '../shared/pooled/faces.ts';
import { pooledSharesFigure } from '../shared/pooled/shares.ts';
import type { NumberGroup, SummaryFound, TermGroup } from './found.ts';
import { recordedFigure } from './recorded-figure.ts';
import { spansFigure } from './spans-figure.ts';

/** Boxes say something from this many values on; below, the points stand alone. */
const FEWEST_FOR_BOX = 5;

/** A strip of points with boxes for each number, stacked shares for each attribute of kinds. */
export function summaryFigures(found: SummaryFound): Readonly<Record<string, Figure>> {
  const figures: Record<string, Figure> = {};
  const by = byLabels(found).join(' and ');
  if (found.recorded.length > 0) figures.recorded = recordedFigure(found.recorded, by, found.unit);
  for (const groups of byAttribute(found.numbers)) {
    const { attribute } = groups[0];
    const spans = found.spans.filter((one) => one.attribute === attribute);
    figures[attribute] = spans.length > 0 ? spansFigure(spans, found.unit, by) : numberFigure(found, groups);
  }
  for (const groups of byAttribute(found.terms)) {
    const { attribute } = groups[0];
    const [level] = byAttribute(found.atLevel.filter((group) => group.attribute === attribute));
    // Groups side by side are compared at what all of them record.
    figures[attribute] = kindFigure(found, level ?? groups, level === undefined ? 'plain' : 'at the level');
    if (level !== undefined) figures[`${attribute}AsRecorded`] = kindFigure(found, groups, 'as recorded');
  }
  for (const one of found.pooledMeans) {
    const figure = pooledFigure(one, by);
    if (figure !== null) figures[`${one.id}Pooled`] = figure;
  }
  for (const one of found.pooledKinds) figures[`${one.id}Pooled`] = pooledSharesFigure(one, by);
  return figures;
}

/** Groups of one attribute together, the line of all groups left out where it only repeats them. */
function byAttribute<Group extends NumberGroup | TermGroup>(groups: readonly Group[]): Group[][] {
  const lists = new Map<string, Group[]>();
  for (const group of groups) {
    if (group.group.length > 0 && group.whole) continue;
    lists.set(group.attribute, [...(lists.get(group.attribute) ?? []), group]);
  }
  return [...lists.values()];
}

const byLabels = ({ by }: SummaryFound) => by.map(({ label }) => label);

function groupName(found: SummaryFound, group: readonly string[]): string {
  return group.length === 0 ? `all ${found.unit}s` : group.join(', ');
}

function numberFigure(found: SummaryFound, groups: readonly NumberGroup[]): Figure {
  const { label, unit, logarithmic } = groups[0];
  const traces = groups.map((group, place) => {
    const style = group.group.length === 0 ? kindStyle(0) : styleOf(found.marks.groups, group.group[0]);
    const name = `${groupName(found, group.group)} (${group.points.length})`;
    const boxed = group.points.length >= FEWEST_FOR_BOX;
    const values = group.points.map((point) => point.value);
    return {
      type: 'box',
      name: escapeText(name),
      y: [escapeText(name)],
      x: [values],
      text: [
        group.points.map((point) => escapeText(point.openEnded ? `${point.id} (open-ended)` : point.id)),
      ],
      ...boxOf(group),
      orientation: 'h',
      boxpoints: 'all',
      pointpos: 0,
      jitter: 0.5,
      marker: kindMarker(style, 6),
      line: { color: boxed ? GROUND.ink : 'rgba(0,0,0,0)', width: 1 },
      fillcolor: 'rgba(0,0,0,0)',
      hovertemplate: '%{text}: %{x}<extra></extra>',
      showlegend: false,
      zorder: groups.length - place,
    };
  });
  const positive = groups.every((group) => group.points.every((point) => point.value > 0));
  const n = groups.reduce((total, group) => total + group.points.length, 0);
  const missing = groups.reduce((total, group) => total + group.missing, 0);
  return {
    data: traces,
    layout: figureLayout({
      x: axis(
        unit === '' ? label : `${label} (${unit})`,
        logarithmic && positive
          ? logTicks(groups.flatMap((group) => group.points.map(({ value }) => value)))
          : {},
      ),
      y: axis(byLabels(found).join(', '), { autorange: 'reversed', type: 'category' }),
      height: 120 + 34 * groups.length,
    }),
    caption:
      `${label}${found.by.length > 0 ? ` by ${byLabels(found).join(' and ')}` : ''}: one symbol ` +
      `${found.unit === 'item' ? 'an item' : 'a fragment'}, ${n} shown, ${missing} without a value. ` +
      `Boxes from ${FEWEST_FOR_BOX} values on: median and quartiles (type 7), whiskers to the outermost values. Interval readings stand at ` +
      'their middle, open-ended ones at their known end' +
      `${logarithmic && positive ? '; logarithmic axis' : ''}.`,
  };
}

/** The box as computed: plotly's own quartiles are another type, its whiskers another rule. */
function boxOf({ quartiles, points }: NumberGroup): Readonly<Record<string, readonly number[]>> {
  if (quartiles === null) return {};
  const values = points.map((point) => point.value);
  return {
    q1: [quartiles[0]],
    median: [quartiles[1]],
    q3: [quartiles[2]],
    lowerfence: [values.reduce((a, b) => Math.min(a, b))],
    upperfence: [values.reduce((a, b) => Math.max(a, b))],
  };
}

function kindFigure(
  found: SummaryFound,
  groups: readonly TermGroup[],
  counted: 'plain' | 'at the level' | 'as recorded',
): Figure {
  const level = found.levels.get(groups[0].attribute);
  const note =
    counted === 'as recorded'
      ? ' By the words as recorded: places differ there by how closely they were recorded.'
      : counted === 'plain' || level === undefined
        ? ''
        : levelNote(level, found.unit);
  const total = new Map<string, number>();
  for (const group of groups) {
    for (const { term, count } of group.counted) total.set(term, (total.get(term) ?? 0) + count);
  }
  const terms = [...total.keys()];
  const marks = found.marks[counted === 'at the level' ? 'atLevel' : 'recorded'].get(groups[0].attribute);
  const names = groups.map((group) => escapeText(`${groupName(found, group.group)} (${group.n})`));
  const traces = terms.map((term) => {
    const style = styleOf(marks ?? new Map(), term);
    const counts = groups.map((group) => group.counted.find((entry) => entry.term === term)?.count ?? 0);
    return {
      type: 'bar',
      orientation: 'h',
      name: escapeText(term),
      x: counts.map((count, place) => (groups[place].n === 0 ? 0 : (100 * count) / groups[place].n)),
      y: names,
      text: counts.map((count) => (count === 0 ? '' : String(count))),
      ...BAR_TEXT,
      marker: { ...kindBar(style), line: { color: GROUND.ink, width: 0.5 } },
      hovertemplate: `${escapeText(term)}: %{text} (%{x:.0f} %)<extra>%{y}</extra>`,
    };
  });
  const n = groups.reduce((sum, group) => sum + group.n, 0);
  const missing = groups.reduce((sum, group) => sum + group.missing, 0);
  return {
    data: traces,
    layout: figureLayout({
      x: axis(`share of ${found.unit}s (%)`, { range: [0, 100] }),
      y: axis(byLabels(found).join(', '), { autorange: 'reversed', type: 'category' }),
      legend: groups[0].label,
      height: 150 + 30 * groups.length,
      more: { barmode: 'stack', bargap: 0.35 },
    }),
    caption:
      `${groups[0].label}${found.by.length > 0 ? ` by ${byLabels(found).join(' and ')}` : ''}: shares of the ` +
      `${printCount(n, found.unit)} with a value, ${missing} without one left out; numbers in the bars ` +
      `and in brackets are counts.${note}`,
  };
}
