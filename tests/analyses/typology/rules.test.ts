import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { assignTypes } from '../../../src/analyses/typology/assign.ts';
import { NO_TYPE } from '../../../src/analyses/typology/found.ts';
import { parseTypology } from '../../../src/analyses/typology/parse.ts';
import {
  describeRule,
  ruleAnswer,
  type TypeRule,
  type Typology,
} from '../../../src/analyses/typology/rules.ts';
import { attribute, madeInput } from '../grouping/made-table.ts';

const file = 'mine.types.json';
const spacing = attribute('rowSpacing', 'spacing', 'ratio', { unit: 'mm' });
const fibre = attribute('fibre', 'fibre', 'nominal');
const { records, register } = madeInput([
  { attribute: spacing, values: [3, 9, 8, null, 20] },
  { attribute: fibre, values: ['lime', 'flax', null, 'flax', 'lime'] },
]);
const claim = (types: unknown, more: object = {}) => JSON.stringify({ title: 'T', types, ...more });
const type = (id: string, when: unknown) => ({ id, label: id, when });
const parse = (text: string) => parseTypology(text, file);
const assign = (typology: Typology) => assignTypes(records, typology, register, file);
const twice = [
  type('close', { attribute: 'rowSpacing', below: 10 }),
  type('open', { attribute: 'rowSpacing', atLeast: 8 }),
];

describe('a rule file that does not hold says where, in one sentence', () => {
  it.each([
    [
      'malformed JSON',
      '{"title": "T", "types": [',
      /^mine\.types\.json, line 1, column \d+: not valid JSON: the text ends too early; [^\n]+\.$/,
    ],
    ['no types', claim([]), /^mine\.types\.json, types: the list is empty; name at least 1\.$/],
    [
      'a limit that is text',
      claim([type('a', { attribute: 'rowSpacing', below: '8' })]),
      /types\[0\]\.when\.below: .*number/,
    ],
    [
      'a misspelt key',
      claim([type('a', { attribute: 'rowSpacing', under: 8 })]),
      /types\[0\]\.when: .*"under"/,
    ],
    [
      'a fault deep in a rule',
      claim([type('a', { all: [{ any: [{ attribute: 'rowSpacing', below: null }] }] })]),
      /types\[0\]\.when\.all\[0\]\.any\[0\]\.below/,
    ],
    ['an id twice', claim([twice[0], twice[0]]), /types: two types are called "close"; give each type an id/],
    [
      'low above high',
      claim([type('a', { attribute: 'rowSpacing', atLeast: 9, atMost: 8 })]),
      /types\.a: no record can be of the type "a": rowSpacing at least 9 and at most 8; swap/,
    ],
    [
      'low at what it must be below',
      claim([type('a', { attribute: 'rowSpacing', atLeast: 8, below: 8 })]),
      /at least 8 and below 8/,
    ],
    [
      'limits that exclude one another',
      claim([
        type('a', {
          all: [
            { attribute: 'rowSpacing', atLeast: 9 },
            { attribute: 'rowSpacing', below: 4 },
          ],
        }),
      ]),
      /at least 9 and below 4/,
    ],
  ])('%s', (_, text, expected) => {
    expect(() => parse(text)).toThrow(expected);
  });

  it('an unknown attribute names the file and the type', () => {
    expect(() => assign(parse(claim([type('a', { attribute: 'rowSpaceing', below: 8 })])))).toThrow(
      /^mine\.types\.json, types\.a: there is no attribute "rowSpaceing"; /,
    );
  });

  it('limits on kinds and terms on numbers are refused', () => {
    expect(() => assign(parse(claim([type('a', { attribute: 'fibre', below: 8 })])))).toThrow(/types\.a/);
    expect(() => assign(parse(claim([type('a', { attribute: 'rowSpacing', in: ['lime'] })])))).toThrow(
      /types\.a/,
    );
  });
});

describe('three-valued logic, as the tables of Kleene 1952 (Introduction to Metamathematics, section 64)', () => {
  // Row 0: spacing 3 and lime. Row 3: spacing not recorded. Conditions that are true, false and unknown there:
  const T: TypeRule = { attribute: 'fibre', in: ['flax'] };
  const F: TypeRule = { attribute: 'fibre', in: ['lime'] };
  const U: TypeRule = { attribute: 'rowSpacing', below: 8 };
  const name = { in: 'T', out: 'F', 'cannot say': 'U' } as const;
  const value = (rule: TypeRule) => name[ruleAnswer(rule, records, register)(3).answer];
  const rules = { T, F, U };
  type Letter = keyof typeof rules;

  it.each<[Letter, Letter, Letter, Letter]>([
    ['T', 'T', 'T', 'T'],
    ['T', 'U', 'U', 'T'],
    ['T', 'F', 'F', 'T'],
    ['U', 'T', 'U', 'T'],
    ['U', 'U', 'U', 'U'],
    ['U', 'F', 'F', 'U'],
    ['F', 'T', 'F', 'T'],
    ['F', 'U', 'F', 'U'],
    ['F', 'F', 'F', 'F'],
  ])('%s and %s: all is %s, any is %s', (a, b, all, any) => {
    expect(value({ all: [rules[a], rules[b]] })).toBe(all);
    expect(value({ any: [rules[a], rules[b]] })).toBe(any);
  });

  it('not turns in and out and leaves what cannot be said', () => {
    expect((['T', 'U', 'F'] as const).map((letter) => value({ not: rules[letter] }))).toEqual([
      'F',
      'U',
      'T',
    ]);
  });

  it('says which attribute is to blame', () => {
    expect(ruleAnswer({ all: [T, U] }, records, register)(3)).toEqual({
      answer: 'cannot say',
      blame: 'rowSpacing',
      why: 'not recorded',
    });
  });

  it('obeys De Morgan for any nesting', () => {
    const leaf = fc.constantFrom<TypeRule>(T, F, U);
    const rule = fc.letrec<{ rule: TypeRule }>((tie) => ({
      rule: fc.oneof(
        { depthSize: 'small' },
        leaf,
        fc.array(tie('rule'), { minLength: 1, maxLength: 3 }).map((all) => ({ all })),
        fc.array(tie('rule'), { minLength: 1, maxLength: 3 }).map((any) => ({ any })),
        tie('rule').map((not) => ({ not })),
      ),
    })).rule;
    fc.assert(
      fc.property(fc.array(rule, { minLength: 1, maxLength: 4 }), (parts) => {
        expect(value({ not: { all: parts } })).toBe(value({ any: parts.map((not) => ({ not })) }));
      }),
      { numRuns: 200 },
    );
  });
});

describe('assignment', () => {
  it('takes the first type that fits, or leaves what fits several undecided, and counts the overlap', () => {
    const first = assign(parse(claim(twice)));
    expect([...first.type]).toEqual([0, 0, 0, NO_TYPE.undecided, 1]);
    expect(first.overlaps).toEqual([{ first: 0, second: 1, records: 2 }]);
    const strict = assign(parse(claim(twice, { several: 'undecided' })));
    expect([...strict.type]).toEqual([0, NO_TYPE.several, NO_TYPE.several, NO_TYPE.undecided, 1]);
  });

  it('leaves a range that straddles a limit undecided and blames it', () => {
    const column = records.columns.get('rowSpacing')!;
    if (column.kind !== 'numeric') throw new Error('not a number');
    const wide = {
      ...records,
      columns: new Map(records.columns).set('rowSpacing', {
        ...column,
        low: Float64Array.of(3, 7, 8, Number.NaN, 20),
        high: Float64Array.of(3, 9, 8, Number.NaN, 20),
      }),
    };
    const found = assignTypes(
      wide,
      parse(claim([type('close', { attribute: 'rowSpacing', below: 8 })])),
      register,
      file,
    );
    expect([...found.type]).toEqual([0, NO_TYPE.undecided, NO_TYPE.none, NO_TYPE.undecided, NO_TYPE.none]);
    expect(found.blame).toEqual([null, 'rowSpacing', null, 'rowSpacing', null]);
  });

  it('gives each record that the typology speaks of exactly one place', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 25, noNaN: true }),
        fc.double({ min: 1, max: 25, noNaN: true }),
        (below, atLeast) => {
          const types = [
            type('a', { attribute: 'rowSpacing', below }),
            type('b', { attribute: 'rowSpacing', atLeast }),
          ];
          const {
            rows,
            type: given,
            setAside,
          } = assign(parse(claim(types, { among: [{ attribute: 'fibre', known: true }] })));
          expect(rows.length + setAside.reduce((sum, { fragments }) => sum + fragments, 0)).toBe(
            records.rows,
          );
          expect(given.length).toBe(rows.length);
          expect(given.every((place) => place >= NO_TYPE.undecided && place < 2)).toBe(true);
        },
      ),
      { numRuns: 60 },
    );
  });
});

describe('a rule in words', () => {
  it('reads as a sentence, with labels for ids', () => {
    const { register: named } = madeInput(
      [
        { attribute: { ...spacing, label: 'Row spacing' }, values: [3] },
        { attribute: { ...fibre, label: 'Fibre', vocabulary: 'fibres' }, values: ['lime'] },
      ],
      {
        vocabularies: [
          { id: 'fibres', label: 'Fibres', terms: [{ id: 'lime', label: 'lime bast', source: 'made up' }] },
        ],
      },
    );
    expect(
      describeRule(
        { all: [{ attribute: 'rowSpacing', atLeast: 8 }, { not: { attribute: 'fibre', in: ['lime'] } }] },
        named,
      ),
    ).toBe('Row spacing at least 8 and not (Fibre is lime bast)');
  });
});
