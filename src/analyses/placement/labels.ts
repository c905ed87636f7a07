import type { Register } from '../../attributes/definition.ts';
import { termAt } from '../../fragments/accessors.ts';
import { groupRows } from '../../fragments/groups.ts';
import type { FragmentTable } from '../../fragments/table.ts';
import { wellAttestedUse } from '../../fragments/use-evidence.ts';
import type { PlacementOptions } from './options.ts';

/** One attribute whose labels are judged. */
export interface LabelAttribute {
  readonly id: string;
  readonly label: string;
  readonly labels: readonly {
    readonly label: string;
    readonly rows: readonly number[];
    /** The same rows by site, where labels are judged by whole sites; null where by single records. */
    readonly sites: readonly (readonly number[])[] | null;
  }[];
  /** Records without a label of it. */
  readonly unlabelled: number;
}

const USUAL = ['site', 'region', 'period', 'phase'];
/** Uses and what they rest on are shown with near comparanda; likeness of fabric carries none of them over. */
export const USES: ReadonlySet<string> = new Set(['recordedUse', 'useBasis']);

/**
 * The attributes whose labels are to be judged: those asked for, or the usual ones with two labels or more. A
 * use is judged only where it is asked for, last, and from records alone whose use rests on the piece itself.
 */
export function labelAttributes(
  table: FragmentTable,
  register: Register,
  options: PlacementOptions,
): readonly LabelAttribute[] {
  const asked = options.labels.length > 0;
  const ids = asked
    ? [...options.labels].sort((a, b) => Number(USES.has(a)) - Number(USES.has(b)))
    : usualAttributes(table);
  const attested = wellAttestedUse(table);
  const siteOf = siteNames(table);
  return ids
    .map((id) => {
      const { groups } = groupRows(table, [id], register);
      const labels = groups
        .map((group) => ({
          label: group.labels[0],
          rows: USES.has(id) ? group.rows.filter(attested) : group.rows,
        }))
        .filter(({ rows }) => rows.length > 0);
      const shared =
        siteOf !== null &&
        id !== 'site' &&
        id !== 'assemblage' &&
        labels.some(({ rows }) => isShared(rows, siteOf));
      const labelled = labels.reduce((sum, { rows }) => sum + rows.length, 0);
      return {
        id,
        label: id === 'assemblage' ? 'Assemblage' : (register.attributes.get(id)?.label ?? id),
        labels: labels.map((one) => ({
          ...one,
          sites: shared && options.findFrom === 'another site' ? bySite(one.rows, siteOf) : null,
        })),
        unlabelled: table.rows - labelled,
      };
    })
    .filter(({ labels }) => asked || labels.length > 1);
}

/** Site of each record; where no source records sites, its assemblage; null where neither is known of any. */
function siteNames(table: FragmentTable): ((row: number) => string) | null {
  const column = table.columns.get('site');
  if (column !== undefined && column.kind !== 'numeric')
    return (row) => (column.kind === 'text' ? column.raw[row].trim() : (termAt(column, row) ?? ''));
  return table.assemblage.some((name) => name !== '') ? (row) => table.assemblage[row] : null;
}

/** A record without a site is a site of its own: nothing says that it shares one. */
function bySite(
  rows: readonly number[],
  siteOf: ((row: number) => string) | null,
): readonly (readonly number[])[] {
  const sites = new Map<string, number[]>();
  for (const row of rows) {
    const name = siteOf?.(row) ?? '';
    const key = name === '' ? `record ${row}` : `site ${name}`;
    const own = sites.get(key);
    if (own === undefined) sites.set(key, [row]);
    else own.push(row);
  }
  return [...sites.values()];
}

const isShared = (rows: readonly number[], siteOf: (row: number) => string) =>
  bySite(rows, siteOf).some((own) => own.length > 1);

/** Site, region, period (or phase); where none is recorded, whatever else describes the records by kind. */
function usualAttributes(table: FragmentTable): readonly string[] {
  const usual = USUAL.filter((id) => isKinds(table, id));
  if (usual.length > 0) return usual.filter((id) => id !== 'phase' || !usual.includes('period'));
  return [...table.columns.values()]
    .filter((column) => column.kind === 'term' && column.attribute.block === 'context')
    .map(({ attribute }) => attribute.id)
    .filter((id) => !USES.has(id))
    .slice(0, MOST);
}

/** Most attributes judged without being asked for. */
const MOST = 3;

function isKinds(table: FragmentTable, id: string): boolean {
  const column = table.columns.get(id);
  return column !== undefined && column.kind !== 'numeric';
}
