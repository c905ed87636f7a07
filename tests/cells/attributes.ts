import type { AttributeDefinition, Vocabulary } from '../../src/attributes/definition.ts';
import type { CellContext } from '../../src/cells/context.ts';

/** Attributes and vocabularies of the cell tests: small, so that the expectations can be checked by eye. */
const attribute = (rest: Omit<AttributeDefinition, 'label' | 'block' | 'source'>): AttributeDefinition => ({
  label: rest.id,
  block: 'spacing',
  source: 'test',
  ...rest,
});

export const ATTRIBUTES = {
  density: attribute({ id: 'density1', scale: 'ratio', unit: 'per cm', plausible: { limit: [0.1, 150] } }),
  spacing: attribute({ id: 'rowSpacing', scale: 'ratio', unit: 'mm', plausible: { limit: [0.1, 300] } }),
  diameter: attribute({ id: 'diameter1', scale: 'ratio', unit: 'mm', plausible: { limit: [0.02, 150] } }),
  gap: attribute({ id: 'rowGap', scale: 'ratio', unit: 'mm', plausible: { limit: [0, 300] } }),
  angle: attribute({ id: 'twistAngle1', scale: 'ratio', unit: 'degree' }),
  weight: attribute({ id: 'weight', scale: 'ratio', unit: 'g' }),
  area: attribute({ id: 'area', scale: 'ratio', unit: 'mm2' }),
  layers: attribute({ id: 'layers', scale: 'ratio' }),
  offset: attribute({ id: 'offset', scale: 'interval', unit: 'mm' }),
  date: attribute({ id: 'date', scale: 'interval', unit: 'year' }),
  twist: attribute({ id: 'twist1', scale: 'nominal', vocabulary: 'twist' }),
  slant: attribute({ id: 'rowSlant', scale: 'nominal', vocabulary: 'slant' }),
  ply: attribute({ id: 'ply1', scale: 'nominal' }),
  fibre: attribute({ id: 'fibre', scale: 'nominal', vocabulary: 'fibre' }),
  structure: attribute({ id: 'structure', scale: 'nominal', vocabulary: 'structure' }),
  site: attribute({ id: 'site', scale: 'nominal' }),
  pile: attribute({ id: 'pile', scale: 'presence' }),
  looped: attribute({ id: 'looped', scale: 'binary' }),
  openness: attribute({ id: 'spacingClass', scale: 'ordinal', levels: ['close', 'semi-open', 'open'] }),
  remarks: attribute({ id: 'remarks', scale: 'text' }),
} as const;

export type AttributeKey = keyof typeof ATTRIBUTES;

const term = (id: string, parent?: string, en: readonly string[] = [], de: readonly string[] = []) => ({
  id,
  label: id,
  ...(parent === undefined ? {} : { parent }),
  synonyms: { en, de },
  source: 'test',
});

export const VOCABULARIES: Readonly<Record<string, Vocabulary>> = {
  twist: {
    id: 'twist',
    label: 'Twist',
    terms: [
      term('S'),
      term('Z'),
      term('none', undefined, ['untwisted']),
      term('both', undefined, ['S and Z']),
    ],
  },
  slant: {
    id: 'slant',
    label: 'Slant',
    terms: [term('S'), term('Z'), term('countered', undefined, ['alternating'])],
  },
  fibre: {
    id: 'fibre',
    label: 'Fibre',
    terms: [
      term('bast', undefined, ['bast, indeterminate'], ['Bast']),
      term('treeBast', 'bast', ['tree bast'], ['Gehölzbast']),
      term('limeBast', 'treeBast', ['lime bast', 'linden bast'], ['Lindenbast']),
      term('willowBast', 'treeBast', ['willow bast'], ['Weidenbast']),
      term('flax', 'bast', ['linen'], ['Flachs', 'Lein']),
      term('wool', undefined, ['sheep wool'], ['Wolle']),
    ],
  },
  structure: {
    id: 'structure',
    label: 'Structure',
    terms: [
      term('woven', undefined, [], ['Gewebe']),
      term('tabby', 'woven', ['plain weave'], ['Leinwandbindung']),
      term('twill', 'woven', [], ['Köper']),
      term('twill22', 'twill', ['2/2 twill', 'twill 2/2']),
      term('twined', undefined, ['twining'], ['Zwirnbindung']),
    ],
  },
};

/** Context of one expectation: decimal point unless said otherwise, and the attribute's vocabulary. */
export function contextFor(key: AttributeKey, rest: Partial<CellContext> = {}): CellContext {
  const vocabulary = VOCABULARIES[ATTRIBUTES[key].vocabulary ?? ''];
  return { decimal: '.', ...(vocabulary === undefined ? {} : { vocabulary }), ...rest };
}
