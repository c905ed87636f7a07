/** Descriptions of structure in six languages, parted by hand; common practice, no source. */
import { describe, expect, it } from 'vitest';
import { defaultRegister } from '../../src/attributes/register.ts';
import { readDescription } from '../../src/cells/descriptions/read-description.ts';
import { ENGLISH } from './descriptions/english.ts';
import { FRESH_NORTH, FRESH_SOUTH } from './descriptions/fresh.ts';
import { GERMAN } from './descriptions/german.ts';
import { NORDIC } from './descriptions/nordic.ts';
import { FRENCH, ITALIAN, SPANISH } from './descriptions/romance.ts';

const register = defaultRegister();
const structure = register.attributes.get('structure')!;

/** What the short signs of the tables stand for. */
const FACETS: Readonly<Record<string, readonly [id: string, values: Readonly<Record<string, string>>]>> = {
  o: [
    'spacingClass',
    { semi: 'semi-open', 'semi-or-open': 'semi-open or open', 'close-or-open': 'close or open' },
  ],
  e: ['engagement', {}],
  a: ['activeSystem', { weft: 'weftActive', warp: 'warpActive' }],
  s: ['rowSlant', { both: 'countered' }],
  n: ['strandsPerRow', {}],
  p: ['pile', { yes: 'present', no: 'absent' }],
  x: ['pileFixing', {}],
  f: ['face', { weft: 'weftFaced', warp: 'warpFaced' }],
  g: ['elementGrouping', { one: 'pairedOne', both: 'pairedBoth' }],
  t: ['twillPattern', {}],
  u: ['supplementary', {}],
  w: ['wrapping', { crossings: 'wrappedCrossings' }],
};

interface Case {
  readonly text: string;
  readonly term: string | null;
  readonly facets: Readonly<Record<string, string>>;
  readonly asked: boolean;
}

function casesOf(table: string): readonly Case[] {
  return table
    .trim()
    .split('\n')
    .map((line) => {
      const [text = '', term = '', facets = '', asked = ''] = line.split('|').map((part) => part.trim());
      const said = facets.split(' ').flatMap((entry) => {
        const [sign = '', value = ''] = entry.split('=');
        const [id, values] = FACETS[sign] ?? [];
        return id === undefined ? [] : [[id, values?.[value] ?? value] as const];
      });
      return {
        text,
        term: term === '-' ? null : term,
        facets: Object.fromEntries(said),
        asked: asked === '?',
      };
    });
}

const TABLES = { ENGLISH, GERMAN, FRENCH, ITALIAN, SPANISH, NORDIC };
const ALL = Object.values(TABLES).flatMap(casesOf);

it('there are more than three hundred', () => {
  expect(ALL.length).toBeGreaterThan(300);
});

describe.each(Object.entries(TABLES))('%s', (_, table) => {
  it.each(casesOf(table))('$text', ({ text, term, facets, asked }) => {
    expect(parted(text)).toEqual({ term, facets, asked });
  });
});

/** What a text is read as, and whether something in it is asked about. */
function parted(text: string): Omit<Case, 'text'> {
  const { main, facets, rest } = readDescription(text, structure, register, { decimal: '.' })!;
  const said = [...facets].map(([id, reading]) => {
    if (reading.kind === 'numeric') return [id, String(reading.low)];
    return [id, reading.kind === 'term' ? (reading.term ?? 'gap') : ''];
  });
  return {
    term: main.kind === 'term' ? main.term : '',
    facets: Object.fromEntries(said),
    asked: rest.length > 0 || main.notes.some(({ level }) => level === 'not-understood'),
  };
}

describe('descriptions that were decided before they were read', () => {
  const all = [...casesOf(FRESH_NORTH), ...casesOf(FRESH_SOUTH)];

  it.each(all)('never wrongly: $text', ({ text, term, facets }) => {
    const read = parted(text);
    for (const [id, value] of Object.entries(read.facets)) expect([id, value]).toEqual([id, facets[id]]);
    if (read.term !== null) expect(read.term).toBe(term);
    // What was not read is asked about.
    const less = read.term === null || Object.keys(facets).some((id) => read.facets[id] === undefined);
    if (less) expect(read.asked).toBe(true);
  });

  it('mostly rightly, to the last facet', () => {
    const right = all.filter(({ text, term, facets }) => {
      const read = parted(text);
      return read.term === term && JSON.stringify(sorted(read.facets)) === JSON.stringify(sorted(facets));
    });
    expect(all.length).toBeGreaterThanOrEqual(150);
    expect(right.length / all.length).toBeGreaterThan(0.9);
  });

  const sorted = (facets: Readonly<Record<string, string>>) => Object.entries(facets).sort();
});

describe('certainty', () => {
  const sure = (text: string) => {
    const { main, facets } = readDescription(text, structure, register, { decimal: '.' })!;
    const of = (reading: typeof main | undefined) =>
      reading?.kind === 'term' ? reading.certainty : undefined;
    return [of(main), of(facets.get('spacingClass'))];
  };

  it('doubt holds for what stands beside it', () => {
    expect(sure('open twining')).toEqual(['certain', 'certain']);
    expect(sure('twining, open?')).toEqual(['certain', 'probable']);
    expect(sure('twining, possibly open')).toEqual(['certain', 'possible']);
    expect(sure('open twining?')).toEqual(['probable', 'probable']);
  });
});

describe('what a source says of its own words', () => {
  const read = (text: string, translations: Record<string, string>, tells: string[] = []) => {
    const context = { decimal: '.' as const, translations, tells };
    const { main, facets, rest } = readDescription(text, structure, register, context)!;
    return [
      main.kind === 'term' ? main.term : null,
      Object.fromEntries(
        [...facets].map(([id, reading]) => [id, reading.kind === 'term' ? reading.term : null]),
      ),
      rest.map((one) => one.text),
    ];
  };

  it('goes first, for a whole cell and for a part of one', () => {
    expect(read('Typ 3, fest', { 'Typ 3, fest': 'openTwining' })).toEqual([
      'twined',
      { spacingClass: 'open' },
      [],
    ]);
    expect(read('twining, fest', { fest: 'close twining' })).toEqual([
      'twined',
      { spacingClass: 'close' },
      [],
    ]);
    expect(read('twining, fest', {})).toEqual(['twined', {}, ['fest']]);
    expect(read('twining, fest', { fest: '' })).toEqual(['twined', {}, []]);
  });

  it('a source that tells a facet means by silence that there is none', () => {
    expect(read('open twining', {})).toEqual(['twined', { spacingClass: 'open' }, []]);
    expect(read('open twining', {}, ['pile'])).toEqual([
      'twined',
      { spacingClass: 'open', pile: 'absent' },
      [],
    ]);
    expect(read('open twining, tufted', {}, ['pile'])).toEqual([
      'twined',
      { spacingClass: 'open', pile: 'present' },
      [],
    ]);
    expect(read('knotted netting', {}, ['pile'])).toEqual(['knottedNetting', {}, []]);
  });
});

describe('a mark of doubt', () => {
  it.each([
    ['open twining (?)', 'probable'],
    ['open twining ?', 'probable'],
    ['open twining [?], tufted', 'probable'],
    ['(?) open twining', 'probable'],
    ['open twining, uncertain', 'probable'],
    ['open twining; possibly', 'possible'],
    ['offene Zwirnbindung (unsicher)', 'probable'],
    ['open twining', 'certain'],
  ])('of "%s" leaves it %s', (text, certainty) => {
    const { main, facets } = readDescription(text, structure, register, { decimal: '.' })!;
    expect(main).toMatchObject({ term: 'twined', certainty });
    expect(facets.get('spacingClass')).toMatchObject({ term: 'open', certainty });
  });
});
