import { ancestors, isWithin, lowestCommon } from '../../attributes/tree.ts';
import { greatest } from '../../numerics/foundation/lists.ts';
import type { Placed } from './clauses.ts';
import { type Lexicon, type Sense, sameSets } from './lexicon.ts';
import { type Rest, unused } from './said.ts';

/** The structure that words name outright, which decides what the others mean; null where none does. */
export function structureOf(terms: readonly Placed[], lexicon: Lexicon): string | null {
  const main = lexicon.attribute.id;
  const free = terms.filter(
    ({ senses, denied }) =>
      denied === 'no' && senses.every(({ when, alone }) => when === undefined && !alone),
  );
  const name = (weak: boolean) =>
    free.flatMap(({ senses }) =>
      senses.filter((sense) => sense.weak === weak).flatMap(({ sets }) => sets.get(main) ?? []),
    );
  const strong = name(false);
  const named = strong.length > 0 ? strong : name(true);
  if (named.length > 0) return common(named, lexicon);
  // Words that may be a structure or a side of one are a structure where nothing else is.
  const loose = terms
    .filter(({ denied }) => denied === 'no')
    .flatMap(({ senses }) =>
      senses
        .filter(({ when, alone }) => when === undefined && !alone)
        .flatMap(({ sets }) => sets.get(main) ?? []),
    );
  return loose.length > 0 ? common(loose, lexicon) : null;
}

/** The narrowest of terms that hold one another, else what they have in common. */
function common(terms: readonly string[], { vocabulary }: Lexicon): string | null {
  const narrowest = terms.find((term) => terms.every((other) => isWithin(vocabulary, term, other)));
  return (
    narrowest ??
    terms.reduce<string | null>((a, b) => (a === null ? null : lowestCommon(vocabulary, a, b)), terms[0]!)
  );
}

/** A wording without the senses that hang on another word which is not there. */
export function besides(term: Placed, terms: readonly Placed[]): Placed {
  const told = (facet: string) =>
    terms.some((other) => other !== term && other.senses.some(({ sets }) => sets.has(facet)));
  return {
    ...term,
    senses: term.senses.filter(({ beside }) => beside === undefined || told(beside)),
  };
}

/** What a wording means beside this structure; null where it means nothing there. */
export function choose({ senses, text }: Placed, structure: string | null, lexicon: Lexicon): Sense | null {
  const { vocabulary, attribute } = lexicon;
  const bound = senses.filter(({ when }) => when !== undefined);
  if (structure !== null) {
    const fits = (sense: Sense, ancestor: string) => {
      const own = sense.sets.get(attribute.id);
      return (
        isWithin(vocabulary, structure, ancestor) ||
        (own !== undefined && isWithin(vocabulary, own, structure))
      );
    };
    const depth = (sense: Sense) =>
      greatest(
        (sense.when ?? []).filter((one) => fits(sense, one)).map((one) => ancestors(vocabulary, one).length),
      );
    const met = bound
      .filter((sense) => sense.when!.some((one) => fits(sense, one)))
      .sort((a, b) => depth(b) - depth(a));
    if (met[0] !== undefined) return met[0];
    return senses.find(({ when, alone }) => when === undefined && !alone) ?? null;
  }
  const free = senses.find(({ when }) => when === undefined);
  if (free !== undefined) return free;
  // Without a structure a letter says nothing, and a word only what it says beside any.
  if (text.replace(/[^\p{L}]/gu, '').length < 3) return null;
  const [first] = bound;
  return first !== undefined && bound.every(({ sets }) => sameSets(sets, first.sets)) ? first : null;
}

export function unfit(term: Placed, structure: string | null, { vocabulary }: Lexicon): Rest {
  const label = vocabulary.terms.find(({ id }) => id === structure)?.label;
  const why =
    label === undefined
      ? 'what it means hangs on the structure'
      : `it says nothing of "${label}" that is known`;
  return unused(term.text, why);
}

export function asked(term: Placed, sense: Sense): Rest {
  const name = sense.suggests === undefined ? '' : `; as a rule ${sense.suggests} is meant`;
  return {
    text: term.text,
    rule: 'ambiguous-word',
    why: `"${term.text}" is ambiguous: ${sense.asks}${name}`,
    ...(sense.suggests === undefined ? {} : { meant: sense.suggests }),
  };
}
