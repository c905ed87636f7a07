import type { AttributeDefinition, Register } from '../../attributes/definition.ts';
import type { CellContext } from '../../cells/context.ts';
import { lexiconOf } from '../../cells/descriptions/lexicon.ts';
import { type DescriptionReading, readDescription } from '../../cells/descriptions/read-description.ts';
import { readFacetCell } from '../../cells/descriptions/read-facet-cell.ts';
import { emptyNumeric, emptyTerm } from '../../cells/notes.ts';
import { profileCode } from '../../cells/nothing.ts';
import { readCell } from '../../cells/read-cell.ts';
import type { Reading } from '../../cells/reading.ts';
import { isMissing, stateAt } from '../../fragments/missing.ts';
import type { Column } from '../../fragments/table.ts';
import { fillColumn } from '../combine/fill-column.ts';
import { enter, type Ledger } from '../ledger/ledger.ts';
import { type ColumnTexts, columnOf } from './read-column.ts';

export interface DescribedColumns {
  readonly main: Column;
  /** Facet -> its column; facets of which no cell says anything are left out. */
  readonly facets: ReadonlyMap<string, Column>;
}

/**
 * Reads a column whose cells describe several attributes at once: one column each, one entry of the ledger for
 * each attribute that a cell gives, and one for each wording that was not used.
 *
 * @param oneFacet the profile says that the cells hold one attribute alone; what they say beside it is listed.
 * @returns null where the attribute has no facets and is none, or the cells gather several rows.
 */
export function readDescribed(
  column: ColumnTexts,
  attribute: AttributeDefinition,
  context: CellContext,
  register: Register,
  ledger: Ledger,
  oneFacet: boolean,
): DescribedColumns | null {
  if (column.gathered === true) return null;
  if (attribute.facet !== undefined) return readFacet(column, attribute, context, register, ledger);
  const lexicon = lexiconOf(attribute, register);
  if (lexicon === null) return null;
  const cache = new Map<string, DescriptionReading>();
  const describe = (text: string): DescriptionReading => {
    const known = cache.get(text);
    if (known !== undefined) return known;
    const coded = profileCode(text, context.missing) !== undefined;
    const read = coded ? null : readDescription(text, attribute, register, context);
    const fresh = read ?? { main: readCell(text, attribute, context), facets: new Map(), rest: [] };
    cache.set(text, fresh);
    return fresh;
  };
  const main = columnOf(column, attribute, (text) => withoutRest(describe(text)), ledger);
  enterRest(column, describe, ledger, oneFacet);
  const facets = new Map<string, Column>();
  if (oneFacet) return { main, facets };
  for (const facet of lexicon.facets) {
    if (facet.id === attribute.id || !column.texts.some((text) => describe(text).facets.has(facet.id)))
      continue;
    const read = (text: string): Reading => describe(text).facets.get(facet.id) ?? empty(facet);
    facets.set(facet.id, columnOf(column, facet, read, ledger, `${facet.label}: `));
  }
  return { main, facets };
}

/** A column of one facet, whose cells may name the whole: "open twining" under "Openness". */
function readFacet(
  column: ColumnTexts,
  attribute: AttributeDefinition,
  context: CellContext,
  register: Register,
  ledger: Ledger,
): DescribedColumns | null {
  if (!register.attributes.has(attribute.facet?.of ?? '')) return null;
  const read = (text: string): Reading => readFacetCell(text, attribute, context, register);
  return { main: columnOf(column, attribute, read, ledger), facets: new Map() };
}

const empty = (attribute: AttributeDefinition): Reading =>
  attribute.scale === 'ratio' || attribute.scale === 'interval'
    ? emptyNumeric('not-observed', [])
    : emptyTerm('not-observed', []);

/** Where the attribute was read, each wording that was not used has an entry of its own. */
function withoutRest({ main, rest }: DescriptionReading): Reading {
  if (main.kind !== 'term' || main.term === null) return main;
  const own = new Set(rest.map(({ why }) => why));
  return { ...main, notes: main.notes.filter(({ why }) => !own.has(why)) };
}

function enterRest(
  { texts, origins, header }: ColumnTexts,
  describe: (text: string) => DescriptionReading,
  ledger: Ledger,
  oneFacet: boolean,
): void {
  for (const [row, text] of texts.entries()) {
    const { main, rest, facets } = describe(text);
    if (main.kind !== 'term' || main.term === null) continue;
    for (const one of rest) {
      enter(ledger, {
        row: origins[row]!,
        column: header,
        raw: one.text,
        readAs: '',
        level: 'flagged',
        rule: one.rule,
        why: `${one.why} (in "${text.trim()}")`,
      });
    }
    if (!oneFacet || facets.size === 0) continue;
    enter(ledger, {
      row: origins[row]!,
      column: header,
      raw: text,
      readAs: '',
      level: 'flagged',
      rule: 'one-facet',
      why: 'The cell says more than the one thing that the profile reads from this column; the rest was left.',
    });
  }
}

/** A column of its own goes before what descriptions say of the same facet; they fill its gaps. */
export function mergeFacet(
  own: Column | undefined,
  told: Column,
  texts: ColumnTexts,
  ledger: Ledger,
): Column {
  if (own === undefined || own.kind !== told.kind) return own ?? told;
  const rows = texts.texts.length;
  const from = new Int32Array(rows).fill(-1);
  for (let row = 0; row < rows; row++) {
    if (isMissing(told, row)) continue;
    if (isMissing(own, row)) {
      if (stateAt(own, row) === 'not-observed') from[row] = row;
    } else if (!sameValue(own, told, row)) {
      enter(ledger, {
        row: texts.origins[row]!,
        column: texts.header,
        raw: texts.texts[row]!,
        readAs: own.raw[row]!.trim(),
        level: 'flagged',
        rule: 'facet-contradiction',
        why: `The description says otherwise than the column of "${told.attribute.label}", which was kept.`,
      });
    }
  }
  return from.some((row) => row >= 0) ? fillColumn(own, told, from) : own;
}

function sameValue(a: Column, b: Column, row: number): boolean {
  if (a.kind === 'term' && b.kind === 'term') {
    return a.levels[a.codes[row]!] === b.levels[b.codes[row]!] && a.state[row] === b.state[row];
  }
  return (
    a.kind === 'numeric' && b.kind === 'numeric' && a.low[row] === b.low[row] && a.high[row] === b.high[row]
  );
}
