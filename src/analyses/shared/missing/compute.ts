import type { Register } from '../../../attributes/definition.ts';
import type { CrossedTable } from '../../../fragments/crossed-table.ts';
import { groupRows } from '../../../fragments/groups.ts';
import { isMissing } from '../../../fragments/missing.ts';
import type { FragmentTable } from '../../../fragments/table.ts';

/** How far the missing kinds of one line would have to differ from those recorded there to turn a verdict on counts. */
export interface MissingKinds {
  /** Lines with records of no kind. */
  readonly lines: readonly { readonly label: string; readonly missing: number }[];
  /** The fewest of one line that, were they of this kind, would turn it; null where no line can. */
  readonly turn: {
    readonly label: string;
    readonly missing: number;
    readonly kind: string;
    /** 0: it turns were the missing shared out as those recorded there are. */
    readonly count: number;
  } | null;
}

/** Shares of the missing that are tried. */
const STEPS = 40;

/**
 * So many of a line's missing records in one kind, the others shared out as those recorded there: the fewest with which
 * the verdict is another. One line at a time.
 *
 * @param missing records of each row of the table without a kind.
 * @param turned whether these counts, which need not be whole, give another verdict.
 * @returns null where nothing is missing.
 */
export function leastMissingThatTurns(
  { rows, columns, counts }: Pick<CrossedTable, 'rows' | 'columns' | 'counts'>,
  missing: readonly number[],
  turned: (counts: readonly (readonly number[])[]) => boolean,
): MissingKinds | null {
  const lines = rows.flatMap((label, row) =>
    missing[row] > 0 ? [{ label, missing: missing[row], row }] : [],
  );
  if (lines.length === 0) return null;
  let turn: MissingKinds['turn'] = null;
  for (const { label, missing: lacking, row } of lines) {
    const own = counts[row].reduce((sum, count) => sum + count, 0);
    for (const [kind, name] of columns.entries()) {
      for (let step = 0; step <= STEPS; step++) {
        const count = Math.ceil((lacking * step) / STEPS);
        if (turn !== null && count >= turn.count) break;
        const filled = counts[row].map(
          (seen, column) =>
            seen + (own === 0 ? 0 : ((lacking - count) * seen) / own) + (column === kind ? count : 0),
        );
        if (!turned(counts.map((line, at) => (at === row ? filled : line)))) continue;
        turn = { label, missing: lacking, kind: name, count };
        break;
      }
    }
  }
  return { lines: lines.map(({ label, missing: lacking }) => ({ label, missing: lacking })), turn };
}

/** Records of each line of a table that have its label and no kind. */
export function lackingKind(
  records: FragmentTable,
  lines: readonly string[],
  { across, kinds }: { readonly across: string; readonly kinds: string },
  register: Register,
): readonly number[] {
  const column = records.columns.get(kinds);
  if (column === undefined) return lines.map(() => 0);
  const lacking = new Map(
    groupRows(records, [across], register).groups.map(({ labels, rows }) => [
      labels[0],
      rows.filter((row) => isMissing(column, row)).length,
    ]),
  );
  return lines.map((label) => lacking.get(label) ?? 0);
}
