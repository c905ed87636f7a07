import type { AttributeDefinition } from '../../attributes/definition.ts';
import { isWithin } from '../../attributes/tree.ts';
import { lowered } from '../certainty.ts';
import type { CellContext } from '../context.ts';
import { emptyNumeric, emptyTerm, flagged, notUnderstood, quote, readAs } from '../notes.ts';
import type { Note, Reading } from '../reading.ts';
import type { Lexicon } from './lexicon.ts';
import type { Said } from './said.ts';

/** What is said of an attribute or of one of its facets, as the reading of a cell. */
export function readingOf(
  attribute: AttributeDefinition,
  said: Said,
  text: string,
  more: number,
  settled: boolean,
): Reading {
  const doubt = said.doubt + more;
  const notes: Note[] = [];
  const own = attribute.facet === undefined;
  if (said.several !== undefined) {
    const rule = said.text.includes(' or ') ? 'alternative' : 'several';
    const list = said.several.join(rule === 'alternative' ? ' or ' : ' and ');
    notes.push(
      said.value === null
        ? (own ? notUnderstood : flagged)(
            rule,
            own
              ? `${list}: no broader term holds them all`
              : `${quote(text)}: ${list || said.text} is not settled`,
          )
        : flagged(rule, `${list}: read as what they have in common, ${said.value}`),
    );
  }
  if (doubt > 0) notes.push(flagged('uncertain', `${quote(text)} is marked as uncertain`));
  if (!own && said.value !== null && !settled)
    notes.push(readAs('facet', `"${said.text}" in ${quote(text)}`));
  if (attribute.scale === 'ratio' || attribute.scale === 'interval') {
    const value = said.value === null ? Number.NaN : Number(said.value);
    return Number.isNaN(value)
      ? emptyNumeric('not-observed', notes)
      : { kind: 'numeric', low: value, high: value, state: 'measured', notes };
  }
  if (said.value === null) return emptyTerm(said.state, notes);
  return { kind: 'term', term: said.value, state: said.state, certainty: lowered('certain', doubt), notes };
}

/** A catalogue that tells a facet says by its silence that there is nothing to tell. */
export function unmarkedReading(
  facet: AttributeDefinition,
  structure: string | null,
  { vocabulary }: Lexicon,
  { tells = [] }: CellContext,
  text: string,
): Reading | null {
  const value = facet.facet?.unmarked;
  if (value === undefined || structure === null || !tells.includes(facet.id)) return null;
  const meant = facet.facet?.unmarkedOf ?? facet.appliesTo;
  if (meant?.some((term) => isWithin(vocabulary, structure, term)) === false) return null;
  const notes = [
    readAs('unmarked', `${quote(text)} says nothing of it; the profile says that this source tells it`),
  ];
  if (facet.scale === 'ratio') {
    return { kind: 'numeric', low: Number(value), high: Number(value), state: 'measured', notes };
  }
  return {
    kind: 'term',
    term: value,
    state: value === 'absent' ? 'absent' : 'measured',
    certainty: 'certain',
    notes,
  };
}
