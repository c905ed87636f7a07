import type { Register } from '../../attributes/definition.ts';
import type { Match } from '../../attributes/matching.ts';
import type { ColumnPlan, PlanInput } from './column-plan.ts';
import { matchedPlan } from './column-rules.ts';
import { columnSupport } from './column-support.ts';
import type { Subject } from './table-subject.ts';
import type { Weighed } from './weigh-match.ts';

/** Columns that mean something only beside another: the ends of a date, the two coordinates of a place. */

/** "from" and "to" give the ends of the date. */
export function dateEnd(plan: ColumnPlan, register: Register, base: ColumnPlan): ColumnPlan {
  const bound =
    plan.attribute!.id === 'dateFrom' ? 'low' : plan.attribute!.id === 'dateTo' ? 'high' : undefined;
  const date = register.attributes.get('date');
  if (bound === undefined || date === undefined) return plan;
  return { ...matchedPlan(base, date), bound, ...(plan.via === undefined ? {} : { via: plan.via }) };
}

/** Ends of a date mean it only beside their partner, and only where the cells do not speak against years. */
export function dropOddEnds(
  exact: (ColumnPlan | null)[],
  input: PlanInput,
  weighed: Map<number, Weighed>,
): void {
  const ends = exact.filter((plan) => plan?.bound !== undefined && plan.attribute?.id === 'date');
  for (const plan of ends) {
    if (plan === null) continue;
    const { speaksAgainst } = columnSupport(plan.attribute!, input.evidence[plan.index]!, input.register);
    const alone = !ends.some((other) => other?.bound !== plan.bound) && plan.header.trim().length <= 3;
    if (!alone && speaksAgainst.length === 0) continue;
    exact[plan.index] = null;
    const why = alone ? 'the other end is missing' : speaksAgainst[0];
    weighed.set(plan.index, { kind: 'leave', doubt: `may be an end of the date, but ${why}` });
  }
}

/**
 * "PPI" alone is as well an index of prices: picks per inch stand beside ends per inch, or in a table of cloth.
 *
 * @returns the table's subject, as it is without such a header.
 */
export function dropLoneCounts(
  headers: readonly string[],
  matches: Map<number, Match>,
  subjectOf: (matches: ReadonlyMap<number, Match>) => Subject,
): Subject {
  const named = headers.flatMap((header, index) => (/^[ep]p[ic]$/i.test(header.trim()) ? [index] : []));
  if (named.length !== 1) return subjectOf(matches);
  const [index] = named as [number];
  const met = matches.get(index);
  matches.delete(index);
  const subject = subjectOf(matches);
  if (met !== undefined)
    matches.set(
      index,
      subject === 'textiles' || met.kind === 'none'
        ? met
        : { kind: 'none', reason: 'may count threads per inch, but nothing else here is of cloth' },
    );
  return subject;
}

const COORDINATES: readonly (readonly [id: string, other: string])[] = [
  ['latitude', 'longitude'],
  ['longitude', 'latitude'],
];
/** A longer wording ("longitude", "geogr. Länge") says by itself what it is. */
const LONGEST_ABBREVIATION = 5;

/** "Long." is a coordinate beside "Lat.", and a length beside "Larg.". */
export function dropOddCoordinates(
  exact: (ColumnPlan | null)[],
  weighed: Map<number, Weighed>,
  settled: ReadonlySet<string>,
): void {
  const given = new Set([...settled, ...exact.flatMap((plan) => plan?.attribute?.id ?? [])]);
  for (const [id, other] of COORDINATES) {
    for (const [place, plan] of exact.entries()) {
      if (plan?.attribute?.id !== id || given.has(other)) continue;
      if (plan.header.trim().length > LONGEST_ABBREVIATION) continue;
      exact[place] = null;
      const doubt = `may be the ${id}, but no column gives the ${other}`;
      weighed.set(plan.index, besideWidth(plan, given) ?? { kind: 'leave', doubt });
    }
  }
}

/** Compass points head counts and sides of a trench as well: one is suggested as a coordinate beside the other only. */
export function dropLoneCoordinates(weighed: Map<number, Weighed>, held: (id: string) => boolean): void {
  const meant = (id: string) =>
    held(id) ||
    [...weighed.values()].some(
      (one) =>
        (one.kind === 'take' && one.id === id) || (one.kind === 'suggest' && one.suggestion.attribute === id),
    );
  for (const [index, one] of weighed) {
    if (one.kind !== 'suggest') continue;
    const pair = COORDINATES.find(([id]) => id === one.suggestion.attribute);
    if (pair !== undefined && !meant(pair[1])) weighed.set(index, { kind: 'leave' });
  }
}

function besideWidth(plan: ColumnPlan, given: ReadonlySet<string>): Weighed | null {
  if (plan.attribute?.id !== 'longitude' || !given.has('width') || given.has('length')) return null;
  const reason = `"${plan.header.trim()}" stands beside a width and without a latitude`;
  const suggestion = {
    attribute: 'length',
    reason,
    score: 0.8,
    speaksFor: [reason],
    speaksAgainst: [],
    sure: false,
  };
  return { kind: 'suggest', suggestion };
}
