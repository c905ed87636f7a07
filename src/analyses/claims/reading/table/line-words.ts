import { MEAN, MEDIAN, RANGE, SD, SE } from './heads.ts';

/** What a label says of its line. */

const TOTAL =
  /^(?:(?:grand |sum |overall |column |row )?totals?|sum(?:me)?|σ|∑|all(?: (?:sites|phases|periods|groups|types|finds|fragments|items|records|samples|kinds|assemblages|contexts|together))?|overall|gesamt|insgesamt|zusammen|ensemble|somme|totale|suma|totale|i alt|together|combined|pooled|n total|total n|total \(?n\)?|total %)$/iu;
const SUBTOTAL =
  /^(?:sub[- ]?totals?.*|total\s+\S.*|.*\S\s+(?:sub)?totals?|all\s+\S.*|sum of .*|zwischensumme.*)$/iu;
const SUMMARY = new RegExp(
  `^(?:(?!m$)${MEAN}|(?!s$)${SD}|${MEDIAN}|${SE}|${RANGE}|min(?:imum)?|max(?:imum)?|cv)$`,
  'iu',
);
const ASIDE =
  /^(?:expected(?: counts?| freq(?:uency|uencies)?\.?)?|(?:adjusted |standardi[sz]ed |std\. )?residuals?|erwartet.*|cum(?:ulative|\.)?(?: .*)?)$/iu;
const SIZE =
  /^\(?(?:n|nos?\.|nr\.|number(?: of \w+)?|base|sample size|n =|\(n\)|anzahl|anz\.|stichprobe(?:numfang)?|effectifs?)\)?$/iu;
const PERCENT =
  /^(?:%|per\s?cent(?:age)?s?|%\s?(?:of|within|in|among)\s.*|share|pct\.?|(?:row|column|col\.?|total|valid) (?:%|per\s?cent|pct\.?))$/iu;

/** `aside`: expected counts, residuals and the like, of which no sum is made. */
export type LineRole = 'part' | 'total' | 'subtotal' | 'n' | 'percent' | 'summary' | 'aside';

/** What a label says of its line; "n" and "Σ" are settled by what adds up. */
export function lineRole(label: string): LineRole {
  const plain = label.replaceAll(/[*†‡§ᵃᵇᶜ:]+$/gu, '').trim();
  if (TOTAL.test(plain)) return 'total';
  if (SIZE.test(plain)) return 'n';
  if (PERCENT.test(plain)) return 'percent';
  if (ASIDE.test(plain)) return 'aside';
  if (SUMMARY.test(plain)) return 'summary';
  return SUBTOTAL.test(plain) ? 'subtotal' : 'part';
}
