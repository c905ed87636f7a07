import { InputError } from '../../errors.ts';
import { countBehind } from '../../fragments/behind.ts';
import { defaultAttributes } from '../../fragments/compared-by-default.ts';
import { groupRows } from '../../fragments/groups.ts';
import { KIND } from '../../fragments/kinds/kinds.ts';
import type { AnalysisInput } from '../contract.ts';
import { marksOf } from '../shared/figure/marks.ts';
import { comparisonSettings } from '../shared/options/comparison.ts';
import { howApart } from './apart.ts';
import { assignTypes } from './assign.ts';
import { complexityOf, countConditions } from './complexity.ts';
import { circularWith, definingAttributes } from './entangled.ts';
import { type JudgedTypology, NO_TYPE, type TypologyFound, type Weighed } from './found.ts';
import { meaningOf } from './meaning.ts';
import { moveCuts } from './moved-cut.ts';
import type { TypologyOptions } from './options.ts';
import { parseTypology } from './parse.ts';
import { takenForTwo } from './power.ts';
import { describeRule } from './rules.ts';
import { cutsOf, findSplits } from './split.ts';
import { verdictOf } from './verdict.ts';

/** Nothing can be said of fewer records of a type (common practice, no source). */
const FEWEST_OF_A_TYPE = 5;

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
  const splits = findSplits(records, assignment.rows, typology, {
    random: random.stream('splits'),
    resamples: options.resamples,
    confidence: options.confidence,
    alone: input.alone === true,
  });
  const cuts = cutsOf(typology);
  const circular = circularWith(typology, records);
  const meaning = meaningOf(
    records,
    assignment.rows,
    assignment.type,
    typology.types.map(({ label }) => label),
    { ...options, against: options.against.filter((id) => !circular(id)) },
    register,
    random.stream('meaning'),
  );
  input.onProgress?.(0.7, 'setting rivals beside it');
  const [weighed, ...rivals] = weigh(input, options, [
    main,
    ...options.rivals.map((file) => judge(input, options, file)),
  ]);
  return {
    ...weighed,
    unit: input.unit,
    confidence: options.confidence,
    verdict: verdictOf(main.apart, splits),
    small: typology.types.flatMap((_, place) =>
      assignment.type.filter((type) => type === place).length < FEWEST_OF_A_TYPE ? [place] : [],
    ),
    ids: Array.from(assignment.rows, (row) => records.id[row]),
    splits,
    moved: moveCuts(records, assignment.rows, cuts),
    meaning,
    takenForTwo: takenForTwo(),
    rivals,
    typeMarks: typeMarks(typology.types, input),
    labelOf: new Map([...register.attributes].map(([id, attribute]) => [id, attribute.label])),
    assemblages: [
      ...new Set(Array.from(assignment.rows, (row) => records.assemblage[row]).filter((name) => name !== '')),
    ],
    n: {
      ...countBehind(input.fragments, records, input.unit, assignment.rows),
      setAside: assignment.setAside,
    },
  };
}

function judge(input: AnalysisInput, options: TypologyOptions, file: string): JudgedTypology {
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
    defining: definingAttributes(typology),
    rows: Int32Array.from(typed, (place) => assignment.rows[place]),
    types: Int32Array.from(typed, (place) => assignment.type[place]),
    count: typology.types.length,
    fold: Int32Array.from(typed, (place) => folds[assignment.rows[place]]),
    neighbours: options.neighbours,
    relabellings: options.relabellings,
    within: options.within,
    confidence: options.confidence,
    random: random.stream(`apart ${file}`),
  });
  return {
    typology,
    rules: typology.types.map(({ when }) => describeRule(when, register)),
    conditions: countConditions(typology),
    defining: definingAttributes(typology),
    assignment,
    apart,
  };
}

/** Costs and savings of all typologies, on the records of the first and attributes that none of them uses. */
function weigh(input: AnalysisInput, options: TypologyOptions, all: readonly JudgedTypology[]): Weighed[] {
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

/** Types that are called as kinds of the study have the symbols of these; else each has that of its place. */
function typeMarks(types: readonly { readonly label: string }[], input: AnalysisInput): readonly number[] {
  const kinds = marksOf(input, KIND);
  const own = types.map(({ label }) => kinds.get(label));
  return own.every((mark) => mark !== undefined) ? own : types.map((_, place) => place);
}
