import type { TermColumn } from '../../fragments/table.ts';

/** A list of names to choose from must not hold what no row has any more. */
export function withUsedLevels(column: TermColumn): TermColumn {
  const fixed = column.attribute.levels ?? [];
  const used = new Set([...column.codes].filter((code) => code >= 0));
  const levels = column.levels.filter((level, code) => used.has(code) || fixed.includes(level));
  const place = column.levels.map((level) => levels.indexOf(level));
  return { ...column, levels, codes: column.codes.map((code) => (code < 0 ? -1 : place[code])) };
}
