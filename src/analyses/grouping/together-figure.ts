import { dissimilarityAt } from '../../numerics/dissimilarity/condensed.ts';
import type { Figure } from '../contract.ts';
import { printCount } from '../phrasing.ts';
import { axis, figureLayout } from '../shared/figure/style.ts';
import type { GroupingFound } from './found.ts';
import { groupsOf, heatTrace, MOST_LINES, stripTrace, WITHOUT_TREE } from './matrix-figure.ts';
import type { Variants } from './trust-found.ts';

/** How often any two records fall together whatever the method, ordered by group and firmness. */
export function togetherFigure(found: GroupingFound, { together, records, variants }: Variants): Figure {
  const { inMatrix, trust, k } = found;
  const recordOf = (place: number) => found.records[inMatrix[trust.places[place]]];
  const rank = (place: number) => (recordOf(place).group < 0 ? k : recordOf(place).group);
  const all = records
    .map((_, place) => place)
    .sort((a, b) => rank(a) - rank(b) || (records[b].own ?? 2) - (records[a].own ?? 2) || a - b);
  const count = Math.min(all.length, MOST_LINES);
  const shown = Array.from({ length: count }, (_, step) => all[Math.floor((step * all.length) / count)]);
  const lines = shown.map((place) => ({ members: [place], group: recordOf(place).group }));
  const names = shown.map((place) => recordOf(place).id);
  const named = { names, members: names.map((name) => [name]) };
  const share = (a: number, b: number) => (a === b ? 1 : dissimilarityAt(together, a, b));
  const z = shown.map((a) => shown.map((b) => (Number.isNaN(share(a, b)) ? null : share(a, b))));
  const plain = { ticks: '', showgrid: false, showline: false, showticklabels: false };
  return {
    data: [
      ...groupsOf(lines).map((group) => stripTrace(found, lines, named, group)),
      {
        ...heatTrace('share of ways', z, named),
        zmax: 1,
        hovertemplate: '%{text}: together in %{z:.0%}<extra></extra>',
      },
    ],
    layout: figureLayout({
      y: axis('', { ...plain, range: [count - 0.5, -0.5] }),
      legend: 'group',
      height: 520,
      more: {
        xaxis2: axis(`${found.unit}s, in the order of the lines`, {
          ...plain,
          domain: [...WITHOUT_TREE.matrix],
          range: [-0.5, count - 0.5],
        }),
        xaxis3: { visible: false, domain: [...WITHOUT_TREE.strip], range: [0, 1], fixedrange: true },
        barmode: 'overlay',
        bargap: 0,
        hovermode: 'closest',
      },
    }),
    caption:
      `How often ${printCount(count, found.unit)}${count < all.length ? ` of ${all.length}` : ''} fall together over ` +
      `${variants.length} other ways to group (methods, weights, numbers of groups): dark is always. A firm group is a dark ` +
      'square; stripes belong elsewhere as well.',
  };
}
