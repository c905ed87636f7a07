import type { Words } from '../before-answers.ts';
import { printCount, printList, printNumber } from '../phrasing.ts';
import type { Axes, Place } from './axes.ts';
import type { OrdinationFound } from './compute.ts';
import { methodName } from './options.ts';
import { NO_SAY } from './supplementary-records.ts';

/** What the first axes carry and what they follow; the cautions come from how they were made. */
export function ordinationWords(found: OrdinationFound): Words {
  const { axes, options } = found;
  if ('why' in axes) return { sentence: `No ordination: ${axes.why}.`, cautions: [] };
  const shown = axes.shares.slice(0, 2);
  const sum = shown.reduce((total, share) => total + share, 0);
  const what =
    axes.rows.length > 0
      ? printCount(axes.records.length, found.unit)
      : `${axes.records.length} rows and ${axes.variables.length} columns`;
  // Where dissimilarities are not Euclidean, shares of the whole trace can pass it, and later axes take back.
  const back = sum > 1 + 1e-9 ? `, the others together ${printNumber((1 - sum) * 100)} %` : '';
  const parts = [
    `The first ${shown.length === 2 ? 'two axes carry' : 'axis carries'} ${printNumber(sum * 100)} % of the spread of ${what}${back} (${methodName(options.method)})`,
    ...shown.flatMap((_, k) => followedBy(axes, k)),
    ...placedWithout(found, axes),
  ];
  return { sentence: `${parts.join('. ')}.`, cautions: cautionsOf(found, axes) };
}

function placedWithout({ unit }: OrdinationFound, { passive }: Axes): string[] {
  if (passive.length === 0) return [];
  const shown = (place: Place) => (place.cos2[0] ?? 0) + (place.cos2[1] ?? 0);
  const poorly = passive.filter((place) => shown(place) < POOR).length;
  const badly =
    poorly > 0
      ? `, of which ${poorly} ${poorly === 1 ? 'is' : 'are'} shown by less than ${printNumber(POOR * 100)} % on these two axes`
      : '';
  return [`${printCount(passive.length, `supplementary ${unit}`)} placed without a say in the axes${badly}`];
}

/** Below this share of its squared distance a point may lie elsewhere than it seems. */
const POOR = 0.25;

/** An attribute must share this much of an axis to be named with it. */
const NAMED = 0.25;

function followedBy(axes: Axes, k: number): string[] {
  const attributes = axes.variables.filter(({ role }) => role === 'attribute');
  const strength = ({ cos2 }: Place) => (Number.isFinite(cos2[k]) ? cos2[k] : 0);
  const named = attributes
    .filter((one) => strength(one) >= NAMED)
    .sort((a, b) => strength(b) - strength(a))
    .slice(0, 3)
    .map((one) => `${one.label} (${printNumber(strength(one) * 100, 2)} % in common)`);
  return named.length > 0 ? [`Axis ${k + 1} goes with ${printList(named)}`] : [];
}

function cautionsOf(found: OrdinationFound, axes: Axes): string[] {
  const cautions = axes.notes.map((note) => `${note}.`);
  const gone = found.n.setAside.filter(({ reason }) => reason !== NO_SAY);
  const aside = gone.reduce((sum, { fragments }) => sum + fragments, 0);
  if (aside > 0) {
    cautions.push(
      `${printCount(aside, 'fragment')} set aside: ${printList(gone.map(({ reason, fragments }) => `${reason} (${fragments})`))}.`,
    );
  }
  if (found.options.method === 'pcoa') {
    cautions.push('Points near each other in the picture may be apart on axes that are not shown.');
  }
  if (found.unit === 'fragment' && found.n.items < found.n.fragments) {
    cautions.push(
      `${found.n.fragments} fragments come from ${found.n.items} items: large items draw the axes to themselves.`,
    );
  }
  return cautions;
}
