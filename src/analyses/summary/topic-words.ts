import {
  inSentence,
  printCount,
  printLevel,
  printList,
  printNumber,
  printQuantity,
  printSmall,
  printSome,
  printYear,
} from '../phrasing.ts';
import { byMedian } from './ends.ts';
import type { NumberGroup, SpanGroup, SummaryFound, TermGroup } from './found.ts';

/** One attribute: its clause of the answer, the same shorter, and its line of evidence. */
export interface Topic {
  readonly clause: string;
  readonly shorter: string;
  readonly evidence: string;
}

/** What there is to say of each attribute: numbers and spans first, then kinds. */
export function topicsOf(found: SummaryFound): Topic[] {
  return [
    ...attributesOf(found.numbers).map((groups) => {
      const spans = found.spans.filter(({ attribute }) => attribute === groups[0].attribute);
      return spans.length > 0 ? spanTopic(found, spans) : numberTopic(found, groups);
    }),
    ...attributesOf(found.terms).map((groups) => kindTopic(found, groups)),
  ];
}

/** The groups of each attribute, attributes in the order they are asked. */
export function attributesOf<Group extends NumberGroup | TermGroup>(groups: readonly Group[]): Group[][] {
  const ids = [...new Set(groups.map((group) => group.attribute))];
  return ids.map((id) => groups.filter((group) => group.attribute === id));
}

const nowhere = (label: string, { unit }: SummaryFound): Topic => ({
  clause: `${inSentence(label)} has no value`,
  shorter: `${inSentence(label)} has no value`,
  evidence: `${label}: no ${unit} has a value.`,
});

const medianOf = ({ quartiles }: NumberGroup) => quartiles?.[1] ?? Number.NaN;
/** How a group is named in a sentence. */
export const nameOf = ({ group }: NumberGroup | TermGroup) => group.join(', ');

function numberTopic(found: SummaryFound, groups: readonly NumberGroup[]): Topic {
  const { label, unit } = groups[0];
  const whole = groups.find((group) => group.whole) ?? groups[0];
  const name = inSentence(label);
  if (whole.points.length === 0) return nowhere(label, found);
  const ordered = byMedian(groups);
  const evidence = `${label}: ${printList((ordered.length > 0 ? ordered : [whole]).slice(0, 6).map((group) => medianSaid(found, group)))}.`;
  const [first] = ordered;
  const last = ordered[ordered.length - 1];
  if (ordered.length < 2) {
    const group = ordered[0] ?? whole;
    const where = group.whole ? '' : ` in ${nameOf(group)}, the only one of enough values,`;
    const clause = `${name} has a median of ${printQuantity(medianOf(group), unit)}${where} for ${printCount(group.points.length, found.unit)}`;
    return { clause, shorter: clause, evidence };
  }
  if (printNumber(medianOf(first)) === printNumber(medianOf(last))) {
    const clause = `${name} has the same median in all ${printSmall(ordered.length)}, ${printQuantity(medianOf(first), unit)}`;
    return { clause, shorter: clause, evidence };
  }
  const ends = found.ends.get(groups[0].attribute);
  if (ends !== 'apart') {
    const range = `medians of ${name} run from ${printNumber(medianOf(first))} to ${printQuantity(medianOf(last), unit)}`;
    const shown = ends === 'overlap' ? 'and their limits overlap' : 'without limits to rank them by';
    return { clause: `${range}, ${shown}`, shorter: range, evidence };
  }
  return {
    clause: `${name} is least in ${nameOf(first)} and greatest in ${nameOf(last)} (medians ${printNumber(medianOf(first))} and ${printQuantity(medianOf(last), unit)})`,
    shorter: `${name} is least in ${nameOf(first)} and greatest in ${nameOf(last)}`,
    evidence,
  };
}

function medianSaid(found: SummaryFound, group: NumberGroup): string {
  const { limits } = group;
  const ends =
    limits === null || 'why' in limits.medianLimits
      ? ''
      : `, ${printLevel(found.options.confidence)} limits ${printNumber(limits.medianLimits.low)} to ${printNumber(limits.medianLimits.high)}`;
  const where = group.whole ? 'median' : nameOf(group);
  return `${where} ${printQuantity(medianOf(group), group.unit)} (n = ${group.points.length}${ends})`;
}

function spanTopic(found: SummaryFound, spans: readonly SpanGroup[]): Topic {
  const { label } = spans[0];
  const dated = spans.flatMap((one) => (one.span === null ? [] : [{ ...one, span: one.span }]));
  const [first] = dated;
  const last = dated[dated.length - 1];
  if (first === undefined)
    return { ...nowhere(label, found), evidence: `${label}: no ${found.unit} has a closed date.` };
  const nameSpan = ({ group }: SpanGroup) => (group.length === 0 ? `all ${found.unit}s` : group.join(', '));
  const say = (one: (typeof dated)[number]) =>
    `${nameSpan(one)} ${printYear(one.span.from)} to ${printYear(one.span.to)} (n = ${one.n})`;
  const evidence = `${label}, hull of the spans: ${printList(dated.slice(0, 6).map(say))}.`;
  const clause =
    dated.length === 1
      ? `${nameSpan(first)} date from ${printYear(first.span.from)} to ${printYear(first.span.to)}`
      : first.span.middle === last.span.middle
        ? `${printSmall(dated.length)} groups date alike by their middles`
        : `of ${printSmall(dated.length)} dated groups the middle is earliest in ${nameSpan(first)} and latest in ${nameSpan(last)}`;
  return { clause, shorter: clause, evidence };
}

/** Kinds that a clause names. */
const MOST_NAMED = 4;

function kindTopic(found: SummaryFound, groups: readonly TermGroup[]): Topic {
  const whole = groups.find((group) => group.whole) ?? groups[0];
  const name = inSentence(whole.label);
  if (whole.n === 0) return nowhere(whole.label, found);
  const countOf = (term: string) => whole.counted.find((one) => one.term === term)?.count ?? 0;
  const ordered = [...whole.counted].sort((a, b) => b.count - a.count);
  const evidence = `${whole.label}, ${printCount(whole.n, found.unit)}: ${printSome(
    ordered.map(({ term, count, share, limits }) =>
      'why' in limits
        ? `${term} ${count}`
        : `${term} ${count} (${Math.round(share * 100)} %, limits ${Math.round(limits.low * 100)} to ${Math.round(limits.high * 100)} %)`,
    ),
    MOST_NAMED,
  )}.${mixturesSaid(found, whole.label)}`;
  const { leading, tie, couldLead } = whole;
  const start = `commonest in ${name}${couldLead.length > 0 ? ', as named,' : ''}`;
  if (leading.length === 1) {
    const clause = `${start} is ${leading[0]}, ${countOf(leading[0])} of ${printCount(whole.n, found.unit)}`;
    return { clause, shorter: clause, evidence };
  }
  if (leading.length > MOST_NAMED) {
    const clause = `${printSmall(leading.length)} kinds of ${name} are not told apart as the commonest`;
    return { clause, shorter: clause, evidence };
  }
  const clause = `${start} are ${printList(leading)} (${tie ? `a tie of ${printSmall(leading.length)}` : 'not told apart'})`;
  return { clause, shorter: clause, evidence };
}

/** By their parts, where some are mixtures. */
function mixturesSaid({ mixed }: SummaryFound, label: string): string {
  const lines = mixed.filter((one) => one.whole && one.label === label && one.inMixtures > 0);
  if (lines.length === 0) return '';
  const each = lines.map(({ term, alone, inMixtures }) => `${term} ${alone + inMixtures}`);
  return ` A mixture counts in each of its kinds: ${printSome(each, MOST_NAMED)}.`;
}
