import type { Schema } from './drawing.ts';
import { type Facets, type Recipe, spacingLeftOut } from './facets.ts';
import { DRAWN_TWILLS, type DrawnTwill, type Interlacing, satin, tabby, twill } from './interlacing.ts';
import { plaited } from './plaited.ts';
import { interlaced, warpFaced, weftFaced } from './woven.ts';

/** How wide an element is drawn, in 20 from middle to middle. */
const WIDTHS: Readonly<Record<string, number>> = { open: 7, 'semi-open': 11, close: 16 };

/** A weave as its face, grouping, openness and pile ask for; the weft is dark, the warp light. */
function woven(
  over: Interlacing,
  facets: Facets,
  says: string,
  notes: string[],
  rows = false,
  columns = false,
): Schema {
  if (facets.supplementary !== undefined && facets.supplementary !== 'noSupplementary')
    notes.push('The supplementary elements are not drawn.');
  const { face } = facets;
  if (face === 'warpFaced' || face === 'weftFaced' || face === 'faced') spacingLeftOut(facets, notes);
  if (face === 'warpFaced')
    return { ...warpFaced(over, ['active', 'passive']), says: `${says} The warp hides the weft.` };
  if (face === 'weftFaced' || face === 'faced') {
    if (face === 'faced')
      notes.push('Which system hides the other is not told; the weft is drawn to hide the warp.');
    return { ...weftFaced(over, ['active', 'passive']), says: `${says} The weft hides the warp.` };
  }
  const width = WIDTHS[facets.spacingClass ?? ''] ?? 14;
  const look = { width, paired: { rows, columns }, pile: facets.pile === 'present' };
  return { ...interlaced(over, look, ['active', 'passive']), says };
}

export const drawTabby: Recipe = (facets, notes) => {
  const { elementGrouping: grouping } = facets;
  if (grouping === 'pairedBoth' || grouping === 'paired') {
    if (grouping === 'paired')
      notes.push('In how many systems elements go in pairs is not told; both are drawn in pairs.');
    return woven(tabby(8, 2, 2), facets, 'Two wefts together over two warps, under two.', notes, true, true);
  }
  if (grouping === 'pairedOne') {
    notes.push('Which system goes in pairs is not told; the weft is drawn in pairs.');
    return woven(tabby(8, 2, 1), facets, 'Two wefts together over one warp, under one.', notes, true, false);
  }
  return woven(
    tabby(8),
    facets,
    'Each weft over one warp, under one; the next weft the other way about.',
    notes,
  );
};

const PATTERN_DRAWN: Readonly<Record<string, { readonly as: DrawnTwill; readonly note: string }>> = {
  reversed: {
    as: 'pointed',
    note: 'With or without an offset is not told; the diagonals are drawn point to point.',
  },
  lozenge: {
    as: 'pointLozenge',
    note: 'With or without an offset is not told; the diamonds are drawn point to point.',
  },
};

/** Null for a broken twill, whose order of the diagonals no record tells. */
export function drawTwill(over: number, under: number): Recipe {
  return (facets, notes) => {
    const asked = facets.twillPattern ?? 'straight';
    const pattern = PATTERN_DRAWN[asked]?.as ?? DRAWN_TWILLS.find((name) => name === asked);
    if (pattern === undefined) return null;
    const note = PATTERN_DRAWN[asked]?.note;
    if (note !== undefined) notes.push(note);
    const says = `Each weft over ${over} and under ${under}, the next weft one warp on.`;
    return woven(twill(over, under, pattern), facets, says, notes);
  };
}

export function drawSatin(repeat: number, step: number): Recipe {
  return (facets, notes) =>
    woven(
      satin(repeat, step),
      facets,
      `The face of warp floats: each warp over ${repeat - 1} wefts and under one, bindings ${step} warps apart.`,
      notes,
    );
}

/** The weft is beaten together until it hides the warp, whatever a face says. */
export const drawTapestry: Recipe = (facets, notes) =>
  woven(
    tabby(8),
    { ...facets, face: 'weftFaced' },
    'Each weft over one warp, under one; wefts turn back where a colour ends, which is not drawn.',
    notes,
  );

export function drawPlaiting(over: Interlacing, says: string): Recipe {
  return (facets, notes) => {
    spacingLeftOut(facets, notes);
    return { ...plaited(over), says: `${says} All elements are active and run aslant to the edges.` };
  };
}
