import type { AttributeDefinition, Block, Register } from '../../attributes/definition.ts';
import { facetsOf } from '../../cells/descriptions/lexicon.ts';
import { InputError } from '../../errors.ts';
import type { DissimilaritySpec, IntervalRule, Variable } from '../../numerics/dissimilarity/variables.ts';
import { append } from '../../numerics/foundation/lists.ts';
import { atCentre } from '../accessors.ts';
import { defaultAttributes, placesOfWays, refuseTwins } from '../compared-by-default.ts';
import { isMissing } from '../missing.ts';
import { requireColumn } from '../require-column.ts';
import type { Column, FragmentTable } from '../table.ts';
import type { BroadRule, BroadTerms } from './broad.ts';
import { type NumberCoding, numberCoding } from './numbers.ts';
import { type TermCoding, termCoding } from './terms.ts';

/** The blocks in the order in which `Variable.block` counts them. */
export const COMPARED_BLOCKS: readonly Block[] = ['structure', 'spacing', 'fibre', 'find', 'context'];

export interface ComparisonSettings {
  /** Attributes to compare; empty = everything of structure, spacing and fibre that the table records (compared-by-default.ts). */
  readonly of: readonly string[];
  /** Weight of each block; 1 where not named. */
  readonly weights: Readonly<Partial<Record<Block, number>>>;
  /** Weight of single attributes within their block; 1 where not named. */
  readonly attributeWeights: Readonly<Record<string, number>>;
  readonly mode: 'blocks' | 'plain';
  readonly intervals: IntervalRule;
  /** How far a broad term is from others; `expected` if left out. */
  readonly broad?: BroadRule;
  /** Grades by the ranks of the records (Podani 1999), or as equal steps of their scale. */
  readonly ordinal: 'ranks' | 'grades';
  /** What counts as a difference of 1: the range of the values, or twice their interquartile range. */
  readonly scaling: 'range' | 'quartiles';
  /** Ratios whose definition names no scale: by logarithm where they are spread like a lognormal; plain if left out. */
  readonly skewed?: 'log' | 'plain';
  readonly minimumOverlap: number;
  /** Computed attributes that a find from outside has of its own, which take part where none is named. */
  readonly found?: readonly string[];
}

export interface ComparedAttribute {
  readonly attribute: AttributeDefinition;
  /** How its values become numbers, so that a find from outside is treated the same. */
  readonly coding: NumberCoding | TermCoding;
}

/** A table made ready to be compared. `attributes` and `spec.variables` run in the same order. */
export interface Comparison {
  readonly spec: DissimilaritySpec;
  readonly register: Register;
  readonly attributes: readonly ComparedAttribute[];
  /** What a reader should know: attributes left out and why, ends that were closed. */
  readonly notes: readonly string[];
  /** Attributes with records that say less than a kind which others name, and the terms that these have. */
  readonly broad: readonly { readonly label: string; readonly terms: BroadTerms['found'] }[];
}

/**
 * Turns the chosen attributes of a table into variables on common scales.
 *
 * - Numbers: by logarithm where the attribute says so, then by range; open ends (">20") are closed at
 *   the outermost end that the column knows.
 * - Kinds with a vocabulary: Wu & Palmer 1994 along its tree, a broad term as any of its kinds; without one, the same
 *   or not.
 * - Grades by rank or by step; presence with joint absence ignored; yes/no as two kinds.
 * - An attribute without any value is left out, and a note says so.
 * - What follows from others (a row gap) is compared where one of two records lacks those: said-already.ts.
 *
 * @throws InputError for an attribute that nothing records, that is text, or when the list names two
 * attributes that are one measurement (spacing and density of the same rows).
 */
export function compareRecords(
  table: FragmentTable,
  register: Register,
  settings: ComparisonSettings,
): Comparison {
  const chosen =
    settings.of.length > 0
      ? withFacets(settings.of, table, register)
      : defaultAttributes(table, settings.found);
  refuseTwins(chosen, register);
  const attributes: ComparedAttribute[] = [];
  const variables: Variable[] = [];
  const notes: string[] = [];
  const broad: { label: string; terms: BroadTerms['found'] }[] = [];
  const { ordinal, broad: rule = 'expected' } = settings;
  for (const id of new Set(chosen)) {
    const column = requireColumn(table, id, register);
    const { attribute } = column;
    const place = {
      block: COMPARED_BLOCKS.indexOf(attribute.block),
      weight: settings.attributeWeights[id] ?? 1,
      // A facet that few record makes no pair less comparable than without it.
      ...(attribute.facet !== undefined && !settings.of.includes(id) ? { besides: true as const } : {}),
    };
    if (column.kind === 'text') {
      throw new InputError(
        `"${attribute.label}" (${id}) is free text, which cannot be compared`,
        {},
        'choose attributes that are numbers, kinds, grades or yes/no',
      );
    }
    const made =
      column.kind === 'numeric'
        ? numberCoding(
            settings.intervals === 'midpoint' ? atCentre(column) : column,
            place,
            settings.scaling,
            settings.skewed,
          )
        : termCoding(column, place, { table, register, ordinal, broad: rule });
    append(notes, made.notes);
    if (made.variable === null) continue;
    if ('broad' in made && made.broad.length > 0) broad.push({ label: attribute.label, terms: made.broad });
    attributes.push({ attribute, coding: made.coding });
    variables.push(made.variable);
  }
  if (variables.length === 0) {
    throw new InputError(
      'none of the chosen attributes has a value that could be compared',
      {},
      'choose attributes that the sources record for these fragments',
    );
  }
  const blockWeights = COMPARED_BLOCKS.map((block) => settings.weights[block] ?? 1);
  const { mode, intervals, minimumOverlap } = settings;
  const ids = attributes.map(({ attribute }) => attribute.id);
  const ways = ids.map((id) => placesOfWays(id, ids));
  ways.forEach((own, place) => {
    if (own.length > 0) notes.push(insteadNote(attributes, place, own));
  });
  const spec = {
    variables: variables.map((one, place) =>
      ways[place].length === 0 ? one : { ...one, insteadOf: ways[place] },
    ),
    blockWeights,
    mode,
    intervals,
    minimumOverlap,
  };
  return { spec, register, attributes, notes, broad };
}

/** What a reader must know of an attribute that follows from others: of which records it is compared. */
function insteadNote(
  attributes: readonly ComparedAttribute[],
  place: number,
  ways: readonly (readonly number[])[],
): string {
  const label = (at: number) => attributes[at].attribute.label;
  const from = ways.map((way) => way.map(label).join(' and ')).join(', or ');
  return `${label(place)}: compared of records that do not both have what it follows from (${from}), so that nothing counts twice`;
}

/** An attribute brings those of its facets that the table records: what a description tells is compared whole. */
export function withFacets(
  chosen: readonly string[],
  table: FragmentTable,
  register: Register,
): readonly string[] {
  const brought = chosen.flatMap((id) =>
    facetsOf(id, register)
      .map((facet) => facet.id)
      .filter((facet) => !chosen.includes(facet) && hasValue(table.columns.get(facet))),
  );
  return [...chosen, ...brought];
}

function hasValue(column: Column | undefined): boolean {
  if (column === undefined || column.kind === 'text') return false;
  return column.state.some((_, row) => !isMissing(column, row));
}
