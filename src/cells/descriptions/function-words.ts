/**
 * The words of six languages that join, deny, doubt or place the terms of a description. Folded: no capitals,
 * no accents. Common practice, no source.
 */

const set = (words: string): ReadonlySet<string> => new Set(words.split(' '));

/** Carry nothing, inside a phrase or between two. */
export const SMALL = set(
  'the a an of in on by at to for from as is are was its this that which der die das des dem den ein eine einer einem eines aus von vom im zu zur zum bei ' +
    'le la les un une du de d l en au aux par il lo gli i uno una di del della dello dei degli delle da dal al alla ai el los las por af pa som ein',
);
export const WITH = set('with mit avec con med having showing mit');
export const AND = set('and und u et e y og sowie plus');
export const OR = set('or oder od ou o eller bzw respectively beziehungsweise');
export const NOT = set(
  'no not without non none neither nor kein keine keinen keiner keines ohne nicht weder noch sans pas ni aucun aucune senza ne nessun nessuna ' +
    'sin ningun ninguna uden ikke ingen intet uten hverken verken never nie jamais mai',
);
/** Behind a term: looked for, and not there. */
export const ABSENT = set(
  'absent absente absents absentes lacking fehlt fehlen fehlend fehlende assente assenti ausente ausentes mangler manquant manquants',
);
/** Behind a denial: could not be seen. */
export const SEEN = set(
  'visible visibles observed observable preserved determinable determined recorded known seen identifiable sichtbar erkennbar erhalten bestimmbar feststellbar ' +
    'beobachtet conserve conserves conservee conservees observe observes determine visibile visibili conservato conservati osservato determinabile ' +
    'conservado conservados observado determinado synlig synlige bevaret bevart observeret bestemt',
);
/** Behind a term: there is no telling any more. */
export const LOST = set(
  'lost missing unclear illegible verloren unklar perdu perdue perdus perdues perso persa persi perdido perdida perdidos tabt uklar uklart',
);
/** Say that the kind below was not determined. */
export const UNDETERMINED = /^(?:indet|undet|unbest|ubest|unident|unspecif|indeterm|nondet)\p{L}*$/u;
/** Something that looks as if, or is said of something else: nothing beside it is taken. */
export const LOOKS_LIKE =
  /^(?:pseudo|imitat\p{L}*|imit|like|similar|resembl\p{L}*|looks|style|falsche?[rsn]?|false|faux|fausse|fals[oaik]|ahnlich\p{L}*|\p{L}{3,}(?:artig|ahnlich)\p{L}*|artig\p{L}*|simil[ei]|parecid[oa]|ligner|lignende|mock|instead|rather|than|formerly|reconstruct\p{L}*|rekonstru\p{L}*|unlike|but|sondern|mais|sino|bensi|men)$/u;
/** Words for a part of the fabric that is not its ground: what stands beside them is said of that part. */
export const ELSEWHERE =
  /^(?:border\p{L}*|edg(?:e|es|ing)|selv[ae]dge\p{L}*|selv[ae]ges?|fring\p{L}*|hem|hems|hemmed|seams?|repair\p{L}*|patch\p{L}*|lining|linings|lined|backing|backed|interlining|embroid\p{L}*|stripe\p{L}*|striped|bands?|tassel\p{L}*|\p{L}*kanten?|rand|saum|saume|naht|nahte|fransen?|flick\p{L}*|futter|\p{L}*stickerei|gestickt|borten?|streifen|bordure?s?|bords?|lisieres?|ourlets?|franges?|couture\p{L}*|repar\p{L}*|brode\p{L}*|broderies?|doublure|rayures?|cimos[ae]|vivagn[oi]|orl[oi]|frang[ei]a?|cucitur[ae]|ricam\p{L}*|foder\p{L}*|bord[oi]|orillos?|borde?s?|flecos?|costuras?|bordado\p{L}*|forro|remiendo|rayas?|franjas?|frynse\p{L}*|syning|broderi\p{L}*|stribe\p{L}*|anfangs\p{L}*|starting|finishing|heading|startbord\p{L}*)$/u;
/** How fine, how even, how finished: said of any structure, and of none in particular. */
export const QUALITY =
  /^(?:fine|fine?ly|thick|thin|dicke?[rsn]?|dunne?[rsn]?|epaisse?s?|minces?|gross[oae]|sottil[ei]|grues[oa]s?|delgad[oa]s?|tykt?|tynd[te]?|worn|abgenutzt\p{L}*|usee?s?|slidt|glatte?[rsn]?|mittelfeine?[rsn]?|medium|mittel|moyenne?|medi[oa]|ordinary|common|normal\p{L}*|gewohnlich\p{L}*|ordinaire|comun[ei]?|almindelig\p{L}*|alminnelig|einf|regelmassige?[rsn]?|unregelmassige?[rsn]?|feine?[rsn]?|fins?|fines|fin[oai]s?|fint|coarse(?:ly)?|grobe?[rsn]?|grossi\p{L}*|grossolan[oa]|bast[oa]s?|tosc[oa]s?|grov\p{L}*|even(?:ly)?|uneven|regular|irregular|gleichmassige?[rsn]?|ungleichmassige?[rsn]?|reguli\p{L}*|irreguli\p{L}*|regolare|irregolare|jaevn\p{L}*|ujaevn\p{L}*|fulled|gewalkte?[rsn]?|foulee?s?|follat[oa]|abatanad[oa]|batanad[oa]|valket|valkede|surface|lavoro|trabajo|travail|arbejde|oberflache|richtung|direction|direzione|direccion|retning)$/u;
/** Nouns that say no more than that it is a fabric, or a row, or a way of working. */
export const FILLER =
  /^(?:fabrics?|textiles?|cloths?|structures?|technique?s?|binding|bindungen|bindung|bindungsart|stoff\p{L}*|textil\p{L}*|etoffes?|armure|tecnic[ao]s?|struttur[ae]|armatura|estructuras?|ligamentos?|teknik|struktur|stof|toj|tekstil\p{L}*|fragment\p{L}*|fragmentos?|fragm?|frgm|frammenti|frammento|pieces?|stykker?|stucke?|pezz[oi]|trozos?|morceaux?|types?|typ|tipo|tipos|kind|rows?|reihen?|rangs?|file|fila|filas|raekker?|rader?|grund|ground|fond|fondo|worked|made|gearbeitet|ausgefuhrt|execute|elements?|elemente?n?|very|sehr|single|and|work|arbeit|weave-structure|faden|grundgewebe|grundbindung|grat|torsione?|present|presents|presentes?|presenti|vorhanden|yes|oui)$/u;
