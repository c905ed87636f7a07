import type { Random } from '../../numerics/foundation/random.ts';
import { adjustedRand, contingency } from '../../numerics/grouping/agreement.ts';
import { bestJaccard } from '../../numerics/grouping/stability.ts';
import type { Unavailable } from '../contract.ts';
import { type Compared, takeCompared } from './compared.ts';
import type { Partition } from './found.ts';
import { type How, partitionsOf } from './partition.ts';
import type { LeftOut } from './trust-found.ts';

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
export const DISSOLVED = 0.5;

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
        gone: Array.from(found.keys()).filter((group) => !(found[group] > DISSOLVED)),
      },
    ];
  });
}
