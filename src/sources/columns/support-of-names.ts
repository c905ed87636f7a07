import type { AttributeDefinition } from '../../attributes/definition.ts';
import type { ColumnEvidence } from './column-evidence.ts';
import { contradicts, FEWEST, firstNumber, median, NEUTRAL, type Support, speaks } from './support.ts';

const PERIOD_WORD =
  /early|middle|late|bronze|iron|neolith|chalcolith|copper|mesolith|palaeolith|paleolith|roman|medieval|century|period|phase|dynast|früh|spät|mittel|zeit|ancien|récent|tardo|antico|antiguo|tardío|age\b|\bB[AB]\b|\bI{1,3}[ab]?\b|\bH[aA]\b/i;
const AGE_CLASS =
  /^(?:adult|juvenile|subadult|sub-adult|infant|infans|child|old|young|mature|senile|neonate|elderly|male|female|adulto|adulte|juvénile|erwachsen|kind|jung|alt)\b/i;
/** "2450 ± 30", or the number of a laboratory: letters and a long number, "Xy-101"; one letter needs the hyphen. */
const RADIOCARBON = /\d{3,5}\s*(?:±|\+\/?-)|^\p{L}-\s?\d{2,}|^\p{L}{2,8}[-\s]?\d{2,}/u;
const KEEPER =
  /\b(?:mus[eé]\w*|\w*museum|collections?|colecci[oó]n|collezione|sammlung|samling|archi?v\w*|institut\w*|stores?|magazin|dep[oôó]t|antiquit\w*|arts?)\b/iu;
const DECIMAL = /^[-−]?\d+[.,]\d+(?:e[-+]?\d+)?$/i;
/** Where something lay on a body, in six languages: a region of it is none of the land. */
const OF_A_BODY =
  /^(?:(?:left|right|upper|lower|links?|rechts?|gauche|droite?)\W+)*(?:head|skull|neck|chest|breast|thorax|abdomen|belly|pelvis|back|hips?|arms?|forearm|hands?|wrist|legs?|thighs?|knees?|f[eo]{2}t|ankles?|shoulders?|wings?|forewing|beak|bib|rump|dorsum|crown|cheek|face|throat|tail|kopf|sch[äa]del|hals|brust|becken|bauch|arm|hand|bein|fu(?:ß|ss)|f(?:ü|ue)(?:ß|ss)e|schulter|r[üu]cken|t[êe]te|cr[âa]ne|cou|poitrine|bassin|bras|main|jambe|pieds?|[ée]paule|testa|cranio|collo|petto|bacino|braccio|mano|gamba|pied[ei]|spalla|cabeza|cr[áa]neo|cuello|pecho|pelvis|brazo|pierna|pies?|hombro|hoved|kranium|bryst|bækken|b[æe]n|fod|f[øo]dder|skulder)\b/iu;
/** Stages of a trial and quarters of a year, which are neither phases nor periods of the past. */
const OF_A_TRIAL =
  /^(?:(?:\d{4}\W?)?Q[1-4]|Q0[1-4]|pre|post|before|after|during|baseline|follow[- ]?up|fup|start|end|vor|vorher|nach|nachher|w[äa]hrend|avant|apr[èe]s|pendant|prima|dopo|durante|antes|despu[ée]s|f[øo]r|under|efter|etter)(?:[- ]?(?:test|treatment|trial|war))?$/iu;
/** Names of places, of phases and of people may be numbers; those of colours and uses are codes then. */
const MAY_BE_NUMBERED: ReadonlySet<string> = new Set(['site', 'region', 'phase', 'recorder', 'context']);

/** What cells say of an attribute that takes names: those of finds, periods, publications, laboratories. */
export function supportOfNames(
  attribute: AttributeDefinition,
  evidence: ColumnEvidence,
  said: readonly string[],
): Support {
  if (evidence.filled < FEWEST) return NEUTRAL;
  const decimals = said.filter((text) => DECIMAL.test(text)).length;
  const whole = said.filter((text) => /^[-−]?\d+$/.test(text)).length;
  switch (attribute.id) {
    case 'fragment':
    case 'catalogueNumber':
      if (decimals > 0.5 * said.length) return contradicts('its cells are measurements');
      if (evidence.allDifferent) return speaks('each of its cells differs');
      return NEUTRAL;
    case 'phase':
    case 'period':
      if (said.every((text) => OF_A_TRIAL.test(text)))
        return contradicts('its cells are stages of a trial or quarters of a year');
      if (attribute.id === 'phase') return ofNames(attribute, said, whole, decimals);
      if (said.some((text) => AGE_CLASS.test(text)))
        return contradicts('its cells name ages of life, not periods');
      if (decimals > 0 || whole > 0.8 * said.length) return contradicts('its cells are numbers');
      return said.some((text) => PERIOD_WORD.test(text)) ? speaks('its cells name periods') : NEUTRAL;
    case 'region':
      if (said.filter((text) => OF_A_BODY.test(text)).length > 0.4 * said.length)
        return contradicts('its cells are regions of a body');
      return ofNames(attribute, said, whole, decimals);
    case 'remarks':
      return said.some((text) => /\p{L}{2}/u.test(text)) ? NEUTRAL : contradicts('its cells hold no words');
    case 'citation':
      if (evidence.filled > said.length && said.length <= 3 && !said.some((text) => /\d/.test(text)))
        return contradicts('its cells are two or three kinds and name no publication');
      if (said.every((text) => /^\p{L}{1,2}$/u.test(text))) return contradicts('its cells are letters');
      return whole + decimals > 0.8 * said.length
        ? contradicts('its cells are numbers')
        : said.some((text) => /\b(?:1[5-9]|20)\d{2}\b/.test(text))
          ? speaks('its cells hold years of publication')
          : NEUTRAL;
    case 'repository':
      return said.some((text) => KEEPER.test(text))
        ? speaks('its cells name museums or collections')
        : NEUTRAL;
    case 'radiocarbon':
      if (said.some((text) => RADIOCARBON.test(text))) return speaks('its cells look like radiocarbon dates');
      if (whole + decimals <= 0.8 * said.length)
        return contradicts('its cells are neither ages nor numbers of a radiocarbon laboratory');
      return median(said.map((text) => firstNumber(text) ?? 0)) < 200
        ? contradicts('its numbers are too small for radiocarbon years')
        : NEUTRAL;
    default:
      return ofNames(attribute, said, whole, decimals);
  }
}

/** What names of any sort must not be. */
function ofNames(
  { id, scale }: AttributeDefinition,
  said: readonly string[],
  whole: number,
  decimals: number,
): Support {
  if (scale !== 'nominal') return NEUTRAL;
  if (decimals > 0.5 * said.length) return contradicts('its cells are measurements');
  if (whole + decimals < said.length) return NEUTRAL;
  if (!MAY_BE_NUMBERED.has(id)) return contradicts('its cells are numbers or codes');
  return said.length > 12 ? contradicts('its cells are numbers') : NEUTRAL;
}
