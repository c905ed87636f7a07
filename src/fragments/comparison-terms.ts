import type { AttributeDefinition, Register } from '../attributes/definition.ts';
import { partsOf } from '../attributes/mixtures.ts';
import { parentIndices } from '../attributes/tree.ts';
import { gradeDistances, rankDistances } from '../numerics/dissimilarity/grade-distance.ts';
import { setDistance } from '../numerics/dissimilarity/set-distance.ts';
import { kindDistances, termDistances } from '../numerics/dissimilarity/term-distance.ts';
import type { KindsVariable, PresenceVariable } from '../numerics/dissimilarity/variables.ts';
import { termAt } from './accessors.ts';
import type { BlockPlace } from './comparison-numbers.ts';
import type { TermColumn } from './table.ts';

/** How the terms of one attribute become comparable. */
export interface TermCoding {
  readonly kind: 'terms';
  /** Term id -> code. */
  readonly codes: ReadonlyMap<string, number>;
  /** Code of a wording that no record has: as far from every other as can be; -1 where there is none. */
  readonly unseen: number;
}

export interface CodedTerms {
  readonly coding: TermCoding;
  readonly variable: KindsVariable | PresenceVariable | null;
  readonly notes: readonly string[];
}

/** A column of terms as kinds, grades or presence; null where no row has a term. */
export function termCoding(
  column: TermColumn,
  place: BlockPlace,
  ordinal: 'ranks' | 'grades',
  register: Register,
): CodedTerms {
  const { attribute } = column;
  const made =
    attribute.scale === 'presence'
      ? presence(column, place)
      : attribute.scale === 'ordinal'
        ? grades(column, place, ordinal)
        : kinds(column, place, register);
  if (made.variable.codes.some((code) => code >= 0)) return { ...made, notes: [] };
  return { coding: made.coding, variable: null, notes: [`${attribute.label}: no value, left out`] };
}

function presence(column: TermColumn, place: BlockPlace): { coding: TermCoding; variable: PresenceVariable } {
  const codes = column.codes.map((_, row) => {
    const term = termAt(column, row);
    return term === null ? -1 : term === 'present' ? 1 : 0;
  });
  const coding: TermCoding = {
    kind: 'terms',
    codes: new Map([
      ['absent', 0],
      ['present', 1],
    ]),
    unseen: -1,
  };
  return { coding, variable: { kind: 'presence', codes, ...place } };
}

function grades(
  column: TermColumn,
  place: BlockPlace,
  ordinal: 'ranks' | 'grades',
): { coding: TermCoding; variable: KindsVariable } {
  const scale = column.attribute.levels ?? column.levels;
  const index = codesOf(scale);
  const codes = recode(column, index);
  const counts = new Float64Array(scale.length);
  for (const code of codes) if (code >= 0) counts[code]++;
  const between = ordinal === 'ranks' ? rankDistances(counts) : gradeDistances(scale.length);
  return {
    coding: { kind: 'terms', codes: index, unseen: -1 },
    variable: { kind: 'kinds', codes, between, levels: scale.length, ...place },
  };
}

function kinds(
  column: TermColumn,
  place: BlockPlace,
  register: Register,
): { coding: TermCoding; variable: KindsVariable } {
  const terms = hierarchy(column.attribute, register);
  const known = new Set(terms.ids);
  const loose = termsOf(column).filter((term) => !known.has(term));
  const index = codesOf([...terms.ids, ...loose]);
  const unseen = index.size;
  const levels = unseen + 1;
  // Wordings outside the vocabulary, and the place kept for an unseen one, are roots of their own.
  const parents = new Int32Array(levels).fill(-1);
  parents.set(terms.parents);
  const between = terms.ids.length > 0 ? termDistances(parents) : kindDistances(levels);
  compareMixtures(between, levels, index, column.attribute, register);
  return {
    coding: { kind: 'terms', codes: index, unseen },
    variable: {
      kind: 'kinds',
      codes: recode(column, settledOnly(index, column.attribute, register)),
      between,
      levels,
      ...place,
    },
  };
}

/** A mixture is compared by its parts, not by its place in the tree. */
function compareMixtures(
  between: Float64Array,
  levels: number,
  index: ReadonlyMap<string, number>,
  attribute: AttributeDefinition,
  register: Register,
): void {
  const vocabulary = register.vocabularies.get(attribute.vocabulary ?? '');
  if (vocabulary?.mixes !== true) return;
  const sets = [...index].map(([id, code]) => {
    const parts = partsOf(id, vocabulary).map((part) => index.get(part));
    return { code, parts: parts.every((part) => part !== undefined) ? parts : [code] };
  });
  for (const a of sets) {
    if (a.parts.length < 2) continue;
    for (const b of sets) {
      if (a.code === b.code) continue;
      const distance = setDistance(between, levels, a.parts, b.parts);
      between[a.code * levels + b.code] = distance;
      between[b.code * levels + a.code] = distance;
    }
  }
}

function hierarchy(
  attribute: AttributeDefinition,
  register: Register,
): { ids: readonly string[]; parents: Int32Array } {
  const vocabulary =
    attribute.vocabulary === undefined ? undefined : register.vocabularies.get(attribute.vocabulary);
  if (vocabulary === undefined) return { ids: [], parents: new Int32Array(0) };
  return { ids: vocabulary.terms.map((term) => term.id), parents: parentIndices(vocabulary) };
}

/** Without the terms that do not say what they are: as unknown as a gap. */
function settledOnly(
  index: ReadonlyMap<string, number>,
  { vocabulary }: AttributeDefinition,
  register: Register,
): ReadonlyMap<string, number> {
  const terms = register.vocabularies.get(vocabulary ?? '')?.terms ?? [];
  const open = new Set(terms.filter(({ unsettled }) => unsettled).map(({ id }) => id));
  return open.size === 0 ? index : new Map([...index].filter(([id]) => !open.has(id)));
}

function codesOf(ids: readonly string[]): ReadonlyMap<string, number> {
  return new Map(ids.map((id, code) => [id, code]));
}

function recode(column: TermColumn, index: ReadonlyMap<string, number>): Int32Array {
  return column.codes.map((_, row) => {
    const term = termAt(column, row);
    return term === null ? -1 : (index.get(term) ?? -1);
  });
}

/** The column's terms, with `absent` where a yes/no attribute was looked for in vain. */
function termsOf(column: TermColumn): readonly string[] {
  const looked = column.codes.some((_, row) => termAt(column, row) === 'absent');
  return looked && !column.levels.includes('absent') ? [...column.levels, 'absent'] : column.levels;
}
