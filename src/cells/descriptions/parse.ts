import { isWithin } from '../../attributes/tree.ts';
import { clauses, type Placed, placeTerms } from './clauses.ts';
import { deny } from './denied.ts';
import type { Item } from './items.ts';
import type { Lexicon, Sense } from './lexicon.ts';
import { type Rest, type Said, unused } from './said.ts';
import { asked, besides, choose, structureOf, unfit } from './senses.ts';
import { dropUnfit, settle } from './settle.ts';

export interface Parsed {
  readonly said: ReadonlyMap<string, Said>;
  readonly rest: readonly Rest[];
  /** A word names the structure outright, and not only by the way ("weft-faced" is said of something woven). */
  readonly named: boolean;
}

/** "Firskaft 2/2": a question between kinds of one structure, which another word of the cell answers. */
function answered(
  { sets, suggests }: Sense,
  named: readonly { readonly value: string }[],
  { attribute, vocabulary }: Lexicon,
): boolean {
  const broad = sets.get(attribute.id);
  if (broad === undefined || !vocabulary.terms.some(({ id }) => id === suggests)) return false;
  return named.some(({ value }) => value !== broad && isWithin(vocabulary, value, broad));
}

/** A word for a basket or a mat, which leaves open how it is made. */
function basketIn(terms: readonly Placed[], lexicon: Lexicon): boolean {
  const things = ['basketry', 'matting'];
  return terms.some(
    ({ senses, denied }) =>
      denied === 'no' &&
      senses.some(
        ({ vague, suggests, sets }) =>
          things.includes(suggests ?? '') ||
          (vague === true && things.includes(sets.get(lexicon.attribute.id) ?? '')),
      ),
  );
}

/** Reads one alternative: no "or" in it. */
export function parseItems(items: readonly Item[], lexicon: Lexicon): Parsed {
  const rest: Rest[] = [];
  const terms = clauses(items).flatMap((clause) => placeTerms(clause, rest));
  const main = lexicon.attribute.id;
  const structure = structureOf(terms, lexicon);
  const leftOpen =
    structure === null && terms.some(({ senses }) => senses.every(({ asks }) => asks !== undefined));
  const values = new Map<string, { value: string; text: string; doubt: number }[]>();
  const unseen = new Map<string, Said>();
  const put = (id: string, value: string, term: Placed) =>
    values.set(id, [...(values.get(id) ?? []), { value, text: term.text, doubt: term.doubt }]);
  const questions: { readonly term: Placed; readonly sense: Sense }[] = [];
  const yielding: { readonly value: string; readonly term: Placed; readonly outright: boolean }[] = [];
  for (const term of terms) {
    const sense = choose(besides(term, terms), structure, lexicon);
    // "Tresse à 3 brins": beside a word for a structure that is asked about, a side of it is not safe.
    if (sense === null || (leftOpen && sense.when !== undefined)) {
      rest.push(unfit(term, structure, lexicon));
      continue;
    }
    if (term.denied !== 'no') {
      deny(term, sense, lexicon, put, unseen, rest);
      continue;
    }
    if (sense.asks !== undefined) questions.push({ term, sense });
    for (const [id, value] of sense.sets) {
      if (id === main && sense.weak) yielding.push({ value, term, outright: sense.vague === true });
      else put(id, value, term);
    }
  }
  for (const { term, sense } of questions)
    if (!answered(sense, values.get(main) ?? [], lexicon)) rest.push(asked(term, sense));
  if (basketIn(terms, lexicon)) {
    // "Mat, twill 2/2": plaited in a twill as likely as woven in one.
    const weaves = (values.get(main) ?? []).filter(({ value }) =>
      isWithin(lexicon.vocabulary, value, 'woven'),
    );
    for (const { text } of weaves) rest.push(unused(text, 'of baskets and mats it is said of plaiting too'));
    const others = (values.get(main) ?? []).filter((one) => !weaves.includes(one));
    if (others.length > 0) values.set(main, others);
    else values.delete(main);
  }
  const named = values.get(main);
  // "Gewebe, xylisch": a noun for any fabric beside a word that nobody knows names less than was said.
  const foreign = rest.some(({ unknown }) => unknown === true);
  for (const { value, term, outright } of yielding) {
    if (foreign && outright && named === undefined) {
      rest.push(unused(term.text, 'beside a word that is not known it may name a kind of its own'));
      continue;
    }
    const narrower = named?.every((one) => isWithin(lexicon.vocabulary, value, one.value)) === true;
    if (named === undefined || narrower) put(main, value, term);
  }
  const said = new Map<string, Said>();
  for (const [id, all] of values) said.set(id, settle(id, all, lexicon));
  for (const [id, one] of unseen) if (!said.has(id)) said.set(id, one);
  return {
    ...dropUnfit(said, rest, lexicon),
    named: named !== undefined || yielding.some(({ outright }) => outright),
  };
}
