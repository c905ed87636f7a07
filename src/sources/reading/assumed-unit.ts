import type { AttributeDefinition, Register } from '../../attributes/definition.ts';
import { unitDimension } from '../../cells/units.ts';
import type { ColumnPlan } from '../columns/column-plan.ts';
import { isBlank } from '../layout/cell-shapes.ts';
import { enter, type Ledger } from '../ledger/ledger.ts';

/** Measures that are written down in more than one unit. An angle or a share is not. */
const SEVERAL_UNITS = new Set(['length', 'area', 'mass', 'count']);
/** A cell that states a unit of its own has letters, or the signs of foot and inch. */
const BARE_NUMBER = /^[^\p{L}"'″′]*\d[^\p{L}"'″′]*$/u;

/**
 * The unit in which a column is read although nothing in the source states one: neither the header nor a
 * note nor the profile, nor some of its cells. undefined where a unit is stated, or none is needed.
 */
export function assumedUnit(
  plan: ColumnPlan,
  texts: readonly string[],
  register: Register,
): string | undefined {
  if (plan.status !== 'matched' || plan.unit !== undefined) return undefined;
  const attribute = unitlessTarget(plan, register);
  const unit = attribute?.unit;
  if (unit === undefined || isOwnName(plan.header, attribute)) return undefined;
  if (!SEVERAL_UNITS.has(unitDimension(unit) ?? '')) return undefined;
  return texts.some((text) => !isBlank(text) && BARE_NUMBER.test(text.replace(/[x×]/gu, ' ')))
    ? unit
    : undefined;
}

/** "rowSpacing" is our own name of the attribute, which has its unit; "length" is anybody's word. */
function isOwnName(header: string, attribute: AttributeDefinition | undefined): boolean {
  return header === attribute?.id && /[A-Z\d]/.test(header);
}

function unitlessTarget(plan: ColumnPlan, register: Register): AttributeDefinition | undefined {
  if (plan.split === undefined) return plan.attribute;
  const target = plan.split.into.find(
    ({ attribute, unit }) =>
      unit === undefined && attribute !== null && register.attributes.get(attribute)?.unit !== undefined,
  );
  return register.attributes.get(target?.attribute ?? '');
}

export function enterAssumedUnit(header: string, unit: string, ledger: Ledger): void {
  enter(ledger, {
    row: 0,
    column: header,
    raw: header,
    readAs: unit,
    level: 'flagged',
    rule: 'unit-assumed',
    why: `The source states no unit for this column; its numbers are taken as ${unit} until the profile says otherwise.`,
  });
}
