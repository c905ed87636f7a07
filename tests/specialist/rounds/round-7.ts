/** A round of cells; how it is written stands in `round.ts`. Common practice, no source. */
export const ROUND_7 = `
structure | tabby | tabby (plain weave) ¦ ordinary tabby ¦ einf. Leinwandbdg. ¦ Leinwandbindung, regelmäßig ¦ Tuchbindung 1/1 ¦ toile, armure régulière ¦ armure toile simple ¦ tela semplice ¦ tela (1/1) ¦ tafetán simple ¦ ligamento de tafetán ¦ toskaft ¦ toskaftsvev ¦ enkel lærredsvævning
structure | tabby f=balanced | balanced tabby ¦ tabby, balanced ¦ ausgewogene Leinwandbindung ¦ toile équilibrée ¦ tela bilanciata ¦ tafetán equilibrado ¦ afbalanceret lærred
structure | tabby f=weft | weft-faced plain weave ¦ Leinwandbindung, schussbetont ¦ toile à effet de trame ¦ tela a faccia di trama ¦ tafetán con efecto de trama ¦ skudreps ¦ Schussrips
structure | tabby f=weft o=close | weft-faced tabby, dense
structure | tabby f=warp | warp repp ¦ Kettrips ¦ reps de chaîne ¦ tafetán cara de urdimbre ¦ tabby (warp-faced) ¦ kædereps
structure | tabby g=one | half-panama ¦ Halbpanama, fein ¦ half basket weave ¦ toile demi-nattée ¦ mezzo panama ¦ medio panamá ¦ tabby, warp threads paired ¦ Leinwandbindung mit paarigen Kettfäden
structure | tabby g=both | panama weave ¦ Panamabindung 2/2 ¦ natté 2/2 ¦ basket weave (2/2) ¦ esterilla 2/2 ¦ hopsack weave
structure | twill22 | 2/2 twill, Z diagonal ¦ Gleichgratköper 2/2 ¦ Köper 2:2 ¦ sergé à 4, 2/2 ¦ saia 2/2 ¦ batavia 2/2 ¦ firskaft 2/2 ¦ 2/2 kiper, jævn
structure | twill22 t=straight | twill, 2/2 (plain)
structure | twill21 | three-end twill 2/1 ¦ 2/1 twill, worn ¦ dreibindiger Köper ¦ sergé de 3 ¦ sergé 2 lie 1 ¦ saia 2/1 ¦ sarga 2/1 ¦ treskaft
structure | twill22 t=lozenge | diamond twill (2/2) ¦ Rautenköper 2/2 ¦ sergé à losanges 2/2 ¦ saia a losanghe 2/2 ¦ sarga romboidal 2/2 ¦ diamantkiper 2/2
structure | twill22 t=herringbone | 2/2 herringbone twill ¦ herringbone twill 2/2, coarse ¦ Fischgratköper 2/2 ¦ saia 2/2 a spina di pesce
structure | twill22 t=pointed | Spitzgratköper 2/2 ¦ 2/2 pointed twill ¦ spidskiper 2/2
structure | twill22 t=reversed | sergé chevron 2/2
structure | twill f=warp | warp-faced twill ¦ Köper, kettsichtig ¦ sergé à effet de chaîne ¦ saia a faccia d'ordito ¦ kædefladet kiper
structure | tabletWoven | tablet-woven band ¦ Brettchenband ¦ brettchengewebt ¦ tissage aux tablettes, bande ¦ tessuto a tavolette ¦ cinta tejida con tablillas ¦ brikvævet bånd ¦ brikkevevd bånd
structure | tapestry | tapestry weave ¦ Wirkerei ¦ tapisserie, laine ¦ arazzo ¦ tapiz ¦ billedvævning
structure | twined o=open | spaced twining ¦ Zwirngeflecht mit Abständen ¦ cordé espacé ¦ a struttura ritorta aperta ¦ cordado espaciado ¦ åben tvinding ¦ tvundet, åben
structure | twined o=close | compact twining ¦ dichte Zwirnbindung ¦ cordé serré ¦ cordado compacto ¦ tæt tvinding ¦ twined (close)
structure | twined o=close a=weft | close weft-twining ¦ dichte Schusszwirnbindung ¦ cordé de trame, serré
structure | twined o=open s=S | open twining, S-slant ¦ S-twined, open ¦ open S-twined rows
structure | twined s=countered | countered twining ¦ counter-twined ¦ twined, alternate rows S and Z
structure | twined e=diagonal o=open | open diagonal twining ¦ diagonal twining, spaced rows ¦ versetzte Zwirnbindung mit Abstand ¦ cordé en quinconce, espacé ¦ cordado diagonal abierto
structure | twined p=yes | twining with pile ¦ twined, with tufts ¦ Vliesgeflecht ¦ cordé à poils ¦ cordado con mechones ¦ tvunden med luv
structure | twined n=3 | three-strand twining ¦ dreisträngige Zwirnbindung ¦ cordé à trois brins
structure | coiled | coiled basket ¦ Spiralwulsttechnik ¦ vannerie spiralée, fine ¦ intreccio a spirale ¦ cestería cosida en espiral ¦ spiralsyet kurv ¦ coiled basketry frag.
structure | coiled o=close | coiling, close
structure | checkerPlaiting | checker-plaited ¦ checkerwork mat ¦ leinwandbindiges Geflecht ¦ vannerie toilée ¦ schachbrettartiges Flechtwerk
structure | twillPlaiting22 | 2/2 twill plaiting ¦ twill-plaited 2/2 ¦ Köpergeflecht 2/2 ¦ vannerie sergée 2/2
structure | knottedNetting | knotted net ¦ geknotetes Netz ¦ filet noué ¦ rete annodata ¦ red anudada ¦ knyttet net ¦ knotted netting, fine
structure | knotlessNetting | knotless net ¦ knotenloses Netz ¦ filet sans nœuds, lin ¦ rete senza nodi ¦ red sin nudos ¦ knudeløst net
structure | needleBound | nålebinding ¦ nalbinding ¦ Nadelbindung ¦ needle-bound mitten ¦ nålebundet
structure | braid | three-strand braid ¦ dreisträngiger Zopf ¦ tresse à 3 brins ¦ treccia a tre capi ¦ trenza de 3 cabos ¦ flettet snor, 3 tråde
structure | rope | thick rope ¦ Seil, dick ¦ corde épaisse ¦ soga gruesa ¦ tykt reb
structure | cordage | corda grossa
structure | felt | felted wool ¦ Filz, grob ¦ feutre de laine ¦ feltro ¦ fieltro ¦ filt
structure | twill? | twill? ¦ Köper (?) ¦ sergé ? ¦ probably twill ¦ wohl Köper ¦ probablement sergé ¦ probabilmente saia ¦ sarga probable ¦ sandsynligvis kiper
structure | tabby? | prob. tabby ¦ vermutl. Leinwandbindung ¦ sans doute toile ¦ tafetán (?) ¦ trolig lerret
structure | not-observed | weave not identifiable ¦ Bindung nicht erkennbar ¦ armure indéterminée ¦ armatura non determinabile ¦ ligamento indeterminado ¦ binding ubestemmelig ¦ structure unclear ¦ nicht bestimmbar (Bindung)
structure | ask | tabby or repp? twill in part ¦ woven (?), twined (?) ¦ Brettchen ¦ type A
structure | woven | weave
structure | ask | wie Nr. 14 ¦ structure 3 ¦ similar to cat. 22
twist1 | S | S (strong) ¦ S, regular ¦ S, ca. 30° ¦ S-Drehung, mittel ¦ S-spun throughout ¦ torsion S, régulière ¦ torsion en S, forte ¦ torcitura S ¦ torsione S regolare ¦ torsión S media ¦ S-snoet, jævnt ¦ S-tvist, løst ¦ spun S
twist1 | Z | Z-gesponnen, fein ¦ Z, sehr regelmäßig ¦ Z twist, medium ¦ filé Z régulier ¦ torsion Z moyenne ¦ filato Z irregolare ¦ torsión en Z, suave ¦ Z-spundet, hårdt ¦ z (tight) ¦ Z, thick and thin ¦ Z; even
twist1 | none | no twist ¦ ohne Drehung ¦ sans torsion ¦ senza torsione ¦ sin torsión ¦ uden snoning ¦ untwisted strips ¦ ungedrehte Streifen ¦ not twisted ¦ grège
twist1 | S? | S (?), worn ¦ S, doubtful ¦ S, fraglich ¦ S, douteux ¦ S, dubbio ¦ S, dudoso ¦ S, usikker ¦ S, not certain ¦ S, nicht sicher
twist1 | not-observed | twist not determined ¦ Drehung n. best. ¦ torsion non déterminée ¦ torsione non rilevabile ¦ torsión no observable ¦ snoning kan ikke bestemmes ¦ twist indet. ¦ keine Angabe ¦ non rilevato
twist1 | both | S and Z ¦ S & Z threads ¦ S und Z gemischt ¦ S et Z alternés ¦ S y Z ¦ S og Z skiftevis
twist1 | ask | left-spun ¦ rechtsgedreht ¦ torsion à gauche ¦ opposite to warp ¦ wie Kette ¦ same as warp ¦ destrorsa
ply1 | S2z | S-plied from 2 z-spun yarns ¦ 2 z-spun threads, plied S ¦ Zwirn S aus 2 z ¦ S2z, tight ¦ S, aus zwei z-gesponnenen Fäden ¦ retors S (2 fils z) ¦ ritorto S a due capi z ¦ retorcido S de dos cabos z ¦ tvundet S af 2 z-tråde ¦ S(2z) cord ¦ cord S2z
ply1 | Z2s | Z-plied, two s strands ¦ Z-Schnur aus 2 s ¦ Z2s cord ¦ cordelette Z2s ¦ Z aus 2 s-Garnen ¦ corda Z2s
ply1 | Z3s | Z-plied from 3 s ¦ Z(3s) ¦ retors Z de 3 s ¦ 3 s-Garne, Z-verzwirnt
ply1 | S3 | three-ply, S ¦ dreifach S-gezwirnt ¦ S, 3-ply
ply1 | ask | twisted cord ¦ plied ¦ gezwirnt ¦ retors ¦ S/Z ¦ 2 z or 3 z, S ¦ cabled
plyCount1 | 2 | two-ply yarn ¦ zweifach gezwirnt ¦ 2 brins retors ¦ a 2 capi ¦ de 2 cabos ¦ totrådet ¦ 2 strands ¦ 2fach
plyCount1 | 3 | three strands ¦ dreifach ¦ trois brins ¦ tre capi ¦ tres cabos ¦ tretrådet
density1 | 14 | 14 per centimetre ¦ 14 threads to the cm ¦ 14 warp/cm ¦ 14 F./cm ¦ 14 Fd/cm ¦ 14 fils au cm ¦ 14 fils par centimètre ¦ 14 fili al cm ¦ 14 fili per centimetro ¦ 14 h/cm ¦ 14 hilos/cm ¦ 14 tråde/cm ¦ 14 pr. cm ¦ 70/5cm ¦ 140 th/10cm ¦ 28 per 2 cm
density1 | 9-11 | 9–11 F/cm ¦ 9 to 11 threads ¦ zw. 9 und 11 ¦ entre 9 et 11 ¦ tra 9 e 11 ¦ entre 9 y 11 ¦ mellem 9 og 11 ¦ 9 - 11 /cm ¦ from 9 to 11 ¦ 9...11
density1 | 12-16 | 7 in 5 mm
density1 | 9 | 9 (11)
density1 | ~13 | approximately 13/cm ¦ ungefähr 13 ¦ environ 13 fils ¦ circa 13 fili ¦ unos 13 hilos ¦ omkring 13 ¦ 13 approx. ¦ ±13 ¦ c.13
density1 | 20- | more than 20 ¦ over 20 ¦ über 20/cm ¦ plus de 20 ¦ oltre 20 ¦ più di 20 ¦ más de 20 ¦ over 20 tråde ¦ 20 or more ¦ mind. 20 ¦ au moins 20 ¦ almeno 20
density1 | not-observed | warp hidden ¦ Kette verdeckt ¦ chaîne non visible ¦ ordito non visibile ¦ urdimbre no visible ¦ trend ikke synlig ¦ uncountable ¦ cannot be counted ¦ non comptable ¦ non conteggiabile ¦ ikke talt
density1 | ask | fine ¦ sehr fein ¦ 14/12 ¦ 14 x 12 ¦ dichter als Schuss ¦ several ¦ 14 at left, 18 at right ¦ 2 x 7 ¦ irregular
density2 | 8.5 | 8.5 ¦ 8,5/cm ¦ 8½ ¦ 8 1/2 per cm ¦ 8,5 Schussfäden je cm ¦ 8,5 duites/cm ¦ 8,5 trame/cm ¦ 8,5 pasadas/cm ¦ 8,5 indslag pr. cm ¦ 8.5 picks
threads | 13 & 10 | warp 13, weft 10 ¦ 13/cm warp, 10/cm weft ¦ 13 (w) x 10 (f) ¦ K. 13 F./cm; S. 10 F./cm ¦ Kette: 13 – Schuss: 10 ¦ 13 x 10 Fd./cm ¦ 13 fils chaîne × 10 fils trame ¦ chaîne : 13 ; trame : 10 ¦ ordito: 13 fili; trama: 10 fili ¦ 13 x 10 fili/cm² ¦ urd. 13, tr. 10 ¦ U: 13 h/cm T: 10 h/cm ¦ trend 13 x islæt 10 ¦ 13:10 tråde/cm ¦ 13 by 10 ¦ 13×10/cm
threads | 13-15 & 10 | 13–15 × 10 ¦ 13-15/10 ¦ warp 13-15/cm; weft 10/cm ¦ Kette 13–15, Schuss 10 ¦ 13 à 15 fils en chaîne, 10 en trame ¦ ordito 13-15, trama 10 ¦ trend 13-15, islæt 10
threads | not-observed & 10 | ? x 10 ¦ warp ?, weft 10 ¦ – / 10 ¦ Kette n. b., Schuss 10 ¦ chaîne ind., trame 10 ¦ ordito n.d., trama 10
twists | Z & S | Z/S ¦ warp Z, weft S ¦ Z (warp), S (weft) ¦ Kette Z, Schuss S ¦ K: Z / S: S ¦ chaîne Z, trame S ¦ ordito Z, trama S ¦ urdimbre Z / trama S ¦ trend Z, islæt S ¦ Z x S ¦ warp z-spun, weft s-spun
twists | S & S | S/S ¦ both S ¦ beide S ¦ les deux en S ¦ entrambi S ¦ ambos S ¦ begge S
diameter1 | 0.4-0.6 | 0.4 to 0.6 mm ¦ 0,4–0,6 mm dick ¦ entre 0,4 et 0,6 mm ¦ tra 0,4 e 0,6 mm ¦ entre 0,4 y 0,6 mm ¦ 0,4 til 0,6 mm ¦ D 0.4-0.6 ¦ Dm. 0,4–0,6 mm ¦ 400-600 µm ¦ 0.4–0.6 mm (n = 10)
diameter1 | 2 | 2 mm thick ¦ Durchm. 2 mm ¦ diam. 2 mm ¦ diametro: 2 mm ¦ diámetro 2 mm ¦ diameter 2 mm ¦ 0.2 cm ¦ ø 2 mm ¦ ép. 2 mm
diameter1 | ~1 | approx. 1 mm ¦ ca. 1 mm ¦ environ 1 mm ¦ circa 1 mm ¦ cerca de 1 mm ¦ omtrent 1 mm ¦ ~1mm
diameter1 | ask | thin ¦ dünn ¦ fin ¦ sottile ¦ fino ¦ tynd ¦ 0.5 / 0.8 (warp/weft)
twistAngle1 | 30-35 | 30-35° ¦ 30–35 Grad ¦ 30 à 35 degrés ¦ 30-35 gradi ¦ 30 a 35 grados ¦ 30-35 grader ¦ 30° to 35°
twistAngle1 | 40 | 40 deg. ¦ Winkel 40° ¦ angle de 40° ¦ angolo 40° ¦ ángulo de 40°
tightness1 | tight | tight ¦ fest gedreht ¦ serré ¦ fortement tordu ¦ strettamente ritorto ¦ apretado ¦ fast snoet ¦ hard-spun ¦ tightly spun
tightness1 | loose | loosely spun ¦ locker gesponnen ¦ lâche ¦ faiblement tordu ¦ lento ¦ flojo ¦ løst spundet ¦ soft twist
tightness1 | medium | medium ¦ mittel ¦ moyen ¦ medio ¦ middel ¦ moderately tight ¦ mittelfest
rowSpacing | 8 | 8 mm apart ¦ 8 mm c-c ¦ Reihenabstand 8 mm ¦ rangs espacés de 8 mm ¦ un rang tous les 8 mm ¦ una fila ogni 8 mm ¦ una fila cada 8 mm ¦ en række for hver 8 mm ¦ spaced at 8 mm ¦ alle 8 mm eine Reihe
rowSpacing | 15-20 | 15 to 20 mm ¦ 1,5–2 cm ¦ de 15 à 20 mm ¦ 15-20 mm, var. ¦ zwischen 1,5 und 2 cm
rowGap | 3 | 3 mm free ¦ 3 mm zwischen den Reihen ¦ 3 mm entre les rangs ¦ 3 mm tra le file ¦ 3 mm entre filas ¦ 3 mm mellem rækkerne
rowGap | 0 | rows touching ¦ Reihen aneinanderliegend ¦ rangs jointifs ¦ file accostate ¦ filas juntas ¦ rækkerne rører hinanden
meshGauge | 12 | 12 mm knot to knot ¦ bar 12 mm ¦ Maschenschenkel 12 mm ¦ 12 mm de nœud à nœud ¦ 12 mm da nodo a nodo ¦ 12 mm de nudo a nudo ¦ 12 mm fra knude til knude
meshGauge | ask | stretched mesh 24 mm ¦ 24 mm gestreckt ¦ maille étirée 24 mm ¦ clear opening 11 mm
pileLength | 18-25 | 18–25 mm long ¦ pile 18-25 mm ¦ Florlänge 18–25 mm ¦ poils de 18 à 25 mm ¦ vello lungo 18-25 mm ¦ pelo de 18-25 mm ¦ luv 18-25 mm
stitchDensity | 3 | 3 stitches per cm ¦ 3 Stiche/cm ¦ 3 points au cm ¦ 3 punti/cm ¦ 3 puntadas/cm ¦ 3 sting pr. cm
length | 64 | 6.4 cm long ¦ Länge: 6,4 cm ¦ long. 6,4 cm ¦ lungh. 6,4 cm ¦ longitud: 6,4 cm ¦ længde 6,4 cm ¦ 64 mm ¦ L = 6.4 cm ¦ 6,4cm lang ¦ Lg. 6,4 cm
length | 64- | preserved length 6.4 cm ¦ erh. L. 6,4 cm ¦ L. conservée 6,4 cm ¦ lungh. conservata 6,4 cm ¦ long. conservada 6,4 cm ¦ bevaret længde 6,4 cm ¦ 6.4+ cm ¦ 6.4 cm (broken)
sizes | 6.4 & 3 | 6.4 x 3 cm ¦ 6,4 × 3,0 cm ¦ L. 6.4 cm, W. 3 cm ¦ 6,4 cm lang, 3 cm breit ¦ long. 6,4 cm ; larg. 3 cm ¦ lungo 6,4 cm, largo 3 cm ¦ 6,4 cm de largo por 3 cm de ancho ¦ 6,4 cm lang og 3 cm bred ¦ 64 × 30 mm ¦ L 6,4; B 3 ¦ 6.4 by 3 cm
width | 30 | 3 cm wide ¦ Breite 3 cm ¦ largeur : 3 cm ¦ larg. 3 cm ¦ largh. 3 cm ¦ ancho 3 cm ¦ bredde 3 cm ¦ B. 3 cm
thickness | 1.5 | 1.5 mm thick ¦ Dicke 1,5 mm ¦ ép. : 1,5 mm ¦ spess. 1,5 mm ¦ grosor 1,5 mm ¦ tykkelse 1,5 mm
weight | 12 | 12 g ¦ 12 grams ¦ Gewicht 12 g ¦ poids 12 g ¦ 12 gr. ¦ 0.012 kg ¦ vægt 12 g
layers | 2 | two layers ¦ zwei Lagen ¦ 2 couches superposées ¦ due strati ¦ dos capas ¦ to lag ¦ double layer ¦ zweilagig
layers | 1 | single layer ¦ einlagig ¦ une seule couche ¦ un solo strato ¦ una capa ¦ ét lag
quantity | 6 | 6 Stk.
quantity | ask | 6 frags ¦ six fragments ¦ 6 Fragmente ¦ 6 fragments ¦ 6 frammenti ¦ 6 fragmentos ¦ 6 fragmenter ¦ 6 Frgm.
quantity | ask | many ¦ zahlreich ¦ nombreux ¦ diversi ¦ varios ¦ mange ¦ 6 + crumbs
fibre | flax | flax ¦ Lein (Linum) ¦ linen (flax) ¦ lin, fils fins ¦ lino (Linum usitatissimum) ¦ hør ¦ flax bast ¦ Flachsfaser ¦ fibra de lino ¦ fibre de lin ¦ flax, retted
fibre | wool | sheep's wool ¦ Schafwolle ¦ laine de mouton ¦ lana ovina ¦ lana de oveja ¦ fåreuld ¦ wool, coarse ¦ lana (Ovis aries) ¦ Wolle, naturbraun ¦ laine brune
fibre | limeBast | lime bast ¦ linden bast ¦ Lindenbast ¦ liber de tilleul ¦ libro di tiglio ¦ líber de tilo ¦ lindebast ¦ Tilia sp., bast ¦ Tilia (Bast)
fibre | treeBast | tree bast ¦ Gehölzbast ¦ liber d'arbre ¦ tree bast, indet. ¦ Baumbast, unbestimmt ¦ træbast
fibre | nettle | nettle ¦ Brennnessel ¦ ortie ¦ ortica ¦ ortiga ¦ nælde ¦ Urtica dioica L.
fibre | silk | silk ¦ Seide ¦ soie grège ¦ seta ¦ seda ¦ silke ¦ Bombyx mori silk
fibre | plantFibre | vegetable fibre ¦ Pflanzenfaser ¦ fibre végétale ¦ fibra vegetale ¦ fibra vegetal ¦ plantefiber ¦ plant fibre, indet.
fibre | animalFibre | animal fibre ¦ Tierfaser ¦ fibre animale ¦ fibra animale ¦ fibra animal
fibre | flax? | probably flax ¦ wohl Flachs ¦ sans doute du lin ¦ lino? ¦ probabile lino ¦ cf. Linum ¦ hør?
fibre | hemp?? | possibly hemp ¦ evtl. Hanf ¦ peut-être chanvre ¦ forse canapa ¦ posiblemente cáñamo ¦ muligvis hamp
fibre | not-observed | fibre not identified ¦ Faser nicht bestimmt ¦ fibre non identifiée ¦ fibra non identificata ¦ fibra no identificada ¦ fiber ikke bestemt ¦ not analysed ¦ nicht untersucht ¦ unidentifiable
fibre | ask | flax or hemp or grass? leather ¦ vegetal, not flax ¦ textile ¦ material 2 ¦ asbestos ¦ same as 12 ¦ thread
fibreMethod | sem | SEM ¦ REM ¦ MEB ¦ scanning electron microscopy ¦ Rasterelektronenmikroskop ¦ microscopie électronique à balayage
fibreMethod | byEye | by eye ¦ visual ¦ mit bloßem Auge ¦ à l'œil nu ¦ a occhio nudo ¦ a simple vista ¦ med det blotte øje
fibreMethod | transmittedLight | TLM ¦ transmitted light microscopy ¦ Durchlichtmikroskop ¦ microscopie en lumière transmise ¦ luce trasmessa
fibreMethod | dna+microscope | microscopy, DNA
fibreMethod | ask | lab ¦ literature ¦ HPLC
processing | retted | retted ¦ geröstet (Flachs) ¦ roui ¦ macerato ¦ enriado
processing | splitStrip | split strips ¦ gespaltene Streifen ¦ lanières fendues
processing | spliced | spliced ¦ gespleißt ¦ épissé ¦ yarn is spliced
splicing | not-observed | splicing not visible ¦ Spleißung nicht erkennbar ¦ épissure non visible ¦ not looked for
dye | present | dyed blue ¦ blau gefärbt ¦ teint en bleu ¦ tinto in blu ¦ teñido de azul ¦ farvet blå ¦ dyed (indigotin) ¦ gefärbt, Krapp ¦ garance ¦ woad, madder
dye | absent | undyed ¦ ungefärbt ¦ non teint ¦ non tinto ¦ sin teñir ¦ ufarvet ¦ no trace of dye ¦ keine Farbstoffe nachweisbar ¦ pas de colorant détecté ¦ dye analysis negative
dye | not-observed | not tested ¦ nicht analysiert ¦ non analysé ¦ non analizzato ¦ no analizado ¦ ikke undersøgt ¦ dye: no data
dye | present? | probably dyed ¦ wohl gefärbt ¦ probablement teint ¦ probabilmente tinto ¦ probablemente teñido ¦ sandsynligvis farvet
dye | ask | brown ¦ braun ¦ darkened ¦ dunkel verfärbt ¦ red stripe ¦ polychrome ¦ bunt
colour | brown | brown ¦ brown (now)
colour | dark brown | dark brown ¦ now dark brown
preservation | charred | charred ¦ carbonised ¦ verkohlt ¦ carbonisé ¦ carbonizzato ¦ carbonizado ¦ forkullet ¦ carbonised (house fire) ¦ verkohlt, brüchig ¦ burnt, charred ¦ completely charred
preservation | waterlogged | waterlogged ¦ Feuchtbodenerhaltung ¦ gorgé d'eau ¦ impregnato d'acqua ¦ vandmættet ¦ waterlogged, soft
preservation | mineralised | mineralised ¦ mineralisiert ¦ minéralisé ¦ mineralizzato ¦ mineralizado ¦ mineraliseret ¦ pseudomorph ¦ partly mineralised
preservation | mineralisedIron | mineralised on iron ¦ an Eisen mineralisiert ¦ minéralisé sur fer ¦ mineralizzato su ferro ¦ mineralizado sobre hierro ¦ in iron corrosion ¦ Eisenkorrosion ¦ iron oxide replaced
preservation | mineralisedCopper | mineralised (copper alloy) ¦ an Bronze mineralisiert ¦ sur bronze, minéralisé ¦ mineralizzato su bronzo ¦ preserved by copper salts ¦ Kupfersalze
preservation | desiccated | desiccated ¦ dry ¦ trocken erhalten ¦ desséché ¦ essiccato ¦ desecado ¦ udtørret
preservation | impression | impression ¦ impression in clay ¦ Abdruck in Ton ¦ empreinte sur argile ¦ impronta su argilla ¦ impronta en arcilla ¦ aftryk i ler
preservation | charredWaterlogged | charred and waterlogged ¦ verkohlt, feucht gelagert ¦ carbonisé et gorgé d'eau ¦ charred / waterlogged
preservation | charred? | probably charred ¦ wohl verkohlt ¦ charred? ¦ carbonisé ? ¦ carbonizado (?)
preservation | ask | good ¦ schlecht erhalten ¦ bon état ¦ not preserved by metal ¦ organic ¦ treated ¦ heavily degraded
observedOn | impression | imprint ¦ Abdruck ¦ negative impression ¦ empreinte ¦ aftryk
observedOn | cast | silicone cast ¦ Silikonabguss ¦ moulage ¦ calco in silicone ¦ molde de silicona
observedOn | object | the object itself ¦ Original ¦ objet ¦ originale
selvedge | plainEdge | simple selvedge ¦ einfache Webkante ¦ lisière simple ¦ cimosa semplice ¦ orillo simple ¦ enkel ægkant ¦ plain selvedge, one side
selvedge | tubularEdge | tubular selvedge ¦ Hohlkante ¦ schlauchförmige Webkante ¦ lisière tubulaire ¦ cimosa tubolare ¦ orillo tubular ¦ rørformet kant
selvedge | reinforcedEdge | reinforced selvedge ¦ verstärkte Webkante ¦ lisière renforcée ¦ cimosa rinforzata ¦ orillo reforzado ¦ forstærket kant
selvedge | hem | hem ¦ Saum ¦ ourlet ¦ orlo ¦ dobladillo ¦ søm (fold) ¦ rolled hem
selvedge | cutEdge | cut edge ¦ Schnittkante ¦ bord coupé ¦ bordo tagliato ¦ borde cortado ¦ klippet kant
selvedge | absent | no edges ¦ keine Kanten ¦ pas de lisières ¦ nessuna cimosa ¦ sin orillos ¦ ingen kanter ¦ all edges torn
selvedge | not-observed | edges not preserved ¦ Kanten nicht erhalten ¦ lisière non conservée ¦ cimosa non conservata ¦ orillo no conservado ¦ kanter ikke bevaret
startingEdge | startingBorder | starting border ¦ Anfangskante ¦ bordure de départ ¦ bordo di avvio ¦ borde inicial ¦ begyndelseskant ¦ starting border, woven
pile | present | with pile ¦ pile on one face ¦ mit Flor ¦ Flor vorhanden ¦ avec poils ¦ con vello ¦ con pelo ¦ med luv ¦ tufted ¦ loops on one side
pile | absent | without pile ¦ ohne Flor ¦ no tufts ¦ sans poil ¦ senza pelo ¦ sin mechones ¦ uden flos ¦ none seen
wear | present | worn ¦ stark abgenutzt ¦ usé par endroits ¦ usurato ¦ desgastado ¦ slidt ¦ heavily worn on one side ¦ Gebrauchsspuren ¦ wear holes
wear | absent | no wear ¦ unworn ¦ keine Abnutzung ¦ sans usure ¦ nessuna usura ¦ sin desgaste ¦ ingen slid
repair | present | darn ¦ patched ¦ geflickt ¦ Flickung ¦ reprise ¦ rammendo ¦ zurcido ¦ lappet ¦ repaired in antiquity ¦ two patches
repair | absent | no repair ¦ keine Reparatur ¦ pas de réparation ¦ nessun rammendo ¦ sin zurcidos ¦ ingen reparation
seam | present | seam ¦ Naht erhalten ¦ couture visible ¦ cucitura ¦ costura ¦ syning ¦ run-and-fell seam ¦ seam along one edge
seam | absent | no seam ¦ keine Naht ¦ aucune couture ¦ nessuna cucitura ¦ sin costura ¦ ingen syning
residue | present | residue inside ¦ Harzreste ¦ traces de résine ¦ tracce di pece ¦ restos de resina ¦ rester af beg ¦ soot
residue | absent | no residue ¦ keine Rückstände ¦ sans résidu ¦ nessun residuo ¦ sin residuos
conservationTreatment | untreated | untreated ¦ unbehandelt ¦ non traité ¦ non trattato ¦ sin tratar ¦ ubehandlet
conservationTreatment | freezeDried | freeze-dried ¦ gefriergetrocknet ¦ lyophilisé ¦ liofilizzato ¦ liofilizado ¦ frysetørret
repairTime | inUse | ancient ¦ antik ¦ ancienne ¦ antico ¦ antigua ¦ oldtidig ¦ contemporary with use
repairTime | inUse | alt
repairTime | ask | old ¦ recent or ancient ¦ unclear if modern
knotType | sheetBend | sheet bend ¦ Netzknoten ¦ Weberknoten ¦ nœud d'écoute ¦ nodo di scotta ¦ nudo de escota ¦ vævknude
knotType | reefKnot | reef knot ¦ square knot ¦ Kreuzknoten ¦ nœud plat ¦ nodo piano ¦ nudo llano ¦ råbåndsknob
knotType | overhandKnot | overhand knot ¦ einfacher Knoten ¦ nœud simple ¦ nodo semplice ¦ nudo simple
stitchType | splitStitch | split stitch ¦ Spaltstich ¦ point fendu ¦ punto spaccato
stitchType | interlockingStitch | interlocking stitches ¦ interlocking ¦ ineinandergreifende Stiche
foundation | rodFoundation | single rod ¦ one-rod foundation ¦ Rute
foundation | bundleFoundation | bundle foundation ¦ Faserbündel ¦ faisceau ¦ fascio ¦ haz ¦ grass bundle
workDirection | leftToRight | left to right ¦ links nach rechts ¦ de gauche à droite ¦ da sinistra a destra ¦ de izquierda a derecha ¦ fra venstre mod højre ¦ L-R
strandsPerRow | 2 | 2 strands ¦ two-strand ¦ zweisträngig ¦ deux brins ¦ due fili ¦ dos hebras ¦ to tråde
rowSlant | S | S-slant ¦ S-Richtung ¦ pente en S ¦ pendenza a S ¦ inclinación S ¦ rows lean S
rowSlant | ask | up to the right ¦ nach rechts ansteigend ¦ vers la gauche ¦ \\ ¦ leans right
date | -699--600 | 7th century BC ¦ 7. Jh. v. Chr. ¦ VIIe siècle av. J.-C. ¦ VII sec. a.C. ¦ s. VII a.C. ¦ 7. årh. f.Kr. ¦ C7 BC ¦ seventh century BC ¦ 700-601 BC ¦ VII a.C.
date | -2999--2500 | early 3rd millennium BC (first half) ¦ 1. Hälfte 3. Jt. v. Chr. ¦ 1re moitié du IIIe millénaire av. J.-C. ¦ prima metà III millennio a.C. ¦ first half of the 3rd millennium BC
date | -449--419 | 450–420 BC ¦ 450-420 v.Chr. ¦ 450 à 420 av. n. è. ¦ 450-420 a.C. ¦ 450-420 f.v.t. ¦ 450 - 420 BCE
date | 201-300 | 3rd century AD ¦ 3. Jh. n.Chr. ¦ IIIe siècle de notre ère ¦ III sec. d.C. ¦ siglo III d.C. ¦ 3. århundrede e.v.t. ¦ C3 AD ¦ 201-300 CE
date | not-observed | undated ¦ undatiert ¦ non daté ¦ non datato ¦ sin fecha ¦ udateret ¦ date unknown
date | ask | Iron Age ¦ Neolithikum ¦ âge du Fer ¦ età del Bronzo ¦ 2950 ± 35 BP ¦ Phase II ¦ late
site | Brackholm | Brackholm
site | not-observed | unknown site ¦ Fundort unbekannt ¦ provenance inconnue ¦ provenienza sconosciuta ¦ procedencia desconocida ¦ findested ukendt ¦ no provenance ¦ o.O.
phase | not-observed | unstratified ¦ Streufund ¦ hors stratigraphie ¦ fuori strato ¦ sin contexto ¦ løsfund
period | not-observed | period unknown ¦ Zeitstellung unbekannt ¦ période indéterminée ¦ epoca incerta
context | Grave 12 | Grave 12
context | Grube 3 | Grube 3
recordedUse | bag | bag ¦ bag.
recordedUse | bag? | bag? ¦ probably a bag ¦ bag (?) ¦ prob. bag
recordedUse | not-observed | unknown use ¦ Funktion unbekannt ¦ fonction indéterminée ¦ uso sconosciuto ¦ uso desconocido ¦ ukendt anvendelse ¦ unbestimmt
orientation | warpWeft | warp and weft known ¦ warp determined by selvedge ¦ Kette bestimmt
orientation | untold | not known ¦ unsicher welche Kette ¦ warp and weft not distinguishable ¦ Kette und Schuss nicht unterscheidbar ¦ chaîne et trame indistinctes ¦ ordito e trama non distinguibili
restriction | withheld | do not publish ¦ confidential ¦ gesperrt ¦ riservato ¦ confidentiel
restriction | open | open ¦ frei ¦ no restriction ¦ keine Einschränkung ¦ libre
spacingClass | open | open ¦ widely spaced ¦ offen ¦ espacé ¦ aperto ¦ abierto ¦ åben ¦ open (rows apart)
spacingClass | close | close ¦ dicht ¦ compact ¦ serré ¦ serrato ¦ cerrado ¦ tæt ¦ tightly packed
engagement | diagonal | diagonal ¦ versetzt ¦ alternate pairs ¦ en quinconce ¦ diagonale ¦ en diagonal
face | weftFaced | weft-faced ¦ schussbetont ¦ effet trame ¦ faccia trama ¦ cara de trama ¦ skudfladet
face | balanced | balanced ¦ ausgewogen ¦ équilibré ¦ bilanciato ¦ equilibrado ¦ afbalanceret
twillPattern | herringbone | herringbone ¦ Fischgrat ¦ spina di pesce ¦ fiskebein
twillPattern | lozenge | lozenge ¦ diamond ¦ Rauten ¦ losanges ¦ losanghe ¦ rombos ¦ ruder
elementGrouping | pairedBoth | paired in both ¦ in beiden Systemen paarig ¦ doubles dans les deux systèmes
`;
