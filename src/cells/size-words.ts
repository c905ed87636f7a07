import { plainSigns } from './text.ts';

/** A cell of sizes without the word that governs all of them. */
export interface SizeWords {
  readonly text: string;
  /** Put behind each size by whoever parts the cell: "" or "incomplete". */
  readonly each: string;
  /** One sentence for the ledger; "" where no word was met. */
  readonly why: string;
}

const word = (words: string): string => `(?<![\\p{L}\\d])(?:${words})(?:\\.|(?!\\p{L})):?`;
const GREATEST = new RegExp(
  ` ?\\(?${word('max|maximal|maximum|massimo|massima|máximo|máxima|maks|greatest|largest|größte[rs]?|gr')}\\)?`,
  'giu',
);
const SURVIVING = new RegExp(
  `^${word('erh|erhalten|noch erhalten|preserved|pres|surviving|extant|cons|conservé|conservée|conservato|conservado|bevaret|bevart')} ?`,
  'iu',
);
const PAIR = /\d[^\n;]*(?:[x×]|, )[^\n;]*\d/u;

/**
 * What "max." and "preserved" say where they stand in a cell of several sizes of one object.
 *
 * "max. 12 x 8", "12 x max. 8", "12 x 8 (max.)": the greatest length and breadth that survive, as they were
 * measured; of one number alone ("max. 12") it is an upper bound, which readCell takes it for. "erh. 12 x 8":
 * preserved, so each size is a lower bound, as of one number. Common practice, no source.
 */
export function sizeWords(text: string): SizeWords {
  const plain = plainSigns(text);
  if (!PAIR.test(plain)) return { text, each: '', why: '' };
  const measured = plain.replace(GREATEST, ' ').replace(/ +/gu, ' ').trim();
  const whole = measured.replace(SURVIVING, '');
  const greatest =
    measured === plain ? '' : '"max." beside several sizes says that they are the greatest ones measured';
  const broken = whole === measured ? '' : 'the sizes are those preserved, so each is a lower bound';
  if (greatest === '' && broken === '') return { text, each: '', why: '' };
  return {
    text: whole,
    each: broken === '' ? '' : 'incomplete',
    why: [greatest, broken].filter((part) => part !== '').join('; '),
  };
}
