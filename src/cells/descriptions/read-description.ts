import type { AttributeDefinition, Register } from '../../attributes/definition.ts';
import { takeDoubt } from '../certainty.ts';
import type { CellContext } from '../context.ts';
import { emptyTerm, flagged, notUnderstood, quote, readAs } from '../notes.ts';
import { readNothing } from '../nothing.ts';
import type { CellState, Note, Reading } from '../reading.ts';
import { translated } from '../terms.ts';
import { plainSigns } from '../text.ts';
import { nothingInWords } from '../wording/nothing-in-words.ts';
import { alternatives, mergeDenied } from './alternatives.ts';
import { type Item, itemsOf } from './items.ts';
import { type Lexicon, lexiconOf } from './lexicon.ts';
import { meaningOf } from './meaning.ts';
import { type Own, ownWords } from './own-words.ts';
import type { Parsed } from './parse.ts';
import { readingOf, unmarkedReading } from './readings.ts';
import type { Rest } from './said.ts';

export type { Rest } from './said.ts';

/** One cell parted into what it says of an attribute and of its facets. */
export interface DescriptionReading {
  /** The attribute itself. */
  readonly main: Reading;
  /** Facet -> its reading; facets of which the text says nothing are left out. */
  readonly facets: ReadonlyMap<string, Reading>;
  /** What was not used: shown, and asked about. */
  readonly rest: readonly Rest[];
}

/** Longer texts are prose; no description is looked for in them. */
const LONGEST = 400;

/**
 * Parts a description ("open diagonal twining with pile", "Köper 2/2, schussbetont, ohne Flor") into the
 * attribute and its facets, in any order, in six languages.
 *
 * - The source's translations go first, of the whole text and of its parts; "" leaves a part out.
 * - What a word means may hang on the structure beside it: "diagonal" of twining, of a twill.
 * - "A or B" keeps what both have in common; what stands beside a word for an edge, a seam or a stripe is said
 *   of that part and not read; a denial that is not understood takes everything beside it out.
 * - Slips of spelling and ambiguous words are asked about, never taken.
 *
 * @returns null where the attribute has no facets, so that its cells hold terms alone.
 */
export function readDescription(
  text: string,
  attribute: AttributeDefinition,
  register: Register,
  context: CellContext,
): DescriptionReading | null {
  const lexicon = lexiconOf(attribute, register);
  if (lexicon === null) return null;
  const own = ownWords(context.translations, (means) => meaningOf(means, attribute, register));
  const translation = translated(text, context);
  const whole = translation === undefined ? null : meaningOf(translation, attribute, register);
  const items = whole === null ? itemsOfCell(text, lexicon, own) : [termItem(text, whole)];
  const only = items.length === 1 && items[0]!.kind === 'term' && !vagueTerm(items[0]!);
  const nothing = only || /^[([]*\?+[)\]]*$/u.test(text.trim()) ? null : nothingIn(text, attribute, items);
  if (nothing !== null || items.length === 0) {
    const state = nothing?.state ?? 'not-observed';
    const notes = nothing?.notes ?? readNothing(text)?.notes ?? [unknownText(text, lexicon)];
    return { main: emptyTerm(state, notes), facets: new Map(), rest: [] };
  }
  const bracketed = /^[([][^()[\]]+[)\]]$/u.test(text.trim()) ? 1 : 0;
  const parsed = alternatives(items, lexicon, text);
  return finish(
    text,
    parsed,
    lexicon,
    context,
    whole === null ? bracketed : takeDoubt(plainSigns(text)).steps,
    whole !== null,
  );
}

/** Nothing in a word, or in a sentence that names no kind: "Bindung nicht bestimmbar", "weave obscured". */
function nothingIn(
  text: string,
  attribute: AttributeDefinition,
  items: readonly Item[],
): { readonly state: CellState; readonly notes: readonly Note[] } | null {
  const nothing = readNothing(text);
  if (nothing !== null || items.some((item) => item.kind === 'term' && !vagueTerm(item))) return nothing;
  const said = nothingInWords(text, attribute);
  return said === null ? null : { state: said.state, notes: [said.note] };
}

const vagueTerm = ({ senses }: Extract<Item, { kind: 'term' }>): boolean =>
  senses.every(({ weak, vague }) => weak && vague === true);

function itemsOfCell(text: string, lexicon: Lexicon, own: Own): readonly Item[] {
  return text.length > LONGEST ? [] : mergeDenied(itemsOf(text, lexicon, own));
}

function termItem(text: string, sets: ReadonlyMap<string, string>): Item {
  return { kind: 'term', text, senses: [{ sets, alone: false, weak: false, via: text }] };
}

const unknownText = (text: string, { vocabulary }: Lexicon): Note =>
  notUnderstood('unknown-term', `${quote(text)} is not known in "${vocabulary.label}"`);

function finish(
  text: string,
  { said, rest }: Parsed,
  lexicon: Lexicon,
  context: CellContext,
  doubt: number,
  settled: boolean,
): DescriptionReading {
  const main = lexicon.attribute.id;
  const facets = new Map<string, Reading>();
  for (const facet of lexicon.facets) {
    if (facet.id === main) continue;
    const one = said.get(facet.id);
    if (one !== undefined) facets.set(facet.id, readingOf(facet, one, text, doubt, settled));
    else {
      const unmarked = unmarkedReading(facet, said.get(main)?.value ?? null, lexicon, context, text);
      if (unmarked !== null) facets.set(facet.id, unmarked);
    }
  }
  const whole = said.get(main);
  if (whole === undefined) {
    const why = rest.map((one) => one.why).join('; ');
    const rule = rest.length === 1 ? rest[0]!.rule : 'description-rest';
    const foreign = rest.length > 0 && rest.every(({ unknown }) => unknown);
    const unread = foreign
      ? unknownText(text, lexicon)
      : notUnderstood(
          rule === 'ambiguous-word' ? 'suggested-term' : rule,
          why === '' ? `${quote(text)} names no structure` : why,
        );
    const notes =
      facets.size > 0 && rest.length === 0
        ? [flagged('no-structure', `${quote(text)} names no structure, only sides of one`)]
        : [unread];
    return { main: emptyTerm('not-observed', notes), facets, rest };
  }
  const notes: Note[] = [];
  if (settled)
    notes.push(readAs('translation', `${quote(text)} read as ${whole.value}, as the profile says`));
  else if (facets.size > 0 || (rest.length > 0 && whole.value !== null))
    notes.push(
      readAs(
        'description',
        `${quote(text)} parted into what it says: ${whole.value}${facets.size === 0 ? '' : `; ${[...facets.keys()].map((id) => lexicon.facets.find((facet) => facet.id === id)!.label.toLowerCase()).join(', ')}`}`,
      ),
    );
  for (const { why, rule } of rest) notes.push(flagged(rule, why));
  return { main: withNotes(readingOf(lexicon.attribute, whole, text, doubt, settled), notes), facets, rest };
}

function withNotes(reading: Reading, more: readonly Note[]): Reading {
  return { ...reading, notes: [...reading.notes, ...more] };
}
