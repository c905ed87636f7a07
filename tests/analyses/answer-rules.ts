import type { Answer } from '../../src/analyses/contract.ts';
import { printTurn } from '../../src/analyses/phrasing.ts';

/** What is wrong with the form of an answer, by the rules that every analysis keeps; empty when nothing is. */
export function faultsOfAnswer(words: Answer): string[] {
  const { answer, because, unless, next = [] } = words;
  const all = [answer, ...because, ...unless.map(printTurn), ...next];
  const faults: string[] = [];
  const count = answer.split(/\s+/).length;
  if (count > 30) faults.push(`the answer has ${count} words: ${answer}`);
  if (!/^[\p{Lu}\p{N}“"‘']/u.test(answer)) faults.push(`the answer starts small: ${answer}`);
  if (!/[.!?]$/.test(answer)) faults.push(`the answer does not end: ${answer}`);
  if (/[.!?] \p{Lu}/u.test(answer)) faults.push(`the answer is more than one sentence: ${answer}`);
  if (/[=<>≤≥±²_{}[\]|]/.test(answer)) faults.push(`a symbol in the answer: ${answer}`);
  if (because.length > 4) faults.push(`${because.length} lines of evidence`);
  const tried = unless.map(({ overturns }) => overturns);
  if (tried.indexOf(true) > tried.indexOf(false) && tried.includes(false) && tried.includes(true))
    faults.push('what overturns the verdict does not come first');
  for (const text of all) {
    if (text.trim() === '') faults.push('an empty line');
    if (/NaN|undefined|Infinity|\[object|null/.test(text)) faults.push(`no number: ${text}`);
    if (/\d\.\d{7,}/.test(text)) faults.push(`too many digits: ${text}`);
    if (/\b\d+(?:\.\d+)?e[-+]?\d+\b/.test(text)) faults.push(`an exponent: ${text}`);
    if (/\b[a-z]+[A-Z][A-Za-z]*\b/.test(text.replace(/\b(?:pH|mtDNA|pHs)\b/g, '')))
      faults.push(`an id, not a label: ${text}`);
  }
  return faults;
}
