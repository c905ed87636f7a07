import { z } from 'zod';
import type { StudyAnalysis } from '../../state/workspace.ts';

/** One option of an analysis, as its schema describes it, ready to be asked for on a screen. */
export type Setting = {
  readonly name: string;
  readonly title: string;
  readonly description: string;
} & (
  | { readonly kind: 'choice'; readonly values: readonly SettingValue[]; readonly usual: string }
  | { readonly kind: 'yes-no'; readonly usual: boolean }
  | {
      readonly kind: 'number';
      /** Null where it may be left out, and is then found from the data. */
      readonly usual: number | null;
      readonly whole: boolean;
      readonly least: number;
      readonly most: number;
      /** The least value itself is not allowed. */
      readonly above: boolean;
    }
  | { readonly kind: 'attribute' }
);

export interface SettingValue {
  readonly id: string;
  /** What the value stands for, where the description of the option says so. */
  readonly note: string;
}

interface Described {
  readonly type?: string;
  readonly title?: string;
  readonly description?: string;
  readonly default?: unknown;
  readonly enum?: readonly string[];
  readonly minimum?: number;
  readonly exclusiveMinimum?: number;
  readonly maximum?: number;
  readonly refersTo?: string;
}

/** The named options of a schema, in the order of the names; those of another make than a screen can ask for are left out. */
export function settingsOf(schema: z.ZodObject, names: readonly string[]): readonly Setting[] {
  const { properties = {} } = z.toJSONSchema(schema, { io: 'input' }) as {
    readonly properties?: Readonly<Record<string, Described>>;
  };
  return names.flatMap((name) => {
    const described = properties[name];
    return described === undefined ? [] : (settingOf(name, described) ?? []);
  });
}

function settingOf(name: string, described: Described): Setting | null {
  const { type, title = name, description = '', enum: values } = described;
  const head = { name, title, description };
  if (values !== undefined) {
    const notes = notesOf(description, values);
    return {
      ...head,
      description: notes.size > 0 ? '' : description,
      kind: 'choice',
      values: values.map((id) => ({ id, note: notes.get(id) ?? '' })),
      usual: String(described.default ?? values[0]),
    };
  }
  if (type === 'boolean') return { ...head, kind: 'yes-no', usual: described.default === true };
  if (type === 'number' || type === 'integer') {
    return {
      ...head,
      kind: 'number',
      usual: typeof described.default === 'number' ? described.default : null,
      whole: type === 'integer',
      least: described.minimum ?? described.exclusiveMinimum ?? Number.NEGATIVE_INFINITY,
      most: described.maximum ?? Number.POSITIVE_INFINITY,
      above: described.minimum === undefined && described.exclusiveMinimum !== undefined,
    };
  }
  return type === 'string' && described.refersTo !== undefined ? { ...head, kind: 'attribute' } : null;
}

/** "ranks: by rank; grades: as equal steps" by value. A text may hold further semicolons and colons. */
function notesOf(description: string, values: readonly string[]): ReadonlyMap<string, string> {
  const starts = values
    .map((id) => ({ id, at: `; ${description}`.indexOf(`; ${id}: `) }))
    .filter(({ at }) => at >= 0)
    .sort((a, b) => a.at - b.at);
  if (starts.length < values.length) return new Map();
  return new Map(
    starts.map(({ id, at }, i) => {
      const end = starts[i + 1]?.at ?? description.length + 2;
      return [id, description.slice(at + id.length + 2, Math.max(at, end - 2))];
    }),
  );
}

/** The number that a text stands for, or null where the setting does not allow it. */
export function allowedNumber(setting: Extract<Setting, { kind: 'number' }>, text: string): number | null {
  const number = Number(text.trim().replace(',', '.'));
  if (text.trim() === '' || !Number.isFinite(number)) return null;
  const { whole, least, most, above } = setting;
  const fits =
    (!whole || Number.isInteger(number)) && number <= most && (above ? number > least : number >= least);
  return fits ? number : null;
}

/** Whether a text leaves out a number that may be left out. */
export function leavesOut({ usual }: Extract<Setting, { kind: 'number' }>, text: string): boolean {
  return usual === null && text.trim() === '';
}

/** The allowed numbers in words, such as "a whole number from 2 to 10". */
export function boundsInWords({ whole, least, most, above }: Extract<Setting, { kind: 'number' }>): string {
  const what = whole ? 'a whole number' : 'a number';
  const from = above ? `above ${least}` : `from ${least}`;
  return most > 1e9 ? `${what} ${from} on` : `${what} ${from} ${above ? 'up ' : ''}to ${most}`;
}

/** The analysis with other options; what is undefined is no longer asked for. */
export function withOptions(
  analysis: StudyAnalysis,
  options: Readonly<Record<string, unknown>>,
): StudyAnalysis {
  const merged = Object.entries({ ...analysis, ...options }).filter(([, value]) => value !== undefined);
  return Object.fromEntries(merged) as StudyAnalysis;
}
