import { describe, expect, it } from 'vitest';
import { read } from '../support.ts';

/** What the cells of a column, and the columns beside it, say against its header. */

const kinds = (text: string) =>
  Object.fromEntries(
    read(text).columns.map(({ header, status, attributes, suggestion }) => [
      header,
      status === 'matched' ? attributes.join() : `${suggestion?.attribute ?? 'nothing'}?`,
    ]),
  );
const rows = (head: string, ...cells: string[]) => `${[head, ...cells].join('\n')}\n`;

describe('a header among columns of one sort of numbers', () => {
  const bits = (header: string) =>
    rows(
      `Place,oak,ash,elm,beech,birch,hazel,pine,yew,${header}`,
      'A,1,0,1,1,0,0,1,0,1',
      'B,0,1,1,0,0,1,0,1,0',
      'C,1,1,0,0,1,0,0,1,1',
      'D,0,0,0,1,1,1,1,0,0',
    );
  it('names a kind, not a measurement, a number of objects or a place', () => {
    for (const header of ['PPI', 'MNI', 'Carré', 'Area'])
      expect([header, kinds(bits(header))[header]]).toEqual([header, 'nothing?']);
  });
  it('is a yes or no where Thrum records one of that name', () => {
    expect(kinds(bits('Dye')).Dye).toBe('dye');
  });
  it('is a number of objects beside noughts and ones that it is no part of', () => {
    const text = rows(
      'a,b,c,d,e,f,g,h,Freq',
      '1,0,1,1,0,0,1,0,12',
      '0,1,1,0,0,1,0,1,4',
      '1,1,0,0,1,0,0,1,31',
      '0,0,0,1,1,1,1,0,4',
    );
    expect(kinds(text).Freq).toBe('quantity?');
  });
});

describe('cells that are no reading of their header', () => {
  it('are no dates where none is read as one', () => {
    expect(kinds(rows('Plot,Date,n', 'a,d16,1', 'b,d20,1', 'c,d21,2')).Date).toBe('nothing?');
    expect(kinds(rows('Plot,Date,n', 'a,350 BC,1', 'b,d20,1', 'c,d21,2')).Date).toBe('date');
  });
  it('are no lengths where they only say on which side of one bound', () => {
    const text = (...cells: string[]) => rows('Find,Length', ...cells.map((cell, i) => `F${i},${cell}`));
    expect(kinds(text('<6m', '>6m', '<6m', '>6m')).Length).toBe('nothing?');
    expect(kinds(text('<6', '>9', '<6', '>9')).Length).toBe('length');
  });
  it('are no names where they are noughts and ones', () => {
    const text = (cells: string) =>
      rows('Find,Recorder', ...cells.split('').map((cell, i) => `F${i},${cell}`));
    expect(kinds(text('0110')).Recorder).toBe('nothing?');
    expect(kinds(text('1232')).Recorder).toBe('recorder');
  });
  it('are no twills where they weigh 2.1 g: such a table is not held to be of cloth', () => {
    expect(kinds(rows('Sp,Wt (g),RM', '3,4.1,FL', '3,2.1,FL', '4,1.2,QZ')).Sp).toBe('nothing?');
  });
});

describe('a wording near a known one', () => {
  it('is no slip where a short word differs in a letter, unless two are swapped', () => {
    expect(kinds(rows('Find,Lunch', 'a,47', 'b,76', 'c,78')).Lunch).toBe('nothing?');
    expect(kinds(rows('Find,Widht', 'a,47', 'b,76', 'c,78')).Widht).toBe('width?');
  });
  it('is no place of publication where it names who published', () => {
    expect(kinds(rows('Title,Publisher', 'a,North', 'b,South', 'c,East')).Publisher).toBe('nothing?');
  });
  it('is no number of a find where it names a place', () => {
    const text = (header: string) => rows(`${header},x`, 'Nordby,1', 'Sorby,2', 'Vesby,3');
    expect(kinds(text('SamplingSite')).SamplingSite).not.toBe('fragment?');
  });
});

it('a department keeps things where its cells name museums or arts, and is a place of work elsewhere', () => {
  expect(kinds(rows('Object,Department', 'a,Islamic Art', 'b,Antiquities', 'c,Islamic Art')).Department).toBe(
    'repository',
  );
  expect(kinds(rows('Name,Department', 'a,Sales', 'b,Research', 'c,Sales')).Department).toBe('nothing?');
});

it('a compass point is a coordinate beside the other one only', () => {
  expect(kinds(rows('Leg,North,Centre', 'a,17,17', 'b,11,9', 'c,14,12')).North).toBe('nothing?');
});

it('a column under the attribute’s own name is not displaced by a synonym of which the cells are words', () => {
  const read = kinds(rows('Find,Trench,Context', 'a,B,204', 'b,B,204', 'c,C,311'));
  expect(read).toMatchObject({ Context: 'context', Trench: 'nothing?' });
});

it('the letters S and Z go to the system that the header names', () => {
  const text = rows(
    'Find,Weave,Thread system 2 (spin),Thread system 1 (spin)',
    'a,tabby,S,Z',
    'b,2/2 twill,S,Z',
    'c,tabby,S,Z',
  );
  expect(kinds(text)).toMatchObject({
    'Thread system 1 (spin)': 'twist1?',
    'Thread system 2 (spin)': 'twist2?',
  });
});
