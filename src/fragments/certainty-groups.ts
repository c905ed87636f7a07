import type { AttributeDefinition, Register } from '../attributes/definition.ts';
import { withColumns } from './columns-on-demand.ts';
import type { FragmentTable, TermColumn } from './table.ts';

/**
 * Certainty as a grouping: "fibre.certainty" puts records into those whose fibre is certain and those where it is
 * marked as doubtful ("?", "cf.", "prob."), so that a question can be asked across them as across sites.
 */

const END = '.certainty';
const GRADES = ['doubtful', 'certain'] as const;

export const certaintyId = (attribute: string): string => `${attribute}${END}`;

/** The attribute whose certainty a name means; null for every other name. */
export function certaintyOf(id: string): string | null {
  return id.endsWith(END) && id.length > END.length ? id.slice(0, -END.length) : null;
}

/** How many records are certain of an attribute of kinds, and how many are marked as doubtful. */
export function countCertain({ codes, certainty }: TermColumn): { certain: number; doubtful: number } {
  let [certain, doubtful] = [0, 0];
  codes.forEach((code, row) => {
    if (code < 0) return;
    if (certainty[row] > 0) doubtful++;
    else certain++;
  });
  return { certain, doubtful };
}

/** The register that knows these certainties as attributes; names of anything else are passed over. */
export function withCertaintyAttributes(register: Register, ids: readonly string[]): Register {
  const added = ids.flatMap((id) => definitionOf(id, register) ?? []);
  if (added.length === 0) return register;
  return {
    ...register,
    attributes: new Map([...register.attributes, ...added.map((one) => [one.id, one] as const)]),
  };
}

/** The table with a column for each certainty asked for; of rows without a kind nothing is certain or doubtful. */
export function withCertainties(
  table: FragmentTable,
  ids: readonly string[],
  register: Register,
): FragmentTable {
  const added = ids.flatMap((id) => {
    const column = table.columns.get(certaintyOf(id) ?? '');
    const attribute = definitionOf(id, register);
    return column?.kind === 'term' && attribute !== null ? [[id, gradesOf(column, attribute)] as const] : [];
  });
  return added.length === 0 ? table : { ...table, columns: withColumns(table.columns, added) };
}

function definitionOf(id: string, register: Register): AttributeDefinition | null {
  const of = register.attributes.get(certaintyOf(id) ?? '');
  if (of === undefined || !['nominal', 'ordinal', 'binary', 'presence'].includes(of.scale)) return null;
  return {
    id,
    label: `Certainty of ${of.label.charAt(0).toLowerCase()}${of.label.slice(1)}`,
    block: 'context',
    scale: 'ordinal',
    levels: GRADES,
    derived: true,
    composed: true,
    definition: `Whether ${of.label} is given without a mark of doubt.`,
    source: 'common practice, no source',
  };
}

function gradesOf({ codes, certainty, state, raw }: TermColumn, attribute: AttributeDefinition): TermColumn {
  return {
    kind: 'term',
    attribute,
    codes: codes.map((code, row) =>
      code < 0 ? -1 : GRADES.indexOf(certainty[row] > 0 ? 'doubtful' : 'certain'),
    ),
    levels: [...GRADES],
    state,
    certainty: new Uint8Array(codes.length),
    raw,
  };
}
