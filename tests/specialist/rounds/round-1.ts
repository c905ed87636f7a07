/** A round of cells; how it is written stands in `round.ts`. Common practice, no source. */
export const ROUND_1 = `
twist1 | Z | overspun Z ¦ Z, hard spun ¦ Z-Drall, fest ¦ torsion Z serrée ¦ torsione Z, stretta ¦ torsión Z fuerte ¦ hårdt Z-spundet ¦ Z tw.
twist1 | S | S, medium ¦ slightly S-spun ¦ weak S twist ¦ S (20-25°) ¦ torsion S lâche ¦ schwach S gedreht ¦ S-tvundet, løst
twist1 | S? | S (uncertain) ¦ presumably S ¦ S, nicht sicher ¦ torsion S probable ¦ S, usikker
twist1 | S?? | forse... S?
twist1 | none | no spin visible, fibres parallel ¦ non filé, sans torsion ¦ ohne Spinndrehung ¦ non ritorto, senza torsione ¦ fibras sin torcer
twist1 | not-observed | twist not discernible ¦ Drehung nicht erkennbar ¦ torsion indéterminée ¦ torsione non leggibile ¦ torsión no observable ¦ drejning ikke synlig
twist1 | ask | S or Z ¦ S/Z?
ply1 | S2z | z-spun, 2-ply S ¦ 2-ply (z,S) ¦ S-Zwirn, 2fach, z ¦ 2 brins z retordus en S ¦ ritorto S a 2 capi z ¦ dos hebras z retorcidas en S ¦ totrådet S, z-spundet
ply1 | Z2s | two s singles plied Z ¦ 2 s-Garne Z-verzwirnt ¦ Z (2 × s) ¦ 2 hilos s, torcidos en Z
ply1 | S3z | three z-spun yarns plied S ¦ dreifach S-gezwirnt aus z
ply1 | S2 | 2-ply S ¦ S-plied, two strands ¦ zweifach S
threads | 12 & 10 | 12 warps and 10 wefts per cm ¦ 12 chaînes, 10 trames/cm ¦ 12 Kettfäden / 10 Schussfäden pro cm ¦ ordito 12, trama 10 ¦ urdimbre 12, trama 10 (por cm) ¦ 12 kædetråde, 10 skudtråde pr. cm ¦ K: 12; S: 10 ¦ 12 (w) x 10 (wf)
threads | 12-14 & 8-9 | 12-14 x 8-9/cm ¦ 12–14/8–9 F/cm ¦ chaîne 12 à 14, trame 8 à 9 ¦ 12 bis 14 zu 8 bis 9 ¦ warp 12-14; weft 8-9
threads | not-observed & 10 | ? x 10 ¦ –/10 ¦ n.b. x 10
threads | ~12 & ~10 | ca. 12 x 10 Fäden/cm ¦ env. 12 × 10 fils/cm
density1 | 12 | 12 threads per cm ¦ 12 F./cm ¦ 12 fils au cm ¦ 12 fili al cm ¦ 12 hilos/cm ¦ 12 tr./cm ¦ 120/10 cm ¦ 12 Kettfäden je cm
density1 | 12-14 | 12 to 14 ¦ zw. 12 u. 14 ¦ entre 12 et 14 ¦ tra 12 e 14 ¦ entre 12 y 14 ¦ mellem 12 og 14
density1 | 12- | at least 12 ¦ mind. 12 ¦ au moins 12 ¦ almeno 12 ¦ mindst 12 ¦ más de 12
density1 | not-observed | too degraded to count ¦ nicht mehr zählbar ¦ comptage impossible ¦ conteggio impossibile ¦ recuento imposible ¦ kan ikke tælles
length | 120 | 12,0 cm ¦ L. 12 cm ¦ Lg. 12 cm ¦ Länge: 12 cm ¦ long. 12 cm ¦ lungh. cm 12 ¦ 120 mm
length | 120- | 12 cm (broken) ¦ noch 12 cm ¦ L. cons. 12 cm ¦ 12+ cm
sizes | 12 & 8 | L 12, W 8 ¦ L. 12 cm; l. 8 cm ¦ 12 cm lang, 8 cm breit ¦ alt. 12 cm, largh. 8 cm ¦ largo 12; ancho 8 ¦ længde 12, bredde 8 ¦ B 8, L 12
rowSpacing | 5 | rows 5 mm apart ¦ Reihenabstand 5 mm ¦ rangs espacés de 5 mm ¦ file distanti 5 mm ¦ filas a 5 mm ¦ 5 mm c-c
rowSpacing | 5-8 | 5-8 mm apart ¦ rows spaced 5 to 8 mm ¦ alle 5-8 mm ¦ tous les 5 à 8 mm ¦ ogni 5-8 mm ¦ cada 5-8 mm ¦ hver 5-8 mm
diameter1 | 0.4 | Ø 0.4 mm ¦ 0,4 mm dick ¦ diam. 0,4 mm ¦ épais. 0,4 mm ¦ 400 µm
pile | present | pile on one face ¦ tufted on reverse ¦ with long pile ¦ Flor auf einer Seite ¦ poil long sur une face ¦ vello su un lato ¦ pelo en una cara ¦ luv på den ene side
pile | absent | pile lacking ¦ no tufts ¦ florlos ¦ sans trace de poil ¦ privo di vello ¦ no tiene pelo ¦ ingen luv
pile | not-observed | pile not determinable ¦ Flor nicht beurteilbar ¦ face cachée
dye | absent | no dye found ¦ kein Farbstoff nachgewiesen ¦ pas de colorant détecté ¦ ingen farve påvist ¦ nessun colorante individuato
dye | not-observed | dye analysis not carried out ¦ nicht auf Farbstoffe untersucht ¦ colorant non recherché ¦ sin analizar
repair | present | darned ¦ Flickstelle ¦ reprise ancienne ¦ rammendo ¦ zurcido en una esquina ¦ stopning
repair | absent | no repairs visible ¦ keine Reparatur ¦ aucune réparation visible ¦ senza rammendi
fibre | flax? | flax (SEM) ¦ lin (MEB) ¦ lino, SEM ¦ Flachs (REM) ¦ hør (SEM)
fibre | flax | Linum usitatissimum
fibre | flax?? | flax, by eye?
fibre | flax? | prob. Linum ¦ vermutl. Flachs ¦ lin probable ¦ probabile lino ¦ formentlig hør ¦ cf. Linum usitatissimum
fibre | wool | sheep's wool ¦ Schafwolle, fein ¦ laine de mouton ¦ lana di pecora ¦ lana de oveja ¦ fåreuld
fibre | limeBast | Tilia bast ¦ Lindenbast ¦ liber de tilleul ¦ líber de tilo ¦ libro di tiglio ¦ lindebast
fibre | treeBast | tree bast, sp. indet. ¦ Baumbast, n. best. ¦ liber d'arbre indét.
fibre | ask | bark? fibre ¦ not wool ¦ kein Flachs ¦ pas de laine ¦ lime/linen
structure | tabby f=balanced | balanced plain weave ¦ plain weave, balanced ¦ ausgeglichene Leinwandbindung ¦ toile équilibrée ¦ tela bilanciata ¦ tafetán equilibrado ¦ afbalanceret lærredsbinding
structure | tabby f=weft | tabby (weft-faced) ¦ schussbetonte Leinwandbdg. ¦ toile à effet de trame ¦ tafetán de cara de trama ¦ tela a faccia di trama
structure | twill22 t=herringbone | herringbone twill 2/2 ¦ Fischgratköper 2/2
structure | twined o=open p=no | open twining without pile ¦ offene Zwirnbindung, florlos ¦ cordé espacé sans poil ¦ cordado abierto sin pelo
structure | twined o=close s=Z | close Z-twining ¦ close-twined, Z-slant ¦ cordé serré en Z ¦ dichte Zwirnbindung, Z ¦ intreccio ritorto serrato, a Z
structure | knottedNetting | knotted net ¦ Netz, geknüpft ¦ filet noué ¦ rete annodata ¦ red anudada ¦ knyttet net
structure | needleBound | nålebinding ¦ Nadelbindung ¦ nalbinding (type indet.)
structure | ask | Gewebe, xylisch ¦ tejido raro brial ¦ tissage façon Mora
structure | coiled | coiled basketry ¦ Spiralwulstgeflecht ¦ vannerie spiralée ¦ cestería en espiral ¦ cesteria a spirale
selvedge | plainEdge | plain selvedge ¦ simple selvage, left ¦ einfache Webkante ¦ lisière simple ¦ cimosa semplice ¦ orillo simple ¦ enkel ægkant
selvedge | absent | no selvedge ¦ keine Webkante ¦ sans lisière
selvedge | not-observed | selvedge not preserved ¦ Kanten nicht erhalten ¦ lisières non conservées ¦ cimose non conservate
preservation | charred | carbonised ¦ verkohlt ¦ carbonisé ¦ carbonizzato ¦ carbonizado ¦ forkullet
preservation | waterlogged | wet-preserved ¦ Feuchtbodenerhaltung ¦ gorgé d'eau ¦ imbibito d'acqua ¦ vandmættet
preservation | charredWaterlogged | charred and waterlogged ¦ verkohlt, feucht erhalten ¦ carbonisé et gorgé d'eau
preservation | mineralisedCopper | mineralised by copper salts ¦ Kupferkorrosion ¦ minéralisé (cuivre) ¦ mineralizzato su bronzo
phase | not-observed | phase unknown ¦ Phase unbekannt ¦ phase indéterminée ¦ fase sconosciuta ¦ fase ukendt ¦ unphased
site | not-observed | findspot unknown ¦ Fundort unbekannt ¦ provenance inconnue ¦ provenienza ignota ¦ procedencia desconocida ¦ findested ukendt ¦ no provenance
date | not-observed | undated ¦ undatiert ¦ non daté ¦ senza data ¦ sin datación ¦ ikke dateret
date | -449--400 | second half of 5th c. BC ¦ 2. H. 5. Jh. v. Chr. ¦ 2e moitié du Ve s. av. J.-C. ¦ seconda metà V sec. a.C.
date | 1-100 | 1st c. AD ¦ 1. Jh. n. Chr. ¦ Ier s. apr. J.-C. ¦ I sec. d.C. ¦ siglo I d.C. ¦ 1. årh. e.Kr.
rowSlant | S | S-slant ¦ rows lean S ¦ S-Neigung ¦ inclinaison S ¦ inclinazione a S ¦ inclinación S
rowSlant | countered | alternate S and Z rows ¦ countered ¦ S und Z im Wechsel
rowSlant | not-observed | slant not visible ¦ Neigung nicht erkennbar ¦ inclinaison indét.
tightness1 | loose | loosely spun ¦ lose gedreht ¦ torsion lâche ¦ torsione lenta ¦ torsión floja ¦ løst spundet
spacingClass | close | rows touching ¦ dicht gesetzt ¦ rangs jointifs ¦ file accostate ¦ filas juntas
knotType | sheetBend | sheet bend ¦ weaver's knot ¦ Weberknoten ¦ nœud de tisserand ¦ nodo del tessitore ¦ nudo de tejedor ¦ væverknude
splicing | present | spliced yarn ¦ gespleißt ¦ fil épissé ¦ hilo empalmado
`;
