import type { AttributeDefinition } from '../../attributes/definition.ts';
import { quote, readAs } from '../notes.ts';
import type { Note } from '../reading.ts';
import { DENYING, DETERMINING, isFilling, MODAL, stems, TESTING, wordsOf } from './word-classes.ts';

/** Yes or no, as a few words say it. */
export interface PresenceWords {
  readonly present: boolean;
  readonly note: Note;
}

/** Looked for in vain, or the thing denied in one word: "undyed", "florlos". */
const NOT_FOUND =
  stems(`unpiled tenir undyed untufted unsewn unrepaired unworn unmended unspliced ungefarbt\\p{L}* ungenaht\\p{L}* unverziert ungeflickt\\p{L}* ufarvet ufarget usyet ureparer\\p{L}*
  negativ[eo]? negative absence assenza ausencia fravaer abwesenheit fehlen uslidt\\p{L}* uslitt naturfarben\\p{L}* naturel(?:le)?s? natural[ei]? naturfarvet absente?s? ausentes? assent[ei] fehlt fehlend fehlen undetected below lacking mangler manque manca mancante falta lacks nein nej nei nulle?
  (?:flor|naht|farb|saum|dye|pile|seam|tuft|lu|luv|somm|farve|repair)(?:los|less|lose|free|frei)\\p{L}* nontinta? nontinto`);
/** Found, or how it was found: with these alone a cell says yes. */
const FOUND =
  stems(`detected detection limit evidence found present visible seen nachgewiesen nachweis\\p{L}* vorhanden sichtbar\\p{L}* erkennbar\\p{L}* gefunden detecte\\p{L}* presente?s? presenti visibles? visibil[ei] trouvee?s? rilevat[oaie] individuat[oaie] rinvenut[oaie]
  detectad[oa]s? detecto encontrad[oa]s? pavist synlige? fundet funnet positiv[eo]? positif til stede yes ja oui si tilstede tilstedevaerende identified identifiziert identifie identificat[oa] identificad[oa] attested observed beobachtet observee?s? osservat[oaie] observad[oa]s? iagttaget konstateret`);
/** With "no" before it, that none is left to see. */
const SURVIVES = stems(
  'preserved surviving survives remaining erhalten\\p{L}* conservee?s? conservat[oaie] conservad[oa]s? bevaret bevart',
);
/** Having: "tiene pelo", "hat Flor", "presenta". */
const HAVING = stems(
  'has had hat haben a ont ha hanno tiene tienen presenta presentan presentano presente har shows zeigt montre muestra viser with mit avec con med show',
);
/** Traces and remains, and what is said of their place, number, size and strength. */
const TRACE = stems(
  'traces? spur(?:en)? spor rastros? senal(?:es)? segn[oi] signes? signs? zeichen tegn reste?n? rester rest tracc[eia]+ huellas? restos resti remains',
);
const AROUND =
  stems(`much beaucoup viel molto mucho run fell felled lapped inside outside interior analys\\p{L}* analisi farbanalyse\\p{L}* let ecru kant looped knotted bouclee?s? plain smooth lisse liscio liso marquee?s? pronounced ausgepragt\\p{L}* marcad[oa]s? coarse oldtidig\\p{L}* short long very sehr tres molto muy meget svaert dense sparse\\p{L}* scarce rad[oaie] ralo escas[oa]s? sparlich\\p{L}* glatt\\p{L}* inserted eingeknupft\\p{L}* inseree?s? inserit[oaie] insertad[oa]s? tested getestet test[ée]e?s? analysed analysiert analizzat[oaie] \\d+ mm cm kurz\\p{L}* lang\\p{L}* courte?s? longue?s? cort[oa]s? cort[ie] lung[oaie]? lungh[ei] larg[oa]s? kort[e]? dense? dicht\\p{L}* dens[oae]s? thick thin fine? grob\\p{L}* fein\\p{L}*
  antiqu\\p{L}* antic[oahei]+ antig\\p{L}* antik\\p{L}* antichita ancien\\p{L}* ancient old alte?[rns]? gammel gamle modern\\p{L}* recent\\p{L}* rezent\\p{L}* moderne? vecchi[oa] viej[oa] later original\\p{L}*
  through durch hplc uhplc lc-ms tlc together zusammengenaht\\p{L}* ensemble insieme juntas? sammen stucke? pezz[oi] piezas? stykker fold(?:s|ed)? falz\\p{L}* pli[s]? pieg[ahe]+ doblez pliegue folde?[nr]? either each loops? schlingen bucles? findes buco buchi agujeros? wolle laine lana uld leinen lin lino hor wool woollen linen thread flax zottig\\p{L}* cut shaggy longs aufgesetzt\\p{L}* holes? loch locher trous? hul stelle[n]? sewn cosid[oa]s? cucit[oaie] cousue?s? syet pieces? durch einseitig\\p{L}* beidseitig\\p{L}* one two three several some slight\\p{L}* heav\\p{L}* strong\\p{L}* partly partial\\p{L}* along edges? sides? faces? both corners? centre middle reverse obverse back front outer inner upper lower left right top bottom surface places? spots?
  rand\\p{L}* kante\\p{L}* seiten? ecken? mitte ruckseite vorderseite aussen\\p{L}* innen\\p{L}* oben unten flache oberflache einer?[mns]? zwei drei mehrere\\p{L}* einige\\p{L}* leicht\\p{L}* stark\\p{L}* teilweise stellenweise wenig\\p{L}*
  cotes? bords? coins? milieu envers par endroits? revers dos faces? une? deux trois plusieurs quelques legere?s? legerement fortement forte?s? partiel\\p{L}* nombreu\\p{L}* 
  un[oa] due tre alcun[ei] liev[ei] forti lat[oi] bord[oi] angol[oi] retro faccia facce rovescio diritto parziale diversi
  dos tres vari[oa]s algun[oa]s? leves? fuertes? lados? bordes? esquinas? caras? reverso anverso parcial centro
  en den ene to tre flere svag\\p{L}* kraftig\\p{L}* side[rn]? kanten? kanter hjorne\\p{L}* bagside\\p{L}* forside\\p{L}* overflade\\p{L}* nogle noen delvis begge lag i only nur seul solo kun 1 2 3 4 5`);
const COLOURS =
  'blue red green yellow black brown purple violet orange pink white blau\\p{L}* rot\\p{L}* grun\\p{L}* gelb\\p{L}* schwarz\\p{L}* braun\\p{L}* bleue?s? rouges? verte?s? jaunes? noire?s? brune?s? blu ross[oaie] verd[ei]s? giall[oaie] ner[oaie] marron[ei]? azul(?:es)? roj[oa]s? amarill[oa]s? negr[oa]s? bla blat rod gron gul sort brun\\p{L}* violett\\p{L}* violette?s? viola morad[oa]s?';
const COLOUR = stems(
  `${COLOURS} dark light dunkel\\p{L}* hell\\p{L}* fonce?e?s? claire?s? scur[oaie] chiar[oaie] oscur[oa]s? clar[oa]s? mork\\p{L}* lys`,
);
/** Words of single attributes in which they say that the thing is there. */
const SAYS_YES: Readonly<Record<string, RegExp>> = {
  dye: stems(`dyed? dyes dyestuffs? dyestuff gefarbt\\p{L}* teinte?e?s? teint teinture\\p{L}* tint[oaie]s? tintura tenid[oa]s? farvet farvede farget fargede farbstoffe?n? \\p{L}{4,}gefarbt farbung farv?e farvestof\\p{L}* fargestof\\p{L}* colou?r colorants? colorante\\p{L}* coloranti dyeing
    ${COLOURS} purpur\\p{L}*
    madder woad weld indigo\\p{L}* alizarin\\p{L}* purpurin\\p{L}* kermes cochineal krapp waid wau garance guede gaude robbia guado reseda rubia gualda krap vajd tannins?`),
  pile: stems(
    'piled? tuft(?:s|ed|ing)? shaggy flor\\p{L}* vlies noppen? floss noppe poil(?:s|u|ue)? meches? pel[oi] vell[oi] ciuff[oi] mechon(?:es)? luv luvet flos lo lodden rye[r]? bouclee?s?',
  ),
  wear: stems(
    `worn wear used use threadbare fadenscheinig\\p{L}* verschlissen\\p{L}* elimee?s? rape consunt[oaie] lis[oa]s? raid[oa]s? consumat[oaie] tyndslidt\\p{L}* tyndslitt\\p{L}* polish(?:ed)? abgenutzt\\p{L}* abnutzung\\p{L}* gebrauchsspur\\p{L}* usee?s? usures? uses uso usat[oaie] usurat[oaie] usura logor[oaie] desgaste desgastad[oa]s? gastad[oa]s? abraded abrasion abgescheuert\\p{L}* abgewetzt\\p{L}* scheuerspur\\p{L}* slidt slidte? slid slitt slitasje slidspor brugt`,
  ),
  seam: stems(
    `seam(?:s|ed)? hem(?:s|med)? sewn zusammengenaht\\p{L}* stitch(?:es|ed|ing)? holes? trous? for[oi] agujeros? (?:sting|stik)?huller stichlocher stiche? naht\\p{L}* nahte saumnaht sammensyet\\p{L}* sammensydd\\p{L}* overcast\\p{L}* whipped ubersteppt uberwendlich\\p{L}* surjet\\p{L}* sopraggitt\\p{L}* sobrehilad\\p{L}* genaht\\p{L}* gesaumt\\p{L}* saum saume coutures? cousue?s? ourlets? ourlee?s? cucit[oaie] cucitur[ae] orl[oi] orlat[oa] cosid[oa]s? costuras? dobladillos? som somme syet syed[e]? sydd syninge?r? sauma hilvan basting imbastitura`,
  ),
  repair:
    stems(`repair(?:s|ed)? toppa toppe pezza pezze rapportee?s? darn(?:s|ed|ing)? stitch(?:es)? stopfstelle\\p{L}* flickstelle\\p{L}* flicken flickung\\p{L}* stopfung\\p{L}* geflickt\\p{L}* ausgebessert\\p{L}* ausbesserung\\p{L}* gestopft\\p{L}* reparatur\\p{L}* reparier\\p{L}* laps? lapp\\p{L}* pasyet patch(?:es|ed)? mend(?:ed|ing|s)?
    repar\\p{L}* repris\\p{L}* raccommod\\p{L}* rapiece\\p{L}* ravaude\\p{L}* riparazion[ei] riparat[oa] ramm?end[oiai]\\p{L}* rattopp\\p{L}* remend\\p{L}* remiend\\p{L}* zurcid[oa]s? stopp\\p{L}* stopning\\p{L}*`),
  splicing: stems(
    'splic(?:e|es|ed|ing) gesplei(?:ss)?t?\\p{L}* spleiss\\p{L}* epissures? epissee?s? episse empalm\\p{L}* splejs\\p{L}* spleis\\p{L}* giunt[aeo] giuntat[oaie] fib[re]{2}s? fasern? fibr[ae]s? fiber fibrer yarns? threads? garn\\p{L}* fils? fil[oi] hilos? trad\\p{L}*',
  ),
  residue: stems(
    'resin pitch tar soot ash wax food harz\\p{L}* pech\\p{L}* teer\\p{L}* russ\\p{L}* resine poix goudron suie resina pece catrame fuliggine brea pez hollin beg harpiks tjaere sod residues? ruckstande? ruckstanden anhaftung\\p{L}* residu[sie]? residuos? rester belaegning\\p{L}* depots? deposit[os]?',
  ),
};
/** Names one kind of the thing alone. */
const NARROW = stems(
  `${COLOURS} purpur\\p{L}* madder woad weld indigo\\p{L}* alizarin\\p{L}* purpurin\\p{L}* kermes cochineal krapp waid wau garance guede gaude robbia guado reseda rubia gualda krap vajd tannins? hem(?:s|med)? saum saume ourlets? orl[oi] dobladillos? som somme polish
  resin pitch tar soot ash wax food harz\\p{L}* pech\\p{L}* teer\\p{L}* russ\\p{L}* resine poix goudron suie resina pece catrame fuliggine brea pez hollin beg harpiks tjaere sod`,
);
const ANALYSIS = stems('analys[ei]s? analyse\\p{L}* analisi farbanalyse\\p{L}*');
/** The thing must be named by more than a thread. */
const THREAD = stems(
  `fib[re]{2}s? fasern? fibr[ae]s? fiber fibrer ${COLOURS} purpur yarns? threads? garn\\p{L}* fils? fil[oi] hilos? trad\\p{L}* holes?`,
);

/**
 * Reads "no pile", "ohne Flor", "traces of wear", "Saum, 1 Seite", "not detected": every word must be one of those
 * that say yes or no, name the thing itself, or say where and how much; one word more and nothing is read.
 * "Not analysed" is no absence, and has no word here. Common practice, no source.
 */
export function presenceInWords(
  text: string,
  attribute: AttributeDefinition | undefined,
): PresenceWords | null {
  if (text.length > 120 || attribute === undefined || /[?]/u.test(text)) return null;
  const words = wordsOf(text);
  if (words.length === 0 || words.length > 8) return null;
  if (words.some((word) => MODAL.test(word)) || namesHue(words)) return null;
  const own = SAYS_YES[attribute.id];
  const names = namesOf(attribute);
  const thing = (word: string) => own?.test(word) === true || names.has(word);
  const denies = (word: string) => DENYING.test(word) || DETERMINING.test(word) || NOT_FOUND.test(word);
  const known = (word: string) =>
    [DENYING, DETERMINING, NOT_FOUND, FOUND, SURVIVES, HAVING, TRACE, AROUND].some((one) => one.test(word)) ||
    isFilling(word) ||
    thing(word);
  if (!words.every(known)) return null;
  const denied = words.some(denies);
  const said = words.some(
    (word) =>
      FOUND.test(word) || (thing(word) && !THREAD.test(word)) || TRACE.test(word) || NOT_FOUND.test(word),
  );
  // "No indigo", "no soot", "no hem": one kind denied leaves the others.
  if (
    denied &&
    words.some((word) => NARROW.test(word)) &&
    !words.some((word) => thing(word) && !NARROW.test(word))
  )
    return null;
  // "Dye analysis" by itself says neither what came of it nor that it was made.
  if (
    words.some((word) => ANALYSIS.test(word)) &&
    !words.some((word) => FOUND.test(word) || NOT_FOUND.test(word))
  )
    return null;
  // "No pile preserved" is no absence, and "not only" no denial.
  if (!said || (denied && words.some((word) => SURVIVES.test(word)))) return null;
  if (words.filter((word, at) => denies(word) && !denies(words[at - 1] ?? '')).length > 1) return null;
  // "Not analysed for dye" says that nobody looked.
  if (
    denied &&
    words.some((word) => TESTING.test(word)) &&
    words.some((word) => DENYING.test(word) || DETERMINING.test(word))
  )
    return null;
  // "Pile not visible" hides it; "no visible pile" denies it.
  if (denied && hides(words)) return null;
  return {
    present: !denied,
    note: readAs('presence-in-words', `${quote(text)} read as ${denied ? 'absent' : 'present'}`),
  };
}

/** "Teinte brune", "tinta marrone": the word is a hue too, so beside a colour alone it does not say that it was dyed. */
const namesHue = (words: readonly string[]): boolean =>
  words.length > 1 &&
  /^(?:teintes?|tint[ae])$/u.test(words[0] ?? '') &&
  words.slice(1).every((word) => COLOUR.test(word));

/** The sight denied, not the thing: "Flor nicht sichtbar", "revers non visible". */
const hides = (words: readonly string[]): boolean =>
  words.some((word, at) => DENYING.test(word) && SEEN.test(words[at + 1] ?? ''));
const SEEN = stems(
  'visible seen sichtbar\\p{L}* erkennbar\\p{L}* visibles? visibil[ei] synlige? observed beobachtet observee?s? osservat[oaie] observad[oa]s? iagttaget identified identifiziert identifie\\p{L}* identificat[oaie] identificad[oa]s? attested konstateret',
);

/** Single words under which the attribute's columns are known: they name the thing. */
function namesOf({ label, synonyms }: AttributeDefinition): ReadonlySet<string> {
  const all = [label, ...Object.values(synonyms ?? {}).flat()];
  return new Set(all.map((name) => wordsOf(name).join(' ')).filter((word) => !word.includes(' ')));
}
