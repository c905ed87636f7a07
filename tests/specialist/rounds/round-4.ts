/** A round of cells; how it is written stands in `round.ts`. Common practice, no source. */
export const ROUND_4 = `
twist1 | S | S-twisted, even ¦ gleichmäßig S-gesponnen ¦ S, torsion régulière ¦ torsione S, regolare ¦ torsión S, floja ¦ jævnt S-spundet ¦ S (loosely spun) ¦ S, hart gedreht
twist1 | Z | yarn Z-spun ¦ Faden Z ¦ fil en Z ¦ filo a Z ¦ hilo en Z ¦ tråd Z ¦ Z (35°) ¦ Z-tordu
twist1 | Z? | Z most likely ¦ Z, vermutlich ¦ probablement Z ¦ Z, seguramente ¦ formodentlig Z
twist1 | none | untwisted strips ¦ ungedrehte Fasern ¦ sans torsion apparente ¦ non ritorte, fibre parallele ¦ fibras paralelas sin torsión ¦ utvundet
twist1 | not-observed | twist indeterminate ¦ Drehung unklar ¦ sens de torsion indéterminé ¦ torsione indeterminabile ¦ torsión no visible ¦ snoning ikke bestemt ¦ cannot be seen
twist1 | ask | left-hand twist ¦ S/Z ¦ rechts
ply1 | S2z | S2z, loose ¦ 2-fach S-gezwirnt, Einzelfäden z ¦ retors en S de deux fils z ¦ due capi z ritorti a S ¦ dos cabos z retorcidos en S ¦ to z-spundne, S-tvundne tråde ¦ S-plied from z-spun pairs
ply1 | Z2s | Z2s ¦ Z ply, 2 s ¦ zwei s-Fäden Z-gezwirnt ¦ Z (s, 2-ply)
threads | 20 & 15 | 20×15 ¦ 20 per cm × 15 per cm ¦ Kette: 20/cm; Schuss: 15/cm ¦ chaîne : 20 fils/cm ; trame : 15 fils/cm ¦ ordito: 20 fili/cm; trama: 15 fili/cm ¦ urdimbre: 20; trama: 15 ¦ trend: 20, islæt: 15 ¦ weft 15, warp 20 ¦ 20 e/cm x 15 p/cm
threads | 20-22 & 15 | 20-22 × 15 ¦ Kette 20–22, Schuss 15 ¦ warp 20 to 22, weft 15 ¦ ordito 20-22, trama 15
threads | 20 & not-observed | 20 × ? ¦ Kette 20, Schuss nicht messbar ¦ chaîne 20, trame non comptable ¦ urdimbre 20, trama no visible
density1 | 20 | 20 ends/cm ¦ 20 Fäden pro cm ¦ 20 fils par cm ¦ 20 fili per cm ¦ 20 hilos por cm ¦ 20 tråde pr. cm ¦ 20 / cm ¦ 40 in 2 cm
density1 | 18-20 | 18 - 20 ¦ 18 bis 20/cm ¦ 18 à 20 par cm ¦ tra 18 e 20 ¦ de 18 a 20 ¦ fra 18 til 20
density1 | 20- | ≥ 20 ¦ mehr als 20 ¦ plus de 20 ¦ più di 20 ¦ más de 20 ¦ over 20 ¦ 20 or more
density1 | not-observed | count not possible ¦ Fadenzahl nicht ermittelt ¦ densité non mesurée ¦ densità non rilevabile ¦ densidad no registrada ¦ tæthed ikke målt ¦ not countable (fragile)
length | 60 | 6 cm ¦ Länge 6 cm ¦ long. : 6 cm ¦ lunghezza 6 cm ¦ longitud: 6 cm ¦ længde: 6 cm ¦ length, 6 cm
length | 60- | 6 cm as preserved ¦ 6 cm erhalten ¦ L. conservée 6 cm ¦ lungh. cons. 6 cm ¦ long. conservada 6 cm ¦ bevaret 6 cm
sizes | 6 & 4 | 6 × 4 cm ¦ L 6 cm W 4 cm ¦ Länge 6, Breite 4 ¦ longueur 6, largeur 4 cm ¦ lunghezza 6, larghezza 4 ¦ longitud 6; anchura 4 ¦ længde 6 cm, bredde 4 cm ¦ 4 cm wide, 6 cm long
rowSpacing | 7 | rows 7 mm apart ¦ Reihenabstand: 7 mm ¦ espacement 7 mm ¦ spaziatura 7 mm ¦ espaciado 7 mm ¦ rækkeafstand 7 mm ¦ 7 mm spacing
rowSpacing | 5-9 | spacing 5-9 mm ¦ 5 bis 9 mm Abstand ¦ tous les 5 à 9 mm ¦ distanti 5-9 mm ¦ separadas 5-9 mm
diameter1 | 0.8 | yarn diameter 0.8 mm ¦ Fadendurchmesser 0,8 mm ¦ diam. fil 0,8 mm ¦ diametro 0,8 mm ¦ diámetro 0,8 mm ¦ tråddiameter 0,8 mm ¦ 0.8 mm across
pile | present | pile present ¦ Flor vorhanden ¦ poil présent ¦ vello presente ¦ pelo presente ¦ luv til stede ¦ looped pile ¦ tufts on one face
pile | absent | no trace of pile ¦ kein Flor nachweisbar ¦ aucun poil ¦ vello non presente ¦ sin restos de pelo ¦ ikke luv ¦ plain, no tufts
pile | not-observed | pile: not determined ¦ Flor unbestimmt ¦ poil non observable ¦ vello non determinabile ¦ pelo indeterminado
dye | present | dye present (madder) ¦ gefärbt (Indigo) ¦ colorant présent ¦ colorante presente ¦ tinte presente ¦ farvestof påvist
dye | absent | no dye ¦ keine Färbung ¦ sans teinture ¦ senza tintura ¦ sin tinte ¦ ingen farvning ¦ dye not found
dye | not-observed | dye: not analysed ¦ Farbanalyse noch nicht erfolgt ¦ teinture indéterminée ¦ tintura non esaminata ¦ tinte no estudiado ¦ ikke analyseret for farve
wear | present | slight wear ¦ leichte Abnutzung ¦ légère usure ¦ lieve usura ¦ desgaste leve ¦ let slid
repair | present | repaired in antiquity ¦ repariert ¦ raccommodage ¦ rammendo antico ¦ zurcido antiguo ¦ reparation
repair | absent | no repair ¦ nicht repariert ¦ non réparé ¦ non riparato ¦ no reparado ¦ ikke repareret
seam | present | sewn edge ¦ genähte Kante ¦ bord cousu ¦ bordo cucito ¦ borde cosido ¦ syet kant
fibre | wool | fine wool ¦ feine Wolle ¦ laine fine ¦ lana fine ¦ lana fina ¦ fin uld ¦ pigmented wool
fibre | flax? | flax, cf. ¦ Flachs, wahrscheinlich ¦ lin probable ¦ lino probabile ¦ probablemente lino ¦ sandsynligvis hør ¦ likely linen
fibre | hair | animal hair ¦ Tierhaar, unbestimmt ¦ poil animal indéterminé ¦ pelo animale ¦ pelo animal indet. ¦ dyrehår
fibre | limeBast | lime (Tilia) ¦ Linde ¦ tilleul ¦ tiglio ¦ tilo ¦ lind ¦ linden bast ¦ Tilia sp.
fibre | treeBast | tree bast ¦ Baumbast, nicht näher bestimmt ¦ liber d'arbre, indéterminé ¦ træbast, ubestemt
fibre | not-observed | fibre indet. ¦ Faserart nicht bestimmt ¦ fibre inconnue ¦ fibra ignota ¦ fibra desconocida ¦ fiber ukendt ¦ not analysed
fibre | ask | non-wool ¦ keine Seide ¦ pas de lin ¦ non è lino ¦ no es lana ¦ hverken hør eller uld ¦ not identified as flax
structure | tabby | simple tabby ¦ einfache Leinwandbindung ¦ toile simple ¦ tafetán ¦ lærred 1/1 ¦ tabby (1/1)
structure | tabby g=both | basket weave ¦ Panamabindung ¦ natté ¦ panama ¦ panamá
structure | tabby f=weft | weft-faced tabby ¦ Leinwandbindung, schussbetont ¦ toile, face trame ¦ tafetán, cara de trama
structure | twill22 t=herringbone | 2/2 herringbone ¦ 2/2 herringbone twill ¦ Köper 2/2, Fischgrat ¦ saia 2/2 a spina di pesce ¦ sarga 2/2 en espiguilla
structure | twill t=pointed | point twill ¦ Spitzköper ¦ spidskiper
structure | twined o=open p=yes | open twining, tufted ¦ offene Zwirnbindung mit Flor ¦ cordé espacé à poils ¦ cordado abierto con mechones ¦ åben tvinding med luv
structure | twined o=close e=diagonal | close diagonal twining ¦ dichte versetzte Zwirnbindung ¦ cordé serré en quinconce ¦ tæt diagonal tvinding
structure | twined n=3 | three-strand twining ¦ 3-strand twining
structure | coiled | coiled ¦ vannerie cousue spiralée ¦ intreccio a spirale ¦ cosida en espiral ¦ spiralsyet
structure | knottedNetting | netting, knotted ¦ geknotetes Netz ¦ réseau noué, filet à nœuds ¦ rete a nodi ¦ red con nudos ¦ net med knuder
structure | knotlessNetting | net without knots ¦ Netz ohne Knoten ¦ filet sans nœud ¦ rete non annodata ¦ red sin nudo ¦ net uden knuder
structure | braid | braid ¦ Zopf ¦ tresse ¦ treccia ¦ trenza ¦ fletning
structure | not-observed | structure unclear ¦ Gewebebindung nicht erkennbar ¦ armure indéterminée ¦ struttura non leggibile ¦ técnica no identificable ¦ teknik ukendt
structure | ask | Gewebe, sogen. Beiderwand ¦ tissage tiretaine ¦ tessuto pignolato ¦ tejido cordellate ¦ vævning hvergarn ¦ no weave, netting?
selvedge | plainEdge | plain selvedge, right ¦ einfache Kante ¦ lisière simple ¦ cimosa semplice ¦ orillo simple ¦ simpel ægkant
selvedge | tabletEdge | tablet-woven edge ¦ Brettchenkante ¦ lisière aux tablettes ¦ cimosa a tavolette ¦ orillo de placas ¦ brikvævet kant
selvedge | absent | no edge ¦ Webkanten fehlen ¦ lisières absentes ¦ cimose assenti ¦ orillos ausentes ¦ ægkanter mangler
selvedge | not-observed | edges not observed ¦ keine Webkante erhalten ¦ lisière non visible ¦ cimosa non osservata ¦ orillo no conservado ¦ ægkant ikke bevaret
preservation | charred | charred fragment ¦ verkohlt ¦ brûlé ¦ bruciato ¦ quemado ¦ brændt ¦ carbonized
preservation | mineralisedCopper | copper-mineralised ¦ an Bronze korrodiert ¦ minéralisé au contact du bronze ¦ mineralizzato, rame ¦ mineralizado (bronce) ¦ bronzekorrosion
preservation | desiccated | dry ¦ trocken erhalten ¦ conservé à sec ¦ disseccato ¦ seco ¦ tørt
phase | not-observed | no phase assigned ¦ Phase nicht bestimmt ¦ sans phase ¦ fase incerta ¦ fase no asignada ¦ fase ikke oplyst
site | not-observed | site not recorded ¦ Fundort nicht bekannt ¦ provenance indéterminée ¦ provenienza non nota ¦ procedencia no conocida ¦ findested uoplyst ¦ unprovenanced
date | not-observed | not dated ¦ nicht datierbar ¦ sans datation ¦ non databile ¦ fecha ignorada ¦ ikke daterbar
date | -49-50 | 50 BC - AD 50 ¦ 50 v. Chr. - 50 n. Chr. ¦ 50 av. J.-C. - 50 apr. J.-C. ¦ 50 a.C.-50 d.C. ¦ 50 f.Kr.-50 e.Kr.
rowSlant | Z | Z-slant rows ¦ Z-Neigung der Reihen ¦ rangs en Z ¦ file a Z ¦ filas en Z ¦ rækker Z
tightness1 | tight | hard spun ¦ straff gedreht ¦ forte torsion ¦ torsione forte ¦ torsión apretada ¦ hårdtspundet
tightness1 | loose | soft spun ¦ locker gesponnen ¦ torsión débil ¦ løst snoet
spacingClass | close | closely set rows ¦ dicht an dicht ¦ rangs contigus ¦ file contigue ¦ filas contiguas ¦ rækker tæt sammen
observedOn | impression | impression only ¦ nur Abdruck ¦ empreinte seule ¦ solo impronta ¦ sólo impronta ¦ kun aftryk
`;
