import type { Random } from '../../numerics/foundation/random.ts';
import { adjustedRand, contingency } from '../../numerics/grouping/agreement.ts';
import { bestJaccard } from '../../numerics/grouping/stability.ts';
import type { ResultTable, TableCell, Unavailable } from '../contract.ts';
import { printList, printNumber } from '../phrasing.ts';
import { type Compared, takeCompared } from './compared.ts';
import { type How, type Partition, partitionsOf } from './partition.ts';

/** What becomes of the groups when one assemblage had never been found. */
export interface LeftOut {
  readonly assemblage: string;
  /** Records of it. */
  readonly records: number;
  /** Agreement of the other records' groups with those that they form among themselves. */
  readonly adjustedRand: number | Unavailable;
  /** For each group the greatest Jaccard coefficient with a new one; null where it is all of this assemblage. */
  readonly groups: readonly (number | null)[];
}

export interface LeaveOutRequest {
  readonly compared: Compared;
  readonly chosen: Partition;
  /** Site and phase of each record, "" where it is not known. */
  readonly assemblages: readonly string[];
  readonly how: How;
  readonly random: Random;
  readonly onProgress: (share: number) => void;
}

/** More assemblages than this are the rule rather than a few who make the groups: the largest are left out. */
const MOST_ASSEMBLAGES = 60;
/** A group whose best match is this or less has dissolved (Hennig 2007). */
const DISSOLVED = 0.5;

/**
 * Do the groups hang on a single assemblage? Each is left out in turn and the rest grouped anew into as many
 * groups by the same method; every group, cut down to the rest, is compared with its best match by Jaccard's
 * coefficient.
 */
export function leaveOneOut(request: LeaveOutRequest): readonly LeftOut[] | Unavailable {
  const { compared, chosen, assemblages, how, random } = request;
  const sizes = new Map<string, number>();
  for (const name of assemblages) if (name !== '') sizes.set(name, (sizes.get(name) ?? 0) + 1);
  if (sizes.size < 2) return { why: 'the records are of one assemblage, or theirs are not recorded' };
  const names = [...sizes].sort(([a, n], [b, m]) => m - n || (a < b ? -1 : 1)).slice(0, MOST_ASSEMBLAGES);
  const all = Int32Array.from({ length: assemblages.length }, (_, place) => place);
  return names.flatMap(([assemblage, records], step) => {
    request.onProgress(step / names.length);
    const rest = all.filter((place) => assemblages[place] !== assemblage);
    if (rest.length <= chosen.k) return [];
    const chance = random.stream(assemblage);
    const { partitions } = partitionsOf(takeCompared(compared, rest), how, chosen.k, chosen.k, chance);
    const again = partitions[0]?.membership ?? new Int32Array(rest.length).fill(-1);
    const before = rest.map((place) => chosen.membership[place]);
    const found = bestJaccard(chosen.membership, rest, again, chosen.k);
    return [
      {
        assemblage,
        records,
        adjustedRand: adjustedRand(contingency(before, again)),
        groups: Array.from(found, (value) => (Number.isNaN(value) ? null : value)),
      },
    ];
  });
}

export function leaveOutTable(left: readonly LeftOut[], k: number): ResultTable {
  return {
    title: 'Groups without one assemblage',
    columns: [
      { id: 'assemblage', label: 'left out' },
      { id: 'n', label: 'its records' },
      { id: 'adjustedRand', label: 'adjusted Rand index of the rest' },
      ...Array.from({ length: k }, (_, group) => ({ id: `group${group + 1}`, label: `group ${group + 1}` })),
    ],
    rows: left.map(({ assemblage, records, adjustedRand: agreement, groups }): TableCell[] => [
      assemblage,
      records,
      agreement,
      ...groups.map((value) => value ?? { why: 'the group lies wholly in this assemblage' }),
    ]),
    note:
      'The assemblage is left out and the rest grouped anew into as many groups: greatest Jaccard coefficient of each ' +
      'group (without that assemblage) with a new one; 0.5 or less counts as dissolved (Hennig 2007).',
  };
}

/** Which groups hang on one assemblage; "" where nothing was tried. */
export function leaveOutWords(left: readonly LeftOut[] | Unavailable): string {
  if ('why' in left || left.length === 0) return '';
  const broken = left.flatMap(({ assemblage, groups }) => {
    const gone = groups.flatMap((value, group) => (value === null || value <= DISSOLVED ? [group + 1] : []));
    return gone.length === 0
      ? []
      : [
          gone.length === 1
            ? `without ${assemblage} group ${gone[0]} dissolves`
            : `without ${assemblage} groups ${printList(gone.map(String))} dissolve`,
        ];
  });
  if (broken.length === 0) {
    const least = Math.min(...left.flatMap(({ groups }) => groups.filter((value) => value !== null)));
    return `No group hangs on one assemblage: left out in turn, every group is found again (least Jaccard ${printNumber(least, 2)})`;
  }
  const shown = broken.slice(0, 4);
  const more = broken.length - shown.length;
  return `Some groups hang on one assemblage: ${printList(shown)}${more > 0 ? `, and so on for ${more} more` : ''}`;
}
