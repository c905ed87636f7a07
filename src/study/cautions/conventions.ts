import { printCount } from '../../analyses/phrasing.ts';
import { termAt } from '../../fragments/accessors.ts';
import type { FragmentTable } from '../../fragments/table.ts';

/** What to mind about conventions of recording: how rows were held, what was read, which system is the warp. */
export function conventionCautions(table: FragmentTable): string[] {
  const count = (id: string, test: (term: string) => boolean): number => {
    const column = table.columns.get(id);
    if (column?.kind !== 'term') return 0;
    let n = 0;
    for (let row = 0; row < table.rows; row++) {
      const term = termAt(column, row);
      if (term !== null && test(term)) n++;
    }
    return n;
  };
  const cautions: string[] = [];
  const letter = (term: string) => term === 'S' || term === 'Z';
  const open = (term: string) => term === 'sUnread' || term === 'zUnread';
  const apart = count('rowSlant', open);
  const slanted = count('rowSlant', letter);
  if (apart > 0) {
    cautions.push(
      `Slant: of ${apart} of ${apart + slanted} readings nothing says how the row was held, or whether an impression ` +
        'was read; these are kept apart, because a quarter turn or a mirror image makes S of Z.',
    );
  } else if (slanted > 0 && count('slantReading', () => true) === 0) {
    cautions.push(
      'Slant: no source says whether the row was held upright or lay across when S or Z was read; the letters are compared as they are written.',
    );
  }
  const unread = count('twist1', open) + count('twist2', open);
  if (unread > 0) {
    cautions.push(
      `Twist: ${unread} ${unread === 1 ? 'reading of an impression does' : 'readings of impressions do'} not say whether the impression or a cast was read; kept apart.`,
    );
  }
  const untold = count('orientation', (term) => term === 'untold');
  const told = count('orientation', (term) => term !== 'untold');
  if (untold > 0 && told > 0) {
    cautions.push(
      `Systems: of ${printCount(untold, 'find')} nothing tells warp from weft, so the denser system there counts as system 1; ${told === 1 ? 'one other has its own' : `${told} others have theirs`} as recorded. Compare the two sorts by the counts of the denser and the sparser system.`,
    );
  }
  return cautions;
}
