import { foldText } from '../../attributes/folding.ts';

/**
 * Classes of words that catalogues build short sentences of, in English, German, French, Italian, Spanish, Danish and
 * Norwegian, folded. They are stems where a language inflects. Common practice, no source.
 */

/** One expression for whole words, from stems parted by spaces. */
export const stems = (list: string): RegExp => new RegExp(`^(?:${list.trim().replace(/\s+/gu, '|')})$`, 'u');

/** "No", "ohne", "aucune", "privo": what they stand before is not there. */
export const DETERMINING =
  stems(`no none without lacking lacks kein(?:e[rsnm]?|erlei)? ohne sans aucune?s? pas
  nessun[oa]? senza priv[oaie] sin ningun[ao]? carece ingen intet uden uten`);

/** Denying what is said, not the thing: "not", "nicht". */
export const DENYING = stems('not nicht ne non ikke ej cannot cant nao');

/** "Could be", "pourrait être": what follows is no more than thought possible. */
export const MODAL = stems(
  'could might may konnte konnten durfte pourrait pourraient peut potrebbe puo podria puede kunne kunde peut-etre',
);

/** Seeing, measuring, recording: denied, a cell says that nobody could tell. */
export const OBSERVING =
  stems(`visib\\p{L}* sichtbar\\p{L}* visuell einsehbar moglich possible possibile posible mulig\\p{L}* fechar fechad[oa] discern\\p{L}* readable lesbar\\p{L}* legg?ib\\p{L}* lisib\\p{L}* erkenn\\p{L}*
  beurteil\\p{L}* bestimm\\p{L}* determin\\p{L}* observ\\p{L}* osserv\\p{L}* beobacht\\p{L}* measur\\p{L}* mess(?:bar|en)\\p{L}* gemessen mesur\\p{L}* misur\\p{L}* medi(?:ble|do|da|bles|r)
  zahlen contare contar taelle zahlbar\\p{L}* gezahlt auszahlbar count(?:able|ed)? compt\\p{L}* contabil\\p{L}* conteggi\\p{L}* conta(?:r|ble|bile|to|ta|do|da)? talt taell\\p{L}* telles telle recognis\\p{L}* recogniz\\p{L}* reconn\\p{L}* riconosc\\p{L}* reconoc\\p{L}*
  record\\p{L}* registr\\p{L}* erfasst dokumentiert document\\p{L}* aufgenommen releve\\p{L}* rilev\\p{L}* rilevabil\\p{L}* angegeben indiqu\\p{L}* indicat\\p{L}* indicad\\p{L}* oplyst oppgitt angivet noted vermerkt notat[oa] anotad[oa]
  identif\\p{L}* identifi\\p{L}* feststell\\p{L}* festgestellt ermittel\\p{L}* known bekannt connue?s? not[oaie] conocid[oa]s? kendt kjent synlig\\p{L}* bestemt bestemmes malt males malbar\\p{L}* sikkert
  available verfugbar disponib\\p{L}* tilgaengelig disting\\p{L}* unterscheid\\p{L}* ascertain\\p{L}* assess\\p{L}* evaluat\\p{L}* apprecia\\p{L}* valutab\\p{L}* valorab\\p{L}* perceptib\\p{L}* apparent\\p{L}* stated given specif\\p{L}* precis\\p{L}* tolk\\p{L}* erkendes ses ve ven afgor\\p{L}* avgjor\\p{L}* ju[dg]g\\p{L}* jugee?s? giudic\\p{L}* juzg\\p{L}* vurderes fastslas seen gesehen vue?s? vist[oaie] dated daterbar daterbart dateret datert datierbar datiert datable databile datat[oa] datad[oa] datee? date assigned zugeordnet asignad[oa]s? assegnat[oaie] tildelt attribu\\p{L}* zugewiesen zuweisbar henfort localis\\p{L}* lokalis\\p{L}* phased stratif\\p{L}*`);

/** To look by analysis: denied, nobody looked. */
export const TESTING =
  stems(`subjected soumise?s? sottopost[oaie] sometid[oa]s? probe[n]? entnommen sample[s]? taken proevet provn\\p{L}* untersuch\\p{L}* analy\\p{L}* anali\\p{L}* examin\\p{L}* esamin\\p{L}* test\\p{L}* getestet recherche\\p{L}* recherches cercat[oa] buscad[oa]
  erfolgt estudiad[oa]s? studiat[oa] studied etudiee?s? farbanalyse\\p{L}* faseranalyse\\p{L}* sampled beprobt prelev\\p{L}* campion\\p{L}* muestre\\p{L}* undersog\\p{L}* undersok\\p{L}* investigat\\p{L}* indag\\p{L}* provetaget pruf\\p{L}* gepruft carried out done made durchgefuhrt realis\\p{L}* effettuat\\p{L}* realizad\\p{L}* udfort utfort undertaken vorgenommen eseguit[aoe] hecha hecho foretaget`);

/** To last: denied, nothing is left to tell. */
export const LASTING = stems(
  `preserv\\p{L}* surviv\\p{L}* remain\\p{L}* erhalten\\p{L}* erh conserv\\p{L}* cons bevaret bevart extant subsist\\p{L}* left vorliegend rimast\\p{L}* quedan?`,
);

/** To find: denied, somebody looked and it is not there. */
export const FINDING = stems(
  `found detect\\p{L}* detecte\\p{L}* nachgewiesen nachweis\\p{L}* gefunden trouve\\p{L}* decele\\p{L}* trovat[oaie] individuat[oaie] rilevat[oaie] rinvenut[oaie] encontrad[oa]s? pavist funnet fundet konstateret present presente?s? vorhanden presenti til stede tilstede`,
);

/** Says by itself that nothing is known. */
export const UNKNOWN =
  stems(`unknown unbekannt\\p{L}* inconnue?s? ignot[oaie] sconosciut[oaie] desconocid[oa]s? ukendt\\p{L}* ukjent\\p{L}* indet(?!ect)\\p{L}* indistin\\p{L}* indiscern\\p{L}* undet(?!ect)\\p{L}* unbest\\p{L}* ubest\\p{L}* unbestimmbar\\p{L}* unident\\p{L}* neident\\p{L}*
  ungeklart\\p{L}* uafklaret unresolved unclear unklar uklar\\p{L}* unleserlich\\p{L}* illegib\\p{L}* illegg\\p{L}* illisib\\p{L}* unreadable ulaeselig\\p{L}* impossible unmoglich impossibile imposible umulig\\p{L}* unobserv\\p{L}* inosserv\\p{L}* unrecorded unstated unspecified unmeasur\\p{L}* unmessbar\\p{L}* uncountable unzahlbar\\p{L}* unsichtbar\\p{L}* invisible usynlig\\p{L}* lost verloren\\p{L}* perdue?s? pers[oaie] perdut[oaie] perdid[oa]s? tabt mistet
  hidden verdeckt\\p{L}* cachee?s? masquee?s? nascost[oaie] copert[oaie] ocult[oa]s? cubiert[oa]s? skjult\\p{L}* daekket obscured covered destroyed zerstort\\p{L}* detruite?s? distrutt[oaie] destruid[oa]s? odelagt\\p{L}* undated undatiert\\p{L}* udateret unlocated unprovenanced unphased unstratified pending ausstehend uoplyst uoppgitt unreported ignorad[oa]s? missing ilegib\\p{L}*`);

/** Under way: with a word for an analysis, nobody knows yet. */
export const UNDER_WAY = stems(
  'ausstandig\\p{L}* pendiente?s? afventer avventer attente attesa cours corso curso progress laufend\\p{L}* lauft gang pending awaited ongoing underway folgt',
);

/** Behind a thing: it is not there. */
export const GONE = stems(
  'lacking lacks fehlen\\p{L}* fehlt manque(?:nt)? manca(?:no)? faltan? mangler absent absente?s? assent[ei] ausentes?',
);

/** "Too degraded", "trop abîmé": why nobody could tell. */
export const TOO = stems('too zu trop tropp[oaie] demasiado muy for alt-for');
export const DAMAGED = stems(
  `charred carboni[sz]\\p{L}* verkohlt\\p{L}* forkull\\p{L}* mineral\\p{L}* degraded decayed damaged worn poor\\p{L}* corroded fragmentary fragile matted felted encrusted abgebaut schlecht zersetzt beschadigt korrodiert verfilzt fragmentiert degradee?s? abimee?s? corrodee?s? altere?e?s? fragmentaire mal degradat[oaie] rovinat[oaie] danneggiat[oaie] corros[oaie] degradad[oa]s? danad[oa]s? deteriorad[oa]s? nedbrudt odelagt darlig\\p{L}* korroderet skadet small klein petite?s? piccol[oa] pequen[oa]s? lille`,
);

/** "Too fine to count": of itself no damage. */
export const FINE = stems(
  'serree?s? fitt[oaie] tett? fine? fein\\p{L}* fins? fin[eiao]s? dense dicht\\p{L}* dens[oaei]s? tight taet',
);

/** Small words and nouns that change nothing about it. */
const FILLING =
  stems(`a an the any more longer mehr nicht-mehr plus piu mas ya mer laengere lenger kan can could be been was were is are wird werden wurde ist sind war est sont ete etre e il la le les lo los el i gli delle dei degli dell della de des du d l der die das den dem del della di von of af av to zu a se si s at in im en au am an on for pour per para som um auf mit et und and y og with not-yet yet noch bisher encore ancora aun enda endnu due genau exactly exactement esattamente exactamente secure\\p{L}* sicher surement clearly klar eindeutig deutlich clairement chiaramente claramente tydeligt sikkert now nu heute actuellement
  warps? wefts? kette schuss chaine trame ordito trama urdimbre trend islaet skud
  by with from beside near sur su sul sulla sulle auf unter over under pa ved fra bei vom zur zum par dans sopra sobre nel nella
  por aus out wegen because due causa cause grund korrosion corrosion\\p{L}* corrosione corrosi?on dirt soil schmutz erde sediment salete terre terra sporco tierra suciedad snavs jord wear usure patina degrado deterioro degradation either each consolidant\\p{L}* festigungsmittel consolidante?s? incrost\\p{L}* incrust\\p{L}* concretion\\p{L}* concrezioni verkrustung\\p{L}*
  peut pu puo puede poder konnte kann pourrait potuto ha hat est-pas qu que`);

/** Nouns of what a column is about, of any attribute: they say what was not seen. */
const NOUNS =
  stems(`tissus? tessut[oi] tejidos? gewebe stof functions? funktion\\p{L}* verwendung\\p{L}* zweck purpose fonctions? usages? use uso usos anvendelse\\p{L}* brug funzion[ei] funcion(?:es)? nombre number anzahl zahl numero antal antall brins? capi cabos? hebras? strands? plies twist\\p{L}* spin spun ply drehung\\p{L}* drehrichtung\\p{L}* drall spinnrichtung torsions? torsion[ei]s? torsiones snoning drejning\\p{L}* tvinning spinderetning direction richtung retning sens senso sentido direzione slant neigung inclin\\p{L}* haeldning helning skraning
  edges? selvedges? selvages? kanten? webkanten? lisieres? bords? bordures? cimos[ae] bord[oi] orill[oa]s? bordes? aegkant\\p{L}* kant\\p{L}* aeg rand rander pile tufts? flor noppen poils? pelo vello luv flos
  dyes? dyestuff\\p{L}* farbstoff\\p{L}* farbung farbe\\p{L}* colo[u]?rants?\\p{L}* coloranti? teinture tint[ao]\\p{L}* tintura tintes? farve\\p{L}* farge\\p{L}* colou?rs? couleurs? color[ei] 
  fib[re]{2}s? faser\\p{L}* fibr[ae]s? fiber fibre?n fibrer analysis analyse\\p{L}* analisi motif muster pattern structures? struktur\\p{L}* struttura estructura weaves? bindung\\p{L}* armure armatura ligamento binding\\p{L}* technique technik tecnica teknik
  zahlung decompte counts? counting comptage conteggi[oi] recuento taelling tal threads? faden fils? fil[oi] hilos? trad\\p{L}* density densit\\p{L}* densidad dichte taethed gap spacing abstand\\p{L}* espacement distanza separacion afstand diamet\\p{L}* durchmesser face faces reverse back ruckseite ruckseiten vorderseite revers retro reverso bagside seite side sides cara lato faccia yarns? garn\\p{L}* repairs? reparatur\\p{L}* reparations? riparazion[ei] reparacion\\p{L}* wear surface oberflache rows? reihen? knots? knoten noeuds? nod[oi] nudos? knude\\p{L}* seams? naht nahte coutures? cucitur[ae] costuras?
  state zustand etat stato estado material materia\\p{L}* dat[ea]s? datum datierung\\p{L}* datation\\p{L}* datazione datacion\\p{L}* datering\\p{L}* dating`);

/** Nouns of places, layers and times: with a word of not knowing they name none. */
const NAMES =
  stems(`fo fundort\\p{L}* fundstelle\\p{L}* fundplatz fundangaben? prov provenance provenience provenienz proveniens provenienza procedencia herkunft findspots? find spot site sites sito siti yacimientos? localizacion find-spot lieux? luogo lugar sitio decouverte rinvenimento hallazgo ritrovamento fundsted\\p{L}* funnsted\\p{L}* findested\\p{L}* findsted\\p{L}* origin\\p{L}* origen oprindelse location localite localita localidad lokalitat lokalitet ort
  phases? phasen? fase[rn]? fasi fases periods? periode[nr]? period[oi]s? epoques? epoch[ae]s? context\\p{L}* contesto contexto kontekst\\p{L}* kontext\\p{L}* schicht\\p{L}* strat\\p{L}* couches? level niveau livello nivel lag layer`);

export const isFilling = (word: string): boolean => FILLING.test(word);
export const isNoun = (word: string): boolean => NOUNS.test(word);
export const isName = (word: string): boolean => NAMES.test(word);

/** The words of a text, folded; "s'observe" and "d'analyse" without what is elided. */
export function wordsOf(text: string): readonly string[] {
  return foldText(text.replace(/(?<![\p{L}])(?:[dlnsj]|qu|dell|nell|sull)['’´`]/giu, ' '))
    .split(' ')
    .filter((word) => word !== '');
}
