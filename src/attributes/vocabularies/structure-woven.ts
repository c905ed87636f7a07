import type { Term } from '../definition.ts';
import { EMERY, family } from './term.ts';

const woven = family(EMERY);

/** How woven elements interlace; face, pattern of the diagonals, pairing and pile are facets of their own. */
// biome-ignore format: one language a line
export const WOVEN: readonly Term[] = [
  woven('woven', null, 'woven', 'Two systems interlace at about 90 degrees, made on stretched passives.', {
    en: ['weave', 'woven fabric', 'loom-woven', 'woven textile', 'woven cloth'],
    de: ['Gewebe', 'gewebt', 'gewoben', 'Webstoff'], fr: ['tissu', 'tissé', 'tissage'], it: ['tessuto', 'tessitura'],
    es: ['tejido', 'tejido de telar'], da: ['vævet', 'vævet stof', 'vævning'], no: ['vevd', 'vevet', 'vev', 'vevnad'],
  }, { noun: 'weave' }),
  woven('tabby', 'woven', 'tabby', 'Over one, under one.', {
    en: ['plain weave', '1/1', '1/1 tabby', 'tabby 1/1', 'linen weave', 'plain-weave', 'tabby weave', 'tabbies'],
    de: ['Leinwandbindung', 'leinwandbindig', 'Leinenbindung', 'Tuchbindung', 'tuchbindig', 'Leinwand', 'LW', 'Lb.', 'L 1/1', 'LW 1/1', 'Lwb.', 'leinenbindig', 'Leinwandgewebe', 'leinwandbindiges Gewebe', 'einfache Leinwandbindung', 'einfaches Leinwandgewebe'],
    fr: ['toile', 'armure toile', 'taffetas', 'armure taffetas', 'toile simple'], it: ['armatura tela', 'tela semplice', 'armatura a tela', 'tela 1/1'],
    es: ['tafetán', 'ligamento tela', 'ligamento tafetán', 'ligamento de tafetán', 'tafetán simple'],
    da: ['lærredsbinding', 'toskaft', 'lærred', 'lærredsvævning', 'lærredsbundet'], no: ['lerretsbinding', 'lerret', 'lerretsvev', 'toskaftsvev', 'toskaftbinding'],
  }),
  woven('twill', 'woven', 'twill', 'Each row’s floats shift by one, which makes diagonal lines.', {
    en: ['twill weave', 'diagonal weave', 'twilled', 'twills'], de: ['Köper', 'Köperbindung', 'köperbindig'], fr: ['sergé', 'armure sergé', 'armure sergée'],
    it: ['saia', 'diagonale', 'armatura saia'], es: ['ligamento sarga', 'tejido de sarga', 'ligamento de sarga'], da: ['kiper', 'kiperbinding', 'kipervævning', 'kiperbundet'], no: ['kypert', 'kypertbinding'],
  }),
  woven('twill21', 'twill', '2/1 twill', 'Over two, under one; 1/2 is the same structure seen from the other face.', {
    en: ['2/1', '1/2', '1/2 twill', 'three-end twill', '3-end twill', 'three-shed twill', '3-shed twill', 'twill 2/1', 'twill 1/2', '2-1 twill'], de: ['dreibindiger Köper', 'Köper 2/1', '2/1-Köper', 'K 2/1', 'Köper 1/2', 'K 1/2'],
    fr: ['sergé 2 lie 1', 'sergé de 2 lie 1', 'sergé 2/1', 'sergé de 3'], it: ['saia 2/1', 'saia da 3'], es: ['sarga 2/1', 'sarga de 3'], da: ['2/1 kiper', 'kiper 2/1', 'trebindet kiper', 'treskaft', '2/1-kiper'], no: ['treskaftet', '2/1 kypert'],
  }),
  woven('twill22', 'twill', '2/2 twill', 'Over two, under two.', {
    en: ['2/2', 'twill 2/2', '2-2 twill'], de: ['Gleichgratköper', 'Köper 2/2', '2/2-Köper', 'K 2/2'],
    fr: ['sergé 2 lie 2', 'sergé de 2 lie 2', 'sergé 2/2', 'batavia'], it: ['saia 2/2'], es: ['sarga 2/2', 'sarga batavia'],
    da: ['2/2 kiper', 'kiper 2/2', 'ligesidet kiper', '2/2-kiper'], no: ['2/2 kypert'],
  }),
  woven('twill31', 'twill', '3/1 twill', 'Over three, under one; 1/3 is the same structure seen from the other face.', { en: ['3/1', '1/3', '1/3 twill', 'twill 3/1', 'twill 1/3'], de: ['Köper 3/1', 'K 3/1', 'Köper 1/3', 'K 1/3'], fr: ['sergé 3/1', 'sergé 3 lie 1', 'sergé de 3 lie 1'], it: ['saia 3/1'], es: ['sarga 3/1'], da: ['3/1 kiper', 'kiper 3/1'], no: ['3/1 kypert'] }),
  woven('twill33', 'twill', '3/3 twill', 'Over three, under three.', { en: ['3/3', 'twill 3/3'], de: ['Köper 3/3', 'K 3/3'], fr: ['sergé 3/3', 'sergé 3 lie 3'], it: ['saia 3/3'], es: ['sarga 3/3'], da: ['3/3 kiper'] }),
  woven('twill41', 'twill', '4/1 twill', 'Over four, under one, shifting by one; 1/4 is the other face.', { en: ['4/1', '1/4', 'twill 4/1', '1/4 twill', 'twill 1/4'], de: ['Köper 4/1', 'K 4/1', 'Köper 1/4'], fr: ['sergé 4/1', 'sergé 4 lie 1'], it: ['saia 4/1'], es: ['sarga 4/1'], da: ['4/1 kiper'] }),
  woven('twill44', 'twill', '4/4 twill', 'Over four, under four.', { en: ['4/4', 'twill 4/4'], de: ['Köper 4/4', 'K 4/4'], fr: ['sergé 4/4', 'sergé 4 lie 4'], it: ['saia 4/4'], es: ['sarga 4/4'], da: ['4/4 kiper'] }),
  woven('satin', 'woven', 'satin', 'Long scattered floats.', { en: ['satin weave', 'sateen'], de: ['Atlas', 'Atlasbindung', 'atlasbindig'], fr: ['armure satin'], it: ['raso'], es: ['ligamento raso', 'satén'], da: ['satinbinding'] }),
  woven('satin5', 'satin', 'five-end satin', 'Floats over four; each end is bound once in five.', { en: ['5-end satin', 'satin 4/1', '4/1 satin', 'satin of 5'], de: ['fünfbindiger Atlas', 'Atlas 4/1', 'Atlas 1/4'], fr: ['satin de 5'], it: ['raso da 5'], es: ['raso de 5'] }),
  woven('satin8', 'satin', 'eight-end satin', 'Floats over seven; each end is bound once in eight.', { en: ['8-end satin', 'satin 7/1', '7/1 satin', 'satin of 8'], de: ['achtbindiger Atlas', 'Atlas 7/1'], fr: ['satin de 8'], it: ['raso da 8'], es: ['raso de 8'] }),
  woven('damask', 'woven', 'damask', 'One weave patterned by its two faces.', { en: ['damask weave', 'damasked'], de: ['Damast', 'damastbindig'], fr: ['damas'], it: ['damasco'], es: ['damasco'], da: ['damask'] }, { inner: 'variants' }),
  woven('twillDamask', 'damask', 'twill damask', 'A damask of twill.', { de: ['Köperdamast'], fr: ['damas sergé'], es: ['damasco de sarga'] }),
  woven('satinDamask', 'damask', 'satin damask', 'A damask of satin.', { de: ['Atlasdamast'], fr: ['damas satin', 'damas de satin'] }),
  woven('compoundWeave', 'woven', 'compound weave', 'More than two systems in one weave.', { en: ['weft-faced compound weave', 'compound woven', 'weft-faced compound'], de: ['Schusskompositbindung', 'Kompositbindung'], fr: ['tissu composé'], it: ['tessuto composto'], es: ['tejido compuesto'] }),
  woven('taquete', 'compoundWeave', 'taqueté', 'Weft-faced compound tabby.', { en: ['weft-faced compound tabby', 'weft-faced compound plain weave'], de: ['Schusskompositbindung in Leinwand'], it: ['taqueté'], es: ['taqueté'] }),
  woven('samite', 'compoundWeave', 'samite', 'Weft-faced compound twill.', { en: ['weft-faced compound twill', 'samitum'], de: ['Samit', 'Schusskompositköper'], fr: ['samit'], it: ['sciamito'], es: ['jamete'] }),
  woven('lampas', 'compoundWeave', 'lampas', 'A ground weave with pattern wefts bound by a warp of their own.', { en: ['lampas weave'], it: ['lampasso'], es: ['lampás'] }),
  woven('doubleCloth', 'compoundWeave', 'double cloth', 'Two weaves one above the other that change places.', { en: ['double weave', 'doublecloth', 'double-weave'], de: ['Doppelgewebe'], fr: ['double étoffe'], it: ['doppio tessuto'], es: ['doble tela', 'tejido doble'], da: ['dobbeltvævning'] }),
  woven('tabletWoven', 'woven', 'tablet-woven band', 'Warp twisted through pierced tablets; rows lock the twist.', {
    en: ['tablet weave', 'tablet-woven', 'card-woven', 'tablet weaving', 'card weaving', 'tablet weave band', 'tablet band'], de: ['Brettchengewebe', 'Brettchenweberei', 'brettchengewebt', 'Brettchenband', 'Brettchenborte'],
    fr: ['tissage aux plaquettes', 'tissé aux plaquettes', 'tissage aux plaques', 'tissage aux tablettes', 'tissé aux plaques', 'tissé aux tablettes', 'galon aux tablettes', 'galon aux plaquettes', 'bande tissée aux tablettes', 'bande tissée aux plaquettes'], it: ['tessitura a tavolette', 'tessuto a tavolette'], es: ['tejido de placas', 'tejido de tablillas', 'tejido a tablillas', 'tejido con tablillas', 'tejida con tablillas', 'cinta tejida con tablillas', 'cinta de tablillas'],
    da: ['brikvævning', 'brikvævet', 'brikbånd', 'brikvævet bånd', 'brikvævet kantbånd'], no: ['brikkevev', 'brikkevevd', 'brikkevevd bånd', 'brikkebånd'],
  }),
  woven('tapestry', 'woven', 'tapestry', 'Discontinuous weft.', { en: ['tapestry weave', 'kilim', 'tapestry-woven', 'slit tapestry', 'slit-tapestry', 'interlocked tapestry', 'dovetailed tapestry'], de: ['Wirkerei', 'gewirkt', 'Bildwirkerei'], fr: ['tapisserie', 'armure tapisserie'], it: ['arazzo', 'tessuto ad arazzo'], es: ['tapiz', 'tapicería'], da: ['billedvæv', 'gobelin', 'billedvævning'], no: ['billedvev'] }, { inner: 'variants' }),
  woven('twillTapestry', 'tapestry', 'twill tapestry', 'Discontinuous weft in a twill.', { en: ['tapestry in twill', 'tapestry twill'], de: ['Köperwirkerei', 'Wirkerei in Köper'], fr: ['tapisserie sergée'] }),
  woven('gauze', 'woven', 'gauze', 'Crossed warps.', { en: ['gauze weave', 'leno', 'leno weave', 'gauzes'], de: ['Dreher', 'Dreherbindung', 'Drehergewebe'], fr: ['gaze'], it: ['garza'], es: ['gasa'], da: ['gaze'] }),
];
