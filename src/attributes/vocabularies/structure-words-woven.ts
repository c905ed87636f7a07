import type { DescriptionWord } from '../definition.ts';
import { named, word } from './term.ts';

/** How descriptions speak of woven structures: face, pairing, pattern, pile, extra elements. */

// biome-ignore format: one language a line
const KINDS_OF_WEAVE: readonly DescriptionWord[] = [
  named('repp', 'repp', { structure: 'tabby', face: 'faced' }, {
    en: ['rep', 'faced tabby', 'faced plain weave', 'reps'], de: ['Rips', 'Ripsbindung', 'Ripsgewebe', 'Gewebe in Rips', 'ripsbindig'],
    fr: ['reps', 'cannelé'], it: ['canneté', 'cannellato'], es: ['canalé'], da: ['repsvævning', 'repsbinding'], no: ['rips'],
  }),
  named('weftFacedRepp', 'weft-faced repp', { structure: 'tabby', face: 'weftFaced' }, {
    en: ['weft-faced tabby', 'weft-faced plain weave', 'weft repp', 'weft-faced rep', 'weft rep', 'tabby, weft-faced'],
    de: ['Schussrips', 'Schußrips'], fr: ['reps trame', 'reps de trame', 'toile à effet trame', 'toile à effet de trame'], it: ['reps di trama', 'tela a faccia di trama', 'tela a effetto di trama', 'tela a dominante di trama'],
    es: ['tafetán cara de trama', 'tafetán de cara de trama'], da: ['skudreps', 'islætreps'], no: ['innslagsrips'],
  }),
  named('warpFacedRepp', 'warp-faced repp', { structure: 'tabby', face: 'warpFaced' }, {
    en: ['warp-faced tabby', 'warp-faced plain weave', 'warp repp', 'warp-faced rep', 'warp rep'],
    de: ['Kettrips', 'Kettenrips'], fr: ['reps chaîne', 'reps de chaîne', 'toile à effet chaîne', 'toile à effet de chaîne'], it: ['reps di ordito', 'tela a faccia di ordito', "tela a faccia d'ordito", 'tela a effetto di ordito'],
    es: ['tafetán cara de urdimbre', 'tafetán de cara de urdimbre'], da: ['trendreps', 'kædereps'], no: ['renningsrips', 'varprips'],
  }),
  named('halfBasket', 'half-basket', { structure: 'tabby', elementGrouping: 'pairedOne' }, {
    en: ['half-panama', 'half basket', 'half-basket weave', 'half-basket tabby', 'semi-basket weave', 'semi-basket'], de: ['Halbpanama', 'Halbpanamabindung', 'Halb-Panama'],
    fr: ['toile demi-nattée', 'louisine', 'demi-natté'], it: ['mezzo panama'], es: ['medio panamá', 'esterilla parcial'], da: ['halvpanama', 'halvpanamabinding'], no: ['halvpanama'],
  }),
  named('basketWeave', 'basket weave', { structure: 'tabby', elementGrouping: 'pairedBoth' }, {
    en: ['panama', 'hopsack', '2/2 tabby', 'tabby 2/2', 'basket weave 2/2', '2/2 basket weave', '2/2 basket', '2x2 basket weave', 'panama weave', '2/2 panama', '2/2 hopsack'], de: ['Panamabindung', 'Panama', 'Panama 2/2', 'Würfelbindung', 'panamabindig'], fr: ['toile nattée', 'natté 2/2', 'armure nattée'],
    it: ['armatura panama'], es: ['esterilla', 'ligamento panamá', 'ligamento esterilla'], da: ['panamabinding', 'panamavævning'], no: ['panamavev'],
  }),
  named('chevronTwill', 'chevron twill', { structure: 'twill', twillPattern: 'pointed' }, {
    en: ['chevron', 'pointed twill', 'zig-zag twill', 'zigzag twill', 'point twill', 'twill, chevron'], de: ['Spitzköper', 'Spitzgratköper', 'Zickzackköper'], da: ['spidskiper', 'spidskipervævning'], no: ['spisskypert'],
  }),
  named('herringboneTwill', 'herringbone twill', { structure: 'twill', twillPattern: 'herringbone' }, {
    en: ['herringbone', 'herring-bone twill', 'herringbone weave', 'twill, herringbone'], de: ['Fischgratköper', 'Fischgrat', 'Fischgrätköper', 'Fischgrät', 'Fischgrätenköper'], it: ['spina di pesce', 'spigata', 'saia spigata', 'saia a spina di pesce', 'spinapesce'], es: ['espiguilla', 'espiga', 'sarga espigada', 'sarga en espiga', 'sarga de espiga', 'sarga en espiguilla'], da: ['sildebenskiper', 'fiskebenskiper', 'sildeben'], no: ['fiskebein', 'fiskebeinskypert'],
  }),
  named('lozengeTwill', 'lozenge twill', { structure: 'twill', twillPattern: 'lozenge' }, {
    en: ['diamond twill', 'lozenge', 'twill, diamond', 'diaper twill', 'diamond-twill', 'diamond patterned twill'], de: ['Rautenköper', 'Diamantköper', 'Karoköper'],
    fr: ['sergé losangé', 'losangé', 'à losanges', 'sergé à losanges', 'sergé losange'], it: ['losanga', 'saia a losanghe', 'a losanghe', 'saia a losanga', 'saia losangata'], es: ['sarga romboidal', 'sarga de rombos', 'sarga en rombo', 'romboidal'],
    da: ['diamantkiper', 'rudekiper', 'rudet kiper'], no: ['ringvend', 'diamantkypert'],
  }),
  named('supplementaryWeft', 'supplementary weft', { structure: 'woven', supplementary: 'supplementaryWeftElement' }, {}),
  named('pileFabric', 'pile fabric', { structure: 'woven', pile: 'present' }, {
    en: ['pile weave', 'pile-weave', 'woven pile', 'pile woven'], de: ['Florgewebe'], fr: ['tissu à poil', 'tissu à poils'],
    it: ['tessuto a pelo', 'tessuto con pelo'], es: ['tejido de pelo', 'tejido con pelo'], da: ['luvvæv', 'rya'], no: ['ryevev'],
  }),
  word({ structure: 'woven', pile: 'present', pileFixing: 'knottedPile' }, { en: ['knotted carpet', 'knotted-pile fabric', 'knotted pile carpet', 'knotted rug', 'pile carpet', 'knotted pile'], de: ['Knüpfgewebe', 'Knüpfteppich'], fr: ['tissu à point noué', 'tapis noué', 'à point noué'], it: ['tappeto annodato'], es: ['tejido de nudo', 'alfombra anudada'], da: ['knyttet tæppe'] }, { weak: true }),
  word({ structure: 'woven', pile: 'present', pileFixing: 'warpPile' }, { en: ['velvet', 'velvet weave', 'cut velvet', 'uncut velvet', 'velvets'], de: ['Samt', 'Samtgewebe'], fr: ['velours'], it: ['velluto'], es: ['terciopelo'], da: ['fløjl'] }, { weak: true }),
  word({ structure: 'woven', pile: 'present', pileFixing: 'loopedPile' }, { en: ['weft-loop pile weave', 'weft loop pile weave', 'looped pile', 'loop pile', 'weft-loop pile', 'looped-pile weave'], de: ['Noppengewebe', 'Schlingengewebe'] }, { weak: true }),
];

const WEAVES = ['tabby', 'twill', 'tapestry', 'woven'];

// biome-ignore format: one language a line
const FACES: readonly DescriptionWord[] = [
  word({ face: 'weftFaced', structure: 'woven' }, { en: ['weft-faced', 'weft faced', 'weft-face', 'weft-dominant'], de: ['schussbetont', 'schusssichtig', 'schußbetont', 'mit verdeckter Kette', 'Schusseffekt', 'mit Schusseffekt'], fr: ['effet trame', 'à effet trame', 'à effet de trame', 'effet de trame', 'face trame', 'à dominante trame'], it: ['effetto trama', 'effetto di trama', 'a effetto trama', 'a effetto di trama', 'a faccia di trama', 'faccia di trama', 'a dominante di trama'], es: ['cara de trama', 'efecto trama', 'efecto de trama', 'de cara de trama', 'faz de trama'], da: ['skuddominans', 'skudflade', 'skuddækket', 'med skudeffekt', 'skudeffekt'], no: ['innslagseffekt', 'innslagsdekket'] }, { weak: true }),
  word({ face: 'warpFaced', structure: 'woven' }, { en: ['warp-faced', 'warp faced', 'warp-face', 'warp-dominant'], de: ['kettbetont', 'kettsichtig', 'mit verdecktem Schuss', 'Ketteffekt', 'mit Ketteffekt'], fr: ['effet chaîne', 'à effet chaîne', 'à effet de chaîne', 'effet de chaîne', 'face chaîne', 'à dominante chaîne'], it: ['effetto ordito', 'effetto di ordito', 'a effetto ordito', 'a effetto di ordito', 'a faccia di ordito', 'faccia di ordito'], es: ['cara de urdimbre', 'efecto urdimbre', 'efecto de urdimbre', 'de cara de urdimbre', 'faz de urdimbre'], da: ['trenddominans', 'trendflade', 'trenddækket', 'med trendeffekt', 'trendeffekt', 'trendbetonet', 'kædebetonet', 'kædeflade'], no: ['renningseffekt'] }, { weak: true }),
  word({ face: 'balanced' }, { en: ['balanced', 'even-weave', 'evenly balanced'], de: ['ausgeglichen', 'ausgewogen'], fr: ['équilibré'], it: ['bilanciato', 'equilibrato'], es: ['equilibrado', 'balanceado'], da: ['balanceret', 'afbalanceret'], no: ['balansert'] }, { when: WEAVES }),
  word({ structure: 'tabby', face: 'balanced' }, { it: ['tela bilanciata', 'tela equilibrata'] }),
  word({ structure: 'tabby' }, { en: ['simple', 'plain', 'regular'], de: ['einfach'], fr: ['simple'], it: ['semplice'], es: ['simple', 'sencillo'], da: ['enkel', 'simpel'], no: ['enkel'] }, { when: ['tabby'] }),
  word({ face: 'faced' }, { en: ['faced', 'ribbed'], de: ['gerippt'] }, { when: ['tabby'] }),
  word({ structure: 'twill', face: 'weftFaced' }, { en: ['weft twill'], de: ['Schussköper', 'Schußköper'], fr: ['sergé trame', 'sergé de trame'] }),
  word({ structure: 'twill', face: 'warpFaced' }, { en: ['warp twill'], de: ['Kettköper'], fr: ['sergé chaîne', 'sergé de chaîne'] }),
  word({ structure: 'compoundWeave', face: 'warpFaced' }, { en: ['warp-faced compound tabby', 'warp-faced compound plain weave', 'warp-faced compound twill', 'warp-faced compound weave'], de: ['Kettkomposittaft', 'Kettkompositköper'] }),
  word({ structure: 'compoundWeave' }, { en: ['compound tabby', 'compound plain weave', 'compound twill', 'compound satin'] }),
  word({ structure: 'satin', face: 'weftFaced' }, { en: ['weft satin'], de: ['Schussatlas'] }),
  word({ structure: 'satin', face: 'warpFaced' }, { en: ['warp satin'], de: ['Kettatlas'] }),
];

// biome-ignore format: one language a line
const PAIRS: readonly DescriptionWord[] = [
  word({ elementGrouping: 'pairedBoth' }, { en: ['basket', '2/2', '2x2'] }, { when: ['tabby'] }),
  word({ elementGrouping: 'pairedBoth' }, { en: ['paired in both systems', 'paired warp and weft', 'paired warps and wefts', 'pairs in both systems', 'paired in both'], de: ['paarig in beiden Systemen', 'in beiden Systemen paarig', 'Kette und Schuss paarig'], fr: ['doubles dans les deux systèmes', 'jumelés dans les deux systèmes'], it: ['doppi in entrambi i sistemi', 'appaiati in entrambi i sistemi'], es: ['pares en ambos sistemas', 'pareados en ambos sistemas'], da: ['parret i begge systemer'] }, { when: ['tabby'] }),
  word({ structure: 'tabby', elementGrouping: 'pairedOne' }, { en: ['half-basket'] }, { when: ['tabby'] }),
  word({ elementGrouping: 'pairedOne' }, { en: ['paired in one system', 'paired warp', 'paired warps', 'paired weft', 'paired wefts', 'double warp', 'double weft', 'pairs in one system', '2/1 half-basket', 'warp threads paired', 'weft threads paired', 'paired warp threads', 'paired weft threads', 'warps paired', 'wefts paired', 'double warp threads', 'double weft threads'], de: ['paarige Kette', 'paariger Schuss', 'doppelte Kette', 'doppelter Schuss', 'paarig in einem System', 'mit paarigen Kettfäden', 'paarige Kettfäden', 'paarige Schussfäden', 'mit paarigen Schussfäden', 'doppelte Kettfäden', 'doppelte Schussfäden', 'Kette paarig', 'Schuss paarig', 'Kette doppelt', 'Schuss doppelt'], fr: ['trame double', 'chaîne double', 'trame jumelée', 'chaîne jumelée', 'demi-natté', 'fils de chaîne doubles', 'fils de trame doubles', 'fils de chaîne jumelés', 'fils de trame jumelés', 'chaîne doublée', 'trame doublée'], it: ['trama doppia', 'ordito doppio', 'fili di ordito doppi', 'fili di trama doppi', 'ordito a fili doppi', 'trama a fili doppi'], es: ['trama doble', 'urdimbre doble'], da: ['dobbelt trend', 'dobbelt islæt', 'dobbelt skud'] }, { when: ['tabby'] }),
  word({ structure: 'tabby', elementGrouping: 'pairedBoth' }, { fr: ['natté', 'nattée', 'nattés'], it: ['nattè'] }, { accented: true }),
  word({ structure: 'tabby', elementGrouping: 'paired' }, { en: ['paired tabby', 'paired plain weave'] }),
  word({ structure: 'tabby', elementGrouping: 'pairedOne' }, { it: ['tela con ordito doppio', 'tela con trama doppia'] }),
  word({ elementGrouping: 'paired' }, { en: ['paired'], de: ['gepaart', 'paarig'], fr: ['jumelé', 'jumelée'], it: ['appaiato', 'appaiata'], es: ['pareado', 'pareada'], da: ['parret'] }, { when: ['tabby'] }),
];

// biome-ignore format: one language a line
const PATTERNS: readonly DescriptionWord[] = [
  word({ structure: 'twill', twillPattern: 'lozenge' }, { en: ['diamond', 'diamonds', 'diamond pattern', 'diamond patterned', 'lozenge', 'lozenges', 'diaper'], de: ['Raute', 'Rauten', 'Rautenmuster', 'mit Rauten', 'gerautet', 'Diamant'], fr: ['losange', 'losanges', 'à losanges', 'losangé'], it: ['losanga', 'losanghe', 'a losanghe', 'romboidale', 'a rombi'], es: ['rombo', 'rombos', 'de rombos', 'en rombo', 'romboidal'], da: ['diamant', 'rude', 'ruder', 'rudemønster'], no: ['diamant', 'ruter'] }, { when: ['twill'] }),
  word({ structure: 'twill', twillPattern: 'brokenLozenge' }, { en: ['broken diamond', 'broken diamond twill', 'broken lozenge', 'broken lozenge twill', 'offset diamond', 'diamond twill, broken', 'broken diamonds'], de: ['versetzte Raute', 'versetzte Rauten', 'versetzter Rautenköper', 'Rautenköper versetzt', 'gebrochener Rautenköper'], fr: ['losange brisé', 'sergé à losanges brisés', 'losangé brisé'], es: ['sarga romboidal quebrada'], da: ['brudt krystalkiper', 'brudt diamantkiper'] }),
  word({ structure: 'twill', twillPattern: 'lozenge' }, { da: ['krystalkiper'] }),
  word({ structure: 'twill', twillPattern: 'pointLozenge' }, { en: ['point lozenge', 'point diamond', 'goose-eye', 'goose eye', 'goose-eye twill', 'point lozenge twill', 'pointed diamond', 'pointed diamond twill', 'point diamond twill', 'pointed lozenge', 'goose eye twill'], de: ['Gänseauge', 'Spitzkaro', 'Gänseaugenköper', 'Spitzkaroköper'], fr: ["œil de perdrix"], it: ['occhio di pernice'], es: ['ojo de perdiz'], da: ['gåseøje', 'gåseøjekiper'], no: ['gåsøye', 'gåseøye'] }),
  word({ structure: 'twill', twillPattern: 'broken' }, { en: ['broken twill', 'twill, broken', 'broken'], de: ['gebrochener Köper', 'Köper gebrochen', 'Kreuzköper', 'gebrochen'], fr: ['sergé brisé', 'sergé rompu', 'brisé', 'rompu'], it: ['saia spezzata', 'saia rotta', 'spezzato', 'spezzata'], es: ['sarga quebrada', 'sarga rota', 'quebrado', 'quebrada'], da: ['brudt kiper', 'brudt'], no: ['brutt kypert', 'korskypert'] }, { when: ['twill'] }),
  word({ structure: 'twill', twillPattern: 'broken' }, { en: ['broken twill'], de: ['gebrochener Köper', 'Kreuzköper'], fr: ['sergé brisé', 'sergé rompu'], it: ['saia spezzata'], es: ['sarga quebrada'], da: ['brudt kiper'], no: ['brutt kypert', 'korskypert'] }),
  word({ structure: 'twill', twillPattern: 'pointed' }, { en: ['point', 'pointed', 'zigzag', 'zig-zag', 'chevron', 'point repeat', 'pointed repeat'], de: ['Spitzgrat', 'Zickzack', 'Spitz'], da: ['spids'] }, { when: ['twill'] }),
  word({ structure: 'twill', twillPattern: 'herringbone' }, { en: ['herringbone', 'herring-bone'], de: ['Fischgrat', 'Fischgrät', 'Fischgratmuster'], it: ['spina di pesce', 'a spina di pesce', 'spigata'], es: ['espiguilla', 'en espiguilla', 'en espiga', 'espigada'], da: ['sildeben', 'sildebensmønster', 'fiskeben'], no: ['fiskebein'] }, { when: ['twill'] }),
  word({ structure: 'twill', twillPattern: 'reversed' }, { fr: ['sergé à chevrons', 'sergé en chevron', 'sergé chevron', 'sergé à chevron'], en: ['reversed twill', 'reversing twill'], de: ['Wechselgratköper', 'Köper mit wechselndem Grat'] }),
  word({ structure: 'twill', twillPattern: 'reversed' }, { fr: ['en chevron', 'à chevrons', 'en chevrons', 'chevrons'], en: ['reversed', 'reversing'], de: ['wechselnder Grat', 'mit Gratwechsel', 'Gratwechsel'] }, { when: ['twill'] }),
  word({ twillPattern: 'straight' }, { en: ['plain', 'straight', 'unpatterned', 'simple', 'unbroken', 'regular'], de: ['einfach', 'ungemustert', 'durchgehend'], fr: ['simple', 'droit'], it: ['semplice', 'diritta', 'dritta'], es: ['simple', 'recta', 'sencilla'], da: ['enkel', 'almindelig', 'simpel'], no: ['enkel'] }, { when: ['twill'] }),
];

// biome-ignore format: one language a line
const PILES: readonly DescriptionWord[] = [
  word({ pile: 'present' }, {
    en: ['pile', 'with pile', 'tufts', 'tufted', 'tuft', 'shaggy', 'piled', 'with tufts', 'fleece-like', 'pile present', 'shag'], de: ['Flor', 'mit Flor', 'Florbüschel', 'Vlies', 'Büschel', 'mit Büscheln', 'mit Vlies', 'zottig', 'florig', 'Noppen', 'mit Noppen'], fr: ['poil', 'poils', 'à poils', 'à mèches', 'mèches', 'velu', 'à poil'],
    it: ['pelo', 'a pelo', 'vello', 'a vello', 'ciuffi', 'con ciuffi', 'con pelo'], es: ['pelo', 'con pelo', 'mechones', 'con mechones'], da: ['luv', 'med luv', 'flos', 'med flos', 'totter'], no: ['floss', 'med rye', 'med floss'],
  }),
  word({ pile: 'absent' }, { en: ['untufted', 'pileless', 'smooth-faced', 'un-tufted', 'without tufts'], de: ['florlos', 'unbeflockt'], da: ['luvløs'] }),
];

/** Bare interlacing orders: what they order hangs on the structure beside them. */
// biome-ignore format: one order a line
const ORDERS: readonly DescriptionWord[] = [
  word({ structure: 'tabby' }, { en: ['1/1'] }, { alone: true }),
  word({ structure: 'checkerPlaiting' }, { en: ['1/1'] }, { when: ['plaited'] }),
  word({ structure: 'tabby' }, { en: ['1/1'] }, { when: ['tabby', 'woven'] }),
  word({ structure: 'tapestry' }, { en: ['1/1'] }, { when: ['tapestry'] }),
  ...([['twill21', '2/1'], ['twill21', '1/2'], ['twill22', '2/2'], ['twill31', '3/1'], ['twill31', '1/3'], ['twill33', '3/3'], ['twill41', '4/1'], ['twill41', '1/4'], ['twill44', '4/4']] as const).flatMap(([term, order]) => [
    word({ structure: term }, { en: [order] }, { alone: true }),
    word({ structure: term }, { en: [order] }, { when: ['twill'] }),
  ]),
  word({ structure: 'twillPlaiting22' }, { en: ['2/2'] }, { when: ['twillPlaiting', 'plaited'] }),
  word({ structure: 'twillPlaiting33' }, { en: ['3/3'] }, { when: ['twillPlaiting', 'plaited'] }),
  word({ structure: 'satin5' }, { en: ['4/1', '1/4', '5-end', 'five-end'] }, { when: ['satin'] }),
  word({ structure: 'satin8' }, { en: ['7/1', '1/7', '8-end', 'eight-end'] }, { when: ['satin'] }),
  word({ structure: 'twill21' }, { en: ['3-end', 'three-end', '3-shed'], de: ['dreibindig'], da: ['trebindet'] }, { when: ['twill'] }),
  word({ structure: 'twill22' }, { de: ['gleichgratig'], da: ['ligesidet'] }, { when: ['twill'] }),
];

export const WOVEN_WORDS: readonly DescriptionWord[] = [
  ...KINDS_OF_WEAVE,
  ...FACES,
  ...PAIRS,
  ...PATTERNS,
  ...PILES,
  ...ORDERS,
];
