import type { AttributeDefinition, Register } from '../../attributes/definition.ts';
import type { Column } from '../../fragments/table.ts';
import { append } from '../../numerics/foundation/lists.ts';
import { attributesOf } from '../columns/claims.ts';
import type { ColumnPlan } from '../columns/column-plan.ts';
import { knownAttribute } from '../columns/column-rules.ts';
import { statedUnit } from '../columns/match-headers.ts';
import { enter, type Ledger } from '../ledger/ledger.ts';
import { enterDoubt, enterKeptAsText, ledgerIgnored } from '../ledger/ledger-columns.ts';
import type { SourceProfile } from '../profile/profile.ts';
import type { ColumnReading, DecimalMark } from '../source-reading.ts';
import { textColumnAttribute } from './assemble.ts';
import { assumedUnit, enterAssumedUnit } from './assumed-unit.ts';
import { contextOf, missingOf } from './column-context.ts';
import { textsOf } from './column-texts.ts';
import { blanksBelow } from './copy-down.ts';
import type { Sheet } from './gather-fragments.ts';
import { type BoundColumns, mergeBounds } from './merge-bounds.ts';
import { readBySystem } from './read-by-system.ts';
import { type ColumnTexts, readColumn, readTextColumn } from './read-column.ts';
import { mergeFacet, readDescribed } from './read-described.ts';
import { readSpacingWords } from './read-spacing-words.ts';
import { readSplit } from './read-split.ts';
import { saysNothing } from './says-nothing.ts';
import { pieceHabit } from './split-sizes.ts';

export interface ColumnsRead {
  readonly table: ReadonlyMap<string, Column>;
  readonly columns: readonly ColumnReading[];
}

/** Reads every column of a sheet as planned, and says what became of each. */
export function readColumns(
  sheet: Sheet,
  plans: readonly ColumnPlan[],
  decimals: readonly DecimalMark[],
  profile: SourceProfile,
  register: Register,
  ledger: Ledger,
): ColumnsRead {
  const table = new Map<string, Column>();
  const bounds = new Map<string, BoundColumns>();
  const columns: ColumnReading[] = [];
  const facets: { readonly texts: ColumnTexts; readonly columns: ReadonlyMap<string, Column> }[] = [];
  for (const plan of plans) {
    const decimal = decimals[plan.index]!;
    const texts = textsOf(sheet, plan, missingOf(plan.rule, profile), ledger);
    const entered = ledger.entries.length;
    const context = contextOf(plan.rule, decimal, profile, register);
    if (plan.status === 'ignored') ledgerIgnored(texts, ledger);
    else if (plan.split !== undefined) {
      const habit = pieceHabit(profile);
      const oneFacet = plan.rule.oneFacet === true;
      const split = readSplit(texts, plan.split, context, register, ledger, habit, oneFacet);
      for (const [id, column] of split.columns) put(table, id, column, texts, ledger);
      append(facets, split.told);
    } else if (plan.attribute !== undefined) {
      const { attribute } = plan;
      const cells = context(attribute, plan.unit);
      const described =
        readDescribed(texts, attribute, cells, register, ledger, plan.rule.oneFacet === true) ??
        readBySystem(texts, attribute, cells, register, ledger) ??
        readSpacingWords(texts, attribute, cells, register, ledger);
      const column = described?.main ?? readColumn(texts, attribute, cells, ledger);
      if (described !== null) facets.push({ texts, columns: described.facets });
      if (plan.doubt !== undefined) enterDoubt(plan.header, attribute.label, plan.doubt, ledger);
      if (plan.bound === undefined) put(table, attribute.id, column, texts, ledger);
      else bounds.set(attribute.id, { ...bounds.get(attribute.id), [plan.bound]: column });
    } else if (plan.status !== 'empty') {
      const column = readTextColumn(
        texts.texts,
        textColumnAttribute(plan.header),
        missingOf(plan.rule, profile),
      );
      table.set(column.attribute.id, column);
      enterKeptAsText(plan, register, ledger);
    }
    const unit = assumedUnit(plan, texts.texts, register);
    if (unit !== undefined) enterAssumedUnit(plan.header, unit, ledger);
    const pieces = plan.split === undefined ? 0 : severalPieces(ledger, entered);
    columns.push({
      ...columnReading(plan, decimal, texts.texts),
      ...(unit === undefined ? {} : { assumedUnit: unit }),
      ...(pieces === 0 || profile.pieces !== undefined ? {} : { severalPieces: pieces }),
    });
  }
  for (const [id, pair] of bounds) {
    const merged = mergeBounds(pair, sheet.origins, ledger);
    if (!table.has(id)) table.set(id, merged);
  }
  for (const told of facets)
    for (const [id, column] of told.columns)
      table.set(id, mergeFacet(table.get(id), column, told.texts, ledger));
  addConstants(table, profile, register, sheet, ledger);
  return { table, columns };
}

/** Cells that list the sizes of several pieces, among the entries from a place in the ledger on. */
function severalPieces({ entries }: Ledger, from: number): number {
  let count = 0;
  for (let at = from; at < entries.length; at++) if (entries[at]!.rule === 'several-pieces') count++;
  return count;
}

/** Two columns for one attribute: the first stays, the cells of the second are kept as text. */
function put(
  table: Map<string, Column>,
  id: string,
  column: Column,
  texts: ColumnTexts,
  ledger: Ledger,
): void {
  if (!table.has(id)) {
    table.set(id, column);
    return;
  }
  const kept = readTextColumn(texts.texts, textColumnAttribute(texts.header));
  table.set(kept.attribute.id, kept);
  enter(ledger, {
    row: 0,
    column: texts.header,
    raw: texts.header,
    readAs: 'text',
    level: 'flagged',
    rule: 'attribute-twice',
    why: `Another column gives "${column.attribute.label}" already, so this one is kept as text.`,
  });
}

/** Attributes that the profile states for every row; a column of the file goes before them. */
function addConstants(
  table: Map<string, Column>,
  profile: SourceProfile,
  register: Register,
  sheet: Sheet,
  ledger: Ledger,
): void {
  for (const [id, text] of Object.entries(profile.constants)) {
    const attribute: AttributeDefinition = knownAttribute(id, id, register, ledger.source);
    if (table.has(id)) continue;
    const context = contextOf({}, profile.decimal ?? '.', profile, register)(attribute, undefined);
    const texts = { header: `constant ${id}`, texts: sheet.body.map(() => text), origins: sheet.origins };
    // What the profile says of every row is no news about any single cell.
    const silent = { source: ledger.source, entries: [] };
    const described = readDescribed(texts, attribute, context, register, silent, false);
    table.set(id, described?.main ?? readColumn(texts, attribute, context, silent));
    for (const [facet, column] of described?.facets ?? [])
      table.set(facet, mergeFacet(table.get(facet), column, texts, silent));
  }
}

/** Attributes that lists often name once for a whole block of rows. */
const NAMES = new Set(['site', 'region', 'phase', 'period', 'context', 'item']);

function columnReading(plan: ColumnPlan, decimal: DecimalMark, texts: readonly string[]): ColumnReading {
  const unit = plan.unit ?? (plan.attribute === undefined ? statedUnit(plan.header) : undefined);
  let filled = 0;
  for (const text of texts) if (!saysNothing(text)) filled++;
  const below =
    plan.rule.copyDown === undefined && NAMES.has(plan.attribute?.id ?? '') ? blanksBelow(texts) : 0;
  return {
    index: plan.index,
    header: plan.header,
    status: plan.status,
    attributes: attributesOf(plan),
    decimal,
    filled,
    ...(plan.via === undefined ? {} : { via: plan.via }),
    ...(plan.suggestion === undefined ? {} : { suggestion: plan.suggestion }),
    ...(unit === undefined ? {} : { unit }),
    ...(plan.doubt === undefined ? {} : { doubt: plan.doubt }),
    ...(below === 0 ? {} : { blanksBelow: below }),
  };
}
