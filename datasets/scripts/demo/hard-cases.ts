import type { Resource } from './package.ts';
import { csvBytes, type FileForm } from './text.ts';

/**
 * Varnath Shingle, a seventh place of the invented coast: what specialists meet and a plain catalogue trips over. Written
 * out by hand, so that what each cell means is known: repps that hide their warp, rows that touch, sprang and linking, a
 * repair of either time, pieces charred and then kept wet, mixtures, fibres by methods that tell more or less, records that
 * may not be shown, uses with and without evidence, and counts only where the piece allows them.
 */

const FORM: FileForm = { delimiter: ',', encoding: 'utf-8', lineEnd: '\n' };

const HEADER = [
  'Cat. no.',
  'Item no.',
  'Site',
  'Phase',
  'Structure',
  'Warp density (per cm)',
  'Weft density (per cm)',
  'Row spacing (mm)',
  'Row width (mm)',
  'Fibre',
  'Identified by',
  'Fibre prep',
  'Preservation',
  'Length (mm)',
  'Width (mm)',
  'Repair',
  'When repaired',
  'Recorded use',
  'Basis of use',
  'Restriction',
  'Remarks',
];

const SITE = 'Varnath Shingle';

/** In the order of the header, from the object on; site and phase are the same for all. */
// biome-ignore format: one record a line
const ROWS: readonly (readonly [object: string, ...cells: string[]])[] = [
  ['VS-1', 'weft-faced repp', 'not visible', '21', 'n/a', 'n/a', 'wool', 'SEM', 'draft-spun', 'desiccated', '62', '40', 'absent', 'n/a', '', '', 'open', 'the weft hides the warp'],
  ['VS-1', 'weft-faced repp', 'not visible', '22', 'n/a', 'n/a', 'wool', 'by eye', '', 'desiccated', '31', '18', 'absent', 'n/a', '', '', 'open', ''],
  ['VS-2', 'weft-faced repp', '6', '20', 'n/a', 'n/a', 'warp linen, weft wool', 'transmitted light', '', 'desiccated', '55', '52', 'darned', 'in use', 'bag', 'shape and seam', 'open', 'warp seen at a tear'],
  ['VS-3', 'weft-faced repp', 'not visible', 'not countable', 'n/a', 'n/a', 'wool', 'ZooMS', '', 'mineralised on iron', '7', '5', '', '', '', '', 'open', 'too small to count'],
  ['VS-4', 'close twining', '4.5', 'n/a', 'rows touch', '3.4', 'rush', 'low power', 'split strip', 'charred', '40', '33', 'absent', 'n/a', '', '', 'open', ''],
  ['VS-4', 'close twining', '4.5', 'n/a', 'rows touch', '3.5', 'rush', 'low power', 'split strip', 'charred and waterlogged', '28', '25', '', '', '', '', 'open', ''],
  ['VS-5', 'close twining', '5.0', 'n/a', '3.4', '3.4', 'monocot', 'by eye', '', 'charred and waterlogged', '35', '30', '', '', 'bag', 'likeness to a bag', 'open', ''],
  ['VS-6', 'close twining', 'not countable', 'n/a', 'rows touch', '3.0', 'indet.', '', '', 'charred, waterlogged', '9', '6', '', '', '', '', 'open', 'too small to count'],
  ['VS-7', 'open twining', '2.5', 'n/a', '26', '5.0', 'willow bast', 'transmitted light', 'split strip', 'waterlogged', '110', '84', 'absent', 'n/a', 'cape', 'collar shaped by decreases, worn at the neck', 'open', ''],
  ['VS-8', 'sprang', 'n/a', 'n/a', 'n/a', 'n/a', 'wool', 'SEM', 'draft-spun', 'desiccated', '70', '36', 'absent', 'n/a', '', '', 'open', 'meeting line preserved'],
  ['VS-9', 'linking', 'n/a', 'n/a', 'n/a', 'n/a', 'wool', 'by eye', '', 'desiccated', '24', '20', '', '', '', '', 'open', 'no edge; may be sprang'],
  ['VS-10', '2/2 twill', '12', '10', 'n/a', 'n/a', 'wool and silk', 'aDNA', '', 'desiccated', '48', '30', 'patched', 'after finding', '', '', 'open', 'mounted by a collector'],
  ['VS-11', '2/2 lozenge twill', '14', '12', 'n/a', 'n/a', 'Wool, silk, metal thread', 'SEM', '', 'desiccated', '21', '15', '', '', '', '', 'open', ''],
  ['VS-12', 'tabby', '11', '10', 'n/a', 'n/a', 'flax', 'by eye', 'spliced', 'desiccated', '90', '66', 'absent', 'n/a', '', '', 'open', ''],
  ['VS-13', 'tabby', '11', '10', 'n/a', 'n/a', 'flax', 'proteomics', '', 'waterlogged', '44', '31', '', '', '', '', 'open', ''],
  ['VS-14', 'tabby', '10', '9', 'n/a', 'n/a', 'nettle', 'transmitted light', 'spliced', 'charred and waterlogged', '26', '22', '', '', '', '', 'withheld', 'from the Marram burial'],
  ['VS-15', 'tabby', '12', '11', 'n/a', 'n/a', 'flax', 'SEM', '', 'waterlogged', '33', '29', '', '', '', '', 'place withheld', 'from the Marram burial'],
];

export function hardCases(): Resource {
  const rows = ROWS.map(([object, ...cells], at) => [`VS-${101 + at}`, object, SITE, 'Late', ...cells]);
  return {
    file: 'varnath-hard-cases.csv',
    description: 'Varnath Shingle: what a plain catalogue trips over; read by hard-cases-study.json alone.',
    form: FORM,
    bytes: csvBytes([HEADER, ...rows], FORM),
    fields: HEADER,
    headerRows: [1],
  };
}
