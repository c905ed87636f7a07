import type { AttributeDefinition } from '../definition.ts';
import { forSystem, SYSTEM_1, SYSTEM_2 } from './system-words.ts';

// biome-ignore format: word lists stay one language a line
const TWIST = {
  en: ['twist', 'twist direction', 'direction of twist', 'spin', 'spin direction', 'spinning direction', 'S/Z', 'torsion'],
  de: ['Drehung', 'Drehrichtung', 'Spinnrichtung', 'Drall', 'Drallrichtung', 'Zwirnrichtung', 'Drehungsrichtung', 'Torsion', 'Dreh'],
  fr: ['torsion', 'sens de torsion', 'sens de la torsion', 'direction de torsion'],
  it: ['torsione', 'senso di torsione', 'direzione di torsione', 'verso di torsione'],
  es: ['torsión', 'sentido de torsión', 'dirección de torsión', 'sentido de la torsión'],
  da: ['snoning', 'spinding', 'spinderetning', 'snoningsretning', 'tvist'],
  no: ['tvinning', 'spinneretning', 'tvinneretning', 'spinning'],
} as const;

// biome-ignore format: word lists stay one language a line
const PLY = {
  en: ['ply', 'plying', 'ply notation', 'ply structure', 'yarn structure', 'spin-ply', 'spin/ply', 'yarn construction', 'yarn', 'yarn type'],
  de: ['Zwirn', 'Zwirnung', 'Garn', 'Garnart', 'Garnaufbau', 'Fadenaufbau', 'Zwirnaufbau', 'Garnkonstruktion'],
  fr: ['retors', 'assemblage', 'structure du fil', 'type de fil', 'composition du fil'],
  it: ['ritorto', 'struttura del filo', 'capi', 'tipo di filo', 'composizione del filato'],
  es: ['cabos', 'retorcido', 'estructura del hilo', 'tipo de hilo'],
  da: ['tvinding', 'garnopbygning', 'garntype', 'trådopbygning'],
  no: ['garnoppbygging', 'garntype', 'trådtype'],
} as const;

// biome-ignore format: word lists stay one language a line
const PLY_COUNT = {
  en: ['number of plies', 'no. of plies', 'plies', 'number of strands', 'no. of strands', 'ply number', 'ply count', 'strands'],
  de: ['Anzahl Zwirnfäden', 'Fachung', 'Anzahl Einzelfäden', 'Anzahl Stränge', 'Zwirnfachung'],
  fr: ['nombre de bouts', 'nombre de torons', 'nb bouts', 'bouts'],
  it: ['numero di capi', 'n. capi', 'numero capi'],
  es: ['número de cabos', 'n.º de cabos', 'n.º cabos'],
  da: ['antal garn', 'antal enkelttråde'],
  no: ['antall enkelttråder', 'antall parter'],
} as const;

// biome-ignore format: word lists stay one language a line
const TIGHTNESS = {
  en: ['twist tightness', 'tightness', 'tightness of twist', 'looseness', 'degree of twist', 'twist class', 'amount of twist'],
  de: ['Drehungsgrad', 'Drehungsstärke', 'Festigkeit der Drehung', 'Drehungsintensität', 'Zwirngrad'],
  fr: ['degré de torsion', 'serrage', 'intensité de torsion', 'force de torsion'],
  it: ['grado di torsione', 'intensità di torsione', 'forza di torsione'],
  es: ['grado de torsión', 'intensidad de torsión', 'fuerza de torsión'],
  da: ['snoningsgrad', 'spindegrad', 'spindehårdhed'],
  no: ['tvinningsgrad', 'spinnegrad'],
} as const;

/** How elements and rows turn: slant, twist, ply and tightness. */
// biome-ignore format: word lists stay one language a line
export const TURNS: readonly AttributeDefinition[] = [
  {
    id: 'rowSlant',
    label: 'Row slant',
    block: 'structure',
    scale: 'nominal',
    vocabulary: 'slant',
    appliesTo: ['twined'],
    definition: 'Lean of the turns of a twined row, the row held upright. Read with the row lying across, S and Z change places, and again on an impression; `slantReading` and `observedOn` say so, and the letter is turned accordingly.',
    source: 'common practice, no source',
    facet: { of: 'structure', name: 'slant', stands: 'before', order: 20, words: { S: 'S-slanting', Z: 'Z-slanting', countered: 'countered' } },
    synonyms: {
      en: ['slant', 'slant of rows', 'slant of the rows', 'slant of twined rows', 'slant of twining', 'twining direction', 'twining slant', 'direction of twining', 'row twist', 'twining twist', 'stitch slant', 'weft slant', 'lean'],
      de: ['Reihenneigung', 'Neigung der Reihen', 'Neigung', 'Zwirnbindungsrichtung', 'Drehrichtung der Reihen', 'Richtung der Zwirnbindung', 'Reihendrehung', 'Bindungsrichtung'],
      fr: ['inclinaison', 'inclinaison des rangs', 'sens du cordage', 'sens de torsion des rangs', 'pente des rangs'],
      it: ['inclinazione', 'inclinazione delle file', 'inclinazione della fila', 'direzione della ritorcitura'],
      es: ['inclinación', 'inclinación de las filas', 'dirección del cordado', 'sentido del cordado'],
      da: ['hældning', 'rækkernes hældning', 'tvinderetning', 'rækkehældning'],
      no: ['helning', 'radhelning', 'radenes helning'],
    },
  },
  {
    id: 'slantReading',
    label: 'Slant read with the row',
    block: 'context',
    scale: 'nominal',
    vocabulary: 'slantReading',
    definition: 'Whether the row was held upright or lay across when its slant was read: turning it a quarter turns S into Z.',
    source: 'geometry',
    synonyms: {
      en: ['slant convention', 'reading convention', 'S/Z convention', 'orientation of reading'],
      de: ['Ablesung der Richtung', 'Lesart S/Z', 'Konvention S/Z'],
      fr: ['convention S/Z', 'convention de lecture'],
      it: ['convenzione S/Z', 'convenzione di lettura'],
      es: ['convención S/Z', 'convención de lectura'],
      da: ['konvention S/Z', 'aflæsningsretning'],
    },
  },
  {
    id: 'twist1',
    label: 'Twist, system 1',
    block: 'structure',
    scale: 'nominal',
    vocabulary: 'twist',
    definition: 'Final direction of twist of the elements of system 1: S leans like the stroke of S, Z like that of Z; none where worked straight.',
    source: 'ISO 2:1973',
    synonyms: forSystem(SYSTEM_1, TWIST, {
      en: ['warp twist', 'warp spin', 'cord twist', 'final twist', 'cord twist direction', 'twist warp'],
      de: ['Drehung Kette', 'Kettdrehung', 'Drehung K', 'Schnurdrehung', 'Enddrehung', 'Kettfadendrehung'],
      fr: ['torsion chaîne', 'torsion de chaîne', 'torsion de la chaîne', 'torsion finale'],
      it: ['torsione ordito', 'torsione dell’ordito'],
      es: ['torsión urdimbre', 'torsión de la urdimbre', 'torsión final'],
      da: ['snoning trend', 'trendens snoning', 'trendens spinding'],
      no: ['tvinning renning', 'renningens spinning'],
    }),
  },
  {
    id: 'twist2',
    label: 'Twist, system 2',
    block: 'structure',
    scale: 'nominal',
    vocabulary: 'twist',
    definition: 'Final direction of twist of the elements of system 2.',
    source: 'ISO 2:1973',
    synonyms: forSystem(SYSTEM_2, TWIST, {
      en: ['weft twist', 'weft spin', 'twist weft'],
      de: ['Drehung Schuss', 'Schussdrehung', 'Drehung S', 'Schussfadendrehung'],
      fr: ['torsion trame', 'torsion de trame', 'torsion de la trame'],
      it: ['torsione trama', 'torsione della trama'],
      es: ['torsión trama', 'torsión de la trama'],
      da: ['snoning islæt', 'islættens snoning', 'islættens spinding'],
      no: ['tvinning innslag', 'innslagets spinning'],
    }),
  },
  {
    id: 'ply1',
    label: 'Ply, system 1',
    block: 'structure',
    scale: 'nominal',
    definition: 'Make-up of an element of system 1, written from the final twist inwards: S2z is two z singles plied S.',
    source: 'ISO 1139:1973 (yarn designation, from memory)',
    synonyms: forSystem(SYSTEM_1, PLY, {
      en: ['cord construction', 'cordage structure', 'cord structure'],
      de: ['Schnuraufbau', 'Kettzwirn', 'Kettgarn'],
      fr: ['structure de la ficelle'],
      it: ['struttura della corda'],
      es: ['estructura de la cuerda'],
    }),
  },
  {
    id: 'ply2',
    label: 'Ply, system 2',
    block: 'structure',
    scale: 'nominal',
    definition: 'Make-up of an element of system 2, written from the final twist inwards.',
    source: 'ISO 1139:1973 (yarn designation, from memory)',
    synonyms: forSystem(SYSTEM_2, PLY, { de: ['Schusszwirn', 'Schussgarn'] }),
  },
  {
    id: 'plyCount1',
    label: 'Number of plies, system 1',
    block: 'structure',
    scale: 'ratio',
    plausible: { usual: [1, 4], limit: [1, 20] },
    definition: 'Strands combined in the last step of plying an element of system 1; 1 for a single.',
    source: 'common practice, no source',
    synonyms: forSystem(SYSTEM_1, PLY_COUNT),
  },
  {
    id: 'plyCount2',
    label: 'Number of plies, system 2',
    block: 'structure',
    scale: 'ratio',
    plausible: { usual: [1, 4], limit: [1, 20] },
    definition: 'Strands combined in the last step of plying an element of system 2; 1 for a single.',
    source: 'common practice, no source',
    synonyms: forSystem(SYSTEM_2, PLY_COUNT),
  },
  {
    id: 'tightness1',
    label: 'Twist tightness, system 1',
    block: 'structure',
    scale: 'ordinal',
    levels: ['loose', 'medium', 'tight', 'very tight'],
    vocabulary: 'tightness',
    definition: 'Grade of twist as the recorder put it; grades of different recorders need not agree, and no number is made of them.',
    source: 'common practice, no source',
    synonyms: forSystem(SYSTEM_1, TIGHTNESS),
  },
  {
    id: 'tightness2',
    label: 'Twist tightness, system 2',
    block: 'structure',
    scale: 'ordinal',
    levels: ['loose', 'medium', 'tight', 'very tight'],
    vocabulary: 'tightness',
    definition: 'Grade of twist as the recorder put it; grades of different recorders need not agree, and no number is made of them.',
    source: 'common practice, no source',
    synonyms: forSystem(SYSTEM_2, TIGHTNESS),
  },
];
