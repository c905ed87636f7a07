import type { Placed } from './clauses.ts';
import type { Lexicon, Sense } from './lexicon.ts';
import { type Rest, type Said, unused } from './said.ts';

/** "no pile", "pile not visible": a facet that has a value for "not there", or a gap. */
export function deny(
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
