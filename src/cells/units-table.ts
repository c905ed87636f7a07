/**
 * Units as data. A unit is an exact ratio `numerator / denominator * 10^exponent` of the base of its
 * dimension, so that conversions are exact where the arithmetic of decimals is (3.5 cm = 35 mm, 36/2.54).
 */
export type Dimension =
  | 'length'
  | 'count'
  | 'area'
  | 'areal count'
  | 'mass'
  | 'angle'
  | 'share'
  | 'year'
  | 'number';

export interface Unit {
  /** Canonical spelling: "mm", "per cm", "degree". */
  readonly id: string;
  readonly dimension: Dimension;
  readonly numerator: number;
  readonly denominator: number;
  /** Power of ten. */
  readonly exponent: number;
  /** Folded spellings (see foldCell), without accents. */
  readonly spellings: readonly string[];
}

const unit = (
  id: string,
  dimension: Dimension,
  ratio: readonly [numerator: number, denominator: number, exponent: number],
  spellings: string,
): Unit => ({
  id,
  dimension,
  numerator: ratio[0],
  denominator: ratio[1],
  exponent: ratio[2],
  spellings: spellings.split('|'),
});

/**
 * Bases: mm, per mm, mm2, per mm2, g, degree, share of 1. The inch is 25.4 mm exactly (international
 * yard and pound agreement, 1959); metric prefixes by the SI brochure.
 */
export const UNITS: readonly Unit[] = [
  unit(
    'um',
    'length',
    [1, 1, -3],
    'um|µm|μm|micron|microns|micrometre|micrometer|mikrometer|micrometro|micra',
  ),
  unit(
    'mm',
    'length',
    [1, 1, 0],
    'mm|mm.|millimetre|millimetres|millimeter|millimeters|millimetro|millimetri|milimetro|milimetros',
  ),
  unit(
    'cm',
    'length',
    [1, 1, 1],
    'cm|cm.|centimetre|centimetres|centimeter|centimeters|zentimeter|centimetro|centimetri|centimetros|cms',
  ),
  unit('dm', 'length', [1, 1, 2], 'dm|dm.|decimetre|decimetres|decimeter|dezimeter|decimetro|desimeter'),
  unit('m', 'length', [1, 1, 3], 'm|m.|metre|metres|meter|meters|metro|metri|metros'),
  unit(
    'inch',
    'length',
    [254, 1, -1],
    'inch|inches|in|in.|ins|"|zoll|pouce|pouces|pollice|pollici|pulgada|pulgadas|tomme|tommer',
  ),
  unit('foot', 'length', [3048, 1, -1], "foot|feet|ft|ft.|'|fuss|pied|pieds|piede|piedi|pie|pies|fod|fot"),
  unit('mm2', 'area', [1, 1, 0], 'mm2|mm²|sq mm|sq. mm|qmm'),
  unit(
    'cm2',
    'area',
    [1, 1, 2],
    'cm2|cm²|sq cm|sq. cm|qcm|quadratzentimeter|square centimetre|square centimeter',
  ),
  unit('dm2', 'area', [1, 1, 4], 'dm2|dm²|sq dm'),
  unit('m2', 'area', [1, 1, 6], 'm2|m²|sq m|sq. m|qm'),
  unit('inch2', 'area', [64516, 1, -2], 'in2|in²|sq in|sq. in|sq. in.|sq in.|square inch|square inches'),
  unit('mg', 'mass', [1, 1, -3], 'mg|milligram|milligramm|milligramme|milligrammo|miligramo'),
  unit(
    'g',
    'mass',
    [1, 1, 0],
    'g|g.|gr|gr.|gm|gms|gram|grams|gramm|gramme|grammes|grammo|grammi|gramo|gramos',
  ),
  unit(
    'kg',
    'mass',
    [1, 1, 3],
    'kg|kg.|kilo|kilos|kilogram|kilograms|kilogramm|kilogramme|chilogrammo|kilogramo',
  ),
  unit('ounce', 'mass', [28349523125, 1, -9], 'ounce|ounces|oz|oz.'),
  unit(
    'degree',
    'angle',
    [1, 1, 0],
    'degree|degrees|deg|deg.|°|º|grad|grade|degre|degres|grado|gradi|grados|grader',
  ),
  unit(
    '%',
    'share',
    [1, 1, -2],
    '%|percent|per cent|prozent|pour cent|per cento|por ciento|procent|prosent|pct',
  ),
  unit('n', 'number', [1, 1, 0], 'n|number|count|anzahl|nombre|numero|antal|antall'),
];

/** Words for "per" before a unit of length, as a pattern. */
export const PER_WORDS = 'per|pro|je|par|al|au|por|pr\\.?|every|alle|ogni|cada|hver|tous les|to the';

/** Fixed wordings of counts per inch that name no length. */
export const COUNT_SHORTHANDS: readonly (readonly [spelling: string, unit: string])[] = [
  ['epi', 'per inch'],
  ['e.p.i', 'per inch'],
  ['t.p.i', 'per inch'],
  ['ppi', 'per inch'],
  ['tpi', 'per inch'],
  ['spi', 'per inch'],
];
