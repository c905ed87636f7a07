import { foldText } from '../../../../attributes/matching.ts';
import type { Condition } from '../../../../fragments/select-condition.ts';
import type { PrintedTable } from '../../reading/printed-table.ts';
import { readHead } from '../../reading/table/heads.ts';
import { labelStatistic } from '../../reading/table/label-statistic.ts';
import { type LineMeaning, meaningOfLines } from './lines.ts';
import type { Names } from './names.ts';

/** What the rows and the columns of a printed table are of. */
export interface Sides {
  readonly rows: readonly LineMeaning[];
  readonly columns: readonly LineMeaning[];
  /** A measure that only the caption or the corner names. */
  readonly measure: string | null;
}

export function sidesOf({ rows, columns, caption, corner, says }: PrintedTable, names: Names): Sides {
  const hints = `${caption} ${corner}`;
  const rowWords = rows.map(({ section, own, line, under, holds }) => {
    const of = line === 'percent' && under !== null ? rows[under] : null;
    const words = of === null ? own : of.own;
    const empty = line === 'n' || (holds !== null && labelStatistic(own) === undefined);
    return { over: section, own: empty ? '' : words, sum: line === 'total' || line === 'subtotal' };
  });
  const columnWords = columns.map(({ group, own, line, role }) => {
    const reading = readHead(own)?.role;
    const counts = reading === 'n' || reading === 'count' || reading === 'share';
    const empty = reading !== undefined && (counts || reading === role);
    return { over: group, own: empty ? '' : own, sum: line === 'total' || line === 'subtotal' };
  });
  const inHints = [...names.measures].filter(([name]) => name.length > 2 && foldText(hints).includes(name));
  const measures = new Set(inHints.map(([, id]) => id));
  return {
    rows: meaningOfLines(rowWords, names, { hints, said: says.rows }),
    columns: meaningOfLines(columnWords, names, { hints, said: says.columns }),
    measure: says.attribute ?? (measures.size === 1 ? [...measures][0] : null),
  };
}

/** The terms of an attribute that conditions name. */
export function termsIn(conditions: readonly Condition[], attribute: string): string[] {
  return [...new Set(conditions.flatMap((one) => (one.attribute === attribute ? (one.in ?? []) : [])))];
}
