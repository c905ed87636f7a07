import type { AnalysisInput } from '../analyses/contract.ts';
import type { RegisteredAnalysis } from '../analyses/register.ts';
import { certaintyOf, withCertainties, withCertaintyAttributes } from '../fragments/certainty-groups.ts';
import { createRandom } from '../numerics/foundation/random.ts';
import type { Material } from './prepare.ts';
import { findReferences } from './references.ts';

/** Attributes and groupings that the options of an analysis name, what they are by default included. */
export function namesIn(analysis: RegisteredAnalysis, options: object): readonly string[] {
  const settled = { ...options, ...analysis.options.parse(options) };
  return findReferences(analysis.options, settled)
    .filter(({ refersTo }) => refersTo === 'attribute' || refersTo === 'grouping')
    .map(({ name }) => name);
}

/** Certainties that it asks for as groupings. */
export const certaintiesIn = (analysis: RegisteredAnalysis, options: object): readonly string[] =>
  namesIn(analysis, options).filter((name) => certaintyOf(name) !== null);

/**
 * What an analysis is given of a study.
 *
 * @param id of the analysis, by which its stream of chance is named.
 * @param certainties asked for as groupings; no other question sees them.
 */
export function inputOf(
  prepared: Material,
  id: string,
  files: ReadonlyMap<string, Uint8Array>,
  onProgress: (share: number, what: string) => void,
  certainties: readonly string[],
): AnalysisInput {
  const { register, fragments, records } = prepared;
  return {
    fragments: withCertainties(fragments, certainties, register),
    records: withCertainties(records, certainties, register),
    unit: prepared.unit,
    register: withCertaintyAttributes(register, certainties),
    random: createRandom(prepared.study.seed).stream(id),
    marks: prepared.study.marks,
    files,
    onProgress,
  };
}
