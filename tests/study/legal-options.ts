import { z } from 'zod';
import type { RegisteredAnalysis } from '../../src/analyses/register.ts';

/** What a schema allows, as far as the tests of every option need it. */
interface Allowed {
  readonly type?: string;
  readonly enum?: readonly string[];
  readonly const?: unknown;
  readonly anyOf?: readonly Allowed[];
  readonly items?: Allowed | false;
  readonly prefixItems?: readonly Allowed[];
  readonly properties?: Readonly<Record<string, Allowed>>;
  readonly propertyNames?: Allowed;
  readonly additionalProperties?: Allowed | boolean;
  readonly minimum?: number;
  readonly maximum?: number;
  readonly exclusiveMinimum?: number;
  readonly exclusiveMaximum?: number;
  readonly refersTo?: string;
  readonly minItems?: number;
  readonly maxItems?: number;
}

/** Attributes and terms of the tables that the options are tried on. */
export interface Material {
  readonly attributes: readonly string[];
  readonly groupings: readonly string[];
  readonly files: readonly string[];
  readonly terms: readonly string[];
}

/** Draws beyond this cost time and try nothing else. */
const MOST_DRAWS = 199;

/**
 * Legal values of each option of an analysis, read from the schema that checks them: every name of a list, both
 * ends of a range, lists empty, of one and of two, every attribute and grouping of the material.
 * @returns pairs of option and value, options in the order of the schema.
 */
export function legalValues(analysis: RegisteredAnalysis, material: Material): [string, unknown][] {
  const schema = z.toJSONSchema(analysis.options, { io: 'input', unrepresentable: 'any' }) as Allowed;
  return Object.entries(schema.properties ?? {}).flatMap(([option, allowed]) =>
    valuesOf(allowed, material)
      .filter((value) => analysis.options.shape[option].safeParse(value).success)
      .map((value): [string, unknown] => [option, value]),
  );
}

function valuesOf(allowed: Allowed, material: Material): unknown[] {
  if (allowed.anyOf !== undefined) return allowed.anyOf.flatMap((one) => valuesOf(one, material));
  if (allowed.const !== undefined) return [allowed.const];
  if (allowed.enum !== undefined) return [...allowed.enum];
  switch (allowed.type) {
    case 'boolean':
      return [true, false];
    case 'integer':
    case 'number':
      return ends(allowed);
    case 'string':
      return texts(allowed, material);
    case 'array':
      return lists(allowed, material);
    case 'object':
      return objects(allowed, material);
    default:
      return [];
  }
}

function ends({ type, minimum, maximum, exclusiveMinimum, exclusiveMaximum }: Allowed): number[] {
  const step = type === 'integer' ? 1 : 1e-3;
  const low = minimum ?? (exclusiveMinimum === undefined ? 0 : exclusiveMinimum + step);
  const high = maximum ?? (exclusiveMaximum === undefined ? low + 10 : exclusiveMaximum - step);
  return [...new Set([Math.max(low, -300), Math.min(high, Math.max(MOST_DRAWS, low))])];
}

function texts({ refersTo }: Allowed, material: Material): string[] {
  if (refersTo === 'attribute') return [...material.attributes];
  if (refersTo === 'grouping') return [...material.groupings];
  if (refersTo === 'file') return [...material.files];
  return [...material.terms];
}

function lists(allowed: Allowed, material: Material): unknown[] {
  if (allowed.prefixItems !== undefined)
    return [allowed.prefixItems.map((one) => valuesOf(one, material)[0])];
  const one = allowed.items ? valuesOf(allowed.items, material) : [];
  return [[], ...one.map((value) => [value]), one.slice(0, 2), one.slice(-3)];
}

function objects({ properties, propertyNames, additionalProperties }: Allowed, material: Material): object[] {
  if (properties !== undefined) {
    const first = Object.fromEntries(
      Object.entries(properties).map(([name, one]) => [name, valuesOf(one, material)[0]]),
    );
    // One block alone, the others at nothing: the least that a weighting can leave.
    const alone = Object.keys(properties).map((name) => ({ ...first, [name]: 1 }));
    return [{}, first, ...alone];
  }
  if (typeof additionalProperties !== 'object') return [{}];
  const names = propertyNames === undefined ? material.terms : valuesOf(propertyNames, material);
  const values = valuesOf(additionalProperties, material);
  return [
    {},
    ...names.map((name) => ({ [String(name)]: values[0] })),
    Object.fromEntries(names.map((name) => [String(name), values.at(-1)])),
  ];
}
