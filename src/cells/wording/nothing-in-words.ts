import type { AttributeDefinition } from '../../attributes/definition.ts';
import { quote, readAs } from '../notes.ts';
import { readNothing } from '../nothing.ts';
import type { CellState, Note } from '../reading.ts';
import {
  DAMAGED,
  DENYING,
  DETERMINING,
  FINDING,
  FINE,
  GONE,
  isFilling,
  isName,
  isNoun,
  LASTING,
  OBSERVING,
  stems,
  TESTING,
  TOO,
  UNDER_WAY,
  UNKNOWN,
  wordsOf,
} from './word-classes.ts';

/** No value, said in a sentence: nobody could tell, or somebody looked and it is not there. */
export interface NothingSaid {
  readonly state: Extract<CellState, 'not-observed' | 'absent'>;
  readonly note: Note;
}

const LONGEST = 90;
const MOST_WORDS = 10;

type Kind =
  | 'gone'
  | 'way'
  | 'deny'
  | 'none'
  | 'observe'
  | 'test'
  | 'last'
  | 'find'
  | 'unknown'
  | 'too'
  | 'damaged'
  | 'fine'
  | 'noun'
  | 'fill';

/**
 * Reads sentences that hold no value: "Drehung nicht erkennbar", "too degraded to count", "lisières non conservées",
 * "no selvedge", "dye analysis not carried out". Every word must be known to say nothing else; one word more and
 * nothing is read.
 *
 * - Not seen, not measured, not kept, not analysed, unknown: not observed.
 * - Not found, or "no" straight before the thing itself ("keine Webkante", "aucune réparation visible"): absent, where
 *   the attribute can be absent.
 */
export function nothingInWords(text: string, attribute: AttributeDefinition): NothingSaid | null {
  if (text.length > LONGEST || /\d/u.test(text)) return null;
  // A letter for a direction is a value, whatever stands beside it; folded, Danish "løst" (loose) is English "lost".
  if (TURNS.has(attribute.id) && /(?<![\p{L}'’])[sz](?![\p{L}'’])/iu.test(text)) return null;
  const words = wordsOf(text.replace(/(?<!\p{L})løst(?!\p{L})/giu, 'loest'));
  if (words.length < 2 || words.length > MOST_WORDS) return null;
  const named = NAMED.has(attribute.id);
  const own = ownNouns(attribute);
  if (signBehindName(text, (word) => (named ? isName(word) : isNoun(word)) || own.has(word)))
    return {
      state: 'not-observed',
      note: readAs('nothing-in-words', `${quote(text)} names the thing, and that nothing is known of it`),
    };
  // Of preservation "very charred" is the mode, and no reason why nobody could tell.
  if (attribute.vocabulary === 'preservation' && words.some((word) => DAMAGED.test(word))) return null;
  if (reasonAndNothing(text, attribute)) {
    const why = `${quote(text)} says why nothing could be told`;
    return { state: 'not-observed', note: readAs('nothing-in-words', why) };
  }
  const kinds: Kind[] = [];
  for (const word of words) {
    const kind = kindOf(word, named, own);
    if (kind === null) return null;
    kinds.push(kind);
  }
  const stated = stateOf(kinds);
  // Without a date or a name is undated and unnamed: nothing of the kind can be absent.
  const said = stated === 'absent' && (named || attribute.unit === 'year') ? 'not-observed' : stated;
  if (said === null || (said === 'absent' && !ABSENT_THERE(attribute))) return null;
  const why = `${quote(text)} read as ${said === 'absent' ? 'looked for and absent' : 'not observed'}`;
  return { state: said, note: readAs(said === 'absent' ? 'absent-in-words' : 'nothing-in-words', why) };
}

/** "Charred, not readable", "verkohlt, nicht bestimmbar": what happened to it, and that nobody could tell. */
function reasonAndNothing(text: string, attribute: AttributeDefinition): boolean {
  const [reason = '', said = '', ...more] = text.split(/[,;] ?/u);
  const words = wordsOf(reason);
  if (more.length > 0 || said === '' || words.length === 0) return false;
  const damage = words.some((word) => DAMAGED.test(word));
  const only = words.every((word) => DAMAGED.test(word) || TOO.test(word) || isFilling(word));
  return (
    damage &&
    only &&
    (readNothing(said, 'without absent')?.state === 'not-observed' ||
      nothingInWords(said, attribute)?.state === 'not-observed')
  );
}

/** "Vello: n.d.", "twist n.v.": the thing named, and behind it a sign for nothing. */
function signBehindName(text: string, names: (word: string) => boolean): boolean {
  const [, name = '', sign = ''] = /^([\p{L} ]{2,40}?)(?: ?[:=] ?| [-–—] | )(\S.*)$/u.exec(text.trim()) ?? [];
  const words = wordsOf(name);
  return (
    words.length > 0 &&
    words.every((word) => names(word) || isFilling(word)) &&
    words.some(names) &&
    readNothing(sign, 'without absent')?.state === 'not-observed' &&
    !/^(?:[-–—.?]|\(\?\))+$/u.test(sign)
  );
}

const TURNS = new Set(['twist1', 'twist2', 'rowSlant', 'ply1', 'ply2']);

/** Attributes whose cells are names: there a noun of places and times says what has no name. */
const NAMED = new Set(['site', 'region', 'phase', 'period', 'context']);

/** Edges may be absent as pile may; a fibre, a structure or a count is there whatever is seen of it. */
const ABSENT_THERE = ({ scale, vocabulary }: AttributeDefinition): boolean =>
  scale === 'presence' || scale === 'binary' || vocabulary === 'edge' || vocabulary === 'processing';

function kindOf(word: string, named: boolean, own: ReadonlySet<string>): Kind | null {
  if (GONE.test(word)) return 'gone';
  if (UNDER_WAY.test(word)) return 'way';
  if (DETERMINING.test(word)) return 'none';
  if (DENYING.test(word)) return 'deny';
  if (UNKNOWN.test(word) || (named && UNCERTAIN.test(word))) return 'unknown';
  if (LASTING.test(word)) return 'last';
  if (TESTING.test(word)) return 'test';
  if (FINDING.test(word)) return 'find';
  if (OBSERVING.test(word)) return 'observe';
  if (TOO.test(word)) return 'too';
  if (DAMAGED.test(word)) return 'damaged';
  if (FINE.test(word)) return 'fine';
  if (named ? isName(word) : isNoun(word) || own.has(word)) return 'noun';
  return isFilling(word) ? 'fill' : null;
}

function stateOf(kinds: readonly Kind[]): NothingSaid['state'] | null {
  const has = (kind: Kind) => kinds.includes(kind);
  const denies = (kind: Kind | undefined) => kind === 'deny' || kind === 'none';
  const denial = kinds.findIndex(denies);
  if (has('way')) return has('test') && denial < 0 ? 'not-observed' : null;
  if (has('gone')) return has('noun') && denial < 0 && !has('unknown') ? 'absent' : null;
  if (has('unknown')) return denial < 0 ? 'not-observed' : null;
  if (has('too') && (has('damaged') || (has('fine') && has('observe')))) return 'not-observed';
  if (has('fine')) return null;
  if (denial < 0 || has('damaged')) return null;
  // Two denials are no sentence of this kind, but for "ne … pas" side by side.
  if (kinds.filter((kind, at) => denies(kind) && !denies(kinds[at - 1])).length > 1) return null;
  if (has('last') || has('test')) return 'not-observed';
  if (has('find')) return 'absent';
  const said = kinds.slice(denial).filter((kind) => kind !== 'deny' && kind !== 'none' && kind !== 'fill');
  if (said[0] === 'noun') return 'absent';
  // "No visible pile" denies the pile, "pile not visible" the sight of it.
  if (kinds[denial] === 'none' && said.includes('noun')) return has('fill') ? null : 'absent';
  return has('observe') ? 'not-observed' : null;
}

/** An uncertain name is none; an uncertain twist is one. */
const UNCERTAIN = stems(
  'uncertain unsicher\\p{L}* fraglich\\p{L}* incertaine?s? incert[oaie] inciert[oa]s? usikke[rt]\\p{L}* doubtful uviss?t?',
);
const OWN_NOUNS = new WeakMap<AttributeDefinition, ReadonlySet<string>>();

/** Words of the attribute's own name, long enough to be no sign and no preposition. */
function ownNouns(attribute: AttributeDefinition): ReadonlySet<string> {
  const known = OWN_NOUNS.get(attribute);
  if (known !== undefined) return known;
  const names = [attribute.label, ...Object.values(attribute.synonyms ?? {}).flat()];
  const nouns = new Set(names.flatMap((name) => wordsOf(name)).filter((word) => word.length > 3));
  OWN_NOUNS.set(attribute, nouns);
  return nouns;
}
