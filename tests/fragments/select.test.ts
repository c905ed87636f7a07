import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { selectRows } from '../../src/fragments/select.ts';
import type { Condition } from '../../src/fragments/select-condition.ts';
import type { TermColumn } from '../../src/fragments/table.ts';
import { makeTable, register } from './make-table.ts';

const table = makeTable([
  { site: 'Ar', density1: 5, fibre: 'limeBast' },
  { site: 'Ar', density1: [8, 12], fibre: 'treeBast' },
  { site: 'Bo', density1: 20, fibre: 'wool' },
  { site: 'Bo', density1: '-not-observed', fibre: '-not-observed' },
]);
const select = (...conditions: Condition[]) => selectRows(table, conditions, register);

describe('selectRows, of a reading without an end', () => {
  const open = makeTable([
    { density1: [30, Number.POSITIVE_INFINITY] },
    { density1: [0, 5] },
    { density1: 10 },
  ]);
  it.each([
    [{ atLeast: 9 }, [0, 2], []],
    [{ atLeast: 30 }, [0], []],
    [{ atLeast: 31 }, [], ['cannot say whether density1 at least 31']],
    [{ below: 31 }, [1, 2], ['cannot say whether density1 below 31']],
    [{ below: 30 }, [1, 2], []],
    [{ atMost: 5 }, [1], []],
  ])('%j', (limits, rows, undecided) => {
    const found = selectRows(open, [{ attribute: 'density1', ...limits }], register);
    expect([...found.rows]).toEqual(rows);
    expect(
      found.setAside.map(({ reason }) => reason).filter((reason) => reason.startsWith('cannot say')),
    ).toEqual(undecided);
  });
});

describe('selectRows, by how sure an attribution is', () => {
  const fibre = table.columns.get('fibre') as TermColumn;
  const doubted = {
    ...table,
    columns: new Map(table.columns).set('fibre', { ...fibre, certainty: Uint8Array.from([0, 1, 2, 0]) }),
  };
  const rows = (one: Condition) => [...selectRows(doubted, [one], register).rows];

  it('keeps what is at least as sure as asked', () => {
    expect(rows({ attribute: 'fibre', certainty: 'certain' })).toEqual([0]);
    expect(rows({ attribute: 'fibre', certainty: 'probable' })).toEqual([0, 1]);
    expect(rows({ attribute: 'fibre', certainty: 'possible' })).toEqual([0, 1, 2]);
    expect(rows({ attribute: 'fibre', in: ['treeBast'], certainty: 'certain' })).toEqual([0]);
  });

  it('counts those that it leaves out, and says why', () => {
    expect(
      selectRows(doubted, [{ attribute: 'fibre', certainty: 'certain' }], register).setAside,
    ).toContainEqual({
      reason: 'left out by the selection: fibre is certain',
      fragments: 2,
    });
  });

  it('is refused for numbers', () => {
    expect(() => rows({ attribute: 'density1', certainty: 'certain' })).toThrow('no attributions');
  });
});

describe('selectRows', () => {
  it.each<[Condition, number[]]>([
    [{ attribute: 'density1', atLeast: 8 }, [1, 2]],
    [{ attribute: 'density1', atMost: 12 }, [0, 1]],
    [{ attribute: 'density1', below: 12 }, [0]],
    [{ attribute: 'density1', below: 13 }, [0, 1]],
    [{ attribute: 'density1', atLeast: 10 }, [2]],
    [{ attribute: 'fibre', in: ['treeBast'] }, [0, 1]],
    [{ attribute: 'fibre', in: ['limeBast'] }, [0]],
    [{ attribute: 'fibre', notIn: ['treeBast'] }, [2]],
    [{ attribute: 'site', in: ['Bo'] }, [2, 3]],
    [{ attribute: 'assemblage', in: ['Ar'] }, [0, 1]],
    [{ attribute: 'density1', known: false }, [3]],
    [{ attribute: 'fibre', known: true, in: ['wool'] }, [2]],
  ])('%j keeps rows %j', (one, rows) => {
    expect([...select(one).rows]).toEqual(rows);
  });

  it('says of an interval across the limit that it cannot be decided', () => {
    expect(select({ attribute: 'density1', atLeast: 10 }).setAside).toEqual([
      { reason: 'left out by the selection: density1 at least 10', fragments: 1 },
      { reason: 'cannot say whether density1 at least 10', fragments: 1 },
      { reason: 'density1 not recorded', fragments: 1 },
    ]);
  });

  it('says of a broader term that it cannot be decided', () => {
    expect(select({ attribute: 'fibre', in: ['limeBast'] }).setAside).toContainEqual({
      reason: 'cannot say whether fibre is limeBast',
      fragments: 1,
    });
  });

  it.each<[Condition, string]>([
    [
      { attribute: 'weft', known: true },
      'there is no attribute "weft"; name one of the default attributes, or define it under "attributes" in the study.',
    ],
    [
      { attribute: 'fibre', in: ['silk'] },
      'select: the selection by "fibre" cannot be made: "silk" is not one of its terms; use a term id of its vocabulary, or add the term.',
    ],
    [
      { attribute: 'density1', in: ['5'] },
      'select: the selection by "density1" cannot be made: it is a number and has no terms; use "atLeast", "atMost" or "below".',
    ],
    [
      { attribute: 'fibre', atLeast: 1 },
      'select: the selection by "fibre" cannot be made: it is not a number and has no limits; use "in" and "notIn".',
    ],
    [
      { attribute: 'density1', atLeast: 9, atMost: 3 },
      'select: the selection by "density1" cannot be made: no number is at least 9 and at most 3; swap the two limits.',
    ],
    [
      { attribute: 'site' },
      'select: the selection by "site" cannot be made: the condition says nothing; add "in", "notIn", "atLeast", "atMost", "below", "known" or "certainty".',
    ],
  ])('%j is refused in one sentence', (one, message) => {
    expect(() => select(one)).toThrow(message);
  });

  it('kept and set aside together are all rows', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 25, noNaN: true }),
        fc.double({ min: 0, max: 25, noNaN: true }),
        (a, b) => {
          const { rows, setAside } = select(
            { attribute: 'density1', atLeast: Math.min(a, b), atMost: Math.max(a, b) },
            { attribute: 'site', in: ['Bo'] },
          );
          expect(rows.length + setAside.reduce((sum, { fragments }) => sum + fragments, 0)).toBe(table.rows);
        },
      ),
    );
  });
});
