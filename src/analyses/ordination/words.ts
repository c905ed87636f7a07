import type { Answer, Turn } from '../contract.ts';
import { oneSentence } from '../one-sentence.ts';
import { inSentence, printCount, printList, printNumber, printSome } from '../phrasing.ts';
import { unseenTurn } from '../shared/guard/turn-words.ts';
import { sayFolds } from '../shared/level/said.ts';
import { asideTurn } from '../shared/missing/words.ts';
import type { Axes, OrdinationFound } from './found.ts';
import { methodName } from './options.ts';

/** What the first axes carry and what they go with, after what else could make them has been looked at. */
export function ordinationWords(found: OrdinationFound): Answer {
  const { axes } = found;
  if ('why' in axes) return { answer: `No ordination: ${axes.why}.`, because: [], unless: [] };
  return {
    answer: answerOf(found, axes),
    because: [methodLine(found, axes), ...axisLines(found), ...placedWithout(found, axes)].slice(0, 4),
    unless: turnsOf(found, axes),
    next: nextOf(found),
  };
}

/** What holds of every map of axes. */
export const ALWAYS: readonly string[] = [
  'Points near each other in a picture of two axes may be apart on axes that are not shown.',
  'Directions of axes are arbitrary; what makes an axis is what was compared, so an axis goes with an attribute by making as well as by finding.',
];

const percent = (share: number) => `${printNumber(share * 100)} %`;

/** Supplementary rows and columns carry nothing of the spread. */
function withSay(places: Axes['records']): number {
  return places.filter(({ role }) => !role.startsWith('supplementary')).length;
}

function answerOf(found: OrdinationFound, axes: Axes): string {
  const { carried, followed, besides, ends, endsAsRecorded, level } = found;
  const what =
    axes.rows.length > 0
      ? printCount(axes.records.length, found.unit)
      : `${printCount(withSay(axes.records), 'row')} and ${printCount(withSay(axes.variables), 'column')}`;
  const which = carried.axes === 2 ? 'two axes carry' : 'axis carries';
  const { share, atMost } = carried;
  const start =
    typeof share === 'number'
      ? `the first ${which} ${atMost ? 'at most ' : ''}${percent(share)} of the spread of ${what}`
      : `how much of the spread of ${what} the axes carry cannot be told`;
  if (axes.rows.length === 0) {
    const turned =
      ends !== null && endsAsRecorded !== null && !sameEnds(ends, endsAsRecorded)
        ? [
            `; as recorded it would part ${endsAsRecorded.low} from ${endsAsRecorded.high}`,
            '; that hangs on the recording',
          ]
        : [];
    return oneSentence(
      [start],
      ends === null ? [] : [`; the first parts ${ends.low} from ${ends.high}`],
      turned,
      level !== null && level.folds.length > 0 ? [', at the level that all record'] : [],
    );
  }
  const named = [
    ...new Set(followed.flatMap(({ attributes }) => attributes.map(({ label }) => inSentence(label)))),
  ];
  const other = besides.find(({ overturns }) => overturns);
  return oneSentence(
    [start],
    named.length === 0
      ? ['; no attribute goes closely with them']
      : [` and go with ${printSome(named, 3)}`.replace(' go ', carried.axes === 2 ? ' go ' : ' goes ')],
    other === undefined ? [] : [`, though ${inSentence(other.label)} goes with axis ${other.axis} as much`],
  );
}

function sameEnds(a: { low: string; high: string }, b: { low: string; high: string }): boolean {
  return (a.low === b.low && a.high === b.high) || (a.low === b.high && a.high === b.low);
}

function methodLine(found: OrdinationFound, axes: Axes): string {
  const { options, n, carried, level } = found;
  const method = methodName(options.method);
  const each = axes.shares
    .slice(0, carried.axes)
    .map((share, k) =>
      typeof share === 'number' ? `axis ${k + 1} ${percent(share)}` : `axis ${k + 1} no share (${share.why})`,
    );
  const of = axes.rows.length > 0 ? `, ${printCount(axes.attributes.length, 'attribute')}` : '';
  const folded = level !== null && level.folds.length > 0 ? `; counted as ${sayFolds(level)}` : '';
  return `${method.charAt(0).toUpperCase()}${method.slice(1)} of ${printCount(n.fragments, 'fragment')} of ${printCount(n.items, 'item')}${of}: ${printList(each)}${folded}.`;
}

function axisLines({ followed }: OrdinationFound): string[] {
  return followed
    .filter(({ attributes }) => attributes.length > 0)
    .map(
      ({ axis, attributes }) =>
        `Axis ${axis} has in common: ${printList(attributes.map(({ label, share }) => `${label} ${printNumber(share * 100, 2)} %`))}.`,
    );
}

function placedWithout({ unit, poorlyShown }: OrdinationFound, { passive }: Axes): string[] {
  if (passive.length === 0) return [];
  const badly =
    poorlyShown > 0
      ? `, of which ${poorlyShown} ${poorlyShown === 1 ? 'is' : 'are'} shown by less than a quarter on these two axes`
      : '';
  return [`${printCount(passive.length, `supplementary ${unit}`)} placed without a say in the axes${badly}.`];
}

function turnsOf(found: OrdinationFound, axes: Axes): readonly Turn[] {
  const { besides, unseen, lost, small, n, unit, ends, endsAsRecorded } = found;
  const turns: Turn[] = besides.map(({ label, axis, share, overturns }) => ({
    what: `Were axis ${axis} one of ${inSentence(label)}`,
    size: `it has ${printNumber(share * 100, 2)} % in common with it${overturns ? ', as much as any attribute that makes it' : ''}`,
    overturns,
  }));
  if (ends !== null && endsAsRecorded !== null) {
    const overturns = !sameEnds(ends, endsAsRecorded);
    turns.push({
      what: 'Counted by the words as recorded',
      size: `the first axis ${overturns ? 'parts' : 'still parts'} ${endsAsRecorded.low} from ${endsAsRecorded.high}`,
      overturns,
    });
  }
  if (small.length > 0)
    turns.push({
      what: 'Without rows and columns of fewer than five records',
      size: `${printSome(small, 4)} can draw an axis to themselves`,
      overturns: false,
    });
  for (const note of axes.notes) turns.push({ what: note, size: '', overturns: false });
  turns.push(...asideTurn(lost));
  if (unit === 'fragment' && n.items < n.fragments)
    turns.push({
      what: 'Counted by item',
      size: `${n.fragments} fragments come from ${n.items} items, and large items draw the axes to themselves`,
      overturns: false,
    });
  turns.push(...unseenTurn(unseen.unknown, unseen.scarce));
  return [...turns.filter(({ overturns }) => overturns), ...turns.filter(({ overturns }) => !overturns)];
}

function nextOf({ besides, lost }: OrdinationFound): string[] {
  const conditions = [...new Set(besides.map(({ label }) => inSentence(label)))];
  return [
    ...(conditions.length > 0
      ? [`The same within one ${printList(conditions)}, to see whether the axes stay.`]
      : []),
    ...(lost.length > 0 ? ['The values that are missing, or fewer attributes.'] : []),
  ];
}
