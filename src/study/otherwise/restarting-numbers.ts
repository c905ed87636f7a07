import { printCount, printList } from '../../analyses/phrasing.ts';
import { contradictEachOther } from '../../fragments/contradiction.ts';
import { collapseItems } from '../../fragments/items/items.ts';
import { spellings } from '../../sources/names/near-names.ts';
import { nameIn } from '../../sources/reading/assemble.ts';
import type { Material } from '../prepare.ts';
import type { WhatIf } from './otherwise.ts';

/** What one object cannot be two of. */
const ONE_EACH = ['phase', 'period', 'context', 'structure', 'fibre'] as const;
/** Fewer objects than this share of those of several fragments may be slips of the pen, and are told as disagreements. */
const FEWEST = 0.1;

/** Objects that somebody confirmed, but whose fragments cannot be of one. */
export interface ImpossibleObjects {
  readonly objects: number;
  /** Objects of several fragments. */
  readonly of: number;
  /** Labels of what they contradict themselves in, in small letters. */
  readonly in: readonly string[];
  /** An object for each row of the fragments, those taken apart. */
  readonly apart: readonly string[];
}

/**
 * A number that restarts in every grave, trench or volume names several objects: its fragments are then of several
 * phases, structures or fibres. Null where that is so of few.
 */
export function impossibleObjects(prepared: Material): ImpossibleObjects | null {
  const { fragments, register, witness, nearNames } = prepared;
  if (witness.status !== 'confirmed') return null;
  // Two spellings of a phase are no two phases.
  const spelled = spellings(nearNames);
  const rowsOf = new Map<string, number[]>();
  fragments.item.forEach((item, row) => {
    const rows = rowsOf.get(item);
    if (rows === undefined) rowsOf.set(item, [row]);
    else rows.push(row);
  });
  const several = [...rowsOf].filter(([, rows]) => rows.length > 1);
  const columns = ONE_EACH.flatMap((id) => fragments.columns.get(id) ?? []);
  const apart = [...fragments.item];
  const differing = new Set<string>();
  let objects = 0;
  for (const [item, rows] of several) {
    const told = columns.filter((column) =>
      column.attribute.block === 'context'
        ? new Set(rows.map((row) => spelled(nameIn(column, row))).filter((name) => name !== '')).size > 1
        : contradictEachOther(column, rows, register),
    );
    if (told.length === 0) continue;
    objects++;
    for (const { attribute } of told) differing.add(attribute.label.toLowerCase());
    for (const row of rows) {
      // What a row does not say is taken as the first of the object says it.
      const said = told.map(
        (column) =>
          nameIn(column, row) || rows.map((other) => nameIn(column, other)).find((name) => name !== ''),
      );
      apart[row] = [item, ...said].join(', ');
    }
  }
  return objects === 0 || objects < FEWEST * several.length
    ? null
    : { objects, of: several.length, in: [...differing], apart };
}

/** The same question with those taken as several objects. */
export function takenApart(prepared: Material): WhatIf | null {
  const found = impossibleObjects(prepared);
  if (found === null || prepared.unit !== 'item') return null;
  const { witness, fragments } = prepared;
  return {
    what: `Taken apart: ${printCount(found.objects, witness.one, witness.many)} whose fragments differ in ${printList(found.in)}`,
    open: 'whether numbers restart',
    hangsOn: `Cannot be told yet: ${found.objects} of ${printCount(found.of, witness.one, witness.many)} cannot each be one (their fragments differ in ${found.in[0]}), and taken apart the answers differ.`,
    next: 'Name the column within which the numbers restart as the context, or confirm another column ("witness" in the study, or on Sources).',
    prepared: () => {
      const split = { ...fragments, item: found.apart };
      return {
        ...prepared,
        fragments: split,
        records: collapseItems(split, prepared.register).table,
        n: { ...prepared.n, items: new Set(found.apart).size },
      };
    },
  };
}
