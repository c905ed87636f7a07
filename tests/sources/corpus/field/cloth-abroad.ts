import { type FieldTable, lines } from '../field-table.ts';

/** Cloth and the tools to make it; all invented. */
export const CLOTH_ABROAD: readonly FieldTable[] = [
  {
    sort: 'cords with knots',
    text: lines(
      'Cord,Attachment,Position (cm),Length (cm),Twist,Fiber,Color,Knots,Value,Termination',
      'P1,recto,1.5,42,S,cotton,AB,3,112,knotted',
      'P1s1,u,12,20.5,S,cotton,W,2,20,broken',
      'P2,verso,3,38,Z,camelid,MB,1,7,cut',
    ),
    finds: 3,
    right: {
      Cord: ['fragment', null],
      Attachment: null,
      'Position (cm)': null,
      'Length (cm)': 'length',
      Twist: ['twist1', 'ply1'],
      Fiber: 'fibre',
      Color: 'colour',
      // How many, and not of which kind.
      Knots: null,
      Value: null,
      Termination: null,
    },
  },
  {
    sort: 'loom weights',
    text: lines(
      'Inv. no.,House,Shape,Mass (g),Height (mm),Max. diameter (mm),Hole diameter (mm),Thickness (mm),Complete',
      'W1,3,pyramidal,310,92,61,11,48,Y',
      'W2,3,disc,145,,70,9,24,Y',
      'W3,5,pyramidal,>220,80,58,10,45,N',
    ),
    finds: 3,
    right: {
      'Inv. no.': 'catalogueNumber',
      House: [null, 'context'],
      Shape: null,
      'Mass (g)': 'weight',
      'Height (mm)': null,
      'Max. diameter (mm)': null,
      'Hole diameter (mm)': null,
      'Thickness (mm)': 'thickness',
      Complete: null,
    },
  },
];
