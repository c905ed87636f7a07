import type { DescriptionWord } from '../definition.ts';
import { word } from './term.ts';

/**
 * Wordings of structure that mean more than one thing: read as far as every meaning goes, and asked about.
 * Common practice, no source.
 */
// biome-ignore format: one wording a line
export const ASKED_WORDS: readonly DescriptionWord[] = [
  word({ structure: 'tabby' }, { en: ['extended tabby', 'extended plain weave'] }, { suggests: 'halfBasket', asks: 'it is used of half-basket, of basket weave and of tabby with groups of threads' }),
  word({ structure: 'tabby' }, { en: ['2/1 tabby', 'tabby 2/1', '1/2 tabby', 'tabby 1/2'] }, { suggests: 'halfBasket', asks: 'it may be a half-basket weave or a slip for the 2/1 twill' }),
  word({ structure: 'twill' }, { en: ['four-end twill', '4-end twill', 'four-shed twill', '4-shed twill', 'four-end', '4-end', 'four-shed', '4-shed'], de: ['vierbindiger Köper', 'vierbindig'], fr: ['sergé de 4'], it: ['saia da 4'], es: ['sarga de 4'], da: ['firbindet kiper', 'firskaft', 'firbindet', 'firskaftet'], no: ['firskaftet'] }, { suggests: 'twill22', asks: 'four ends make the 2/2 twill as a rule, and the 3/1 as well' }),
  word({ structure: 'woven' }, { en: ['tela'] }, { suggests: 'tabby', asks: 'in Italian it is tabby, in Spanish often any cloth' }),
  word({}, { es: ['sarga'] }, { suggests: 'twill', asks: 'in Spanish it is a twill, and in places also the osier willow' }),
  word({ structure: 'twill' }, { it: ['spina'] }, { suggests: 'herringboneTwill', asks: 'it is said of any twill and of herringbone' }),
  word({}, { en: ['wicker', 'clayonnage', 'clayonné', 'osier', 'vimini', 'mimbre', 'wickerwork weave'] }, { suggests: 'basketry', asks: 'it names a material, or stake-and-strand, rigid twining or plaiting' }),
  word({ structure: 'twined' }, { fr: ['cordé croisé', 'cordée croisée'] }, { suggests: 'diagonalTwining', asks: 'it may be diagonal, countered or wrapped' }),
  word({}, { en: ['basket', 'baskets'] }, { suggests: 'basketWeave', alone: true, asks: 'it is a basket, or a basket weave' }),
  // Beside a structure of baskets and mats the word for the thing says nothing more.
  word({ structure: 'basketry' }, { en: ['basket', 'baskets'], de: ['Korb'], fr: ['panier', 'corbeille'], it: ['cesto', 'cestino'], es: ['cesto', 'cesta'], da: ['kurv'] }, { when: ['coiled', 'plaited', 'stakeAndStrand'] }),
  word({}, { en: ['mat', 'Matte', 'stuoia', 'estera', 'måtte', 'matte'] }, { when: ['plaited', 'twined', 'matting'] }),
  word({}, { es: ['red'] }, { suggests: 'netting', asks: 'in Spanish it is a net, in English a colour' }),
  word({}, { en: ['mat', 'Matte', 'stuoia', 'estera', 'måtte', 'matte'] }, { suggests: 'matting', asks: 'it names a use and leaves the structure open' }),
  word({ structure: 'basketry' }, { en: ['woven basketry', 'woven basket'] }, { suggests: 'basketry', asks: 'of baskets "woven" is said of plaiting, twining and stake-and-strand' }),
  word({ structure: 'matting' }, { en: ['woven matting', 'woven mat'] }, { suggests: 'matting', asks: 'of mats "woven" is said of plaiting, twining and weaving' }),
  word({}, { en: ['natte'] }, { suggests: 'matting', asks: 'without its accent the French for basket weave is that for a mat' }),
  word({}, { en: ['knotless', 'knotless technique'] }, { suggests: 'knotlessNetting', asks: 'it is also used loosely of needle-binding' }),
  word({}, { en: ['knotted'], de: ['geknotet', 'geknüpft'], fr: ['noué'], it: ['annodato'], es: ['anudado'], da: ['knyttet'] }, { suggests: 'knottedNetting', alone: true, asks: 'netting and pile are both knotted' }),
  word({ structure: 'knottedNetting' }, { en: ['knotted', 'with knots'], de: ['geknotet', 'geknüpft', 'mit Knoten'], fr: ['noué', 'à nœuds', 'avec nœuds'], it: ['annodato', 'annodata', 'con nodi'], es: ['anudado', 'con nudos'], da: ['knyttet', 'med knuder'] }, { when: ['netting'] }),
  word({ structure: 'knotlessNetting' }, { en: ['knotless', 'unknotted', 'without knots'], de: ['knotenlos', 'ohne Knoten'], fr: ['sans nœud', 'sans nœuds'], it: ['senza nodi'], es: ['sin nudos'], da: ['knudeløs', 'knudeløst', 'uden knuder'] }, { when: ['netting'] }),
  word({ pileFixing: 'knottedPile' }, { en: ['knotted'], de: ['geknüpft'], fr: ['noué'], it: ['annodato'], es: ['anudado'], da: ['knyttet'] }, { when: ['woven'] }),
  word({}, { de: ['Geflecht', 'Flechtwerk'], it: ['intreccio'] }, { suggests: 'basketry', alone: true, asks: 'it is said of plaiting, of twining and of baskets' }),
  word({ structure: 'looped' }, { es: ['punto de aguja'] }, { suggests: 'needleBound', asks: 'it is needle-binding, knitting or needle lace' }),
  word({}, { es: ['entretejido'] }, { suggests: 'stakeAndStrand', alone: true, asks: 'it is said of any interlacing' }),
  word({}, { en: ['corde'] }, { suggests: 'twined', asks: 'without its accent the French for twined is that for rope' }),
  word({}, { en: ['tresse'] }, { suggests: 'plaited', asks: 'without its accent the French for plaited is that for braid' }),
  word({ structure: 'plaited' }, { fr: ['tressé', 'tressée', 'tressés', 'tressées'] }, { accented: true }),
  word({}, { en: ['wrapped', 'wrapping', 'avvolto', 'enrollado', 'omviklet', 'Umwicklung', 'umwickelt', 'enroulé', 'Wickelbindung', 'Wickeltechnik'] }, { suggests: 'wrappedTwining', alone: true, asks: 'it may be wrapped twining, weft-wrapping (soumak), coiling or a wrapped thread' }),
  word({ wrapping: 'wrappedCrossings' }, { en: ['wrapped', 'wrapping', 'with wrapping'], de: ['umwickelt', 'mit Umwicklung'], it: ['avvolto'], da: ['omviklet'] }, { when: ['twined'] }),
  word({ structure: 'looped' }, { en: ['coptic stitch', 'coptic knitting'] }, { suggests: 'crossKnit', asks: 'it is said of cross-knit looping, of needle-binding and of knitting' }),
  word({ structure: 'woven' }, { en: ['brocade', 'brocades', 'broccato', 'brocado', 'Brokat', 'brocart'] }, { suggests: 'brocadingWeft', asks: 'it is said of brocading wefts and of any rich patterned silk' }),
  word({}, { en: ['taffeta ribbon weave', 'warp-patterned'] }, { asks: 'it says that there is a pattern, not how it is made' }),
  word({ structure: 'weftWrapping', wrapping: 'soumak' }, { en: ['soumak', 'sumak', 'soumakh', 'sumakh', 'weft-wrapping', 'weft wrapping', 'soumak weave', 'soumak wrapping'], de: ['Wickelschuss'] }, { weak: true }),
  word({}, { en: ['braided', 'braiding'] }, { suggests: 'braid', asks: 'a braid is cordage, a braided fabric is plaited' , alone: true }),
  word({}, { en: ['plait', 'plaits'] }, { suggests: 'plaited', alone: true, asks: 'it may be a single plaited cord or a plaited fabric' }),
  word({}, { en: ['knitted look', 'knit-like'] }, { asks: 'cross-knit looping looks like knitting' }),
  word({}, { en: ['mesh'], de: ['Masche', 'Maschen'], fr: ['maille', 'mailles'], it: ['maglia'], es: ['malla'] }, { suggests: 'netting', alone: true, asks: 'netting, looping and knitting all have meshes' }),
  word({}, { it: ['punto'], es: ['punto'] }, { alone: true, asks: 'it is knitting, a stitch or lace' }),
];
