import type { AttributeDefinition, Register, Vocabulary } from '../../attributes/definition.ts';
import { partsOf } from '../../attributes/mixtures.ts';
import { parentIndices } from '../../attributes/tree.ts';
import { gradeDistances, rankDistances } from '../../numerics/dissimilarity/grade-distance.ts';
import { setDistance } from '../../numerics/dissimilarity/set-distance.ts';
import { spreadDistances } from '../../numerics/dissimilarity/spread-distance.ts';
import { kindDistances, termDistances } from '../../numerics/dissimilarity/term-distance.ts';
import type { KindsVariable, PresenceVariable } from '../../numerics/dissimilarity/variables.ts';
import { termAt } from '../accessors.ts';
import type { FragmentTable, TermColumn } from '../table.ts';
import { anyOfFacet, type BroadRule, type BroadTerms, broadTerms } from './broad.ts';
import type { BlockPlace } from './numbers.ts';

/** How the terms of one attribute become comparable. */
export interface TermCoding {
  readonly kind: 'terms';
  /** Term id -> code. */
  readonly codes: ReadonlyMap<string, number>;
  /** Code of a wording that no record has: as far from every other as can be; -1 where there is none. */
  readonly unseen: number;
  /** Code of a term where it says less than a kind; empty where no term does. */
  readonly broad: ReadonlyMap<string, number>;
}

export interface CodedTerms {
  readonly coding: TermCoding;
  readonly variable: KindsVariable | PresenceVariable | null;
  readonly notes: readonly string[];
  /** Broad terms that some record has. */
  readonly broad: BroadTerms['found'];
}

/** How terms are to be compared, and the table that they stand in. */
export interface TermSettings {
  readonly table: FragmentTable;
  readonly register: Register;
  readonly ordinal: 'ranks' | 'grades';
  readonly broad: BroadRule;
}

/** A column of terms as kinds, grades or presence; null where no row has a term. */
export function termCoding(column: TermColumn, place: BlockPlace, settings: TermSettings): CodedTerms {
  const { attribute } = column;
  const made =
    attribute.scale === 'presence'
      ? { ...presence(column, place), broad: [] }
      : attribute.scale === 'ordinal'
        ? { ...grades(column, place, settings.ordinal), broad: [] }
        : kinds(column, place, settings);
  if (!made.variable.codes.some((code) => code >= 0))
    return { ...made, variable: null, notes: [`${attribute.label}: no value, left out`] };
  return { ...made, variable: bounded(made.variable, column, settings), notes: [] };
}

/** Where distances are bounded, a facet that was not recorded may be any. */
function bounded<Made extends KindsVariable | PresenceVariable>(
  variable: Made,
  column: TermColumn,
  { broad, table, register }: TermSettings,
): Made | KindsVariable {
  if (variable.kind !== 'kinds' || (broad !== 'least' && broad !== 'greatest')) return variable;
  const { between, levels } = variable;
  const any = anyOfFacet(column, variable.codes, levels, table, register);
  if (any === null) return variable;
  const wide = spreadDistances(between, levels, [any.spread], broad);
  return { ...variable, codes: any.codes, between: wide, levels: levels + 1 };
}

const NONE_BROAD: ReadonlyMap<string, number> = new Map();

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
    broad: NONE_BROAD,
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
    coding: { kind: 'terms', codes: index, unseen: -1, broad: NONE_BROAD },
    variable: { kind: 'kinds', codes, between, levels: scale.length, ...place },
  };
}

function kinds(
  column: TermColumn,
  place: BlockPlace,
  { table, register, broad: rule }: TermSettings,
): { coding: TermCoding; variable: KindsVariable; broad: BroadTerms['found'] } {
  const { attribute } = column;
  const vocabulary = register.vocabularies.get(attribute.vocabulary ?? '');
  const ids = vocabulary?.terms.map((term) => term.id) ?? [];
  const known = new Set(ids);
  const loose = termsOf(column).filter((term) => !known.has(term));
  const index = codesOf([...ids, ...loose]);
  const unseen = index.size;
  const singles = unseen + 1;
  const broad =
    vocabulary === undefined ? null : broadTerms(column, vocabulary, table, register, index, singles);
  const spreads = rule === 'place' ? [] : (broad?.spreads ?? []);
  const apart = distancesOf(vocabulary, singles);
  const between =
    rule === 'place' || spreads.length === 0 ? apart : spreadDistances(apart, singles, spreads, rule);
  const levels = Math.sqrt(between.length);
  compareMixtures(between, levels, index, attribute, register);
  const settled = settledOnly(index, attribute, register);
  const spread = spreads.length === 0 ? NONE_BROAD : (broad?.codes ?? NONE_BROAD);
  const codes = recode(column, settled, (term, row) =>
    broad?.isPlain(row) === true ? undefined : spread.get(term),
  );
  return {
    coding: { kind: 'terms', codes: index, unseen, broad: spread },
    variable: { kind: 'kinds', codes, between, levels, ...place },
    broad: broad?.found ?? [],
  };
}

/** Wordings outside the vocabulary, and the place kept for an unseen one, are roots of their own. */
function distancesOf(vocabulary: Vocabulary | undefined, levels: number): Float64Array {
  if (vocabulary === undefined || vocabulary.terms.length === 0) return kindDistances(levels);
  const parents = new Int32Array(levels).fill(-1);
  parents.set(parentIndices(vocabulary));
  return termDistances(parents);
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

function recode(
  column: TermColumn,
  index: ReadonlyMap<string, number>,
  instead: (term: string, row: number) => number | undefined = () => undefined,
): Int32Array {
  return column.codes.map((_, row) => {
    const term = termAt(column, row);
    return term === null ? -1 : (instead(term, row) ?? index.get(term) ?? -1);
  });
}

/** The column's terms, with `absent` where a yes/no attribute was looked for in vain. */
function termsOf(column: TermColumn): readonly string[] {
  const looked = column.codes.some((_, row) => termAt(column, row) === 'absent');
  return looked && !column.levels.includes('absent') ? [...column.levels, 'absent'] : column.levels;
}
