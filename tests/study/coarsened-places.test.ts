import { describe, expect, it } from 'vitest';
import { dataPackage } from '../../src/report/data-package.ts';
import { renderReport } from '../../src/report/html.ts';
import { checkStudy } from '../../src/study/load.ts';
import { prepareStudy } from '../../src/study/prepare.ts';
import { serializeResults } from '../../src/study/results/json.ts';
import { analyse } from '../../src/study/run-study.ts';

/** Exact coordinates of two places; where they are coarsened, no door hands them on. */
const CAVE = ['53.12345', '8.76543'];
const TOWN = ['50.54321', '7.34567'];

/** The same cave in the remarks, as people write it; another reading than that of its columns. */
const SAID = [
  'at 53.12388 N 8.76512 E',
  'at 53°7′24″ N',
  'at E 3456789 N 5891234',
  'at 3456789 / 5891234',
  'at 53.1 ° N',
  'at 53.14 N, 8.77 E',
  'at 53.14, 8.77',
  'at lat. 53.1, long. 8.7',
  'Easting 34567, Northing 58912',
  'RW 3456711 HW 5891211',
  'grid ref. NS 12345 67890',
  'MGRS 32UMC4567889123',
  'plus code 9F5C5Q7R+2G',
  'geohash u1hj2k9w',
  'at ///table.lamp.spoon',
  'x = 34571, y = 58971',
];
const SECRET = [
  '53.12388',
  '8.76512',
  '53°7',
  '7′24',
  '3456789',
  '5891234',
  '53.1 °',
  '53.14',
  '8.77',
  '53.1,',
  'long. 8.7',
  '34567,',
  '58912',
  '3456711',
  '5891211',
  '12345 67890',
  '4567889123',
  '5Q7R',
  'u1hj2k9w',
  'table.lamp',
  '34571',
  '58971',
];

const HEAD = 'Cat. no.,Item,Site,Structure,Row spacing (mm),Latitude,Longitude,Restriction,Remarks,Seen from';
const finds = (site: string, [latitude, longitude]: readonly string[], restriction: string) =>
  Array.from(
    { length: SAID.length },
    (_, i) =>
      `${site}${i},${site}i${i},${site},${i % 2 ? 'tabby' : 'open twining'},${20 + i},${latitude},${longitude}${i === 3 ? '?' : ''},${restriction},"seen ${SAID[i % SAID.length]}, no. 20451887, 3.25 x 4.50 cm",${i < 4 ? '"53.15, 8.79"' : 'the road'}`,
  );
/** A line with a cell too many is set aside, and its place is as unguarded as those of its source. */
const LONG = 'X1,X1,Cave,tabby,20,53.12388,8.76512,unguarded,no,53.12388,8.76512,more,and more';
const table = `${HEAD}\n${[...finds('Cave', CAVE, 'unguarded'), LONG, ...finds('Town', TOWN, 'open')].join('\n')}\n`;
const files = new Map(
  Object.entries({
    'finds.csv': table,
    'finds.profile.json': JSON.stringify({ columns: [{ header: 'Seen from', attribute: 'seenFrom' }] }),
  }).map(([name, text]) => [name, new TextEncoder().encode(text)]),
);

function everythingHandedOn(more: object) {
  const study = checkStudy(
    {
      title: 'Two places',
      sources: [{ file: 'finds.csv', profile: 'finds.profile.json' }],
      attributes: [{ id: 'seenFrom', label: 'Seen from', block: 'context', scale: 'nominal' }],
      analyses: [
        { id: 'alike', kind: 'similarity', assemblages: 'site', of: 'structure' },
        { id: 'where', kind: 'map', assemblages: 'site', of: 'structure' },
        { id: 'numbers', kind: 'summary', of: ['latitude', 'longitude'], by: ['site'] },
      ],
      ...more,
    },
    'study.json',
  );
  const prepared = prepareStudy(study, files);
  const results = analyse(prepared, files, {
    onFault: (_, fault) => {
      throw fault;
    },
  });
  const handed = [
    serializeResults(results),
    renderReport({ results, prepared, parts: {} }),
    JSON.stringify(prepared.ledger),
    ...[...dataPackage(prepared, results)].map(([, text]) => text),
  ].join('\n');
  return { results, prepared, handed };
}

describe('coarsened places', () => {
  it('an unguarded place keeps its name, and its coordinates leave by no door', () => {
    const { handed, prepared } = everythingHandedOn({});
    expect(handed).toContain('Cave');
    for (const exact of CAVE) expect(handed).not.toContain(exact);
    const remarks = prepared.fragments.columns.get('remarks')?.raw ?? [];
    expect(remarks).toHaveLength(2 * SAID.length);
    for (const exact of SECRET) expect(remarks.slice(0, SAID.length).join()).not.toContain(exact);
    for (const said of remarks.slice(0, SAID.length))
      expect(said).toMatch(/^seen .*coarsened.*, no\. 20451887, 3\.25 x 4\.50 cm$/);
    for (const exact of SECRET) expect(remarks.slice(SAID.length).join()).toContain(exact);
    for (const exact of TOWN) expect(handed).toContain(exact);
    // Wordings that count as kinds: those of coarsened rows alone are masked.
    const seen = prepared.fragments.columns.get('seenFrom');
    if (seen?.kind !== 'term') throw new Error('no wordings');
    expect([...seen.levels].sort()).toEqual(['(coarsened)', '53.15, 8.79', 'the road']);
    expect(seen.levels[seen.codes[0]!]).toBe('(coarsened)');
    expect(seen.levels[seen.codes[SAID.length]!]).toBe('53.15, 8.79');
    const latitude = prepared.fragments.columns.get('latitude');
    if (latitude?.kind !== 'numeric') throw new Error('no latitude');
    // 0.1 of a degree where nothing else is said.
    expect(latitude.low[0]).toBeCloseTo(53.1, 9);
    expect(latitude.high[0]).toBeCloseTo(53.2, 9);
    expect(latitude.raw[0]).toBe('');
  });

  it('all places, where the study asks for it', () => {
    const { handed } = everythingHandedOn({ coarsenPlaces: 50 });
    for (const exact of [...CAVE, ...TOWN, ...SECRET]) expect(handed).not.toContain(exact);
    expect(handed).toContain('Town');
  });
});

describe('numbers of finds', () => {
  const numbered = [
    'Fragment,Item,Cat. no.,Site,Structure,Latitude,Longitude,Restriction,Published in,Remarks',
    ...Array.from(
      { length: 6 },
      (_, i) =>
        `${203400 + i},EA ${71120 + i},${903400 + i},Cave 1,tabby,53.12345,8.76543,unguarded,"Orrin 1987, 120034","inv. 711200, lies at ${345670 + i}"`,
    ),
  ].join('\n');

  it('are no coordinates, however long: the finds of a coarsened place keep theirs', () => {
    const study = checkStudy(
      { title: 'Numbered', sources: [{ file: 'finds.csv' }], analyses: [] },
      'study.json',
    );
    const { fragments, ledger } = prepareStudy(
      study,
      new Map([['finds.csv', new TextEncoder().encode(numbered)]]),
    );
    const raw = (id: string) => fragments.columns.get(id)?.raw[0];
    expect(fragments.id[0]).toBe('203400');
    expect(['fragment', 'item', 'catalogueNumber', 'site'].map(raw)).toEqual([
      '203400',
      'EA 71120',
      '903400',
      'Cave 1',
    ]);
    expect(raw('citation')).toBe('Orrin 1987, 120034');
    expect(raw('remarks')).toBe('inv. 711200, lies at (coarsened)');
    expect(fragments.columns.get('latitude')?.raw[0]).toBe('');
    expect(JSON.stringify(ledger)).not.toMatch(/34567\d|53\.12345/);
  });
});
