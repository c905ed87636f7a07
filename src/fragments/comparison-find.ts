import type { Reading } from '../cells/reading.ts';
import { codeValue, quantityValue, type RecordValue, type Variable } from '../numerics/dissimilarity.ts';
import type { ComparedAttribute, Comparison } from './comparison.ts';
import { codeInterval } from './comparison-numbers.ts';

const UNKNOWN_QUANTITY = quantityValue(Number.NaN);
const UNKNOWN_CODE = codeValue(-1);

/**
 * A find given as readings, one value for each variable of the comparison, coded exactly as the
 * records were: same logarithm, same closing of open ends, same distances between kinds. An attribute
 * without a reading is unknown, never guessed.
 */
export function recordOfReadings(
  comparison: Comparison,
  readings: ReadonlyMap<string, Reading>,
): readonly RecordValue[] {
  return comparison.attributes.map((compared, index) =>
    valueOfReading(compared, comparison.spec.variables[index], readings.get(compared.attribute.id)),
  );
}

/** The value that one reading has in the comparison. */
export function valueOfReading(
  compared: ComparedAttribute,
  variable: Variable,
  reading: Reading | undefined,
): RecordValue {
  const unknown = variable.kind === 'quantity' ? UNKNOWN_QUANTITY : UNKNOWN_CODE;
  if (reading === undefined) return unknown;
  const { coding } = compared;
  if (coding.kind === 'number') {
    if (reading.kind !== 'numeric') return unknown;
    const ends = codeInterval(coding, reading.low, reading.high);
    return ends === null ? unknown : quantityValue(ends[0], ends[1]);
  }
  if (reading.kind !== 'term') return unknown;
  if (reading.term === null) {
    return variable.kind === 'presence' && reading.state === 'absent' ? codeValue(0) : unknown;
  }
  return codeValue(coding.codes.get(reading.term) ?? coding.unseen);
}

/** Whether the record has a value of this variable. */
export function isKnown(value: RecordValue): boolean {
  return value.code >= 0 && !Number.isNaN(value.low);
}
