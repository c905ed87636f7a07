import { type FieldTable, lines } from '../field-table.ts';

/** Headers cut short, contracted, or of two names; a remark that holds the sign between cells. All invented. */
export const HEADERS_CUT_SHORT: readonly FieldTable[] = [
  {
    sort: 'textiles, English, contracted headers',
    text: lines(
      'Tex. no.,Locality,Trench/context,Weave,Warp ct. /cm,Weft ct. /cm,Spin warp,Spin weft,L x W (cm),Remarks',
      'T1,Farhope,U1,tabby,11,9,z,z,3 x 2,wet, brittle',
      'T2,Farhope,U1,2/2 twill,15,14,z,s,4 x 3,edge kept',
      'T3,Farhope,U2,tabby,8,8,s,s,2 x 2,',
      'T4,Dunmere,U9,tabby,20,8,z,z,5 x 1,seam',
      'T5,Dunmere,U9,2/2 twill,16,14,z,s,5 x 2,dark stain',
      'T6,Dunmere,U9,tabby,12,11,z,z,6 x 4,folded, torn',
      'T7,Farhope,U2,tabby,9,9,s,s,3 x 3,loose threads',
    ),
    finds: 7,
    right: {
      'Tex. no.': ['fragment', null],
      Locality: 'site',
      'Trench/context': 'context',
      Weave: 'structure',
      'Warp ct. /cm': ['density1', null],
      'Weft ct. /cm': ['density2', null],
      'Spin warp': 'twist1',
      'Spin weft': 'twist2',
      'L x W (cm)': ['length', 'width', null],
      Remarks: 'remarks',
    },
  },
  {
    sort: 'Geflechte, German, compounds cut short',
    text: lines(
      'Obj.-Nr.;Fundort;Technik;Reihen-Abst. (mm);Kettabst. (mm);Fadendurchm. Kette (mm);Site/Phase',
      '1;Altenried;offene Zwirnbindung;12;6;1,5;Altenried I',
      '2;Altenried;dichte Zwirnbindung;4,5;4;1,2;Altenried II',
      '3;Wiesbach;offene Zwirnbindung;10;6,5;1,4;Wiesbach I',
      '4;Wiesbach;dichte Zwirnbindung;4;4;1,1;Wiesbach I',
    ),
    finds: 4,
    right: {
      'Obj.-Nr.': 'fragment',
      Fundort: 'site',
      Technik: 'structure',
      'Reihen-Abst. (mm)': 'rowSpacing',
      'Kettabst. (mm)': ['density1', null],
      'Fadendurchm. Kette (mm)': 'diameter1',
      'Site/Phase': null,
    },
  },
  {
    sort: 'fragmentos, Spanish, compounds cut short',
    text: lines(
      'Nº cat.;Sitio;Ligamento;Dens. urd.;Dens. tra.;Tors. urd.;Tors. tra.;Long. máx. (cm)',
      '31;Cerralva;tafetán;11;10;Z;Z;4',
      '32;Cerralva;sarga 2/2;15;14;Z;S;3,5',
      '33;Peñarosa;tafetán;8;8;S;S;6',
    ),
    finds: 3,
    right: {
      'Nº cat.': ['catalogueNumber', 'fragment'],
      Sitio: 'site',
      Ligamento: 'structure',
      'Dens. urd.': 'density1',
      'Dens. tra.': 'density2',
      'Tors. urd.': 'twist1',
      'Tors. tra.': 'twist2',
      'Long. máx. (cm)': 'length',
    },
  },
];
