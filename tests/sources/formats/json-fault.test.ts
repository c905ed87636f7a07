import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { findJsonFault } from '../../../src/sources/formats/json-fault.ts';

describe('where a text stops being JSON (RFC 8259)', () => {
  const cases: [text: string, line: number, column: number, what: string][] = [
    ['{"a": tru}', 1, 7, '"tru" is not a JSON value'],
    ['{"a": 1 "b": 2}', 1, 9, 'a comma or "}" is missing before """'],
    ['[1, 2', 1, 6, 'the text ends before a closing "]"'],
    ['{"a" 1}', 1, 6, 'a colon is missing after the name'],
    ['{a: 1}', 1, 2, 'a name is missing'],
    ['{"a": 01}', 1, 8, 'a comma or "}" is missing before "1"'],
    ['// note\n{}', 1, 1, 'a comment stands here, which JSON does not know'],
    ['{} {}', 1, 4, 'there is text after the end of the JSON value'],
    ['{"a": "b\nc"}', 1, 7, 'a text is not closed'],
    ['{"a": "\\x"}', 1, 8, 'a backslash starts no known escape'],
    ['', 1, 1, 'the text ends too early'],
    ["{'a': 1}", 1, 2, 'a name is missing'],
    ['[NaN]', 1, 2, '"NaN" is not a JSON value'],
  ];
  it.each(cases)('%j at line %i, column %i', (text, line, column, what) => {
    expect(findJsonFault(text)).toMatchObject({ line, column, what });
  });

  it('a comma before a closing bracket is named as such', () => {
    expect(findJsonFault('{\n  "a": 1,\n}')).toMatchObject({
      line: 3,
      column: 1,
      what: 'a comma stands before the closing "}"',
    });
  });

  it('brackets nested without end are refused, not followed into a fault of ours', () => {
    expect(findJsonFault('['.repeat(100_000))?.what).toBe('brackets nest deeper than 500');
  });

  it('finds no fault in what JSON.stringify writes', () => {
    fc.assert(
      fc.property(fc.jsonValue(), fc.constantFrom(undefined, 2), (value, indent) => {
        expect(findJsonFault(JSON.stringify(value, null, indent))).toBeNull();
      }),
    );
  });

  it('agrees with JSON.parse on texts with a slip in them', () => {
    fc.assert(
      fc.property(
        fc.jsonValue(),
        fc.nat(),
        fc.constantFrom('', ',', '"', '}', '1', '\\', ' ', 'e'),
        (value, at, slip) => {
          const text = JSON.stringify(value);
          const place = at % (text.length + 1);
          const changed = text.slice(0, place) + slip + text.slice(place + (slip === '' ? 1 : 0));
          const parses = (() => {
            try {
              JSON.parse(changed);
              return true;
            } catch {
              return false;
            }
          })();
          expect(findJsonFault(changed) === null).toBe(parses);
        },
      ),
      { numRuns: 500 },
    );
  });
});
