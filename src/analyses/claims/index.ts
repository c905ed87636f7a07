import type { Analysis } from '../contract.ts';
import { computeClaims } from './compute.ts';
import { claimsFigures } from './figures.ts';
import type { ClaimsFound } from './found.ts';
import { type ClaimsOptions, claimsOptions } from './options.ts';
import { claimsTables } from './tables.ts';
import { claimsWords } from './words.ts';

export { type Claimed, checkClaims, judgeClaims } from './compute.ts';

/**
 * Printed figures held against each other and against the records. Beside the faces that every analysis has:
 *
 *   reading/      a claims file or a printed table becomes printed figures (`PrintedFigure`)
 *     table/        its cells, heads, labels and roles; text whose columns only blanks part
 *   conventions/  the ordinary ways in which a figure is computed and printed; `register.ts` lists them as data, and
 *                 what a figure that cannot be was tried under is read from there
 *   print/        figures held against each other; needs no data
 *     tests/        statistic, degrees of freedom, p, effect, interval; families of tests
 *     tables/       sums, percentages and bases, lines of all groups, analyses of variance
 *     samples/      what n, mean, spread, order and grid of one sample allow each other
 *   data/         figures recomputed from the records: `quantities.ts` says which file computes what
 *     meaning/      which records and which measure the rows and columns of a printed table are of
 *     reasons/      what would explain a difference: other ways, other records, slips
 *   judging/      what both say of a figure, and the one verdict made of it
 *
 * Start at `reading/claim.ts` (what a figure is), then `print/check-print.ts` (every check by name), then
 * `judging/judge.ts` (how checks become one verdict).
 *
 * Reading knows nothing of checks; print and data know nothing of each other; judging comes last.
 */
export const claims: Analysis<ClaimsOptions, ClaimsFound> = {
  kind: 'claims',
  question: 'Which printed figures agree, which cannot be, and which cannot be checked?',
  options: claimsOptions,
  always: [
    'A difference between a printed figure and its recomputation may come from a slip of the press, another rounding, other records or another method; the verdict says that it differs, not why.',
    'A figure that could not be checked has nothing said for or against it.',
    'Printed figures that agree with each other need not be right.',
  ],
  compute: computeClaims,
  tables: claimsTables,
  figures: claimsFigures,
  words: claimsWords,
};
