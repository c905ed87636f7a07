import type { AttributeDefinition } from '../attributes/definition.ts';
import { lowered, takeDoubt } from './certainty.ts';
import type { CellContext } from './context.ts';
import { emptyTerm, flagged, notUnderstood, quote, readAs } from './notes.ts';
import { readNothing } from './nothing.ts';
import type { TermReading } from './reading.ts';
import { foldCell, ownValue } from './text.ts';
import { presenceInWords } from './wording/presence-words.ts';

const set = (words: string): ReadonlySet<string> => new Set(words.split('|'));

const YES = set(
  'yes|y|true|t|1|x|+|✓|✔|☑|■|●|•|*|present|pres.|pres|there|observed|seen|with|has|exists|ja|j|wahr|vorhanden|vorh.|vorh|mit|' +
    'oui|vrai|presente|presents|avec|si|vero|presenti|con|verdadero|existe|sand|sann|til stede|tilstede|findes|finnes|med|有',
);
const NO = set(
  'no|n|false|f|0|o|absent|abs.|none|not present|without|nein|falsch|nicht vorhanden|fehlt|keine|keiner|kein|ohne|' +
    'non|faux|absente|aucun|aucune|sans|falso|assente|nessuno|nessuna|senza|ausente|ninguno|ninguna|sin|' +
    'nej|nei|falsk|ingen|intet|mangler|uden|uten|ikke til stede|ikke tilstede|無',
);

/** Looked for by analysis and not found; other words with "not" say that nobody could look. */
const NOT_DETECTED =
  /^(?:undetected|below detection)\b|^(?:not|non|no|nicht|ikke) (?:se )?(?:detecto|detected|detecte|detectee|rilevat[oa]|detectad[oa]|pavist|nachgewiesen|found|trouve)\b/u;

/**
 * Reads yes and no, present and absent, marks (x, +) and 1/0. The term is `present` or `absent`; "absent"
 * also sets the state, because it says that someone looked. A number above 1 is a count, so present, flagged.
 */
export function readPresence(
  text: string,
  context: CellContext,
  attribute?: AttributeDefinition,
): TermReading {
  const settled = ownValue(context.translations, text) ?? ownValue(context.translations, text.trim());
  if (settled === 'present' || settled === 'absent') {
    return reading(settled === 'present', 0, [
      readAs('translation', `${quote(text)} read as ${settled}, as the profile says`),
    ]);
  }
  const whole = foldCell(text);
  if (YES.has(whole) || NO.has(whole)) return reading(YES.has(whole), 0, []);
  const nothing = readNothing(text, 'without absent');
  const sought = nothing === null || NOT_DETECTED.test(whole);
  const doubt = takeDoubt(whole);
  // "Peut-être teint": the doubt is taken off before the words are read, lest one of them pass as filling.
  const plain = doubt.steps === 0 || doubt.marks.includes('( )');
  const inWords = sought && plain ? presenceInWords(text, attribute) : null;
  if (inWords !== null) return reading(inWords.present, 0, [inWords.note]);
  if (nothing !== null) {
    const dash = nothing.notes.some(({ rule }) => rule === 'dash');
    const why = `${quote(text)} read as not observed; beside "+" or "x" it usually means absent`;
    return emptyTerm(nothing.state, dash ? [flagged('dash', why)] : nothing.notes);
  }
  const uncertain =
    doubt.steps > 0 ? [flagged('uncertain', `marked as uncertain (${doubt.marks.join(', ')})`)] : [];
  if (YES.has(doubt.rest) || NO.has(doubt.rest)) return reading(YES.has(doubt.rest), doubt.steps, uncertain);
  if (/^(?:\+{2,3}|x{2,3}|[1-9]\d{0,3})$/u.test(doubt.rest)) {
    return reading(true, doubt.steps, [
      ...uncertain,
      flagged('count-as-presence', `${quote(text)} read as present`),
    ]);
  }
  const later = presenceInWords(doubt.rest, attribute);
  if (later !== null) return reading(later.present, doubt.steps, [...uncertain, later.note]);
  return emptyTerm('not-observed', [notUnderstood('yes-or-no', `${quote(text)} is neither a yes nor a no`)]);
}

function reading(yes: boolean, doubt: number, notes: TermReading['notes']): TermReading {
  const certainty = lowered('certain', doubt);
  return yes
    ? { kind: 'term', term: 'present', state: 'measured', certainty, notes }
    : { kind: 'term', term: 'absent', state: 'absent', certainty, notes };
}
