import type { Condensed } from '../dissimilarity/condensed.ts';

export interface KnownRecords {
  /** Rows kept, ascending: every pair among them is known. */
  readonly kept: Int32Array;
  /** Rows set aside, ascending, each with the number of records that it could not be compared with. */
  readonly setAside: readonly { readonly row: number; readonly unknown: number }[];
}

/**
 * Which records must be set aside so that every remaining pair has a dissimilarity?
 *
 * The rule: the record with most unknown pairs goes first (of equals the later one), its pairs are struck
 * out, and so on until none is unknown; then every record that has gone is put back, first gone first, if
 * all its pairs with the kept ones are known. So no record is set aside without need (the set cannot be
 * made smaller by putting one back); that no other, smaller set exists is not promised, since finding the
 * smallest of all is the vertex-cover problem (Karp 1972). O(n²).
 */
export function knownRecords(matrix: Condensed): KnownRecords {
  const { n, values } = matrix;
  const strangers = new Map<number, number[]>();
  let place = 0;
  for (let i = 0; i < n; i++) {
    for (let j = i + 1; j < n; j++) {
      if (!Number.isNaN(values[place++])) continue;
      listOf(strangers, i).push(j);
      listOf(strangers, j).push(i);
    }
  }
  const open = new Map([...strangers].map(([row, others]) => [row, others.length]));
  const gone = new Set<number>();
  for (;;) {
    let worst = -1;
    for (const [row, count] of open) {
      const most = worst < 0 ? 0 : (open.get(worst) ?? 0);
      if (count > most || (count === most && count > 0 && row > worst)) worst = row;
    }
    if (worst < 0) break;
    gone.add(worst);
    open.delete(worst);
    for (const other of strangers.get(worst) ?? []) {
      const count = open.get(other);
      if (count !== undefined) open.set(other, count - 1);
    }
  }
  for (const row of [...gone]) {
    if ((strangers.get(row) ?? []).every((other) => gone.has(other))) gone.delete(row);
  }
  const kept = Int32Array.from({ length: n - gone.size }, () => 0);
  let next = 0;
  for (let row = 0; row < n; row++) if (!gone.has(row)) kept[next++] = row;
  const setAside = [...gone]
    .sort((a, b) => a - b)
    .map((row) => ({ row, unknown: strangers.get(row)?.length ?? 0 }));
  return { kept, setAside };
}

/** Grouping needs every pair: RangeError naming the function that was given an unknown one. */
export function requireKnown(matrix: Condensed, caller: string): void {
  if (!Number.isNaN(sum(matrix.values))) return;
  throw new RangeError(
    `${caller} needs every dissimilarity to be known; set records aside with knownRecords first`,
  );
}

/** NaN if one of the numbers is: four sums side by side cost a sixth of asking each number. */
function sum(values: Float64Array): number {
  let first = 0;
  let second = 0;
  let third = 0;
  let fourth = 0;
  let place = 0;
  for (; place + 3 < values.length; place += 4) {
    first += values[place];
    second += values[place + 1];
    third += values[place + 2];
    fourth += values[place + 3];
  }
  for (; place < values.length; place++) first += values[place];
  return first + second + third + fourth;
}

function listOf(lists: Map<number, number[]>, key: number): number[] {
  const known = lists.get(key);
  if (known !== undefined) return known;
  const list: number[] = [];
  lists.set(key, list);
  return list;
}
