import { type Match, matchAttribute, splitHeader } from '../../attributes/matching.ts';
import { isKnownHeader } from '../layout/cell-shapes.ts';
import type { ColumnPlan, PlanInput } from './column-plan.ts';

/** In a wider file only exact headers are looked for: comparing many names takes long, and few of them will be ours. */
const WIDEST_COMPARED = 150;

/** What the header of each column that is still open may name; of a head in two rows, the wording that says more. */
export function matchHeaders(input: PlanInput, settled: ReadonlyMap<number, ColumnPlan>): Map<number, Match> {
  const { headers, alternatives, register } = input;
  const wide = headers.length > WIDEST_COMPARED;
  const matches = new Map<number, Match>();
  for (const [index, header] of headers.entries()) {
    if (settled.has(index)) continue;
    const wordings = alternatives[index] === header ? [header] : [header, alternatives[index]!];
    const found = wordings.map(
      (wording): Match =>
        wide && !isKnownHeader(wording, register) ? { kind: 'none' } : matchAttribute(wording, register),
    );
    const best =
      found.find(({ kind }) => kind === 'exact') ??
      found.find(({ kind }) => kind === 'suggested') ??
      found[0]!;
    matches.set(index, best);
  }
  return matches;
}

/** The wording of a header of two rows that was recognised. */
export function wordingMet(
  { headers, alternatives, register }: PlanInput,
  index: number,
  match: Match,
): string {
  const [header, lower] = [headers[index]!, alternatives[index]!];
  if (match.kind === 'none' || lower === header) return header;
  const own = matchAttribute(header, register);
  return own.kind !== 'none' && own.id === match.id && own.kind === match.kind ? header : lower;
}

/** The unit that a header without an attribute states; shown, so that an attribute can be made of it. */
export function statedUnit(header: string): string | undefined {
  return splitHeader(header).unit;
}
