import type { AttributeDefinition } from '../../attributes/definition.ts';
import type { CellContext } from '../../cells/context.ts';
import { readCell } from '../../cells/read-cell.ts';
import type { Reading } from '../../cells/reading.ts';
import { append } from '../../numerics/foundation/lists.ts';
import { READING_JOINT } from '../layout/long-form.ts';

/** Readings gathered from several rows: each is read by itself, and together they span an interval. */
export function readSeveral(text: string, attribute: AttributeDefinition, context: CellContext): Reading {
  const parts = text.split(READING_JOINT).filter((part) => part.trim() !== '');
  if (parts.length < 2) return readCell(text, attribute, context);
  const all = parts.map((part) => readCell(part, attribute, context));
  const notes = all.flatMap((reading) => reading.notes);
  const numbers = all.filter((reading) => reading.kind === 'numeric' && !Number.isNaN(reading.low));
  if (numbers.length > 0) {
    let low = Number.POSITIVE_INFINITY;
    let high = Number.NEGATIVE_INFINITY;
    const readings: number[] = [];
    for (const reading of numbers) {
      if (reading.kind !== 'numeric') continue;
      low = Math.min(low, reading.low);
      high = Math.max(high, reading.high);
      append(readings, reading.readings ?? [middle(reading.low, reading.high)]);
    }
    const approximate = numbers.some((reading) => reading.state === 'approximate');
    return {
      kind: 'numeric',
      low,
      high,
      state: approximate ? 'approximate' : 'measured',
      ...(readings.every(Number.isFinite) ? { readings } : {}),
      notes: [
        ...notes,
        { level: 'read', rule: 'gathered', why: `${numbers.length} readings of one fragment were gathered.` },
      ],
    };
  }
  const terms = all.filter((reading) => reading.kind === 'term' && reading.term !== null);
  const first = terms[0] ?? all[0]!;
  const names = new Set(terms.map((reading) => (reading.kind === 'term' ? reading.term : null)));
  if (names.size < 2) return { ...first, notes };
  return {
    kind: 'term',
    term: null,
    state: 'not-observed',
    certainty: 'indeterminate',
    notes: [
      ...notes,
      {
        level: 'not-understood',
        rule: 'contradiction',
        why: 'Rows of one fragment name different kinds; none was taken.',
      },
    ],
  };
}

function middle(low: number, high: number): number {
  return low === high ? low : low + (high - low) / 2;
}
