import { InputError } from '../../errors.ts';
import { countBehind } from '../../fragments/behind.ts';
import { defaultAttributes } from '../../fragments/comparison.ts';
import { groupRows } from '../../fragments/groups.ts';
import type { FindingsWithTables } from '../before-answers.ts';
import { comparisonSettings } from '../comparison-options.ts';
import type { AnalysisInput } from '../contract.ts';
import { type Apart, howApart, type NotApart } from './apart.ts';
import { type Assignment, assignTypes, NO_TYPE } from './assign.ts';
import { type Complexity, complexityOf } from './complexity.ts';
import { circularWith, definingAttributes } from './entangled.ts';
import { type Meaning, meaningOf } from './meaning.ts';
import { type MovedCut, moveCuts } from './moved-cut.ts';
import type { TypologyOptions } from './options.ts';
import { parseTypology } from './parse.ts';
import { type Visible, visibleSplit } from './power.ts';
import type { Typology } from './rules.ts';
import { cutsOf, findSplits, type Split } from './split.ts';
import { typologyTables } from './tables.ts';

/** What one typology says of the records, and how well that holds. */
export interface Judged {
  readonly typology: Typology;
  readonly defining: readonly string[];
  readonly assignment: Assignment;
  readonly apart: Apart | NotApart;
}

/** A typology with what it costs and saves, told on the same records and attributes as its rivals. */
export interface Weighed extends Judged {
  readonly complexity: Complexity;
}

export interface TypologyFound extends FindingsWithTables, Weighed {
  readonly unit: 'fragment' | 'item';
  /** Ids of the records that the typology speaks of, in the order of the assignment. */
  readonly ids: readonly string[];
  readonly splits: readonly Split[];
  readonly moved: readonly MovedCut[];
  readonly meaning: readonly Meaning[];
  /** What could have been seen in the readings of each split. */
  readonly visible: readonly Visible[];
  readonly rivals: readonly Weighed[];
  readonly labelOf: ReadonlyMap<string, string>;
  /** Assemblages that the typed records come from. */
  readonly assemblages: readonly string[];
}

/**
 * Tests a typology as a claim: who fits, whether there is a split at all, whether the types are apart in
 * attributes that did not define them, whether free groups find them, and what they go with.
 *
 * @throws InputError for a rule file that is missing, not of its form, or speaks of no record.
 */
export function computeTypology(input: AnalysisInput, options: TypologyOptions): TypologyFound {
  const { records, register, random } = input;
  const main = judge(input, options, options.rules);
  const { typology, assignment } = main;
  if (assignment.rows.length === 0)
    throw new InputError(
      'the typology speaks of none of the records',
      { file: options.rules, path: 'among' },
      'widen "among", or select other fragments',
    );
  input.onProgress?.(0.4, 'looking for splits');
  const splits = findSplits(records, assignment.rows, typology, random.stream('splits'), options.resamples);
  const cuts = cutsOf(typology);
  const circular = circularWith(typology, records);
  const meaning = meaningOf(
    records,
    assignment.rows,
    assignment.type,
    typology.types.length,
    options.against.filter((id) => !circular(id)),
    register,
    random.stream('meaning'),
  );
  input.onProgress?.(0.7, 'setting rivals beside it');
  const [weighed, ...rivals] = weigh(input, options, [
    main,
    ...options.rivals.map((file) => judge(input, options, file)),
  ]);
  const found = {
    ...weighed,
    unit: input.unit,
    ids: Array.from(assignment.rows, (row) => records.id[row]),
    splits,
    moved: moveCuts(records, assignment.rows, cuts),
    meaning,
    visible: splits.map((split) =>
      visibleSplit(split.values, split.cuts, random.stream(`visible ${split.attribute}`)),
    ),
    rivals,
    labelOf: new Map([...register.attributes].map(([id, attribute]) => [id, attribute.label])),
    assemblages: [
      ...new Set(Array.from(assignment.rows, (row) => records.assemblage[row]).filter((name) => name !== '')),
    ],
    n: {
      ...countBehind(input.fragments, records, input.unit, assignment.rows),
      setAside: assignment.setAside,
    },
  };
  return { ...found, tables: typologyTables(found) };
}

function judge(input: AnalysisInput, options: TypologyOptions, file: string): Judged {
  const { records, register, random } = input;
  const bytes = input.files?.get(file);
  if (bytes === undefined)
    throw new InputError(
      'the rule file is missing',
      { file },
      'put it beside the study file, or correct its name',
    );
  const typology = parseTypology(new TextDecoder('utf-8').decode(bytes), file);
  const assignment = assignTypes(records, typology, register, file);
  const typed = Array.from(assignment.type).flatMap((type, place) => (type >= 0 ? [place] : []));
  const folds = foldOf(input, options.fold);
  const apart = howApart({
    table: records,
    register,
    settings: comparisonSettings(options),
    circular: circularWith(typology, records),
    rows: Int32Array.from(typed, (place) => assignment.rows[place]),
    types: Int32Array.from(typed, (place) => assignment.type[place]),
    count: typology.types.length,
    fold: Int32Array.from(typed, (place) => folds[assignment.rows[place]]),
    neighbours: options.neighbours,
    relabellings: options.relabellings,
    within: options.within,
    random: random.stream(`apart ${file}`),
  });
  return { typology, defining: definingAttributes(typology), assignment, apart };
}

/** Costs and savings of all typologies, on the records of the first and attributes that none of them uses. */
function weigh(input: AnalysisInput, options: TypologyOptions, all: readonly Judged[]): Weighed[] {
  const { records } = input;
  const { rows } = all[0].assignment;
  const folds = foldOf(input, options.fold);
  const wanted = options.of.length > 0 ? options.of : defaultAttributes(records);
  const circular = all.map(({ typology }) => circularWith(typology, records));
  const shared = wanted.filter((id) => circular.every((uses) => !uses(id)));
  return all.map((judged) => {
    const typeOf = new Map(
      Array.from(judged.assignment.rows, (row, at) => [row, judged.assignment.type[at]]),
    );
    const types = rows.map((row) => typeOf.get(row) ?? NO_TYPE.none);
    const fold = rows.map((row) => folds[row]);
    return { ...judged, complexity: complexityOf(records, judged.typology, rows, types, fold, shared) };
  });
}

/** A number for what each record is left out with; records without any stand for themselves. */
function foldOf({ records, register }: AnalysisInput, id: string): Int32Array {
  const fold = Int32Array.from({ length: records.rows }, (_, row) => row + 1_000_000);
  for (const [place, group] of groupRows(records, [id], register).groups.entries())
    for (const row of group.rows) fold[row] = place;
  return fold;
}
