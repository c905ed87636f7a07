import type { Register } from '../../attributes/definition.ts';
import { headerUnit, type Match, matchAttribute, splitHeader } from '../../attributes/matching.ts';
import { isKnownHeader } from '../layout/cell-shapes.ts';
import type { SourceProfile } from '../profile/profile.ts';
import { classesInstead } from '../reading/read-spacing-words.ts';
import type { Fault, Suggestion } from '../source-reading.ts';
import { type Bound, boundPairs } from './bound-headers.ts';
import { type ColumnEvidence, fitness, holdsNoNumbers } from './column-evidence.ts';
import type { ColumnPlan } from './column-plan.ts';
import { assignRules, matchedPlan, planFromRule } from './column-rules.ts';
import { columnSupport } from './column-support.ts';
import { suggestByCells } from './suggest-by-cells.ts';
import { holdsSizes, suggestSplit } from './suggest-split.ts';
import { tableSubject } from './table-subject.ts';
import { type Weighed, weighMatch } from './weigh-match.ts';

export interface PlanInput {
  readonly headers: readonly string[];
  /** A second wording of each header: the lower of two header rows. */
  readonly alternatives: readonly string[];
  readonly evidence: readonly ColumnEvidence[];
  readonly profile: SourceProfile;
  readonly register: Register;
  readonly file: string;
  readonly acceptSuggestions: boolean;
}

/** In a wider file only exact headers are looked for: comparing many names takes long, and few of them will be ours. */
const WIDEST_COMPARED = 150;

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
  const subject = tableSubject(register.subject, headers, matches, input.evidence, register);
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
  for (const plan of bestFirst(exact, input)) {
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

/** Attribute ids that a plan feeds. */
export function attributesOf(plan: Pick<ColumnPlan, 'attribute' | 'split'>): string[] {
  if (plan.split !== undefined) {
    return plan.split.into.flatMap(({ attribute }) => (attribute === null ? [] : [attribute]));
  }
  return plan.attribute === undefined ? [] : [plan.attribute.id];
}

/** The unit that a header without an attribute states; shown, so that an attribute can be made of it. */
export function statedUnit(header: string): string | undefined {
  return splitHeader(header).unit;
}

interface Claims {
  readonly add: (plan: ColumnPlan) => void;
  /** Header of the column that holds what the plan wants. */
  readonly holder: (plan: ColumnPlan) => string | undefined;
  readonly held: (id: string) => boolean;
}

/** One column an attribute; low and high of one attribute may come from two. */
function openClaims(): Claims {
  const held = new Map<string, string>();
  const key = (id: string, bound: Bound | undefined): string => (bound === undefined ? id : `${id} ${bound}`);
  return {
    held: (id) => held.has(id),
    add: (plan) => {
      for (const id of attributesOf(plan)) held.set(key(id, plan.bound), plan.header);
    },
    holder: (plan) => {
      for (const id of attributesOf(plan)) {
        const bounds = plan.bound === undefined ? (['low', 'high'] as const) : [plan.bound];
        const found =
          held.get(id) ?? bounds.map((bound) => held.get(key(id, bound))).find((name) => name !== undefined);
        if (found !== undefined) return found;
      }
      return undefined;
    },
  };
}

function matchHeaders(input: PlanInput, settled: ReadonlyMap<number, ColumnPlan>): Map<number, Match> {
  const { headers, alternatives, register } = input;
  const wide = headers.length > WIDEST_COMPARED;
  const matches = new Map<number, Match>();
  for (const [index, header] of headers.entries()) {
    if (settled.has(index)) continue;
    const wordings = alternatives[index] === header ? [header] : [header, alternatives[index]!];
    const found = wordings.map(
      (wording): Match =>
        wide && !isKnownHeader(wording, register) ? { kind: 'none' } : matchAttribute(wording, register),
    );
    const best =
      found.find(({ kind }) => kind === 'exact') ??
      found.find(({ kind }) => kind === 'suggested') ??
      found[0]!;
    matches.set(index, best);
  }
  return matches;
}

/** "from" and "to" give the ends of the date. */
function dateEnd(plan: ColumnPlan, register: Register, base: ColumnPlan): ColumnPlan {
  const bound =
    plan.attribute!.id === 'dateFrom' ? 'low' : plan.attribute!.id === 'dateTo' ? 'high' : undefined;
  const date = register.attributes.get('date');
  if (bound === undefined || date === undefined) return plan;
  return { ...matchedPlan(base, date), bound, ...(plan.via === undefined ? {} : { via: plan.via }) };
}

/** Ends of a date mean it only beside their partner, and only where the cells do not speak against years. */
function dropOddEnds(exact: (ColumnPlan | null)[], input: PlanInput, weighed: Map<number, Weighed>): void {
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

function bestFirst(plans: readonly (ColumnPlan | null)[], { evidence, register }: PlanInput): ColumnPlan[] {
  const fit = (plan: ColumnPlan): number =>
    fitness(
      plan.attribute!,
      evidence[plan.index]!,
      headerUnit(plan.header, register.attributes.get(plan.attribute!.id)!),
    );
  return plans.filter((plan) => plan !== null).sort((a, b) => fit(b) - fit(a) || a.index - b.index);
}

/** A suggestion never displaces or doubles what another column gives already. */
function withSuggestion(base: ColumnPlan, weighed: Weighed | undefined, claims: Claims): ColumnPlan {
  if (weighed?.kind === 'leave' && weighed.doubt !== undefined) return { ...base, doubt: weighed.doubt };
  if (weighed?.kind !== 'suggest' || claims.held(weighed.suggestion.attribute)) return base;
  return { ...base, status: base.status === 'empty' ? 'empty' : 'suggested', suggestion: weighed.suggestion };
}

/** Of several columns that may be one attribute the likeliest is suggested, and none of them is beyond doubt. */
function oneSuggestionEach(
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

/** The wording of a header of two rows that was recognised. */
function wordingMet({ headers, alternatives, register }: PlanInput, index: number, match: Match): string {
  const [header, lower] = [headers[index]!, alternatives[index]!];
  if (match.kind === 'none' || lower === header) return header;
  const own = matchAttribute(header, register);
  return own.kind !== 'none' && own.id === match.id && own.kind === match.kind ? header : lower;
}

/** What is beyond doubt is taken, the likeliest first; every other suggestion stays open. */
function acceptSuggestions(
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
