import type { AttributeDefinition, Register } from '../../attributes/definition.ts';
import { isWithin, lowestCommon } from '../../attributes/tree.ts';
import { greatest } from '../../numerics/foundation/lists.ts';
import { lowered } from '../certainty.ts';
import type { CellContext } from '../context.ts';
import { emptyNumeric, emptyTerm, flagged, notUnderstood, quote, readAs } from '../notes.ts';
import { readNothing } from '../nothing.ts';
import type { Note, Reading } from '../reading.ts';
import { translated } from '../terms.ts';
import { type Item, itemsOf, type Own, ownWords } from './items.ts';
import { type Lexicon, lexiconOf } from './lexicon.ts';
import { meaningOf } from './meaning.ts';
import { type Parsed, parseItems, type Rest, type Said } from './parse.ts';

export type { Rest } from './parse.ts';

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
  const only = items.length === 1 && items[0]!.kind === 'term';
  const nothing = only || /^[([]*\?+[)\]]*$/u.test(text.trim()) ? null : readNothing(text);
  if (nothing !== null || items.length === 0) {
    const state = nothing?.state ?? 'not-observed';
    const notes = nothing?.notes ?? readNothing(text)?.notes ?? [unknownText(text, lexicon)];
    return { main: emptyTerm(state, notes), facets: new Map(), rest: [] };
  }
  const bracketed = /^[([][^()[\]]+[)\]]$/u.test(text.trim()) ? 1 : 0;
  const parsed = alternatives(items, lexicon, text);
  return finish(text, parsed, lexicon, context, whole === null ? bracketed : 0, whole !== null);
}

function itemsOfCell(text: string, lexicon: Lexicon, own: Own): readonly Item[] {
  return text.length > LONGEST ? [] : mergeDenied(itemsOf(text, lexicon, own));
}

function termItem(text: string, sets: ReadonlyMap<string, string>): Item {
  return { kind: 'term', text, senses: [{ sets, alone: false, weak: false, via: text }] };
}

const unknownText = (text: string, { vocabulary }: Lexicon): Note =>
  notUnderstood('unknown-term', `${quote(text)} is not known in "${vocabulary.label}"`);

/** "no pile or tufts", "weder Flor noch Fransen": one denial for all that it joins. */
function mergeDenied(items: readonly Item[]): readonly Item[] {
  const out: Item[] = [];
  let denying: Item | null = null;
  for (let at = 0; at < items.length; at++) {
    const item = items[at]!;
    if (item.kind === 'not') denying = item;
    else if ((item.kind === 'or' || item.kind === 'and') && denying !== null) {
      out.push({ kind: 'stop', text: item.text }, denying);
      continue;
    } else if (item.kind === 'stop' || item.kind === 'with') denying = null;
    if (item.kind === 'not' && out.at(-1)?.kind === 'not') continue;
    out.push(item);
  }
  return out;
}

/** Reads what stands between the "or"s, and keeps what all of them say. */
function alternatives(items: readonly Item[], lexicon: Lexicon, text: string): Parsed {
  const parts: Item[][] = [[]];
  for (const item of items) {
    if (item.kind === 'or') parts.push([]);
    else parts.at(-1)!.push(item);
  }
  const filled = parts.filter((part) => part.length > 0);
  if (filled.length < 2) return parseItems(filled[0] ?? [], lexicon);
  const main = lexicon.attribute.id;
  const read = filled.map((part) => parseItems(part, lexicon));
  const complete = read.find(({ named }) => named);
  const blank = read.some(
    ({ said, rest }) => said.size === 0 || rest.some(({ rule }) => rule !== 'ambiguous-word'),
  );
  if (blank) {
    const known = read.flatMap(({ said }) => said.get(main)?.value ?? []);
    const why =
      known.length === 0
        ? ''
        : ` (${[...new Set(known)].join(', ')} ${known.length === 1 ? 'is' : 'are'} known in it)`;
    return {
      said: new Map(),
      named: false,
      rest: [
        {
          text,
          rule: 'description-rest',
          why: `${quote(text)} names alternatives of which not all are understood${why}`,
        },
      ],
    };
  }
  // "open or semi-open twining": what one alternative leaves out, it shares with the one that is whole.
  const whole = read.map(({ said, named }) => {
    if (named || complete === undefined) return said;
    const own = [...said].filter(([id]) => id !== main);
    return new Map([...complete.said, ...own]);
  });
  const ids = [...new Set(whole.flatMap((said) => [...said.keys()]))];
  const said = new Map<string, Said>();
  for (const id of ids)
    said.set(
      id,
      shared(
        id,
        whole.map((one) => one.get(id)),
        lexicon,
      ),
    );
  return { said, rest: read.flatMap(({ rest }) => rest), named: complete !== undefined };
}

function shared(id: string, all: readonly (Said | undefined)[], lexicon: Lexicon): Said {
  const values = all.map((one) => one?.value ?? null);
  const known = [...new Set(values.filter((value) => value !== null))];
  const doubt = greatest(all.map((one) => one?.doubt ?? 0));
  const text = [...new Set(all.flatMap((one) => one?.text ?? []))].join(' or ');
  if (values.every((value) => value !== null && value === values[0])) return { ...all[0]!, doubt, text };
  const attribute = lexicon.facets.find((facet) => facet.id === id);
  if (attribute?.scale === 'ordinal' && !values.includes(null)) {
    // "open or semi-open" is a span of grades, as "3 or 4" is one of numbers.
    const span = (attribute.levels ?? []).filter((level) => known.includes(level));
    if (span.length === known.length) return { value: span.join(' or '), state: 'measured', doubt, text };
  }
  const tree =
    id === lexicon.attribute.id ? lexicon.vocabulary : lexicon.trees.get(attribute?.vocabulary ?? '');
  const held =
    tree === undefined || values.includes(null)
      ? null
      : known.reduce<string | null>(
          (a, b) => (a === null ? null : lowestCommon(tree, a, b)),
          known[0] ?? null,
        );
  return { value: held, state: held === null ? 'not-observed' : 'measured', doubt, text, several: known };
}

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

function readingOf(
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
function unmarkedReading(
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
