import type { AttributeDefinition } from '../definition.ts';

/** What was done to a piece in use and since it was found. */
// biome-ignore format: word lists stay one language a line
export const FIND_CARE: readonly AttributeDefinition[] = [
  {
    id: 'repairTime',
    label: 'When repaired',
    block: 'find',
    scale: 'nominal',
    vocabulary: 'repairTime',
    definition:
      'Whether a repair was made while the object was in use or after it was found; only the former says something of the past.',
    counted: 'By soiling and decay that the repair shares with the fabric, or does not.',
    oriented: 'free',
    source: 'common practice, no source',
    synonyms: {
      en: ['repair date', 'age of repair', 'repair age', 'period of repair', 'repair ancient or modern'],
      de: ['Zeit der Reparatur', 'Alter der Reparatur'],
      fr: ['date de la réparation', 'époque de la réparation'],
      it: ['epoca della riparazione', 'datazione della riparazione'],
      es: ['época de la reparación', 'fecha de la reparación'],
      da: ['reparationens alder'],
      no: ['reparasjonens alder'],
    },
  },
  {
    id: 'conservationTreatment',
    label: 'Conservation treatment',
    block: 'context',
    scale: 'nominal',
    vocabulary: 'treatment',
    definition:
      'What conservators did before the piece was measured; washing, drying and soaking change sizes and counts, so pieces treated otherwise are compared with care.',
    source: 'common practice, no source',
    synonyms: {
      en: ['treatment by conservators', 'conservation measures', 'conservation work', 'conserved'],
      de: ['Konservierung', 'Konservierungsmaßnahme', 'Konservierungsmaßnahmen', 'Konservierungsbehandlung', 'restauratorische Behandlung'],
      fr: ['traitement de conservation', 'intervention de conservation', 'restauration'],
      it: ['trattamento conservativo', 'intervento conservativo', 'restauro'],
      es: ['tratamiento de conservación', 'intervención de conservación', 'restauración'],
      da: ['konservering', 'konserveringsbehandling'],
      no: ['konservering', 'konserveringstiltak'],
    },
  },
];
