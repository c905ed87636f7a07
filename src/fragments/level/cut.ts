import type { Register, Vocabulary } from '../../attributes/definition.ts';
import { ancestors } from '../../attributes/tree.ts';
import type { FragmentTable, TermColumn } from '../table.ts';
import { plainIn } from '../told-apart.ts';

/** Where the tree of a vocabulary is cut: how deep each of what is compared was recorded, and the finest cut that all reach. */

/** What is compared, by its first label. */
export type Groups = readonly { readonly labels: readonly string[]; readonly rows: readonly number[] }[];

export interface TermCounts {
  /** Term -> what is compared -> records that stand at the term and say no more (broad), and all at or under it. */
  readonly broad: ReadonlyMap<string, Float64Array>;
  readonly under: ReadonlyMap<string, Float64Array>;
  /** Whether the term of a row is meant as a kind of its own: its catalogue tells the named forms apart. */
  readonly isPlain: (row: number) => boolean;
  readonly childrenOf: ReadonlyMap<string | undefined, readonly string[]>;
}

export function countTree(
  column: TermColumn,
  vocabulary: Vocabulary,
  table: FragmentTable,
  groups: Groups,
  register: Register,
): TermCounts {
  const childrenOf = new Map<string | undefined, string[]>();
  for (const { id, parent } of vocabulary.terms) {
    const siblings = childrenOf.get(parent);
    if (siblings === undefined) childrenOf.set(parent, [id]);
    else siblings.push(id);
  }
  const isPlain = plainIn(column, vocabulary, table, register);
  const zero = () => new Map(vocabulary.terms.map(({ id }) => [id, new Float64Array(groups.length)]));
  const [broad, under] = [zero(), zero()];
  groups.forEach(({ rows }, place) => {
    for (const row of rows) {
      if (column.codes[row] < 0) continue;
      const term = column.levels[column.codes[row]];
      if (!isPlain(row)) add(broad, term, place);
      for (const id of [term, ...ancestors(vocabulary, term)]) add(under, id, place);
    }
  });
  return { broad, under, isPlain, childrenOf };
}

function add(counts: ReadonlyMap<string, Float64Array>, term: string, place: number): void {
  const own = counts.get(term);
  if (own !== undefined) own[place]++;
}

/** `kind`: all under the term counts as one; `split`: its narrower terms are told apart; `free`: it stands as recorded. */
export type Cut = (term: string) => 'split' | 'kind' | 'free';

export function commonCut(
  vocabulary: Vocabulary,
  { broad, under, childrenOf }: TermCounts,
  groups: number,
  tolerance: number,
): Cut {
  const split = new Set<string>();
  const visit = (term: string) => {
    const children = childrenOf.get(term) ?? [];
    const [own, all] = [broad.get(term), under.get(term)];
    if (children.length === 0 || own === undefined || all === undefined) return;
    for (let place = 0; place < groups; place++) if (own[place] > tolerance * all[place]) return;
    split.add(term);
    for (const child of children) visit(child);
  };
  for (const { id, parent } of vocabulary.terms) if (parent === undefined) visit(id);
  return (term) => (split.has(term) ? 'split' : 'kind');
}

/** A named term is a kind and every term above it is split; what lies beside them stands as recorded. */
export function givenCut(vocabulary: Vocabulary, terms: readonly string[]): Cut {
  const kinds = new Set(terms);
  const split = new Set(terms.flatMap((term) => ancestors(vocabulary, term)));
  return (term) => (kinds.has(term) ? 'kind' : split.has(term) ? 'split' : 'free');
}
