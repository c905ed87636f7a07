import type { Condition } from '../../../fragments/select-condition.ts';

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

/** How the parts of a group must answer. */
export type Join = 'all' | 'any' | 'none' | 'notAll';

/** A rule as the form shows it: conditions and further groups under one word. */
export interface RuleGroup {
  readonly join: Join;
  readonly parts: readonly (Condition | RuleGroup)[];
}

export function isGroup(part: Condition | RuleGroup): part is RuleGroup {
  return 'join' in part;
}

/** A rule of the file as a group; null for what is no rule. */
export function groupOf(when: unknown): RuleGroup | null {
  const part = partOf(when);
  if (part === null) return null;
  return isGroup(part) ? part : { join: 'all', parts: [part] };
}

function partOf(when: unknown): Condition | RuleGroup | null {
  if (typeof when !== 'object' || when === null) return null;
  if ('attribute' in when) return when as Condition;
  if ('all' in when) return joined('all', when.all);
  if ('any' in when) return joined('any', when.any);
  if (!('not' in when)) return null;
  const inner = partOf(when.not);
  if (inner === null) return null;
  if (!isGroup(inner)) return { join: 'none', parts: [inner] };
  if (inner.join === 'any') return { ...inner, join: 'none' };
  return inner.join === 'all' ? { ...inner, join: 'notAll' } : { join: 'none', parts: [inner] };
}

function joined(join: Join, list: unknown): RuleGroup | null {
  if (!Array.isArray(list)) return null;
  const parts = list.map(partOf);
  return parts.includes(null) ? null : { join, parts: parts as (Condition | RuleGroup)[] };
}

/** The same as a rule of the file; a single condition of the outermost group stands alone there. */
export function ruleFrom(group: RuleGroup): unknown {
  const [only] = group.parts;
  return group.join === 'all' && group.parts.length === 1 && only !== undefined && !isGroup(only)
    ? only
    : nested(group);
}

function nested({ join, parts }: RuleGroup): unknown {
  const rules = parts.map((part) => (isGroup(part) ? nested(part) : part));
  // A group that stands alone keeps its "any": without it, it would be read back as the outer one.
  const [only] = parts;
  if (join === 'none')
    return { not: parts.length === 1 && only !== undefined && !isGroup(only) ? only : { any: rules } };
  return join === 'notAll' ? { not: { all: rules } } : { [join]: rules };
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
