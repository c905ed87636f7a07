import type { AttributeDefinition, Register } from '../../attributes/definition.ts';
import { headerUnit, matchAttribute } from '../../attributes/matching.ts';
import { InputError } from '../../errors.ts';
import type { ColumnRule, SourceProfile } from '../profile/profile.ts';
import type { Fault } from '../source-reading.ts';
import type { ColumnPlan } from './column-plan.ts';

/** What the profile says of the columns. */

/** The rule of each column that the profile names, and a fault for each that the file lacks. */
export function assignRules(
  headers: readonly string[],
  alternatives: readonly string[],
  profile: SourceProfile,
  file: string,
): { readonly rules: ReadonlyMap<number, ColumnRule>; readonly faults: readonly Fault[] } {
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
    else if (rule.optional !== true && rule.undecided === undefined) {
      faults.push({
        what: `the profile names the column "${wordings[0]}", which the file does not have`,
        where: { file },
        mend: 'correct the header in the profile, or mark the column as "optional": true',
      });
    }
  }
  return { rules, faults };
}

/**
 * What the profile makes of a column; null where it leaves the attribute to be found from the header.
 * @throws InputError for an attribute that the register does not know.
 */
export function planFromRule(
  index: number,
  header: string,
  rule: ColumnRule,
  register: Register,
  file: string,
): ColumnPlan | null {
  const base: ColumnPlan = { index, header, status: 'unknown', rule };
  if (rule.ignore === true) return { ...base, status: 'ignored', via: 'profile' };
  if (rule.split !== undefined) {
    for (const { attribute } of rule.split.into) {
      if (attribute !== null) knownAttribute(attribute, header, register, file);
    }
    return { ...base, status: 'matched', split: rule.split, via: 'profile', ...unitPart(rule.unit) };
  }
  if (rule.attribute === null) return { ...base, via: 'profile' };
  if (rule.attribute === undefined) return null;
  const attribute = knownAttribute(rule.attribute, header, register, file);
  const bound = rule.bound === undefined ? {} : { bound: rule.bound };
  return { ...matchedPlan(base, attribute), ...bound, via: 'profile' };
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
  const hint = near.kind === 'none' ? '' : `did you mean "${near.id}"? Otherwise `;
  throw new InputError(
    `the profile names the attribute "${id}", which is not known`,
    { file, column: header },
    `${hint}name a default attribute, or define it under "attributes" in the study`,
  );
}

const ERA_UNITS = { BCE: 'year BC', CE: 'year', BP: 'year BP' } as const;

/** A column that feeds one attribute, with the unit of its numbers: from the profile, else from the header. */
export function matchedPlan(base: ColumnPlan, attribute: AttributeDefinition): ColumnPlan {
  const { rule, header } = base;
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
