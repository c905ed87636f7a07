import type { AttributeDefinition, Register } from '../../attributes/definition.ts';
import type { CellContext } from '../../cells/context.ts';
import { emptyNumeric, emptyTerm, quote, readAs } from '../../cells/notes.ts';
import { profileCode, readNothing } from '../../cells/nothing.ts';
import { readCell } from '../../cells/read-cell.ts';
import type { Reading } from '../../cells/reading.ts';
import { translated } from '../../cells/terms.ts';
import type { Ledger } from '../ledger/ledger.ts';
import { type ColumnTexts, columnOf } from './read-column.ts';
import type { DescribedColumns } from './read-described.ts';

/** Measures in whose place a recorder may write the class. */
export const MEASURES: ReadonlySet<string> = new Set(['rowSpacing', 'rowGap']);
const CLASS = 'spacingClass';

/** The class that a cell of a spacing or a gap gives in words ("rows touch"); null where it gives none. */
export function classInWords(text: string, register: Register): Reading | null {
  const attribute = register.attributes.get(CLASS);
  const vocabulary = register.vocabularies.get(attribute?.vocabulary ?? '');
  if (attribute === undefined || vocabulary === undefined || /\d/u.test(text) || readNothing(text) !== null)
    return null;
  const read = readCell(text, attribute, { decimal: '.', vocabulary, register });
  return read.kind === 'term' && read.term !== null ? read : null;
}

/** The class, where every cell of a column headed as a spacing or a gap gives one in words. */
export function classesInstead(
  attribute: AttributeDefinition,
  texts: readonly string[],
  register: Register,
): AttributeDefinition | null {
  const said = texts.filter((text) => readNothing(text) === null);
  const all = said.length > 0 && said.every((text) => classInWords(text, register) !== null);
  return MEASURES.has(attribute.id) && all ? (register.attributes.get(CLASS) ?? null) : null;
}

/**
 * Reads a column of spacings in which some cells say "rows touch" or "mit Abstand" instead of a number: these are the
 * spacing class. Null where no cell does.
 */
export function readSpacingWords(
  column: ColumnTexts,
  attribute: AttributeDefinition,
  context: CellContext,
  register: Register,
  ledger: Ledger,
): DescribedColumns | null {
  const target = register.attributes.get(CLASS);
  if (!MEASURES.has(attribute.id) || target === undefined || column.gathered === true) return null;
  const classes = new Map<string, Reading | null>();
  const classOf = (text: string): Reading | null => {
    const known = classes.get(text);
    if (known !== undefined) return known;
    const settled =
      profileCode(text, context.missing) !== undefined || translated(text, context) !== undefined;
    const found = settled ? null : classInWords(text, register);
    classes.set(text, found);
    return found;
  };
  if (!column.texts.some((text) => classOf(text) !== null)) return null;
  const elsewhere = (text: string): Reading =>
    emptyNumeric('not-observed', [
      readAs('spacing-class', `${quote(text)} is no measure; read as the spacing class`),
    ]);
  const main = columnOf(
    column,
    attribute,
    (text) => (classOf(text) === null ? readCell(text, attribute, context) : elsewhere(text)),
    ledger,
  );
  const told = columnOf(
    column,
    target,
    (text) => classOf(text) ?? emptyTerm('not-observed', []),
    ledger,
    `${target.label}: `,
  );
  return { main, facets: new Map([[CLASS, told]]) };
}
