/** A round of cells; how it is written stands in `round.ts`. Common practice, no source. */
export const ROUND_6 = `
twist1 | S | S-twist, single yarn ¦ Garn S, locker ¦ fils S, peu tordus ¦ filo S, poco torto ¦ hilo S, poco torcido ¦ tråden er S-spundet ¦ S (crepe) ¦ consistently S
twist1 | Z | Z only ¦ nur Z ¦ uniquement Z ¦ solo Z ¦ sólo Z ¦ kun Z ¦ Z-spun, fine ¦ very fine Z yarn
twist1 | Z? | looks Z ¦ Z wahrscheinl. ¦ Z ? (abîmé) ¦ Z, pare ¦ creo que Z ¦ vist Z ¦ Z, I think
twist1 | not-observed | obscured by consolidant ¦ vom Festigungsmittel verdeckt ¦ masqué par la corrosion ¦ coperto da incrostazioni ¦ oculto por la corrosión ¦ skjult af korrosion
twist1 | ask | could be Z ¦ könnte Z sein ¦ pourrait être S ¦ potrebbe essere Z ¦ podría ser S ¦ kunne være Z ¦ not Z ¦ nicht S ¦ no Z
ply1 | S2z | 2-ply, z-spun, S-plied ¦ zwei z-Garne zu S verzwirnt ¦ deux fils z, retordus S ¦ due fili z ritorti in S ¦ dos hilos z torcidos en S ¦ to z-garner tvundet S ¦ S, 2-ply, z singles
ply1 | Z2s | Z, 2-ply, s singles ¦ zwei s-Garne zu Z verzwirnt ¦ deux brins s, retors Z ¦ dos cabos s, torsión Z
ply1 | 3-ply | three-ply ¦ dreifach gezwirnt ¦ 3 brins ¦ a tre capi ¦ de tres cabos
ply1 | ask | plied S or Z ¦ 3 brins en Z ¦ S and Z plies ¦ verschieden gezwirnt
threads | 24 & 16 | 24 warp ends and 16 weft picks per cm ¦ Kette 24, Schuss 16 (Fäden/cm) ¦ 24 (ch.) / 16 (tr.) ¦ chaîne 24 f/cm, trame 16 f/cm ¦ o. 24, t. 16 ¦ trama 16, ordito 24 ¦ urdimbre 24 h/cm; trama 16 h/cm ¦ 24 tråde i trend, 16 i islæt ¦ 24/cm × 16/cm ¦ 24x16 p. cm
threads | 24-26 & 16-18 | 24–26 x 16–18 ¦ ch. 24 à 26, tr. 16 à 18 ¦ zwischen 24-26 und 16-18 ¦ K: 24-26, S: 16-18
threads | not-observed & 16 | Kette nicht zählbar, Schuss 16 ¦ chaîne illisible, trame 16 ¦ warp lost, weft 16
density1 | 24 | 24 warp threads per cm ¦ Kette 24/cm ¦ 24 fils de chaîne/cm ¦ ordito 24/cm ¦ 24 hilos de urdimbre/cm ¦ trend 24/cm ¦ 48/2 cm ¦ 24 Kettfd. je cm ¦ 24 per 10 mm
density1 | 24-28 | 24-28 ends ¦ 24 bis 28 Kettfäden ¦ 24 à 28/cm ¦ 24-28 fili in ordito ¦ de 24 a 28/cm ¦ 24 til 28 pr. cm
density1 | 0-10 | under 10 ¦ unter 10 Fäden ¦ moins de 10 fils/cm ¦ meno di 10 ¦ menos de 10/cm ¦ færre end 10
density1 | ~12 | a dozen ¦ une douzaine ¦ una dozzina ¦ una docena ¦ 12 or thereabouts ¦ etwa ein Dutzend
density1 | ask | 12 pairs ¦ 12 Fadenpaare ¦ 12 fils jumelés ¦ 12 (6 in border) ¦ 12 warps? or wefts ¦ 12 S, 14 Z
rowSpacing | 9 | rows at 9 mm centres ¦ 9 mm Achsabstand ¦ entraxe 9 mm ¦ interasse di 9 mm ¦ 9 mm de eje a eje ¦ 9 mm c/c ¦ every 9 mm
rowSpacing | ask | gap of 9 mm ¦ 9 mm Lücke ¦ 9 mm d'intervalle libre ¦ spazio vuoto 9 mm ¦ 9 mm libres ¦ 9 mm fri
rowSpacing | 6-8 | 6 to 8 mm, mostly 7 ¦ 6–8 mm, meist 7 ¦ 6-8 mm (moy. 7) ¦ 6-8 mm, media 7
diameter1 | 0.6 | 0.6 mm thick yarn ¦ Garnstärke 0,6 mm ¦ fil de 0,6 mm ¦ filo di 0,6 mm ¦ hilo de 0,6 mm ¦ garn 0,6 mm
length | 150 | 15 cm max. length ¦ max. Länge 15 cm ¦ L. max. 15 cm ¦ lungh. max. 15 cm ¦ long. máx. 15 cm ¦ maks. længde 15 cm
length | 150- | at least 15 cm ¦ 15 cm, fragmentary ¦ 15 cm, unvollständig ¦ 15 cm, incomplet ¦ 15 cm, frammentario ¦ 15 cm, fragmentado
length | 0-150 | max. 15 cm ¦ höchstens 15 cm ¦ jusqu'à 15 cm ¦ fino a 15 cm ¦ hasta 15 cm ¦ op til 15 cm
sizes | 15 & 9 | 15 cm long, 9 cm wide ¦ L 15, l 9 cm ¦ Größe 15 x 9 cm ¦ dimensions : 15 × 9 cm ¦ misure: 15 x 9 cm ¦ medidas: 15 x 9 cm ¦ mål: 15 x 9 cm ¦ largo 15 cm, alto 9 cm ¦ H 15 x W 9 ¦ 15 x 9cm
sizes | 15.5 & 9 | 15,5 × 9 cm ¦ 15,5 cm x 9,0 cm ¦ L. 15,5 cm, B. 9 cm
pile | present | pile loops ¦ Flor in Schlingen ¦ poils courts ¦ pelo corto ¦ vello corto ¦ kort luv ¦ shaggy on one side
pile | absent | no pile on either face ¦ beidseitig ohne Flor ¦ senza vello ¦ sin vello ¦ luv findes ikke
pile | not-observed | pile: unknown ¦ Flor: n. b. ¦ face non observable ¦ vello non visibile ¦ no se aprecia si tiene pelo ¦ luv kan ikke ses
pile | ask | fringe ¦ Fransen ¦ franges ¦ frange ¦ flecos ¦ could have had pile
dye | present | indigo-dyed ¦ krappgefärbt ¦ teint à l'indigo ¦ tinto con guado ¦ teñido con índigo ¦ farvet med vajd ¦ weld ¦ dyestuff present
dye | absent | no dye (HPLC) ¦ HPLC negativ ¦ aucun colorant (HPLC) ¦ nessun colorante (HPLC) ¦ ningún colorante ¦ intet farvestof (HPLC)
dye | ask | could be dyed ¦ könnte gefärbt sein ¦ pourrait être teint ¦ potrebbe essere tinto ¦ podría estar teñido ¦ dark brown ¦ dunkelbraun ¦ teinte sombre ¦ farbig ¦ blue-green corrosion
wear | present | worn at the fold ¦ am Falz abgenutzt ¦ usé au pli ¦ consumato ¦ gastado en el doblez ¦ slidt i folden ¦ holes from wear
wear | ask | holes ¦ Löcher ¦ trous ¦ fori ¦ agujeros ¦ huller
seam | present | two pieces sewn together ¦ zwei Stücke zusammengenäht ¦ deux pièces cousues ¦ due pezzi cuciti ¦ dos piezas cosidas ¦ to stykker syet sammen
repair | present | hole mended with wool ¦ mit Wolle gestopft ¦ trou reprisé ¦ buco rammendato ¦ agujero zurcido ¦ stoppet hul
repair | ask | sewn edge ¦ genähte Kante ¦ couture ¦ knot ¦ hole
fibre | flax | linen thread ¦ Leinengarn ¦ fil de lin blanchi ¦ filo di lino ¦ hilo de lino ¦ hørtråd ¦ Linum usitat.
fibre | wool | wool yarn ¦ Wollfaden ¦ fil de laine ¦ filo di lana ¦ hilo de lana ¦ uldgarn ¦ white wool ¦ wool, naturally brown
fibre | flax? | flax? (not analysed) ¦ Flachs, nicht analysiert ¦ lin, non analysé ¦ lino, sin analizar
fibre | cotton | cotton ¦ Baumwolle ¦ coton ¦ cotone ¦ algodón ¦ bomuld ¦ Gossypium sp.
fibre | goatHair+wool | wool and goat hair ¦ Wolle und Ziegenhaar ¦ laine et poil de chèvre ¦ lana e pelo di capra ¦ lana y pelo de cabra ¦ uld og gedehår
fibre | ask | no wool ¦ ohne Wolle ¦ sans lin ¦ senza lana ¦ nunca lana ¦ not animal ¦ no animal fibre ¦ could be flax ¦ könnte Hanf sein ¦ modern plastic
fibre | not-observed | too mineralised to identify ¦ zu stark mineralisiert ¦ trop carbonisé ¦ troppo carbonizzato ¦ demasiado carbonizado ¦ for forkullet ¦ sample lost
structure | tabby | linen weave ¦ Leinenbindung ¦ tissu en toile ¦ tessuto ad armatura tela ¦ tejido de tafetán ¦ lærredsvævning ¦ plain 1/1 weave ¦ fine even tabby
structure | tabby f=warp | warp-faced tabby, fine ¦ Leinwandbindung, kettsichtig ¦ toile à dominante chaîne ¦ armatura tela, faccia ordito ¦ tafetán, cara de urdimbre
structure | twill21 | twill 2/1 (three-shed) ¦ Dreibindiger Köper 2/1 ¦ saia da 3 (2/1) ¦ sarga 2x1 ¦ kiper 2/1
structure | twill22 t=lozenge | lozenge twill 2/2 ¦ 2/2 Köper mit Rauten ¦ sergé 2/2 losangé ¦ saia 2/2 romboidale ¦ sarga 2/2 en rombos ¦ ruderkiper 2/2
structure | twined o=open p=no | open twining, no pile ¦ Zwirnbindung, offen, ohne Flor ¦ cordé espacé, pas de poil ¦ cordado abierto, sin pelo
structure | twined e=diagonal p=yes | diagonal twining, tufted ¦ versetzte Zwirnbindung, mit Flor ¦ cordado diagonal con pelo
structure | knotlessNetting | filet sans noeuds
structure | sprang | sprang fabric ¦ in Sprangtechnik ¦ tissu sprang ¦ lavoro in sprang ¦ trabajo de sprang
structure | ask | not woven ¦ nicht gewebt ¦ non tissé ¦ non tessuto ¦ no tejido ¦ ikke vævet ¦ could be twined ¦ könnte Köper sein ¦ twined or plaited
structure | ask | fake sprang ¦ falscher Köper ¦ imitation tapestry ¦ knit-like
structure | ask | sprang, linking?
structure | looped? | looping (cross-knit?) or knitting
selvedge | hem | narrow hem ¦ schmaler Saum ¦ ourlet étroit ¦ dobladillo estrecho ¦ hem (rolled)
selvedge | absent | no selvedge on either side ¦ keine Webekante ¦ pas de lisière ¦ cimosa assente ¦ sin orillo ¦ ingen ægkant
selvedge | not-observed | selvedge n.d. ¦ Webkante: unbekannt ¦ lisière : indéterminée ¦ cimosa n.d. ¦ orillo: desconocido
preservation | charred | slightly charred ¦ leicht angekohlt ¦ légèrement carbonisé ¦ leggermente carbonizzato ¦ ligeramente carbonizado ¦ let forkullet
preservation | mineralisedIron | rusted onto blade ¦ in Eisenrost ¦ dans la rouille ¦ nella ruggine ¦ mineralizado en óxido de hierro ¦ i jernrust ¦ iron-mineralised
preservation | ask | uncharred ¦ nicht verkohlt ¦ pas carbonisé ¦ never waterlogged ¦ could be charred ¦ fragile ¦ stabil ¦ good condition ¦ buono stato ¦ buen estado
preservation | not-observed | preservation unknown ¦ Erhaltung unbekannt ¦ conservation inconnue ¦ conservazione ignota ¦ conservación desconocida
recordedUse | not-observed | use unclear ¦ Verwendungszweck unbekannt ¦ usage inconnu ¦ funzione ignota ¦ función desconocida ¦ funktion ukendt
recordedUse | sack? | sack? ¦ likely sack
recordedUse | ask | not a garment ¦ keine Kleidung ¦ pas un vêtement ¦ non è una borsa ¦ no es un saco
site | not-observed | no findspot ¦ ohne Fundstelle ¦ località ignota ¦ localidad desconocida
site | Kelm Bay? | Kelm Bay, presumably ¦ wahrscheinlich Kelm Bay ¦ Kelm Bay (?) ¦ vraisemblablement Kelm Bay
colour | not-observed | colour lost ¦ Farbe unbekannt ¦ couleur non conservée ¦ colore ignoto ¦ color desconocido
colour | red? | red? ¦ likely red ¦ red, probably
date | -399--300 | 4th century BCE ¦ 4. Jhd. v. Chr. ¦ 4e siècle av. J.-C. ¦ IV secolo a.C. ¦ siglo IV a. de C. ¦ 4. årh. f.v.t.
date | -199--150 | 1st half of 2nd c. BC ¦ 1. Hälfte 2. Jh. v. Chr. ¦ première moitié du IIe s. av. J.-C. ¦ prima metà del II sec. a.C. ¦ 1. halvdel af 2. årh. f.Kr.
date | 301-400 | 4th c. AD ¦ 4. Jh. n. Chr. ¦ IVe s. apr. J.-C. ¦ IV sec. d.C. ¦ s. IV d.C. ¦ 4. årh. e.Kr.
date | ask | Bronze Age ¦ jüngere Bronzezeit ¦ 3200 BP ¦ prehistoric ¦ préhistorique
layers | 3 | three layers ¦ dreilagig ¦ 3 couches ¦ tre strati ¦ tres capas ¦ 3 lag
strandsPerRow | 3 | three-strand ¦ dreisträngig ¦ à trois brins ¦ a tre capi
quantity | 4 | 4 pieces ¦ 4 Stück ¦ 4 pezzi ¦ 4 piezas ¦ 4 stk
quantity | ask | 4 fragments of 1 item ¦ some ¦ einige ¦ quelques-uns ¦ alcuni
weight | 3.1 | 3,1 g ¦ weight: 3.1 g ¦ Gew. 3,1 g ¦ poids : 3,1 g ¦ peso 3,1 g
thickness | 2 | thickness 2 mm ¦ 2 mm dick ¦ épaisseur 2 mm ¦ spessore: 2 mm ¦ espesor: 2 mm ¦ 2 mm tyk
processing | spliced | spliced threads ¦ gespleißte Fäden ¦ filés épissés ¦ end-to-end spliced
processing | ask | spun, not spliced ¦ gesponnen oder gespleißt ¦ possibly draft-spun or spliced
splicing | present | splices seen ¦ Spleiße erkennbar
splicing | absent | unspliced ¦ nicht gespleißt ¦ pas d'épissure
observedOn | impression | impression in pottery ¦ Tonabdruck ¦ empreinte sur tesson ¦ impronta su coccio
repairTime | inUse | prehistoric repair ¦ antike Flickstelle ¦ réparation ancienne ¦ rammendo antico
repairTime | afterFinding | museum repair ¦ moderne Ausbesserung ¦ restauration récente ¦ restauro recente
rowSlant | Z | rows slant Z ¦ Reihen in Z ¦ rangs à pente Z ¦ file a pendenza Z ¦ filas con pendiente Z
tightness1 | loose | not tight, loose ¦ eher locker ¦ assez lâche ¦ piuttosto lenta
tightness1 | ask | not tight ¦ nicht fest ¦ pas serré ¦ no apretado
knotType | sheetBend | weaver's knots ¦ Netzknoten ¦ nœuds d'écoute
`;
