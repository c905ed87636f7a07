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
const DECIMAL = /^[-−]?\d+[.,]\d+$/;

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
    case 'period':
      if (said.some((text) => AGE_CLASS.test(text)))
        return contradicts('its cells name ages of life, not periods');
      if (decimals > 0 || whole > 0.8 * said.length) return contradicts('its cells are numbers');
      return said.some((text) => PERIOD_WORD.test(text)) ? speaks('its cells name periods') : NEUTRAL;
    case 'citation':
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
      if (attribute.scale === 'nominal' && decimals > 0.5 * said.length)
        return contradicts('its cells are measurements');
      if (attribute.scale === 'nominal' && whole + decimals === said.length && said.length > 12)
        return contradicts('its cells are numbers');
      return NEUTRAL;
  }
}
