import type { Words } from '../before-answers.ts';
import { printCount, printList, printP } from '../phrasing.ts';
import { VERDICTS } from './check.ts';
import type { ClaimsFound } from './compute.ts';

const PLURAL: Readonly<Record<string, string>> = {
  agrees: 'agree',
  'agrees only if rounded': 'agree only under one rounding',
  differs: 'differ',
};

/** How many figures agree, differ, cannot be or cannot be checked; never a word about why they were printed so. */
export function claimsWords(found: ClaimsFound): Words {
  const { counts, judged, withData, digits, ignored, unread } = found;
  const parts = VERDICTS.filter((verdict) => counts[verdict] > 0).map(
    (verdict) =>
      `${counts[verdict]} ${counts[verdict] === 1 ? singular(verdict) : (PLURAL[verdict] ?? verdict)}`,
  );
  const against = withData ? 'held against the data and each other' : 'held against each other';
  const cautions: string[] = [];
  if (counts.differs + counts['cannot be'] > 0)
    cautions.push(
      'Printing slips, other rounding, other records or another method can explain a difference; each line says what would settle it.',
    );
  if (counts['cannot be checked'] > 0)
    cautions.push(
      `${printCount(counts['cannot be checked'], 'figure')} could not be checked: that says nothing for or against them.`,
    );
  if (!withData)
    cautions.push('No data were given: agreement among printed figures does not show that they are right.');
  for (const { set, n, zeroOrFive, p } of digits.filter((each) => each.p < 0.001))
    cautions.push(
      `Readings of "${set}" (n = ${n}) end in 0 or 5 in ${Math.round(100 * zeroOrFive)} % (${printP(p)}): they were likely taken to a coarser step than they are printed to.`,
    );
  if (ignored.length > 0)
    cautions.push(`Columns of the claims file that are not read: ${printList(ignored)}.`);
  if (unread.length > 0) cautions.push(`Left out, since it cannot be read: ${unread.join(' ')}`);
  return {
    sentence: `Of ${printCount(judged.length, 'printed figure')}, ${against}, ${printList(parts)}.`,
    cautions,
  };
}

function singular(verdict: string): string {
  return verdict === 'agrees only if rounded' ? 'agrees only under one rounding' : verdict;
}
