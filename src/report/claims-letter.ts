import { type ClaimsFound, type Judged, VERDICTS, type Verdict } from '../analyses/claims/found.ts';
import { printCount, printList } from '../analyses/phrasing.ts';

const HEADINGS: Readonly<Partial<Record<Verdict, string>>> = {
  'cannot be': 'Figures that cannot stand together as printed',
  differs: 'Figures that differ',
  'agrees only if rounded': 'Figures that agree under one rounding only',
};

/**
 * A list for a letter to the author, in Markdown: what was found, with its arithmetic and the shortest way to
 * settle it. Says nothing of how a difference came about.
 */
export function claimsLetter({ judged, counts, unchecked, withData }: ClaimsFound): string {
  const against = withData ? 'the data and with each other' : 'each other';
  const summary = VERDICTS.filter((verdict) => counts[verdict] > 0).map(
    (verdict) => `${verdict}: ${counts[verdict]}`,
  );
  const lines = [
    '# Printed figures',
    '',
    `${printCount(judged.length, 'printed figure')} compared with ${against} (${printList(summary)}).`,
    '',
    'Each number was taken as any value that prints so, rounded half up, rounded half to even or cut off. Printing slips, other rounding, other records or another method can explain a difference; each entry ends with what would settle it.',
  ];
  for (const verdict of ['cannot be', 'differs', 'agrees only if rounded'] as const) {
    const entries = judged.filter((one) => one.verdict === verdict);
    if (entries.length === 0) continue;
    lines.push('', `## ${HEADINGS[verdict]}`, '');
    lines.push(...entries.map(entry));
  }
  if (unchecked.length > 0)
    lines.push(
      '',
      '## Figures that could not be checked',
      '',
      'Nothing is said for or against these. What would let them be checked:',
      '',
      ...unchecked.map(
        ({ resolve, entries }) =>
          `- ${escapeMarkdown(resolve)} (${entries.map((one) => `${placeOf(one)}: “${escapeMarkdown(one.figure.printed)}”`).join('; ')})`,
      ),
    );
  const agreeing = judged
    .filter(({ verdict }) => verdict === 'agrees')
    .map(({ figure }) => escapeMarkdown(figure.id));
  if (agreeing.length > 0) lines.push('', '## Figures that agree', '', `${agreeing.join(', ')}.`);
  return `${lines.join('\n')}\n`;
}

function entry({ figure, says, why, explained, resolve }: Judged): string {
  const parts = [
    `- **${placeOf({ figure })}**, ${figure.quantity}, printed “${escapeMarkdown(figure.printed)}”: ${escapeMarkdown(says)}.`,
    escapeMarkdown(why),
    explained === '' ? '' : `This would be explained by ${escapeMarkdown(explained)}.`,
    resolve === '' ? '' : `To settle it: ${escapeMarkdown(lowerFirst(resolve))}`,
  ];
  return parts.filter((part) => part !== '').join(' ');
}

function placeOf({ figure }: Pick<Judged, 'figure'>): string {
  return escapeMarkdown(figure.place === '' ? figure.id : `${figure.place} (${figure.id})`);
}

function lowerFirst(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}

/** Text of a paper may hold anything; none of it is to be taken for markup. */
function escapeMarkdown(text: string): string {
  return text.replace(/[\\`*_{}[\]<>#|~]/g, '\\$&').replaceAll(/\s+/g, ' ');
}
