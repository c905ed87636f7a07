import type { Register } from '../definition.ts';
import { composedName } from '../naming/composed-name.ts';
import { ancestors } from '../tree.ts';
import { coiled } from './coiled.ts';
import type { Drawing, Schema } from './drawing.ts';
import { type Facets, type Recipe, spacingLeftOut } from './facets.ts';
import { tabby, twill } from './interlacing.ts';
import { LOOPING, looped, MESHES } from './looped.ts';
import { knottedNet } from './netted.ts';
import { tabletWoven } from './tablet.ts';
import { drawTwined } from './twinings.ts';
import { drawPlaiting, drawSatin, drawTabby, drawTapestry, drawTwill } from './weaves.ts';

function always(schema: () => Schema): Recipe {
  return (facets, notes) => {
    spacingLeftOut(facets, notes);
    return schema();
  };
}

/** A broader term drawn as one of its narrower ones, and said to be. */
function asOne(recipe: Recipe, note: string): Recipe {
  return (facets, notes) => {
    notes.push(note);
    return recipe(facets, notes);
  };
}

const checker = drawPlaiting(tabby(12), 'Over one, under one.');
const twilled = drawPlaiting(twill(2, 2), 'Over two, under two, the next element one on.');
const looping = always(() => looped(LOOPING));
const meshes = always(() => knottedNet());

/** Term -> its drawing. Null says that no drawing of a broader term would do: the engagement is another one. */
const RECIPES: Readonly<Record<string, Recipe | null>> = {
  woven: asOne(drawTabby, 'The weave is not told; it is drawn as tabby.'),
  tabby: drawTabby,
  twill: asOne(drawTwill(2, 2), 'Over how many is not told; it is drawn as 2/2.'),
  twill21: drawTwill(2, 1),
  twill22: drawTwill(2, 2),
  twill31: drawTwill(3, 1),
  twill33: drawTwill(3, 3),
  twill41: drawTwill(4, 1),
  twill44: drawTwill(4, 4),
  satin: asOne(drawSatin(5, 2), 'Of how many ends is not told; it is drawn as five-end satin.'),
  satin5: drawSatin(5, 2),
  satin8: drawSatin(8, 3),
  damask: null,
  compoundWeave: null,
  gauze: null,
  tabletWoven: always(tabletWoven),
  tapestry: drawTapestry,
  twillTapestry: null,
  twined: drawTwined,
  looped: asOne(looping, 'How loops engage is not told; it is drawn as simple looping.'),
  simpleLooping: looping,
  loopAndTwist: null,
  crossKnit: null,
  needleBound: null,
  knitted: null,
  crocheted: null,
  netting: asOne(meshes, 'With or without knots is not told; it is drawn with knots.'),
  knottedNetting: meshes,
  knotlessNetting: always(() => looped(MESHES)),
  coiled: always(coiled),
  plaited: asOne(checker, 'Over how many is not told; it is drawn over one, under one.'),
  obliqueInterlacing: asOne(checker, 'Over how many is not told; it is drawn over one, under one.'),
  checkerPlaiting: checker,
  twillPlaiting: asOne(twilled, 'Over how many is not told; it is drawn over two, under two.'),
  twillPlaiting22: twilled,
  twillPlaiting33: drawPlaiting(twill(3, 3), 'Over three, under three, the next element one on.'),
  hexagonalPlaiting: null,
  sewnBraid: null,
};

/** Facets that the title says; what else is recorded (knots, stitches, how a pile is fixed) is in no drawing. */
const NAMED = [
  'activeSystem',
  'spacingClass',
  'engagement',
  'rowSlant',
  'face',
  'elementGrouping',
  'twillPattern',
  'pile',
] as const;

/**
 * A schema of a structure with its facets, for orientation: no picture of a find. A term without a drawing of its own
 * has that of the broader term (an added kind of twill that of twill); null where none would be true.
 */
export function structureDrawing(register: Register, structure: string, facets: Facets): Drawing | null {
  const vocabulary = register.vocabularies.get('structure');
  const term = vocabulary?.terms.find(({ id }) => id === structure);
  if (vocabulary === undefined || term === undefined) return null;
  const drawn = [structure, ...ancestors(vocabulary, structure)].find((id) => Object.hasOwn(RECIPES, id));
  const recipe = drawn === undefined ? null : (RECIPES[drawn] ?? null);
  if (drawn === undefined || recipe === null) return null;
  const notes: string[] = [];
  if (drawn !== structure)
    notes.push(
      `Drawn as ${vocabulary.terms.find(({ id }) => id === drawn)?.label ?? drawn}, the broader term.`,
    );
  const schema = recipe(facets, notes);
  if (schema === null) return null;
  if (facets.pile === 'present' && schema.pieces.every(({ tone }) => tone !== 'extra'))
    notes.push('The pile is not drawn.');
  const values = NAMED.flatMap((id) => {
    const attribute = register.attributes.get(id);
    const value = facets[id];
    return attribute === undefined || value === undefined ? [] : [{ attribute, value }];
  });
  return { ...schema, title: composedName(term, values), notes };
}
