/**
 * Small tables made in the image of those that others keep about finds, graves, plants, sherds and cloth: all are
 * invented. `right` gives the attribute that each header truly names: an id, or null where the table means something
 * that Thrum has no attribute for (then any reading would be wrong). A header that is not listed is null.
 */
export interface CorpusTable {
  readonly sort: string;
  readonly text: string;
  readonly right: Readonly<Record<string, string | null>>;
}

const table = (
  sort: string,
  head: string,
  rows: readonly string[],
  right: CorpusTable['right'] = {},
): CorpusTable => ({
  sort,
  text: `${head}\n${rows.join('\n')}\n`,
  right,
});

const METAL: readonly string[] = [
  'A1,Ottmere,12.5,3.1,bronze,0',
  'A2,Ottmere,14.1,2.9,iron,2',
  'A3,Pell,9.8,3.4,bronze,3',
  'A4,Pell,11.0,3.0,bronze,1',
  'A5,Vell,13.3,2.2,iron,0',
  'A6,Vell,10.2,2.7,iron,2',
];
const GRAVES: readonly string[] = [
  '1,adult,male,4,Y',
  '2,juvenile,female,2,N',
  '3,adult,female,7,N',
  '4,infant,?,0,Y',
  '5,adult,male,3,Y',
  '6,adult,female,1,N',
];
const CLOTH: readonly string[] = [
  'T1,Holm,tabby,14,12,0.4',
  'T2,Holm,twill 2/2,18,14,0.3',
  'T3,Pell,tabby,12,11,0.5',
  'T4,Pell,twined,5,3,1.2',
];
const SHERDS: readonly string[] = ['Holm,12,0,4,7', 'Pell,3,5,0,2', 'Vell,8,1,1,0'];

export const CORPUS: readonly CorpusTable[] = [
  // Exact names beside names that only contain them.
  ...[
    'haft length',
    'Blade length',
    'Rim width',
    'socket width',
    'LengthOfTang',
    'Neck thickness',
    'foot weight',
  ].map((header) =>
    table('a longer name beside an exact one', `No.,Site,Length,${header},Metal,Grade`, METAL, {
      'No.': 'fragment',
      Site: 'site',
      Length: 'length',
    }),
  ),
  ...['Age', 'age class', 'Âge', 'Alter'].map((header) =>
    table('ages of life', `grave,${header},sex,goods,disturbed`, GRAVES, { grave: 'context' }),
  ),
  // Codes are no measurements.
  ...['Length', 'Width', 'Thickness', 'Länge'].map((header) =>
    table('grades under the name of a measure', `ID,Place,bore,rim,metal,${header}`, METAL, {
      ID: 'fragment',
    }),
  ),
  // Yes and no are no places, kinds or periods.
  ...['context', 'Period', 'Use', 'Layers', 'Part'].map((header) =>
    table('yes and no under a name', `nr,who,sex,goods,${header}`, GRAVES, { nr: 'fragment' }),
  ),
  // Short and general words.
  ...['SP', 'N1', 'FK', 'Form', 'Points', 'type', 'reference', 'level', 'US', 'EP', 'lag', 'Stage'].map(
    (header) =>
      table('short and general words', `ID,Site,${header},bore,metal,grade`, METAL, {
        ID: 'fragment',
        Site: 'site',
      }),
  ),
  // Names of vocabularies over other things.
  ...['Taxon', 'Deposit', 'condition', 'Material', 'Fabric', 'Technique', 'Stitch', 'Edge', 'Core'].map(
    (header) =>
      table('names of vocabularies over other things', `id,Site,bore,rim,${header},n`, METAL, {
        id: 'fragment',
        Site: 'site',
      }),
  ),
  // Slips that are other words.
  ...['size', 'lage', 'Mother', 'warning', 'drivers', 'cord', 'state', 'entry'].map((header) =>
    table('words a letter away', `find,${header},bore,rim,alloy,grade`, METAL, { find: 'fragment' }),
  ),
  // Cloth is read as cloth, weak words too.
  table('cloth', 'Textile no.,Site,Weave,Warp threads/cm,Weft threads/cm,Yarn diameter (mm)', CLOTH, {
    'Textile no.': 'fragment',
    Site: 'site',
    Weave: 'structure',
    'Warp threads/cm': 'density1',
    'Weft threads/cm': 'density2',
    'Yarn diameter (mm)': 'diameter1',
  }),
  table('cloth', 'Fundnr.,Fundort,Bindung,Kettfäden/cm,Schussfäden/cm,Dm Kette (mm)', CLOTH, {
    'Fundnr.': 'fragment',
    Fundort: 'site',
    Bindung: 'structure',
    'Kettfäden/cm': 'density1',
    'Schussfäden/cm': 'density2',
    'Dm Kette (mm)': 'diameter1',
  }),
  table('cloth', 'N° inv.,Site,Technique,Fils/cm chaîne,Fils/cm trame,Ø fil', CLOTH, {
    'N° inv.': 'catalogueNumber',
    Site: 'site',
    Technique: 'structure',
    'Fils/cm chaîne': 'density1',
    'Fils/cm trame': 'density2',
    'Ø fil': 'diameter1',
  }),
  table(
    'cloth',
    'Find no.,Site,Structure,Row spacng (mm)',
    ['1,Holm,twined,35', '2,Holm,twined,28', '3,Pell,twined,40'],
    {
      'Find no.': 'fragment',
      Site: 'site',
      Structure: 'structure',
      'Row spacng (mm)': 'rowSpacing',
    },
  ),
  table(
    'cloth',
    'Find no.,Site,Fibre,Condition',
    ['1,Holm,wool,charred', '2,Holm,linen,waterlogged', '3,Pell,wool,mineralised'],
    {
      'Find no.': 'fragment',
      Site: 'site',
      Fibre: 'fibre',
      Condition: 'preservation',
    },
  ),
  // Counts.
  ...['Freq', 'Anzahl', 'count', 'quantity', 'Effectif'].map((header) =>
    table(
      'counts in long form',
      `Site,Kind,${header}`,
      ['Holm,disc,3', 'Holm,cone,1', 'Pell,disc,0.5', 'Pell,cone,2'],
      { Site: 'site', [header]: 'quantity' },
    ),
  ),
  table('counts by numbered types', 'Site,1,2,3,4', SHERDS, { Site: 'site' }),
  table('counts by years', ',1950,1960,1970,1980', SHERDS, {}),
  // Dates and places.
  table('dates', 'Site,from,to', ['Holm,-300,-9', 'Pell,-50,50', 'Vell,100,200'], {
    Site: 'site',
    from: 'date',
    to: 'date',
  }),
  table('calendar days', 'Site,Date,Rim', ['Holm,2011-05-03,12', 'Pell,2012-06-01,14', 'Vell,2012-07-09,9'], {
    Site: 'site',
  }),
  table(
    'coordinates',
    'Site,Latitude,Longitude',
    ["Holm,45°30'N,7°15'E", "Pell,45°10'N,7°05'E", "Vell,44°50'N,6°55'E"],
    { Site: 'site', Latitude: 'latitude', Longitude: 'longitude' },
  ),
];
