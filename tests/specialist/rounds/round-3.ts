/** A round of cells; how it is written stands in `round.ts`. Common practice, no source. */
export const ROUND_3 = `
twist1 | S | S spin, soft ¦ weich S-gedreht ¦ S souple ¦ a S, debole ¦ en S, suave ¦ S (svagt) ¦ single S yarn ¦ S, ca. 25°
twist1 | Z | Z spin direction ¦ Drehrichtung Z ¦ sens de torsion: Z ¦ direzione di torsione Z ¦ dirección de torsión Z ¦ spinderetning Z ¦ spun Z (hard)
twist1 | S? | S?, worn ¦ eher S ¦ plutôt S ¦ piuttosto S ¦ más bien S ¦ snarest S
twist1 | none | fibres laid parallel, no twist ¦ Fasern parallel, ohne Drehung ¦ aucune torsion ¦ nessuna torsione visibile ¦ sin torsión visible ¦ ingen snoning
twist1 | not-observed | twist not visible under corrosion ¦ Drehung nicht mehr erkennbar ¦ torsion non déterminée ¦ torsione non osservabile ¦ torsión sin determinar ¦ retning ukendt ¦ too felted to see
ply1 | S2z | S2z plied yarn ¦ 2z→S ¦ zweifädiger Zwirn S aus z ¦ fil retors S (2 z) ¦ filo ritorto S (2z) ¦ hilo retorcido S, 2 cabos z ¦ 2-trådet garn, z-spundet, S-tvundet
ply1 | Z2s | s-spun, Z-plied, 2-ply ¦ Z-Zwirn (2 s) ¦ retors Z, 2 brins s ¦ 2 capi s ritorti Z
ply1 | S3z | z/S, 3-ply ¦ 3-fach S-Zwirn, z ¦ S (3z)
threads | 16 & 9 | 16 warp / 9 weft ¦ 16 in warp, 9 in weft ¦ Kette 16 Fäden, Schuss 9 Fäden ¦ ch. 16, tr. 9 ¦ ord. 16, tr. 9 ¦ urd. 16 × tr. 9 ¦ 16 trend, 9 islæt ¦ density: 16/9
threads | 15-18 & 8-10 | 15–18 warps, 8–10 wefts ¦ Kette: 15–18, Schuss: 8–10 ¦ 15-18 (ch.) × 8-10 (tr.) ¦ 15/18 x 8/10
threads | 16 & not-observed | 16 × nicht zählbar ¦ 16 warp, weft not visible ¦ ordito 16, trama non rilevabile ¦ 16 / indet.
density1 | 16 | 16 Fd./cm ¦ 16 threads to the cm ¦ 16 au centimètre ¦ 16 al centimetro ¦ 16 por centímetro ¦ 16 pr. cm ¦ 160/dm ¦ 16 (per cm)
density1 | 15-18 | 15–18 Fd/cm ¦ 15 a 18 ¦ 15 til 18 ¦ 15-18 per cm, varies ¦ 15-18, irregular
density1 | ~16 | c.16 ¦ ±16 ¦ etwa 16/cm ¦ environ 16 fils ¦ circa 16 fili ¦ unos 16 hilos ¦ ca. 16 tråde
density1 | not-observed | not recorded by excavator ¦ keine Zählung möglich ¦ décompte impossible ¦ non contabile per degrado ¦ no se puede contar ¦ kan ikke måles
length | 45 | 4.5 cm ¦ 4,5 cm ¦ L = 4.5 cm ¦ 45 mm lang ¦ long de 4,5 cm ¦ lungo 4,5 cm ¦ 4,5 cm de largo ¦ 4,5 cm lang
length | 45- | 4.5 cm (incomplete) ¦ mind. 4,5 cm erhalten ¦ 4,5 cm conservés ¦ 4,5 cm conservati ¦ 4,5 cm conservados ¦ bevaret 4,5 cm
sizes | 7 & 5 | 7 by 5 cm ¦ 7 auf 5 cm ¦ 7 sur 5 cm ¦ 7 per 5 cm ¦ 7 por 5 cm ¦ L. 7 cm, Br. 5 cm ¦ Lge. 7, Br. 5 ¦ lg. 7 cm, la. 5 cm ¦ 7 (L) × 5 (B) cm
rowSpacing | 8 | every 8 mm ¦ Reihe alle 8 mm ¦ un rang tous les 8 mm ¦ una fila ogni 8 mm ¦ una fila cada 8 mm ¦ en række hver 8 mm ¦ 8 mm apart
rowSpacing | 10 | 1 row per cm ¦ 1 cm apart ¦ 1 Reihe/cm ¦ alle 10 mm ¦ 10 mm centre-to-centre
rowSpacing | ~8 | c. 8 mm apart ¦ etwa alle 8 mm ¦ env. 8 mm ¦ circa ogni 8 mm ¦ ca. 8 mm afstand
diameter1 | 0.5 | 0.5 mm diameter ¦ Durchmesser 0,5 mm ¦ 0,5 mm de diamètre ¦ 0,5 mm di diametro ¦ 0,5 mm de diámetro ¦ 0,5 mm i diameter ¦ .5 mm
diameter1 | 0.3-0.5 | 0.3 to 0.5 mm thick ¦ 0,3–0,5 mm stark ¦ de 0,3 à 0,5 mm ¦ da 0,3 a 0,5 mm ¦ entre 0,3 y 0,5 mm ¦ mellem 0,3 og 0,5 mm
pile | present | traces of pile ¦ pile, sparse ¦ Florreste ¦ restes de poil ¦ tracce di vello ¦ restos de pelo ¦ spor af luv ¦ pile both sides
pile | absent | pile: none ¦ Flor: nein ¦ pas de poil visible ¦ vello assente ¦ pelo ausente ¦ luv mangler ¦ no evidence of pile
pile | not-observed | pile not observable ¦ Rückseite nicht einsehbar ¦ revers non visible ¦ retro non visibile ¦ pelo no observable
dye | present | madder-dyed ¦ mit Krapp gefärbt ¦ teint à la garance ¦ tinto con robbia ¦ teñido con rubia ¦ farvet med krap ¦ red dye
dye | absent | no dyestuff detected ¦ aucun colorant identifié ¦ colorante non rilevato ¦ no se detectó colorante ¦ intet farvestof påvist
dye | not-observed | dye not tested ¦ Färbung nicht untersucht ¦ teinture non analysée ¦ tintura non analizzata ¦ tinte no analizado ¦ farve ikke undersøgt
dye | ask | white? ¦ bläulich ¦ brun foncé ¦ rosso
wear | present | worn thin ¦ abgewetzt ¦ usure marquée ¦ tracce d'usura ¦ huellas de uso ¦ slidspor ¦ signs of wear
wear | absent | no signs of wear ¦ keine Gebrauchsspuren ¦ aucune trace d'usure ¦ nessuna traccia d'usura ¦ sin huellas de uso ¦ ingen slidspor
seam | present | stitch holes ¦ Stichlöcher am Rand ¦ trous de couture ¦ fori di cucitura ¦ agujeros de costura ¦ stinghuller
repair | present | ancient repair ¦ antike Flickung ¦ réparation antique ¦ riparazione antica ¦ reparación antigua ¦ oldtidig reparation ¦ darning, coarse
repair | absent | unrepaired ¦ ohne Flickstellen ¦ sans reprise ¦ nessun rammendo ¦ sin remiendos ¦ ingen lapper
repairTime | inUse | ancient ¦ antik ¦ ancienne ¦ antica ¦ antigua
fibre | flax? | flax, probably ¦ Flachs (?) ¦ lin vraisemblable ¦ lino, probabile ¦ nok hør
fibre | flax?? | flax (visual)? ¦ posiblemente lino
fibre | hemp | hemp ¦ Cannabis sativa ¦ Hanffaser ¦ fibre de chanvre ¦ fibra di canapa ¦ fibra de cáñamo ¦ hampfiber
fibre | nettle | nettle fibre ¦ Brennnessel ¦ ortie ¦ ortica ¦ fibra de ortiga ¦ brændenælde ¦ Urtica dioica L.
fibre | willowBast | willow bast ¦ Weidenbast ¦ liber de saule ¦ Salix sp. bast ¦ pilebast
fibre | oakBast | oak bast ¦ Eichenbast ¦ liber de chêne ¦ egebast
fibre | animalFibre | animal fibre, indet. ¦ tierische Faser, unbestimmt ¦ fibre animale indéterminée ¦ fibra animale indet. ¦ fibra animal
fibre | not-observed | unidentified ¦ Faser unbestimmt ¦ fibre non identifiée ¦ fibra non identificata ¦ fibra sin identificar ¦ ikke artsbestemt
fibre | ask | not silk ¦ keine Wolle ¦ ni lin ni chanvre ¦ non lana ¦ sin seda ¦ ej ull ¦ lime? or lime juice
structure | twined o=close | close twining ¦ dichte Zwirnbindung ¦ cordé serré ¦ intreccio ritorto serrato ¦ cordado cerrado ¦ tæt tvinding ¦ compact twining
structure | twined o=open a=weft s=S | open weft twining, S-slant ¦ offene Schusszwirnbindung, S ¦ S-slant open weft-twining
structure | twined e=diagonal p=no | diagonal twining, no pile ¦ versetzte Zwirnbindung ohne Flor ¦ cordé en quinconce sans poil
structure | twined s=countered | countered twining ¦ twining, alternate rows S and Z
structure | tabby f=weft p=yes | weft-faced tabby with pile ¦ schussbetonte Leinwandbindung mit Flor
structure | tabby f=warp | warp-faced tabby ¦ kettsichtiges Leinwandgewebe ¦ toile à effet chaîne
structure | twill22 f=weft | 2/2 twill, weft-faced ¦ Köper 2/2, schusssichtig ¦ sergé 2/2 à effet trame
structure | twill22 | 2/2 twill ¦ 2:2 twill ¦ Gleichgratköper 2/2 ¦ sergé 2/2 ¦ batavia 2/2 ¦ sarga 2/2 ¦ 2/2-kiper ¦ twill (2/2)
structure | twill21 t=lozenge | 2/1 diamond twill ¦ 2/1 lozenge twill ¦ Rautenköper 2/1 ¦ sergé losangé 2 lie 1
structure | tabletWoven | tablet weaving ¦ Brettchenweberei ¦ tissage aux tablettes ¦ tessitura a tavolette ¦ tejido de placas ¦ brikvævet bånd ¦ tablet-woven band
structure | tapestry | tapestry weave ¦ Wirkerei ¦ tapisserie ¦ arazzo ¦ tapiz
structure | knotlessNetting | knotless netting ¦ knotenloses Netz ¦ filet sans nœuds ¦ rete senza nodi ¦ red sin nudos ¦ knudeløst net
structure | not-observed | Bindung nicht bestimmbar ¦ structure indéterminée ¦ armatura non riconoscibile ¦ estructura no determinable ¦ binding ukendt ¦ weave obscured
structure | ask | tejido abarcado ¦ tissage barré cassin ¦ Gewebe mit Trisel ¦ tessuto operato a liseré ¦ no twining
structure | felt | felt ¦ Filz ¦ feutre ¦ feltro ¦ fieltro ¦ filt
selvedge | reinforcedEdge | reinforced selvedge ¦ verstärkte Webkante ¦ lisière renforcée ¦ cimosa rinforzata ¦ orillo reforzado ¦ forstærket ægkant
selvedge | startingBorder | starting border ¦ Anfangskante ¦ bordure de départ ¦ bordo iniziale ¦ borde inicial ¦ begyndelseskant
selvedge | cutEdge | cut edge ¦ Schnittkante ¦ bord coupé ¦ bordo tagliato ¦ borde cortado ¦ afskåret kant
selvedge | not-observed | no edges preserved ¦ keine Kanten erhalten ¦ aucun bord conservé ¦ nessun bordo conservato ¦ ningún borde conservado ¦ ingen kanter bevaret
preservation | charred | charred ¦ verkohlter Zustand ¦ carbonisée ¦ carbonizzato, fragile ¦ parcialmente carbonizado ¦ delvist forkullet
preservation | waterlogged | waterlogged ¦ nass geborgen ¦ gorgée d'eau ¦ in ambiente umido ¦ vandmættet ¦ found wet
preservation | mineralisedIron | mineralised on iron ¦ an Eisen ankorrodiert ¦ minéralisé sur fer ¦ mineralizzato su ferro ¦ mineralizado sobre hierro ¦ mineraliseret på jern
preservation | frozen | frozen ¦ Eisfund ¦ gelé ¦ congelato ¦ congelado ¦ frosset
phase | not-observed | phase uncertain ¦ Phase unklar ¦ phase inconnue ¦ fase ignota ¦ fase desconocida ¦ uden fase ¦ period not known
site | not-observed | unknown site ¦ unbekannter Fundort ¦ site inconnu ¦ sito sconosciuto ¦ yacimiento desconocido ¦ ukendt findested ¦ no find-spot
date | not-observed | no date ¦ ohne Datierung ¦ sans date ¦ datazione sconosciuta ¦ sin fechar ¦ uden datering ¦ date not known
date | -599--500 | 6th c. BCE ¦ 6. Jh. v. Chr. ¦ VIe s. av. J.-C. ¦ VI sec. a.C. ¦ siglo VI a.C. ¦ 6. årh. f.Kr.
rowSlant | S | S slant of rows ¦ Zwirnung S ¦ torsion des rangs S ¦ torsione delle file: S ¦ rows S-slanting ¦ skråning S
tightness1 | loose | loose ¦ slack twist ¦ schwache Drehung ¦ torsion faible ¦ torsione debole ¦ torsión suelta ¦ løs snoning
tightness1 | very tight | very tightly twisted ¦ sehr stark gedreht ¦ torsion très serrée ¦ torsione molto stretta ¦ torsión muy fuerte ¦ meget hårdt snoet
spacingClass | open | openly spaced ¦ offen ¦ espacé ¦ aperto ¦ abierto ¦ åben ¦ rows well apart
splicing | present | spliced fibres ¦ mit Spleißen ¦ épissures visibles ¦ giunte visibili ¦ empalmes visibles ¦ splejset garn
splicing | absent | not spliced ¦ keine Spleiße ¦ sans épissure ¦ sin empalmes
knotType | reefKnot | reef knot ¦ square knot ¦ Kreuzknoten ¦ nœud plat ¦ nodo piano ¦ nudo llano ¦ råbåndsknob
processing | retted | retted ¦ geröstet ¦ roui ¦ macerato ¦ enriado
observedOn | impression | impression ¦ Abdruck ¦ empreinte ¦ impronta ¦ impronta en barro ¦ aftryk
`;
