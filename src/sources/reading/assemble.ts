import type { AttributeDefinition } from '../../attributes/definition.ts';
import { CELL_STATES } from '../../cells/reading.ts';
import { takeRows } from '../../fragments/subset.ts';
import type { Column, FragmentTable } from '../../fragments/table.ts';
import { enter, type Ledger } from '../ledger/ledger.ts';
import type { NameDecision } from '../names/name-decision.ts';
import { inOneSpelling } from '../names/near-names.ts';
import type { RepeatedIdRule } from '../profile/decisions.ts';
import type { RepeatedId } from '../source-reading.ts';
import { enterRepeated, enterUnusedDecisions, settleRepeatedIds } from './repeated-ids.ts';
import { type ItemNumbers, toldApartByContext, toldApartBySite } from './unique-in-context.ts';

/** The text of a row in a column that names things: the term where it has one, else the cell itself. */
export function nameIn(column: Column | undefined, row: number): string {
  if (column === undefined) return '';
  if (column.kind === 'term') return column.codes[row]! < 0 ? '' : column.levels[column.codes[row]!]!;
  if (column.kind === 'text' && column.state[row] !== MEASURED) return '';
  return column.raw[row]!.trim();
}

const MEASURED = CELL_STATES.indexOf('measured');

/** Site and phase as one key; "" where neither is known. */
export function assemblageName(site: string, phase: string): string {
  if (site === '') return phase;
  return phase === '' ? site : `${site}, ${phase}`;
}

export interface Assembled {
  readonly table: FragmentTable;
  readonly repeated: readonly RepeatedId[];
  /** Positions in the sheet of the rows that a decision sets aside, with the reason. */
  readonly dropped: ReadonlyMap<number, string>;
}

export interface AssembleOptions {
  readonly repeatedIds?: RepeatedIdRule;
  readonly itemNumbers?: ItemNumbers;
  /** What the study says of names that look alike. */
  readonly decided?: readonly NameDecision[];
}

/**
 * Puts the columns of one source together. Every row gets an id of its own: that of the source where it
 * has one, else its row number. What several rows with one identifier are, the profile says; until it does,
 * a second "12" becomes "12 (2)" and both are fragments of one item, within one context. Where a column names
 * the items, it alone decides about them. A number of an item counts within its site and context, since numbers
 * restart there, unless the profile says that it is unique everywhere.
 */
export function assembleTable(
  columns: ReadonlyMap<string, Column>,
  origins: readonly number[],
  source: string,
  ledger: Ledger,
  names?: Column,
  { repeatedIds: rule = {}, itemNumbers = 'in-context', decided = [] }: AssembleOptions = {},
): Assembled {
  const rows = origins.length;
  const fragments = columns.get('fragment') ?? naming(columns.get('catalogueNumber')) ?? distinct(names);
  if (fragments !== undefined && fragments === names) {
    enter(ledger, {
      row: 0,
      column: names.attribute.label,
      raw: names.attribute.label,
      readAs: 'names of the rows',
      level: 'flagged',
      rule: 'names-from-first-column',
      why: 'No column of identifiers was recognised; the first column, whose cells all differ, names the rows.',
    });
  }
  const items = columns.get('item');
  const sites = columns.get('site');
  const phases = columns.get('phase');
  const textsOf = (column: Column | undefined) => origins.map((_, row) => nameIn(column, row));
  const siteOf = textsOf(sites);
  // A table that spells one place in two ways does not number its objects twice.
  const placeOf = inOneSpelling('site', siteOf, decided);
  const contextOf = textsOf(columns.get('context'));
  const inContext = (names: readonly string[]) =>
    itemNumbers === 'everywhere' ? names : toldApartByContext(names, contextOf);
  const named = toldApartBySite(textsOf(fragments), placeOf);
  const namedInContext = inContext(named);
  const objects =
    itemNumbers === 'everywhere' ? textsOf(items) : inContext(toldApartBySite(textsOf(items), placeOf));
  const { repeated, dropped } = settleRepeatedIds(named, origins, rule);
  enterUnusedDecisions(repeated, rule, ledger);
  const decisions = new Map(repeated.map(({ id, decision }) => [id, decision]));
  const seen = new Map<string, number>();
  const taken = new Set(named);
  const id: string[] = [];
  const item: string[] = [];
  const assemblage: string[] = [];
  for (let row = 0; row < rows; row++) {
    const base = named[row] === '' ? unused(`row ${origins[row]}`, taken) : named[row]!;
    const before = dropped.has(row) ? 0 : (seen.get(base) ?? 0);
    if (!dropped.has(row)) seen.set(base, before + 1);
    const own = before === 0 ? base : unused(`${base} (${before + 1})`, taken);
    const decision = decisions.get(base) ?? null;
    if (before > 0) enterRepeated(ledger, origins[row]!, fragments, nameIn(fragments, row), own, decision);
    id.push(own);
    const undecided = decision === null && named[row] !== '' ? namedInContext[row]! : base;
    item.push(objects[row] || (decision === 'two-finds' ? own : undecided));
    assemblage.push(assemblageName(siteOf[row]!, nameIn(phases, row)));
  }
  const table: FragmentTable = {
    rows,
    id,
    item,
    assemblage,
    origin: origins.map((row) => ({ source: 0, row })),
    sources: [source],
    columns,
  };
  if (dropped.size === 0) return { table, repeated, dropped };
  const kept = origins.map((_, row) => row).filter((row) => !dropped.has(row));
  return { table: takeRows(table, kept), repeated, dropped };
}

function unused(name: string, taken: Set<string>): string {
  let candidate = name;
  for (let i = 2; taken.has(candidate); i++) candidate = `${name} (${i})`;
  taken.add(candidate);
  return candidate;
}

/** Catalogue numbers that nearly all rows have, and that seldom repeat, name them as well as fragment numbers do. */
function naming(column: Column | undefined): Column | undefined {
  if (column?.kind !== 'text') return undefined;
  const texts = column.raw.map((text) => text.trim()).filter((text) => text !== '');
  const enough = texts.length >= 0.9 * column.raw.length && new Set(texts).size >= 0.7 * texts.length;
  return enough ? column : undefined;
}

/** A column without blanks in which no two rows are alike. */
function distinct(column: Column | undefined): Column | undefined {
  if (column?.kind !== 'text') return undefined;
  const texts = column.raw.map((text) => text.trim());
  return new Set(texts).size === texts.length && !texts.includes('') ? column : undefined;
}

/** Prefix of the ids of columns that no attribute claims; kept, shown, never compared. */
export const TEXT_COLUMN_PREFIX = 'column: ';

/** The definition under which an unclaimed column is kept. */
export function textColumnAttribute(header: string): AttributeDefinition {
  return {
    id: `${TEXT_COLUMN_PREFIX}${header}`,
    label: header,
    block: 'context',
    scale: 'text',
    definition: 'A column of a source that no attribute was matched to, as it stands.',
    source: 'the source itself',
  };
}
