import type { CellContext } from './context.ts';
import { IDEM } from './idem.ts';
import { flagged, quote, readAs } from './notes.ts';
import type { CellState, Note } from './reading.ts';
import { foldCell, ownValue } from './text.ts';

/** Why a cell holds no value, and the note that says so. */
export interface Nothing {
  readonly state: CellState;
  readonly notes: readonly Note[];
}

const set = (words: string): ReadonlySet<string> => new Set(words.split('|'));

const NOT_OBSERVED = set(
  '?|??|???|(?)|indet|indet.|indeterminate|indetermine|indeterminato|indeterminado|undetermined|undeterminable|unbestimmt|' +
    'n.b.|n. b.|nicht bestimmbar|unbestimmbar|nicht beobachtet|nicht erhalten|nicht feststellbar|nicht messbar|nicht sichtbar|' +
    'nicht erkennbar|nicht untersucht|n.d.|nd|n. d.|n/d|not determined|not determinable|not observed|not observable|' +
    'not investigated|not yet examined|analysis pending|pending|in arbeit|noch nicht untersucht|noch nicht analysiert|nicht auszahlbar|n. zahlbar|not countable any more|' +
    'obscured|hidden|covered|verdeckt|cache|cachee|masque|nascosto|nascosta|coperto|oculto|oculta|skjult|daekket|unbek|ign.|untested|unanalysed|awaiting analysis|analysis awaited|analyse steht aus|analyse ausstehend|' +
    "keine analyse|no analysis|pas d'analyse|aucune analyse|nessuna analisi|sin analisis|ingen analyse|" +
    'n.r.|n. r.|n/r|n/d.|i.o.|i. o.|ikke oplyst|i.m.|i. m.|not countable|uncountable|not counted|destroyed|too damaged|too poorly preserved|not analysed|not analyzed|not tested|not examined|none preserved|none survive|' +
    'nicht zahlbar|unzahlbar|nicht gezahlt|keine erhalten|keiner erhalten|zerstort|zu schlecht erhalten|nicht analysiert|nicht gepruft|keine bestimmung|' +
    'non comptable|non compte|detruit|detruite|non analyse|non analysee|non teste|aucun conserve|non contabile|distrutto|distrutta|non analizzato|non analizzata|nessuno conservato|' +
    'no contable|destruido|destruida|no analizado|no analizada|ninguno conservado|kan ikke taelles|ikke taellelig|odelagt|ikke analyseret|ikke analysert|ikke undersogt|ikke undersokt|ingen bevaret|ingen bevart|' +
    'not visible|not preserved|not recorded|not measured|not measurable|not known|not seen|not stated|not available|' +
    "not legible|illegible|invisible|unknown|unclear|missing|lost|unreadable|no data|cant|can't|cannot say|" +
    'k.a.|k. a.|keine angabe|keine angaben|o.a.|ohne angabe|unbekannt|unleserlich|unklar|verloren|' +
    'inconnu|inconnue|non determine|non determinable|non observe|non visible|non conserve|non mesurable|illisible|perdu|' +
    'sconosciuto|non determinabile|non determinato|non osservato|non visibile|non conservato|non rilevabile|illeggibile|' +
    'desconocido|no determinado|no determinable|no observado|no visible|no conservado|no se observa|ilegible|sin datos|s.d.|s/d|' +
    'ukendt|ukjent|ikke bevaret|ikke bevart|ikke synlig|ikke bestemt|ikke malt|ubestemt|ubestemmelig|ulaeselig|' +
    'sans donnees|pas de donnees|non disponible|non renseigne|non renseignee|nicht verfugbar|nicht vorliegend|no disponible|non disponibile|dato non disponibile|ikke tilgaengelig|ikke tilgjengelig|ikke oppgitt|ej oplyst|keine ang.|keine daten|no dato|n.v.|unavailable|not avail.|not given|not reported|blank|' +
    'null|nan|none recorded|(null)|#n/a|#n/v|#na|#value!|#wert!|#ref!|#div/0!|#name?|#num!|tbd|n.m.|n. m.|undated|undatiert|undat.|non date|non datee|non datato|non datata|sin datar|sin fecha|udateret|udatert',
);
const NOT_APPLICABLE = set(
  'not applicable|inapplicable|n.app.|n. app.|non-applicable|entfallt|nicht anwendbar|trifft nicht zu|nicht zutreffend|' +
    'non applicable|sans objet|non applicabile|non pertinente|no aplica|no aplicable|no procede|' +
    'ikke relevant|ikke aktuelt|ikke anvendelig',
);
const AMBIGUOUS = set('n/a|n.a.|n. a.|na|n.a|n/a.|<na>');
const ABSENT = set(
  'none|no|nil|absent|not present|lacking|without|keine|keiner|kein|keines|fehlt|fehlend|nicht vorhanden|ohne|' +
    'aucun|aucune|absente|absents|non|sans|manquant|nessuno|nessuna|assente|senza|ninguno|ninguna|ausente|sin|' +
    'ingen|intet|fravaerende|mangler|uden|uten',
);
/** "non det.", "nicht best.", "ikke bestemt", "indéterminée", "unident.": the same in any inflection, cut short or not. */
const NOT_DETERMINED =
  /^(?:(?:not|non|no|pas|nicht|kan ikke|ikke|ej|n)[. ]+(?:det|obs|vis|ident|cons|mes|mis|ermitt|sampl|beprob|campion|muestr|prov|anal|rilev|ril|med|reg|best|bev|erh|mess|erk|meas|pres|mal(?:t|es|bar)|synl|opl|oppg|angiv|doc|specif)\p{L}*|(?:indet|undet(?!ect)|unbest|ubest|unident|neident|inident|no ident)\p{L}*)\.?$/u;
const DASH = /^(?:[-.·•/_ ]+|--+)$/u;
/** "Siehe oben" in German lists, "sans objet" in French ones: the same as above, or that nothing could be there. */
const DOUBTFUL_IDEM = set('s.o.|s. o.');

/** Whether a cell may say "the same as the one above" and may as well say that there is nothing to say. */
export function isDoubtfulIdem(text: string): boolean {
  return text.length <= LONGEST && DOUBTFUL_IDEM.has(foldCell(text));
}

/** Whether a cell says "the same as the one above"; the reader of the whole column copies down. */
export function isIdem(text: string): boolean {
  if (text.length > LONGEST || PLAIN_NUMBER.test(text)) return false;
  return IDEM.has(foldCell(text)) || text.trim() === '„';
}

/** By far the most cells of most tables, which say something beyond doubt. */
const PLAIN_NUMBER = /^\d+(?:[.,]\d+)?$/;

/** The source's own code for this text, which wins over every rule; exact spelling first, then folded. */
export function profileCode(text: string, missing: CellContext['missing']): CellState | undefined {
  if (missing === undefined) return undefined;
  const exact = ownValue(missing, text) ?? ownValue(missing, text.trim());
  if (exact !== undefined) return exact;
  const folded = foldCell(text);
  const key = Object.keys(missing).find((code) => foldCell(code) === folded);
  return key === undefined ? undefined : missing[key];
}

/**
 * Reads the four kinds of nothing. `null` when the text says something else. Profile codes are looked up
 * by profileCode before this. `words` off leaves out words that are a value in some columns ("none", "no").
 *
 * "n/a" may be "not applicable" or "not available": it is read as not observed and flagged, and whoever
 * knows the structure of the find may settle it. A dash is not observed by default, and said to be a default.
 */
export function readNothing(text: string, words: 'all' | 'without absent' = 'all'): Nothing | null {
  if (PLAIN_NUMBER.test(text)) return null;
  const folded = foldCell(text);
  if (folded === '') return { state: 'not-observed', notes: [] };
  if (IDEM.has(folded) || text.trim() === '„') {
    const why = DOUBTFUL_IDEM.has(folded)
      ? `${quote(text)} may mean "as above" (siehe oben) or "not applicable" (sans objet); read as not observed: the source's profile can say which, under "missing"`
      : `${quote(text)} repeats the cell above; the value is to be copied down`;
    return { state: 'not-observed', notes: [flagged('idem', why)] };
  }
  if (DASH.test(folded)) {
    const why = `${quote(text)} read as not observed; in some sources it means absent or not applicable`;
    return { state: 'not-observed', notes: [readAs('dash', why)] };
  }
  const spellings = spellingsOf(folded);
  if (spellings.some((one) => AMBIGUOUS.has(one))) {
    const why = `${quote(text)} may mean not applicable or not available; read as not observed`;
    return { state: 'not-observed', notes: [flagged('na-ambiguous', why)] };
  }
  if (spellings.some((one) => NOT_OBSERVED.has(one) || NOT_DETERMINED.test(one)))
    return nothing('not-observed', 'not-observed', text);
  if (spellings.some((one) => NOT_APPLICABLE.has(one)))
    return nothing('not-applicable', 'not-applicable', text);
  if (words === 'all' && ABSENT.has(folded)) return nothing('absent', 'absent', text);
  return null;
}

/**
 * The spellings under which a wording may be known: joined by "_" or "-" ("Not_Available"), in brackets, with a
 * full stop, an abbreviation with or without its stops and spaces ("s. d.", "k.A").
 */
function spellingsOf(folded: string): readonly string[] {
  if (folded.length > LONGEST) return [folded];
  const bare = folded
    .replace(/^[([<]\s*|\s*[)\]>]$/gu, '')
    .replace(/(?<=\p{L})[_-](?=\p{L})/gu, ' ')
    .trim();
  const abbreviated = /^(?:\p{L}\.? ?){2,3}$/u.test(bare) && /\./u.test(bare);
  const stops = abbreviated ? bare.replace(/(\p{L})\.? ?/gu, '$1.') : bare.replace(/\.$/u, '');
  return [...new Set([folded, bare, stops])];
}

const LONGEST = 40;

function nothing(state: CellState, rule: string, text: string): Nothing {
  return { state, notes: [readAs(rule, `${quote(text)} read as ${state.replace('-', ' ')}`)] };
}
