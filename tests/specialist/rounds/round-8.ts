/** A round of cells; how it is written stands in `round.ts`. Common practice, no source. */
export const ROUND_8 = `
structure | tabby | tabby, medium fine ¦ simple tabby weave ¦ glatte Leinwandbindung ¦ Leinwandbindung, mittelfein ¦ toile de lin ¦ toile grossière ¦ tessuto a tela, fine ¦ tejido en tafetán, fino ¦ tafetán, hilos irregulares ¦ lærred, fint ¦ plain weave (tabby), fragmentary ¦ tabby woven textile
structure | tabby f=faced | ribbed tabby ¦ Ripsgewebe ¦ toile cannelée ¦ reps (toile)
structure | tabby g=one | tabby with paired wefts ¦ Leinwandbindung, Schuss doppelt ¦ toile à trame double ¦ tela con ordito doppio ¦ tafetán con trama doble ¦ lærred med dobbelt trend
structure | twill22 | twill 2 over 2 ¦ Köper, 2/2 ¦ croisé 2/2 ¦ sergé 2/2, laine fine ¦ diagonale 2/2 ¦ sarga batavia 2/2 ¦ 2/2-kipper ¦ four-shed twill (2/2)
structure | twill31 | 3/1 twill ¦ Köper 3/1, fein ¦ sergé 3 lie 1 ¦ sarga 3x1 ¦ kiper 3:1
structure | twill22 t=lozenge | 2/2 twill with lozenges ¦ Köper 2/2, Rautenmuster ¦ sergé losangé 2/2 ¦ saia 2/2 a rombi ¦ rombos en sarga 2/2
structure | twill22 t=broken | broken twill 2/2 ¦ 2/2 Köper, gebrochen ¦ sergé brisé 2/2 ¦ saia spezzata 2/2 ¦ brudt kiper 2/2
structure | twill f=weft | weft-faced twill ¦ Köper mit Schusseffekt ¦ sergé effet trame ¦ saia a effetto di trama
structure | twined | twined weave ¦ Zwirnbindung ¦ étoffe cordée ¦ a struttura ritorta ¦ tejido cordado ¦ tvinding ¦ twined fabric, worn
structure | twined e=simple | plain twined
structure | twined o=open n=2 | open two-strand twining ¦ zweisträngige Zwirnbindung, offen ¦ cordé à deux brins, espacé
structure | twined s=Z | Z-twined ¦ Zwirnbindung Z ¦ cordé en Z ¦ cordado en Z ¦ twined (Z-slant) ¦ twining, rows leaning Z
structure | twined o=close s=Z | close twining, Z ¦ dichte Z-Zwirnbindung ¦ cordé serré en Z
structure | twined o=semi-open | semi-open twining ¦ halboffene Zwirnbindung ¦ cordé semi-ouvert ¦ cordado semiabierto
structure | twined e=diagonal p=no | diagonal twining without pile ¦ diagonale Zwirnbindung, kein Flor
structure | coiled | coiled ¦ coiling on bundle foundation ¦ Wulstgeflecht, fein ¦ vannerie spiralée cousue ¦ cestería en espiral cosida ¦ spiralsyet kurvearbejde
structure | plaited | plaited ¦ plaited mat ¦ geflochten, grob ¦ tressé ¦ trenzado fino ¦ flettet måtte
structure | twillPlaiting | twill plaited basket ¦ Köpergeflecht, fein ¦ panier en vannerie sergée
structure | netting | net ¦ netting fragment ¦ Netzfragment ¦ fragment de filet ¦ frammento di rete ¦ fragmento de red ¦ stykke af net
structure | knotlessNetting | net, knotless ¦ Netz, knotenlos ¦ filet (sans nœuds) ¦ knudeløst netværk
structure | looped | looped fabric ¦ Maschenstoff ¦ looping ¦ slyngning
structure | sprang | Sprang ¦ sprang (interlinked?) ¦ sprang textile
structure | cordage | cord ¦ Schnur ¦ cordelette ¦ cordicella ¦ snor ¦ piece of string ¦ Schnurfragment ¦ fragment of cord
structure | rope | rope, 3 strands ¦ Seilfragment ¦ fragmento de soga ¦ stykke reb
structure | braid | braided band ¦ Flechtband ¦ treccia piatta
structure | gauze | gauze ¦ Drehergewebe ¦ gaze ¦ garza
structure | tabletWoven | Brettchenborte ¦ tablet band, narrow ¦ galon aux plaquettes ¦ brikvævet kantbånd
structure | woven? | woven? ¦ Gewebe? ¦ tissé ?
structure | twined? | twined (?) ¦ twining? ¦ wohl Zwirnbindung ¦ probablement cordé ¦ cordado (?) ¦ vermutlich zwirnbindig
structure | tabby?? | possibly tabby ¦ evtl. Leinwandbindung ¦ peut-être toile ¦ quizás tafetán ¦ måske lærred
structure | not-observed | not determinable ¦ structure lost ¦ Bindung zerstört ¦ armure illisible ¦ struttura non leggibile ¦ estructura no visible ¦ binding kan ikke ses ¦ Gewebestruktur nicht erhalten
structure | ask | neither tabby nor twill ¦ weder Köper noch Leinwand ¦ no es tafetán ¦ ikke kiper ¦ may be sprang ¦ tabby → twill ¦ compound ¦ mixed ¦ variable ¦ Typ 3b ¦ see drawing ¦ mat in twill ¦ Matte, leinwandbindig ¦ estera de sarga ¦ Korb, köperbindig ¦ basket, 2/2 ¦ stuoia a tela
twist1 | S | S, thin ¦ S-spun yarn, loose ¦ S-spun (worn) ¦ S-Garn, dünn ¦ S, unregelmäßig gesponnen ¦ en S, lâche ¦ torsion S marquée ¦ in S, debole ¦ S (media) ¦ hilado en S ¦ S-spundet, tyndt ¦ løst S-spundet ¦ S-tvist
twist1 | Z | Z, tightly ¦ Z strong ¦ z, lightly twisted ¦ Z-Drehung (fest) ¦ fest Z-gesponnen ¦ Z régulière ¦ fil en Z, fin ¦ filo in Z ¦ en Z, fuerte ¦ fast Z-spundet ¦ Z-gesponnenes Garn
twist1 | none | untwisted ¦ no discernible twist ¦ keine Drehung ¦ pas de torsion ¦ nessuna torsione ¦ ninguna torsión ¦ ingen snoning ¦ fibres lie parallel ¦ Fasern parallel
twist1 | Z? | probably Z ¦ Z probable ¦ vermutl. Z ¦ sans doute Z ¦ probabilmente Z ¦ sandsynligvis Z ¦ Z likely
twist1 | S?? | possibly S ¦ evtl. S ¦ peut-être S ¦ forse S ¦ quizá S ¦ måske S ¦ S??
twist1 | not-observed | covered by corrosion ¦ unter Korrosion ¦ charred, not readable ¦ verkohlt, nicht bestimmbar ¦ non visible (corrosion) ¦ non visibile per la corrosione ¦ no legible ¦ ulæselig
twist1 | ask | S becoming Z ¦ S/Z? ¦ slight ¦ leicht gedreht ¦ tordu ¦ right-hand ¦ im Uhrzeigersinn ¦ mostly Z
ply1 | S2z | S2z, medium ¦ 2z/S ¦ plied S from two z yarns ¦ S-gezwirnt aus zwei z ¦ z, S-Zwirn, 2-fach ¦ retordu S, 2 bouts z ¦ S (2z) ¦ 2 fili z, torsione S ¦ cuerda S2z ¦ snor S2z ¦ S 2z
ply1 | Z2s | plied Z from two s yarns ¦ Z (2s) ¦ Schnur Z2s ¦ 2s/Z ¦ retors Z (2 s) ¦ ritorto Z da 2 s
ply1 | Z2S2z | Z2S2z rope ¦ Seil Z(2S(2z))
ply1 | Zs | s-spun, Z-plied ¦ Zs ¦ s-gesponnen, Z-gezwirnt ¦ retors Z de fils s
ply1 | 2-ply | 2-ply yarn ¦ doppelt gezwirnt ¦ retors à 2 bouts ¦ two-ply
ply1 | ask | ZS ¦ loosely plied ¦ several plies ¦ mehrsträngig ¦ S or Z, 2-ply
threads | 20 & 15 | 20 warp, 15 weft ¦ 20/15 per cm ¦ 20 × 15 F/cm ¦ Kette 20 Fäden/cm, Schuss 15 Fäden/cm ¦ K 20, S 15 ¦ 20 ch x 15 tr ¦ 20 fils (chaîne) × 15 fils (trame) ¦ 20 fili di ordito, 15 di trama ¦ 20 hilos urdimbre, 15 trama ¦ trend: 20, islæt: 15 ¦ 20 x 15 tråde pr. cm ¦ 20 ends x 15 picks per cm ¦ warp = 20; weft = 15 ¦ weft 15, warp 20 ¦ Schuss 15, Kette 20 ¦ trame 15, chaîne 20
threads | 20-22 & 15-16 | 20-22/15-16 ¦ 20–22 x 15–16 ¦ warp 20-22, weft 15-16 ¦ K 20–22 / S 15–16 ¦ ordito 20-22/cm, trama 15-16/cm
threads | ~20 & ~15 | c. 20 x 15 ¦ ca. 20 × 15 ¦ env. 20 × 15
twists | Z & S | Z (K), S (S) ¦ Z-spun warp, S-spun weft ¦ Kette: Z; Schuss: S ¦ ch. Z, tr. S ¦ Z en chaîne, S en trame ¦ ordito Z; trama S ¦ urd. Z, tr. S ¦ Z : S ¦ Z warp / S weft
twists | Z & Z | Z × Z ¦ Z in warp and weft ¦ Z in Kette und Schuss ¦ Z en chaîne et en trame ¦ Z in ordito e trama ¦ Z en urdimbre y trama
density1 | 16 | 16 th/cm ¦ 16 Fäden pro Zentimeter ¦ 16 fils chaîne par cm ¦ 16 fili d'ordito/cm ¦ 16 hilos por centímetro ¦ 16 tråde per cm ¦ 16 per cm (counted once) ¦ 80 per 5 cm ¦ 160/dm ¦ warp: 16 ¦ 16/1 cm
density1 | 16-18 | between 16 and 18 ¦ 16 to 18 per cm ¦ 16 bis 18 F ¦ 16 à 18 fils/cm ¦ da 16 a 18 ¦ 16-18 hilos ¦ 16 til 18 tråde
density1 | ~16 | around 16 ¦ rund 16 ¦ à peu près 16 ¦ all'incirca 16 ¦ más o menos 16 ¦ cirka 16 ¦ 16 (ca.) ¦ nearly 16 ¦ etwa 16 F/cm
density1 | 16- | 16 at least ¦ wenigstens 16 ¦ 16 ou plus ¦ 16 o più ¦ 16 como mínimo ¦ mindst 16 ¦ ≥16 ¦ 16 or more per cm
density1 | 0-8 | less than 8 ¦ weniger als 8 ¦ moins de 8 ¦ meno di 8 ¦ menos de 8 ¦ mindre end 8 ¦ <8/cm ¦ below 8
density1 | not-observed | not countable ¦ zu dicht zum Zählen ¦ trop serré pour compter ¦ troppo fitto per contare ¦ kan ikke tælles ¦ hidden by weft ¦ vom Schuss verdeckt ¦ count not possible
density1 | ask | 16? 18? 20 ¦ 16 pairs ¦ 20/16 ¦ dense ¦ grob ¦ twice the weft ¦ 16 in places 22
rowSpacing | 10 | 10 mm between centres ¦ rows 10 mm apart (centres) ¦ Abstand der Reihen 10 mm ¦ espacement : 10 mm ¦ distanza tra i centri 10 mm ¦ distancia entre ejes 10 mm ¦ afstand 10 mm ¦ 1 row per cm ¦ 1 Reihe/cm
rowGap | 4 | gap 4 mm ¦ 4 mm Zwischenraum ¦ 4 mm d'espace libre ¦ 4 mm di vuoto ¦ 4 mm de espacio ¦ 4 mm mellemrum ¦ clear gap of 4 mm
diameter1 | 0.7 | 0.7 mm dia ¦ 0,7 mm stark ¦ fil : 0,7 mm ¦ spessore 0,7 mm ¦ 0,7 mm de diámetro ¦ 0,7 mm i diameter ¦ 700 µm ¦ D = 0.7 mm ¦ 0.07 cm
diameter1 | 0.5-0.9 | 0.5 up to 0.9 mm ¦ 0,5 bis 0,9 mm ¦ de 0,5 à 0,9 mm ¦ da 0,5 a 0,9 mm ¦ de 0,5 a 0,9 mm ¦ fra 0,5 til 0,9 mm ¦ min. 0.5, max. 0.9 mm ¦ 0.5-0.9 mm (5 readings)
twistAngle1 | 25 | 25° ¦ angle 25° ¦ Drehwinkel 25° ¦ 25 degrees to the axis
tightness1 | tight | tight twist ¦ stark gedreht ¦ très tordu ¦ forte ¦ fuertemente torcido ¦ hårdt spundet
tightness1 | loose | loose twist ¦ schwach gedreht ¦ peu tordu ¦ debole ¦ poco torcido ¦ løst
meshGauge | 20 | 20 mm bar ¦ knot to knot 20 mm ¦ Schenkellänge 20 mm ¦ de nœud à nœud : 20 mm ¦ nodo a nodo 20 mm
meshGauge | ask | 40 mm stretched ¦ mesh 20 mm clear ¦ ouverture 20 mm ¦ luce 20 mm
length | 92 | 9.2 cm (max.) length ¦ Länge 9,2 cm ¦ L: 9,2 cm ¦ long. : 9,2 cm ¦ 9,2 cm di lunghezza ¦ 9,2 cm de longitud ¦ længde: 9,2 cm ¦ 9.2cm long ¦ 92 mm long
length | 92- | 9.2 cm preserved ¦ noch 9,2 cm lang ¦ 9,2 cm conservés ¦ 9,2 cm conservati ¦ 9,2 cm conservados ¦ 9,2 cm bevaret ¦ 9.2 cm, broken ¦ pres. L. 9.2 cm
sizes | 9.2 & 4 | 9.2 × 4 cm ¦ 9.2 cm long by 4 cm wide ¦ Länge 9,2 cm; Breite 4 cm ¦ L 9,2 cm x l 4 cm ¦ lungh. 9,2 cm; largh. 4 cm ¦ longitud 9,2 cm, anchura 4 cm ¦ længde 9,2 cm, bredde 4 cm ¦ 92 x 40 mm ¦ max. 9.2 x 4 cm ¦ B. 4 cm, L. 9,2 cm
thickness | 3 | 3 mm thickness ¦ Stärke 3 mm ¦ 3 mm d'épaisseur ¦ 3 mm di spessore ¦ 3 mm de espesor ¦ 3 mm tykt
weight | 0.8 | 0.8 g ¦ 0,8 g (trocken) ¦ 800 mg ¦ peso: 0,8 g
layers | 4 | four layers ¦ vierlagig ¦ 4 épaisseurs ¦ quattro strati ¦ cuatro capas ¦ fire lag
layers | ask | folded ¦ mehrlagig ¦ plusieurs couches ¦ several layers ¦ 2 or more? folds
quantity | 2 | 2 pieces ¦ zwei Stück ¦ due pezzi ¦ dos piezas ¦ to stykker ¦ 2 objects
fibre | flax | flax, bleached ¦ Flachs, ungebleicht ¦ fil de lin ¦ tela di lino ¦ hilo de lino fino ¦ hørgarn ¦ linen (Linum sp.) ¦ flax, fine ¦ Leinenfaden
fibre | wool | sheep wool, fine ¦ Wolle (Schaf) ¦ laine fine ¦ lana, pelo fino ¦ lana de oveja negra ¦ uld, brun ¦ ull ¦ wool, pigmented ¦ weiße Wolle
fibre | hemp | hemp ¦ Hanf ¦ chanvre ¦ canapa ¦ cáñamo ¦ hamp ¦ Cannabis sativa L. ¦ hemp yarn
fibre | esparto | esparto ¦ Espartogras ¦ sparte ¦ sparto ¦ esparto crudo ¦ Stipa tenacissima
fibre | oakBast | oak bast ¦ Eichenbast ¦ liber de chêne ¦ libro di quercia ¦ Quercus bast
fibre | ask | bast
fibre | bastFibre | bast fibre ¦ Bastfaser ¦ bast, indet. ¦ fibra di libro
fibre | flax? | flax (probable) ¦ Flachs (?) ¦ lin probable ¦ probabilmente lino ¦ lino (probable) ¦ formentlig hør
fibre | flax+wool | flax and wool ¦ Leinen und Wolle ¦ lin et laine ¦ lino e lana ¦ lino y lana ¦ hør og uld ¦ linen/wool mix
fibre | not-observed | not identified ¦ indeterminable ¦ Faser unbekannt ¦ fibre inconnue ¦ fibra sconosciuta ¦ ikke bestemt ¦ too degraded
fibre | ask | not wool ¦ kein Flachs ¦ ni lin ni laine ¦ non lana ¦ sin lana ¦ either flax or wool, unclear ¦ organic ¦ natural fibre ¦ string ¦ might be silk
dye | present | dyed with madder ¦ mit Waid gefärbt ¦ teinture bleue ¦ tinto con robbia ¦ teñido (índigo) ¦ farvet (krap) ¦ dye detected ¦ Farbstoff nachgewiesen ¦ colorant identifié
dye | absent | no dye found ¦ nicht gefärbt ¦ pas teint ¦ nessuna tintura ¦ sin tinte ¦ ikke farvet ¦ not dyed (HPLC) ¦ Färbung nicht nachgewiesen
dye | ask | no indigo ¦ kein Krapp ¦ pas d'indigo ¦ ohne Rot ¦ dye analysis ¦ Farbanalyse ¦ might be dyed ¦ natural brown? dyed ¦ grey
residue | present | resin ¦ traces of tar ¦ Pechspuren ¦ résine ¦ pece ¦ resina ¦ rester af tjære ¦ food residue
residue | ask | no tar ¦ kein Harz ¦ sediment ¦ pas de poix
residue | absent | no residues ¦ keine Rückstände ¦ aucun résidu ¦ nessun residuo visibile
wear | present | wear traces ¦ Abnutzungsspuren ¦ traces d'usure ¦ tracce di usura ¦ huellas de uso ¦ slidspor ¦ much worn ¦ worn thin
seam | ask | no hem ¦ kein Saum ¦ hem? or selvedge ¦ pas d'ourlet
seam | present | stitched seam ¦ Naht ¦ couture ¦ cucitura visibile ¦ costura a un lado ¦ sewn together ¦ zusammengenäht
repair | present | repaired ¦ ausgebessert ¦ raccommodé ¦ rammendato ¦ remendado ¦ repareret ¦ darning visible
pile | present | pile ¦ tufts present ¦ Florbüschel ¦ mèches ¦ ciuffi ¦ mechones ¦ with pile on face
pile | absent | no pile ¦ pile absent ¦ kein Flor ¦ sans mèches ¦ privo di vello ¦ ningún pelo ¦ intet flos
selvedge | plainEdge | plain ¦ einfache Webekante ¦ lisière, simple ¦ cimosa, semplice ¦ simple selvage, left
selvedge | reinforcedEdge | reinforced ¦ Webkante verstärkt ¦ lisière renforcée des deux côtés ¦ bordo rinforzato ¦ orillos reforzados
selvedge | hem | sewn hem ¦ Saum, genäht ¦ ourlet cousu ¦ dobladillos ¦ hems
selvedge | tabletEdge | tablet-woven border ¦ Brettchenkanten ¦ lisière tissée aux tablettes ¦ bordo a tavolette
selvedge | absent | no selvedges ¦ keine Webkanten ¦ lisières absentes ¦ cimose assenti ¦ sin bordes
selvedge | not-observed | selvedge lost ¦ Webkante verloren ¦ lisière perdue ¦ bordi non conservati ¦ kant ikke bevaret
knotType | sheetBend | sheet bends ¦ Netzknoten, einfach ¦ nœuds de filet ¦ nodi di rete ¦ nudos de red ¦ skødestik
knotType | ask | knots ¦ geknotet ¦ nœuds ¦ loops
stitchType | interlockingStitch | interlocking stitching ¦ verhängte Stiche ¦ points entrelacés ¦ punti allacciati
stitchType | simpleStitch | simple stitches ¦ einfache Stiche ¦ points simples ¦ punti semplici ¦ puntadas simples
preservation | charred | charred (carbonised) ¦ vollständig verkohlt ¦ carbonisé, fragile ¦ carbonizzato in incendio ¦ muy carbonizado ¦ forkullet, skørt ¦ charred, brittle ¦ carbonized in fire
preservation | waterlogged | wet ¦ im Feuchtboden erhalten ¦ milieu humide ¦ ambiente umido ¦ vandmættet, blødt
preservation | mineralised | mineralised, hard ¦ teilweise mineralisiert ¦ partiellement minéralisé ¦ parzialmente mineralizzato
preservation | mineralisedIron | iron corrosion products ¦ durch Eisenkorrosion erhalten ¦ conservé par la rouille ¦ conservato nella ruggine ¦ on iron knife, mineralised
preservation | mineralisedCopper | copper salts ¦ Bronzesalze ¦ dans les sels de cuivre ¦ conservato da sali di rame ¦ next to bronze, mineralised
preservation | desiccated | dry cave ¦ getrocknet ¦ sec (grotte) ¦ secco ¦ muy seco ¦ tør
preservation | not-observed | not stated ¦ Erhaltung nicht angegeben ¦ conservation non précisée
preservation | ask | mineralised or charred ¦ nicht mineralisiert ¦ not charred ¦ mal conservé ¦ moderately good ¦ washed
foundation | bundleFoundation | bundle ¦ bundle of straw ¦ Bündel ¦ faisceau de brins ¦ fascio d'erba
foundation | rodFoundation | rod ¦ single rod foundation ¦ eine Rute ¦ baguette
workDirection | rightToLeft | right to left ¦ von rechts nach links ¦ de droite à gauche ¦ da destra a sinistra ¦ fra højre mod venstre
observedOn | impression | clay impression ¦ im Abdruck ¦ empreinte (argile) ¦ impronte ¦ aftryk i keramik
observedOn | cast | plaster cast ¦ Gipsabguss ¦ moulage en silicone
orientation | not-observed | unclear
orientation | untold | systems indistinguishable ¦ nicht zu unterscheiden ¦ non distingués ¦ no distinguibles
date | -799--700 | 8th century BC ¦ achtes Jh. v. Chr. ¦ huitième siècle av. J.-C. ¦ ottavo secolo a.C. ¦ siglo octavo a.C. ¦ 8. årh. f.v.t. ¦ eighth century BC
date | -299--200 | third century BC ¦ drittes Jahrhundert v. Chr. ¦ 3e s. av. J.-C. ¦ III sec. a. C. ¦ s. III a. C.
date | -1599--1400 | 1600-1401 BC ¦ 1600–1401 v. Chr. ¦ 1600 à 1401 av. J.-C. ¦ fra il 1600 e il 1401 a.C. ¦ 1600-1401 f.Kr.
date | 101-150 | first half of 2nd c. AD ¦ 1. H. 2. Jh. n. Chr. ¦ 1re moitié du IIe s. ap. J.-C. ¦ prima metà II sec. d.C.
date | ask | Roman ¦ römisch ¦ époque romaine ¦ medieval ¦ 3rd phase ¦ ca. 4000 BP ¦ 2nd–3rd
date | not-observed | not dated ¦ nicht datiert ¦ pas daté ¦ non datato ¦ no fechado ¦ ikke dateret
site | not-observed | unknown findspot ¦ Fundort nicht bekannt ¦ lieu inconnu ¦ luogo di ritrovamento ignoto ¦ yacimiento desconocido ¦ ukendt fundsted ¦ o. Fundort
site | Orlund | Orlund
site | Orlund? | Orlund? ¦ probably Orlund ¦ Orlund (?) ¦ vermutlich Orlund ¦ probablement Orlund
period | not-observed | unknown period ¦ Periode unbekannt ¦ époque incertaine ¦ periodo sconosciuto ¦ período desconocido ¦ uvis periode
recordedUse | sack | sack ¦ a sack
recordedUse | Sack | Sack. ¦ ein Sack
recordedUse | not-observed | use not known ¦ Zweck unbekannt ¦ usage indéterminé ¦ uso non noto ¦ uso indeterminado ¦ brug ukendt
recordedUse | ask | no bag ¦ kein Sack ¦ not clothing ¦ pas une natte
colour | brown | brown ¦ now brown ¦ brown (today)
repairTime | inUse | in antiquity ¦ in der Antike ¦ dans l'Antiquité ¦ nell'antichità ¦ en la antigüedad ¦ in use
repairTime | afterFinding | modern ¦ modern darn ¦ moderne Flickung ¦ réparation moderne ¦ restauración moderna ¦ moderne reparation
processing | splitStrip | strips ¦ split strip ¦ gespaltene Baststreifen ¦ lanières ¦ strisce ¦ tiras
processing | retted | retted ¦ geröstet ¦ fibres rouies ¦ macerata ¦ enriada
fibreMethod | sem | by SEM ¦ REM-Untersuchung ¦ examen au MEB ¦ analisi al SEM ¦ microscopio electrónico (MEB)
fibreMethod | byEye | visual only ¦ nur nach Augenschein ¦ à l'œil ¦ a occhio ¦ a ojo ¦ kun med øjet
rowSlant | S | S ¦ S slant ¦ Neigung S ¦ pente S ¦ inclinazione a S ¦ rows in S
rowSlant | countered | alternating S and Z ¦ S und Z wechselnd ¦ S et Z en alternance ¦ S y Z alternos
spacingClass | semi-open | semi-open ¦ halboffen ¦ semi-ouvert ¦ semi aperto ¦ semiabierto ¦ halvåben
spacingClass | close | rows touch ¦ Reihen dicht aneinander ¦ rangs jointifs ¦ file ravvicinate ¦ filas juntas ¦ tætte rækker
face | warpFaced | warp-faced ¦ kettsichtig ¦ effet chaîne ¦ faccia ordito ¦ cara urdimbre ¦ trenddominans
twillPattern | broken | broken ¦ gebrochen ¦ brisé ¦ spezzato ¦ quebrada
supplementary | brocadingWeft | brocaded ¦ broschiert ¦ broché ¦ broccato ¦ espolinado
conservationTreatment | freezeDried | freeze dried ¦ Gefriertrocknung ¦ lyophilisation ¦ liofilizzazione
conservationTreatment | consolidated | consolidated ¦ gefestigt ¦ consolidé ¦ consolidato ¦ consolidado
`;
