import { inSentence, printCount, printList } from '../../analyses/phrasing.ts';
import { viewItems } from '../../fragments/items/items.ts';
import { viewRows } from '../../fragments/subset.ts';
import type { FragmentTable, TermColumn } from '../../fragments/table.ts';
import { asBeforeShrinking } from '../cautions/shrinkage.ts';
import type { Material } from '../prepare.ts';
import { jointly, type Try } from './jointly.ts';
import { slipsAsOne } from './names-as-one.ts';
import type { WhatIf } from './otherwise.ts';
import { takenApart } from './restarting-numbers.ts';

/**
 * @param used attributes that the question rests on.
 * @param named texts that its options hold, names of places among them.
 * @param judged whether there is a verdict that could turn; a description is held against what it would say otherwise.
 * @returns what is to be tried: objects where their column is not confirmed, names that may be one as one, certain
 * attributions alone where some are uncertain, and what shrank at its former size where the study says how much.
 * Empty where nothing of the kind is open.
 */
export function whatIfs(
  prepared: Material,
  used: readonly string[],
  named: ReadonlySet<string> = new Set(),
  judged = true,
): readonly WhatIf[] {
  return [
    ...(judged || used.length > 0
      ? [byObjects(prepared), takenApart(prepared), slipsAsOne(prepared, used, named)]
      : []),
    certainAlone(prepared, used),
    ...(judged ? [asBeforeShrinking(prepared, used)] : []),
  ].filter((one) => one !== null);
}

/** All that is open at once, for where nothing by itself turns the verdict; null where fewer than two things are open. */
export function allAtOnce(
  prepared: Material,
  used: readonly string[],
  named: ReadonlySet<string>,
): WhatIf | null {
  const tries: readonly Try[] = [
    (material) => slipsAsOne(material, used, named),
    byObjects,
    takenApart,
    (material) => certainAlone(material, used),
    (material) => asBeforeShrinking(material, used),
  ];
  return jointly(prepared, tries);
}

function byObjects(prepared: Material): WhatIf | null {
  const { witness, suggestedItem, fragments, study } = prepared;
  if (witness.status !== 'suggested' || study.unit === 'fragment') return null;
  const byRow = new Map(prepared.all.id.map((id, row) => [id, suggestedItem[row]]));
  const withItems = { ...fragments, item: fragments.id.map((id) => byRow.get(id) ?? id) };
  const objects = new Set(withItems.item).size;
  if (objects === fragments.rows) return null;
  return {
    what: `Counted by the ${printCount(objects, 'object')} that the numbers in the tables seem to name`,
    open: 'what counts as one',
    hangsOn:
      'Cannot be told yet: counted by fragments and by the objects that their numbers seem to name, the answers differ.',
    next: 'Confirm which column names the object ("witness" in the study, or on Sources).',
    prepared: () => ({
      ...prepared,
      unit: 'item',
      witness: { ...witness, status: 'confirmed' },
      fragments: withItems,
      records: viewItems(withItems, prepared.register),
      n: { ...prepared.n, items: objects },
    }),
  };
}

function certainAlone(prepared: Material, used: readonly string[]): WhatIf | null {
  const { fragments, register } = prepared;
  const doubtful = used.filter((id) => uncertainRows(fragments, id).length > 0);
  const rows = new Set(doubtful.flatMap((id) => uncertainRows(fragments, id)));
  if (rows.size === 0 || rows.size === fragments.rows) return null;
  const labels = printList(doubtful.map((id) => inSentence(register.attributes.get(id)?.label ?? id)));
  return {
    what: `Of ${printCount(fragments.rows - rows.size, 'unmarked fragment')} alone, without ${rows.size} marked as doubtful (${labels})`,
    open: 'doubtful attributions',
    hangsOn: 'Cannot be told yet: with and without the attributions marked as doubtful, the answers differ.',
    next: `Settle the doubtful attributions of ${labels}, or select certain ones ("certainty" in a condition).`,
    prepared: () => {
      const kept = Array.from({ length: fragments.rows }, (_, row) => row).filter((row) => !rows.has(row));
      const certain = viewRows(fragments, kept);
      const items = new Set(certain.item).size;
      return {
        ...prepared,
        fragments: certain,
        records: prepared.unit === 'item' ? viewItems(certain, prepared.register) : certain,
        n: { ...prepared.n, fragments: certain.rows, items },
      };
    },
  };
}

function uncertainRows(table: FragmentTable, id: string): readonly number[] {
  const column = table.columns.get(id);
  if (column?.kind !== 'term') return [];
  return Array.from(column.codes.keys()).filter((row) => isUncertain(column, row));
}

function isUncertain({ codes, certainty }: TermColumn, row: number): boolean {
  return codes[row] >= 0 && certainty[row] > 0;
}
