import type { MergeTree } from '../../numerics/grouping/tree.ts';
import type { Figure } from '../contract.ts';
import { printCount, printNumber } from '../phrasing.ts';
import { GROUND } from '../shared/figure/colours.ts';
import { kindMarker, kindStyle } from '../shared/figure/kinds.ts';
import { axis, escapeText, figureLayout } from '../shared/figure/style.ts';
import { groupsDoubt } from './doubt-words.ts';
import { type GroupingFound, groupName } from './found.ts';
import { type Branches, treeLayout } from './tree-layout.ts';

/** A tree with more leaves is drawn from its last merges only; each leaf is then a cluster. */
export const MOST_LEAVES = 150;

/** The tree hangs from its last merge; branches below the cut carry the colour and dash of their group. */
export function treeFigure(found: GroupingFound, tree: MergeTree): Figure {
  const { n } = tree;
  const whole = n <= MOST_LEAVES;
  const { leaves, branches } = treeLayout(tree, found.records, MOST_LEAVES);
  const labels = leaves.map(({ members }) => escapeText(found.records[members[0]].id));
  const lines = branches.map((branch) => ({
    ...branchLine(branch),
    x: branch.across,
    y: branch.height,
    hoverinfo: 'y',
  }));
  return {
    data: whole ? [...lines, leafMarks(found, leaves)] : lines,
    layout: figureLayout({
      x: axis(whole ? found.unit : `clusters of ${found.unit}s`, {
        showgrid: false,
        ...(whole && n <= 60
          ? { tickvals: labels.map((_, place) => place), ticktext: labels, tickangle: -90 }
          : { showticklabels: false, ticks: '' }),
      }),
      y: axis('dissimilarity at which clusters join', { rangemode: 'tozero' }),
      legend: 'group',
      height: 420,
    }),
    caption:
      `Tree of ${printCount(n, found.unit)} (${found.options.method} linkage)` +
      (whole ? '' : `, its last ${leaves.length - 1} merges`) +
      `; cut into ${found.k} groups.` +
      (found.cophenetic === null ? '' : ` Cophenetic correlation ${printNumber(found.cophenetic)}.`) +
      groupsDoubt(found),
  };
}

/** Look of the branches of one group, or of those that join groups. */
export function branchLine({ group }: Branches): Readonly<Record<string, unknown>> {
  const style = kindStyle(group);
  return {
    type: 'scatter',
    mode: 'lines',
    name: group < 0 ? 'between groups' : groupName(group),
    line: group < 0 ? { color: GROUND.ink, width: 1 } : { color: style.colour, width: 1.5, dash: style.dash },
  };
}

/** A small mark at the foot of each leaf, so that it can be pointed at. */
function leafMarks(found: GroupingFound, leaves: readonly { readonly members: readonly number[] }[]) {
  const records = leaves.map(({ members }) => found.records[members[0]]);
  const styles = records.map(({ group }) => kindStyle(group));
  return {
    type: 'scatter',
    mode: 'markers',
    showlegend: false,
    x: leaves.map((_, place) => place),
    y: leaves.map(() => 0),
    customdata: records.map(({ id }) => id),
    text: records.map(({ id }) => escapeText(id)),
    hovertemplate: '%{text}<extra></extra>',
    marker: {
      ...kindMarker(kindStyle(0), 6),
      color: styles.map(({ colour }) => colour),
      symbol: styles.map(({ symbol }) => symbol),
    },
  };
}
