import { CERTAINTIES, type Certainty } from './reading.ts';
import { alternation, foldCell } from './text.ts';

/** A text without its marks of doubt, and how many steps of certainty they take away. */
export interface Doubt {
  readonly rest: string;
  readonly steps: number;
  readonly marks: readonly string[];
}

/** One step: the recorder thinks so. */
const PROBABLY = alternation(
  (
    'i think|looks|wahrscheinl.|glaube ich|je crois|credo|pare|creo que|seems|appears|scheint|semble|sembra|parece|synes|ser ud til|eher|plutot|piuttosto|mas bien|snarest|vraisemblable|doubtful|dubious|to be confirmed|tbc|zu prufen|zu bestatigen|zweifelhaft|a confirmer|a verifier|douteux|douteuse|da verificare|da confermare|dubbio|dubbia|dudoso|dudosa|por confirmar|tvivlsom|tvivlsomt|tvilsom|' +
    'nicht sicher|nicht gesichert|not certain|not sure|not secure|pas sur|pas certain|non certain|non sicuro|non sicura|non certo|non certa|no seguro|no segura|ikke sikker|ikke sikkert|' +
    'cf.|cf|conf.|vgl.|prob.|probable|probably|most likely|very likely|likely|presumably|presumed|apparently|seemingly|uncertain|unsure|' +
    'wohl|vermutlich|vermutl.|vermutl|verm.|vermtl.|hochstwahrscheinlich|sehr wahrscheinlich|wahrscheinlich|wahrsch.|unsicher|fraglich|anscheinend|' +
    'sans doute|probablement|vraisemblablement|incertain|incertaine|probabile|probabilmente|incerto|incerta|' +
    'probablemente|seguramente|verosimilmente|incierto|incierta|vistnok|nok|formodet|antagelig|trulig|sandsynligvis|sandsynlig|formentlig|formodentlig|sannsynligvis|sannsynlig|trolig|usikker|usikkert'
  ).split('|'),
);

/** Two steps: the recorder does not exclude it. */
const POSSIBLY = alternation(
  (
    'possibly|possible|poss.|perhaps|maybe|moglicherweise|moglich|evtl.|evtl|eventuell|vielleicht|viell.|' +
    'possiblement|peut-etre|peut etre|forse|possibile|possibilmente|quizas|quiza|tal vez|posible|posiblemente|' +
    'maske|muligvis|mulig|muligens|kanskje'
  ).split('|'),
);

const LEADING = new RegExp(`^(?:(${PROBABLY})|(${POSSIBLY}))(?![\\p{L}\\d])[ ,:]*`, 'u');
const TRAILING = new RegExp(`[ ,;]+\\(?(?:(${PROBABLY})|(${POSSIBLY}))\\)?$`, 'u');
const QUESTION = /\s*(?:\((\?{1,3})\)|\[(\?{1,3})\]|(\?{1,3}))$/u;
const LEADING_QUESTION = /^(?:\((\?{1,3})\)|(\?{1,3}))\s*/u;
const BRACKETED = /^[([]([^()[\]]+)[)\]]$/u;

/**
 * Takes marks of doubt off a text: "?", "(?)", brackets around the whole, "cf.", "prob.", "wohl",
 * "peut-être" … before or behind. `cf.`, `prob.`, `?` and brackets take one step, "possibly" and "??" two.
 */
export function takeDoubt(text: string): Doubt {
  let rest = text.trim();
  let steps = 0;
  const marks: string[] = [];
  const take = (mark: string, weight: number, left: string) => {
    marks.push(mark.trim());
    steps += weight;
    rest = left.trim();
  };
  for (let round = 0; round < 4; round += 1) {
    const question = QUESTION.exec(rest) ?? LEADING_QUESTION.exec(rest);
    if (question !== null && question[0].length < rest.length) {
      const signs = question[1] ?? question[2] ?? question[3] ?? '?';
      take(
        signs,
        signs.length > 1 ? 2 : 1,
        question.index === 0 ? rest.slice(question[0].length) : rest.slice(0, question.index),
      );
      continue;
    }
    const brackets = BRACKETED.exec(rest);
    if (brackets !== null) {
      take('( )', 1, brackets[1] ?? '');
      continue;
    }
    const word = wordOfDoubt(rest);
    if (word === null) break;
    take(word.mark, word.weight, word.left);
  }
  return { rest, steps, marks };
}

/** Words are sought in the folded text; folding may change lengths, so the original is cut by its own words. */
function wordOfDoubt(text: string): { mark: string; weight: number; left: string } | null {
  const folded = foldCell(text);
  if (folded.length !== text.length) return wordOfDoubtIn(folded, folded);
  return wordOfDoubtIn(folded, text);
}

function wordOfDoubtIn(folded: string, text: string): { mark: string; weight: number; left: string } | null {
  const leading = LEADING.exec(folded);
  if (leading !== null && leading[0].length < folded.length) {
    const length = leading[0].length;
    return {
      mark: text.slice(0, length),
      weight: leading[1] === undefined ? 2 : 1,
      left: text.slice(length),
    };
  }
  const trailing = TRAILING.exec(folded);
  if (trailing !== null && trailing.index > 0) {
    return {
      mark: text.slice(trailing.index),
      weight: trailing[1] === undefined ? 2 : 1,
      left: text.slice(0, trailing.index),
    };
  }
  return null;
}

/** Certainty lowered by so many steps; "possible" is the lowest that a mark of doubt can reach. */
export function lowered(from: Certainty, steps: number): Certainty {
  const start = CERTAINTIES.indexOf(from);
  const lowest = Math.max(start, CERTAINTIES.indexOf('possible'));
  return CERTAINTIES[Math.min(start + steps, lowest)] ?? from;
}
