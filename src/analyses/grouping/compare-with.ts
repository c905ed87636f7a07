import type { Register } from '../../attributes/definition.ts';
import { groupRows } from '../../fragments/groups.ts';
import type { FragmentTable } from '../../fragments/table.ts';
import {
  adjustedMutualInformation,
  adjustedRand,
  contingency,
  matchGroups,
  vMeasure,
} from '../../numerics/grouping/agreement.ts';
import type { Agreement } from './found.ts';

/** How far do the groups agree with a recorded classification? InputError where it is a number. */
export function agreementWith(
  table: FragmentTable,
  rows: ArrayLike<number>,
  membership: ArrayLike<number>,
  groups: number,
  id: string,
  register: Register,
): Agreement {
  const kinds = groupRows(table, [id], register).groups;
  const kindOf = new Int32Array(table.rows).fill(-1);
  for (const [kind, { rows: members }] of kinds.entries()) for (const row of members) kindOf[row] = kind;
  const recorded = Int32Array.from(rows, (row) => kindOf[row]);
  const crossed = contingency(recorded, membership);
  const grouped = Array.from(membership).filter((group) => group >= 0).length;
  const match = matchGroups(crossed);
  const used = [...crossed.rowSums.keys()].filter((kind) => crossed.rowSums[kind] > 0);
  return {
    attribute: id,
    label: register.attributes.get(id)?.label ?? id,
    kinds: used.map((kind) => kinds[kind].labels[0]),
    counts: used.map((kind) =>
      Array.from({ length: groups }, (_, group) => crossed.counts[kind * crossed.columns + group] ?? 0),
    ),
    match: used.map((kind) => match[kind]),
    adjustedRand: adjustedRand(crossed),
    adjustedMutualInformation: adjustedMutualInformation(crossed),
    vMeasure: vMeasure(crossed),
    n: crossed.n,
    missing: grouped - crossed.n,
  };
}
