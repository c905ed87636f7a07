import type { Vocabulary } from '../attributes/definition.ts';
import { matchTerm } from '../attributes/matching.ts';
import type { CellContext } from './context.ts';
import { flagged, notUnderstood, quote, readAs } from './notes.ts';
import { parsePly } from './ply/parse-ply.ts';
import type { Note } from './reading.ts';
import { alternation, foldCell } from './text.ts';
import { twistInWords } from './wording/twist-words.ts';

export type Twist = 'S' | 'Z' | 'none' | 'both';

export interface TwistReading {
  readonly twist: Twist | null;
  readonly notes: readonly Note[];
}

const NONE = new Set(
  (
    "i|0|o|-0-|||'|‖|//|=|none|straight|worked straight|run straight|laid straight|untwisted|not twisted|no twist|without twist|unspun|" +
    'not spun|parallel|parallel fibres|parallel fibers|parallele fasern|fibres paralleles|fibre parallele|fibras paralelas|parallelle fibre|ungedreht|unverdreht|ohne drehung|keine drehung|ungesponnen|gerade|nicht gedreht|' +
    'sans torsion|non tordu|non tordue|non file|non filee|droit|droite|senza torsione|non ritorto|non filato|dritto|diritto|' +
    'sin torsion|sin torsiones|no torcido|sin torcer|recto|sin hilar|usnoet|utvundet|uspundet|uspunnet|uten tvinning|uden snoning|ingen|ingen snoning|lige|rett'
  )
    .split('|')
    .filter((word) => word !== '')
    .concat('|', '||', '| |', "''", 'l l', 'ii'),
);

const AND = 'and|und|et|e|y|og|&|\\+|,|;|u\\.';
const BOTH = new RegExp(
  `^(?:[sz] ?(?:${AND}) ?[sz]|both|beide|les deux|entrambi|ambos|begge|mixed|gemischt|mixte|misto|mixto|blandet)$`,
  'u',
);
const TURNS = '[sz] ?(?:[-/+&,]|and|und|et|e|y|og) ?[sz]';
const ALTERNATING = new RegExp(
  `^(?:${TURNS} )?(?:alternat\\p{L}*|alternier\\p{L}*|altern[eo]\\p{L}*|skiftevis|vekslende|wechselnd|gegenlaufig|banded|counter-?\\p{L}*)(?: ${TURNS})?$`,
  'u',
);
const HANDED =
  /(?:^|[^\p{L}])(?:left|right|clockwise|anti-?clockwise|counter-?clockwise|links|rechts|linksgedreht|rechtsgedreht|gauche|droite|sinistr\p{L}*|destr\p{L}*|izquierd\p{L}*|derech\p{L}*|venstre\p{L}*|hojre\p{L}*|hoyre\p{L}*|im uhrzeigersinn|gegen den uhrzeigersinn)(?:[^\p{L}]|$)/u;

const AROUND = alternation(
  (
    'twist|twisted|twisting|spun|spin|spinning|plied|ply|final|final twist|direction|slant|turn|single|gedreht|drehung|gesponnen|gezwirnt|zwirn|' +
    'geneigt|neigung|inclinacion|inclinaison|incline|inclinee|inclinazione|inclinado|inclinada|haeldning|helning|' +
    'richtung|drehrichtung|torsion|torsion en|tordu|retors|file|en|de|torsione|ritorto|a|filato|hilado|torcido|snoet|snoning|spundet|spunnet|tvundet|tvunnet|tvinnet|tvinning|to the'
  ).split('|'),
);
const LETTER = new RegExp(`^(?:(?:${AROUND})[ :-]+)*([sz])(?:[ -]+(?:${AROUND}))*\\.?$`, 'u');

/** "Keine", "assente" in a column of twist: looked at, and there is none. */
const NO_TWIST =
  /^(?:absente?s?|assent[ei]|ausentes?|(?:kein(?:e|er)?|aucune?|ningun[ao]?|nessun[ao]?|ingen|intet)(?: (?:drehung|drall|torsion|torsione|snoning|tvinning|spinding))?|nulle?|fehlt|nil|no)$/u;
/** Not plied: of the twist of the single thread it says nothing. */
const UNPLIED =
  /^(?:(?:unplied|not plied|un-?plyed)(?: yarn)?|ungezwirnt(?:es garn)?|nicht gezwirnt|non ?retors[e]?|non ?retordu[e]?|non ritort[oa] a capi|sin retorcer a cabos|sin retorcer|utvinnet garn|ikke tvundet|singles?|single yarn|einfach(?:es garn|garn)?|fil simple|fil(?:o|i) (?:singol[oi]|semplic[ei])|hilos? simples?|enkelt(?:e|spundet)?)$/u;
/** "No visible twist": looked at, and there is none. */
const VISIBLE = / ?(?:visible|apparente?|discernible|erkennbare?|sichtbare?|visibile|synlig)(?![\p{L}])/gu;

/**
 * Reads a direction of twist: S, Z, none ("I", "0", "worked straight", "ungedreht" …: looked at and not
 * twisted), both. A ply notation gives its final twist, flagged. "Left", "right" and "clockwise" are used
 * both ways in print and never mapped.
 */
export function readTwist(text: string, context: CellContext): TwistReading {
  const folded = foldCell(text);
  if (UNPLIED.test(folded)) {
    const why = `${quote(text)} says that nothing was plied, and nothing of how the single was spun`;
    return { twist: null, notes: [flagged('unplied', why)] };
  }
  const bare = folded.replace(VISIBLE, '').trim();
  const seen = bare.includes(' ') && (NONE.has(bare) || NO_TWIST.test(bare));
  if (NONE.has(folded) || NO_TWIST.test(folded) || seen)
    return { twist: 'none', notes: [readAs('twist-none', `${quote(text)} read as observed without twist`)] };
  if (BOTH.test(folded) || ALTERNATING.test(folded)) {
    return {
      twist: 'both',
      notes: [
        flagged('twist-both', 'both directions in one system; it may be a spin pattern or two systems'),
      ],
    };
  }
  const letter = LETTER.exec(folded)?.[1];
  if (letter !== undefined) return { twist: letter === 's' ? 'S' : 'Z', notes: [] };
  const said = HANDED.test(folded) ? null : twistInWords(text);
  if (said === 'both')
    return {
      twist: said,
      notes: [
        flagged('twist-both', 'both directions in one system; it may be a spin pattern or two systems'),
      ],
    };
  if (said !== null) {
    const why = `${quote(text)} read as ${said === 'none' ? 'observed without twist' : said}; the rest says how strongly, or at which angle`;
    return { twist: said, notes: [readAs(said === 'none' ? 'twist-none' : 'twist-in-words', why)] };
  }
  if (HANDED.test(folded)) {
    const why = `${quote(text)}: handedness and clock words are used both ways in print; look at the source's own convention`;
    return { twist: null, notes: [notUnderstood('handedness', why)] };
  }
  if (/^[sz] ?(?:or|oder|ou|o|eller) ?[sz]$/u.test(folded)) {
    return {
      twist: null,
      notes: [notUnderstood('alternative', `${quote(text)} names both directions, of which one is meant`)],
    };
  }
  if (/^[sz] ?[/x:-] ?[sz](?: ?\/ ?[szr])?$/u.test(folded) && !mixedCase(text)) {
    const why = `${quote(text)} holds the twist of two systems, or of singles and ply; split the column`;
    return { twist: null, notes: [notUnderstood('two-systems', why)] };
  }
  const { ply, notes } = parsePly(text, context.plyOrder);
  if (ply === null) return { twist: null, notes };
  if (ply.twist === null)
    return {
      twist: null,
      notes: [notUnderstood('ply-direction', 'the direction of the final twist is not stated')],
    };
  const why = `${quote(text)} is a ply notation; its final twist is what is kept here`;
  return { twist: ply.twist === 'I' ? 'none' : ply.twist, notes: [flagged('ply-in-twist', why)] };
}

function mixedCase(text: string): boolean {
  return /[sz]/u.test(text) && /[SZ]/u.test(text);
}

const WORDINGS: Readonly<Record<Twist, readonly string[]>> = {
  S: ['S', 's', 'S-twist', 'S slant'],
  Z: ['Z', 'z', 'Z-twist', 'Z slant'],
  none: ['none', 'I', 'untwisted', 'no twist', 'straight'],
  both: ['both', 'S and Z', 'S+Z', 'S & Z', 'alternating', 'countered'],
};

/** The term of a vocabulary for a direction, or null where it has none. */
export function twistTerm(twist: Twist, vocabulary: Vocabulary): string | null {
  for (const wording of WORDINGS[twist]) {
    const match = matchTerm(wording, vocabulary);
    if (match.kind === 'exact') return match.id;
  }
  return null;
}
