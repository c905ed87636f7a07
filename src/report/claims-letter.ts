import type { ClaimsFound, JudgedFigure, Unchecked } from '../analyses/claims/found.ts';
import { placeAndText } from '../analyses/claims/place-words.ts';
import { claimsWords, heldAgainst } from '../analyses/claims/words.ts';
import { printCount, printList } from '../analyses/phrasing.ts';
import { append } from '../numerics/foundation/lists.ts';

const SECTIONS = [
  ['cannot be', 'What cannot stand as printed'],
  ['differs', 'What differs'],
  ['agrees only if rounded', 'What agrees under one rounding only'],
] as const;

/**
 * A letter to the author, in Markdown: first what cannot be, then what differs, then what would settle it; each
 * figure by its place and its text, its working behind a link. What could not be checked is summed up. Says
 * nothing of how a difference came about.
 */
export function claimsLetter(found: ClaimsFound): string {
  const { judged, unchecked, unheld, paper, unread, doubts } = found;
  const notes: string[] = [];
  const lines = [
    '# Printed figures',
    '',
    paper === '' ? 'Paper: (title, authors, journal and pages)' : `Paper: ${escapeMarkdown(paper)}`,
    '',
    escapeMarkdown(claimsWords(found).answer),
    '',
    `${heldAgainst(found)}, each as any value that prints so, rounded half up, rounded half to even or cut off. Slips of the press, other rounding, other records or another method can explain a difference.`,
  ];
  for (const [verdict, heading] of SECTIONS) {
    const entries = judged.filter((one) => one.verdict === verdict);
    if (entries.length === 0) continue;
    append(lines, ['', `## ${heading}`, '', ...entries.map((one) => entry(one, notes))]);
  }
  const settle = settling(judged);
  if (settle.length > 0) append(lines, ['', '## What would settle it', '', ...settle]);
  if (unheld.length > 0)
    append(lines, ['', '## What was not held against the data', '', ...unheld.map(unheldText)]);
  if (unchecked.length > 0) lines.push('', '## What could not be checked', '', uncheckedText(unchecked));
  if (doubts.length > 0)
    append(lines, ['', '## Open questions', '', ...doubts.map((text) => `- ${escapeMarkdown(text)}`)]);
  if (unread.length > 0)
    append(lines, ['', '## What was not read', '', ...unread.map((text) => `- ${escapeMarkdown(text)}`)]);
  if (notes.length > 0) append(lines, ['', '## Working', '', ...notes]);
  return `${lines.join('\n')}\n`;
}

function entry({ figure, says, why, explained }: JudgedFigure, notes: string[]): string {
  const number = notes.length / 2 + 1;
  notes.push(
    `<a id="working-${number}"></a>${number}. ${escapeMarkdown(placeAndText(figure))}: ${escapeMarkdown(why)}`,
    '',
  );
  const parts = [
    `- **${escapeMarkdown(placeAndText(figure))}** (${figure.quantity}): ${escapeMarkdown(says)}.`,
    explained === '' ? '' : `It would be explained by ${escapeMarkdown(explained)}.`,
    `[Working](#working-${number})`,
  ];
  return parts.filter((part) => part !== '').join(' ');
}

/** Each step once, with the places that it would settle. */
function settling(judged: readonly JudgedFigure[]): string[] {
  const steps = new Map<string, string[]>();
  for (const { figure, verdict, resolve } of judged)
    if ((verdict === 'cannot be' || verdict === 'differs') && resolve !== '')
      steps.set(resolve, [
        ...(steps.get(resolve) ?? []),
        figure.place === '' ? placeAndText(figure) : figure.place,
      ]);
  return [...steps].map(
    ([step, places]) => `- ${escapeMarkdown(step)} (${escapeMarkdown([...new Set(places)].join('; '))})`,
  );
}

/** What other figures alone speak for or against, and what is missing. */
function unheldText({ resolve, entries }: Unchecked): string {
  const names = [...new Set(entries.map(({ figure }) => placeAndText(figure)))];
  return `- ${escapeMarkdown(`${printCount(entries.length, 'figure')} (${printList(names)}): ${resolve}.`)}`;
}

const MOST_NEEDS = 3;

/** One paragraph: how many, and what most of them lack. */
function uncheckedText(unchecked: readonly Unchecked[]): string {
  const groups = [...unchecked].sort((a, b) => b.entries.length - a.entries.length);
  const all = groups.reduce((sum, { entries }) => sum + entries.length, 0);
  const needs = groups
    .slice(0, MOST_NEEDS)
    .map(
      ({ resolve, entries }) =>
        `${escapeMarkdown(lowerFirst(resolve.replace(/\.$/, '')))} (${printCount(entries.length, 'figure')})`,
    );
  return `${printCount(all, 'figure')} could not be checked, which says nothing for or against them. To check them, most need this: ${printList(needs)}.`;
}

function lowerFirst(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}

/** Text of a paper may hold anything; none of it is to be taken for markup. */
function escapeMarkdown(text: string): string {
  return text.replace(/[\\`*_{}[\]<>#|~]/g, '\\$&').replaceAll(/\s+/g, ' ');
}
