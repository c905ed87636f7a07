import type { Register, Synonyms, Vocabulary } from './definition.ts';
import { lookupKey, splitWords } from './folding.ts';
import { splitHeader, type UnitKind, unitKind } from './header.ts';
import { prepareWording, type Wording } from './likeness.ts';

/** Every known wording of a register's attributes and of a vocabulary's terms, folded once for many look-ups. */

export interface Known {
  readonly id: string;
  readonly via: string;
  readonly wording: Wording;
  /** What the unit beside the wording must measure, where the wording says so ("Kette/cm"). */
  readonly unit: UnitKind | undefined;
}

export interface WordingIndex {
  /** Lookup key -> the wordings that fold to it. */
  readonly exact: ReadonlyMap<string, readonly Known[]>;
  readonly all: readonly Known[];
  /** Words with which a part of a compound may begin and end. */
  readonly parts: ReadonlySet<string>;
}

/** What a header without its unit is looked up under. */
export function headerKey(name: string): string {
  return lookupKey(splitWords(name));
}

/** "no" and "nr" are words, and ends of many others. */
const SHORTEST_PART = 2;

const headerIndices = new WeakMap<Register, WordingIndex>();
const termIndices = new WeakMap<Vocabulary, WordingIndex>();

export function headerIndex(register: Register): WordingIndex {
  const cached = headerIndices.get(register);
  if (cached !== undefined) return cached;
  const fed = [...register.attributes.values()].filter(({ composed }) => composed !== true);
  const known = fed.flatMap((attribute) =>
    wordingsOf(attribute.id, attribute.label, attribute.synonyms).map((via): Known & { key: string } => {
      const { name, unit } = splitHeader(via);
      const kind = unit === undefined ? undefined : unitKind(unit);
      return {
        id: attribute.id,
        via,
        unit: kind,
        key: headerKey(name),
        wording: prepareWording(splitWords(name)),
      };
    }),
  );
  const index = buildIndex(known);
  headerIndices.set(register, index);
  return index;
}

export function termIndex(vocabulary: Vocabulary): WordingIndex {
  const cached = termIndices.get(vocabulary);
  if (cached !== undefined) return cached;
  const known = (id: string, wordings: readonly string[]) =>
    wordings.map((via) => ({
      id,
      via,
      unit: undefined,
      key: lookupKey(via),
      wording: prepareWording(via),
    }));
  // Terms come last, so that they stand first under a wording that a named description shares with them.
  const index = buildIndex([
    ...(vocabulary.words ?? []).flatMap(({ id, label, synonyms }) =>
      id === undefined ? [] : known(id, wordingsOf(id, label ?? id, synonyms)),
    ),
    ...vocabulary.terms.flatMap((term) => known(term.id, wordingsOf(term.id, term.label, term.synonyms))),
  ]);
  termIndices.set(vocabulary, index);
  return index;
}

/** Later entries stand first under a key, so that what a study adds wins over the defaults. */
function buildIndex(known: readonly (Known & { readonly key: string })[]): WordingIndex {
  const exact = new Map<string, Known[]>();
  for (const entry of known) {
    if (entry.key === '') continue;
    const before = exact.get(entry.key);
    if (before === undefined) exact.set(entry.key, [entry]);
    else before.unshift(entry);
  }
  const parts = new Set(
    known.flatMap(({ wording }) => wording.words.filter((word) => word.length >= SHORTEST_PART)),
  );
  return { exact, all: known, parts };
}

/** Every wording of a term or attribute: label, id and the synonyms of all languages. */
export function wordingsOf(id: string, label: string, synonyms: Synonyms = {}): readonly string[] {
  return [...new Set([label, id, ...Object.values(synonyms).flat()])];
}
