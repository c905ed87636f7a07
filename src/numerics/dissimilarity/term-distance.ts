/**
 * How far apart two terms of a hierarchy are: 1 minus the similarity of Wu & Palmer 1994, "Verb
 * semantics and lexical selection", Proc. 32nd ACL, p. 136: 2 N3 / (N1 + N2 + 2 N3), where N1 and N2 are
 * the steps from each term up to the narrowest term that holds both, and N3 the number of terms from
 * that one up to the root, both counted. A root therefore has N3 = 1, and two terms that share no
 * root are 1 apart.
 *
 * So a term stands between its own kinds and the rest: for root > a > (b, c), b to c is 1 - 4/6 = 1/3
 * and b to its parent a is 1 - 4/5 = 1/5.
 *
 * @param parents place of each term's parent, -1 for a root; a loop is an error.
 * @returns levels * levels distances, row by row.
 */
export function termDistances(parents: ArrayLike<number>): Float64Array {
  const levels = parents.length;
  const paths = Array.from({ length: levels }, (_, term) => pathFromRoot(parents, term));
  const between = new Float64Array(levels * levels);
  for (let a = 0; a < levels; a++) {
    for (let b = a + 1; b < levels; b++) {
      const shared = sharedStart(paths[a], paths[b]);
      const distance = 1 - (2 * shared) / (paths[a].length + paths[b].length);
      between[a * levels + b] = distance;
      between[b * levels + a] = distance;
    }
  }
  return between;
}

function pathFromRoot(parents: ArrayLike<number>, term: number): readonly number[] {
  const path: number[] = [];
  for (let at = term; at >= 0; at = parents[at]) {
    if (path.length > parents.length) throw new RangeError(`termDistances: term ${term} is its own ancestor`);
    path.push(at);
  }
  return path.reverse();
}

/** Number of terms that both paths begin with: N3. The lengths of the paths are N1 + N3 and N2 + N3. */
function sharedStart(a: readonly number[], b: readonly number[]): number {
  let count = 0;
  while (count < a.length && count < b.length && a[count] === b[count]) count++;
  return count;
}

/** Kinds without any order or hierarchy: the same or not (simple matching). */
export function kindDistances(levels: number): Float64Array {
  const between = new Float64Array(levels * levels).fill(1);
  for (let level = 0; level < levels; level++) between[level * levels + level] = 0;
  return between;
}
