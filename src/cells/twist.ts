import type { Vocabulary } from '../attributes/definition.ts';
import { matchTerm } from '../attributes/matching.ts';
import type { CellContext } from './context.ts';
import { flagged, notUnderstood, quote, readAs } from './notes.ts';
import { parsePly } from './ply.ts';
import type { Note } from './reading.ts';
import { alternation, foldCell } from './text.ts';

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
/** How strongly a thread is twisted says nothing of its direction: "Z, weak", "S (lose gedreht)", "Z – fest". */
const QUALIFIED =
  /^(.*?[sz](?:[ -](?:twist|twisted|gedreht|drehung|spun|spundet))?)(?: - |[ ,;]+)\(?([\p{L} ]+)\)?$/u;
const STRENGTH = new Set(
  (
    'weak weakly strong strongly slight slightly lightly loose loosely tight tightly medium moderate moderately hard soft very rather fairly not ' +
    'schwach stark lose locker fest mittel mittelstark mittelfest leicht hart weich sehr etwas ziemlich wenig recht ' +
    'faible faiblement fort fortement forte lache serre serree moyen moyenne leger legere legerement tres peu assez ' +
    'debole debolmente stretto stretta serrato serrata lento lenta media medio molto poco ' +
    'debil fuerte fuertemente lasca lasco floja flojo apretada apretado suave muy ' +
    'svag svagt sterk kraftig los lost haard hard hardt middel stramt stram fast fastt meget lidt litt'
  ).split(' '),
);
const TWISTED = new Set(
  'spun twisted twist gedreht gesponnen tordu tordue torsion file ritorto ritorta filato torsione torcido torcida hilado torsion snoet spundet spunnet'.split(
    ' ',
  ),
);

function withoutStrength(folded: string): string {
  const [, letter, said] = QUALIFIED.exec(folded) ?? [];
  if (letter === undefined || said === undefined) return folded;
  const words = said.trim().split(/ +/u);
  const qualifies = words.every((word) => STRENGTH.has(word) || TWISTED.has(word));
  return qualifies && words.some((word) => STRENGTH.has(word)) ? letter : folded;
}

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
  const letter = LETTER.exec(folded.length > 60 ? folded : withoutStrength(folded))?.[1];
  if (letter !== undefined) return { twist: letter === 's' ? 'S' : 'Z', notes: [] };
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
