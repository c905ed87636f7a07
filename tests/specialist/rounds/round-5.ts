/** A round of cells; how it is written stands in `round.ts`. Common practice, no source. */
export const ROUND_5 = `
twist1 | S | S, unplied ¦ single S-spun thread ¦ Einzelfaden, S ¦ fil simple en S ¦ filo semplice, torsione S ¦ hilo sencillo, S ¦ enkelttråd, S-spundet ¦ S spun, c. 30 degrees ¦ S, sehr fest (45°) ¦ S-spunnet garn
twist1 | Z | Z, not plied ¦ einfach Z ¦ Z-gedr. ¦ z-gesp. ¦ filé Z, torsion irrégulière ¦ filato a Z, sottile ¦ hilado a Z, fino ¦ fint Z-spundet ¦ all Z ¦ Z throughout ¦ durchgehend Z ¦ tous en Z ¦ Z-spunn
twist1 | Z? | Z? (very faint) ¦ Z - unsicher ¦ Z à vérifier ¦ Z, incerto ¦ parece Z ¦ Z, lidt usikkert ¦ seems Z
twist1 | none | flat strips, not spun ¦ Baststreifen, ungedreht ¦ lanières non tordues ¦ strisce non ritorte ¦ tiras sin torcer ¦ uspundne bastbånd ¦ I (no twist)
twist1 | not-observed | twist n.v. ¦ zu stark verkohlt ¦ trop minéralisé pour juger ¦ non giudicabile ¦ imposible de determinar ¦ kan ikke afgøres ¦ twist lost
twist1 | both | S u. Z ¦ S and Z mixed ¦ 2 S, 2 Z alternating ¦ S e Z alternati ¦ fils S et fils Z alternés
twist1 | ask | mostly S, some Z ¦ vorwiegend Z ¦ S (Z?) ¦ torsion à droite ¦ mal S, mal Z
ply1 | S2z | 2 ply, S; singles z ¦ 2-ply S/z ¦ zweifädig S-gezwirnt, z ¦ S-Zwirn (2 z) ¦ 2 brins z, torsion finale S ¦ 2 fils z tors ensemble en S ¦ due fili z, ritorti S ¦ 2 hebras z, torsión final S ¦ 2 tråde z, slået S ¦ final S, 2 z
ply1 | Z2s | Z-ply, 2 s singles ¦ s spun, 2 plied Z ¦ 2 s, Z-verzwirnt ¦ retors Z de 2 s
ply1 | Sz | S-plied (z) ¦ z-spun S-plied ¦ S-Zwirn, z-gesponnen ¦ retors S, filé z ¦ ritorto S da filati z ¦ torcido S de hilos z ¦ S-tvundet af z-garn
ply1 | S2 | two strands plied S ¦ zweifach, S ¦ 2 brins en S ¦ 2 capi in S ¦ 2 cabos, S ¦ totrådet, S
ply1 | 2-ply | two-ply ¦ zweifach gezwirnt ¦ 2 brins ¦ a due capi ¦ de dos cabos ¦ 2-trådet
ply1 | Z2S2z | Z(2S(2z)) ¦ 2(S2z) Z ¦ Z-cabled from 2 S2z
ply1 | ask | 2 or 3 ply S ¦ S/Z/S ¦ plied, direction unclear ¦ mehrfach gezwirnt
ply1 | not-observed | ply not visible ¦ Zwirnung nicht erkennbar ¦ nombre de brins indéterminé ¦ capi non contabili ¦ número de cabos no visible ¦ tvinding ubestemt
plyCount1 | 2 | 2-ply ¦ zwei ¦ zweifach ¦ 2 brins ¦ due capi ¦ dos cabos ¦ to tråde ¦ two strands
threads | 18 & 12 | 18 (warp) / 12 (weft) ¦ 18 ends, 12 picks ¦ 18 ends/cm and 12 picks/cm ¦ Kette 18 F/cm, Schuß 12 F/cm ¦ 18/12 Fäden je cm ¦ 18 ch. × 12 tr. au cm ¦ 18 fils de chaîne et 12 fils de trame par cm ¦ 18 fili/cm (ordito), 12 (trama) ¦ ord. 18/cm – tr. 12/cm ¦ U 18, T 12 ¦ 18 trendtråde x 12 islættråde pr. cm ¦ 12 S, 18 K ¦ warp/weft: 18/12
threads | 18-20 & 12 | 18–20/12 ¦ 18-20 warps, 12 wefts per cm ¦ K 18–20, S 12 ¦ ordito 18-20/cm, trama 12/cm ¦ 18 à 20 × 12
threads | ~18 & ~12 | approx. 18 × 12 ¦ circa 18 × 12 fili/cm ¦ aprox. 18 x 12 hilos ¦ ca. 18 x 12 tråde/cm
threads | 18.5 & 12 | 18,5 × 12 ¦ 18.5 warps, 12 wefts ¦ Kette 18,5 Schuss 12
threads | 18 & not-observed | 18 × – ¦ Kette 18, Schuss: nicht erkennbar ¦ 18 ch., trame non visible ¦ 18 warps; wefts lost
twists | Z & S | Z-warp, S-weft ¦ Kette Z-, Schuss S-gesponnen ¦ chaîne en Z, trame en S ¦ urdimbre en Z y trama en S ¦ Z i trend, S i islæt
twists | Z & Z | Z/Z ¦ Z in both systems ¦ beide Systeme Z ¦ Z dans les deux systèmes ¦ Z in entrambi i sistemi ¦ Z en ambos sistemas ¦ Z i begge systemer
density1 | 22 | 22 warps/cm ¦ 22 Kettfäden/cm ¦ 22 fils chaîne/cm ¦ 22 fili/cm ordito ¦ 22 urdimbres/cm ¦ 22 trendtråde/cm ¦ 22 threads in 1 cm ¦ 220 per 10 cm ¦ 110/5 cm ¦ 22 tr/cm
density1 | 20-24 | 11 in 5 mm ¦ 20-24 warps ¦ 20–24 Kettf./cm ¦ 20 à 24 fils ¦ 20/24 fili ¦ 20 a 24 hilos por cm ¦ 20-24 tråde ¦ 20-24, mean 22 ¦ 20-24 (Mittel 22) ¦ 20–24, ungleichmäßig
density1 | ask | 22; at selvedge 30 ¦ 22, an der Kante 30 ¦ 10 double threads ¦ 10 Doppelfäden ¦ 10 pairs/cm ¦ 10 fils doubles ¦ 10 coppie/cm ¦ 10 parejas de hilos ¦ 10 dobbelttråde
density1 | 15- | 15 min. ¦ >15/cm ¦ mindestens 15 F. ¦ 15 fils minimum ¦ minimo 15 fili ¦ al menos 15 ¦ 15 eller mere
density1 | ~15 | about fifteen ¦ 15 (approximate) ¦ geschätzt 15 ¦ une quinzaine ¦ una quindicina ¦ unas 15 ¦ 15 skønnet ¦ 15 estimated
density1 | not-observed | threads too fine to count ¦ Fäden nicht zählbar ¦ tissu trop dégradé ¦ illeggibile ¦ demasiado deteriorado ¦ for dårligt bevaret ¦ not counted
rowSpacing | 12 | 12 mm on centre ¦ 12 mm, Mitte zu Mitte ¦ 12 mm d'axe en axe ¦ interasse 12 mm ¦ 12 mm entre ejes ¦ 12 mm fra midte til midte ¦ 1,2 cm ¦ weft rows every 12 mm
rowSpacing | 10-15 | 10-15 mm, irregular ¦ 10–15 mm, unregelmäßig ¦ 1 à 1,5 cm ¦ da 10 a 15 mm ¦ varía entre 10 y 15 mm ¦ varierer 10-15 mm ¦ 1-1.5cm
rowSpacing | 5 | 2 rows/cm ¦ 2 Reihen pro cm ¦ 2 rangs/cm ¦ 2 file/cm ¦ 2 filas por cm ¦ 2 rækker pr. cm
rowSpacing | ask | 12 mm clear ¦ lichte Weite 12 mm ¦ 12 mm dazwischen ¦ 12 mm de vide ¦ luce 12 mm ¦ hueco de 12 mm ¦ 12 mm mellemrum
rowGap | 8 | 8 mm clear ¦ lichter Abstand 8 mm ¦ 8 mm d'intervalle ¦ vuoto di 8 mm ¦ hueco de 8 mm ¦ 8 mm mellemrum
diameter1 | 1.2 | 1.2 mm (yarn) ¦ Stärke: 1,2 mm ¦ ép. 1,2 mm ¦ 1,2 mm di spessore ¦ 1,2 mm de grosor ¦ 1,2 mm tyk ¦ Ø = 1,2 mm ¦ dia. 1.2mm
diameter1 | 0.8-1.2 | 0.8-1.2 mm, uneven ¦ 0,8–1,2 mm, ungleichmäßig ¦ 0,8 à 1,2 mm de diam. ¦ da 0,8 a 1,2 ¦ 0,8/1,2 mm ¦ varierende 0,8-1,2 mm
length | 85 | greatest length 8.5 cm ¦ größte Länge 8,5 cm ¦ longueur max. 8,5 cm ¦ lunghezza massima 8,5 cm ¦ longitud máxima 8,5 cm ¦ største længde 8,5 cm ¦ 8.5 cm overall
length | 85- | 8.5 cm, torn ¦ 8,5 cm, abgerissen ¦ 8,5 cm (incomplet) ¦ 8,5 cm (incompleto) ¦ 8,5 cm, ufuldstændig ¦ surviving length 8.5 cm ¦ still 8.5 cm long ¦ L. cons. : 8,5 cm
sizes | 11 & 7 | 11 cm x 7 cm ¦ 110 x 70 mm ¦ L 11 cm x W 7 cm ¦ H. 11 cm, B. 7 cm ¦ Höhe 11 cm, Breite 7 cm ¦ haut. 11 cm, larg. 7 cm ¦ alt. 11; largh. 7 ¦ alto 11 cm, ancho 7 cm ¦ 11 cm høj og 7 cm bred ¦ 11 cm l., 7 cm br. ¦ Maße: 11 × 7 cm ¦ dim. 11 × 7 cm ¦ misure cm 11 × 7 ¦ 11 x 7 cms
pile | present | long shaggy pile ¦ zottiger Flor ¦ longs poils sur l'endroit ¦ pelo lungo su una faccia ¦ pelo largo por una cara ¦ lodden på den ene side ¦ pile (cut) ¦ Noppen auf der Vorderseite
pile | absent | no pile seen ¦ kein Flor sichtbar ¦ sans poils ¦ nessuna traccia di vello ¦ sin rastro de pelo ¦ ingen spor af luv ¦ smooth, no pile ¦ pile – none
pile | not-observed | pile not visible (face down) ¦ Flor nicht mehr feststellbar ¦ poil: indéterminé ¦ vello: n.d. ¦ pelo: no se ve ¦ luv: ukendt
pile | present? | pile? ¦ Flor (?) ¦ poil ? ¦ vello? ¦ pile, probably
dye | present | dyed red (madder) ¦ rot gefärbt (Krapp) ¦ teint en rouge ¦ tinto in rosso ¦ teñido de rojo ¦ farvet rød ¦ indigo ¦ Waid ¦ alizarin detected ¦ traces of red dye ¦ tannin dye
dye | absent | no colorants detected ¦ keine Farbstoffe ¦ absence de colorant ¦ assenza di coloranti ¦ ausencia de colorantes ¦ intet farvestof ¦ natural, undyed ¦ not dyed ¦ écru, non teint
dye | not-observed | dye analysis pending ¦ Analyse ausständig ¦ non soumis à l'analyse ¦ in corso di analisi ¦ pendiente de análisis ¦ afventer analyse ¦ not examined for dye
dye | ask | reddish ¦ rötlich verfärbt ¦ teinte brune ¦ tinta marrone ¦ rojizo ¦ brunlig ¦ stained ¦ discoloured ¦ verfärbt ¦ stained by iron
dye | present? | dyed? ¦ gefärbt? ¦ teint ? ¦ tinto? ¦ farvet?
dye | present?? | possibly dyed ¦ evtl. gefärbt ¦ peut-être teint ¦ forse tinto ¦ måske farvet
wear | present | threadbare ¦ fadenscheinig ¦ élimé ¦ consunto ¦ raído ¦ tyndslidt ¦ polish from use ¦ abraded edge
wear | absent | no abrasion ¦ keine Abnutzung erkennbar ¦ sans trace d'usure ¦ non usurato ¦ sin señales de uso ¦ uslidt
seam | present | sewn seam ¦ Saumnaht ¦ cousu ¦ cucito ¦ cosido ¦ sammensyet ¦ overcast seam ¦ stitches in wool thread ¦ Nahtreste
seam | absent | unsewn ¦ nicht genäht ¦ non cousu ¦ non cucito ¦ sin coser ¦ usyet ¦ no stitches
repair | present | patch sewn on ¦ aufgesetzter Flicken ¦ pièce rapportée ¦ toppa ¦ remiendo cosido ¦ påsyet lap ¦ darned hole ¦ gestopfte Stelle ¦ mended
repair | absent | not mended ¦ nicht geflickt ¦ senza riparazioni ¦ sin reparar ¦ uden reparationer
repairTime | afterFinding | modern, conservation ¦ neuzeitlich ¦ restauro moderno ¦ moderna ¦ nyere tid ¦ modern repair ¦ restauration moderne
repairTime | inUse | during use ¦ antik ausgebessert ¦ antique ¦ in antico ¦ i oldtiden
selvedge | plainEdge | Webekante, einfach ¦ simple selvedge ¦ cimosa semplice, sx ¦ orillo simple, derecho ¦ ægkant, simpel
selvedge | hem | rolled hem ¦ Rollsaum ¦ ourlet roulé ¦ dobladillo enrollado ¦ rullesøm
selvedge | cutEdge | geschnittene Kante ¦ skåret kant
startingEdge | startingBorder | starting border ¦ Anfangskante ¦ bordure de départ ¦ bordo d'inizio ¦ borde inicial ¦ begyndelseskant
fibre | flax | bleached linen ¦ gebleichtes Leinen ¦ lin blanchi ¦ lino sbiancato ¦ lino blanqueado ¦ bleget hør ¦ fine flax yarn ¦ Flachsgarn
fibre | flax? | Flachs (wahrsch.) ¦ cf. lin ¦ prob. lino ¦ formodentlig hør ¦ flax/linen, probable
fibre | flax?? | maybe flax ¦ eventuell Flachs ¦ peut-être du lin ¦ quizá lino ¦ muligvis hør
fibre | wool | brown wool ¦ Schafswolle ¦ laine brune ¦ lana naturale ¦ lana parda ¦ brun uld ¦ woollen ¦ Wollgarn
fibre | goatHair | goat hair ¦ Ziegenhaar ¦ poil de chèvre ¦ pelo di capra ¦ pelo de cabra ¦ gedehår
fibre | bastFibre | bast (indet.) ¦ Bastfaser, nicht bestimmt ¦ fibre libérienne indéterminée ¦ fibra liberiana indet. ¦ bastfiber, ubestemt
fibre | rush | rush stems ¦ Binsen ¦ jonc ¦ giunco ¦ junco ¦ Juncus sp.
fibre | flax+wool | linen/wool mix ¦ mélange lin-laine ¦ misto lino-lana ¦ mezcla de lino y lana ¦ hør- og uldblanding
fibre | ask | not flax ¦ vegetal (pas du lin) ¦ non di lana ¦ weder Wolle noch Haar ¦ ni lino ni lana ¦ anything but wool ¦ flax excluded ¦ Wolle ausgeschlossen ¦ laine exclue ¦ lana esclusa ¦ lana descartada ¦ uld udelukket
fibre | not-observed | fibre too degraded ¦ Faser zu stark abgebaut ¦ fibre trop dégradée ¦ fibra troppo degradata ¦ fibra demasiado degradada ¦ fiber for nedbrudt ¦ no sample taken ¦ keine Probe entnommen
fibreMethod | transmittedLight | transmitted light microscopy ¦ Durchlichtmikroskop ¦ lumière transmise ¦ luce trasmessa ¦ luz transmitida
fibreMethod | dna | aDNA ¦ DNA-Analyse ¦ ADN ¦ analisi del DNA
structure | tabby | armatura tela ¦ ligamento tafetán ¦ toskaftsvævning ¦ plain weave (tabby) ¦ tabby, fine ¦ feine Leinwandbindung ¦ LW-Bindung ¦ Leinwandbidung ¦ Leinwandbindung (1:1)
structure | tabby | fulled tabby ¦ gewalkte Leinwandbindung ¦ toile foulée ¦ tafetán abatanado ¦ valket lærred ¦ felted tabby
structure | tabby f=balanced | tabby, balanced ¦ ausgewogene Leinwandbindung ¦ toile, équilibrée ¦ tafetán balanceado ¦ afbalanceret toskaft
structure | tabby f=weft | weft-faced plain weave ¦ Schussrips ¦ reps de trame ¦ tafetán, efecto trama ¦ tabby w. weft-faced surface
structure | tabby f=warp | Kettrips ¦ reps de chaîne
structure | twill22 | Gleichseitiger Köper 2/2 ¦ sergé de 2 lie 2 ¦ saia da 2/2 ¦ sarga batavia ¦ four-shed twill 2/2
structure | twill22 t=lozenge | Diamantköper 2/2 ¦ sergé à losanges 2/2 ¦ saia a losanghe 2/2 ¦ sarga de rombos 2/2 ¦ 2/2 twill, lozenges
structure | twill22 t=herringbone | herringbon twill 2/2 ¦ sergé à chevrons 2/2, arêtes de poisson ¦ kiper 2/2, sildeben ¦ Fischgrat 2/2
structure | twill22 t=broken | broken twill 2/2 ¦ Köper 2/2, gebrochen ¦ sergé brisé 2/2
structure | twined o=open e=simple | open simple twining ¦ simple twining, open ¦ einfache offene Zwirnbindung ¦ cordado simple abierto
structure | twined o=close a=weft | close weft twining ¦ dichte Schusszwirnbindung ¦ cordé de trame serré ¦ cordado de trama cerrado
structure | twined s=S | twining, S-slant ¦ S-twining ¦ Zwirnbindung in S-Richtung ¦ cordé à torsion S ¦ intreccio ritorto a S ¦ cordado en S
structure | tabletWoven | tablet weave ¦ Brettchengewebe ¦ tissage aux plaquettes ¦ tessuto a tavolette ¦ brikvævning
structure | tapestry | gobelinvævning
structure | looped | cross-knit looping or knitting
structure | ask | knitted-looking ¦ pseudo-sprang ¦ twill-like ¦ köperartig ¦ façon sergé ¦ simil sprang ¦ tipo sarga ¦ weave or plait? ¦ Gewebe oder Geflecht
structure | ask | not twill ¦ kein Köper ¦ pas de sergé ¦ non è saia ¦ no sarga ¦ ikke kiper
structure | not-observed | weave not determinable ¦ Bindung unklar ¦ armure illisible ¦ armatura non determinabile ¦ ligamento no identificable ¦ binding ikke bestemt ¦ structure obscured
preservation | charred | charred, brittle ¦ verkohlt (brüchig) ¦ totalmente carbonizado ¦ helt forkullet ¦ parzialmente carbonizzato ¦ burnt/charred ¦ verkolt
preservation | waterlogged | waterlogged, freeze-dried ¦ wassergelagert ¦ conservé en milieu humide ¦ conservato in ambiente umido ¦ conservado en medio húmedo ¦ vandlejret ¦ waterloged
preservation | mineralisedCopper | on copper alloy, mineralised ¦ durch Bronze mineralisiert ¦ minéralisé par sels de cuivre ¦ mineralizzato a contatto con bronzo ¦ mineralizado por óxidos de cobre ¦ mineraliseret på bronze
preservation | frozen | permafrost ¦ im Eis ¦ congelé ¦ i is
preservation | ask | not charred ¦ unverkohlt ¦ non carbonisé ¦ non carbonizzato ¦ no carbonizado ¦ ikke forkullet ¦ poor ¦ gut ¦ mauvais état ¦ cattivo stato ¦ mal conservado ¦ dårligt bevaret
recordedUse | not-observed | unknown use ¦ Verwendung unbekannt ¦ fonction inconnue ¦ uso sconosciuto ¦ uso desconocido ¦ ukendt anvendelse ¦ function not determined ¦ Funktion ungeklärt ¦ usage indéterminé
recordedUse | bag? | bag? ¦ bag (?) ¦ probably bag ¦ bag, probably
recordedUse | Beutel? | vermutlich Beutel ¦ Beutel (?) ¦ Beutel, wohl
recordedUse | sac? | sac (probable) ¦ probablement sac
recordedUse | ask | not a bag ¦ kein Beutel ¦ pas un sac
site | not-observed | findspot lost ¦ Fundstelle unbekannt ¦ senza luogo ¦ uden findested ¦ Altfund, o. Fundort
site | Drommavel? | Drommavel (?) ¦ Drommavel ? ¦ Drommavel, probably ¦ vermutlich Drommavel ¦ probablement Drommavel
phase | not-observed | phase not assigned ¦ keiner Phase zugewiesen ¦ senza fase ¦ ingen fase
colour | not-observed | colour not preserved ¦ Farbe nicht erkennbar ¦ couleur indéterminée ¦ colore non determinabile ¦ color no conservado ¦ farve ukendt
colour | brown? | brown? ¦ brown (?) ¦ probably brown
date | -599--500 | 6th c. BC ¦ 6. Jh. v.Chr. ¦ VIe s. av. n. è. ¦ s. VI a.C. ¦ sixth century BC ¦ 6th cent. BCE ¦ 6. Jhdt. v. Chr.
date | -549--500 | second half of 6th c. BC ¦ 2. Hälfte 6. Jh. v. Chr. ¦ 2e moitié du VIe s. av. J.-C. ¦ seconda metà VI sec. a.C. ¦ 2.ª mitad s. VI a.C. ¦ 2. halvdel af 6. årh. f.Kr.
date | -799--400 | 8th-5th c. BC ¦ 8.–5. Jh. v. Chr. ¦ VIIIe-Ve s. av. J.-C. ¦ VIII-V sec. a.C. ¦ ss. VIII-V a.C. ¦ 8.-5. årh. f.Kr.
date | ~-449 | c. 450 BC ¦ um 450 v. Chr. ¦ vers 450 av. J.-C. ¦ verso il 450 a.C. ¦ hacia 450 a.C. ¦ omkring 450 f.Kr.
date | -449- | after 450 BC ¦ nach 450 v. Chr. ¦ après 450 av. J.-C. ¦ dopo il 450 a.C. ¦ después de 450 a.C. ¦ efter 450 f.Kr.
date | ask | 2450±35 BP ¦ 2450 BP ¦ Iron Age ¦ Eisenzeit ¦ âge du Fer ¦ ältere Eisenzeit
rowSlant | S | S-slanting rows ¦ S-Richtung ¦ pendenza S ¦ inclinación en S ¦ S-retning
rowSlant | countered | S and Z rows alternate ¦ Reihen abwechselnd S und Z ¦ rangs alternés S/Z ¦ file S e Z alternate ¦ filas alternas S y Z ¦ skiftevis S og Z
rowSlant | ask | slopes up right ¦ rechtsgeneigt ¦ penchés à gauche ¦ verso destra ¦ hacia la izquierda ¦ mod højre
strandsPerRow | 2 | two-strand ¦ 2-strand ¦ zweisträngig ¦ à deux brins ¦ a due capi ¦ de dos hilos
strands | 3 | three-strand ¦ dreisträngig ¦ à trois brins ¦ a tre capi ¦ de tres ramales
observedOn | impression | imprint on pottery ¦ Abdruck im Ton ¦ empreinte dans l'argile ¦ impronta su argilla ¦ impronta en arcilla ¦ aftryk i lerkar
observedOn | cast | silicone cast ¦ Abguss ¦ moulage ¦ calco ¦ vaciado ¦ afstøbning ¦ latex cast of impression
processing | spliced | spliced yarn ¦ gespleißtes Garn ¦ fils épissés ¦ hilos empalmados
processing | ask | spliced or spun ¦ gespleißt oder gesponnen ¦ épissé ou filé
splicing | absent | no splices ¦ keine Spleißstellen
tightness1 | loose | loose twist
knotType | sheetBend | nœud d'écoute ¦ vuelta de escota ¦ Schotstek ¦ mesh knot
twistAngle1 | 35 | 35 deg ¦ 35 Grad ¦ 35 degrés ¦ 35 gradi ¦ 35 grados ¦ 35 grader ¦ angle 35°
quantity | 3 | 3 frags ¦ 3 Fragmente ¦ tre frammenti ¦ tres fragmentos ¦ 3 stk. ¦ three pieces
quantity | ask | several ¦ mehrere ¦ plusieurs fragments ¦ diversi ¦ varios
weight | 2.4 | 2,4 g ¦ Gewicht 2,4 g ¦ poids 2,4 g ¦ peso: 2,4 g ¦ vægt 2,4 g ¦ wt 2.4 g
thickness | 1.5 | 1.5 mm thick ¦ Dicke 1,5 mm ¦ ép. 1,5 mm ¦ spess. 1,5 mm ¦ espesor 1,5 mm ¦ tykkelse 1,5 mm
layers | 2 | two layers ¦ zweilagig ¦ 2 couches ¦ due strati ¦ dos capas ¦ 2 lag
`;
