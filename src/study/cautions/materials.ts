import type { Register } from '../../attributes/definition.ts';
import type { FragmentTable } from '../../fragments/table.ts';
import { append } from '../../numerics/foundation/lists.ts';
import { lookAlikeInWords, lookAlikes } from '../../sources/quality/look-alikes.ts';
import type { Restriction } from '../restriction/restrict.ts';
import { conventionCautions } from './conventions.ts';

/**
 * What people, finds and places may need to be spared, judged from what the table holds. Handling
 * after common practice of finds conservation and Gillis & Nosch 2007, First Aid for the Excavation of
 * Archaeological Textiles; rights after the CARE principles (Gupta et al. 2023, Adv. Archaeol.
 * Practice 11:76-89).
 */
export function materialCautions(
  table: FragmentTable,
  register: Register,
  { withheld, placeWithheld }: Restriction = { withheld: 0, placeWithheld: 0 },
): string[] {
  const cautions: string[] = [];
  if (withheld + placeWithheld > 0) {
    cautions.push(
      `Restriction: ${withheld} withheld; ${placeWithheld} more shown without name and place, as their sources ask. ` +
        'Neither appears by name or place in comparanda, maps, tables, exports or this report.',
    );
  }
  append(cautions, conventionCautions(table));
  const alike = lookAlikes(table, register).map(lookAlikeInWords);
  if (alike.length > 0)
    cautions.push(`Look-alikes, of which one may have been written for the other: ${alike.join(' ')}`);
  const states = termsOf(table, 'preservation');
  if (states.size > 0 || has(table, 'structure') || has(table, 'fibre')) {
    cautions.push(
      'Handling: charred, mineralised, desiccated and waterlogged fabric can be destroyed by touch, unfolding, ' +
        'drying or brushing. Keep the burial condition (wet stays wet and dark, dry stays dry), support it ' +
        'fully, photograph first and count from images where possible; pull no threads to count.',
    );
  }
  if (has(table, 'fibre') || has(table, 'fibre2')) {
    cautions.push(
      'Sampling for fibre, dye or date destroys material: ask a conservator and the responsible authority ' +
        'first. Identifications by eye alone, and flax against nettle or hemp, are often uncertain.',
    );
  }
  if (states.size > 1) {
    cautions.push(
      `Several states of preservation are compared (${[...states].join(', ')}). Charring and drying shrink ` +
        'threads and raise counts, and each setting keeps other fibres: compare like with like, or show both.',
    );
  }
  if ([...table.columns.keys()].some((id) => PLACE_NAMES.test(id) && has(table, id))) {
    cautions.push(
      'Places: publish coordinates of unguarded caves, graves, wrecks and sacred places only coarsened, and ' +
        'take them out of file metadata and free text as well.',
    );
  }
  const dead = countMentions(table, DEATH_WORDS);
  if (dead > 0) {
    cautions.push(
      `Human remains or graves are mentioned in ${dead} ${dead === 1 ? 'record' : 'records'}: textiles on or with ` +
        'bodies share the consent, the law and the wishes that hold for them; no images by default.',
    );
  }
  if (has(table, 'recorder')) {
    cautions.push('People: names of recorders and excavators are shown only as they are credited.');
  }
  cautions.push(
    'Rights: data of others keep their licence and their citation; material of Indigenous or descendant ' +
      'communities is shared only as they permit (CARE beside FAIR). Thrum grants none of these permissions.',
  );
  return cautions;
}

const PLACE_NAMES = /(?:^|[a-z])(?:latitude|longitude|lat|lon|east|north|easting|northing|coordinates?)$/i;

const DEATH_WORDS =
  /\b(?:human remains|skeletons?|burials?|graves?|corpse|mumm(?:y|ies)|skelett?e?|gr[aä]ber|grab|bestattung|tombes?|s[ée]pulture|squelette|tombe|sepoltura|scheletro|tumbas?|sepultura|esqueleto|grave?n|skelet)\b/iu;

function has(table: FragmentTable, id: string): boolean {
  const column = table.columns.get(id);
  if (column === undefined) return false;
  if (column.kind === 'numeric') return column.low.some((value) => !Number.isNaN(value));
  if (column.kind === 'term') return column.codes.some((code) => code >= 0);
  return column.raw.some((text) => text.trim() !== '');
}

function termsOf(table: FragmentTable, id: string): Set<string> {
  const column = table.columns.get(id);
  if (column?.kind !== 'term') return new Set();
  return new Set([...column.codes].filter((code) => code >= 0).map((code) => column.levels[code]));
}

function countMentions(table: FragmentTable, words: RegExp): number {
  const texts = [...table.columns.values()].filter((column) => column.kind === 'text');
  let count = 0;
  for (let row = 0; row < table.rows; row++) {
    if (texts.some((column) => words.test(column.raw[row] ?? ''))) count++;
  }
  return count;
}
