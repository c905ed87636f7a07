import type { AttributeDefinition, Register } from '../attributes/definition.ts';
import { headerUnit, matchAttribute, splitHeader } from '../attributes/matching.ts';
import { InputError } from '../errors.ts';
import { type Bound, boundPairs } from './bound-headers.ts';
import { isKnownHeader } from './layout/cell-shapes.ts';
import type { ColumnRule, SourceProfile, SplitRule } from './profile.ts';
import type { ColumnStatus, Fault } from './source-reading.ts';

/** What is to be done with one column of the file. */
export interface ColumnPlan {
  readonly index: number;
  readonly header: string;
  readonly status: ColumnStatus;
  readonly attribute?: AttributeDefinition;
  readonly split?: SplitRule;
  readonly bound?: Bound;
  readonly unit?: string;
  readonly via?: string;
  readonly suggestion?: { readonly attribute: string; readonly reason: string; readonly score: number };
  readonly doubt?: string;
  readonly rule: Partial<ColumnRule>;
}

export interface ColumnPlans {
  readonly plans: readonly ColumnPlan[];
  readonly faults: readonly Fault[];
}

interface Headers {
  readonly headers: readonly string[];
  readonly alternatives: readonly string[];
}

/** In a wider file only exact headers are looked for: comparing thousands of names would take minutes. */
const WIDEST_COMPARED = 1000;

/**
 * Which attribute does each column feed? What the profile says goes first; then exact headers, one column
 * an attribute; near matches are suggestions, taken only with `acceptSuggestions`. A column without an
 * attribute is kept as text.
 * @throws InputError where the profile names an attribute that the register does not know.
 */
export function planColumns(
  { headers, alternatives }: Headers,
  empty: ReadonlySet<number>,
  profile: SourceProfile,
  register: Register,
  file: string,
  acceptSuggestions: boolean,
): ColumnPlans {
  const { rules, faults } = assignRules(headers, alternatives, profile, file);
  const plans: (ColumnPlan | undefined)[] = headers.map(() => undefined);
  const claimed = new Map<string, string>();
  for (const [index, rule] of rules) {
    const plan = fromRule(index, headers[index]!, rule, register, file);
    if (plan === null) continue;
    plans[index] = plan;
    for (const id of attributesOf(plan)) claimed.set(claim(id, plan.bound), plan.header);
  }
  const pairs = boundPairs(headers, alternatives, register, new Set(rules.keys()));
  const wide = headers.length > WIDEST_COMPARED;
  for (const [index, header] of headers.entries()) {
    if (plans[index] !== undefined) continue;
    const rule = rules.get(index) ?? {};
    const unmatched: ColumnPlan = { index, header, status: empty.has(index) ? 'empty' : 'unknown', rule };
    const pair = pairs.get(index);
    if (
      pair !== undefined &&
      !claimed.has(claim(pair.attribute.id, pair.bound)) &&
      !claimed.has(pair.attribute.id)
    ) {
      claimed.set(claim(pair.attribute.id, pair.bound), header);
      plans[index] = {
        ...matched(unmatched, pair.attribute, header, rule),
        bound: pair.bound,
        via: pair.via,
      };
      continue;
    }
    plans[index] = fromHeader(unmatched, alternatives[index]!, wide, register, claimed, rule);
  }
  return {
    plans: settleSuggestions(
      plans.map((plan) => plan!),
      claimed,
      register,
      acceptSuggestions,
    ),
    faults,
  };
}

/** Low and high of one attribute may come from two columns. */
function claim(id: string, bound: Bound | undefined): string {
  return bound === undefined ? id : `${id} ${bound}`;
}

/** Attribute ids that a plan feeds. */
export function attributesOf(plan: Pick<ColumnPlan, 'attribute' | 'split'>): string[] {
  if (plan.split !== undefined)
    return plan.split.into.flatMap(({ attribute }) => (attribute === null ? [] : [attribute]));
  return plan.attribute === undefined ? [] : [plan.attribute.id];
}

function assignRules(
  headers: readonly string[],
  alternatives: readonly string[],
  profile: SourceProfile,
  file: string,
): { rules: ReadonlyMap<number, ColumnRule>; faults: Fault[] } {
  const rules = new Map<number, ColumnRule>();
  const faults: Fault[] = [];
  for (const rule of profile.columns) {
    const wordings = typeof rule.header === 'string' ? [rule.header] : rule.header;
    const index = wordings
      .map((wording) => {
        const at = headers.indexOf(wording.trim());
        return at >= 0 ? at : alternatives.indexOf(wording.trim());
      })
      .find((at) => at >= 0);
    if (index !== undefined) rules.set(index, rule);
    else if (rule.optional !== true) {
      faults.push({
        what: `the profile names the column "${wordings[0]}", which the file does not have`,
        where: { file },
        mend: 'correct the header in the profile, or mark the column as "optional": true',
      });
    }
  }
  return { rules, faults };
}

/** Null where the rule leaves the attribute to be found from the header. */
function fromRule(
  index: number,
  header: string,
  rule: ColumnRule,
  register: Register,
  file: string,
): ColumnPlan | null {
  const base: ColumnPlan = { index, header, status: 'unknown', rule };
  if (rule.ignore === true) return { ...base, status: 'ignored', via: 'profile' };
  if (rule.split !== undefined) {
    for (const { attribute } of rule.split.into)
      if (attribute !== null) knownAttribute(attribute, header, register, file);
    return { ...base, status: 'matched', split: rule.split, via: 'profile', ...unitPart(rule.unit) };
  }
  if (rule.attribute === null) return { ...base, via: 'profile' };
  if (rule.attribute === undefined) return null;
  const attribute = knownAttribute(rule.attribute, header, register, file);
  return {
    ...matched(base, attribute, header, rule),
    via: 'profile',
    ...(rule.bound === undefined ? {} : { bound: rule.bound }),
  };
}

/** The attribute of that id; InputError with the likeliest meant one where there is none. */
export function knownAttribute(
  id: string,
  header: string,
  register: Register,
  file: string,
): AttributeDefinition {
  const attribute = register.attributes.get(id);
  if (attribute !== undefined) return attribute;
  const near = matchAttribute(id, register);
  const hint = near.kind === 'none' ? '' : `did you mean "${near.id}"? `;
  throw new InputError(
    `the profile names the attribute "${id}", which is not known`,
    { file, column: header },
    `${hint}name a default attribute, or define it under "attributes" in the study`,
  );
}

const ERA_UNITS = { BCE: 'year BC', CE: 'year', BP: 'year BP' } as const;

function matched(
  base: ColumnPlan,
  attribute: AttributeDefinition,
  header: string,
  rule: Partial<ColumnRule>,
): ColumnPlan {
  const unit =
    rule.unit ??
    (rule.era === undefined ? undefined : ERA_UNITS[rule.era]) ??
    eraOf(header, attribute) ??
    headerUnit(header, attribute);
  return { ...base, status: 'matched', attribute, ...unitPart(unit) };
}

function unitPart(unit: string | undefined): { unit?: string } {
  return unit === undefined ? {} : { unit };
}

/** "from (BC)", "Datierung v. Chr.": how the plain numbers of a date column are counted. */
function eraOf(header: string, attribute: AttributeDefinition): string | undefined {
  if (attribute.unit !== 'year') return undefined;
  if (/\bcal\.?\s*b\.?p\b/i.test(header)) return 'year cal BP';
  if (/\bb\.?p\b/i.test(header)) return 'year BP';
  if (/\bb\.?\s?c\b|\bbce\b|v\.\s?chr|av\.\s?j|\ba\.\s?c\.|f\.\s?kr/i.test(header)) return 'year BC';
  return undefined;
}

function fromHeader(
  base: ColumnPlan,
  alternative: string,
  wide: boolean,
  register: Register,
  claimed: Map<string, string>,
  rule: Partial<ColumnRule>,
): ColumnPlan {
  const { header } = base;
  const wordings = alternative === header ? [header] : [header, alternative];
  const matches = wordings.map((wording) =>
    wide && !isKnownHeader(wording, register)
      ? ({ kind: 'none' } as const)
      : matchAttribute(wording, register),
  );
  const exact = matches.find((match) => match.kind === 'exact');
  if (exact !== undefined) {
    const attribute = register.attributes.get(exact.id)!;
    const holder =
      claimed.get(exact.id) ?? claimed.get(claim(exact.id, 'low')) ?? claimed.get(claim(exact.id, 'high'));
    if (holder === undefined) {
      claimed.set(exact.id, header);
      return { ...matched(base, attribute, header, rule), via: exact.via };
    }
    return {
      ...base,
      doubt: `reads as "${attribute.label}" too, which the column "${holder}" gives already`,
    };
  }
  const suggested = matches.find((match) => match.kind === 'suggested');
  if (suggested !== undefined) {
    const { id, reason, score } = suggested;
    return {
      ...base,
      status: base.status === 'empty' ? 'empty' : 'suggested',
      suggestion: { attribute: id, reason, score },
    };
  }
  const reason = matches.find((match) => match.kind === 'none' && match.reason !== undefined);
  return reason?.kind === 'none' && reason.reason !== undefined ? { ...base, doubt: reason.reason } : base;
}

/** The best suggestion for an attribute that nothing else feeds may be accepted; the others stay open. */
function settleSuggestions(
  plans: readonly ColumnPlan[],
  claimed: Map<string, string>,
  register: Register,
  accept: boolean,
): readonly ColumnPlan[] {
  if (!accept) return plans;
  const order = plans
    .filter((plan) => plan.status === 'suggested')
    .sort((a, b) => b.suggestion!.score - a.suggestion!.score || a.index - b.index);
  const accepted = new Map<number, ColumnPlan>();
  for (const plan of order) {
    const { attribute: id, reason } = plan.suggestion!;
    const holder = claimed.get(id) ?? claimed.get(claim(id, 'low'));
    if (holder !== undefined) continue;
    claimed.set(id, plan.header);
    const attribute = register.attributes.get(id)!;
    accepted.set(plan.index, {
      ...matched(plan, attribute, plan.header, plan.rule),
      via: `suggestion accepted: ${reason}`,
    });
  }
  return plans.map((plan) => accepted.get(plan.index) ?? plan);
}

/** The unit that a header without an attribute states; shown, so that an attribute can be made of it. */
export function statedUnit(header: string): string | undefined {
  return splitHeader(header).unit;
}
