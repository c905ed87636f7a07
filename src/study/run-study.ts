import type { Counts } from '../analyses/contract.ts';
import { ANALYSES } from '../analyses/register.ts';
import { InputError } from '../errors.ts';
import { certaintiesIn, inputOf } from './analysis-input.ts';
import { materialCautions } from './cautions/materials.ts';
import { entriesOf } from './load.ts';
import { inNounsOf } from './nouns.ts';
import { withTurns } from './otherwise/otherwise.ts';
import { spelledFor, tryOtherwise } from './otherwise/try-otherwise.ts';
import { type Material, type Prepared, type Progress, prepareStudy } from './prepare.ts';
import { readinessOf } from './readiness/readiness.ts';
import { withheldAside } from './restriction/restrict.ts';
import { requireWritable } from './results/json.ts';
import type { AnalysisResult, Results, StudyHead } from './results/results.ts';
import type { AnalysisEntry, Study } from './schema.ts';
import { VERSION } from './version.ts';
import type { Sheets } from './workbooks.ts';

export interface RunOptions {
  /** Share of the work done, 0 to 1; may throw to cancel the run. */
  readonly onProgress?: Progress;
  /** Told of every fault that is ours and not the material's; the run goes on without that analysis. */
  readonly onFault?: (id: string, fault: unknown) => void;
  /** The workbooks that the study names, from `openWorkbooks`; needed only where it names any. */
  readonly sheets?: Sheets;
}

/**
 * A study's run: sources read -> combined -> derived -> selected -> items -> each analysis. Pure: the
 * same study and the same bytes give the same results. Each analysis draws from its own random stream,
 * named by its id, so adding one never moves another. One that cannot be computed says why; the others
 * are computed all the same.
 *
 * @throws InputError for material that cannot be read at all.
 */
export function runStudy(
  study: Study,
  files: ReadonlyMap<string, Uint8Array>,
  options: RunOptions = {},
): Results {
  const report: Progress = (share, what) => options.onProgress?.(share, what);
  const prepared = prepareStudy(study, files, {
    onProgress: (share, what) => report(share * READING, what),
    ...(options.sheets === undefined ? {} : { sheets: options.sheets }),
  });
  return analyse(prepared, files, {
    ...options,
    onProgress: (share, what) => report(READING + share * (1 - READING), what),
  });
}

/** Part of the progress that reading takes. */
const READING = 0.3;

/** The second half of a run, for material that is prepared already. */
export function analyse(
  prepared: Prepared,
  files: ReadonlyMap<string, Uint8Array>,
  options: RunOptions = {},
): Results {
  let taken = 0;
  const claim = () => (taken < prepared.study.analyses.length ? taken++ : null);
  const answers = answersOf(prepared, files, { ...options, claim });
  options.onProgress?.(1, 'done');
  return resultsOf(prepared, answers);
}

/** Takes the place of an analysis that nobody has taken yet; null where none is left. */
export type Claim = () => number | null;

export interface Claiming {
  readonly claim: Claim;
  /** How many analyses have been taken, where several threads take them; for the progress alone. */
  readonly begun?: () => number;
}

/**
 * The answers of those analyses that `claim` hands out. Several threads may claim from one count: no answer rests
 * on another.
 *
 * @returns answers by the analyses' ids, in the order in which they were claimed.
 */
export function answersOf(
  prepared: Material,
  files: ReadonlyMap<string, Uint8Array>,
  { claim, begun, onProgress, ...options }: RunOptions & Claiming,
): ReadonlyMap<string, AnalysisResult> {
  const entries = entriesOf(prepared.study);
  const answers = new Map<string, AnalysisResult>();
  for (let place = claim(); place !== null; place = claim()) {
    const before = begun === undefined ? answers.size : begun() - 1;
    const report: Progress = (share, what) => onProgress?.((before + share) / entries.length, what);
    answers.set(
      entries[place].id,
      analyseOne(prepared, entries[place], files, { ...options, onProgress: report }),
    );
  }
  return answers;
}

/** The results of a study whose analyses are all answered: their order is the study's. */
export function resultsOf(prepared: Prepared, answers: ReadonlyMap<string, AnalysisResult>): Results {
  const analyses: Record<string, AnalysisResult> = {};
  for (const { id } of entriesOf(prepared.study)) {
    const answer = answers.get(id);
    if (answer !== undefined) analyses[id] = answer;
  }
  return { study: headOf(prepared), analyses };
}

/** One analysis on prepared material; never throws but to hand on a cancellation. */
export function analyseOne(
  prepared: Material,
  entry: AnalysisEntry,
  files: ReadonlyMap<string, Uint8Array>,
  { onProgress, onFault }: RunOptions = {},
): AnalysisResult {
  const { id, kind, title, note, ...options } = entry;
  const analysis = ANALYSES.find((known) => known.kind === kind);
  const heading = title ?? analysis?.question ?? kind;
  let cancelled = false;
  const report: Progress = (share, what) => {
    try {
      onProgress?.(share, what);
    } catch (reason) {
      cancelled = true;
      throw reason;
    }
  };
  try {
    if (analysis === undefined)
      throw new InputError(`there is no analysis of kind "${kind}"`, {}, 'name another');
    report(0, `computing ${id}`);
    const spelled = spelledFor(prepared, entry, analysis, files);
    const certainties = certaintiesIn(analysis, options);
    const answered = analysis.run(inputOf(spelled.prepared, id, files, report, certainties), options);
    const { verdict, ...shown } = withTurns(
      answered,
      prepared.witness,
      tryOtherwise(spelled, entry, analysis, files, answered.verdict, report),
    );
    const result = inNounsOf(prepared.witness, {
      kind,
      title: heading,
      ...(note === undefined ? {} : { note }),
      options,
      ...shown,
      n: withWithheld(shown.n, prepared),
    });
    // What cannot be written would otherwise be found when all results are, and cost every other analysis its own.
    requireWritable(result);
    return result;
  } catch (fault) {
    if (cancelled) throw fault;
    if (!(fault instanceof InputError)) onFault?.(id, fault);
    return notComputed(kind, heading, options, prepared.n, fault);
  }
}

function notComputed(
  kind: string,
  title: string,
  options: AnalysisResult['options'],
  n: Counts,
  fault: unknown,
): AnalysisResult {
  const said = fault instanceof Error ? fault.message : String(fault);
  const why =
    fault instanceof InputError ? said.replace(/\.$/, '') : `an unexpected fault in Thrum (${said})`;
  return {
    kind,
    title,
    options,
    n,
    tables: {},
    figures: {},
    words: { answer: `Could not be computed: ${why}.`, because: [], unless: [] },
    why,
  };
}

/** What holds of every answer of the kinds that the study asks, each truth once. */
function alwaysOf(study: Study): readonly string[] {
  const asked = new Set(entriesOf(study).map(({ kind }) => kind));
  return [...new Set(ANALYSES.filter(({ kind }) => asked.has(kind)).flatMap(({ always }) => always))];
}

function headOf(prepared: Prepared): StudyHead {
  const { study, heads, n, disagreements, fragments, register, unit, witness, restriction } = prepared;
  return {
    title: study.title,
    seed: study.seed,
    unit,
    witness,
    version: VERSION,
    sources: heads,
    n,
    disagreements: disagreements.map((one) => ({
      ...one,
      label: register.attributes.get(one.attribute)?.label ?? one.attribute,
    })),
    readiness: readinessOf(prepared),
    cautions: materialCautions(fragments, register, restriction),
    always: alwaysOf(study),
  };
}

/** Every answer says how many records its sources withhold. */
function withWithheld(n: Counts, { restriction }: Material): Counts {
  const aside = withheldAside(restriction.withheld);
  return aside.length === 0 ? n : { ...n, setAside: [...aside, ...n.setAside] };
}
