import { z } from 'zod';
import type { Condition } from '../../../fragments/select-condition.ts';
import type { PrintedValue } from './numbers.ts';
import type { Manner } from './symbols.ts';
import { METHODS, QUANTITIES, QUANTITY_NAMES, type Quantity, type TestMethod } from './terms.ts';

/** Grid of the single readings, as it is written in a claims file and in a study. */
export function stepText() {
  return z.string().regex(/^(?:\d+(?:[.,]\d+)?|1\/\d+)?$/, 'must be a number such as 1, 0.5 or 0.1');
}

/** One row of a claims file, cells as texts; what each column holds is said once, here. */
export const claimRow = z
  .strictObject({
    id: z.string().meta({ description: 'Name of the claim in every answer; its row number if left out' }),
    place: z.string().meta({ description: 'Where the figure stands: page, table, cell, sentence' }),
    quantity: z.enum(QUANTITY_NAMES as [Quantity, ...Quantity[]]).meta({
      description: `What is printed. ${Object.entries(QUANTITIES)
        .map(([name, said]) => `${name}: ${said}`)
        .join('. ')}`,
    }),
    set: z.string().meta({
      description:
        'Claims of one set describe one sample, one test or one printed table and are checked against each other; within it, those of one attribute and selection are one sample',
    }),
    test: z.enum(['', ...METHODS]).meta({
      description: 'Test of a statistic, df or p; coefficient of a similarity; index of a diversity',
    }),
    sided: z.enum(['', 'one', 'two']).meta({ description: 'Sides of a p value; two if left out' }),
    step: z
      .string()
      .regex(/^(?:\d+(?:[.,]\d+)?|1\/\d+)?$/, 'must be a number such as 1, 0.5 or 0.1')
      .meta({
        description: 'Grid of the single readings: 1 for whole numbers, 0.5 for halves, 0.1 for tenths',
      }),
    attribute: z.string().meta({
      description: 'Id of the attribute; of a correlation, or of kinds by groups, two parted by ";"',
    }),
    select: z.string().meta({
      description:
        'Which records: "site in Quorrimel Cave | Ysketh Pans; rowSpacing >= 2; fibre within treeBast"; in a set that is a printed table, the label of its row',
    }),
    versus: z.string().meta({ description: 'The other group of a comparison, in the same form' }),
    counted: z.string().meta({
      description: 'Of a count or a share: which of the selected records are counted, in the same form',
    }),
    printed: z.string().min(1, 'is empty').meta({
      description: 'The text as it stands: "12.3", "p < .05", "34 %", "3.5±0.4", "12,3"',
    }),
    note: z.string().meta({ description: 'Anything else; handed through to the answer' }),
  })
  .meta({ id: 'claims', title: 'Row of a claims file (CSV)' });

export type ClaimRow = z.output<typeof claimRow>;
export const CLAIM_COLUMNS = Object.keys(claimRow.shape) as readonly (keyof ClaimRow)[];

/** One printed number, ready to be checked. */
export interface PrintedFigure {
  /** Id of its claim; where a text holds several numbers, with the quantity behind it. */
  readonly id: string;
  readonly place: string;
  readonly quantity: Quantity;
  readonly set: string;
  /** The text or the row of a table that it is printed in, with what belongs to it. */
  readonly line: string;
  /** Where it stands in a printed table; null for a claim. */
  readonly cell: { readonly row: number; readonly column: number } | null;
  readonly method: TestMethod | null;
  readonly sided: '' | 'one' | 'two';
  /** Steps of the readings in one unit (2 for halves); null where not said or not a part of one. */
  readonly perUnit: number | null;
  readonly attributes: readonly string[];
  readonly select: readonly Condition[];
  readonly versus: readonly Condition[];
  readonly counted: readonly Condition[];
  /** Of a cell of a table that the data explain: no condition means all records. */
  readonly placed?: true;
  /** Other records that a line of sums may as well be of: all, or those of a known kind alone. */
  readonly selectOr?: readonly (readonly Condition[])[];
  /** The cell as it stands: names a row where the set is a printed table. */
  readonly selectText: string;
  readonly versusText: string;
  /** One number; two for the degrees of freedom of F. */
  readonly values: readonly PrintedValue[];
  /** Spread of "3.5±0.4", which may be a deviation or an error. */
  readonly vague: boolean;
  /** Of a p value: stars only, whose levels are not said. */
  readonly stars: boolean;
  /** What the words beside it say of how a p came about. */
  readonly manners: readonly Manner[];
  /** Confidence of an interval's end where it is printed; null where not. */
  readonly level: number | null;
  /** Words and numbers of the printed text that nothing was made of. */
  readonly unused: readonly string[];
  /** The whole printed text. */
  readonly printed: string;
  readonly note: string;
}

/** Steps of the readings in one unit: 2 for halves; null where not said or no part of one. */
export function perUnitOf(step: string): number | null {
  if (step === '') return null;
  const size = step.startsWith('1/') ? 1 / Number(step.slice(2)) : Number(step.replace(',', '.'));
  const perUnit = Math.round(1 / size);
  // A grid coarser than one is a grid of ones too.
  if (size >= 1) return Number.isInteger(size) ? 1 : null;
  return perUnit >= 1 && Math.abs(perUnit * size - 1) < 1e-9 ? perUnit : null;
}
