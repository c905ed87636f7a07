import type { Condition } from '../../../fragments/select.ts';

/** A rule file as the form edits it. Whether it holds is for the worker to say. */

export interface TypeDraft {
  readonly id: string;
  readonly label: string;
  readonly when: unknown;
}

export interface RuleFile {
  readonly title: string;
  readonly author?: string;
  readonly source?: string;
  readonly among?: readonly Condition[];
  readonly types: readonly TypeDraft[];
  readonly several?: 'first' | 'undecided';
}

export function readRuleFile(bytes: Uint8Array | undefined): RuleFile | null {
  if (bytes === undefined) return null;
  try {
    const value = JSON.parse(new TextDecoder().decode(bytes)) as Partial<RuleFile>;
    const types =
      Array.isArray(value.types) && value.types.every((type) => typeof type === 'object' && type !== null);
    return types && typeof value.title === 'string' ? (value as RuleFile) : null;
  } catch {
    return null;
  }
}

export function ruleText(file: RuleFile): string {
  return `${JSON.stringify(file, null, 2)}\n`;
}

/** The conditions of a type that the form can edit; null where the rule is nested deeper. */
export function conditionsOf(when: unknown): readonly Condition[] | null {
  if (typeof when !== 'object' || when === null) return null;
  if ('attribute' in when) return [when as Condition];
  if (!('all' in when) || !Array.isArray(when.all)) return null;
  const flat = when.all.every((part) => typeof part === 'object' && part !== null && 'attribute' in part);
  return flat ? (when.all as readonly Condition[]) : null;
}

export function ruleFrom(conditions: readonly Condition[]): unknown {
  return conditions.length === 1 ? conditions[0] : { all: conditions };
}

/** The condition with its limits and terms changed; where nothing is left it asks for any value. */
export function changed(
  one: Condition,
  change: { readonly [Key in keyof Condition]?: Condition[Key] | undefined },
): Condition {
  const merged = Object.entries({ ...one, ...change }).filter(
    ([key, value]) => key !== 'known' && value !== undefined && !(Array.isArray(value) && value.length === 0),
  );
  const kept = Object.fromEntries(merged) as Condition;
  if (Object.keys(kept).length > 1) return kept;
  return { attribute: kept.attribute, known: change.known ?? one.known ?? true };
}

/** The rules with one limit moved wherever it stands, however deep. */
export function withCut(file: RuleFile, attribute: string, from: number, to: number): RuleFile {
  const move = (rule: unknown): unknown => {
    if (Array.isArray(rule)) return rule.map(move);
    if (typeof rule !== 'object' || rule === null) return rule;
    const own = rule as Record<string, unknown>;
    const limits = own.attribute === attribute ? ['atLeast', 'atMost', 'below'] : [];
    return Object.fromEntries(
      Object.entries(own).map(([key, value]) => [
        key,
        limits.includes(key) && value === from
          ? to
          : ['all', 'any', 'not'].includes(key)
            ? move(value)
            : value,
      ]),
    );
  };
  return { ...file, types: file.types.map((type) => ({ ...type, when: move(type.when) })) };
}

/** An id for a new type that no other has. */
export function freeId(types: readonly TypeDraft[]): string {
  let count = types.length + 1;
  while (types.some(({ id }) => id === `type${count}`)) count++;
  return `type${count}`;
}
