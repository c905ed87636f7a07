import { groupRows } from '../fragments/groups.ts';
import type { AnalysisInput, Answer, Turn } from './contract.ts';
import { MOST_WORDS } from './one-sentence.ts';
import { inSentence, printCount, printList } from './phrasing.ts';

/** Fragments that lack a label which the question asks for. */
export interface Unlabelled {
  readonly label: string;
  readonly lacking: number;
  readonly of: number;
}

/**
 * How many of the selected fragments do not bear the label that is the answer: they take no part, and the truth may
 * be among them.
 *
 * @param labels ids of attributes of kinds, or "assemblage"; those that no source records are passed over.
 */
export function unlabelledIn(
  { fragments, register }: Pick<AnalysisInput, 'fragments' | 'register'>,
  labels: readonly string[],
): readonly Unlabelled[] {
  return [...new Set(labels)].flatMap((id) => {
    const column = fragments.columns.get(id);
    if (id !== 'assemblage' && (column === undefined || column.kind === 'numeric')) return [];
    const { ungrouped } = groupRows(fragments, [id], register);
    const lacking = ungrouped.reduce((sum, { rows }) => sum + rows.length, 0);
    const label = id === 'assemblage' ? 'assemblage' : (register.attributes.get(id)?.label ?? id);
    return lacking === 0 ? [] : [{ label: inSentence(label), lacking, of: fragments.rows }];
  });
}

/**
 * The answer with the count of what has no label: in the answer itself where that stays within its words, otherwise
 * at the head of the evidence; and among what would change it.
 */
export function withUnlabelled(words: Answer, unlabelled: readonly Unlabelled[]): Answer {
  const [first] = unlabelled;
  if (first === undefined) return words;
  const counts = printList(unlabelled.map(({ label, lacking }) => `${lacking} without ${label}`));
  const aside = `of ${printCount(first.of, 'fragment')} ${counts} left aside`;
  const whole = words.answer.replace(/\.$/, `; ${aside}.`);
  const fits = whole.split(/\s+/).length <= MOST_WORDS;
  const [lead, ...rest] = words.because;
  const turn: Turn = {
    what: `of ${printCount(first.of, 'fragment')} ${printList(unlabelled.map(({ label, lacking }) => `${lacking} have no ${label}`))}, and were left out`,
    size: 'they could change this',
    overturns: false,
  };
  return {
    ...words,
    answer: fits ? whole : words.answer,
    because: fits
      ? words.because
      : [
          `${aside.charAt(0).toUpperCase()}${aside.slice(1)}.${lead === undefined ? '' : ` ${lead}`}`,
          ...rest,
        ],
    unless: [
      ...words.unless.filter(({ overturns }) => overturns),
      turn,
      ...words.unless.filter(({ overturns }) => !overturns),
    ],
  };
}
