import type { Block, Register } from '../attributes/definition.ts';
import { InputError } from '../errors.ts';
import { recordedItself, waysTo } from './follows-from.ts';
import { isMissing } from './missing.ts';
import type { FragmentTable } from './table.ts';

/** Which attributes are compared where none is named, and which of those named would count one measurement twice. */

/** Pairs of attributes that say the same thing in two units, and may not both be weighed. */
const TWINS: readonly (readonly [string, string])[] = [['rowSpacing', 'density2']];

/** @throws InputError for two attributes that are one measurement (spacing and density of the same rows). */
export function refuseTwins(chosen: readonly string[], register: Register): void {
  for (const [a, b] of TWINS) {
    if (!chosen.includes(a) || !chosen.includes(b)) continue;
    const label = (id: string) => `"${register.attributes.get(id)?.label ?? id}" (${id})`;
    throw new InputError(
      `${label(a)} and ${label(b)} are one measurement in two units and would count twice`,
      {},
      `leave out ${a} or ${b}`,
    );
  }
}

/**
 * Everything of structure, spacing and fibre with a value; of twins the second, which more fabrics have. Where
 * nothing of these is recorded, as in a table about other finds, everything that describes the piece. What can be
 * computed from others (a row gap, a balance) is among them where some record has it and not what it follows from.
 *
 * @param found computed attributes that a find from outside has of its own.
 */
export function defaultAttributes(table: FragmentTable, found: readonly string[] = []): readonly string[] {
  const ofCloth = recordedIn(table, ['structure', 'spacing', 'fibre'], found);
  const ids = ofCloth.length > 0 ? ofCloth : recordedIn(table, ['find'], found);
  return ids.filter((id) => !TWINS.some(([first, second]) => id === first && ids.includes(second)));
}

function recordedIn(
  table: FragmentTable,
  blocks: readonly Block[],
  found: readonly string[],
): readonly string[] {
  const itself = [...recordedItself(table), ...found];
  return [...table.columns].flatMap(([id, column]) => {
    const { block, derived } = column.attribute;
    if (!blocks.includes(block) || column.kind === 'text' || (derived && !itself.includes(id))) return [];
    const filled =
      column.kind === 'numeric'
        ? column.low.some((value) => !Number.isNaN(value))
        : column.codes.some((code) => code >= 0);
    return filled ? [id] : [];
  });
}

/** The same for methods that need every value of a record: a computed attribute only where nothing of it is recorded otherwise. */
export function defaultOfComplete(table: FragmentTable): readonly string[] {
  const has = (id: string) => {
    const column = table.columns.get(id);
    return column?.state.some((_, row) => !isMissing(column, row)) === true;
  };
  return defaultAttributes(table).filter(
    (id) =>
      !table.columns.get(id)?.attribute.derived || !waysTo(id, 'rowSpacing').some((way) => way.some(has)),
  );
}

/** The ways in which a compared attribute follows from others that are compared too, as places among them. */
export function placesOfWays(id: string, compared: readonly string[]): readonly (readonly number[])[] {
  const spacing = compared.includes('density2') ? 'density2' : 'rowSpacing';
  return waysTo(id, spacing)
    .map((way) => way.map((input) => compared.indexOf(input)))
    .filter((way) => !way.includes(-1));
}
