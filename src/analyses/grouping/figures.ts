import { dissimilarityAt } from '../../numerics/condensed.ts';
import { leafOrder } from '../../numerics/grouping/tree.ts';
import { isUnavailable } from '../../numerics/unavailable.ts';
import type { Figure, Unavailable } from '../contract.ts';
import {
  axis,
  escapeText,
  figureLayout,
  GROUND,
  kindBar,
  kindMarker,
  kindStyle,
  SEQUENTIAL,
} from '../figure-style.ts';
import { printCount, printList, printNumber, printP } from '../phrasing.ts';
import type { GroupedRecord, GroupingFound } from './compute.ts';
import type { Reference } from './reference-tables.ts';
import { groupName } from './tables.ts';
import { treeFigure } from './tree-figure.ts';

/** Up to this many records each has a line and a column in the heat map; above, each group has one. */
const MOST_IN_MATRIX = 150;

/** More bars than this cannot be told apart; a sample is drawn instead. */
const MOST_BARS = 2000;

/** Silhouette, ordered heat map, choice of the number of groups, and the tree where there is one. */
export function groupingFigures(found: GroupingFound): Readonly<Record<string, Figure>> {
  return {
    ...(found.k < 2 ? {} : { silhouette: silhouetteFigure(found) }),
    matrix: matrixFigure(found),
    ...(found.tried.length > 1 ? { choice: choiceFigure(found) } : {}),
    ...(found.tree === null ? {} : { tree: treeFigure(found, found.tree) }),
  };
}

/** Records by group, within it by silhouette width, widest first. */
function byGroup(records: readonly GroupedRecord[], k: number): GroupedRecord[] {
  const place = (record: GroupedRecord) => (record.group < 0 ? k : record.group);
  return [...records].sort((a, b) => place(a) - place(b) || b.silhouette - a.silhouette);
}

function silhouetteFigure(found: GroupingFound): Figure {
  const shown = found.records.length <= MOST_BARS ? found.records : inMatrixOf(found);
  const ordered = byGroup(shown, found.k).filter((record) => record.group >= 0);
  const traces = found.groups.map((group, number) => {
    const style = kindStyle(number);
    const members = ordered
      .map((record, position) => ({ record, position }))
      .filter(({ record }) => record.group === number);
    return {
      type: 'bar',
      name: `${groupName(number)} (${group.size})`,
      x: members.map(({ position }) => position + number),
      y: members.map(({ record }) => record.silhouette),
      text: members.map(({ record }) => escapeText(record.id)),
      textposition: 'none',
      customdata: members.map(({ record }) => record.id),
      marker: kindBar(style, 5),
      hovertemplate: `%{text}: %{y:.3f}<extra>group ${groupName(number)}</extra>`,
    };
  });
  return {
    data: traces,
    layout: figureLayout({
      x: axis(`${found.unit}s, by group and width`, { showticklabels: false, ticks: '', showgrid: false }),
      y: axis('silhouette width', { zeroline: true, zerolinecolor: GROUND.ink, zerolinewidth: 1 }),
      legend: 'group',
      height: 320,
      more: { bargap: 0 },
    }),
    caption:
      `Silhouette widths of ${printCount(ordered.length, found.unit)} in ${found.k} groups; numbers in brackets are ` +
      `sizes. At 1 a record sits wholly in its group, at 0 between two, below 0 nearer to another. Mean ` +
      `${printNumber(found.meanSilhouette ?? 0)}.${found.sampled ? ' A sample of the table; widths by medoids.' : ''}`,
  };
}

function matrixFigure(found: GroupingFound): Figure {
  const single = found.records.length <= MOST_IN_MATRIX || found.k < 2;
  const labels = single ? [] : found.groups.map((group, number) => `${groupName(number)} (${group.size})`);
  const order = single ? matrixOrder(found) : [];
  const values = single
    ? order.map((i) => order.map((j) => dissimilarityAt(found.matrix, i, j)))
    : meanBetweenGroups(found);
  const names = single ? order.map((i) => escapeText(found.records[i].id)) : labels;
  const plain = { ticks: '', showgrid: false, showline: false, type: 'category' };
  return {
    data: [
      {
        type: 'heatmap',
        z: values,
        x: names,
        y: names,
        colorscale: SEQUENTIAL.map(([share, colour]) => [share, colour]),
        zmin: 0,
        colorbar: { title: { text: 'dissimilarity' }, thickness: 10, outlinewidth: 0 },
        hovertemplate: '%{y} and %{x}: %{z:.3f}<extra></extra>',
      },
    ],
    layout: figureLayout({
      x: axis(single ? found.unit : 'group', { ...plain, showticklabels: !single || order.length <= 40 }),
      y: axis(single ? found.unit : 'group', {
        ...plain,
        showticklabels: !single || order.length <= 40,
        autorange: 'reversed',
      }),
      height: 560,
    }),
    caption: single
      ? `Dissimilarities of ${printCount(order.length, found.unit)}, ordered ${found.tree === null ? 'by group and silhouette width' : 'as the leaves of the tree'}: light is alike.`
      : `Mean dissimilarities within (diagonal) and between groups of ${printCount(found.records.length, found.unit)}; sizes in brackets; light is alike.`,
  };
}

function matrixOrder(found: GroupingFound): number[] {
  if (found.tree !== null) return [...leafOrder(found.tree)].slice(0, MOST_IN_MATRIX);
  const place = new Map(found.records.map((record, index) => [record, index]));
  return byGroup(found.records, found.k)
    .map((record) => place.get(record) ?? 0)
    .slice(0, MOST_IN_MATRIX);
}

/** The records whose dissimilarities are at hand. */
function inMatrixOf(found: GroupingFound): GroupedRecord[] {
  return Array.from(found.inMatrix, (place) => found.records[place]);
}

function meanBetweenGroups(found: GroupingFound): (number | null)[][] {
  const { k, matrix } = found;
  const records = inMatrixOf(found);
  const sums = new Float64Array(k * k);
  const pairs = new Float64Array(k * k);
  let place = 0;
  for (let i = 0; i < matrix.n; i++) {
    for (let j = i + 1; j < matrix.n; j++) {
      const value = matrix.values[place++];
      const a = Math.min(records[i].group, records[j].group);
      const b = Math.max(records[i].group, records[j].group);
      if (a < 0) continue;
      sums[a * k + b] += value;
      pairs[a * k + b]++;
    }
  }
  return Array.from({ length: k }, (_, i) =>
    Array.from({ length: k }, (_, j) => {
      const cell = Math.min(i, j) * k + Math.max(i, j);
      return pairs[cell] === 0 ? null : sums[cell] / pairs[cell];
    }),
  );
}

function choiceFigure(found: GroupingFound): Figure {
  const { tried, trust, k } = found;
  const measured = tried.filter((partition) => partition.meanSilhouette !== null);
  const style = kindStyle(0);
  const traces: Record<string, unknown>[] = [
    {
      type: 'scatter',
      mode: 'lines+markers',
      name: 'this table',
      x: measured.map((partition) => partition.k),
      y: measured.map((partition) => partition.meanSilhouette),
      line: { color: style.colour, width: 1.5 },
      marker: {
        ...kindMarker(style),
        size: measured.map((partition) => (partition.k === k ? 13 : 7)),
      },
      hovertemplate: '%{x} groups: %{y:.3f}<extra></extra>',
    },
  ];
  const references: readonly [name: string, reference: Reference | Unavailable, dash: string][] = [
    ['shuffled tables', trust.shuffled, 'dash'],
    ['even clouds', trust.even, 'dot'],
    ['single heaps', trust.heap, 'longdash'],
  ];
  for (const [name, reference, dash] of references) {
    if (isUnavailable(reference)) continue;
    traces.push({
      type: 'scatter',
      mode: 'lines',
      name: `${name}, 95 % quantile`,
      x: reference.byCount.map((entry) => entry.k),
      y: reference.byCount.map((entry) => entry.high),
      line: { color: GROUND.inkSoft, width: 1, dash },
      hovertemplate: `%{x} groups: %{y:.3f}<extra>${name}, 95 %</extra>`,
    });
  }
  const tests = references.flatMap(([name, reference]) =>
    isUnavailable(reference) ? [] : [`${reference.tables} ${name} (${printP(reference.p)})`],
  );
  return {
    data: traces,
    layout: figureLayout({
      x: axis('number of groups', { dtick: 1 }),
      y: axis('mean silhouette width'),
      height: 300,
    }),
    caption:
      `Mean silhouette width of ${printCount(found.records.length, found.unit)} against the number of groups; the large ` +
      `symbol is the number taken, ${k}.` +
      (tests.length === 0
        ? ''
        : ` Thin lines: what 95 % of tables without groups stay below, ${printList(tests)}; p is of the best width.`),
  };
}
