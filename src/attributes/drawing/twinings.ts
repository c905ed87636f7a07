import { quarterTurn } from './drawing.ts';
import type { Recipe } from './facets.ts';
import { type Slant, SPACING, twined } from './twined.ts';

const SLANTS: Readonly<Record<string, readonly Slant[]>> = { S: ['S'], Z: ['Z'], countered: ['S', 'Z'] };

/** Twining, rows lying across where the weft is active or nothing is told, upright where the warp is. */
export const drawTwined: Recipe = (facets, notes) => {
  // One active element that wraps crossings is another engagement than two that twist.
  if (facets.wrapping !== undefined && facets.wrapping !== 'noWrapping') return null;
  const { spacingClass, rowSlant, strandsPerRow } = facets;
  const spacing = Object.hasOwn(SPACING, spacingClass ?? '') ? (spacingClass as keyof typeof SPACING) : null;
  if (spacing === null) notes.push('How far rows stand apart is not told; they are drawn open.');
  const slants = SLANTS[rowSlant ?? ''];
  if (slants === undefined) notes.push('The slant is not told; it is drawn as S.');
  if (strandsPerRow !== undefined && strandsPerRow !== '2') notes.push('Two strands to a row are drawn.');
  const schema = twined({
    spacing: spacing ?? 'open',
    enclosed: facets.engagement === 'diagonal' ? 2 : 1,
    slants: slants ?? ['S'],
    pile: facets.pile === 'present',
  });
  if (facets.activeSystem === 'warpActive') return quarterTurn(schema);
  notes.push(
    'Rows lie across here: turn the picture by a quarter to read the slant, which is told with the row upright.',
  );
  return schema;
};
