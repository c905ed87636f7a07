/** Words of time and place that catalogues write in their own language (common practice, no source). */
const LANGUAGES: readonly (readonly string[])[] = [
  [
    'early',
    'fruh',
    'fruhe',
    'fruhes',
    'fruher',
    'ancien',
    'ancienne',
    'antico',
    'antica',
    'temprano',
    'temprana',
    'antiguo',
    'tidlig',
    'aeldre',
    'eldre',
  ],
  [
    'middle',
    'mid',
    'mittel',
    'mittlere',
    'mittlerer',
    'mittleres',
    'moyen',
    'moyenne',
    'medio',
    'media',
    'mellem',
    'midtre',
    'mellom',
  ],
  [
    'late',
    'spat',
    'spate',
    'spater',
    'spates',
    'recent',
    'recente',
    'tardif',
    'tardive',
    'tardo',
    'tarda',
    'tardio',
    'tardia',
    'sen',
    'yngre',
  ],
  ['upper', 'ober', 'obere', 'oberer', 'superieur', 'superieure', 'superiore', 'superior', 'ovre'],
  ['lower', 'unter', 'untere', 'unterer', 'inferieur', 'inferieure', 'inferiore', 'inferior', 'nedre'],
  ['north', 'nord', 'norte', 'nordlig'],
  ['south', 'sud', 'sur', 'sor', 'syd'],
  ['west', 'ouest', 'ovest', 'oeste', 'vest'],
  ['east', 'ost', 'est', 'este', 'ost'],
  ['phase', 'fase', 'stufe', 'period', 'periode', 'periodo'],
  ['island', 'insel', 'ile', 'isola', 'isla', 'oy'],
  ['lake', 'see', 'lac', 'lago', 'so', 'innsjo'],
  ['hill', 'hugel', 'colline', 'collina', 'colina', 'bakke', 'haug'],
  ['cave', 'hohle', 'grotte', 'grotta', 'cueva', 'hule'],
];

const LANGUAGE_OF = new Map(LANGUAGES.flatMap((words) => words.map((word) => [word, words[0]!] as const)));

/** A word of time or place in the one language in which names are compared; any other as it is. */
export function inOneLanguage(word: string): string {
  return LANGUAGE_OF.get(word) ?? word;
}

/** "Earl" is short for "Early" beside "früh" too, where nobody writes "Early". Four letters that begin one word only. */
export function shortInOneLanguage(word: string): string {
  if (LANGUAGE_OF.has(word) || word.length < 4) return inOneLanguage(word);
  const meant = LANGUAGES.filter((words) => words.some((one) => one.startsWith(word)));
  return meant.length === 1 ? meant[0]![0]! : word;
}
