import type { Vocabulary } from './definition.ts';

/** Walking a vocabulary: every term has at most one parent, roots have none. */

interface Tree {
  readonly index: ReadonlyMap<string, number>;
  readonly parents: Int32Array;
}

const trees = new WeakMap<Vocabulary, Tree>();

function treeOf(vocabulary: Vocabulary): Tree {
  const known = trees.get(vocabulary);
  if (known !== undefined) return known;
  const index = new Map(vocabulary.terms.map((term, position) => [term.id, position]));
  const parents = Int32Array.from(vocabulary.terms, (term) =>
    term.parent === undefined ? -1 : (index.get(term.parent) ?? -1),
  );
  const tree = { index, parents };
  trees.set(vocabulary, tree);
  return tree;
}

/**
 * The broader terms of a term, nearest first, the term itself left out. Empty for a root and for an
 * id that the vocabulary does not hold.
 */
export function ancestors(vocabulary: Vocabulary, id: string): readonly string[] {
  const { index, parents } = treeOf(vocabulary);
  const found: string[] = [];
  let at = parents[index.get(id) ?? -1] ?? -1;
  while (at >= 0 && found.length < vocabulary.terms.length) {
    found.push(vocabulary.terms[at]!.id);
    at = parents[at]!;
  }
  return found;
}

/** Whether a term is the ancestor itself or stands anywhere below it. */
export function isWithin(vocabulary: Vocabulary, id: string, ancestor: string): boolean {
  return id === ancestor || ancestors(vocabulary, id).includes(ancestor);
}

/** A term and all that stand below it, in the order of the vocabulary. */
export function withDescendants(vocabulary: Vocabulary, id: string): readonly string[] {
  return vocabulary.terms.filter((term) => isWithin(vocabulary, term.id, id)).map((term) => term.id);
}

/** The narrowest term that holds both; null where they share no ancestor. A term holds itself. */
export function lowestCommon(vocabulary: Vocabulary, a: string, b: string): string | null {
  const { index } = treeOf(vocabulary);
  if (!index.has(a) || !index.has(b)) return null;
  const above = new Set([a, ...ancestors(vocabulary, a)]);
  return [b, ...ancestors(vocabulary, b)].find((id) => above.has(id)) ?? null;
}

/** For each term, in the vocabulary's order, the position of its parent; -1 for a root. */
export function parentIndices(vocabulary: Vocabulary): Int32Array {
  return treeOf(vocabulary).parents.slice();
}

/** Steps from the root: a root has depth 1. 0 for an id that the vocabulary does not hold. */
export function depth(vocabulary: Vocabulary, id: string): number {
  return treeOf(vocabulary).index.has(id) ? ancestors(vocabulary, id).length + 1 : 0;
}
