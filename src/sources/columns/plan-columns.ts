import { headerUnit } from '../../attributes/matching.ts';
import { classesInstead } from '../reading/read-spacing-words.ts';
import type { Fault } from '../source-reading.ts';
import { boundPairs } from './bound-headers.ts';
import { attributesOf, openClaims } from './claims.ts';
import { fitness, holdsNoNumbers } from './column-evidence.ts';
import type { ColumnPlan, PlanInput } from './column-plan.ts';
import { assignRules, matchedPlan, planFromRule } from './column-rules.ts';
import { leaveKinds } from './like-columns.ts';
import { matchHeaders, wordingMet } from './match-headers.ts';
import { dateEnd, dropLoneCoordinates, dropLoneCounts, dropOddCoordinates, dropOddEnds } from './partners.ts';
import { acceptSuggestions, oneSuggestionEach, withSuggestion } from './settle-suggestions.ts';
import { suggestByCells } from './suggest-by-cells.ts';
import { holdsSizes, suggestSplit } from './suggest-split.ts';
import { tableSubject } from './table-subject.ts';
import { weighMatch } from './weigh-match.ts';

/**
 * Which attribute does each column feed? What the profile says goes first; then exact headers, one column
 * an attribute, the one whose cells serve it best; near matches are suggestions, taken only with
 * `acceptSuggestions`. A column without an attribute is kept as text.
 * @throws InputError where the profile names an attribute that the register does not know.
 */
export function planColumns(input: PlanInput): {
  readonly plans: readonly ColumnPlan[];
  readonly faults: readonly Fault[];
} {
  const { headers, alternatives, profile, register, file } = input;
  const { rules, faults } = assignRules(headers, alternatives, profile, file);
  const claims = openClaims();
  const settled = new Map<number, ColumnPlan>();
  for (const [index, rule] of rules) {
    const plan = planFromRule(index, headers[index]!, rule, register, file);
    if (plan === null) continue;
    settled.set(index, plan);
    claims.add(plan);
  }
  const pairs = boundPairs(headers, alternatives, register, new Set(settled.keys()));
  const open = headers.map((header, index): ColumnPlan => {
    const empty = input.evidence[index]!.filled === 0;
    return { index, header, status: empty ? 'empty' : 'unknown', rule: rules.get(index) ?? {} };
  });
  const matches = matchHeaders(input, settled);
  const subject = dropLoneCounts(headers, matches, (met) =>
    tableSubject(register.subject, headers, met, input.evidence, register),
  );
  const ends = new Set([...matches.values()].flatMap((match) => (match.kind === 'exact' ? [match.id] : [])));
  const bothEnds = ends.has('dateFrom') && ends.has('dateTo');
  const weighed = new Map(
    [...matches].map(([index, match]) => [
      index,
      weighMatch(
        wordingMet(input, index, match),
        match,
        input.evidence[index]!,
        register,
        subject,
        bothEnds && match.kind === 'exact' && (match.id === 'dateFrom' || match.id === 'dateTo'),
      ),
    ]),
  );
  leaveKinds(weighed, input.evidence, register);
  const exact = open.map((base): ColumnPlan | null => {
    const pair = pairs.get(base.index);
    if (settled.has(base.index)) return null;
    if (pair !== undefined) return { ...matchedPlan(base, pair.attribute), bound: pair.bound, via: pair.via };
    const found = weighed.get(base.index);
    if (found?.kind !== 'take') return null;
    return dateEnd(
      {
        ...matchedPlan(base, register.attributes.get(found.id)!),
        via: found.via,
        ...(found.doubt === undefined ? {} : { doubt: found.doubt }),
      },
      register,
      base,
    );
  });
  dropOddEnds(exact, input, weighed);
  dropLoneCoordinates(weighed, claims.held);
  dropOddCoordinates(exact, weighed, new Set([...settled.values()].flatMap(attributesOf)));
  const owned = new Set(
    [...weighed].flatMap(([index, found]) => (found.kind === 'take' && found.own ? [index] : [])),
  );
  for (const plan of bestFirst(exact, input, owned)) {
    const attribute = plan.attribute!;
    const base = open[plan.index]!;
    if (holdsNoNumbers(attribute, input.evidence[plan.index]!)) {
      const classes = classesInstead(attribute, input.evidence[plan.index]!.distinct, register);
      const instead = classes === null ? null : { ...matchedPlan(base, classes), via: plan.header };
      if (instead !== null && claims.holder(instead) === undefined) {
        settled.set(plan.index, instead);
        claims.add(instead);
        continue;
      }
      const doubt = `reads as "${attribute.label}", but its cells hold no numbers`;
      settled.set(plan.index, { ...base, doubt });
      continue;
    }
    if (holdsSizes(plan.header, input.evidence[plan.index]!)) {
      settled.set(plan.index, base);
      continue;
    }
    const holder = claims.holder(plan);
    if (holder === undefined) {
      settled.set(plan.index, plan);
      claims.add(plan);
    } else {
      const doubt = `reads as "${attribute.label}" too, which the column "${holder}" gives already`;
      settled.set(plan.index, { ...base, doubt });
    }
  }
  const byCells = new Set<string>();
  const suggested = open.map((base) => {
    const named = settled.get(base.index) ?? withSuggestion(base, weighed.get(base.index), claims);
    const plan = suggestByCells(
      named,
      input.evidence[base.index]!,
      register,
      (id) => claims.held(id) || byCells.has(id),
    );
    if (plan !== named && plan.suggestion !== undefined) byCells.add(plan.suggestion.attribute);
    return suggestSplit(plan, input.evidence[base.index]!, register, claims.held);
  });
  const plans = oneSuggestionEach(suggested, claims, register);
  return { plans: input.acceptSuggestions ? acceptSuggestions(plans, claims, register) : plans, faults };
}

/** A column under the attribute's own name goes before any synonym; then the one whose cells serve best. */
function bestFirst(
  plans: readonly (ColumnPlan | null)[],
  { evidence, register }: PlanInput,
  owned: ReadonlySet<number>,
): ColumnPlan[] {
  const fit = (plan: ColumnPlan): number =>
    fitness(
      plan.attribute!,
      evidence[plan.index]!,
      headerUnit(plan.header, register.attributes.get(plan.attribute!.id)!),
    );
  const own = (plan: ColumnPlan) => (owned.has(plan.index) ? 1 : 0);
  return plans
    .filter((plan) => plan !== null)
    .sort((a, b) => own(b) - own(a) || fit(b) - fit(a) || a.index - b.index);
}
