import { describe, expect, it } from 'vitest';
import type { Analysis, AnalysisInput, Answer, Findings } from '../../../../src/analyses/contract.ts';
import { crosstab } from '../../../../src/analyses/crosstab/index.ts';
import { printTurn } from '../../../../src/analyses/phrasing.ts';
import { similarity } from '../../../../src/analyses/similarity/index.ts';
import { standing } from '../../../../src/analyses/standing/index.ts';
import { defaultRegister } from '../../../../src/attributes/register.ts';
import { SURVIVAL, survivalOf, survivalsIn } from '../../../../src/attributes/survival.ts';
import { createRandom } from '../../../../src/numerics/foundation/random.ts';
import { makeTable } from '../../../fragments/make-table.ts';
import { faultsOfAnswer } from '../../answer-rules.ts';

/**
 * What could have survived where. Directions: common practice (acid settings favour wool and silk, alkaline ones plant
 * fibre: Encyclopedia of Global Archaeology, Springer 2014, as the trade cites it). Places and counts are made up.
 */

type Row = Readonly<Record<string, string>>;

const register = defaultRegister();
const fibres = register.vocabularies.get('fibre');
const preservations = register.vocabularies.get('preservation');
if (fibres === undefined || preservations === undefined) throw new Error('a vocabulary is lacking');

const rowsAt = (site: string, preservation: string, counts: Readonly<Record<string, number>>): Row[] =>
  Object.entries(counts).flatMap(([fibre, count]) =>
    Array.from({ length: count }, () => ({
      site,
      fibre,
      ...(preservation === '' ? {} : { preservation }),
    })),
  );

function inputOf(rows: readonly Row[]): AnalysisInput {
  const fragments = makeTable(rows, register);
  return { fragments, records: fragments, unit: 'fragment', register, random: createRandom(3) };
}

function said<Options, Found extends Findings>(
  analysis: Analysis<Options, Found>,
  rows: readonly Row[],
  options: object,
): Answer {
  const words = analysis.words(analysis.compute(inputOf(rows), analysis.options.parse(options)));
  expect(faultsOfAnswer(words)).toEqual([]);
  return words;
}

const quick = { relabellings: 199, resamples: 199 };
const crossed = (rows: readonly Row[], turned = false) =>
  said(crosstab, rows, {
    ...(turned ? { rows: 'fibre', columns: 'site' } : { rows: 'site', columns: 'fibre' }),
    ...quick,
  });
const likened = (rows: readonly Row[]) =>
  said(similarity, rows, { assemblages: 'site', of: 'fibre', ...quick });
const stood = (rows: readonly Row[]) =>
  said(standing, rows, { among: 'site', site: 'Ostry', of: 'fibre', ...quick });
const survivalLines = ({ unless }: Answer) =>
  unless.map(printTurn).filter((line) => /would be lost/.test(line) && /says nothing/.test(line));
const allOf = ({ answer, because, unless }: Answer) => [answer, ...because, ...unless.map(printTurn)];

/** Flax and wool at two dry places, and what a third has. */
const beside = (third: readonly Row[]): Row[] => [
  ...rowsAt('Ostry', 'desiccated', { flax: 10, wool: 10 }),
  ...rowsAt('Quellmere', 'desiccated', { flax: 11, wool: 9 }),
  ...third,
];
const bog = beside(rowsAt('Ysketh Pans', 'bog', { wool: 12 }));
const alkaline = beside(rowsAt('Ysketh Pans', 'alkaline', { flax: 12 }));

describe('what lasts where', () => {
  const at = (preservation: string, fibre: string) => {
    const known = survivalsIn(preservation, preservations);
    return known === undefined ? 'not told' : survivalOf(known, fibre, fibres);
  };

  it.each([
    ['bog', 'flax', 'lost'],
    ['bog', 'limeBast', 'lost'],
    ['bog', 'wool', 'lasts'],
    ['bog', 'silk', 'lasts'],
    ['bog', 'moss', 'not told'],
    ['bog', 'sedge', 'not told'],
    ['bog', 'birchBark', 'not told'],
    ['alkaline', 'wool', 'lost'],
    ['alkaline', 'silk', 'lost'],
    ['alkaline', 'flax', 'lasts'],
    ['alkaline', 'hideStrip', 'not told'],
    ['waterlogged', 'wool', 'not told'],
    ['waterlogged', 'flax', 'not told'],
    ['charredWaterlogged', 'wool', 'not told'],
    ['mineralisedIron', 'flax', 'not told'],
    ['impression', 'flax', 'lost'],
    ['salt', 'wool', 'not told'],
    ['bog', 'metalThread', 'not told'],
  ])('%s: %s is %s', (preservation, fibre, wanted) => {
    expect(at(preservation, fibre)).toBe(wanted);
  });

  it('names only terms that the vocabularies hold', () => {
    const has = (terms: readonly { readonly id: string }[], id: string) =>
      terms.some((term) => term.id === id);
    for (const { preservation, fibres: named } of SURVIVAL) {
      expect(has(preservations.terms, preservation), preservation).toBe(true);
      for (const id of Object.keys(named)) expect(has(fibres.terms, id), id).toBe(true);
    }
  });
});

describe('an absence that says nothing', () => {
  it('plant fibre from a bog, with wool still saying something', () => {
    const [line, ...more] = survivalLines(crossed(bog));
    expect(line).toBe(
      'Plant fibre (flax) would be lost in a bog: its absence from Ysketh Pans (in a bog, 12 of 12) says nothing; that of animal fibre would say something.',
    );
    expect(more).toEqual([]);
  });

  it('wool from alkaline water, in all three questions and either way round', () => {
    const wanted =
      'Animal fibre (sheep wool) would be lost in alkaline water: its absence from Ysketh Pans (in alkaline water, 12 of 12) says nothing; that of plant fibre would say something.';
    for (const words of [crossed(alkaline), crossed(alkaline, true), likened(alkaline), stood(alkaline)])
      expect(survivalLines(words)).toEqual([wanted]);
  });

  it('but flax absent from alkaline water, or wool from a bog, does say something', () => {
    for (const rows of [
      beside(rowsAt('Ysketh Pans', 'alkaline', { wool: 12 })),
      beside(rowsAt('Ysketh Pans', 'bog', { flax: 12 })),
    ])
      for (const words of [crossed(rows), likened(rows), stood(rows)]) {
        expect(survivalLines(words)).toEqual([]);
        expect(allOf(words).join(' ')).not.toMatch(/would be lost/);
      }
  });

  it('is not claimed where the acidity or the preservation is not known of nearly all', () => {
    for (const third of [
      rowsAt('Ysketh Pans', 'waterlogged', { wool: 12 }),
      rowsAt('Ysketh Pans', '', { wool: 12 }),
      [...rowsAt('Ysketh Pans', 'bog', { wool: 10 }), ...rowsAt('Ysketh Pans', '', { wool: 2 })],
    ])
      expect(survivalLines(crossed(beside(third)))).toEqual([]);
    const nearly = [
      ...rowsAt('Ysketh Pans', 'bog', { wool: 18 }),
      ...rowsAt('Ysketh Pans', 'charred', { wool: 2 }),
    ];
    expect(survivalLines(crossed(beside(nearly)))[0]).toMatch(/18 of 20\) says nothing/);
  });

  it('a little that is there all the same says nothing of how much there was', () => {
    const [line] = survivalLines(crossed(beside(rowsAt('Ysketh Pans', 'bog', { wool: 11, flax: 1 }))));
    expect(line).toMatch(
      /Ysketh Pans \(in a bog, 12 of 12\) has little of it \(1 of 12 counted\) says nothing/,
    );
  });
});

describe('what could not survive is never fewer or least without a word', () => {
  it.each([
    ['bog', bog],
    ['alkaline', alkaline],
  ])('%s', (_, rows) => {
    const words = [crossed(rows), likened(rows), stood(rows)];
    const lines = words.flatMap(allOf);
    const called = lines.filter((line) => /Ysketh Pans/.test(line) && /\b(?:least|fewer)\b/.test(line));
    expect(called.length).toBeGreaterThan(2);
    for (const line of called) expect(line).toMatch(/would be lost|could survive/);
  });

  it('the cells of a crosstab say it of the fibre that is lost', () => {
    const evidence = crossed(bog).because.join(' ');
    expect(evidence).toMatch(/fewer flax in Ysketh Pans where plant fibre would be lost/);
    expect(evidence).toMatch(/more sheep wool in Ysketh Pans where plant fibre would be lost/);
  });

  it('names the place where rows are fibres', () => {
    expect(crossed(bog, true).because.join(' ')).toMatch(
      /fewer Ysketh Pans in flax though plant fibre would be lost at Ysketh Pans/,
    );
  });

  it('says it of both places of the least alike', () => {
    const both = [...bog, ...rowsAt('Pell', 'alkaline', { flax: 16 })];
    expect(likened(both).because[0]).toMatch(
      /least alike Pell and Ysketh Pans .*, though animal fibre would be lost at Pell and plant fibre at Ysketh Pans\.$/,
    );
  });
});
