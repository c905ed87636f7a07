import type { Register } from '../../attributes/definition.ts';
import { groupRows } from '../../fragments/groups.ts';
import type { FragmentTable } from '../../fragments/table.ts';
import type { PlacementOptions } from './options.ts';

/** One attribute whose labels are judged. */
export interface LabelAttribute {
  readonly id: string;
  readonly label: string;
  readonly labels: readonly { readonly label: string; readonly rows: readonly number[] }[];
  /** Records without a label of it. */
  readonly unlabelled: number;
}

const USUAL = ['site', 'region', 'period', 'phase', 'recordedUse'];

/** The attributes whose labels are to be judged: those asked for, or the usual ones with two labels or more. */
export function labelAttributes(
  table: FragmentTable,
  register: Register,
  options: PlacementOptions,
): readonly LabelAttribute[] {
  const asked = options.labels.length > 0;
  const ids = asked ? options.labels : usualAttributes(table);
  return ids
    .map((id) => {
      const { groups, ungrouped } = groupRows(table, [id], register);
      return {
        id,
        label: id === 'assemblage' ? 'Assemblage' : (register.attributes.get(id)?.label ?? id),
        labels: groups.map(({ labels, rows }) => ({ label: labels[0], rows })),
        unlabelled: ungrouped.reduce((sum, { rows }) => sum + rows.length, 0),
      };
    })
    .filter(({ labels }) => asked || labels.length > 1);
}

/** Site, region, period (or phase), recorded use; where none is recorded, whatever describes the records by kind. */
function usualAttributes(table: FragmentTable): readonly string[] {
  const usual = USUAL.filter((id) => isKinds(table, id));
  if (usual.length > 0) return usual.filter((id) => id !== 'phase' || !usual.includes('period'));
  return [...table.columns.values()]
    .filter((column) => column.kind === 'term' && column.attribute.block === 'context')
    .map(({ attribute }) => attribute.id)
    .slice(0, MOST);
}

/** Most attributes judged without being asked for. */
const MOST = 3;

function isKinds(table: FragmentTable, id: string): boolean {
  const column = table.columns.get(id);
  return column !== undefined && column.kind !== 'numeric';
}
