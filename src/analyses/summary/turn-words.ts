import type { Turn } from '../contract.ts';
import { inSentence, printCount, printList, printSome } from '../phrasing.ts';
import { besideTurns } from '../shared/guard/turn-words.ts';
import type { NumberGroup, SummaryFound, TermGroup } from './found.ts';
import { attributesOf, nameOf } from './topic-words.ts';

/** The groups of which many records have no value, each with that share. */
const withGaps = (found: SummaryFound) =>
  wholesOf(found).flatMap((group) => (group.gap === null ? [] : [{ ...group, gap: group.gap }]));

const wholesOf = (found: SummaryFound) =>
  [...attributesOf(found.numbers), ...attributesOf(found.terms)].map(
    (groups: readonly (NumberGroup | TermGroup)[]) => groups.find((group) => group.whole) ?? groups[0],
  );

/** What would make the tables say something else, or less. */
export function summaryTurns(found: SummaryFound): Turn[] {
  const { unit, n } = found;
  const turns: Turn[] = [];
  const said = (what: string, size: string, overturns = false) => turns.push({ what, size, overturns });
  for (const group of found.terms) {
    const whole = group.whole || found.by.length === 0;
    if (!whole || group.couldLead.length === 0) continue;
    const could = group.couldLead.map((term) => {
      const one = group.counted.find((entry) => entry.term === term);
      return `${term} (${one?.count} to ${(one?.count ?? 0) + (one?.couldBe ?? 0)})`;
    });
    said(
      `were all that is named more broadly of one kind of ${inSentence(group.label)}`,
      `${printSome(could, 3)} could be the commonest`,
      true,
    );
  }
  const gaps = withGaps(found);
  if (gaps.length > 0)
    said(
      'many gaps',
      printSome(
        gaps.map(
          (group) =>
            `${inSentence(group.label)} is not recorded of ${group.counts.missing} (${Math.round(100 * group.gap)} %)`,
        ),
        4,
      ),
    );
  const small = new Map<string, number>();
  for (const group of [...found.numbers, ...found.terms])
    if (!group.quotable && group.counts.n > 0)
      small.set(
        group.group.length === 0 ? `all ${unit}s` : nameOf(group),
        Math.max(small.get(nameOf(group)) ?? 0, group.counts.n),
      );
  if (small.size > 0)
    said(
      `few values in ${printSome(
        [...small].map(([name, count]) => `${name} (${count})`),
        6,
      )}`,
      'nothing is typical of so few, and they are not quoted',
    );
  const open = [
    ...new Set(
      found.numbers
        .filter(({ points }) => points.some(({ openEnded }) => openEnded))
        .map(({ label }) => inSentence(label)),
    ),
  ];
  if (open.length > 0)
    said(
      `open-ended readings in ${printList(open)}`,
      'mean and standard deviation are not given; the median stands between its bounds',
    );
  if (unit === 'fragment' && n.items < n.fragments)
    said(
      `${n.fragments} fragments come from ${n.items} items`,
      'fragments of one item are not independent, so that counts of fragments say less than they seem to',
    );
  return found.beside === null
    ? turns
    : [...turns, ...besideTurns(found.beside, 'what differs between groups')];
}

/** What would settle what is open. */
export function summaryNext(found: SummaryFound): string[] {
  const broad = found.terms.filter(
    ({ couldLead, whole }) => couldLead.length > 0 && (whole || found.by.length === 0),
  );
  const [worst] = withGaps(found).sort((a, b) => b.gap - a.gap);
  return [
    ...broad.map(({ label }) => `Name ${inSentence(label)} more closely where it can still be seen.`),
    ...(worst === undefined
      ? []
      : [
          `Record ${inSentence(worst.label)} of the ${printCount(worst.counts.missing, found.unit)} without it, where it can be seen.`,
        ]),
  ];
}
