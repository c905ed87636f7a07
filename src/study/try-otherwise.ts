import type { RegisteredAnalysis } from '../analyses/register.ts';
import { InputError } from '../errors.ts';
import { certaintiesIn, inputOf, namesIn } from './analysis-input.ts';
import { namesAsOne, type Spelled } from './names-as-one.ts';
import type { Tried } from './otherwise.ts';
import type { Material, Progress } from './prepare.ts';
import type { AnalysisEntry } from './schema.ts';
import { whatIfs } from './what-if.ts';

/** The material as a question is asked of it: names that are likely to be one taken as one. */
export function spelledFor(
  prepared: Material,
  entry: AnalysisEntry,
  analysis: RegisteredAnalysis,
  files: ReadonlyMap<string, Uint8Array>,
): Spelled {
  const { used, named } = restsOn(prepared, entry, analysis, files);
  return namesAsOne(prepared, used, named);
}

/**
 * The same question under everything that is open about how the finds were recorded.
 *
 * @param judged whether its answer is a verdict.
 */
export function tryOtherwise(
  { prepared, apart }: Spelled,
  entry: AnalysisEntry,
  analysis: RegisteredAnalysis,
  files: ReadonlyMap<string, Uint8Array>,
  judged: boolean,
  onProgress: Progress,
): readonly Tried[] {
  const { id, kind: _kind, title: _title, note: _note, ...options } = entry;
  const certainties = certaintiesIn(analysis, options);
  const report = () => onProgress(0.99, 'asking it otherwise');
  const { used, named } = restsOn(prepared, entry, analysis, files);
  const open = [...apart, ...whatIfs(prepared, used, named, judged)];
  return open.flatMap((whatIf) => {
    report();
    try {
      const input = inputOf(whatIf.prepared(), id, files, report, certainties);
      return [{ whatIf, other: analysis.run(input, options, true) }];
    } catch (fault) {
      // Too little is left when asked otherwise: that is no answer to hold this one against.
      if (fault instanceof InputError) return [];
      throw fault;
    }
  });
}

/** Attributes that a question rests on, and the texts that its options hold. */
function restsOn(
  prepared: Material,
  entry: AnalysisEntry,
  analysis: RegisteredAnalysis,
  files: ReadonlyMap<string, Uint8Array>,
): { readonly used: readonly string[]; readonly named: ReadonlySet<string> } {
  const { id, kind: _kind, title: _title, note: _note, ...options } = entry;
  // What the options are by default is asked about as much as what the study writes.
  const settled: Readonly<Record<string, unknown>> = { ...options, ...analysis.options.parse(options) };
  const named = Object.values(settled).flatMap((value) => (typeof value === 'string' ? [value] : []));
  const input = inputOf(prepared, id, files, () => undefined, certaintiesIn(analysis, options));
  const used = new Set([...namesIn(analysis, options), ...analysis.labels(input, options)]);
  return { used: [...used], named: new Set(named) };
}
