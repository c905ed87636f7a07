import { describe, expect, it } from 'vitest';
import { readCell } from '../../src/cells/read-cell.ts';
import type { Note } from '../../src/cells/reading.ts';
import { ATTRIBUTES, contextFor } from './attributes.ts';
import { TERM_CASES } from './tables/term-cells.ts';

const ORDER: readonly Note['level'][] = ['read', 'flagged', 'not-understood'];

describe.each(Object.entries(TERM_CASES))('%s', (_group, cases) => {
  it.each(cases.map((entry) => [JSON.stringify(entry.text), entry.on, entry] as const))(
    '%s as %s',
    (_name, on, expected) => {
      const reading = readCell(expected.text, ATTRIBUTES[on], contextFor(on, expected.context));
      expect(reading.kind).toBe('term');
      if (reading.kind !== 'term') return;
      expect(reading.term).toBe(expected.term);
      expect(reading.state).toBe(expected.state ?? 'measured');
      const gravest = Math.max(0, ...reading.notes.map(({ level }) => ORDER.indexOf(level)));
      expect(ORDER[gravest]).toBe(expected.level ?? 'read');
      if (expected.rule !== undefined) expect(reading.notes.map(({ rule }) => rule)).toContain(expected.rule);
      if (expected.term !== null) expect(reading.certainty).toBe(expected.certainty ?? 'certain');
    },
  );
});

describe('kinds', () => {
  it('names a near term in the note and does not take it', () => {
    const reading = readCell('lime bst', ATTRIBUTES.fibre, contextFor('fibre'));
    expect(reading).toMatchObject({ term: null });
    expect(reading.notes.at(-1)?.why).toContain('limeBast');
  });
});

describe('text', () => {
  it('is kept as it stands; only a blank is nothing', () => {
    expect(readCell('NA', ATTRIBUTES.remarks, contextFor('remarks'))).toMatchObject({
      text: 'NA',
      state: 'measured',
    });
    expect(readCell(' ', ATTRIBUTES.remarks, contextFor('remarks'))).toMatchObject({ state: 'not-observed' });
  });
});
