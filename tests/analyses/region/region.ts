import { createRandom } from '../../../src/numerics/foundation/random.ts';
import { checkStudy } from '../../../src/study/load.ts';
import type { AnalysisResult } from '../../../src/study/results/results.ts';
import { runStudy } from '../../../src/study/run-study.ts';

/**
 * A second study beside the demo: an invented region of 21 places that three hands recorded, one of them in broad
 * terms, one without coordinates, with spans of dates, doubts, mixtures, kinds that look alike and objects in
 * several pieces. It is asked in ways in which the demo is not, so that what only such a table brings up is read too.
 */

const HEADS = [
  'id,item,site,region,phase,date,recorder,recovery,preservation',
  'structure,fibre,density of system 1 (per cm),density of system 2 (per cm),row spacing (mm),length (mm),spin,longitude,latitude',
].join(',');

const PLACES = [
  'Anholt Rise',
  'Bessel Fold',
  'Corrie Neap, lower terrace by the second ford',
  'Dunmar',
  'Ebbing Stair',
  'Farrow Leat',
  'Gantry Howe',
  'Hob Larder',
  'Iver Slack',
  'Jarrow Pike, upper terrace by the second ford',
  'Kest',
  'Lorn Tithe',
  'Marram Gap',
  'Nethy Clint',
  'Orrin Shaw',
  'Pell Garth',
  'Quern Hollow',
  'Rudd Ness',
  'Stane Mere End',
  'Tarn Wick',
  'Ulver Toft',
];
const REGIONS = ['Coast', 'Dale', 'Moor'];
const KINDS = [
  ['open twining', 'close twining', 'tabby', 'sprang'],
  ['tabby', '2/2 twill', 'weft-faced tabby', 'linking'],
  ['close diagonal twining', 'knotless netting', 'half-basket tabby', 'coiling'],
];
const PHASES = ['First', 'Second', 'Third'];
const FIBRES = ['flax', 'wool', 'nettle', 'flax, wool', 'bast', 'wool?', ''];

/** Lines of one hand: `broad` writes twined and woven alone, `bare` no coordinates and no phase. */
function lines(hand: 'fine' | 'broad' | 'bare', places: readonly number[]): string[] {
  const random = createRandom(17 + places[0]);
  const below = (n: number) => Math.floor(random.next() * n);
  return places.flatMap((place) => {
    const kinds: string[] = [];
    const fibres: string[] = [];
    return Array.from({ length: 4 + ((place * 5) % 13) }, (_, i) => {
      const region = place % 3;
      // Every third fragment is of the object of the one before it.
      const [object, second] = [i - (i % 3 === 2 ? 1 : 0), i % 3 === 2];
      kinds.push(second ? kinds[object] : KINDS[below(5) === 0 ? below(3) : region][below(4)]);
      fibres.push(second ? fibres[object] : FIBRES[(region * 2 + below(3)) % FIBRES.length]);
      const kind = kinds[i];
      const woven = /tabby|twill/.test(kind);
      const phase = Math.min(2, Math.floor((i * 3) / 10));
      const start = 420 - 110 * phase - below(40);
      const broad = hand === 'broad';
      return [
        `${hand[0]}${place}-${i}`,
        `o${place}-${object}`,
        `"${PLACES[place]}"`,
        REGIONS[region],
        hand === 'bare' ? '' : PHASES[phase],
        i % 4 === 3 ? '' : `${start}-${start - 60 - below(50)} BC`,
        { fine: 'Orrin', broad: 'Vale', bare: 'Pike' }[hand],
        object % 2 ? 'sieved' : 'picked by hand',
        ['waterlogged', 'charred', 'desiccated'][(place + (object % 2)) % 3],
        broad ? (woven ? 'woven' : /twin/.test(kind) ? 'twined' : kind) : `${kind}${i % 9 === 7 ? '?' : ''}`,
        `"${fibres[i]}"`,
        woven ? `${6 + region * 2 + below(5)}${broad ? '-14' : ''}` : '',
        woven ? 4 + region + below(6) : '',
        /twin|coil/.test(kind) ? `${broad ? 'c. ' : ''}${4 + region * 3 + below(6)}` : '',
        20 + below(90),
        below(3) ? 'S2z' : 'z',
        hand === 'bare' ? '' : (10 + 7 * (place % 5)) / 100,
        hand === 'bare' ? '' : 55 + (60 - 9 * Math.floor(place / 4)) / 100,
      ].join(',');
    });
  });
}

const every = (from: number, to: number) => Array.from({ length: to - from }, (_, i) => from + i);
const SOURCES = {
  'orrin.csv': lines('fine', every(0, 12)),
  'vale.csv': lines('broad', every(12, 17)),
  'pike.csv': lines('bare', every(17, 21)),
};

const TYPES = {
  title: 'Fine and coarse',
  types: [
    { id: 'fine', label: 'Fine', when: { attribute: 'density1', atLeast: 12 } },
    { id: 'coarse', label: 'Coarse', when: { attribute: 'density1', below: 12 } },
  ],
};
const COAST = {
  type: 'FeatureCollection',
  features: [
    {
      type: 'Feature',
      properties: {},
      geometry: {
        type: 'LineString',
        coordinates: [
          [0.05, 55.1],
          [0.2, 55.25],
          [0.45, 55.12],
        ],
      },
    },
  ],
};

const bytes = (text: string) => new TextEncoder().encode(text);

/** Answers of the region to these analyses, by their ids; a fault of the code is thrown. */
export function regionAnswers(
  analyses: readonly object[],
  more: Readonly<Record<string, unknown>> = {},
): Readonly<Record<string, AnalysisResult>> {
  const document = {
    title: 'A region by three hands',
    witness: { is: 'column' },
    sources: Object.keys(SOURCES).map((file) => ({ file, citation: `${file} (invented)` })),
    analyses,
    ...more,
  };
  const files = new Map(
    Object.entries(SOURCES).map(([file, own]) => [file, bytes([HEADS, ...own].join('\n'))]),
  );
  files.set('types.json', bytes(JSON.stringify(TYPES)));
  files.set('coast.json', bytes(JSON.stringify(COAST)));
  return runStudy(checkStudy(document, 'study.json'), files, {
    onFault: (_, fault) => {
      throw fault;
    },
  }).analyses;
}
