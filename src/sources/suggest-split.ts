import type { AttributeDefinition, Register } from '../attributes/definition.ts';
import { foldText } from '../attributes/folding.ts';
import { headerUnit, splitHeader } from '../attributes/matching.ts';
import type { ColumnEvidence } from './column-evidence.ts';
import type { ColumnPlan } from './columns.ts';
import type { SplitRule } from './profile.ts';

/** Columns whose cells hold two values, such as "14 x 12" under "Thread count". */

/** Share of the cells that must look like a pair. */
const ENOUGH = 0.4;

const SIZES = new Set(
  'dimensions dimension size sizes masse mass abmessung abmessungen grosse taille mesures dimensioni misure dimensiones medidas tamano mal storrelse dim dims dimens abm format'.split(
    ' ',
  ),
);

/**
 * A column that is suggested for the first of two systems, or headed like a size, and whose cells are
 * mostly pairs, is suggested to be split between both attributes rather than read as one.
 */
export function suggestSplit(plan: ColumnPlan, evidence: ColumnEvidence, register: Register): ColumnPlan {
  if (plan.via !== undefined || (plan.status !== 'suggested' && plan.status !== 'unknown')) return plan;
  if (evidence.pairs < ENOUGH) return plan;
  const pair = partners(plan, register);
  if (pair === null) return plan;
  const [first, second] = pair;
  const split: SplitRule = {
    by: 'systems',
    align: 'start',
    into: [target(first, plan.header), target(second, plan.header)],
  };
  const reason = `${Math.round(100 * evidence.pairs)} % of its cells hold two values, for "${first.label}" and "${second.label}"`;
  const score = Math.max(plan.suggestion?.score ?? 0, 0.6);
  return { ...plan, status: 'suggested', suggestion: { attribute: first.id, reason, score, split } };
}

function partners(
  plan: ColumnPlan,
  register: Register,
): readonly [AttributeDefinition, AttributeDefinition] | null {
  const id = plan.suggestion?.attribute ?? '';
  const words = foldText(splitHeader(plan.header).name).split(' ');
  const counted = /^per (?:\d+ )?(?:mm|cm|dm|m|inch)$/.test(splitHeader(plan.header).unit ?? '');
  const names = words.some((word) => SIZES.has(word))
    ? ['length', 'width']
    : /[12]$/.test(id)
      ? [id.replace(/2$/, '1'), id.replace(/1$/, '2')]
      : counted
        ? ['density1', 'density2']
        : [];
  const [first, second] = names.map((name) => register.attributes.get(name));
  return first === undefined || second === undefined ? null : [first, second];
}

function target(attribute: AttributeDefinition, header: string): SplitRule['into'][number] {
  const unit = headerUnit(header, attribute);
  return { attribute: attribute.id, ...(unit === undefined || attribute.unit === undefined ? {} : { unit }) };
}
