import type { AttributeDefinition } from '../definition.ts';

/** Both systems alike: what can be ordered by count where nobody told which is the warp. */
const BOTH_ALIKE = ['woven', 'plaited', 'matting'];

const PEIRCE_ANGLE = 'geometry of a helix on a round thread (tan angle = pi w T / 1000)';
const EMERY_CLASSES =
  'Emery 1966, The Primary Structures of Fabrics (habit of cut points after her, from memory)';

/** What follows from counts, widths and angles about the cloth and its yarns; filled by fragments/derive.ts. */
export const YARN_DERIVED: readonly AttributeDefinition[] = [
  {
    id: 'denser',
    label: 'Count of the denser system',
    block: 'spacing',
    scale: 'ratio',
    derived: true,
    unit: 'per cm',
    transform: 'log',
    plausible: { limit: [0.05, 150] },
    appliesTo: BOTH_ALIKE,
    definition:
      'The larger of the two counts, whichever system it is of: comparable where warp and weft were not told apart. Derived.',
    counted: 'Computed.',
    oriented: 'free',
    worked: {
      cells: { structure: 'tabby', density1: '10', density2: '14' },
      gives: 14,
      how: 'the larger of 10 and 14',
    },
    source: 'common practice, no source',
  },
  {
    id: 'sparser',
    label: 'Count of the sparser system',
    block: 'spacing',
    scale: 'ratio',
    derived: true,
    unit: 'per cm',
    transform: 'log',
    plausible: { limit: [0.05, 150] },
    appliesTo: BOTH_ALIKE,
    definition: 'The smaller of the two counts, whichever system it is of. Derived.',
    counted: 'Computed.',
    oriented: 'free',
    worked: {
      cells: { structure: 'tabby', density1: '10', density2: '14' },
      gives: 10,
      how: 'the smaller of 10 and 14',
    },
    source: 'common practice, no source',
  },
  {
    id: 'balanceEither',
    label: 'Balance, denser to sparser',
    block: 'spacing',
    scale: 'ratio',
    derived: true,
    transform: 'log',
    plausible: { usual: [1, 5], limit: [1, 100] },
    appliesTo: BOTH_ALIKE,
    definition:
      'Larger count over the smaller, 1 where both are equal: the same for 14 x 10 and 10 x 14. Derived.',
    counted: 'Computed.',
    oriented: 'free',
    worked: { cells: { structure: 'tabby', density1: '10', density2: '14' }, gives: 1.4, how: '14 / 10' },
    source: 'arithmetic',
  },
  {
    id: 'bindingPoints',
    label: 'Crossings per area',
    block: 'spacing',
    scale: 'ratio',
    derived: true,
    unit: 'per cm2',
    transform: 'log',
    plausible: { limit: [0.01, 20000] },
    appliesTo: ['tabby', 'twined'],
    definition:
      'Count of system 1 times that of system 2: where every crossing binds, as in tabby and simple twining. Derived.',
    counted: 'Computed.',
    oriented: 'free',
    worked: { cells: { structure: 'tabby', density1: '14', density2: '12' }, gives: 168, how: '14 x 12' },
    source: 'arithmetic',
  },
  {
    id: 'threadLength',
    label: 'Thread length per area',
    block: 'spacing',
    scale: 'ratio',
    derived: true,
    unit: 'm per m2',
    transform: 'log',
    plausible: { limit: [10, 30000] },
    appliesTo: ['woven'],
    definition:
      'Metres of thread in a square metre of cloth as it lies, 100 times the sum of both counts; what the threads lose by going over and under (a few per cent) is not added. Derived.',
    counted: 'Computed.',
    oriented: 'free',
    worked: {
      cells: { structure: 'tabby', density1: '14', density2: '12' },
      gives: 2600,
      how: '(14 + 12) x 100',
    },
    source: 'arithmetic',
  },
  ...(['1', '2'] as const).flatMap((system): AttributeDefinition[] => [
    {
      id: `turnsPerMetre${system}`,
      label: `Turns per metre, system ${system}`,
      block: 'spacing',
      scale: 'ratio',
      derived: true,
      unit: 'per m',
      transform: 'log',
      plausible: { limit: [1, 10000] },
      definition:
        'Turns of twist in a metre of thread, 1000 tan(angle) / (pi w), from the twist angle and the thickness w in mm. Derived.',
      counted: 'Computed.',
      oriented: 'swaps',
      worked: {
        cells: { structure: 'tabby', [`twistAngle${system}`]: '20', [`diameter${system}`]: '0.50' },
        gives: 231.71,
        how: '1000 x tan 20 / (3.1416 x 0.50) = 363.97 / 1.5708',
      },
      source: PEIRCE_ANGLE,
    },
    {
      id: `linearDensity${system}`,
      label: `Linear density, system ${system}`,
      block: 'spacing',
      scale: 'ratio',
      derived: true,
      unit: 'tex',
      transform: 'log',
      plausible: { limit: [0.1, 1000000] },
      definition:
        'Grams in a kilometre of thread, 785.4 times the square of its thickness in mm times 0.45 to 1.35 g/cm3: a wide guess for a round thread. Derived.',
      counted: 'Computed.',
      oriented: 'swaps',
      worked: {
        cells: { structure: 'tabby', [`diameter${system}`]: '0.50' },
        gives: 176.7,
        how: '785.4 x 0.50 x 0.50 x 0.9, in the middle of 0.45 to 1.35',
      },
      source: 'geometry; packing densities: common practice, no source',
    },
    {
      id: `angleClass${system}`,
      label: `Class of twist angle, system ${system}`,
      block: 'spacing',
      scale: 'ordinal',
      derived: true,
      levels: ['to 10 degrees', '11 to 25 degrees', '26 to 45 degrees', 'above 45 degrees'],
      definition:
        'Loose to 10 degrees, medium to 25, tight to 45, very tight above: from the measured angle, never from a word. Derived.',
      counted: 'Computed.',
      oriented: 'swaps',
      worked: {
        cells: { structure: 'tabby', [`twistAngle${system}`]: '20' },
        gives: '11 to 25 degrees',
        how: '20 lies between 11 and 25',
      },
      source: EMERY_CLASSES,
    },
  ]),
];
