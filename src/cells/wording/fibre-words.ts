import type { Vocabulary } from '../../attributes/definition.ts';
import { isWithin } from '../../attributes/tree.ts';

/**
 * Fibres said with more than their name: "flax (SEM)", "Schafwolle, fein", "Tilia bast", "liber de tilleul". Common
 * practice, no source.
 */
const BAST =
  /^(?:(?:l[ií]ber|libro|fibre liberienne|bast(?:faser\p{L}*|fibre)?|tille)(?:,? (?:de|di|d|af|von|der|des|from|of)['’ ]?)? ?(.+)|(.+?)[ -](?:bast|phloem|inner bark|bast fib(?:re|er)s?|bastfaser\p{L}*|liber|libro|bastfiber|bastfibre))$/iu;
const FINENESS =
  /,? ?(?:very |sehr |très |muy |molto )?(?<!\p{L})(?:fils fins|fili fini|hilos finos|gr[èe]ge|retted|unretted|geröstet\p{L}*|ungeröstet\p{L}*|rouie?s?|macerat[oa]|enriad[oa]|unbleached|ungebleicht\p{L}*|[ée]crue?s?|crud[oa]s?|combed|carded|gekämmt\p{L}*|kardiert\p{L}*|peignée?|cardée?|pettinata|cardata|peinada|cardada|natur(?:braun|schwarz|weiß|weiss|grau|farben)\p{L}*|fine?|finely|coarse|thick|thin|fein\p{L}*|grob\p{L}*|dick\p{L}*|dünn\p{L}*|fins|fines|épais\p{L}*|grossi\p{L}*|sottil[ei]|spess[ao]|gross[ao]|finas?|finos?|grues[ao]s?|fint?|tyk\p{L}*|grov\p{L}*|natural|naturel\p{L}*|naturale|bleached|gebleicht\p{L}*|blanchie?s?|sbiancat[oaie]|blanquead[oa]s?|bleget|bleket|raw|rohe?[rns]?|rohweiß|spun|washed|brune?s?|bruns|braun\p{L}*|weiß\p{L}*|blanche?s?|blanc|bianc[oaie]|blanc[oa]s?|noire?s?|ner[oaie]|negr[oa]s?|schwarz\p{L}*|black|sort|sorte|hvid\p{L}*|grey|gray|grau\p{L}*|grise?s?|grigi[oae]|pard[oa]s?|marr[oó]n\p{L}*|brunt?|mørk\p{L}*|lys|light|dunkle?\p{L}*|helle?[rns]?|undyed|ungefärbt\p{L}*|white|brown|dark|pigmented|pigmentiert\p{L}*|pigmentée?|unpigmented|unpigmentiert\p{L}*)(?!\p{L})/giu;
const UNSAID =
  /,? ?\(?(?:(?:sp|spp|spec|species|art|genus|gen|esp|arten?)\.? ?)?(?:indet|undet|n\. ?best|nicht n?ä?h?e?r? ?best|unbest|non d[eé]t|no det|ubest|ikke best|not det|not identified|unidentified|species unknown|art unbekannt)\p{L}*\.?\)?$/iu;

const UNSAID_FIRST =
  /^(?:unbestimmte?[rsn]?|indeterminate|unidentified|undetermined|ubestemt|ubestemte|uidentificeret|unspecified)(?= )/iu;
const MIXED =
  /,? ?\(?(?<!\p{L})(?:gemischt\p{L}*|mischung|mixed|mix|mixture|blend(?:ed)?|mélang\p{L}*|mist[oaie]|mezcl\p{L}*|bland\p{L}*)(?!\p{L})\)?|(?<=\p{L}{3})blanding\p{L}*|(?<=\p{L}{3})-?(?:gemisch\p{L}*|mischung)(?!\p{L})/iu;

/** "Wolle/Seide gemischt": both at once, whatever sign stands between them; null where no such word does. */
export function mixedFibres(text: string): string | null {
  return MIXED.test(text)
    ? text
        .replace(MIXED, '')
        .trim()
        .replace(/\s*\/\s*/gu, ' + ')
        .replace(/^(?:de|di|af|aus|von|of) /iu, '')
        // "Lin-laine", "hør- og uldblanding": two names with a dash between them.
        .replace(/^(\p{L}{3,})-(?: (?=og |und ))?(?=\p{L}{3,}|og |und )/u, (whole, name: string) =>
          / $/u.test(whole) ? `${name} ` : `${name} + `,
        )
        .trim()
    : null;
}

/** What the same text may say of a fibre without its fineness or the word for bast; each is looked up by itself. */
/** What was made of it, or which part of the plant it is: "flax yarn", "fil de lin", "rush stems". */
const MADE =
  /(?:[ -](?:yarns?|threads?|garne?n?|tråd\p{L}*|stems?|stalks?|halme?n?|stängel\p{L}*|stilke?r?|strands?)|(?<=\p{L}{3})(?:garne?n?|fäden|faden))$|^(?:toile de |tela di |tela de |lærred af |fils? de |filat[oi] di |filo di |hilos? de |tiges? de |steli di |fusti di |tallos de |du |de la |de l['’]|della |del )/giu;

export function plainFibre(text: string): string {
  return text
    .replace(MADE, '')
    .replace(/(?<=\p{L}) spp?\.(?= |$)/u, '')
    .replace(FINENESS, '')
    .replace(UNSAID, '')
    .replace(UNSAID_FIRST, '')
    .replace(/^[ ,;]+|[ ,;]+$/gu, '')
    .trim();
}

/** The plant of "lime bast" in other words; whoever looks it up takes no more than a bast for it. */
export function bastOf(text: string): string | null {
  const found = BAST.exec(text.trim());
  return found?.[1] ?? found?.[2] ?? null;
}

export const isBast = (term: string, vocabulary: Vocabulary): boolean =>
  isWithin(vocabulary, term, 'bastFibre');

/** A fibre and, behind it in a bracket or after a comma, what may be the method that told it. */
export function besideFibre(text: string): { readonly fibre: string; readonly beside: string } | null {
  const found =
    /^(.+?) ?[([]([^()[\]]+)[)\]]$/u.exec(text) ??
    /^(.+?)(?:,| by| per| mittels| par| al| ved| med| tramite| mediante) ([^,]+)$/u.exec(text);
  return found === null ? null : { fibre: found[1]!.trim(), beside: found[2]!.trim() };
}
