import type { Vocabulary } from '../definition.ts';
import { BASKETRY, CLASSIFICATION, COMMON, EMERY, family } from './term.ts';

/** What the facets of a structure may be. Their wordings are read in descriptions too. */

const emery = family(EMERY);
const classified = family(CLASSIFICATION);
const basketry = family(BASKETRY);
const common = family(COMMON);

// biome-ignore format: one term a line
export const ACTIVE_SYSTEM: Vocabulary = { id: 'activeSystem', label: 'Active system', terms: [
  emery('weftActive', null, 'weft', 'The active pair runs across the item: weft-twining.', { en: ['weft active'], de: ['Schuss'], fr: ['trame'], it: ['trama'], es: ['trama'], da: ['islæt', 'skud'], no: ['innslag'] }),
  emery('warpActive', null, 'warp', 'The active pair runs along the item: warp-twining.', { en: ['warp active'], de: ['Kette'], fr: ['chaîne'], it: ['ordito'], es: ['urdimbre'], da: ['trend'], no: ['renning'] }),
] };

// biome-ignore format: one term a line
export const FACE: Vocabulary = { id: 'face', label: 'Face', terms: [
  emery('balanced', null, 'balanced', 'Both systems show alike.', { en: ['even', 'balanced weave', 'equal'], de: ['ausgeglichen', 'gleichmäßig'], fr: ['équilibré', 'équilibrée'], it: ['bilanciato', 'equilibrato'], es: ['equilibrado', 'balanceado'], da: ['balanceret', 'afbalanceret'], no: ['balansert'] }),
  emery('faced', null, 'faced, side not said', 'One system hides the other; which one is not said.', { en: ['faced'], de: ['Rips'], fr: ['reps'], it: ['reps'], es: ['canalé'], da: ['reps'], no: ['rips'] }),
  emery('weftFaced', 'faced', 'weft-faced', 'The weft hides the warp.', { en: ['weft face'], de: ['schusssichtig', 'schussbetont'], fr: ['effet trame', 'à effet trame'], it: ['effetto trama', 'a effetto di trama', 'faccia di trama'], es: ['cara de trama', 'efecto trama'], da: ['skuddominans', 'skudflade'], no: ['innslagseffekt'] }),
  emery('warpFaced', 'faced', 'warp-faced', 'The warp hides the weft.', { en: ['warp face'], de: ['kettsichtig', 'kettbetont'], fr: ['effet chaîne', 'à effet chaîne'], it: ['effetto ordito', 'a effetto di ordito', 'faccia di ordito'], es: ['cara de urdimbre', 'efecto urdimbre'], da: ['trenddominans', 'trendflade'], no: ['renningseffekt'] }),
] };

// biome-ignore format: one term a line
export const GROUPING: Vocabulary = { id: 'elementGrouping', label: 'Grouping of elements', terms: [
  emery('single', null, 'single in both systems', 'Each element goes by itself.', { en: ['single elements', 'single'], de: ['einzeln'] }),
  emery('paired', null, 'paired, systems not said', 'Elements go in pairs or more; in how many systems is not said.', { en: ['paired'], de: ['gepaart'], fr: ['jumelé'], it: ['appaiato'], es: ['pareado'], da: ['parret'] }),
  emery('pairedOne', 'paired', 'paired in one system', 'Pairs in one system, singles in the other: half-basket.', { en: ['half-basket'], de: ['Halbpanama'], fr: ['demi-natté', 'louisine'], it: ['mezzo panama'], es: ['medio panamá'], da: ['halvpanama'] }),
  emery('pairedBoth', 'paired', 'paired in both systems', 'Pairs, or more, in both systems: basket.', { en: ['basket'], de: ['Panama'], fr: ['natté'], it: ['panama'], es: ['panamá'], da: ['panama'] }),
] };

// biome-ignore format: one term a line
export const TWILL_PATTERN: Vocabulary = { id: 'twillPattern', label: 'Pattern of the diagonals', terms: [
  emery('straight', null, 'plain', 'The diagonals run one way.', { en: ['straight', 'unpatterned', 'one direction'], de: ['Gratköper', 'einfach'], fr: ['droit'], it: ['semplice'], es: ['simple'] }),
  emery('reversed', null, 'reversed', 'The diagonals turn back on lines; with or without an offset is not said.', { en: ['reversed twill', 'zigzag reversed'], fr: ['à chevrons'] }),
  emery('pointed', 'reversed', 'pointed', 'The diagonals turn back point to point: chevron.', { en: ['chevron', 'point', 'zigzag', 'zig-zag'], de: ['Spitzköper'], da: ['spidskiper'] }),
  emery('herringbone', 'reversed', 'herringbone', 'The diagonals turn back with an offset.', { de: ['Fischgrat'], it: ['spina di pesce', 'spigata'], es: ['espiga', 'espiguilla'], da: ['sildeben', 'fiskeben'], no: ['fiskebein'] }),
  emery('broken', null, 'broken', 'The diagonals break off and begin anew.', { de: ['gebrochen'], fr: ['brisé'], it: ['spezzato'], es: ['quebrado'], da: ['brudt'] }),
  emery('lozenge', null, 'diamond', 'The diagonals turn back in both systems.', { en: ['lozenge', 'diaper'], de: ['Raute', 'Rautenköper', 'Diamantköper'], fr: ['losangé', 'losange'], it: ['losanga', 'romboidale'], es: ['romboidal', 'rombo'], da: ['diamantkiper', 'rudekiper', 'krystalkiper'], no: ['ringvend'] }),
  emery('pointLozenge', 'lozenge', 'pointed diamond', 'Diamonds whose sides meet point to point: goose-eye.', { en: ['goose-eye', 'point lozenge', 'point diamond'], de: ['Spitzkaro'], fr: ['œil de perdrix'], it: ['occhio di pernice'], es: ['ojo de perdiz'], da: ['gåseøje'], no: ['gåsøye'] }),
  emery('brokenLozenge', 'lozenge', 'broken diamond', 'Diamonds whose sides are offset.', { en: ['broken lozenge', 'offset diamond'], de: ['versetzte Raute'], fr: ['losange brisé'], da: ['brudt krystalkiper'] }),
] };

// biome-ignore format: one term a line
export const PILE_FIXING: Vocabulary = { id: 'pileFixing', label: 'How the pile is fixed', described: { pile: 'present' }, terms: [
  common('insertedPile', null, 'inserted', 'Bundles or tufts laid or drawn in with the rows.', { en: ['laid in', 'inserted tufts'], de: ['eingelegt', 'eingelegter Flor'], fr: ['inséré'], it: ['inserito'], es: ['insertado'], da: ['indlagt'] }),
  common('loopedPile', null, 'looped', 'Loops of a weft or of an extra element.', { en: ['looped pile', 'loop pile', 'weft-loop pile', 'weft loop pile', 'weft looped pile'], de: ['Schlingenflor', 'Noppenflor', 'Schlaufenflor'], fr: ['bouclé', 'poil bouclé', 'à boucles'], it: ['pelo ad anelli', 'ad anelli'], es: ['pelo de bucle', 'con bucles'], da: ['løkkeluv'] }),
  common('warpPile', null, 'warp pile', 'A pile warp raised over rods: velvet.', { en: ['warp-pile', 'velvet pile'], de: ['Kettflor'], fr: ['poil de chaîne'], da: ['trendluv'] }),
  classified('knottedPile', null, 'knotted', 'Tied about warps; the knot is not said.', { en: ['knotted pile', 'pile knotted'], de: ['Knüpfflor', 'geknüpfter Flor'], fr: ['poil noué', 'à point noué'], it: ['pelo annodato'], es: ['pelo anudado', 'de nudo'], da: ['knyttet luv'], no: ['knyttet lo'] }),
  classified('symmetricalKnot', 'knottedPile', 'symmetrical knots', 'About two warps, both ends between them.', { en: ['symmetrical knot', 'symmetric knot', 'symmetrically knotted', 'symmetrically knotted pile', 'symmetrical knotted pile', 'ghiordes knot', 'turkish knot'], de: ['symmetrischer Knoten', 'symmetrische Knoten'], fr: ['nœud symétrique'], it: ['nodo simmetrico'], es: ['nudo simétrico'], da: ['symmetrisk knude'] }),
  classified('asymmetricalKnot', 'knottedPile', 'asymmetrical knots', 'About one warp and behind the next.', { en: ['asymmetrical knot', 'asymmetric knot', 'asymmetrically knotted', 'asymmetrically knotted pile', 'asymmetrical knotted pile', 'senneh knot', 'persian knot'], de: ['asymmetrischer Knoten', 'asymmetrische Knoten'], fr: ['nœud asymétrique'], it: ['nodo asimmetrico'], es: ['nudo asimétrico'], da: ['asymmetrisk knude'] }),
  classified('singleWarpKnot', 'knottedPile', 'single-warp knots', 'About one warp.', { en: ['single-warp knot', 'single warp knot', 'spanish knot'], de: ['Einkettknoten'], es: ['nudo español'] }),
] };

// biome-ignore format: one term a line
export const SUPPLEMENTARY: Vocabulary = { id: 'supplementary', label: 'Supplementary elements', described: {}, terms: [
  emery('noSupplementary', null, 'none', 'Looked for where it could be seen, and not there.', { en: ['no supplementary elements'], de: ['keine Zusatzelemente'] }),
  emery('supplementaryElement', null, 'supplementary, system not said', 'An extra element patterns the ground.', { en: ['supplementary elements'], de: ['Zusatzelement'] }),
  emery('supplementaryWeftElement', 'supplementaryElement', 'supplementary weft', 'An extra weft patterns the ground.', { en: ['supplementary wefts', 'extra weft', 'supplementary weft patterning', 'weft patterning', 'floating weft', 'supplementary weft floats', 'supplemental weft', 'supplementary patterning weft', 'supplementary patterning wefts'], de: ['Zierschuss', 'Musterschuss', 'Zierschuß', 'Zusatzschuss'], fr: ['trame supplémentaire', 'trames supplémentaires'], it: ['trama supplementare', 'trame supplementari'], es: ['trama suplementaria', 'tramas suplementarias'], da: ['ekstra skud', 'mønsterskud'], no: ['ekstra innslag'] }),
  emery('brocadingWeft', 'supplementaryWeftElement', 'brocading weft', 'An extra weft that turns back where its pattern ends.', { en: ['brocaded', 'brocading wefts', 'discontinuous supplementary weft', 'discontinuous supplementary wefts', 'brocading'], de: ['broschiert', 'Broché', 'brochiert'], fr: ['broché'], it: ['broccato'], es: ['brochado', 'espolinado'], da: ['brocheret'] }),
  emery('continuousPatternWeft', 'supplementaryWeftElement', 'continuous pattern weft', 'An extra weft from edge to edge.', { en: ['continuous supplementary weft', 'lancé'], de: ['lanciert'], fr: ['lancé'], it: ['lanciato'], es: ['lanzado'] }),
  emery('supplementaryWarpElement', 'supplementaryElement', 'supplementary warp', 'An extra warp patterns the ground.', { en: ['supplementary warps', 'extra warp', 'supplementary warp patterning', 'floating warp'], de: ['Zierkette', 'Musterkette'], fr: ['chaîne supplémentaire'], it: ['ordito supplementare'], es: ['urdimbre suplementaria'], da: ['ekstra trend'] }),
] };

// biome-ignore format: one term a line
export const WRAPPING: Vocabulary = { id: 'wrapping', label: 'Wrapping', terms: [
  common('noWrapping', null, 'none', 'Looked for where it could be seen, and not there.', { en: ['no wrapping'], de: ['keine Umwicklung'] }),
  basketry('wrappedCrossings', null, 'wrapped crossings', 'One active element wraps the crossings of a rigid passive system.', { en: ['bird-cage'], de: ['Wickelbindung'], fr: ['à croisées liées'] }),
  emery('soumak', null, 'soumak', 'A weft goes forward over warps and back under fewer.', { en: ['weft-wrapping', 'weft wrapping', 'soumak wrapping', 'sumak', 'soumakh', 'sumakh'], de: ['Soumak', 'Sumak', 'Wickelschuss'], fr: ['soumak'], it: ['sumak'], es: ['sumak'], da: ['soumak'] }),
] };

export const FACET_VOCABULARIES: readonly Vocabulary[] = [
  ACTIVE_SYSTEM,
  FACE,
  GROUPING,
  TWILL_PATTERN,
  PILE_FIXING,
  SUPPLEMENTARY,
  WRAPPING,
];
