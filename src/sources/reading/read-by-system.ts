import type { AttributeDefinition, Register } from '../../attributes/definition.ts';
import { type BySystem, bySystem } from '../../cells/by-system.ts';
import type { CellContext } from '../../cells/context.ts';
import { emptyTerm, quote, readAs } from '../../cells/notes.ts';
import { profileCode } from '../../cells/nothing.ts';
import { readCell } from '../../cells/read-cell.ts';
import type { Reading } from '../../cells/reading.ts';
import { translated } from '../../cells/terms.ts';
import type { Ledger } from '../ledger/ledger.ts';
import { type ColumnTexts, columnOf } from './read-column.ts';
import type { DescribedColumns } from './read-described.ts';

/** Attributes of system 1 whose cells may name both systems, with those of system 2. */
const SECOND_OF: Readonly<Record<string, string>> = { fibre: 'fibre2', twist1: 'twist2', ply1: 'ply2' };

/**
 * Reads a column of which some cells say themselves of which system they speak ("warp linen, weft wool"): what is said
 * of system 2 goes to its own attribute. Cells that name no system are read as they would be without this.
 *
 * @returns null where no cell names a system.
 */
export function readBySystem(
  column: ColumnTexts,
  attribute: AttributeDefinition,
  context: CellContext,
  register: Register,
  ledger: Ledger,
): DescribedColumns | null {
  const second = register.attributes.get(SECOND_OF[attribute.id] ?? '');
  if (second === undefined || column.gathered === true) return null;
  const cache = new Map<string, BySystem | null>();
  const partsOf = (text: string): BySystem | null => {
    const known = cache.get(text);
    if (known !== undefined) return known;
    const settled =
      profileCode(text, context.missing) !== undefined || translated(text, context) !== undefined;
    const parts = settled ? null : bySystem(text);
    cache.set(text, parts);
    return parts;
  };
  if (!column.texts.some((text) => partsOf(text) !== null)) return null;
  const side = (text: string, part: string | null): Reading => {
    if (part === null) return emptyTerm('not-observed', []);
    const read = readCell(part, attribute, context);
    return { ...read, notes: [...read.notes, readAs('by-system', `${quote(text)} says so of this system`)] };
  };
  return {
    main: columnOf(
      column,
      attribute,
      (text) => {
        const parts = partsOf(text);
        return parts === null ? readCell(text, attribute, context) : side(text, parts.first);
      },
      ledger,
    ),
    facets: new Map([
      [
        second.id,
        columnOf(
          column,
          second,
          (text) => side(text, partsOf(text)?.second ?? null),
          ledger,
          `${second.label}: `,
        ),
      ],
    ]),
  };
}
