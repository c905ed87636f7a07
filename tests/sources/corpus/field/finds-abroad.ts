import { type FieldTable, lines } from '../field-table.ts';

/** Finds that are no cloth, graves and places; all invented. */
export const FINDS_ABROAD: readonly FieldTable[] = [
  {
    sort: 'burials, Norwegian',
    text: lines(
      'Grav;Kjønn;Alder;Lengde (cm);Bredde (cm);Sverd;Perler',
      '1;K;voksen;210;80;0;12',
      '2;M;voksen;230;95;1;0',
      '3;?;barn;120;60;0;3',
    ),
    finds: 3,
    right: {
      Grav: 'context',
      Kjønn: null,
      Alder: null,
      // The size of the grave: whether it is a size of the find is for the reader to say.
      'Lengde (cm)': ['length', null],
      'Bredde (cm)': ['width', null],
      Sverd: null,
      Perler: null,
    },
  },
  {
    sort: 'metal analyses',
    text: lines(
      'Lab no.,Object,Type,Cu,Sn,Pb,As,Zn,Total,Date of analysis',
      'L101,axe,B,88.1,10.9,0.4,0.2,<0.05,99.6,2011-04-02',
      'L102,pin,A,91.2,7.4,0.9,n.d.,<0.05,99.5,2011-04-02',
      'L103,axe,B,87.0,12.1,0.3,0.3,0.1,99.8,2011-04-05',
    ),
    finds: 3,
    right: {
      // A number of a laboratory, and of no radiocarbon date.
      'Lab no.': [null, 'fragment', 'catalogueNumber'],
      Object: [null, 'recordedUse'],
      Type: null,
      Cu: null,
      Sn: null,
      Pb: null,
      As: null,
      Zn: null,
      Total: null,
      'Date of analysis': ['recordedOn', null],
    },
  },
  {
    sort: 'radiocarbon dates',
    text: lines(
      'Lab code,Site,Sample,Material,BP,±,d13C,cal from,cal to',
      'Xy-101,Holm,pit 4,charcoal,2450,30,-25.1,-750,-410',
      'Xy-102,Holm,pit 9,barley,2390,35,-24.0,-540,-390',
      'Xy-110,Pell,post 2,bone,2510,40,-20.2,-790,-510',
    ),
    finds: 3,
    right: {
      'Lab code': ['radiocarbon', 'fragment', null],
      Site: 'site',
      Sample: [null, 'fragment'],
      Material: null,
      BP: [null, 'radiocarbon', 'date'],
      '±': null,
      d13C: null,
      'cal from': ['date', 'dateFrom', null],
      'cal to': ['date', 'dateTo', null],
    },
  },
  {
    sort: 'beads, Italian',
    text: lines(
      'Tomba;Vago n.;Materiale;Colore;Diametro (mm);Foro (mm);Lunghezza (mm);Decorazione',
      'T 2;1;vetro;blu;8,1;2,0;6,2;occhi',
      'T 2;2;ambra;;11,4;3,1;9,0;',
      'T 7;3;vetro;verde;6,0;1,8;4,4;spirale',
    ),
    finds: 3,
    right: {
      Tomba: 'context',
      'Vago n.': [null, 'fragment'],
      Materiale: null,
      Colore: 'colour',
      'Diametro (mm)': null,
      'Foro (mm)': null,
      'Lunghezza (mm)': 'length',
      Decorazione: 'decoration',
    },
  },
  {
    sort: 'timbers',
    text: lines(
      'Sample;Structure;Species;Rings;Sapwood;First ring;Last ring;Felling',
      'D1;jetty;oak;92;12;1012;1103;winter',
      'D2;jetty;oak;61;0;1030;1090;',
      'D3;house 2;ash;48;;1055;1102;spring',
    ),
    finds: 3,
    right: {
      Sample: [null, 'fragment'],
      // What the timber belongs to.
      Structure: [null, 'context'],
      Species: null,
      Rings: null,
      Sapwood: null,
      'First ring': null,
      'Last ring': null,
      Felling: null,
    },
  },
];
