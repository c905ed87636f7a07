import { midpoint } from '../../fragments/accessors.ts';
import type { Condition } from '../../fragments/select-condition.ts';
import { viewRows } from '../../fragments/subset.ts';
import type { Column, FragmentTable } from '../../fragments/table.ts';
import { ln } from '../../numerics/foundation/elementary.ts';
import { kindBits, numberBits } from '../../numerics/grouping/code-length.ts';
import type { Complexity } from './found.ts';
import { conditionsOf, type TypeRule, type Typology } from './rules.ts';

/**
 * Description length in two parts (Rissanen 1978, Automatica 14:465): the rules, then the attributes that
 * they do not use given the types, with held-out folds in place of a price on parameters. Records of no
 * type form a group of their own, so every rival has to tell the same records and attributes.
 *
 * @param rows the records to tell.
 * @param types place of the type of each of them, below 0 for none.
 * @param attributes those that define none of the rivals.
 */
export function complexityOf(
  table: FragmentTable,
  typology: Typology,
  rows: Int32Array,
  types: Int32Array,
  fold: Int32Array,
  attributes: readonly string[],
): Complexity {
  const told = viewRows(table, rows);
  const groups = types.map((type) => (type < 0 ? 0 : type + 1));
  const none = new Int32Array(rows.length);
  let values = 0;
  let withoutTypes = 0;
  const used: string[] = [];
  for (const id of attributes) {
    const column = told.columns.get(id);
    if (column === undefined || column.kind === 'text') continue;
    const bits = (of: Int32Array) => bitsOf(column, of, fold, told.rows);
    const given = bits(groups);
    const plain = bits(none);
    if (typeof given !== 'number' || typeof plain !== 'number') continue;
    used.push(id);
    values += given;
    withoutTypes += plain;
  }
  const rules = typology.types.reduce((sum, type) => sum + ruleBits(type.when, told), 0);
  return { rules, values, withoutTypes, saved: withoutTypes - values - rules, attributes: used };
}

function bitsOf(column: Exclude<Column, { kind: 'text' }>, groups: Int32Array, fold: Int32Array, n: number) {
  if (column.kind === 'term') return kindBits(column.codes, column.levels.length, groups, fold);
  const log = column.attribute.transform === 'log';
  const values = Float64Array.from({ length: n }, (_, row) => {
    const value = midpoint(column, row);
    return !log ? value : value > 0 ? ln(value) : Number.NaN;
  });
  return numberBits(values, groups, fold);
}

const log2 = (count: number) => ln(Math.max(1, count)) / Math.LN2;

/** Two bits for the form of each rule, then its attribute, limits and terms among those that the table knows. */
function ruleBits(rule: TypeRule, table: FragmentTable): number {
  if ('all' in rule) return rule.all.reduce((sum, part) => sum + ruleBits(part, table), 2);
  if ('any' in rule) return rule.any.reduce((sum, part) => sum + ruleBits(part, table), 2);
  return 'not' in rule ? 2 + ruleBits(rule.not, table) : 2 + conditionBits(rule, table);
}

function conditionBits(one: Condition, table: FragmentTable): number {
  const column = table.columns.get(one.attribute);
  const limits = [one.atLeast, one.atMost, one.below].filter((limit) => limit !== undefined).length;
  const terms = (one.in?.length ?? 0) + (one.notIn?.length ?? 0);
  const readings =
    column?.kind === 'numeric'
      ? new Set(Array.from(column.low).filter((value) => !Number.isNaN(value))).size
      : 0;
  const kinds =
    column?.kind === 'term'
      ? column.levels.length
      : new Set(column === undefined ? table.assemblage : column.raw).size;
  return (
    log2(table.columns.size + 1) +
    limits * log2(readings + 1) +
    terms * log2(kinds + 1) +
    (one.known === undefined ? 0 : 1)
  );
}

/** How many conditions the rules of a typology hold. */
export function countConditions(typology: Typology): number {
  return typology.types.reduce((sum, type) => sum + conditionsOf(type.when).length, 0);
}
