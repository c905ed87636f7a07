import { abbreviatedFrom, type Whole } from './abbreviated.ts';
import { AMBIGUOUS_HEADERS } from './ambiguous/headers.ts';
import { AMBIGUOUS_TERMS } from './ambiguous/terms.ts';
import type { AttributeDefinition, DescriptionWord, Register, Vocabulary } from './definition.ts';
import { foldText as foldWords, lookupKey, splitWords } from './folding.ts';
import { splitHeader, type UnitKind, unitKind, withoutInches } from './header.ts';
import { likeness, prepareWording } from './likeness.ts';
import { headerIndex, headerKey, type Known, termIndex, type WordingIndex } from './wording-index.ts';

export { foldText } from './folding.ts';
export { headerUnit, splitHeader } from './header.ts';

/**
 * What a header or a term was recognised as. `exact` may be taken; `suggested` is used only when a
 * person confirms it; `via` is the known wording that it met.
 */
export type Match =
  | {
      readonly kind: 'exact';
      readonly id: string;
      readonly via: string;
      /** The wording met is cut short in the text. */
      readonly short?: true;
    }
  | {
      readonly kind: 'suggested';
      readonly id: string;
      readonly via: string;
      /** One sentence: why this is only suggested. */
      readonly reason: string;
      /** 0 to 1; comparable within one call only. */
      readonly score: number;
    }
  | {
      readonly kind: 'none';
      readonly reason?: string;
      /** What it may mean all the same, where the cells can tell which: id -> the wording met. */
      readonly mayBe?: ReadonlyMap<string, string>;
    };

/** Longer texts are prose: they are looked up, never compared letter by letter. */
const LONGEST_COMPARED = 120;
const LEAST_SCORE = 0.5;

/**
 * Which attribute a column header names.
 *
 * - The unit is taken out first; the name must then equal a synonym, a label or an id after folding.
 * - A synonym written with a unit ("Kette/cm") is met only by a header whose unit measures the same.
 * - Suggested only: ambiguous words (see ambiguous.ts), near wordings, and exact words beside a unit
 *   of another kind ("thread count (mm)").
 *
 * A study's own attributes win over the default ones.
 */
export function matchAttribute(header: string, register: Register): Match {
  const { name, unit } = splitHeader(header);
  const key = headerKey(name);
  if (key === '') return { kind: 'none' };
  const two = twoNames(name, unit, register);
  if (two !== null) return two;
  const kind = unit === undefined ? undefined : unitKind(unit);
  const index = headerIndex(register);
  const known = index.exact.get(key) ?? [];
  const met =
    known.find((entry) => entry.unit !== undefined && entry.unit === kind) ??
    known.find((entry) => entry.unit === undefined);
  const near = () =>
    nearest(name, splitWords(name), index.all, (id) => fitsUnit(kind, register.attributes.get(id)!, unit));
  if (met !== undefined) {
    const match = checkUnit(met, unit, kind, register.attributes.get(met.id)!);
    return match.kind === 'suggested' ? better(match, near()) : match;
  }
  const whole = index.exact.get(headerKey(header))?.find((entry) => entry.unit === undefined);
  if (whole !== undefined) return { kind: 'exact', id: whole.id, via: whole.via };
  if (known.length > 0) {
    const other = known[0]!;
    return {
      kind: 'suggested',
      id: other.id,
      via: other.via,
      reason: `"${name}" is usually written with its unit, as in "${other.via}"; here the unit is ${unit ?? 'not given'}`,
      score: 0.8,
    };
  }
  const ambiguous = AMBIGUOUS_HEADER_KEYS.get(key);
  const settled = kind === undefined ? undefined : ambiguous?.byUnit?.[kind];
  if (settled !== undefined) return { kind: 'exact', id: settled, via: name };
  if (ambiguous !== undefined) {
    // Beside a unit only what can be measured in it is meant: "Brins (mm)" is no number of plies.
    const fits = (id: string) => {
      const attribute = register.attributes.get(id);
      return attribute !== undefined && fitsUnit(kind, attribute, unit) > 0;
    };
    if (ambiguous.candidates.length === 0 || ambiguous.candidates.some(fits))
      return ambiguity(name, ambiguous, fits);
  }
  return inInches(header, index, register) ?? inShort(name, unit, register) ?? near();
}

/** "Trench/context": both names are of one attribute; "Site/Phase": a cell holds two, and neither alone. */
function twoNames(name: string, unit: string | undefined, register: Register): Match | null {
  const names = name.split(/\s*[/|]\s*/u);
  if (names.length !== 2) return null;
  const [first, second] = names.map((one) => matchAttribute(besideUnit(one, unit), register));
  if (first?.kind !== 'exact' || second?.kind !== 'exact') return null;
  if (first.id === second.id) return first;
  const [a, b] = [first, second].map(({ id }) => register.attributes.get(id)!.label);
  return { kind: 'none', reason: `"${name}" names two things, ${a} and ${b}` };
}

const besideUnit = (name: string, unit: string | undefined) =>
  unit === undefined ? name : `${name} (${unit})`;

/**
 * A header of which each word begins one of a known header. Taken where points mark what was cut and all that it may
 * be short for is one attribute; else suggested, or only explained where it may be short for several.
 */
function inShort(name: string, unit: string | undefined, register: Register): Match | null {
  const index = headerIndex(register);
  const found = abbreviatedFrom(name, [...index.all, ...AMBIGUOUS_WHOLES], index.parts);
  if (found === null) return null;
  const wholes = new Map(found.wholes.map(({ via }) => [headerKey(splitHeader(via).name), via]));
  const matches = [...wholes.values()].flatMap((via) => {
    const match = matchAttribute(besideUnit(splitHeader(via).name, unit), register);
    return match.kind === 'none' ? [] : [match];
  });
  const exact = matches.filter(({ kind }) => kind === 'exact');
  const told = exact.length > 0 ? exact : matches;
  const [match] = told;
  if (match === undefined) return null;
  const mayBe = new Map(told.map(({ id, via }) => [id, via]));
  if (mayBe.size > 1) {
    const [a, b] = [...mayBe.values()];
    return { kind: 'none', reason: `"${name}" may be short for "${a}" or "${b}"`, mayBe };
  }
  if (match.kind === 'suggested') return match;
  return found.marked ? { ...match, short: true } : shortFor(name, match.id, match.via);
}

const shortFor = (shown: string, id: string, via: string): Match => ({
  kind: 'suggested',
  id,
  via,
  reason: `"${shown.trim()}" may be short for "${via}"`,
  score: 0.93,
});

function better(match: Match & { readonly kind: 'suggested' }, other: Match): Match {
  // One of the words is less than all of them.
  if (other.kind !== 'suggested' || /shares the words/.test(other.reason)) return match;
  return other.score > match.score ? other : match;
}

/** "Length in": a length in inches, if a person says so. */
function inInches(header: string, index: WordingIndex, register: Register): Match | null {
  const name = withoutInches(header);
  const met = name === null ? undefined : index.exact.get(headerKey(name))?.[0];
  const attribute = met === undefined ? undefined : register.attributes.get(met.id);
  if (met === undefined || attribute?.unit === undefined || unitKind(attribute.unit) !== 'length')
    return null;
  const reason = `the last word of "${header.trim()}" may be the unit: ${attribute.label} in inches`;
  return { kind: 'suggested', id: met.id, via: met.via, reason, score: 0.9 };
}

/** Words of several meanings may be cut short as well. */
const AMBIGUOUS_WHOLES: readonly Whole[] = AMBIGUOUS_HEADERS.flatMap(({ words }) =>
  words.map((via) => ({ via, wording: prepareWording(splitWords(splitHeader(via).name)) })),
);

const AMBIGUOUS_HEADER_KEYS: ReadonlyMap<string, (typeof AMBIGUOUS_HEADERS)[number]> = new Map(
  AMBIGUOUS_HEADERS.flatMap((entry) => entry.words.map((word) => [headerKey(word), entry] as const)),
);

/** What a near wording is worth where its unit would have to be turned over or read as "divided by". */
const ROUNDABOUT = 0.75;

/**
 * How well the unit beside a near wording fits an attribute, as a factor of likeness: 1 for the same kind or
 * none, 0 for a kind that leaves no reason to suggest anything.
 */
function fitsUnit(
  kind: UnitKind | undefined,
  attribute: AttributeDefinition,
  unit: string | undefined,
): number {
  if (kind === undefined) return 1;
  const wanted = attribute.unit === undefined ? undefined : unitKind(attribute.unit);
  if (wanted === kind) return 1;
  // What was measured or counted is no kind: "Yarn Ø (mm)" is not the make-up of a yarn.
  if (wanted === undefined) return MEASURES.has(kind) ? 0 : ROUNDABOUT;
  // Counts and spacings of one attribute are turned over; "Länge / cm" is a length in cm.
  const spacing = attribute.block === 'spacing' && kind === 'count' && wanted === 'length';
  const divided = unitKind(/^per (\D+)$/u.exec(unit ?? '')?.[1] ?? '') === wanted;
  return spacing || divided ? ROUNDABOUT : 0;
}

/**
 * Which term of a vocabulary a wording names. Exact after folding; ambiguous words, inflections and
 * near wordings are suggested with the reason.
 */
export function matchTerm(text: string, vocabulary: Vocabulary): Match {
  const key = lookupKey(text);
  if (key === '') return { kind: 'none' };
  const index = termIndex(vocabulary);
  const met = index.exact.get(key)?.[0];
  if (met !== undefined) return { kind: 'exact', id: met.id, via: met.via };
  const ambiguous = ambiguousTerm(key, vocabulary);
  if (ambiguous !== undefined) {
    const accented = ambiguous.accented?.[text.trim().toLowerCase().normalize('NFC')];
    if (accented !== undefined && vocabulary.terms.some((term) => term.id === accented))
      return { kind: 'exact', id: accented, via: text.trim() };
    return ambiguity(text, ambiguous, (id) => vocabulary.terms.some((term) => term.id === id));
  }
  const forms = INFLECTED.has(vocabulary.id)
    ? inflections(key)
    : vocabulary.id === 'fibre'
      ? withoutFibre(text)
      : [];
  if (forms.length > 0) {
    const inflected = forms.map((form) => index.exact.get(form)?.[0]).filter((known) => known !== undefined);
    const ids = new Set(inflected.map(({ id }) => id));
    if (ids.size === 1) return { kind: 'exact', id: inflected[0]!.id, via: inflected[0]!.via };
  }
  return (
    askedTerm(text, key, vocabulary) ?? termInShort(text, index) ?? nearest(text.trim(), text, index.all)
  );
}

/** "Weidenb.": one term whose wordings begin so; never taken unasked. */
function termInShort(text: string, index: WordingIndex): Match | null {
  if (!text.includes('.') || text.length > LONGEST_SHORT) return null;
  const found = abbreviatedFrom(text, index.all, index.parts);
  const ids = new Set(found?.wholes.map(({ id }) => id));
  const [first] = found?.wholes ?? [];
  return first !== undefined && ids.size === 1 ? shortFor(text, first.id, first.via) : null;
}

const LONGEST_SHORT = 40;

/** A wording of descriptions that is asked about, or that only its accents settle. */
function askedTerm(text: string, key: string, vocabulary: Vocabulary): Match | null {
  const met = (vocabulary.words ?? []).filter((entry) =>
    Object.values(entry.synonyms)
      .flat()
      .some((wording) => lookupKey(wording) === key),
  );
  const spelled = text.trim().toLowerCase().normalize('NFC');
  const settled = met.find(
    ({ accented, synonyms }) => accented === true && Object.values(synonyms).flat().includes(spelled),
  );
  const term = settled?.sets[vocabulary.id];
  if (term !== undefined)
    return { kind: 'exact', id: nameOf(settled!, vocabulary) ?? term, via: text.trim() };
  const asked = met.find(({ asks, accented }) => asks !== undefined && accented !== true);
  if (asked?.asks === undefined) return null;
  return ambiguity(text, { candidates: [asked.suggests ?? ''], why: asked.asks }, (id) => id !== '');
}

/** The name under which the same meaning goes, where it has one. */
function nameOf({ sets }: DescriptionWord, { words = [] }: Vocabulary): string | undefined {
  const same = JSON.stringify(Object.entries(sets).sort());
  return words.find(
    (entry) => entry.id !== undefined && JSON.stringify(Object.entries(entry.sets).sort()) === same,
  )?.id;
}

/** Vocabularies of adjectives and participles, which take the gender and number of what they describe. */
const INFLECTED: ReadonlySet<string> = new Set(['preservation', 'tightness', 'processing', 'spacingClass']);

/** The same word in its dictionary form: carbonisées -> carbonise, verkohlter -> verkohlt, desecada -> desecado. */
function inflections(key: string): readonly string[] {
  const forms: string[] = [];
  for (const [ending, instead] of ENDINGS) {
    if (ending.test(key)) forms.push(key.replace(ending, instead));
  }
  // "gorgée d'eau": the first word carries the ending.
  const first = /^(.{4,}?)(?:ees|ee|es|e|a|as|os|i)(deau|deagua|dacqua)$/u.exec(key);
  if (first !== null) forms.push(`${first[1]}e${first[2]}`, `${first[1]}o${first[2]}`);
  return forms.filter((form) => form.length >= 3 && form !== key);
}

/** A fibre named with the word for one, in the plural, or with the author of its Latin name: "Flachsfasern", "fil de lin". */
function withoutFibre(text: string): readonly string[] {
  const named = text.trim().replace(/ (?:L|Mill|Gaertn|Roth|Medik)\.$/u, '');
  const folded = foldWords(named);
  const bare = folded
    .replace(/^(?:fibres?|fils?|fibra|fibre|filo|fili|filato|fibras|hilos?) (?:de |di |d )/u, '')
    .replace(/ ?(?:fibres?|fibers?|fasern?|fibrer)$/u, '');
  const plural = /[^s]s$|(?:haare|fasern)$/u.test(folded) ? folded.replace(/.$/u, '') : '';
  const adjective = folded.replace(/s(?= )|s$/gu, '');
  return [lookupKey(named), lookupKey(bare), lookupKey(plural), lookupKey(adjective)].filter(
    (form) => form.length >= 3 && form !== lookupKey(text),
  );
}

const ENDINGS: readonly (readonly [RegExp, string])[] = [
  [/ees$/u, 'e'],
  [/ee$/u, 'e'],
  [/es$/u, 'e'],
  [/(?:as|os|a|i|e)$/u, 'o'],
  [/(?:er|es|en|em|e)$/u, ''],
  [/o$/u, 'a'],
  [/e$/u, 'ee'],
  [/(?:he|hes)$/u, ''],
];

/** Whether a wording is exactly one that the vocabulary knows; far cheaper than a full match. */
export function isKnownTerm(text: string, vocabulary: Vocabulary): boolean {
  return termIndex(vocabulary).exact.has(lookupKey(text));
}

const AMBIGUOUS_TERM_KEYS: ReadonlyMap<string, (typeof AMBIGUOUS_TERMS)[number]> = new Map(
  AMBIGUOUS_TERMS.flatMap((entry) =>
    entry.words.map((word) => [`${entry.vocabulary} ${lookupKey(word)}`, entry] as const),
  ),
);

function ambiguousTerm(key: string, vocabulary: Vocabulary): (typeof AMBIGUOUS_TERMS)[number] | undefined {
  return AMBIGUOUS_TERM_KEYS.get(`${vocabulary.id} ${key}`);
}

/** Units that say beyond doubt that a column was measured or counted. */
const MEASURES: ReadonlySet<UnitKind> = new Set(['length', 'count', 'density', 'area', 'mass']);

function checkUnit(
  met: Known,
  unit: string | undefined,
  kind: UnitKind | undefined,
  attribute: AttributeDefinition,
): Match {
  const wanted = attribute.unit === undefined ? undefined : unitKind(attribute.unit);
  const bare = wanted === undefined && (kind === undefined || !MEASURES.has(kind));
  const same = kind === undefined || bare || kind === wanted;
  // "Länge / cm" is a length in cm as well as a count per cm.
  const divided =
    kind === 'count' &&
    wanted !== undefined &&
    unitKind(/^per (\D+)$/u.exec(unit ?? '')?.[1] ?? '') === wanted;
  if (same || divided) return { kind: 'exact', id: met.id, via: met.via };
  return {
    kind: 'suggested',
    id: met.id,
    via: met.via,
    reason: `the words are those of "${attribute.label}", which ${attribute.unit === undefined ? 'has no unit' : `is kept in ${attribute.unit}`}, but the unit here is ${unit}`,
    score: attribute.unit === undefined ? 0.5 : 0.7,
  };
}

function ambiguity(
  text: string,
  entry: { readonly candidates: readonly string[]; readonly why: string },
  exists: (id: string) => boolean,
): Match {
  const id = entry.candidates.find(exists);
  const reason = `"${text.trim()}" is ambiguous: ${entry.why}`;
  return id === undefined
    ? { kind: 'none', reason }
    : { kind: 'suggested', id, via: text.trim(), reason, score: 0.5 };
}

/** "Not flax" is never near to flax, nor "filet à nœuds" to a net without knots. */
function denies(text: string): boolean {
  return DENIAL.test(foldWords(text));
}

const DENIAL =
  /(?:^| )(?:no|not|non|without|kein\p{L}*|nicht|ohne|sans|pas|ni|senza|sin|uden|uten|ikke|ingen)(?: |$)|(?:less|los|loser|loses|lose|fri)(?: |$)/u;

function nearest(
  shown: string,
  text: string,
  all: readonly Known[],
  fits: (id: string) => number = () => 1,
): Match {
  if (text.length > LONGEST_COMPARED) return { kind: 'none' };
  const wording = prepareWording(text);
  let best: { known: Known; score: number; reason: string } | undefined;
  let rival: string | undefined;
  for (const known of all) {
    const alike = likeness(wording, known.wording);
    if (alike !== null && denies(text) !== denies(known.via)) continue;
    if (alike === null || alike.score < LEAST_SCORE) continue;
    const found = { ...alike, score: alike.score * fits(known.id) };
    if (found.score < LEAST_SCORE) continue;
    const firstOfTwo = best?.score === found.score && best.known.id === known.id.replace(/1$/u, '2');
    if (best === undefined || found.score > best.score || (firstOfTwo && best.known.id !== known.id)) {
      rival = firstOfTwo ? best?.known.via : undefined;
      best = { known, ...found };
    } else if (found.score === best.score && known.id !== best.known.id) rival ??= known.via;
  }
  if (best === undefined) return { kind: 'none' };
  const or = rival === undefined ? '' : `; "${rival}" is as near`;
  return {
    kind: 'suggested',
    id: best.known.id,
    via: best.known.via,
    reason: `"${shown}" ${best.reason}: "${best.known.via}"${or}`,
    score: best.score,
  };
}
