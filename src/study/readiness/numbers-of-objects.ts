import { printCount, printList } from '../../analyses/phrasing.ts';
import { inOneSpelling } from '../../sources/names/near-names.ts';
import { nameIn } from '../../sources/reading/assemble.ts';
import type { Prepared } from '../prepare.ts';
import type { ReadinessLine } from '../results/results.ts';

/** Columns that give a number to the object, in the order in which objects are told by them. */
const NUMBERING = ['item', 'fragment', 'catalogueNumber'] as const;

/**
 * How numbers became objects: a number that stands at several sites or in several contexts is one object in each,
 * since numbers restart there as a rule; nobody sees it in the count of objects alone.
 */
export function numbersLine(prepared: Prepared): readonly ReadinessLine[] {
  const { all, suggestedItem, witness, study } = prepared;
  const column = NUMBERING.map((id) => all.columns.get(id)).find((one) => one !== undefined);
  if (column === undefined || witness.status === 'absent' || study.witness?.is === 'row') return [];
  const sites = inOneSpelling(
    'site',
    all.origin.map((_, row) => nameIn(all.columns.get('site'), row)),
    study.names,
  );
  const rowsOf = new Map<string, number[]>();
  for (const [row, { source }] of all.origin.entries()) {
    const name = nameIn(column, row);
    if (name === '') continue;
    const key = JSON.stringify([source, name]);
    const rows = rowsOf.get(key);
    if (rows === undefined) rowsOf.set(key, [row]);
    else rows.push(row);
  }
  const objects = new Set([...rowsOf.values()].flat().map((row) => suggestedItem[row]));
  const several = [...rowsOf.values()].filter(
    (rows) => new Set(rows.map((row) => suggestedItem[row])).size > 1,
  );
  if (several.length === 0 || objects.size <= rowsOf.size) return [];
  const atSites = several.filter((rows) => new Set(rows.map((row) => sites[row])).size > 1).length;
  const where = [
    ...(atSites > 0 ? [standing(atSites, 'at several sites')] : []),
    ...(several.length > atSites ? [standing(several.length - atSites, 'in several contexts')] : []),
  ];
  const many = witness.status === 'confirmed' ? witness.many : 'objects';
  return [
    {
      topic: 'witness',
      state: 'mind',
      says: `${printCount(rowsOf.size, 'number')} became ${objects.size} ${many} because ${printList(where)} ("itemNumbers"), where numbers restart as a rule.`,
      mend: 'If a number is one object wherever it stands, say "itemNumbers": "everywhere" in the profile of its table.',
    },
  ];
}

const standing = (numbers: number, where: string): string =>
  `${numbers} ${numbers === 1 ? 'stands' : 'stand'} ${where}`;
