import { describe, expect, it } from 'vitest';
import { compoundNames } from '../../../src/sources/names/compound-names.ts';
import { nameDecision } from '../../../src/sources/names/name-decision.ts';

const made = (attribute: string, names: readonly string[], decided: unknown[] = []) =>
  compoundNames(
    attribute,
    new Map(names.map((name) => [name, 3])),
    decided.map((one) => nameDecision.parse(one)),
  ).map(({ name, of }) => [name, ...of]);

describe('a name made up of other names', () => {
  // The forms are those that catalogues write: common practice, no source.
  it.each([
    ['site', ['Harrow / Kelder', 'Harrow', 'Kelder'], []],
    ['site', ['Harrow Strand and Kelder', 'Harrow', 'Kelder'], []],
    ['site', ['Harrow or Kelder', 'Harrow Strand', 'Kelder'], []],
    ['site', ['Harrow; Kelder', 'Harrow', 'Kelder'], []],
    ['period', ['E/L', 'Early', 'Late'], ['Early', 'Late']],
    ['period', ['früh-spät', 'früh', 'spät'], []],
    ['period', ['Früh bis Spät', 'Early', 'Late'], ['Early', 'Late']],
    ['period', ['Early/Late', 'früh', 'spät'], ['früh', 'spät']],
    ['phase', ['Phase 1/2', 'Phase 1', 'Phase 2'], []],
    ['phase', ['1-2', '1', '2'], []],
    ['phase', ['Iron Age I–II', 'Iron Age I', 'Iron Age II'], []],
    ['site', ['North and South Tazzimbe', 'North Tazzimbe', 'South Tazzimbe'], []],
    ['recorder', ['A. Miller & B. Stone', 'A. Miller', 'B. Stone'], []],
    ['site', ['Harrow und Kelder', 'Harrow', 'Kelder'], []],
  ])('%s %j', (attribute, names, of) => {
    const [name, ...parts] = names;
    expect(made(attribute, names)).toEqual([[name, ...(of.length > 0 ? of : parts)]]);
  });

  it.each([
    ['both parts are to be names', ['Harrow / Kelder', 'Harrow', 'Ness']],
    ['a hyphen inside a name', ['Stoke-Holm', 'Stoke', 'Ness']],
    ['a word between, one part unknown', ['Sand and Ness', 'Ness', 'Holm']],
    ['a longer name', ['Harrow Strand', 'Harrow', 'Kelder']],
    ['initials of nothing', ['X/Y', 'Early', 'Late']],
  ])('is none: %s', (_, names) => {
    expect(made('site', names)).toEqual([]);
  });

  it('is what somebody has said', () => {
    const names = ['Harrow / Kelder', 'Harrow', 'Kelder'];
    const site = (more: object) => [{ attribute: 'site', ...more }];
    expect(made('site', names, site({ name: 'Harrow / Kelder', not: ['Harrow', 'Kelder'] }))).toEqual([]);
    const counts = new Map(names.map((name) => [name, 3]));
    const said = nameDecision.parse({
      attribute: 'site',
      name: 'Harrow / Kelder',
      oneOf: ['Harrow', 'Kelder'],
    });
    expect(compoundNames('site', counts, [said])).toMatchObject([{ settled: true, records: 3 }]);
    expect(compoundNames('period', counts, [said])).toMatchObject([{ settled: false }]);
  });
});
