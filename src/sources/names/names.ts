import { lookupKey } from '../../attributes/folding.ts';
import { CELL_STATES } from '../../cells/reading.ts';
import type { Column, FragmentTable } from '../../fragments/table.ts';
import { enter, type Ledger } from '../ledger/ledger.ts';
import { assemblageName, nameIn } from '../reading/assemble.ts';
import type { NameDecision } from './name-decision.ts';
import { type NearNames, spellings } from './near-names.ts';

/**
 * Names of places, phases and people as a vocabulary of the study: "Drommavel ldg" and "Drommavel Landing", "früh"
 * and "Early" are asked about once, and the answer is kept with the study.
 */

/** Puts the name of the study in place of its other spellings, with a line in the ledger for every cell. */
export function applyNames(
  columns: Map<string, Column>,
  decisions: readonly NameDecision[],
  origins: readonly number[],
  ledger: Ledger,
): void {
  for (const id of new Set(decisions.map(({ attribute }) => attribute))) {
    const column = columns.get(id);
    if (column === undefined || column.kind === 'numeric') continue;
    const nameOf = new Map(
      decisions
        .filter(({ attribute }) => attribute === id)
        .flatMap(({ name, also }) => also.map((spelling) => [lookupKey(spelling), name] as const)),
    );
    const changed = (name: string) => {
      const kept = nameOf.get(lookupKey(name));
      return kept === undefined || kept === name ? null : kept;
    };
    for (const [at, row] of origins.entries()) {
      const own = nameIn(column, at);
      const kept = own === '' ? null : changed(own);
      if (kept === null) continue;
      const why = `The study says that "${own}" is another spelling of "${kept}".`;
      const column_ = column.attribute.label;
      enter(ledger, { row, column: column_, raw: own, readAs: kept, level: 'read', rule: 'name', why });
    }
    columns.set(id, renamed(column, changed));
  }
}

/**
 * The table with near names taken as one, under the name that more records bear; a name that is near to several takes
 * them all together. Assemblages follow their site and phase.
 */
export function joinNear(table: FragmentTable, pairs: readonly NearNames[]): FragmentTable {
  const columns = new Map(table.columns);
  for (const id of new Set(pairs.map(({ attribute }) => attribute))) {
    const column = columns.get(id);
    if (column === undefined) continue;
    const rootOf = spellings(pairs.filter(({ attribute }) => attribute === id));
    columns.set(
      id,
      renamed(column, (name) => {
        const root = rootOf(name);
        return root === name ? null : root;
      }),
    );
  }
  if (pairs.every(({ attribute }) => attribute !== 'site' && attribute !== 'phase'))
    return { ...table, columns };
  const [site, phase] = [columns.get('site'), columns.get('phase')];
  const assemblage = table.assemblage.map((_, row) => assemblageName(nameIn(site, row), nameIn(phase, row)));
  return { ...table, columns, assemblage };
}

/** The table without those names: of its rows it is not known which of several names is theirs. */
export function withoutNames(
  table: FragmentTable,
  names: readonly { readonly attribute: string; readonly name: string }[],
): FragmentTable {
  const columns = new Map(table.columns);
  for (const id of new Set(names.map(({ attribute }) => attribute))) {
    const column = columns.get(id);
    const unknown = new Set(names.flatMap(({ attribute, name }) => (attribute === id ? [name] : [])));
    if (column !== undefined)
      columns.set(
        id,
        blanked(column, (row) => unknown.has(nameIn(column, row))),
      );
  }
  const [site, phase] = [columns.get('site'), columns.get('phase')];
  const assemblage = table.assemblage.map((_, row) => assemblageName(nameIn(site, row), nameIn(phase, row)));
  return { ...table, columns, assemblage };
}

function blanked(column: Column, unknown: (row: number) => boolean): Column {
  if (column.kind === 'numeric') return column;
  const state = column.state.map((code, row) => (unknown(row) ? NOT_OBSERVED : code));
  if (column.kind === 'text') return { ...column, state };
  return { ...column, state, codes: column.codes.map((code, row) => (unknown(row) ? -1 : code)) };
}

const NOT_OBSERVED = CELL_STATES.indexOf('not-observed');

function renamed(column: Column, changed: (name: string) => string | null): Column {
  if (column.kind === 'numeric') return column;
  if (column.kind === 'text')
    return { ...column, raw: column.raw.map((text) => changed(text.trim()) ?? text) };
  const levels = [...new Set(column.levels.map((level) => changed(level) ?? level))];
  const place = column.levels.map((level) => levels.indexOf(changed(level) ?? level));
  return { ...column, levels, codes: column.codes.map((code) => (code < 0 ? code : place[code]!)) };
}
