import { dissimilarityAt } from '../../numerics/dissimilarity/condensed.ts';
import type { Figure } from '../contract.ts';
import { printCount, printNumber } from '../phrasing.ts';
import { SEQUENTIAL } from '../shared/figure/colours.ts';
import { kindBar, kindStyle } from '../shared/figure/kinds.ts';
import { axis, escapeText, figureLayout } from '../shared/figure/style.ts';
import { groupsDoubt } from './doubt-words.ts';
import { type GroupingFound, groupName } from './found.ts';
import { branchLine } from './tree-figure.ts';
import { type Branches, type Leaf, treeLayout } from './tree-layout.ts';

/** More lines than this are too thin to see: clusters of the tree, or some of the records, stand for all. */
export const MOST_LINES = 150;
/** Up to this many lines carry the name of their record. */
const MOST_NAMES = 60;

/** Shares of the width: the tree, the strip of groups, and the matrix, each on the same lines. */
const PARTS = { tree: [0, 0.23], strip: [0.24, 0.265], matrix: [0.275, 1] } as const;
export const WITHOUT_TREE = { strip: [0, 0.025], matrix: [0.035, 1] } as const;

/**
 * All dissimilarities as a heat map, ordered as the leaves of the tree or by group; the tree and a strip of
 * groups lie beside it on the same lines.
 */
export function matrixFigure(found: GroupingFound): Figure {
  const { tree, records, unit } = found;
  const layout = tree === null ? null : treeLayout(tree, records, MOST_LINES);
  const lines = layout?.leaves ?? byGroup(found);
  const single = lines.every(({ members }) => members.length === 1);
  const parts = layout === null ? WITHOUT_TREE : PARTS;
  const plain = { ticks: '', showgrid: false, showline: false, showticklabels: false };
  const members = lines.map((line) => line.members.map((at) => recordOf(found, at).id));
  const names = members.map(([first, ...more]) =>
    more.length === 0 ? first : `${first} and ${more.length} more`,
  );
  return {
    data: [
      ...(layout?.branches ?? []).map(treeTrace),
      ...groupsOf(lines).map((group) => stripTrace(found, lines, { names, members }, group)),
      heatTrace(
        'dissimilarity',
        lines.map((a) => lines.map((b) => meanBetween(found, a, b))),
        { names, members },
      ),
    ],
    layout: figureLayout({
      x: axis(layout === null ? '' : 'joined at', {
        ...plain,
        domain: layout === null ? [0, 0] : [...PARTS.tree],
        visible: layout !== null,
        autorange: 'reversed',
        rangemode: 'tozero',
        showticklabels: layout !== null,
        nticks: 4,
      }),
      y: axis('', {
        ...plain,
        range: [lines.length - 0.5, -0.5],
        side: 'right',
        anchor: 'x2',
        ...(single && lines.length <= MOST_NAMES
          ? {
              showticklabels: true,
              tickvals: names.map((_, place) => place),
              ticktext: names.map(escapeText),
            }
          : {}),
      }),
      legend: 'group',
      height: 560,
      more: {
        xaxis2: axis(
          single ? `${unit}s, in the order of the lines` : `clusters of ${unit}s, in the same order`,
          {
            ...plain,
            domain: [...parts.matrix],
            range: [-0.5, lines.length - 0.5],
          },
        ),
        xaxis3: { visible: false, domain: [...parts.strip], range: [0, 1], fixedrange: true },
        barmode: 'overlay',
        bargap: 0,
        hovermode: 'closest',
      },
    }),
    caption: captionOf(found, lines.length, single),
  };
}

function captionOf(found: GroupingFound, lines: number, single: boolean): string {
  const { tree, records, unit } = found;
  const what =
    tree === null
      ? lines < records.length
        ? `${lines} of ${printCount(records.length, unit)}, taken evenly from all groups and ordered by group and silhouette width`
        : `${printCount(lines, unit)}, ordered by group and silhouette width`
      : single
        ? `${printCount(lines, unit)}, ordered as the leaves of the tree beside it (${found.options.method} linkage)`
        : `${printCount(records.length, unit)} in ${lines} clusters (means between them), ordered as the leaves of the tree beside it, its last ${lines - 1} merges (${found.options.method} linkage)`;
  return (
    `Dissimilarities of ${what}; light is alike. The strip shows the ${found.k} groups.` +
    (found.cophenetic === null ? '' : ` Cophenetic correlation ${printNumber(found.cophenetic)}.`) +
    groupsDoubt(found)
  );
}

const recordOf = (found: GroupingFound, line: number) => found.records[found.inMatrix[line]];

/** Lines without a tree: by group, widest silhouette first; of too many, evenly spaced ones. */
function byGroup(found: GroupingFound): Leaf[] {
  const place = (line: number) => {
    const { group } = recordOf(found, line);
    return group < 0 ? found.k : group;
  };
  const width = (line: number) => recordOf(found, line).silhouette;
  const all = Array.from(found.inMatrix, (_, line) => line).sort(
    (a, b) => place(a) - place(b) || width(b) - width(a) || a - b,
  );
  const count = Math.min(all.length, MOST_LINES);
  return Array.from({ length: count }, (_, step) => {
    const line = all[Math.floor((step * all.length) / count)];
    return { members: [line], group: recordOf(found, line).group };
  });
}

export const groupsOf = (lines: readonly Leaf[]) =>
  [...new Set(lines.map(({ group }) => group))].sort((a, b) => (a < 0 ? 1 : b < 0 ? -1 : a - b));

function treeTrace(branch: Branches) {
  return { ...branchLine(branch), showlegend: false, x: branch.height, y: branch.across, hoverinfo: 'x' };
}

export interface Named {
  readonly names: readonly string[];
  /** Records of each line. */
  readonly members: readonly (readonly string[])[];
}

export function stripTrace(
  found: GroupingFound,
  lines: readonly Leaf[],
  { names, members }: Named,
  group: number,
) {
  const at = lines.flatMap((line, place) => (line.group === group ? [place] : []));
  return {
    type: 'bar',
    orientation: 'h',
    name:
      group < 0
        ? 'in no group'
        : escapeText(`${groupName(group)} ${found.groups[group].name} (${found.groups[group].size})`),
    xaxis: 'x3',
    x: at.map(() => 1),
    y: at,
    width: at.map(() => 1),
    customdata: at.map((place) => members[place]),
    text: at.map((place) => escapeText(names[place])),
    textposition: 'none',
    hovertemplate: '%{text}<extra>%{fullData.name}</extra>',
    marker: kindBar(kindStyle(group), 5),
  };
}

/** A heat map over these lines, with what its shades are of. */
export function heatTrace(
  what: string,
  z: readonly (readonly (number | null)[])[],
  { names, members }: Named,
) {
  const places = names.map((_, place) => place);
  return {
    type: 'heatmap',
    xaxis: 'x2',
    x: places,
    y: places,
    z,
    // The records of the lines, for whoever wants to know what was pointed at.
    meta: members,
    text: names.map((a) => names.map((b) => `${escapeText(a)} and ${escapeText(b)}`)),
    colorscale: SEQUENTIAL.map(([share, colour]) => [share, colour]),
    zmin: 0,
    colorbar: {
      title: { text: what, side: 'right' },
      thickness: 10,
      outlinewidth: 0,
      len: 0.5,
      y: 0.75,
      x: 1.01,
      xpad: names.length <= MOST_NAMES ? 60 : 10,
    },
    hovertemplate: '%{text}: %{z:.3f}<extra></extra>',
  };
}

/** Mean dissimilarity of the members of two lines; of a line to itself 0 for one record. */
function meanBetween({ matrix }: GroupingFound, a: Leaf, b: Leaf): number {
  let sum = 0;
  let pairs = 0;
  for (const i of a.members) {
    for (const j of b.members) {
      if (i === j && a.members.length > 1) continue;
      sum += dissimilarityAt(matrix, i, j);
      pairs++;
    }
  }
  return sum / pairs;
}
