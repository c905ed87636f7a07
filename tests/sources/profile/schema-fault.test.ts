import { describe, expect, it } from 'vitest';
import { parseTypology } from '../../../src/analyses/typology/parse.ts';
import { readDataPackage } from '../../../src/sources/formats/datapackage.ts';
import { checkProfile } from '../../../src/sources/profile/profile.ts';
import { checkStudy } from '../../../src/study/load.ts';

/** What each kind of fault in a file is called. The files are invented; the words are our own. */

const analysis = (options: object) => ({
  analyses: [{ id: 'a', kind: 'summary', of: ['length'], ...options }],
});
const study = (part: object) => () =>
  checkStudy({ title: 't', sources: [{ file: 'a.csv' }], ...part }, 's.json');
const profile = (part: object) => () => checkProfile(part, 'p.json');
const rule = (when: unknown) => () =>
  parseTypology(JSON.stringify({ title: 't', types: [{ id: 'a', label: 'A', when }] }), 'r.json');
const pack = (value: unknown) => () => readDataPackage(JSON.stringify(value), 'd.json');

const CASES: readonly (readonly [what: string, read: () => unknown, message: string])[] = [
  [
    'one thing for a list',
    study(analysis({ of: 'rowSpacing' })),
    's.json, analyses[0].of: this must be a list, and is the text "rowSpacing"; write ["rowSpacing"].',
  ],
  [
    'a number for a list of texts',
    study(analysis({ of: 5 })),
    's.json, analyses[0].of: this must be a list, and is the number 5; write a list in square brackets, such as ["rowSpacing"].',
  ],
  [
    'an object for a list',
    study({ attributes: {} }),
    's.json, attributes: this must be a list, and is an object in braces; write a list in square brackets, such as [{ "id": … }].',
  ],
  [
    'a text for a list of objects',
    study({ sources: 'a.csv' }),
    's.json, sources: this must be a list, and is the text "a.csv"; write a list in square brackets, such as [{ "file": … }].',
  ],
  [
    'an object alone for a list of such',
    study({ sources: { file: 'a.csv' } }),
    's.json, sources: this must be a list, and is an object in braces; write [{"file":"a.csv"}].',
  ],
  [
    'a list for a text',
    study({ title: ['t'] }),
    's.json, title: this must be a text, and is a list; write one text in quotation marks.',
  ],
  [
    'a number for a text',
    study({ title: 5 }),
    's.json, title: this must be a text, and is the number 5; write "5", with quotation marks.',
  ],
  [
    'null for a text',
    study({ title: null }),
    's.json, title: this must be a text, and is null; write one text in quotation marks.',
  ],
  ['a missing text', study({ title: undefined }), 's.json, title: a text is missing; add it.'],
  [
    'a missing list',
    study(analysis({ of: undefined })),
    's.json, analyses[0].of: a list is missing; add it.',
  ],
  [
    'a text for a number',
    study({ seed: '5' }),
    's.json, seed: this must be a number, and is the text "5"; write 5, without quotation marks.',
  ],
  [
    'a broken number for a whole one',
    study({ seed: 1.5 }),
    's.json, seed: this must be a whole number, and is the number 1.5; write a whole number, such as 5.',
  ],
  [
    'words for a number',
    study({ select: [{ attribute: 'length', atLeast: 'ten' }] }),
    's.json, select[0].atLeast: this must be a number, and is the text "ten"; write a number, such as 5 or 0.5, without quotation marks.',
  ],
  [
    'a decimal comma',
    study({ select: [{ attribute: 'length', atLeast: '2,5' }] }),
    's.json, select[0].atLeast: this must be a number, and is the text "2,5"; write 2.5, without quotation marks.',
  ],
  [
    'a text for true or false',
    study({ select: [{ attribute: 'length', known: 'yes' }] }),
    's.json, select[0].known: this must be true or false, and is the text "yes"; write true or false, without quotation marks.',
  ],
  [
    'a text for an object',
    study({ select: ['length'] }),
    's.json, select[0]: this must be an object in braces, and is the text "length"; write its parts in braces, such as { "attribute": … }.',
  ],
  [
    'a list for an object',
    () => checkStudy([], 's.json'),
    's.json: this must be an object in braces, and is a list; write its parts in braces, such as { "title": … }.',
  ],
  [
    'a text for named parts',
    profile({ constants: 'Grebe Holm' }),
    'p.json, constants: this must be an object in braces, and is the text "Grebe Holm"; write its parts in braces, such as { "name": … }.',
  ],
  [
    'a text for two numbers',
    study({
      attributes: [{ id: 'w', label: 'W', block: 'find', scale: 'ratio', plausible: { usual: '1-2' } }],
    }),
    's.json, attributes[0].plausible.usual: this must be a list, and is the text "1-2"; write 2 entries in square brackets, parted by commas.',
  ],
  [
    'one number of two',
    study({
      attributes: [{ id: 'w', label: 'W', block: 'find', scale: 'ratio', plausible: { usual: [1] } }],
    }),
    's.json, attributes[0].plausible.usual: the list is too short, with 1; give at least 2.',
  ],
  [
    'three numbers for two',
    study({
      attributes: [{ id: 'w', label: 'W', block: 'find', scale: 'ratio', plausible: { usual: [1, 2, 3] } }],
    }),
    's.json, attributes[0].plausible.usual: the list is too long, with 3; give at most 2.',
  ],
  ['too small a number', study({ seed: -1 }), 's.json, seed: -1 is too small; give at least 0.'],
  [
    'too large a number',
    study({ seed: 1e10 }),
    's.json, seed: 10000000000 is too large; give at most 4294967295.',
  ],
  ['an empty text', study({ title: '' }), 's.json, title: the text is empty; write it, or remove this part.'],
  [
    'an empty list',
    study(analysis({ of: [] })),
    's.json, analyses[0].of: the list is empty; name at least 1.',
  ],
  [
    'an unknown word',
    study({ unit: 'items' }),
    's.json, unit: "items" is not allowed; write "item" if that is meant.',
  ],
  [
    'a number for a word',
    study({ unit: 1 }),
    's.json, unit: this must be a text, and is the number 1; use one of item, fragment.',
  ],
  [
    'a missing word',
    study({ attributes: [{ id: 'w', label: 'W', block: 'find' }] }),
    's.json, attributes[0].scale: this is missing; use one of ratio, interval, ordinal, nominal, binary, presence, text.',
  ],
  [
    'another word than the only one',
    study({ attributes: [{ id: 'w', label: 'W', block: 'find', scale: 'ratio', transform: 'ln' }] }),
    's.json, attributes[0].transform: "ln" is not allowed; write "log".',
  ],
  ['an unknown name', study({ sedd: 1 }), 's.json: "sedd" is not known here; write "seed" if that is meant.'],
  [
    'an unknown option',
    study(analysis({ off: [] })),
    's.json, analyses[0]: "off" is not known here; write "of" if that is meant.',
  ],
  [
    'an unknown name deep inside',
    study({ sources: [{ file: 'a.csv', profil: 'p.json' }] }),
    's.json, sources[0]: "profil" is not known here; write "profile" if that is meant.',
  ],
  [
    'a name without a right form',
    study({ analyses: [{ id: '9a', kind: 'summary', of: ['length'] }] }),
    's.json, analyses[0].id: "9a" must start with a letter and hold letters, digits and hyphens only; correct it.',
  ],
  [
    'an unknown language',
    study({ terms: [{ vocabulary: 'fibre', id: 'x', label: 'X', synonyms: { xx: ['x'] } }] }),
    's.json, terms[0].synonyms: "xx" is not known here; use one of en, de, fr, it, es, da, no, la.',
  ],
  [
    'an empty name',
    profile({ constants: { '': 'x' } }),
    'p.json, constants[""]: a name is empty; write it, or remove this part.',
  ],
  [
    'no table',
    study({ sources: [] }),
    's.json, sources: no table is named; name at least one, or ask about printed figures alone.',
  ],
  [
    'a choice of numbers',
    profile({ layout: { headerRows: 4 } }),
    'p.json, layout.headerRows: 4 is not allowed; use one of 1, 2, 3.',
  ],
  [
    'neither a text nor a list',
    profile({ columns: [{ header: 5 }] }),
    'p.json, columns[0].header: this must be a text or a list, and is the number 5; write a text or a list.',
  ],
  [
    'a list of the wrong kind where a text would do',
    profile({ columns: [{ header: [5] }] }),
    'p.json, columns[0].header[0]: this must be a text, and is the number 5; write "5", with quotation marks.',
  ],
  [
    'neither an object nor false',
    profile({ layout: { longForm: true } }),
    'p.json, layout.longForm: this must be an object in braces or false, and is true; write an object in braces or false.',
  ],
  [
    'the object of a choice, lacking a part',
    profile({ layout: { longForm: { attribute: 'a' } } }),
    'p.json, layout.longForm.value: a text is missing; add it.',
  ],
  [
    'neither a number nor the word',
    study({ analyses: [{ id: 'g', kind: 'grouping', k: 'chose' }] }),
    's.json, analyses[0].k: this must be a number or "choose", and is the text "chose"; write "choose" if that is meant.',
  ],
  [
    'a number out of bounds, or the word',
    study({ analyses: [{ id: 'g', kind: 'grouping', k: 1 }] }),
    's.json, analyses[0].k: 1 is too small; give at least 2.',
  ],
  [
    'an unknown state',
    profile({ missing: { '-': 'absnt' } }),
    'p.json, missing["-"]: "absnt" is not allowed; write "absent" if that is meant.',
  ],
  [
    'an unknown key of a profile',
    profile({ column: [] }),
    'p.json: "column" is not known here; write "columns" if that is meant.',
  ],
  ['a rule without a form', rule({}), 'r.json, types[0].when.attribute: a text is missing; add it.'],
  [
    'a rule that is a text',
    rule('rowSpacing'),
    'r.json, types[0].when: this must be an object in braces, and is the text "rowSpacing"; write its parts in braces, such as { "attribute": … }.',
  ],
  [
    'a misspelt limit',
    rule({ attribute: 'rowSpacing', atLeasst: 4 }),
    'r.json, types[0].when: "atLeasst" is not known here; write "atLeast" if that is meant.',
  ],
  [
    'a rule of rules that is no list',
    rule({ all: { attribute: 'rowSpacing', below: 4 } }),
    'r.json, types[0].when.all: this must be a list, and is an object in braces; write [{"attribute":"rowSpacing","below":4}].',
  ],
  [
    'a fault deep inside a rule',
    rule({ all: [{ any: [{ attribute: 'rowSpacing', below: '4' }] }] }),
    'r.json, types[0].when.all[0].any[0].below: this must be a number, and is the text "4"; write 4, without quotation marks.',
  ],
  ['a package without resources', pack({}), 'd.json, resources: a list is missing; add it.'],
  [
    'a package whose missing values are one text',
    pack({ resources: [{ path: 'a.csv', schema: { missingValues: '-' } }] }),
    'd.json, resources[0].schema.missingValues: this must be a list, and is the text "-"; write ["-"].',
  ],
];

describe('a fault in a file is said in the reader’s words', () => {
  it.each(CASES)('%s', (_, read, message) => {
    expect(read).toThrow(expect.objectContaining({ name: 'InputError', message }));
    expect(message).not.toMatch(
      /\b(?:string|array|boolean|undefined|record|tuple|enum|regex)\b|Invalid|expected /,
    );
  });
});
