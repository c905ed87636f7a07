import { ancestors, isWithin, lowestCommon } from '../../attributes/tree.ts';
import { greatest } from '../../numerics/foundation/lists.ts';
import type { Item } from './items.ts';
import type { Lexicon, Sense } from './lexicon.ts';

/** What a description, or one of its alternatives, says of a facet. */
export interface Said {
  readonly value: string | null;
  readonly state: 'measured' | 'not-observed' | 'absent';
  /** Steps of doubt. */
  readonly doubt: number;
  /** The words that said it. */
  readonly text: string;
  /** Values that were named, where they are not one. */
  readonly several?: readonly string[];
}

/** Words that were not used, and why. */
export interface Rest {
  readonly text: string;
  readonly why: string;
  readonly rule: 'description-rest' | 'suggested-term' | 'ambiguous-word';
  /** Nothing is like the word. */
  readonly unknown?: true;
  /** What may be meant, as a word that would be understood in its place. */
  readonly meant?: string;
}

export interface Parsed {
  readonly said: ReadonlyMap<string, Said>;
  readonly rest: readonly Rest[];
  /** A word names the structure outright, and not only by the way ("weft-faced" is said of something woven). */
  readonly named: boolean;
}

interface Placed {
  readonly text: string;
  readonly senses: readonly Sense[];
  readonly doubt: number;
  readonly denied: 'no' | 'absent' | 'unseen';
}

/** Reads one alternative: no "or" in it. */
export function parseItems(items: readonly Item[], lexicon: Lexicon): Parsed {
  const rest: Rest[] = [];
  const terms = clauses(items).flatMap((clause) => placeTerms(clause, rest));
  const main = lexicon.attribute.id;
  const structure = structureOf(terms, lexicon);
  const values = new Map<string, { value: string; text: string; doubt: number }[]>();
  const unseen = new Map<string, Said>();
  const put = (id: string, value: string, term: Placed) =>
    values.set(id, [...(values.get(id) ?? []), { value, text: term.text, doubt: term.doubt }]);
  const yielding: { readonly value: string; readonly term: Placed; readonly outright: boolean }[] = [];
  for (const term of terms) {
    const sense = choose(term, structure, lexicon);
    if (sense === null) {
      rest.push(unfit(term, structure, lexicon));
      continue;
    }
    if (term.denied !== 'no') {
      deny(term, sense, lexicon, put, unseen, rest);
      continue;
    }
    if (sense.asks !== undefined) rest.push(asked(term, sense));
    for (const [id, value] of sense.sets) {
      if (id === main && sense.weak) yielding.push({ value, term, outright: sense.vague === true });
      else put(id, value, term);
    }
  }
  const named = values.get(main);
  for (const { value, term } of yielding) {
    const narrower = named?.every((one) => isWithin(lexicon.vocabulary, value, one.value)) === true;
    if (named === undefined || narrower) put(main, value, term);
  }
  const said = new Map<string, Said>();
  for (const [id, all] of values) said.set(id, settle(id, all, lexicon));
  for (const [id, one] of unseen) if (!said.has(id)) said.set(id, one);
  return dropUnfit(
    { said, rest, named: named !== undefined || yielding.some(({ outright }) => outright) },
    lexicon,
  );
}

function asked(term: Placed, sense: Sense): Rest {
  const name = sense.suggests === undefined ? '' : `; as a rule ${sense.suggests} is meant`;
  return {
    text: term.text,
    rule: 'ambiguous-word',
    why: `"${term.text}" is ambiguous: ${sense.asks}${name}`,
    ...(sense.suggests === undefined ? {} : { meant: sense.suggests }),
  };
}

/** Parts between full stops, commas, brackets, "with" and "and": what stands in one is said of one thing. */
function clauses(items: readonly Item[]): readonly (readonly Item[])[] {
  const parts: Item[][] = [[]];
  for (const item of items) {
    if (item.kind === 'stop' || item.kind === 'with' || item.kind === 'and') parts.push([]);
    if (item.kind === 'stop' || item.kind === 'and') continue;
    parts.at(-1)!.push(item);
  }
  return parts.filter((part) => part.some(({ kind }) => kind !== 'with'));
}

/** The terms of a clause with what is denied and doubted of them; the rest is listed. */
function placeTerms(clause: readonly Item[], rest: Rest[]): readonly Placed[] {
  const whole = clause
    .filter(({ kind }) => kind !== 'with')
    .map(({ text }) => text)
    .join(' ');
  const other = clause.find(({ kind }) => kind === 'elsewhere');
  if (other !== undefined) {
    rest.push(unused(whole, `"${other.text}" is another part of the fabric than its ground`));
    return [];
  }
  const looks = clause.find(({ kind }) => kind === 'looks-like');
  if (looks !== undefined) {
    rest.push(unused(whole, `"${looks.text}" may say that it is something else`));
    return [];
  }
  const doubt = clause.reduce((sum, item) => sum + (item.kind === 'doubt' ? item.steps : 0), 0);
  const placed: Placed[] = [];
  let denying: string | null = null;
  for (const item of clause) {
    if (item.kind === 'not') denying = item.text;
    else if (item.kind === 'term') {
      const denied = denying === null ? 'no' : 'absent';
      placed.push({
        text: denying === null ? item.text : `${denying} ${item.text}`,
        senses: item.senses,
        doubt,
        denied,
      });
      denying = null;
    } else if (item.kind === 'absent' || item.kind === 'unseen') {
      const last = placed.pop();
      if (last === undefined)
        rest.push(unused(item.text, 'nothing stands before it that it could be said of'));
      else placed.push({ ...last, text: `${last.text} ${item.text}`, denied: item.kind });
    } else if (item.kind === 'unknown') {
      if (denying !== null) {
        // What is denied is not known, so nothing in the clause is safe.
        rest.push(unused(whole, `it is not known what "${denying}" denies`));
        return [];
      }
      rest.push(
        item.near === undefined
          ? { ...unused(item.text, 'the word is not known'), unknown: true }
          : {
              text: item.text,
              rule: 'suggested-term',
              why: `"${item.text}" is not known; it may mean "${item.near}"`,
              meant: item.near,
            },
      );
    }
  }
  if (denying !== null) {
    rest.push(unused(whole, `it is not known what "${denying}" denies`));
    return [];
  }
  return placed;
}

const unused = (text: string, why: string): Rest => ({
  text,
  why: `"${text}" was not used: ${why}`,
  rule: 'description-rest',
});

/** The structure that words name outright, which decides what the others mean; null where none does. */
function structureOf(terms: readonly Placed[], lexicon: Lexicon): string | null {
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

/** What a wording means beside this structure; null where it means nothing there. */
function choose({ senses, text }: Placed, structure: string | null, lexicon: Lexicon): Sense | null {
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
  return first !== undefined && bound.every(({ sets }) => same(sets, first.sets)) ? first : null;
}

function same(a: ReadonlyMap<string, string>, b: ReadonlyMap<string, string>): boolean {
  return a.size === b.size && [...a].every(([id, value]) => b.get(id) === value);
}

function unfit(term: Placed, structure: string | null, { vocabulary }: Lexicon): Rest {
  const label = vocabulary.terms.find(({ id }) => id === structure)?.label;
  const why =
    label === undefined
      ? 'what it means hangs on the structure'
      : `it says nothing of "${label}" that is known`;
  return unused(term.text, why);
}

/** "no pile", "pile not visible": a facet that has a value for "not there", or a gap. */
function deny(
  term: Placed,
  sense: Sense,
  lexicon: Lexicon,
  put: (id: string, value: string, term: Placed) => void,
  unseen: Map<string, Said>,
  rest: Rest[],
): void {
  const facets = [...sense.sets.keys()].map((id) => lexicon.facets.find((facet) => facet.id === id));
  const about = facets.filter((facet) => facet !== undefined && facet.id !== lexicon.attribute.id);
  // Denying a structure, or a side that is always one way or another, leaves open what it is.
  const plain = about.every((facet) => absentValue(facet?.id ?? '', lexicon) !== null);
  const weakOnly = !sense.sets.has(lexicon.attribute.id) || sense.weak;
  if (about.length === 0 || !weakOnly || (term.denied === 'absent' && !plain)) {
    rest.push(unused(term.text, 'what is denied leaves open what it is'));
    return;
  }
  for (const facet of about) {
    if (facet === undefined) continue;
    if (term.denied === 'unseen')
      unseen.set(facet.id, { value: null, state: 'not-observed', doubt: term.doubt, text: term.text });
    else put(facet.id, absentValue(facet.id, lexicon)!, term);
  }
}

/** What "none" is called in a facet; null where each structure has the facet in one way or another. */
function absentValue(id: string, { facets }: Lexicon): string | null {
  const facet = facets.find((one) => one.id === id);
  if (facet?.scale === 'presence' || facet?.scale === 'binary') return 'absent';
  const unmarked = facet?.facet?.unmarked;
  return unmarked?.startsWith('no') === true ? unmarked : null;
}

function settle(
  id: string,
  all: readonly { value: string; text: string; doubt: number }[],
  lexicon: Lexicon,
): Said {
  const doubt = greatest(all.map((one) => one.doubt));
  const text = [...new Set(all.map((one) => one.text))].join(' ');
  const values = [...new Set(all.map(({ value }) => value))];
  const attribute = lexicon.facets.find((facet) => facet.id === id)!;
  const state = (value: string) => (value === 'absent' ? ('absent' as const) : ('measured' as const));
  if (values.length === 1) return { value: values[0]!, state: state(values[0]!), doubt, text };
  const tree =
    id === lexicon.attribute.id ? lexicon.vocabulary : lexicon.trees.get(attribute.vocabulary ?? '');
  const narrowest =
    tree === undefined
      ? undefined
      : values.find((value) => values.every((other) => isWithin(tree, value, other)));
  if (narrowest !== undefined) return { value: narrowest, state: 'measured', doubt, text };
  if (id === 'rowSlant' && values.includes('S') && values.includes('Z'))
    return { value: 'countered', state: 'measured', doubt, text };
  const held =
    tree === undefined
      ? null
      : values.reduce<string | null>((a, b) => (a === null ? null : lowestCommon(tree, a, b)), values[0]!);
  return { value: held, state: held === null ? 'not-observed' : 'measured', doubt, text, several: values };
}

/** A facet that makes no sense for the structure is not taken. */
function dropUnfit(parsed: Parsed, lexicon: Lexicon): Parsed {
  const { said, rest } = parsed;
  const structure = said.get(lexicon.attribute.id)?.value ?? null;
  if (structure === null) return parsed;
  const kept = new Map<string, Said>();
  const more: Rest[] = [...rest];
  for (const [id, one] of said) {
    const listed = lexicon.facets.find((facet) => facet.id === id)?.appliesTo;
    const applies =
      id === lexicon.attribute.id ||
      listed === undefined ||
      listed.some(
        (term) =>
          isWithin(lexicon.vocabulary, structure, term) || isWithin(lexicon.vocabulary, term, structure),
      );
    if (applies) kept.set(id, one);
    else {
      const label = lexicon.vocabulary.terms.find((term) => term.id === structure)?.label ?? structure;
      more.push(unused(one.text, `it makes no sense for "${label}"`));
    }
  }
  return { ...parsed, said: kept, rest: more };
}
