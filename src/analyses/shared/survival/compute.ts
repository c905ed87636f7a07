import type { Register, Vocabulary } from '../../../attributes/definition.ts';
import { type Survivals, survivalOf, survivalsIn } from '../../../attributes/survival.ts';
import { ancestors } from '../../../attributes/tree.ts';
import { termAt } from '../../../fragments/accessors.ts';
import type { CrossedTable } from '../../../fragments/crossed-table.ts';
import { groupRows } from '../../../fragments/groups.ts';
import type { FragmentTable } from '../../../fragments/table.ts';
import type { Loss } from './found.ts';

/** Share of a place's records in whose preservation a fibre is lost, from which it could not have survived there. */
const NEARLY_ALL = 0.9;

/**
 * Which fibres could not have survived where they are lacking or scarcer than elsewhere, judged by the preservation of
 * all records of each place; a record whose preservation is not known speaks against a loss.
 *
 * @param table the records counted, places by kinds of fibre or turned.
 * @returns none where neither side of the table is fibre or the other is no context.
 */
export function lossesIn(
  records: FragmentTable,
  table: CrossedTable,
  { rows, columns }: { readonly rows: string; readonly columns: string },
  register: Register,
): readonly Loss[] {
  const turned = isFibre(rows, register);
  const [across, fibre] = turned ? [columns, rows] : [rows, columns];
  const fibres = register.vocabularies.get('fibre');
  if (!isFibre(fibre, register) || !isContext(across, register) || fibres === undefined) return [];
  const [places, kinds] = turned ? [table.columns, table.rows] : [table.rows, table.columns];
  const countAt = (place: number, kind: number) =>
    turned ? table.counts[kind][place] : table.counts[place][kind];
  const broad = broadKinds(kinds, fibres);
  const rowsOf = new Map(
    groupRows(records, [across], register).groups.map((group) => [group.labels[0], group.rows]),
  );
  return places.flatMap((label, place) => {
    const kept = preservationOf(records, rowsOf.get(label) ?? [], register);
    return broad.flatMap(({ fibre: root, members }): Loss[] => {
      const lost = (one: Survivals, id: string) => survivalOf(one, id, fibres) === 'lost';
      const gone = members.filter(({ id }) => reaches(kept, (one) => lost(one, id)));
      if (gone.length === 0) return [];
      const count = (at: number, of: readonly { readonly kind: number }[]) =>
        of.reduce((sum, { kind }) => sum + countAt(at, kind), 0);
      const everything = kinds.map((_, kind) => ({ kind }));
      const found = count(place, gone);
      const counted = count(place, everything);
      const others = places.map((_, at) => at).filter((at) => at !== place);
      const elsewhere = others.reduce((sum, at) => sum + count(at, gone), 0);
      const countedElsewhere = others.reduce((sum, at) => sum + count(at, everything), 0);
      // Of what is as common as elsewhere nothing is missing, whatever its preservation is called.
      if (found * countedElsewhere >= elsewhere * counted) return [];
      const so = kept.known.filter(({ one }) => gone.some(({ id }) => lost(one, id)));
      return [
        {
          place: label,
          fibre: root,
          kinds: gone.map(({ label: kind }) => kind),
          found,
          counted,
          where: so.map(({ one }) => one.where).join(' and '),
          records: so.reduce((sum, { count: n }) => sum + n, 0),
          of: kept.of,
          lasting: broad
            .filter(({ members: all }) =>
              all.some(({ id }) => reaches(kept, (one) => survivalOf(one, id, fibres) === 'lasts')),
            )
            .map(({ fibre: name }) => name),
        },
      ];
    });
  });
}

const isFibre = (id: string, register: Register) => register.attributes.get(id)?.vocabulary === 'fibre';
const isContext = (id: string, register: Register) =>
  id === 'assemblage' || register.attributes.get(id)?.block === 'context';

/** The kinds compared under their broadest kind; those that the vocabulary does not hold are left out. */
function broadKinds(kinds: readonly string[], fibres: Vocabulary) {
  const placed = kinds.flatMap((label, kind) => {
    const term = fibres.terms.find((one) => one.label === label);
    if (term === undefined) return [];
    const root = ancestors(fibres, term.id).at(-1) ?? term.id;
    return [{ kind, label, id: term.id, root }];
  });
  return [...new Set(placed.map(({ root }) => root))].map((root) => ({
    fibre: fibres.terms.find(({ id }) => id === root)?.label ?? root,
    members: placed.filter((one) => one.root === root),
  }));
}

interface Kept {
  /** Commonest first. */
  readonly known: readonly { readonly one: Survivals; readonly count: number }[];
  readonly of: number;
}

function preservationOf(records: FragmentTable, rows: readonly number[], register: Register): Kept {
  const column = records.columns.get('preservation');
  const vocabulary = register.vocabularies.get('preservation');
  if (column?.kind !== 'term' || vocabulary === undefined) return { known: [], of: rows.length };
  const counts = new Map<Survivals, number>();
  for (const row of rows) {
    const term = termAt(column, row);
    const one = term === null ? undefined : survivalsIn(term, vocabulary);
    if (one !== undefined) counts.set(one, (counts.get(one) ?? 0) + 1);
  }
  const known = [...counts].map(([one, count]) => ({ one, count })).sort((a, b) => b.count - a.count);
  return { known, of: rows.length };
}

/** Whether something holds in the preservation of all records or nearly all. */
function reaches({ known, of }: Kept, holds: (one: Survivals) => boolean): boolean {
  const count = known.reduce((sum, entry) => sum + (holds(entry.one) ? entry.count : 0), 0);
  return count > 0 && count >= NEARLY_ALL * of;
}
