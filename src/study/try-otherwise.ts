import type { RegisteredAnalysis } from '../analyses/register.ts';
import { InputError } from '../errors.ts';
import { certaintiesIn, inputOf, namesIn } from './analysis-input.ts';
import type { Tried } from './otherwise.ts';
import type { Prepared, Progress } from './prepare.ts';
import type { AnalysisEntry } from './schema.ts';
import { whatIfs } from './what-if.ts';

/**
 * The same question under everything that is open about how the finds were recorded.
 *
 * @param judged whether its answer is a verdict; a description is tried with certain attributions alone.
 */
export function tryOtherwise(
  prepared: Prepared,
  entry: AnalysisEntry,
  analysis: RegisteredAnalysis,
  files: ReadonlyMap<string, Uint8Array>,
  judged: boolean,
  onProgress: Progress,
): readonly Tried[] {
  const { id, kind: _kind, title: _title, note: _note, ...options } = entry;
  const certainties = certaintiesIn(analysis, options);
  const report = () => onProgress(0.99, 'asking it otherwise');
  // What the options are by default is asked about as much as what the study writes.
  const settled: Readonly<Record<string, unknown>> = { ...options, ...analysis.options.parse(options) };
  const named = Object.values(settled).flatMap((value) => (typeof value === 'string' ? [value] : []));
  const labels = analysis.labels(inputOf(prepared, id, files, report, certainties), options);
  const used = new Set([...namesIn(analysis, options), ...labels]);
  return whatIfs(prepared, [...used], new Set(named), judged).flatMap((whatIf) => {
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
