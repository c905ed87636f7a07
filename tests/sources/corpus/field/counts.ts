import { type FieldTable, lines } from '../field-table.ts';

/** Counts, codes and series; all invented. */
export const COUNTS: readonly FieldTable[] = [
  {
    sort: 'counts with totals',
    text: lines(
      'Site,jar,bowl,beaker,lid,Total',
      'Holm,12,4,0,1,17',
      'Pell,3,9,2,0,14',
      'Vell,20,1,5,3,29',
      'Total,35,14,7,4,60',
    ),
    finds: 3,
    right: { Site: 'site', jar: null, bowl: null, beaker: null, lid: null, Total: null },
  },
  {
    sort: 'counts with halves, German',
    text: lines(
      'Fundstelle;Schale;Topf;Becher;Summe',
      'Oberwies;12;4,5;0;16,5',
      'Unterwies;3;9;2,5;14,5',
      'Hinterau;7;1;1;9',
      'Summe;22;14,5;3,5;40',
    ),
    finds: 3,
    right: { Fundstelle: 'site', Schale: null, Topf: null, Becher: null, Summe: null },
  },
  {
    sort: 'shares with a base',
    text: lines(
      'Sample,N,barley %,emmer %,flax %',
      'S1,40,50.0,37.5,12.5',
      'S2,80,25.0,60.0,15.0',
      'S3,20,10.0,80.0,10.0',
    ),
    finds: 3,
    right: {
      Sample: ['fragment', null],
      N: [null, 'quantity'],
      'barley %': null,
      'emmer %': null,
      'flax %': null,
    },
  },
  {
    sort: 'a code book',
    text: lines('variable,code,label', 'WEAVE,1,tabby', 'WEAVE,2,twill', 'SPIN,1,Z', 'SPIN,2,S'),
    finds: 4,
    right: { variable: null, code: null, label: null },
  },
];
