import type { Term } from '../definition.ts';
import { EMERY, family } from './term.ts';

const woven = family(EMERY);

// biome-ignore format: one language a line
export const WOVEN: readonly Term[] = [
  woven('woven', null, 'woven', 'Two systems interlace at about 90 degrees, made on stretched passives.', {
    en: ['weave', 'woven fabric', 'loom-woven', 'woven textile'],
    de: ['Gewebe', 'gewebt', 'gewoben'], fr: ['tissu', 'tissé', 'tissage'], it: ['tessuto', 'tessitura'],
    es: ['tejido', 'tejido de telar'], da: ['vævet', 'vævet stof', 'vævning'], no: ['vevd', 'vevet', 'vev', 'vevnad'],
  }),
  woven('tabby', 'woven', 'tabby', 'Over one, under one.', {
    en: ['plain weave', '1/1', '1/1 tabby', 'linen weave', 'plain-weave', 'tabby weave'],
    de: ['Leinwandbindung', 'leinwandbindig', 'Leinenbindung', 'Tuchbindung', 'Leinwand', 'LW', 'Lb.', 'L 1/1'],
    fr: ['toile', 'armure toile', 'taffetas'], it: ['tela', 'armatura tela'],
    es: ['tafetán', 'ligamento tela', 'ligamento tafetán'],
    da: ['lærredsbinding', 'toskaft', 'lærred'], no: ['lerretsbinding', 'lerret'],
  }),
  woven('repp', 'tabby', 'repp', 'Tabby with one system so dense that it hides the other.', {
    en: ['rep', 'faced tabby', 'faced plain weave'], de: ['Rips', 'Ripsbindung', 'Gewebe in Rips'],
    fr: ['reps', 'cannelé'], it: ['reps', 'canneté'], es: ['canalé'], da: ['repsvævning', 'reps'], no: ['rips'],
  }),
  woven('weftFacedRepp', 'repp', 'weft-faced repp', 'The weft hides the warp.', {
    en: ['weft-faced', 'weft-faced tabby', 'weft-faced plain weave', 'weft repp'],
    de: ['Schussrips', 'Schußrips'], fr: ['reps trame', 'toile à effet trame'], it: ['reps di trama'],
    es: ['cara de trama', 'tafetán cara de trama'], da: ['skudreps', 'islætreps'],
  }),
  woven('warpFacedRepp', 'repp', 'warp-faced repp', 'The warp hides the weft.', {
    en: ['warp-faced', 'warp-faced tabby', 'warp-faced plain weave', 'warp repp'],
    de: ['Kettrips'], fr: ['reps chaîne', 'toile à effet chaîne'], it: ['reps di ordito'],
    es: ['cara de urdimbre', 'tafetán cara de urdimbre'], da: ['trendreps'],
  }),
  woven('halfBasket', 'tabby', 'half-basket', 'Pairs in one system, singles in the other.', {
    en: ['half-panama', 'extended tabby', 'paired tabby', 'half basket'], de: ['Halbpanama', 'Halbpanamabindung'],
    fr: ['toile demi-nattée', 'louisine'], it: ['mezzo panama'], es: ['medio panamá', 'esterilla parcial'], da: ['halvpanama'],
  }),
  woven('basketWeave', 'tabby', 'basket weave', 'Pairs, or more, in both systems.', {
    en: ['panama', 'hopsack', '2/2 tabby', 'basket', 'basket weave 2/2', '2/2 basket weave', '2/2 basket'], de: ['Panamabindung', 'Panama'], fr: ['toile nattée'],
    es: ['esterilla', 'ligamento panamá'], da: ['panamabinding'],
  }),
  woven('twill', 'woven', 'twill', 'Each row’s floats shift by one, which makes diagonal lines.', {
    en: ['twill weave', 'diagonal weave'], de: ['Köper', 'Köperbindung', 'köperbindig'], fr: ['sergé', 'armure sergé'],
    it: ['saia', 'diagonale', 'spina'], es: ['ligamento sarga', 'tejido de sarga'], da: ['kiper', 'kiperbinding'], no: ['kypert'],
  }),
  woven('twill21', 'twill', '2/1 twill', 'Over two, under one; 1/2 is the same structure seen from the other face.', {
    en: ['2/1', '1/2', '1/2 twill', 'three-end twill', '3-shed twill', 'twill 2/1'], de: ['dreibindiger Köper', 'Köper 2/1', '2/1-Köper', 'K 2/1'],
    fr: ['sergé 2 lie 1', 'sergé 2/1'], it: ['saia 2/1'], es: ['sarga 2/1'], da: ['2/1 kiper', 'trebindet kiper', 'treskaft'],
  }),
  woven('twill22', 'twill', '2/2 twill', 'Over two, under two.', {
    en: ['2/2', 'four-end twill', '4-shed twill', 'twill 2/2'], de: ['Gleichgratköper', 'Köper 2/2', '2/2-Köper', 'K 2/2', 'vierbindiger Köper'],
    fr: ['sergé 2 lie 2', 'sergé 2/2', 'batavia'], it: ['saia 2/2', 'saia da 4'], es: ['sarga 2/2', 'sarga batavia'],
    da: ['2/2 kiper', 'firbindet kiper', 'firskaft'], no: ['2/2 kypert'],
  }),
  woven('twill31', 'twill', '3/1 twill', 'Over three, under one.', { en: ['3/1', '1/3', '1/3 twill', 'twill 3/1'], de: ['Köper 3/1'], fr: ['sergé 3/1'], it: ['saia 3/1'], es: ['sarga 3/1'], da: ['3/1 kiper'] }),
  woven('chevronTwill', 'twill', 'chevron twill', 'The diagonal turns back on a line, point to point.', {
    en: ['chevron', 'pointed twill', 'zig-zag twill'], de: ['Spitzköper'], fr: ['chevron', 'sergé en chevron'], it: ['spina di pesce'], es: ['espiga'], da: ['spidskiper'],
  }),
  woven('herringboneTwill', 'twill', 'herringbone twill', 'The diagonal turns back on a line with an offset.', {
    en: ['herringbone', 'broken twill'], de: ['Fischgratköper', 'Fischgrat'], fr: ['sergé brisé'], it: ['spigata'], es: ['espiguilla'], da: ['brudt kiper'], no: ['fiskebein'],
  }),
  woven('lozengeTwill', 'twill', 'lozenge twill', 'The diagonal turns back in both systems.', {
    en: ['diamond twill', 'broken lozenge twill', 'goose-eye', 'lozenge'], de: ['Rautenköper', 'Diamantköper'],
    fr: ['sergé losangé', 'losangé', 'à losanges'], it: ['losanga', 'occhio di pernice'], es: ['sarga romboidal', 'ojo de perdiz'],
    da: ['krystalkiper', 'gåseøje', 'diamantkiper'], no: ['ringvend'],
  }),
  woven('tabletWoven', 'woven', 'tablet-woven band', 'Warp twisted through pierced tablets; rows lock the twist.', {
    en: ['tablet weave', 'tablet-woven', 'card-woven', 'tablet weaving'], de: ['Brettchengewebe', 'Brettchenweberei', 'brettchengewebt'],
    fr: ['tissage aux plaques', 'tissage aux tablettes'], it: ['tessitura a tavolette'], es: ['tejido de placas', 'tejido de tablillas'],
    da: ['brikvævning', 'brikvævet'], no: ['brikkevev'],
  }),
  woven('tapestry', 'woven', 'tapestry', 'Discontinuous weft.', { en: ['tapestry weave', 'kilim'], de: ['Wirkerei', 'gewirkt'], fr: ['tapisserie'], it: ['arazzo'], es: ['tapiz'], da: ['billedvæv', 'gobelin'] }),
  woven('gauze', 'woven', 'gauze', 'Crossed warps.', { en: ['gauze weave', 'leno'], de: ['Dreher', 'Dreherbindung'], fr: ['gaze'], it: ['garza'], es: ['gasa'] }),
  woven('supplementaryWeft', 'woven', 'supplementary weft', 'An extra system patterns a ground weave.', { en: ['brocade', 'brocaded'], de: ['Lancé', 'Broché'], fr: ['lancé', 'broché'], it: ['trama supplementare'], es: ['trama suplementaria'], da: ['ekstra skud'] }),
  woven('satin', 'woven', 'satin', 'Long scattered floats.', { en: ['satin weave'], de: ['Atlas', 'Atlasbindung'], fr: ['armure satin'], it: ['raso'], es: ['raso'] }),
  woven('pileFabric', null, 'pile fabric', 'Knotted or looped pile in a woven ground.', {
    en: ['pile weave', 'knotted pile', 'looped pile', 'knotted carpet'], de: ['Florgewebe', 'Knüpfgewebe'], fr: ['tissu à poil', 'à point noué', 'velours'],
    it: ['tessuto a pelo'], es: ['tejido de pelo', 'tejido de nudo'], da: ['luvvæv', 'rya'], no: ['ryevev'],
  }),
];
