import { identificationLine } from '../cautions/identification.ts';
import { shrinkageLine } from '../cautions/shrinkage.ts';
import type { Prepared } from '../prepare.ts';
import type { ReadinessLine } from '../results/results.ts';
import { compoundLines, labelLines, levelLines, namesLine } from './labels.ts';
import { numbersLine } from './numbers-of-objects.ts';
import { certaintyLine, columnsLine, gapLines, recorderLine } from './recording.ts';
import { witnessLines } from './witness.ts';

/**
 * Are the data ready for a verdict? One line for each thing that verdicts lean on, before any is given: what counts
 * as one, to which depth kinds were recorded, how many records bear the labels, how sure they are, where the gaps
 * lie, who recorded, and which columns nobody has confirmed.
 */
export function readinessOf(prepared: Prepared): readonly ReadinessLine[] {
  return [
    ...witnessLines(prepared),
    ...numbersLine(prepared),
    ...namesLine(prepared),
    ...compoundLines(prepared),
    ...labelLines(prepared),
    ...levelLines(prepared),
    ...certaintyLine(prepared),
    ...identificationLine(prepared),
    ...gapLines(prepared),
    ...recorderLine(prepared),
    ...shrinkageLine(prepared),
    ...columnsLine(prepared),
  ];
}
