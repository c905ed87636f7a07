import type { TableCell, Unavailable } from '../contract.ts';
import { type JudgedTypology, NO_TYPE } from './found.ts';

/** What the tables and figures of a typology share. */

export const column = (id: string, label: string, unit?: string) => ({
  id,
  label,
  ...(unit === undefined ? {} : { unit }),
});

/** Name of the place that a record was given. */
export function typeName(found: Pick<JudgedTypology, 'typology'>, type: number): string {
  if (type >= 0) return found.typology.types[type].label;
  return type === NO_TYPE.none ? 'fits none' : type === NO_TYPE.several ? 'fits several' : 'cannot say';
}

export const orWhy = <T>(value: T | Unavailable, pick: (value: T) => TableCell): TableCell =>
  typeof value === 'object' && value !== null && 'why' in value ? (value as Unavailable) : pick(value as T);
