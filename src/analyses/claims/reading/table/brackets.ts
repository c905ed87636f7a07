import type { DecimalMark } from '../numbers.ts';
import { readPrinted } from '../printed-text.ts';
import type { Role } from './heads.ts';
import type { Layout } from './laid.ts';

/** What stands in brackets behind the counts of a table: their per cents, the counts expected, or neither. */
export type BracketKind = 'share' | 'expected' | 'other';

/**
 * Told by the words of the table; where none tell it, by the arithmetic: expected counts add up to what the
 * counts themselves add up to, and per cents are not above 100.
 */
export function bracketKind(
  { texts, corner, columns }: Layout,
  roled: readonly { readonly role: Role }[],
  caption: string,
  mark: DecimalMark,
): BracketKind {
  if (texts.flat().some((text) => /[([][^)\]]*%\s*[)\]]/.test(text))) return 'share';
  const words = `${caption} ${corner} ${columns.map(({ head }) => head).join(' ')}`;
  if (/expected|erwartet|théorique/i.test(words)) return 'expected';
  const rows = texts.map((row) =>
    row.flatMap((text, c) => {
      if (roled[c].role !== 'count') return [];
      const parts = readPrinted(text, 'count', { mark })?.parts ?? [];
      const [count, share] = ['count', 'share'].map(
        (quantity) => parts.find((part) => part.quantity === quantity)?.values[0]?.number,
      );
      return count === undefined || share === undefined
        ? []
        : [{ count: sizeOf(count), inside: sizeOf(share) }];
    }),
  );
  const filled = rows.filter((row) => row.length > 1);
  const sum = (row: readonly number[]) => row.reduce((all, one) => all + one, 0);
  const alike = filled.filter((row) => {
    const counts = sum(row.map(({ count }) => count));
    return (
      Math.abs(counts - sum(row.map(({ inside }) => inside))) <= 0.06 * row.length &&
      Math.abs(counts - 100) > 1
    );
  });
  if (filled.length > 1 && alike.length === filled.length) return 'expected';
  return rows.flat().some(({ inside }) => inside > 100.5) ? 'other' : 'share';
}

function sizeOf({ digits, decimals }: { readonly digits: bigint; readonly decimals: number }): number {
  return Number(`${digits}e-${decimals}`);
}
