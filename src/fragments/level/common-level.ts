import type { Register } from '../../attributes/definition.ts';
import { groupRows } from '../groups.ts';
import type { FragmentTable } from '../table.ts';
import { commonCut, countTree, type Groups, givenCut } from './cut.ts';
import type { LevelFound } from './found.ts';
import { recode } from './recode.ts';

export type { Groups } from './cut.ts';
export type { LevelFound } from './found.ts';

/**
 * Catalogues name things to different depths: one writes "twining" where another tells open from close. Counted as
 * they stand, the broad word would be a kind of its own and the two catalogues would differ by their words alone.
 * The common level is the finest cut through the tree of a vocabulary to which everything compared was recorded.
 */

/** `common`: the finest cut that all record; `recorded`: as the words stand; or the terms of a cut of one's own. */
export type Level = 'common' | 'recorded' | readonly string[];

export interface LevelSettings {
  readonly level?: Level;
  /** Largest share of broad records under a branch, in what is compared, that folds nothing. */
  readonly tolerance?: number;
}

/** A tenth of an assemblage's records under a branch may be broader without folding it. */
export const BROAD_TOLERANCE = 0.1;

/**
 * @param attribute whose kinds are compared; any but one of kinds with a hierarchy is returned as it is.
 * @param across the attribute whose groups are compared ("site", "assemblage" …). Records without a value of it,
 * and those of no vocabulary term, take no part in choosing the level but are counted at it.
 */
export function atLevel(
  table: FragmentTable,
  attribute: string,
  across: string,
  register: Register,
  settings: LevelSettings = {},
): LevelFound {
  return atLevelOf(table, attribute, groupRows(table, [across], register).groups, register, settings);
}

/** The same for groups that no column names, such as types made by rules. */
export function atLevelOf(
  table: FragmentTable,
  attribute: string,
  groups: Groups,
  register: Register,
  { level = 'common', tolerance = BROAD_TOLERANCE }: LevelSettings = {},
): LevelFound {
  const column = table.columns.get(attribute);
  const name = register.attributes.get(attribute)?.vocabulary;
  const vocabulary = name === undefined ? undefined : register.vocabularies.get(name);
  const asIs: LevelFound = { attribute, table, folds: [], tooBroad: [], differs: false };
  if (column?.kind !== 'term' || vocabulary === undefined || level === 'recorded') return asIs;
  const tree = countTree(column, vocabulary, table, groups, register);
  const cut =
    level === 'common' ? commonCut(vocabulary, tree, groups.length, tolerance) : givenCut(vocabulary, level);
  return recode(asIs, column, vocabulary, tree, cut, groups, register);
}

/** The same for several attributes at once; those of no hierarchy are left as they are. */
export function allAtLevel(
  table: FragmentTable,
  attributes: readonly string[],
  across: string,
  register: Register,
  settings: LevelSettings = {},
): Pick<LevelFound, 'table' | 'folds' | 'tooBroad' | 'differs'> {
  const none = { table, folds: [], tooBroad: [], differs: false };
  return attributes.reduce<ReturnType<typeof allAtLevel>>((all, attribute) => {
    if (attribute === across) return all;
    const one = atLevel(all.table, attribute, across, register, settings);
    return {
      table: one.table,
      folds: [...all.folds, ...one.folds],
      tooBroad: [...all.tooBroad, ...one.tooBroad],
      differs: all.differs || one.differs,
    };
  }, none);
}
