import { attributesOf } from '../columns/claims.ts';
import type { ColumnPlan } from '../columns/column-plan.ts';
import type { DecimalMark, Dialect } from '../source-reading.ts';
import type { LayoutRule } from './layout-rules.ts';
import type { ColumnRule, SourceProfile } from './profile.ts';

/**
 * The profile that gives the same reading again: what was passed in, with encoding, delimiter, layout and
 * the attribute, unit and decimal mark of every column written out. A column kept as text says so with
 * `attribute: null`; one for which a suggestion waits for an answer says what it may be, and stays open.
 */
export function writtenProfile(
  given: SourceProfile,
  dialect: Dialect,
  layout: LayoutRule,
  plans: readonly ColumnPlan[],
  decimals: readonly DecimalMark[],
): SourceProfile {
  const used = new Set(plans.map((plan) => plan.rule));
  // Columns that this file lacks stay in the profile: another file of the kind may have them.
  const absent = given.columns.filter((rule) => !used.has(rule));
  return {
    ...given,
    encoding: dialect.encoding,
    delimiter: dialect.delimiter,
    decimal: dialect.decimal,
    layout,
    columns: [...plans.flatMap((plan) => ruleOf(plan, decimals[plan.index]!, dialect.decimal)), ...absent],
  };
}

function ruleOf(plan: ColumnPlan, decimal: DecimalMark, habit: DecimalMark): ColumnRule[] {
  const { undecided: _undecided, ...rule } = plan.rule;
  const base: ColumnRule = { ...rule, header: rule.header ?? plan.header };
  if (plan.status === 'suggested' && plan.suggestion !== undefined) {
    const { attribute, split, reason } = plan.suggestion;
    const mayBe = split === undefined ? [attribute] : attributesOf({ split });
    return [{ ...base, undecided: { mayBe, because: reason } }];
  }
  if (plan.status === 'empty' || plan.status === 'suggested') return rule.header === undefined ? [] : [base];
  if (plan.split !== undefined) return [{ ...base, split: plan.split }];
  if (plan.status === 'ignored') return [base];
  if (plan.attribute === undefined) return [{ ...base, attribute: null }];
  const numeric = plan.attribute.scale === 'ratio' || plan.attribute.scale === 'interval';
  return [
    {
      ...base,
      attribute: plan.attribute.id,
      ...(plan.unit === undefined ? {} : { unit: plan.unit }),
      ...(plan.bound === undefined ? {} : { bound: plan.bound }),
      ...(numeric && decimal !== habit ? { decimal } : {}),
    },
  ];
}
