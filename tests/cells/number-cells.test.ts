import { describe, expect, it } from 'vitest';
import { readCell } from '../../src/cells/read-cell.ts';
import type { Note, Reading } from '../../src/cells/reading.ts';
import { ATTRIBUTES, contextFor } from './attributes.ts';
import { NUMBER_CASES } from './tables/number-cells.ts';

const ORDER: readonly Note['level'][] = ['read', 'flagged', 'not-understood'];

/** The gravest level among the notes of a reading. */
function gravest(reading: Reading): Note['level'] {
  return ORDER[Math.max(0, ...reading.notes.map(({ level }) => ORDER.indexOf(level)))] ?? 'read';
}

describe.each(Object.entries(NUMBER_CASES))('%s', (_group, cases) => {
  it.each(
    cases.map((entry) => [JSON.stringify(entry.text).slice(0, 60), entry.on ?? 'density', entry] as const),
  )('%s as %s', (_name, on, expected) => {
    const reading = readCell(expected.text, ATTRIBUTES[on], contextFor(on, expected.context));
    expect(reading.kind).toBe('numeric');
    if (reading.kind !== 'numeric') return;
    expectClose(reading.low, expected.low);
    expectClose(reading.high, expected.high);
    expect(reading.state).toBe(expected.state ?? 'measured');
    expect(gravest(reading)).toBe(expected.level ?? 'read');
    if (expected.rule !== undefined) expect(reading.notes.map(({ rule }) => rule)).toContain(expected.rule);
    expect(reading.readings).toEqual(expected.readings);
    if (expected.step !== undefined) expectClose(reading.step ?? Number.NaN, expected.step);
    expect(reading.certainty).toBe(expected.certainty);
  });
});

/** Equal to 12 digits: conversions are exact, widening by a tenth is a product of doubles. */
function expectClose(actual: number, expected: number): void {
  if (Number.isFinite(expected))
    expect(Math.abs(actual - expected)).toBeLessThanOrEqual(1e-12 * Math.max(1, Math.abs(expected)));
  else expect(actual).toBe(expected);
}

it('holds more than 250 number cells', () => {
  expect(Object.values(NUMBER_CASES).flat().length).toBeGreaterThan(250);
});
