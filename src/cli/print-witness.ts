import { howToConfirm, type WitnessCandidate } from '../sources/names/witness-candidates.ts';
import type { SourceReading } from '../sources/source-reading.ts';
import type { Terminal } from './terminal.ts';
import { tame, wrap } from './text-table.ts';

/** Which columns of a source may name the object, what speaks for each and against it, and how one is confirmed. */
export function printWitness(
  { out, colour, width }: Terminal,
  source: string,
  candidates: readonly WitnessCandidate[],
): void {
  if (candidates.length === 0) return;
  out(`\n${colour.underline(tame(`Which column of ${source} names the object that a fragment is of?`))}\n`);
  candidates.forEach((candidate, place) => {
    const line = `${place + 1}. "${candidate.header}": ${candidate.says} ${howToConfirm(candidate)}`;
    out(`${wrap(tame(line), width).join('\n')}\n`);
  });
  out(`${wrap(UNTIL_THEN, width).join('\n')}\n`);
}

const UNTIL_THEN =
  'None is taken unasked: until the study says, each fragment counts. If each row is an object, write "witness": { "is": "row" }.';

/** What a study that was just begun leaves open about its witness: the candidates of each source, and how to confirm. */
export function witnessNotes(
  readings: readonly SourceReading[],
  witness: readonly (readonly WitnessCandidate[])[],
): readonly string[] {
  const lines = readings.flatMap(({ name }, place) => {
    const [likeliest, ...others] = witness[place] ?? [];
    if (likeliest === undefined) return [];
    const more = others.length === 0 ? '' : ` (or ${others.map(({ header }) => `"${header}"`).join(', ')})`;
    return [`  ${name}: perhaps "${likeliest.header}"${more}. ${howToConfirm(likeliest)}`];
  });
  return lines.length === 0
    ? []
    : ['Left open in the study, which column names the object:', ...lines].map(tame);
}
