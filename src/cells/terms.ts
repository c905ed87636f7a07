import type { Vocabulary } from '../attributes/definition.ts';
import { matchTerm } from '../attributes/matching.ts';
import { mixtureOf } from '../attributes/mixtures.ts';
import { isWithin, lowestCommon } from '../attributes/tree.ts';
import { lowered, takeDoubt } from './certainty.ts';
import type { CellContext } from './context.ts';
import { emptyTerm, flagged, notUnderstood, quote, readAs } from './notes.ts';
import { readNothing } from './nothing.ts';
import type { Note, TermReading } from './reading.ts';
import { foldCell, ownValue, plainSigns } from './text.ts';
import { mixedFibres } from './wording/fibre-words.ts';
import { termInWords } from './wording/term-in-words.ts';

/** Between two kinds of which one is meant; a slash only where it does not stand between digits ("2/2"). */
const OR = /\s+(?:or|oder|od\.|ou|o|eller)\s+|(?<!\d)\s*\/\s*|\s*\/\s*(?!\d)/u;
/** Between kinds that are all meant. */
const AND = /\s*[;+&]\s*|\s+(?:and|und|u\.|et|e|y|og)\s+|,\s+/u;
/** Between the parts of a mixture. */
const MIXED = /\s*[;+&]\s*|\s+(?:and|und|u\.|et|e|y|og|with|mit|m\.|avec|con|med)\s+|,\s*(?!\d)/u;
const MOST_PARTS = 8;

/** The source's own translation of a wording: exact spelling first, then folded. */
export function translated(text: string, context: CellContext): string | undefined {
  const { translations } = context;
  if (translations === undefined) return undefined;
  const exact = ownValue(translations, text) ?? ownValue(translations, text.trim());
  if (exact !== undefined) return exact;
  const folded = foldCell(text);
  const key = Object.keys(translations).find((wording) => foldCell(wording) === folded);
  return key === undefined ? undefined : translations[key];
}

/** What the profile says of a wording; a mark of doubt in the wording is in the cell, and stays. */
export function translatedReading(
  text: string,
  settled: string,
  doubts: (mark: string) => boolean = () => true,
): TermReading {
  const { steps, marks, rest } = takeDoubt(plainSigns(text));
  // A mark alone is a code, and doubts nothing.
  const meant = rest.trim() !== '' && marks.some(doubts);
  return termReading(settled, meant ? steps : 0, [
    ...(meant ? doubtNotes(marks) : []),
    readAs('translation', `${quote(text)} read as ${settled}, as the profile says`),
  ]);
}

export const termReading = (term: string, doubt: number, notes: readonly Note[]): TermReading => ({
  kind: 'term',
  term,
  state: 'measured',
  certainty: lowered('certain', doubt),
  notes,
});

export const doubtNotes = (marks: readonly string[]): readonly Note[] =>
  marks.length > 0 ? [flagged('uncertain', `marked as uncertain (${marks.join(', ')})`)] : [];

/**
 * Reads a kind of a vocabulary: the source's translation, then an exact synonym, then "nothing", then the
 * same without marks of doubt, then "A or B" as their lowest common parent. Near matches are named in the
 * note and never taken.
 */
export function readTerm(text: string, vocabulary: Vocabulary, context: CellContext): TermReading {
  const settled = translated(text, context);
  if (settled !== undefined) return translatedReading(text, settled);
  const marked = /[?()[\]]/u.test(text);
  const bare = /^[-\s.·•/_"']*$/u.test(plainSigns(text));
  const whole = marked || bare ? null : matchTerm(text, vocabulary);
  if (whole?.kind === 'exact') return termReading(whole.id, 0, []);
  const nothing = readNothing(text);
  if (nothing !== null) return emptyTerm(nothing.state, nothing.notes);
  const inner = readIndeterminate(text, vocabulary);
  if (inner !== null) return inner;
  const doubt = takeDoubt(plainSigns(text));
  const notes = doubtNotes(doubt.marks);
  const settledRest = doubt.steps > 0 ? translated(doubt.rest, context) : undefined;
  if (settledRest !== undefined) return termReading(settledRest, doubt.steps, notes);
  const match = matchTerm(doubt.rest, vocabulary);
  if (match.kind === 'exact') return termReading(match.id, doubt.steps, notes);
  const glossed = readGlossed(doubt.rest, vocabulary);
  if (glossed !== null) return termReading(glossed, doubt.steps, notes);
  const worded = termInWords(doubt.rest, vocabulary);
  if (worded !== null)
    return termReading(worded.term, doubt.steps + worded.doubt, [...notes, ...worded.notes]);
  const together = vocabulary.mixes === true ? mixedFibres(doubt.rest) : null;
  const several = severalTerms(together ?? doubt.rest, vocabulary, context, doubt.steps, notes);
  if (several !== null) return several;
  const why =
    match.kind === 'suggested'
      ? `${quote(text)} is not known; it may mean "${labelOf(match.id, vocabulary)}" (${match.reason})`
      : `${quote(text)} is not known in "${vocabulary.label}"${match.reason === undefined ? '' : ` (${match.reason})`}`;
  return emptyTerm('not-observed', [
    notUnderstood(match.kind === 'suggested' ? 'suggested-term' : 'unknown-term', why),
  ]);
}

const labelOf = (term: string, { terms }: Vocabulary) => terms.find(({ id }) => id === term)?.label ?? term;

const PART = /^(?:inner bark|bast|bastfasern?|l[ií]ber|libro|tille|phloem)$/iu;
const GLOSSED = /^([^()]+?) ?\(([^()]+)\)$/u;

/** "Wool (Ovis aries)": the same said twice, or once more narrowly. */
function readGlossed(text: string, vocabulary: Vocabulary): string | null {
  const [, name, gloss] = GLOSSED.exec(text.trim()) ?? [];
  const [a, b] = [name, gloss].map((part) =>
    part === undefined ? undefined : matchTerm(part.replace(/ spp?\.?$/u, ''), vocabulary),
  );
  // "Lime (Tilia)": the gloss settles the word that means two things.
  if (a?.kind === 'suggested' && b?.kind === 'exact' && a.id === b.id) return b.id;
  // "Tilia (Bast)": the part of the plant, which the term names too.
  const part = gloss !== undefined && PART.test(gloss.trim());
  if (part && a?.kind === 'exact' && isWithin(vocabulary, a.id, 'bastFibre')) return a.id;
  if (a?.kind !== 'exact' || b?.kind !== 'exact') return null;
  if (isWithin(vocabulary, b.id, a.id)) return b.id;
  return isWithin(vocabulary, a.id, b.id) ? a.id : null;
}

const INDETERMINATE =
  /^(.+?)[\s,;:(]+(?:nicht (?:näher )?bestimmbar|not determined|(?:indet|undet|indét|unbest|ubest|unident|unspecif)\p{L}*)\.?\)?$/iu;

/** "weave, indeterminate", "Bast unbestimmt": the kind is known as far as it is named. */
function readIndeterminate(text: string, vocabulary: Vocabulary): TermReading | null {
  const named = INDETERMINATE.exec(text.trim())?.[1];
  const match = named === undefined ? undefined : matchTerm(named, vocabulary);
  if (match?.kind !== 'exact') return null;
  return termReading(match.id, 0, [
    readAs('indeterminate', `${quote(text)} read as ${match.id}; the kind below it was not determined`),
  ]);
}

function severalTerms(
  text: string,
  vocabulary: Vocabulary,
  context: CellContext,
  steps: number,
  notes: readonly Note[],
): TermReading | null {
  let list: Note | null = null;
  for (const [pattern, rule] of [
    [OR, 'alternative'],
    [vocabulary.mixes === true ? MIXED : AND, 'several'],
  ] as const) {
    const parts = text.split(pattern).map((part) => part.trim());
    if (parts.length < 2 || parts.length > MOST_PARTS || parts.some((part) => part === '')) continue;
    let doubted = steps;
    const ids = parts.map((part) => {
      const doubt = takeDoubt(part);
      doubted = Math.max(doubted, steps + doubt.steps);
      const settled = translated(doubt.rest, context);
      if (settled !== undefined) return settled;
      const match = matchTerm(doubt.rest, vocabulary);
      return match.kind === 'exact' ? match.id : null;
    });
    if (ids.some((id) => id === null)) {
      list ??= partlyKnown(parts, ids, rule);
      continue;
    }
    if (rule === 'several' && vocabulary.mixes === true)
      return mixed(
        text,
        ids.filter((id) => id !== null),
        vocabulary,
        doubted,
        notes,
      );
    const whole = rule === 'several' ? joinedBy(ids, vocabulary) : undefined;
    if (whole !== undefined)
      return termReading(whole, doubted, [...notes, readAs(rule, `${quote(text)} read as ${whole}`)]);
    const common = ids.reduce((a, b) => (a === null || b === null ? null : lowestCommon(vocabulary, a, b)));
    const named = ids.join(rule === 'alternative' ? ' or ' : ' and ');
    if (common === null) {
      return emptyTerm('not-observed', [notUnderstood(rule, `${named}: no broader term holds them all`)]);
    }
    const note =
      common === ids[0] && ids.every((id) => id === common)
        ? readAs(rule, named)
        : flagged(rule, `${named}: read as what they have in common, ${common}`);
    return termReading(common, doubted, [...notes, note]);
  }
  return list === null ? null : emptyTerm('not-observed', [list]);
}

/** The term that says at once what all of these say. */
function joinedBy(ids: readonly (string | null)[], vocabulary: Vocabulary): string | undefined {
  return vocabulary.terms.find(
    ({ joins = [] }) =>
      joins.length > 0 &&
      joins.every((part) => ids.some((id) => id !== null && isWithin(vocabulary, id, part))) &&
      ids.every((id) => id !== null && joins.some((part) => isWithin(vocabulary, id, part))),
  )?.id;
}

/** All at once; a broader term beside a narrower one ("bast, flax") only says it again. */
function mixed(
  text: string,
  ids: readonly string[],
  vocabulary: Vocabulary,
  doubt: number,
  notes: readonly Note[],
): TermReading {
  const narrowest = ids.filter((id) => !ids.some((other) => other !== id && isWithin(vocabulary, other, id)));
  const term = mixtureOf(narrowest);
  const note =
    narrowest.length < ids.length
      ? flagged('several', `${quote(text)}: a broader term stands beside a narrower one; read as ${term}`)
      : readAs('mixture', `${quote(text)}: ${narrowest.length > 1 ? 'all of them at once' : term}`);
  return termReading(term, doubt, [...notes, note]);
}

/** Two different kinds that are known make a list, whatever the others are; of it no single term is the meaning. */
function partlyKnown(parts: readonly string[], ids: readonly (string | null)[], rule: string): Note | null {
  const known = new Set(ids.filter((id) => id !== null));
  if (known.size < 2) return null;
  const unknown = parts.filter((_, at) => ids[at] === null).map(quote);
  return notUnderstood(
    rule,
    `${[...known].join(' and ')} are known in it, ${unknown.join(' and ')} ${unknown.length === 1 ? 'is' : 'are'} not`,
  );
}
