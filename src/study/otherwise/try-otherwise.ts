import type { ShortVerdict } from '../../analyses/contract.ts';
import type { RegisteredAnalysis } from '../../analyses/register.ts';
import { InputError } from '../../errors.ts';
import { certaintiesIn, inputOf, namesIn } from '../analysis-input.ts';
import type { Material, Progress } from '../prepare.ts';
import type { AnalysisEntry } from '../schema.ts';
import { changeOf } from './change-of.ts';
import { lookAlikesAsOne } from './look-alikes-as-one.ts';
import { namesAsOne, type Spelled } from './names-as-one.ts';
import type { Tried, WhatIf } from './otherwise.ts';
import { allAtOnce, whatIfs } from './what-if.ts';

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
 * The same question under everything that is open about how the finds were recorded; where nothing of it turns the
 * verdict by itself, under all of it at once too.
 *
 * @param verdict that it was answered with; null where its answer is none.
 */
export function tryOtherwise(
  { prepared, apart }: Spelled,
  entry: AnalysisEntry,
  analysis: RegisteredAnalysis,
  files: ReadonlyMap<string, Uint8Array>,
  verdict: ShortVerdict | null,
  onProgress: Progress,
): readonly Tried[] {
  const { id, kind: _kind, title: _title, note: _note, ...options } = entry;
  const certainties = certaintiesIn(analysis, options);
  const report = () => onProgress(0.99, 'asking it otherwise');
  const { used, named } = restsOn(prepared, entry, analysis, files);
  const judged = verdict !== null;
  const open = [
    ...apart,
    ...whatIfs(prepared, used, named, judged),
    ...(judged ? lookAlikesAsOne(prepared, used, analysis.kind) : []),
  ];
  const tryOne = (whatIf: WhatIf): readonly Tried[] => {
    report();
    try {
      const input = inputOf(whatIf.prepared(), id, files, report, certainties);
      return [{ whatIf, other: analysis.run(input, options, true) }];
    } catch (fault) {
      // Too little is left when asked otherwise: that is no answer to hold this one against.
      if (fault instanceof InputError) return [];
      throw fault;
    }
  };
  const tried = open.flatMap(tryOne);
  const turned = ({ whatIf, other }: Tried) =>
    verdict !== null &&
    other.verdict !== null &&
    changeOf(verdict, other.verdict, whatIf.calls).how === 'turned';
  if (verdict === null || tried.some(turned)) return tried;
  const together = allAtOnce(prepared, used, named);
  // What all of it together does not turn adds nothing to what was said of each.
  return together === null ? tried : [...tried, ...tryOne(together).filter(turned)];
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
