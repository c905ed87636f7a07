import type { Register, Vocabulary } from '../attributes/definition.ts';
import { ancestors, isWithin } from '../attributes/tree.ts';
import { groupRows, termLabel } from './groups.ts';
import type { FragmentTable, TermColumn } from './table.ts';
import { plainIn } from './told-apart.ts';

/**
 * Catalogues name things to different depths: one writes "twining" where another tells open from close. Counted as
 * they stand, the broad word would be a kind of its own and the two catalogues would differ by their words alone.
 * The common level is the finest cut through the tree of a vocabulary to which everything compared was recorded.
 */

/** `common`: the finest cut that all record; `recorded`: as the words stand; or the terms of a cut of one's own. */
export type Level = 'common' | 'recorded' | readonly string[];

/** A broader term that stands for all its narrower ones, since somebody recorded no further. */
export interface Fold {
  readonly term: string;
  readonly label: string;
  /** It may be meant as a kind of its own: the profile of a catalogue that tells its named forms apart can say so. */
  readonly mayBePlain: boolean;
  /** Labels of the narrower terms that were recorded, and are now counted as this one. */
  readonly narrower: readonly string[];
  /** Records that were named more narrowly. */
  readonly records: number;
  /** What is compared that does not tell the narrower ones, worst first: how many of its records say no more. */
  readonly because: readonly { readonly label: string; readonly broad: number; readonly of: number }[];
}

/** Records that say less than the level, too few to fold it: they are left out, and bound the shares. */
export interface TooBroad {
  readonly term: string;
  readonly label: string;
  readonly rows: readonly number[];
  /** Kinds of the level that each of them could be. */
  readonly couldBe: readonly string[];
}

export interface LevelFound {
  readonly attribute: string;
  /** The table with the attribute counted at the level; the very table that was given where nothing changes. */
  readonly table: FragmentTable;
  readonly folds: readonly Fold[];
  readonly tooBroad: readonly TooBroad[];
  /** Whether the level is other than what was recorded. */
  readonly differs: boolean;
}

export interface LevelSettings {
  readonly level?: Level;
  /** Largest share of broad records under a branch, in what is compared, that folds nothing. */
  readonly tolerance?: number;
}

/** A tenth of an assemblage's records under a branch may be broader without folding it. */
export const BROAD_TOLERANCE = 0.1;

/**
 * @param attribute whose kinds are compared; any but one of kinds with a hierarchy is returned as it is.
 * @param across the attribute whose groups are compared ("site", "assemblage" …). Records without a value of it,
 * and those of no vocabulary term, take no part in choosing the level but are counted at it.
 */
export function atLevel(
  table: FragmentTable,
  attribute: string,
  across: string,
  register: Register,
  settings: LevelSettings = {},
): LevelFound {
  return atLevelOf(table, attribute, groupRows(table, [across], register).groups, register, settings);
}

/** The same for groups that no column names, such as types made by rules. */
export function atLevelOf(
  table: FragmentTable,
  attribute: string,
  groups: Groups,
  register: Register,
  { level = 'common', tolerance = BROAD_TOLERANCE }: LevelSettings = {},
): LevelFound {
  const column = table.columns.get(attribute);
  const name = register.attributes.get(attribute)?.vocabulary;
  const vocabulary = name === undefined ? undefined : register.vocabularies.get(name);
  const asIs: LevelFound = { attribute, table, folds: [], tooBroad: [], differs: false };
  if (column?.kind !== 'term' || vocabulary === undefined || level === 'recorded') return asIs;
  const tree = countTree(column, vocabulary, table, groups, register);
  const cut =
    level === 'common' ? commonCut(vocabulary, tree, groups.length, tolerance) : givenCut(vocabulary, level);
  return recode(asIs, column, vocabulary, tree, cut, groups, register);
}

/** The same for several attributes at once; those of no hierarchy are left as they are. */
export function allAtLevel(
  table: FragmentTable,
  attributes: readonly string[],
  across: string,
  register: Register,
  settings: LevelSettings = {},
): Pick<LevelFound, 'table' | 'folds' | 'tooBroad' | 'differs'> {
  const none = { table, folds: [], tooBroad: [], differs: false };
  return attributes.reduce<ReturnType<typeof allAtLevel>>((all, attribute) => {
    if (attribute === across) return all;
    const one = atLevel(all.table, attribute, across, register, settings);
    return {
      table: one.table,
      folds: [...all.folds, ...one.folds],
      tooBroad: [...all.tooBroad, ...one.tooBroad],
      differs: all.differs || one.differs,
    };
  }, none);
}

interface Counted {
  /** Term -> what is compared -> records that stand at the term and say no more (broad), and all at or under it. */
  readonly broad: ReadonlyMap<string, Float64Array>;
  readonly under: ReadonlyMap<string, Float64Array>;
  /** Whether the term of a row is meant as a kind of its own: its catalogue tells the named forms apart. */
  readonly isPlain: (row: number) => boolean;
  readonly childrenOf: ReadonlyMap<string | undefined, readonly string[]>;
}

/** What is compared, by its first label. */
export type Groups = readonly { readonly labels: readonly string[]; readonly rows: readonly number[] }[];

function countTree(
  column: TermColumn,
  vocabulary: Vocabulary,
  table: FragmentTable,
  groups: Groups,
  register: Register,
): Counted {
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
type Cut = (term: string) => 'split' | 'kind' | 'free';

function commonCut(
  vocabulary: Vocabulary,
  { broad, under, childrenOf }: Counted,
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
function givenCut(vocabulary: Vocabulary, terms: readonly string[]): Cut {
  const kinds = new Set(terms);
  const split = new Set(terms.flatMap((term) => ancestors(vocabulary, term)));
  return (term) => (kinds.has(term) ? 'kind' : split.has(term) ? 'split' : 'free');
}

function recode(
  asIs: LevelFound,
  column: TermColumn,
  vocabulary: Vocabulary,
  { broad, under, isPlain, childrenOf }: Counted,
  cut: Cut,
  groups: Groups,
  register: Register,
): LevelFound {
  const labelOf = (id: string) => termLabel(column.attribute, id, register);
  const known = new Map(vocabulary.terms.map((term) => [term.id, term]));
  // The broadest term on the way down that is counted as one stands for everything under it.
  const kindOf = (term: string) =>
    [term, ...ancestors(vocabulary, term)].reverse().find((id) => cut(id) === 'kind') ?? term;
  const levels = [...column.levels];
  const places = new Map(levels.map((level, place) => [level, place]));
  const placeOf = (term: string) => {
    const own = places.get(term) ?? levels.push(term) - 1;
    places.set(term, own);
    return own;
  };
  const codes = Int32Array.from(column.codes);
  const folded = new Map<string, { narrower: Set<string>; records: number }>();
  const leftOut = new Map<string, number[]>();
  column.codes.forEach((code, row) => {
    const term = column.levels[code];
    if (code < 0 || !known.has(term)) return;
    const kind = kindOf(term);
    if (kind !== term) {
      const fold = folded.get(kind) ?? { narrower: new Set<string>(), records: 0 };
      fold.narrower.add(term);
      fold.records++;
      folded.set(kind, fold);
      codes[row] = placeOf(kind);
    } else if (cut(term) === 'split' && (childrenOf.get(term) ?? []).length > 0 && !isPlain(row)) {
      codes[row] = -1;
      const rows = leftOut.get(term);
      if (rows === undefined) leftOut.set(term, [row]);
      else rows.push(row);
    }
  });
  if (folded.size === 0 && leftOut.size === 0) return asIs;
  const folds = [...folded].map(([term, { narrower, records }]) => ({
    term,
    label: labelOf(term),
    mayBePlain: known.get(term)?.inner === 'variants',
    narrower: [...narrower].map(labelOf),
    records,
    because: groups
      .map(({ labels }, place) => ({
        label: labels[0],
        broad: broad.get(term)?.[place] ?? 0,
        of: under.get(term)?.[place] ?? 0,
      }))
      .filter((one) => one.broad > 0)
      .sort((a, b) => b.broad / b.of - a.broad / a.of),
  }));
  const present = new Set([...codes].filter((code) => code >= 0).map((code) => levels[code]));
  const tooBroad = [...leftOut].map(([term, rows]) => ({
    term,
    label: labelOf(term),
    rows,
    couldBe: [...present].filter((id) => isWithin(vocabulary, id, term)).map(labelOf),
  }));
  const columns = new Map(asIs.table.columns);
  columns.set(asIs.attribute, { ...column, codes, levels });
  return { ...asIs, table: { ...asIs.table, columns }, folds, tooBroad, differs: true };
}
