import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { checkClaims } from '../../../src/analyses/claims/compute.ts';
import { createRandom } from '../../../src/numerics/foundation/random.ts';
import { checkStudy, loadStudy, studyFiles } from '../../../src/study/load.ts';
import { prepareStudy } from '../../../src/study/prepare.ts';
import { claimsBytes, type Row } from './claims.ts';

/** Figures of other records than the claim says: the open table of penguins, counted here by the lines of its file. */
const folder = new URL('../../../datasets/open/', import.meta.url);
const study = loadStudy(readFileSync(new URL('penguins-study.json', folder), 'utf8'), 'penguins-study.json');
const { fragments, records, register } = prepareStudy(
  study,
  new Map(
    studyFiles(study).map((file) => [file, new Uint8Array(readFileSync(new URL(file, folder)))] as const),
  ),
);
const [head, ...lines] = readFileSync(new URL('penguins.csv', folder), 'utf8').trim().split(/\r?\n/);
const birds = lines.map((line) => line.split(','));
const at = (name: RegExp) => head.split(',').findIndex((one) => name.test(one));
const [species, island, mass] = [at(/species/i), at(/island/i), at(/mass/i)];

function judged(row: Row) {
  return checkClaims(
    new Map([['c.csv', claimsBytes([{ ...row, id: 'a' }])]]),
    { file: 'c.csv', tables: [] },
    createRandom(1),
    { fragments, records, register, unit: study.unit },
  ).judged[0];
}

const massesOf = (wanted: (bird: readonly string[]) => boolean) =>
  birds
    .filter(wanted)
    .map((bird) => Number(bird[mass]))
    .filter((one) => one > 0);
const mean = (list: readonly number[]) => list.reduce((sum, one) => sum + one, 0) / list.length;

describe('a figure of other records than it says', () => {
  const ofDream = (bird: readonly string[]) => bird[species] === 'Adelie' && bird[island] === 'Dream';

  it('names the condition that was left out', () => {
    const all = mean(massesOf((bird) => bird[species] === 'Adelie'));
    const one = judged({
      quantity: 'mean',
      attribute: 'bodyMass',
      select: 'species in Adelie; island in Dream',
      printed: all.toFixed(2),
    });
    expect(one.verdict).toBe('differs');
    expect(one.explained).toBe('the selection without "island in Dream"');
  });

  it('names the limit that was not taken in', () => {
    const beyond = massesOf((bird) => Number(bird[mass]) > 4000).length;
    const within = massesOf((bird) => Number(bird[mass]) >= 4000).length;
    expect(beyond).toBeLessThan(within);
    const claim = (printed: number) =>
      judged({ quantity: 'n', attribute: 'bodyMass', select: 'bodyMass >= 4000', printed: String(printed) });
    expect(claim(within).verdict).toBe('agrees');
    expect(claim(beyond).explained).toBe('more than 4000 instead of at least 4000');
  });

  it('names the one kind that was left out of several', () => {
    const two = mean(massesOf((bird) => bird[island] === 'Dream' || bird[island] === 'Biscoe'));
    const one = judged({
      quantity: 'mean',
      attribute: 'bodyMass',
      select: 'island in Dream | Biscoe | Torgersen',
      printed: two.toFixed(3),
    });
    expect(one.explained).toContain('"Torgersen" left out');
  });

  it('names the one record that was taken in', () => {
    const own = massesOf(ofDream);
    // Of those that fail one of the two conditions, a bird whose mass no other of them has.
    const near = birds.filter(
      (bird) =>
        !ofDream(bird) && (bird[species] === 'Adelie' || bird[island] === 'Dream') && Number(bird[mass]) > 0,
    );
    const alone = near.find((bird) => near.filter((other) => other[mass] === bird[mass]).length === 1);
    const one = judged({
      quantity: 'mean',
      attribute: 'bodyMass',
      select: 'species in Adelie; island in Dream',
      printed: mean([...own, Number(alone?.[mass])]).toFixed(4),
    });
    expect(one.explained).toMatch(/^one record more: /);
  });

  it('names nothing where nothing fits', () => {
    const one = judged({
      quantity: 'mean',
      attribute: 'bodyMass',
      select: 'species in Adelie; island in Dream',
      printed: '9999.99',
    });
    expect([one.verdict, one.explained]).toEqual(['differs', '']);
  });
});

describe('a figure of other attributions than it says', () => {
  // Invented records, few enough to be counted by hand.
  const fibres = [
    ['lime bast', 4],
    ['lime bast', 7],
    ['lime bast?', 12],
    ['willow bast', 9],
    ['tree bast', 31],
    ['wool', 2],
  ] as const;
  const invented = checkStudy(
    {
      title: 'invented',
      seed: 1,
      unit: 'fragment',
      sources: [{ file: 'a.csv', profile: 'a.profile.json' }],
      analyses: [],
    },
    'invented',
  );
  const bytes = (text: string) => new TextEncoder().encode(text);
  const prepared = prepareStudy(
    invented,
    new Map([
      [
        'a.csv',
        bytes(`id,fibre,spacing\n${fibres.map(([fibre, mm], i) => `${i},${fibre},${mm}`).join('\n')}\n`),
      ],
      [
        'a.profile.json',
        bytes(
          JSON.stringify({
            encoding: 'utf-8',
            delimiter: ',',
            decimal: '.',
            columns: [
              { header: 'id', attribute: 'fragment' },
              { header: 'fibre', attribute: 'fibre' },
              { header: 'spacing', attribute: 'rowSpacing', unit: 'mm' },
            ],
          }),
        ),
      ],
    ]),
  );
  const explained = (printed: string) => {
    const [one] = checkClaims(
      new Map([
        [
          'c.csv',
          claimsBytes([
            { id: 'a', quantity: 'mean', attribute: 'rowSpacing', select: 'fibre in limeBast', printed },
          ]),
        ],
      ]),
      { file: 'c.csv', tables: [] },
      createRandom(1),
      {
        fragments: prepared.fragments,
        records: prepared.records,
        register: prepared.register,
        unit: invented.unit,
      },
    ).judged;
    return [one.verdict, one.explained];
  };

  it('is right of all that are called so, the doubtful too', () => {
    expect(explained('7.67')).toEqual(['agrees', '']);
  });

  it('names the certain ones', () => {
    expect(explained('5.50')).toEqual(['differs', 'only certain attributions of "fibre in limeBast"']);
  });

  it('names the broader term', () => {
    // (4 + 7 + 12 + 9 + 31)/5 = 12.6.
    expect(explained('12.60')).toEqual([
      'differs',
      'everything within "treeBast" instead of "fibre in limeBast"',
    ]);
  });
});
