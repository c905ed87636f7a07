import type { Answer, Figure, ResultTable } from '../analyses/contract.ts';
import type { Witness } from '../fragments/items/witness.ts';

/**
 * Analyses speak of items. What a study counts as one may be a vessel, a grave, or, while nobody has said, the
 * fragment: its noun is put in the place of theirs, here and nowhere else, so that no door says "items" of fragments.
 */

interface Shown {
  readonly words: Answer;
  readonly tables: Readonly<Record<string, ResultTable>>;
  readonly figures: Readonly<Record<string, Figure>>;
}

/** The same answer, tables and captions with the noun of the study; cells and labels of the reader's are left alone. */
export function inNounsOf<Whole extends Shown>(witness: Witness, whole: Whole): Whole {
  const [one, many] =
    witness.status === 'confirmed' ? [witness.one, witness.many] : ['fragment', 'fragments'];
  if (one === 'item' && many === 'items') return whole;
  const say = (text: string) => nounsIn(text, one, many);
  const { words, tables, figures } = whole;
  return {
    ...whole,
    words: {
      ...words,
      answer: say(words.answer),
      because: words.because.map(say),
      unless: words.unless.map((turn) => ({ ...turn, what: say(turn.what), size: say(turn.size) })),
      ...(words.next === undefined ? {} : { next: words.next.map(say) }),
    },
    tables: mapValues(tables, (table) => ({
      ...table,
      title: say(table.title),
      columns: table.columns.map((column) => ({ ...column, label: say(column.label) })),
      ...(table.note === undefined ? {} : { note: say(table.note) }),
    })),
    figures: mapValues(figures, (figure) => ({ ...figure, caption: say(figure.caption) })),
  };
}

/** "6 items", "Items", "an item"; "72 fragments of 72 items" is 72 fragments. */
export function nounsIn(text: string, one: string, many: string): string {
  const like = (word: string, noun: string) =>
    /^[A-Z]/.test(word) ? noun.charAt(0).toUpperCase() + noun.slice(1) : noun;
  const article = /^[aeiou]/i.test(one) ? 'an' : 'a';
  return text
    .replace(/\b([Aa])n item\b/g, (_, a: string) => `${a}${article.slice(1)} ${one}`)
    .replace(/\b([Ii])tems\b/g, (word) => like(word, many))
    .replace(/\b([Ii])tem\b/g, (word) => like(word, one))
    .replace(/\b(\d+) (fragments?) (?:of|in|from) \1 fragments?\b/g, '$1 $2');
}

function mapValues<Value>(
  record: Readonly<Record<string, Value>>,
  change: (value: Value) => Value,
): Record<string, Value> {
  return Object.fromEntries(Object.entries(record).map(([key, value]) => [key, change(value)]));
}
