import { isUnavailable } from '../../numerics/foundation/unavailable.ts';
import type { Figure, Unavailable } from '../contract.ts';
import { printCount, printList, printNumber, printP } from '../phrasing.ts';
import { GROUND } from '../shared/figure/colours.ts';
import { kindBar, kindMarker, kindStyle } from '../shared/figure/kinds.ts';
import { axis, escapeText, figureLayout } from '../shared/figure/style.ts';
import { groupsDoubt } from './doubt-words.ts';
import { type GroupedRecord, type GroupingFound, groupName } from './found.ts';
import { matrixFigure } from './matrix-figure.ts';
import { togetherFigure } from './together-figure.ts';
import { treeFigure } from './tree-figure.ts';
import type { Reference } from './trust-found.ts';

/** More bars than this cannot be told apart; a sample is drawn instead. */
const MOST_BARS = 2000;

/** Silhouette, ordered heat map, choice of the number of groups, and the tree where there is one. */
export function groupingFigures(found: GroupingFound): Readonly<Record<string, Figure>> {
  return {
    ...(found.k < 2 ? {} : { silhouette: silhouetteFigure(found) }),
    matrix: matrixFigure(found),
    ...(found.tried.length > 1 ? { choice: choiceFigure(found) } : {}),
    ...(isUnavailable(found.trust.variants) ? {} : { together: togetherFigure(found, found.trust.variants) }),
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
      name: escapeText(`${groupName(number)} ${group.name} (${group.size})`),
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
      `${printNumber(found.meanSilhouette ?? 0)}.${found.sampled ? ' A sample of the table; widths by medoids.' : ''}${groupsDoubt(found)}`,
  };
}

/** The records whose dissimilarities are at hand. */
function inMatrixOf(found: GroupingFound): GroupedRecord[] {
  return Array.from(found.inMatrix, (place) => found.records[place]);
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
        size: measured.map((partition) => (partition.chosen ? 13 : 7)),
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
