import { isWithin } from '../../attributes/tree.ts';
import { clauses, type Placed, placeTerms } from './clauses.ts';
import { deny } from './denied.ts';
import type { Item } from './items.ts';
import type { Lexicon } from './lexicon.ts';
import { type Rest, type Said, unused } from './said.ts';
import { asked, besides, choose, structureOf, unfit } from './senses.ts';
import { dropUnfit, settle } from './settle.ts';

export interface Parsed {
  readonly said: ReadonlyMap<string, Said>;
  readonly rest: readonly Rest[];
  /** A word names the structure outright, and not only by the way ("weft-faced" is said of something woven). */
  readonly named: boolean;
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
    const sense = choose(besides(term, terms), structure, lexicon);
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
