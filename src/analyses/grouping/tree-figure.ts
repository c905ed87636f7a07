import { cutTree, leafOrder, type MergeTree } from '../../numerics/grouping/tree.ts';
import type { Figure } from '../contract.ts';
import { axis, escapeText, figureLayout, GROUND, kindStyle } from '../figure-style.ts';
import { printCount, printNumber } from '../phrasing.ts';
import type { GroupingFound } from './compute.ts';
import { groupName } from './tables.ts';

/** A tree with more leaves is drawn from its last merges only; each leaf is then a cluster. */
const MOST_LEAVES = 150;

/** The tree hangs from its last merge; branches below the cut carry the colour and dash of their group. */
export function treeFigure(found: GroupingFound, tree: MergeTree): Figure {
  const { n } = tree;
  const whole = n <= MOST_LEAVES;
  const leaves = whole ? n : MOST_LEAVES;
  const clusters = cutTree(tree, leaves);
  /** Cluster number -> horizontal place; leaves first, merges as they come. */
  const across = new Map<number, number>();
  const groupOf = new Map<number, number>();
  const nodes = leafNodes(tree, leaves);
  const order = leafOrder(tree);
  const seen = new Map<number, number>();
  for (const record of order) {
    const cluster = clusters[record];
    if (seen.has(cluster)) continue;
    seen.set(cluster, record);
    across.set(nodes[record], seen.size);
    groupOf.set(nodes[record], found.records[record].group);
  }
  const lines = new Map<number, { x: (number | null)[]; y: (number | null)[] }>();
  const heightOf = (node: number) => (node < n || !groupIsMerge(node, n, leaves) ? 0 : tree.height[node - n]);
  for (let m = n - leaves; m < tree.height.length; m++) {
    const [a, b] = [tree.first[m], tree.second[m]];
    const [xa, xb] = [across.get(a) ?? 0, across.get(b) ?? 0];
    const group = groupOf.get(a) === groupOf.get(b) ? (groupOf.get(a) ?? -1) : -1;
    across.set(n + m, (xa + xb) / 2);
    groupOf.set(n + m, group);
    const line = lines.get(group) ?? { x: [], y: [] };
    lines.set(group, line);
    line.x.push(xa, xa, xb, xb, null);
    line.y.push(heightOf(a), tree.height[m], tree.height[m], heightOf(b), null);
  }
  const traces = [...lines]
    .sort(([a], [b]) => a - b)
    .map(([group, { x, y }]) => {
      const style = kindStyle(group);
      return {
        type: 'scatter',
        mode: 'lines',
        name: group < 0 ? 'between groups' : groupName(group),
        x,
        y,
        line:
          group < 0 ? { color: GROUND.ink, width: 1 } : { color: style.colour, width: 1.5, dash: style.dash },
        hoverinfo: 'y',
      };
    });
  const labels = [...seen.values()].map((record) => escapeText(found.records[record].id));
  return {
    data: traces,
    layout: figureLayout({
      x: axis(whole ? found.unit : `clusters of ${found.unit}s`, {
        showgrid: false,
        ...(whole && n <= 60
          ? { tickvals: labels.map((_, place) => place + 1), ticktext: labels, tickangle: -90 }
          : { showticklabels: false, ticks: '' }),
      }),
      y: axis('dissimilarity at which clusters join', { rangemode: 'tozero' }),
      legend: 'group',
      height: 420,
    }),
    caption:
      `Tree of ${printCount(n, found.unit)} (${found.options.method} linkage)` +
      (whole ? '' : `, its last ${leaves - 1} merges`) +
      `; cut into ${found.k} groups.` +
      (found.cophenetic === null ? '' : ` Cophenetic correlation ${printNumber(found.cophenetic)}.`),
  };
}

/** For each record the cluster number that holds it after the first n - leaves merges. */
function leafNodes(tree: MergeTree, leaves: number): Int32Array {
  const { n } = tree;
  const owner = Int32Array.from({ length: 2 * n - 1 }, (_, node) => node);
  for (let m = n - leaves - 1; m >= 0; m--) {
    owner[tree.first[m]] = owner[n + m];
    owner[tree.second[m]] = owner[n + m];
  }
  return owner.slice(0, n);
}

/** Whether a cluster is made by one of the merges that are drawn. */
function groupIsMerge(node: number, n: number, leaves: number): boolean {
  return node - n >= n - leaves;
}
