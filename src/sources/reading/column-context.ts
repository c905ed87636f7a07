import type { AttributeDefinition, Register } from '../../attributes/definition.ts';
import type { CellContext } from '../../cells/context.ts';
import type { CellState } from '../../cells/reading.ts';
import type { ColumnRule, SourceProfile } from '../profile/profile.ts';
import type { DecimalMark } from '../source-reading.ts';

/** Makes the context of a column's cells, for any attribute that the column feeds. */
export type ContextFor = (attribute: AttributeDefinition | null, unit: string | undefined) => CellContext;

export function contextOf(
  rule: Partial<ColumnRule>,
  decimal: DecimalMark,
  profile: SourceProfile,
  register: Register,
): ContextFor {
  const missing = missingOf(rule, profile);
  return (attribute, unit) => {
    const vocabulary =
      attribute?.vocabulary === undefined ? undefined : register.vocabularies.get(attribute.vocabulary);
    return {
      decimal,
      missing,
      register,
      tells: [...(profile.tells ?? []), ...(rule.tells ?? [])],
      translations: withoutPrototype({
        ...(attribute === null ? {} : profile.terms[attribute.id]),
        ...rule.terms,
      }),
      ...(unit === undefined ? {} : { unit }),
      ...(vocabulary === undefined ? {} : { vocabulary }),
      ...(rule.circa === undefined ? {} : { circa: rule.circa }),
      ...(rule.plyOrder === undefined ? {} : { plyOrder: rule.plyOrder }),
    };
  };
}

/** The column's codes for "nothing here", before those of the whole source. */
export function missingOf(
  rule: Partial<ColumnRule>,
  profile: SourceProfile,
): Readonly<Record<string, CellState>> {
  return withoutPrototype({ ...profile.missing, ...rule.missing });
}

/** A cell that says "constructor" must not meet what every object inherits. */
function withoutPrototype<T>(record: Readonly<Record<string, T>>): Record<string, T> {
  return Object.assign(Object.create(null) as Record<string, T>, record);
}
