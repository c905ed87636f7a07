import type { AttributeDefinition, Term } from '../definition.ts';

/** A facet and its value in one find. */
export interface FacetValue {
  readonly attribute: AttributeDefinition;
  readonly value: string;
}

/**
 * The name of a structure with some of its facets in the order in which the trade says them: "open diagonal
 * twining with pile", "weft-faced 2/2 diamond twill". Values without words ("simple") are not said; where none is,
 * the name is that of the term.
 */
export function composedName(term: Term, values: readonly FacetValue[]): string {
  const words = values
    .flatMap(({ attribute: { facet }, value }) => {
      const said = facet?.words[value];
      return facet === undefined || said === undefined ? [] : [{ ...facet, said }];
    })
    .sort((a, b) => a.order - b.order);
  if (words.length === 0) return term.label;
  const at = (place: 'before' | 'inside' | 'after') =>
    words.filter(({ stands }) => stands === place).map(({ said }) => said);
  const noun = (term.noun ?? term.label).split(' ');
  return [...at('before'), ...noun.slice(0, -1), ...at('inside'), ...noun.slice(-1), ...at('after')].join(
    ' ',
  );
}

/** Whether a name that leaves the facet out could be taken for one that says it: then it has to say that it does not. */
export function isSilent({ facet }: AttributeDefinition): boolean {
  return facet?.unmarked !== undefined && facet.words[facet.unmarked] === undefined;
}
