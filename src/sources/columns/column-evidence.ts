import type { AttributeDefinition } from '../../attributes/definition.ts';
import { readNothing } from '../../cells/nothing.ts';
import { isBlank, isNumberLike } from '../layout/cell-shapes.ts';

/** What a sample of a column's cells looks like. */
export interface ColumnEvidence {
  /** Cells of the sample with text; 0 only where no cell at all has any. */
  readonly filled: number;
  /** Share of them that start like a number. */
  readonly numbers: number;
  /** Share of them that look like identifiers ("TZ-001a", "P 040"), when they hardly repeat; else 0. */
  readonly identifiers: number;
  /** Share of those that say anything that look like two values: "14 x 12", "Z/S", "0.5/0.8". */
  readonly pairs: number;
  /** Some of the different texts of the sample, short ones only. */
  readonly distinct: readonly string[];
  /** No two filled cells of the sample are equal, and none is blank. */
  readonly allDifferent: boolean;
}

const SAMPLED = 1000;
const MOST_DISTINCT = 40;
const LONGEST_TERM = 60;
const PAIR =
  /^(?:\p{L}{1,3}\. ?)?[^\p{L}\d]*\d(?:[^;,]|(?<=\d),(?=\d))*?[\d\p{L})+]\s*[x×/:]\s*[^\d\p{L}]*\d|^\d+\s*[x×/:]\s*\d|^[SZI]\s*[/x×:]\s*[SZI]$/iu;

/** Looks at cells from all over a column. */
export function columnEvidence(body: readonly (readonly string[])[], column: number): ColumnEvidence {
  const sampled = evidenceOf(body, column, Math.max(1, Math.floor(body.length / SAMPLED)));
  // A rare text must not be overlooked: it would be lost with a column held to be empty.
  return sampled.filled > 0 ? sampled : evidenceOf(body, column, 1);
}

function evidenceOf(body: readonly (readonly string[])[], column: number, step: number): ColumnEvidence {
  const seen = new Set<string>();
  let looked = 0;
  let filled = 0;
  let numbers = 0;
  let identifiers = 0;
  let pairs = 0;
  let nothing = 0;
  for (let row = 0; row < body.length; row += step) {
    looked++;
    const text = body[row]![column];
    if (isBlank(text)) continue;
    const trimmed = text!.trim();
    filled++;
    seen.add(trimmed);
    if (PAIR.test(trimmed)) pairs++;
    else if (readNothing(trimmed) !== null) nothing++;
    if (isNumberLike(trimmed)) numbers++;
    else if (/^\p{L}{1,8}[\s._/-]{0,2}\d+[\p{L}\d._/-]{0,6}$/u.test(trimmed)) identifiers++;
  }
  const share = (count: number): number => (filled === 0 ? 0 : count / filled);
  return {
    filled,
    numbers: share(numbers),
    identifiers: seen.size >= 0.5 * filled ? share(identifiers) : 0,
    pairs: filled === nothing ? 0 : pairs / (filled - nothing),
    distinct: [...seen].filter((text) => text.length <= LONGEST_TERM).slice(0, MOST_DISTINCT),
    allDifferent: filled > 0 && filled === looked && seen.size === filled,
  };
}

/** Whether cells under the name of a measurement hold words only: a grid square called "Area", say. */
export function holdsNoNumbers(attribute: AttributeDefinition, evidence: ColumnEvidence): boolean {
  const numeric = attribute.scale === 'ratio' || attribute.scale === 'interval';
  if (!numeric || attribute.unit === 'year' || evidence.filled < 3) return false;
  const words = evidence.distinct.filter((text) => readNothing(text) === null);
  return words.length > 0 && !words.some((text) => /[\d½¼¾⅓⅔⅛]/.test(text));
}

/** How well a column serves an attribute that several headers name: the greater the better. */
export function fitness(
  attribute: AttributeDefinition,
  evidence: ColumnEvidence,
  unit: string | undefined,
): number {
  const numeric = attribute.scale === 'ratio' || attribute.scale === 'interval';
  const cells = evidence.filled === 0 ? -1 : numeric ? evidence.numbers : 1 - evidence.numbers;
  // Of a count per inch and one per cm, the one that needs no turning is taken.
  const own = unit !== undefined && unit === attribute.unit ? 0.1 : 0;
  return cells + (numeric && unit !== undefined ? 0.5 + own : 0);
}
