import { InputError } from '../../errors.ts';
import { parseJson } from '../../sources/formats/parse-json.ts';
import { schemaFault } from '../../sources/profile/schema-fault.ts';
import { type TypeRule, type Typology, typologyFile } from './rules.ts';

/** Reads a typology from the text of its file; InputError names the place that does not fit. */
export function parseTypology(text: string, file: string): Typology {
  const data = parseJson(text, file);
  const parsed = typologyFile.safeParse(data);
  if (!parsed.success) throw schemaFault(parsed.error.issues[0]!, typologyFile, data, file);
  const typology = parsed.data;
  const ids = typology.types.map((type) => type.id);
  const twice = ids.find((id, place) => ids.indexOf(id) !== place);
  if (twice !== undefined)
    throw new InputError(
      `two types are called "${twice}"`,
      { file, path: 'types' },
      'give each type an id of its own',
    );
  for (const type of typology.types) {
    const why = impossible(type.when);
    if (why !== undefined)
      throw new InputError(
        `no record can be of the type "${type.id}": ${why}`,
        { file, path: `types.${type.id}` },
        'swap or widen the limits',
      );
  }
  return typology;
}

/** Why no number can meet a rule, as far as its limits tell; undefined where some can. */
function impossible(rule: TypeRule): string | undefined {
  if ('any' in rule) {
    const reasons = rule.any.map(impossible);
    return reasons.includes(undefined) ? undefined : reasons[0];
  }
  if ('not' in rule) return undefined;
  const parts = 'all' in rule ? rule.all : [rule];
  const inner = parts.flatMap((part) => ('all' in part || 'any' in part ? (impossible(part) ?? []) : []));
  if (inner.length > 0) return inner[0];
  const limits = new Map<string, { low: number; high: number; below: number }>();
  for (const part of parts) {
    if ('all' in part || 'any' in part || 'not' in part) continue;
    const { low, high, below } = limits.get(part.attribute) ?? {
      low: -Infinity,
      high: Infinity,
      below: Infinity,
    };
    const next = {
      low: Math.max(low, part.atLeast ?? -Infinity),
      high: Math.min(high, part.atMost ?? Infinity),
      below: Math.min(below, part.below ?? Infinity),
    };
    if (next.low > next.high) return `${part.attribute} at least ${next.low} and at most ${next.high}`;
    if (next.low >= next.below) return `${part.attribute} at least ${next.low} and below ${next.below}`;
    limits.set(part.attribute, next);
  }
  return undefined;
}
