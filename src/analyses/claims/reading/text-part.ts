import type { PrintedValue } from './numbers.ts';
import type { Manner } from './symbols.ts';
import type { Quantity, TestMethod } from './terms.ts';

/** One number of a printed text (two for the degrees of freedom of F), and what the text says that it is. */
export interface TextPart {
  readonly values: readonly PrintedValue[];
  readonly quantity: Quantity;
  readonly method?: TestMethod;
  /** The text does not say what the number is: the second one of "3.5±0.4". */
  readonly vague?: true;
  /** Of a p value: stars only, whose levels are not said. */
  readonly stars?: true;
  readonly sided?: 'one' | 'two';
  readonly manners?: readonly Manner[];
  /** Of a mean that stands beside its test: the group it is of, as the program calls it. */
  readonly group?: string;
  /** Confidence of an interval's end, where it is printed. */
  readonly level?: number;
}
