import type { AttributeDefinition } from '../attributes/definition.ts';
import { foldText } from '../attributes/folding.ts';
import { quote, readAs } from './notes.ts';
import type { Note } from './reading.ts';

/** Yes or no, as a few words say it. */
export interface PresenceWords {
  readonly present: boolean;
  readonly note: Note;
}

const set = (words: string): ReadonlySet<string> => new Set(words.split(' '));

const NO = set(
  'no not none without kein keine keiner keines keinerlei ohne nicht sans aucun aucune pas non senza nessun nessuna nessuno sin ningun ninguna ninguno no uden uten ingen intet ikke ej lacking mangler manque manca falta',
);
/** Looked for in vain. */
const NOT_FOUND = set(
  'tenir undyed untufted unsewn unrepaired unworn ungefarbt ungenaht unverziert ufarvet ufarget usyet negative negativ negatif negativo absent absente ausente assente fehlt fehlend undetected below',
);
/** Found, or how it was found: with these alone a cell says yes. */
const FOUND = set(
  'detected detection limit evidence found present visible seen nachgewiesen nachweis nachweisbar nachweisbare vorhanden sichtbar erkennbar gefunden detecte detectee present presente presents visible visibles trouve rilevato rilevata presenti visibile visibili detectado detectada detecto encontrado ' +
    'presente visible pavist synlig synlige fundet positive positiv positif positivo til stede yes ja oui si tilstede tilstedevaerende',
);
/** Of a thing that is there it says so; with "no" before it, that none is left to see. */
const SURVIVES = set(
  'preserved surviving survives remaining erhalten conserve conservee conserves conservees conservato conservata conservati conservate conservado conservada conservados conservadas bevaret bevart',
);
/** Traces and remains, and what is said of their place, number and strength. */
const AROUND = set(
  'trace traces of remains short long kurz kurze kurzer lang lange langer court courte courts corto corta corti largo larga kort korte lang antiquity antike antiquite antichita antiguedad through durch einseitig einseitiger einseitige beidseitig beidseitiger beidseitige se spur spuren reste rest spor rester trace tracce traccia huellas huella restos resti one two several some slight slightly heavy heavily strong strongly partly at on along in the a an with and edge edges side sides face both corner ' +
    'den ene langs kanten along lato lati cote cotes rand einer eine ein einer zwei mehrere leicht leichte stark starke teilweise am an auf der dem den seite seiten rand kante und mit un une deux plusieurs leger legere legeres fort forte sur le la les un cote bord avec et des de ' +
    'uno una due alcuni lieve forte su il lato bordo con e dos varios leve fuerte en el lado borde y et en to flere svag kraftig pa side kant med og i ancient old modern recent antik alt 1 2 3 4 5',
);
/** Words of single attributes in which they say that the thing is there. */
const SAYS_YES: Readonly<Record<string, ReadonlySet<string>>> = {
  dye: set(
    'dyed gefarbt teint teinte teinture tinto tinta tintura tenido tenida farvet farget dye dyes dyestuff dyestuffs farbstoff farbstoffe farvestoffer fargestoffer madder woad weld indigo indigotin indigoid alizarin purpurin kermes cochineal krapp waid wau garance guede gaude robbia guado reseda rubia gualda krap vajd colorant colorante farvestof fargestoff',
  ),
  pile: set(
    'pile tufts tuft tufted shaggy flor vlies florbuschel noppen buschel florreste poil poils meches pelo vello ciuffi ciuffo mechones mechon luv flos lo rye floss noppe mechon vello',
  ),
  wear: set(
    'worn wear used abgenutzt abnutzung abnutzungsspuren gebrauchsspuren use usee usure uses usato usata usura desgaste desgastado desgastada gastado abraded abrasion abgescheuert scheuerspuren slidt slid slitt slitasje slidspor slitt brugt',
  ),
  seam: set(
    'seam seams hem hemmed sewn stitch stitches stitched stitching holes stichlocher stiche naht nahte saum genaht gesaumt couture coutures cousu cousue ourlet cucito cucita cucitura cuciture orlo cosido cosida costura costuras dobladillo som somme syet sydd sauma',
  ),
  repair: set(
    'repair repairs repaired darned darn darns stitches stopfstelle stopfstellen flickstelle flickstellen flicken lap lapper pasyet remiendos zurcidos mended mending patch patched reparatur reparaturen geflickt gestopft flickung stopfung repariert reparation reparations reprise reprisee repare reparee raccommode riparazione riparazioni rammendo rammendato rammendata rattoppato reparacion reparaciones remendado zurcido zurcida remiendo reparation reparationer stoppet lappet reparert reparasjon reparasjoner',
  ),
  splicing: set(
    'splice splices spliced gespleisst spleiss epissure epissures episse empalme empalmado splejset splejsning spleiset',
  ),
  residue: set(
    'residue residues ruckstande ruckstand anhaftung anhaftungen residu residus residuo residui residuos rester belaegning',
  ),
};

/**
 * Reads "no pile", "ohne Flor", "traces of wear", "Saum, 1 Seite", "not detected": every word must be one of those
 * that say yes or no, name the thing itself, or say where and how much; one word more and nothing is read.
 * "Not analysed" is no absence, and has no word here. Common practice, no source.
 */
export function presenceInWords(
  text: string,
  attribute: AttributeDefinition | undefined,
): PresenceWords | null {
  if (text.length > 120) return null;
  const words = foldText(text)
    .split(' ')
    .filter((word) => word !== '');
  if (words.length === 0 || words.length > 7 || attribute === undefined || /[?]/u.test(text)) return null;
  const own = SAYS_YES[attribute.id] ?? new Set<string>();
  const names = namesOf(attribute);
  const thing = (word: string) => own.has(word) || names.has(word);
  if (
    !words.every(
      (word) =>
        NO.has(word) ||
        NOT_FOUND.has(word) ||
        FOUND.has(word) ||
        AROUND.has(word) ||
        SURVIVES.has(word) ||
        thing(word),
    )
  )
    return null;
  const denied = words.some((word) => NO.has(word) || NOT_FOUND.has(word));
  const said = words.some((word) => FOUND.has(word) || thing(word) || TRACE.has(word) || NOT_FOUND.has(word));
  // "No pile preserved" is no absence.
  if (!said || (denied && words.some((word) => SURVIVES.has(word)))) return null;
  return {
    present: !denied,
    note: readAs('presence-in-words', `${quote(text)} read as ${denied ? 'absent' : 'present'}`),
  };
}

const TRACE = set('trace traces spur spuren spor rester reste tracce traccia huellas huella restos resti');

/** Single words under which the attribute's columns are known: they name the thing. */
function namesOf({ label, synonyms }: AttributeDefinition): ReadonlySet<string> {
  const all = [label, ...Object.values(synonyms ?? {}).flat()];
  return new Set(all.map(foldText).filter((word) => !word.includes(' ')));
}
