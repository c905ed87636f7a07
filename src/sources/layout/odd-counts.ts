import { readNothing } from '../../cells/nothing.ts';

/** A cell of a table of counts that says less than a count. */
export interface OddCount {
  /** What is counted; null where nobody can say how many. */
  readonly count: number | null;
  readonly why: string;
}

const ABOUT = /^(?:c\.|ca\.?|circa|about|etwa|env\.?|~|≈)\s*(\d+(?:[.,]5)?)$/iu;
const DOUBTED = /^(\d+(?:[.,]5)?)\s*(?:\?|\(\?\))$/u;
const AT_LEAST = /^(?:(?:>=|≥|min\.?|mind\.?|at least)\s*(\d+)|(\d+)\s*\+)$/iu;
const RANGE = /^(\d+)\s*[-–—]\s*(\d+)$/u;
const BOUNDED = /^(?:<=?|≤|>|max\.?|up to|bis)\s*\d+$/iu;

/**
 * What a cell counts that is neither a number nor empty: "c. 2" and "2?" count 2, "2+" at least 2, "2-4" the middle;
 * of "?", "n/a" and "<3" nobody can say how many. Null where it says something else altogether.
 */
export function oddCount(text: string): OddCount | null {
  const bare = text.trim();
  const about = ABOUT.exec(bare) ?? DOUBTED.exec(bare);
  if (about !== null)
    return { count: numberOf(about[1]!), why: 'The count is marked as doubtful; it is taken as it stands.' };
  const least = AT_LEAST.exec(bare);
  if (least !== null)
    return {
      count: numberOf((least[1] ?? least[2])!),
      why: 'There are at least so many; the least is counted.',
    };
  const range = RANGE.exec(bare);
  if (range !== null && Number(range[1]) < Number(range[2]))
    return {
      count: Math.round(Number(range[1]) + Number(range[2])) / 2,
      why: 'The count is a range; its middle is counted.',
    };
  if (BOUNDED.test(bare))
    return {
      count: null,
      why: 'Only a bound of the count is given; none of the kind is counted in this row.',
    };
  const nothing = readNothing(bare, 'without absent');
  return nothing === null || bare === '' || /^[-–—.]$/u.test(bare)
    ? null
    : { count: null, why: 'How many there are is not known; none of the kind is counted in this row.' };
}

const numberOf = (text: string) => Number(text.replace(',', '.'));
