import type { Words } from '../before-answers.ts';
import { printCount, printList, printNumber, printQuantity, printYear } from '../phrasing.ts';
import { ALL, type NumberGroup, type SummaryFound, type TermGroup } from './compute.ts';
import type { SpanGroup } from './spans.ts';

/** Below this many records a group is too small to be called typical of anything. */
const SMALL_GROUP = 5;

/** One sentence an attribute, and what to mind when reading the tables. */
export function summaryWords(found: SummaryFound): Words {
  const sentences = [
    ...attributesOf(found.numbers).map((groups) => {
      const spans = found.spans.filter(({ attribute }) => attribute === groups[0].attribute);
      return spans.length > 0 ? spanSentence(found, spans) : numberSentence(found, groups);
    }),
    ...attributesOf(found.terms).map((groups) => kindSentence(found, groups)),
  ];
  return {
    sentence: sentences.length > 0 ? `${sentences.join('. ')}.` : 'No record is left to describe.',
    cautions: cautionsOf(found),
  };
}

function attributesOf<Group extends NumberGroup | TermGroup>(groups: readonly Group[]): Group[][] {
  const ids = [...new Set(groups.map((group) => group.attribute))];
  return ids.map((id) => groups.filter((group) => group.attribute === id));
}

function isWhole(group: NumberGroup | TermGroup): boolean {
  return group.group.every((label) => label === ALL);
}

function numberSentence(found: SummaryFound, groups: readonly NumberGroup[]): string {
  const { label, unit } = groups[0];
  const filled = groups.filter((group) => group.quartiles !== null);
  if (filled.length === 0) return `${label}: no ${found.unit} has a value`;
  const medianOf = (group: NumberGroup) => group.quartiles?.[1] ?? Number.NaN;
  const single = filled.filter((group) => !isWhole(group));
  if (single.length < 2) {
    const group = filled[filled.length - 1];
    return `${label}: median ${printQuantity(medianOf(group), unit)}, n = ${printCount(group.points.length, found.unit)}`;
  }
  const ordered = [...single].sort((a, b) => medianOf(a) - medianOf(b));
  const name = (group: NumberGroup) =>
    `${printNumber(medianOf(group))} in ${group.group.join(', ')} (n = ${group.points.length})`;
  if (medianOf(ordered[0]) === medianOf(ordered[ordered.length - 1]))
    return `${label}: medians of ${single.length} groups are all ${printQuantity(medianOf(ordered[0]), unit)}`;
  const ends = `from ${name(ordered[0])} to ${name(ordered[ordered.length - 1])}`;
  return `${label}${unit === '' ? '' : ` (${unit})`}: medians of ${single.length} groups run ${ends}`;
}

function spanSentence(found: SummaryFound, spans: readonly SpanGroup[]): string {
  const dated = spans.flatMap((one) => (one.span === null ? [] : [{ ...one, span: one.span }]));
  const [first] = dated;
  const last = dated.at(-1);
  if (first === undefined || last === undefined)
    return `${spans[0].label}: no ${found.unit} has a closed date`;
  const say = ({ group, span, n }: typeof first) =>
    `${group.length === 0 ? `all ${found.unit}s` : group.join(', ')} (${printYear(span.from)} to ${printYear(span.to)}, n = ${n})`;
  if (dated.length === 1) return `${first.label}: ${say(first)}`;
  return `${first.label}: of ${dated.length} groups dated the middle is earliest in ${say(first)} and latest in ${say(last)}`;
}

function kindSentence(found: SummaryFound, groups: readonly TermGroup[]): string {
  const whole = groups.find((group) => isWhole(group)) ?? groups[0];
  if (whole === undefined || whole.n === 0) return `${groups[0].label}: no ${found.unit} has a value`;
  const ordered = [...whole.counts].sort((a, b) => b.count - a.count).slice(0, 3);
  const parts = ordered.map(({ term, count }) => `${term} ${count}`);
  const rest = whole.counts.length - ordered.length;
  if (rest > 0) parts.push(printCount(rest, 'further kind'));
  return `${whole.label}: of ${printCount(whole.n, found.unit)}, ${printList(parts)}`;
}

function cautionsOf(found: SummaryFound): string[] {
  const cautions: string[] = [];
  const small = new Set(
    [...found.numbers.map((group) => ({ group: group.group, n: group.points.length })), ...found.terms]
      .filter(({ n }) => n > 0 && n < SMALL_GROUP)
      .map(({ group }) => (group.length === 0 ? `all ${found.unit}s` : group.join(', '))),
  );
  if (small.size > 0) {
    cautions.push(
      `Fewer than ${SMALL_GROUP} values in ${printList([...small])}: nothing is typical of so few.`,
    );
  }
  const open = found.numbers.filter((group) => group.points.some((point) => point.openEnded));
  if (open.length > 0) {
    cautions.push(
      `Open-ended readings in ${printList([...new Set(open.map((group) => group.label))])}: the mean and the ` +
        'standard deviation are not given there; the median stands between its bounds.',
    );
  }
  if (found.unit === 'fragment' && found.n.items < found.n.fragments) {
    cautions.push(
      `${found.n.fragments} fragments come from ${found.n.items} items: fragments of one item are not independent.`,
    );
  }
  return cautions;
}
