import type { Register } from '../../attributes/definition.ts';
import type { Suggestion } from '../source-reading.ts';
import type { Claims } from './claims.ts';
import type { ColumnPlan } from './column-plan.ts';
import { matchedPlan } from './column-rules.ts';
import type { Weighed } from './weigh-match.ts';

/** A suggestion never displaces or doubles what another column gives already. */
export function withSuggestion(base: ColumnPlan, weighed: Weighed | undefined, claims: Claims): ColumnPlan {
  if (weighed?.kind === 'leave' && weighed.doubt !== undefined) return { ...base, doubt: weighed.doubt };
  if (weighed?.kind !== 'suggest' || claims.held(weighed.suggestion.attribute)) return base;
  return { ...base, status: base.status === 'empty' ? 'empty' : 'suggested', suggestion: weighed.suggestion };
}

/** Of several columns that may be one attribute the likeliest is suggested, and none of them is beyond doubt. */
export function oneSuggestionEach(
  plans: readonly ColumnPlan[],
  claims: Claims,
  register: Register,
): readonly ColumnPlan[] {
  const best = new Map<string, ColumnPlan>();
  const rivals = new Set<string>();
  for (const plan of plans) {
    if (plan.status !== 'suggested' || plan.suggestion === undefined) continue;
    const { attribute, sure, score } = plan.suggestion;
    const other = best.get(attribute);
    if (other !== undefined) rivals.add(attribute);
    const weight = (one: Suggestion) => (one.sure ? 1 : 0) + one.score;
    if (other === undefined || weight({ ...plan.suggestion, sure, score }) > weight(other.suggestion!))
      best.set(attribute, plan);
  }
  return plans.map((plan) => {
    const { suggestion } = plan;
    if (plan.status !== 'suggested' || suggestion === undefined) return plan;
    if (claims.held(suggestion.attribute) && suggestion.split === undefined) return withoutSuggestion(plan);
    const first = best.get(suggestion.attribute)!;
    if (first !== plan) {
      const label = register.attributes.get(suggestion.attribute)?.label;
      return {
        ...withoutSuggestion(plan),
        doubt: `may be "${label}" too, which the column "${first.header}" is likelier to give`,
      };
    }
    return rivals.has(suggestion.attribute) ? { ...plan, suggestion: { ...suggestion, sure: false } } : plan;
  });
}

function withoutSuggestion(plan: ColumnPlan): ColumnPlan {
  const { suggestion: _suggestion, ...rest } = plan;
  return { ...rest, status: 'unknown' };
}

/** What is beyond doubt is taken, the likeliest first; every other suggestion stays open. */
export function acceptSuggestions(
  plans: readonly ColumnPlan[],
  claims: Claims,
  register: Register,
): readonly ColumnPlan[] {
  const accepted = new Map<number, ColumnPlan>();
  const order = plans
    .filter((plan) => plan.status === 'suggested' && plan.suggestion!.sure)
    .sort((a, b) => b.suggestion!.score - a.suggestion!.score || a.index - b.index);
  for (const plan of order) {
    const attribute = register.attributes.get(plan.suggestion!.attribute)!;
    const { split, reason } = plan.suggestion!;
    const via = `suggestion accepted: ${reason}`;
    const taken: ColumnPlan =
      split === undefined
        ? { ...matchedPlan(plan, attribute), via }
        : { ...plan, status: 'matched', split, via };
    if (claims.holder(taken) !== undefined) continue;
    claims.add(taken);
    accepted.set(plan.index, taken);
  }
  return plans.map((plan) => accepted.get(plan.index) ?? plan);
}
