import type {
  AttributeDefinition,
  DescriptionWord,
  Register,
  Vocabulary,
} from '../../attributes/definition.ts';
import { wordingsOf } from '../../attributes/wording-index.ts';
import { keyOf, tokens } from './tokens.ts';

/** One thing that a wording may say. */
export interface Sense {
  readonly sets: ReadonlyMap<string, string>;
  readonly when?: readonly string[];
  readonly alone: boolean;
  readonly weak: boolean;
  /** A structure named outright, but by what was made ("basketry"). */
  readonly vague?: true;
  /** Behind a word that is not known it may say what something is made of. */
  readonly ingredient?: true;
  /** A facet that another word has to tell before this one says anything. */
  readonly beside?: string;
  readonly asks?: string;
  readonly suggests?: string;
  /** The wording as the vocabulary has it. */
  readonly via: string;
}

/** Every wording by which the descriptions of one attribute speak, ready to be looked up. */
export interface Lexicon {
  readonly attribute: AttributeDefinition;
  readonly vocabulary: Vocabulary;
  /** The attribute itself, then its facets. */
  readonly facets: readonly AttributeDefinition[];
  /** The vocabularies of the facets, by id. */
  readonly trees: ReadonlyMap<string, Vocabulary>;
  readonly spelled: ReadonlyMap<string, readonly Sense[]>;
  readonly exact: ReadonlyMap<string, readonly Sense[]>;
  readonly stems: ReadonlyMap<string, readonly Sense[]>;
  /** Single words, for those that are cut short and for slips of spelling. */
  readonly words: readonly string[];
  readonly longest: number;
}

const lexicons = new WeakMap<Register, Map<string, Lexicon | null>>();

/** The words of an attribute's descriptions; null where no other attribute is a facet of it. */
export function lexiconOf(attribute: AttributeDefinition, register: Register): Lexicon | null {
  const known = lexicons.get(register) ?? new Map<string, Lexicon | null>();
  lexicons.set(register, known);
  const cached = known.get(attribute.id);
  if (cached !== undefined) return cached;
  const made = makeLexicon(attribute, register);
  known.set(attribute.id, made);
  return made;
}

/** The attributes that descriptions of an attribute tell beside it, in the order of the register. */
export function facetsOf(attribute: string, register: Register): readonly AttributeDefinition[] {
  return [...register.attributes.values()].filter(({ facet }) => facet?.of === attribute);
}

function makeLexicon(attribute: AttributeDefinition, register: Register): Lexicon | null {
  const vocabulary = register.vocabularies.get(attribute.vocabulary ?? '');
  const facets = facetsOf(attribute.id, register);
  if (vocabulary === undefined || facets.length === 0) return null;
  const spelled = new Map<string, Sense[]>();
  const exact = new Map<string, Sense[]>();
  const stems = new Map<string, Sense[]>();
  const words = new Set<string>();
  let longest = 1;
  const add = (via: string, sense: Omit<Sense, 'via'>, accented: boolean) => {
    const parts = tokens(via);
    const full: Sense = { ...sense, via };
    if (accented) push(spelled, keyOf(parts, 'spelled'), full);
    else {
      push(exact, keyOf(parts, 'folded'), full);
      push(stems, keyOf(parts, 'stem'), full);
      if (parts.length === 1 && parts[0]!.kind === 'word') words.add(parts[0]!.folded);
    }
    longest = Math.max(longest, parts.length);
  };
  for (const { id, label, synonyms, vague, ingredient } of vocabulary.terms) {
    const sense = {
      sets: new Map([[attribute.id, id]]),
      alone: false,
      weak: vague === true,
      ...(vague === true ? { vague } : {}),
      ...(ingredient === true ? { ingredient } : {}),
    };
    // What a bare order means hangs on the structure beside it: the words say so.
    for (const via of wordingsOf(id, label, synonyms)) if (!/^\d+\/\d+$/.test(via)) add(via, sense, false);
  }
  for (const entry of vocabulary.words ?? []) {
    for (const via of wordsOf(entry)) add(via, senseOf(entry), entry.accented === true);
  }
  for (const facet of facets) {
    // A facet whose terms hang on no other word of the description.
    const own = register.vocabularies.get(facet.vocabulary ?? '');
    if (own?.described === undefined) continue;
    for (const { id, label, synonyms } of own.terms) {
      const sets = new Map([[facet.id, id], ...Object.entries(own.described)]);
      const when = facet.appliesTo === undefined ? {} : { when: facet.appliesTo };
      for (const via of wordingsOf(id, label, synonyms)) {
        const known = exact.get(keyOf(tokens(via), 'folded')) ?? [];
        if (known.some((sense) => sense.sets.get(facet.id) === id)) continue;
        if (via === id || (label === 'none' && via === label)) continue;
        // "inserted" by itself is said of wefts too; "inserted pile" names what it is said of.
        const bare = tokens(via).length === 1 && !NAMES_PILE.test(via);
        const [needed] = bare ? Object.keys(own.described) : [];
        const beside = needed === undefined ? {} : { beside: needed };
        add(via, { sets, alone: false, weak: false, ...when, ...beside }, false);
      }
    }
  }
  const trees = register.vocabularies;
  return {
    attribute,
    vocabulary,
    facets: [attribute, ...facets],
    trees,
    spelled,
    exact,
    stems,
    words: [...words],
    longest,
  };
}

function senseOf({ sets, when, alone, weak, asks, suggests }: DescriptionWord): Omit<Sense, 'via'> {
  return {
    sets: new Map(Object.entries(sets)),
    alone: alone === true,
    weak: weak === true,
    ...(when === undefined ? {} : { when }),
    ...(asks === undefined ? {} : { asks }),
    ...(suggests === undefined ? {} : { suggests }),
  };
}

function wordsOf({ id, label, synonyms }: DescriptionWord): readonly string[] {
  return id === undefined ? Object.values(synonyms).flat() : wordingsOf(id, label ?? id, synonyms);
}

/** "Schlingenflor", "Einkettknoten": one word for the pile and how it is fixed. */
const NAMES_PILE = /(?:flor|luv|lo|pile|kno(?:ten|t|ts))$/iu;

/** Two wordings that fold alike and say the same are one. */
function push(index: Map<string, Sense[]>, key: string, sense: Sense): void {
  if (!/[\p{L}\d]/u.test(key)) return;
  const before = index.get(key) ?? [];
  if (!before.some((other) => sameSense(other, sense))) index.set(key, [...before, sense]);
}

export function sameSense(a: Sense, b: Sense): boolean {
  return (
    sameSets(a.sets, b.sets) &&
    a.alone === b.alone &&
    a.weak === b.weak &&
    a.asks === b.asks &&
    (a.when ?? []).join() === (b.when ?? []).join()
  );
}

export function sameSets(a: ReadonlyMap<string, string>, b: ReadonlyMap<string, string>): boolean {
  return a.size === b.size && [...a].every(([id, value]) => b.get(id) === value);
}
