/** A round of cells; how it is written stands in `round.ts`. Common practice, no source. */
export const ROUND_2 = `
twist1 | Z | tightly Z-twisted ¦ Z-gesponnen, mittelfest ¦ fil Z, torsion moyenne ¦ filato Z, torsione media ¦ hilado en Z, apretado ¦ stramt Z-spundet ¦ Z, 30°
twist1 | S | S (weakly) ¦ s-gesponnenes Garn ¦ filé en S ¦ filatura S ¦ hilatura S ¦ spundet i S ¦ S-Garn
twist1 | Z? | Z, doubtful ¦ Z (wohl) ¦ sans doute Z ¦ Z, da verificare ¦ Z (dudoso) ¦ vistnok Z
twist1 | none | unspun fibre strips ¦ nicht versponnen ¦ fibres non filées ¦ fibre non filate ¦ fibras sin hilar ¦ ikke spundet ¦ no appreciable twist
twist1 | not-observed | twist obscured by corrosion ¦ Drehung wegen Korrosion nicht bestimmbar ¦ torsion non observable ¦ torsione non rilevabile ¦ torsión ilegible ¦ spinderetning ubestemt
twist1 | both | S and Z in alternation ¦ S- und Z-Garne gemischt ¦ fils S et Z alternés
ply1 | S2z | S2z (2-ply) ¦ two z-spun singles, S-plied ¦ S-gezwirnt aus zwei z-gesponnenen Fäden ¦ retors S à deux bouts z ¦ S a due capi z ¦ S de dos cabos z ¦ S-tvundet af to z-spundne tråde
ply1 | Z3s | Z, 3 strands of s ¦ Z-ply of three s singles ¦ 3 s-Fäden, Z gezwirnt
ply1 | Z2 | Z-plied, 2-ply ¦ 2-ply, Z
ply1 | ask | SS ¦ plied Z or S
threads | 14 & 11 | 14 × 11 threads/cm ¦ Kette 14, Schuss 11 Fd/cm ¦ 14 fils/cm en chaîne, 11 en trame ¦ 14 fili/cm in ordito, 11 in trama ¦ 14 hilos de urdimbre, 11 de trama ¦ trend 14, islæt 11 ¦ 11 wefts, 14 warps ¦ wa 14 / we 11
threads | 14-16 & 11-12 | 14–16 × 11–12 ¦ Kette 14-16/cm, Schuß 11-12/cm ¦ ordito 14-16; trama 11-12 ¦ 14 à 16 / 11 à 12 par cm
threads | 14 & not-observed | 14 x ? ¦ warp 14, weft not countable ¦ Kette 14, Schuss n. b. ¦ chaîne 14, trame indét.
density1 | 14 | 14/cm (warp) ¦ 14 Kettfd./cm ¦ 14 c/cm ¦ fourteen per cm ¦ 14 per centimetre ¦ 14 pro Zentimeter ¦ 14 par centimètre ¦ 70 auf 5 cm
density1 | 14-16 | 14–16/cm ¦ von 14 bis 16 ¦ de 14 à 16 fils/cm ¦ da 14 a 16 fili/cm ¦ de 14 a 16 hilos/cm ¦ 14-16 tråde/cm
density1 | ~14 | around 14 ¦ um 14 ¦ autour de 14 ¦ intorno a 14 ¦ alrededor de 14 ¦ omkring 14 ¦ 14 approx.
density1 | 0-14 | max. 14/cm ¦ höchstens 14 ¦ au plus 14 ¦ al massimo 14 ¦ como máximo 14 ¦ højst 14
length | 90 | 9 cm long ¦ 9 cm lang ¦ longueur 9 cm ¦ lunghezza: 9 cm ¦ largo: 9 cm ¦ længde 9 cm ¦ gr. L. 9 cm
length | 90- | preserved length 9 cm ¦ erhaltene Länge 9 cm ¦ longueur conservée 9 cm ¦ lunghezza conservata 9 cm ¦ longitud conservada: 9 cm ¦ bevaret længde 9 cm
sizes | 9 & 6 | 9 cm (L) x 6 cm (W) ¦ 9 × 6 cm ¦ L: 9; B: 6 ¦ long. 9, larg. 6 cm ¦ lungh. 9 x largh. 6 ¦ 9 cm de largo y 6 cm de ancho ¦ 9 cm lang und 6 cm breit ¦ l. 9, br. 6
rowSpacing | 6 | 6 mm between centres ¦ 6 mm from row to row ¦ Reihen im Abstand von 6 mm ¦ rangs distants de 6 mm ¦ afstand 6 mm
rowSpacing | ask | distanza tra le file 6 mm ¦ separación entre filas 6 mm ¦ 6 mm between rows
rowSpacing | 4-7 | rows at 4-7 mm ¦ Abstand 4–7 mm ¦ espacement de 4 à 7 mm ¦ distanza 4-7 mm ¦ a intervalos de 4 a 7 mm ¦ 0.4-0.7 cm
rowGap | 3 | gap 3 mm ¦ 3 mm gap ¦ Zwischenraum 3 mm ¦ intervalle 3 mm ¦ mellemrum 3 mm
diameter1 | 0.6 | thread thickness 0.6 mm ¦ Fadenstärke 0,6 mm ¦ diamètre du fil 0,6 mm ¦ spessore filo 0,6 mm ¦ grosor 0,6 mm ¦ trådtykkelse 0,6 mm ¦ d = 0.6 mm
diameter1 | 0.4-0.6 | 0.4–0.6 mm thick ¦ Ø 0,4 bis 0,6 mm ¦ entre 0,4 et 0,6 mm ¦ 400-600 µm
pileLength | 30 | pile 30 mm long ¦ Florlänge 30 mm ¦ poils de 3 cm ¦ vello lungo 3 cm ¦ pelo de 3 cm
pile | present | pile, 30 mm ¦ dense pile ¦ tufts inserted ¦ Florbüschel ¦ mèches visibles ¦ ciuffi radi ¦ mechones ¦ med flos
pile | absent | not piled ¦ without a pile ¦ glatt, ohne Flor ¦ sans mèches ¦ nessun vello ¦ sin mechones ¦ uden flos
dye | present | dyed blue ¦ blau gefärbt ¦ teint en bleu ¦ tinto di blu ¦ teñido de azul ¦ farvet blå ¦ indigotin identified ¦ Krapp nachgewiesen
dye | absent | undyed ¦ naturfarben, ungefärbt ¦ non teint ¦ non tinto ¦ sin teñir ¦ ufarvet ¦ tested, negative
dye | present? | dyed, likely ¦ vermutlich gefärbt ¦ probablement teint ¦ probabilmente tinto
dye | not-observed | not analysed for dye ¦ Farbstoffanalyse ausstehend ¦ analyse en cours ¦ analisi non effettuata ¦ sin análisis de tintes
wear | present | heavily worn ¦ stark abgenutzt ¦ très usé ¦ molto usurato ¦ muy desgastado ¦ meget slidt
seam | present | seam along one edge ¦ Naht an einer Kante ¦ couture sur un bord ¦ cucitura lungo un lato ¦ costura en el borde ¦ søm langs kanten
seam | absent | no sewing ¦ keine Nähte ¦ pas de couture ¦ nessuna cucitura ¦ sin costuras ¦ ingen syning
repair | present | patched ¦ gestopft (antik) ¦ réparé ¦ rattoppato ¦ remendado ¦ lappet
fibre | wool | wool, undyed ¦ Wolle (Schaf) ¦ laine (mouton) ¦ lana ovina ¦ lana (Ovis aries) ¦ uld (får)
fibre | flax? | flax (OM) ¦ Lein? ¦ lin? ¦ lino (?) ¦ wohl Leinen ¦ lin, à confirmer ¦ sandsynligvis hør
fibre | silk+wool | wool and silk ¦ Wolle/Seide gemischt ¦ laine et soie ¦ lana e seta ¦ lana y seda ¦ uld og silke
fibre | bastFibre | plant bast fibre ¦ unbestimmte Bastfaser ¦ fibre libérienne ¦ fibra liberiana ¦ bastfiber
fibre | plantFibre | vegetable fibre ¦ Pflanzenfaser, unbest. ¦ fibre végétale indét. ¦ fibra vegetale ¦ fibra vegetal ¦ plantefiber
fibre | not-observed | fibre not determined ¦ Material nicht bestimmt ¦ matière indéterminée ¦ fibra no identificada ¦ fiber ikke bestemt ¦ not sampled
fibre | ask | flax or hemp? no ¦ sin lana ¦ nicht Hanf ¦ chalvane
structure | tabby | tabby weave ¦ tafetán simple ¦ Tuchbindung ¦ armure toile ¦ toskaft ¦ plain-woven ¦ lærredsvævet
structure | tabby f=warp | warp-faced plain weave ¦ kettbetonte Leinwandbindung ¦ toile face chaîne ¦ tafetán de cara de urdimbre ¦ kædebetonet lærred
structure | tabby g=one | half-basket weave ¦ Halbpanama ¦ louisine ¦ mezzo panama ¦ medio panamá
structure | twill22 t=lozenge | 2/2 lozenge twill ¦ Rautenköper 2/2 ¦ sergé losangé 2/2 ¦ sarga romboidal 2/2 ¦ krystalkiper 2/2
structure | twill21 | three-end twill ¦ dreibindiger Köper ¦ sergé 2 lie 1 ¦ saia 2/1 ¦ sarga de 2/1 ¦ treskaft kiper
structure | twined o=open e=diagonal | open diagonal twining ¦ diagonal twining, spaced ¦ versetzte Zwirnbindung mit Abstand ¦ cordé espacé en quinconce ¦ cordado diagonal abierto ¦ åben diagonal tvinding
structure | twined a=weft p=yes | weft twining with pile ¦ Schusszwirnbindung mit Flor ¦ cordé de trame à poils ¦ cordado de trama con pelo
structure | twined p=yes | twined, tufted ¦ pile twining ¦ tufted twining ¦ Vliesgeflecht
structure | sprang | sprang (interlinked)? ¦ Sprangtechnik ¦ technique du sprang ¦ tecnica sprang ¦ sprangteknik
structure | simpleLooping | simple looping ¦ einfaches Verschlingen ¦ bouclé simple ¦ anillado simple ¦ simpel slyngning
structure | plaited | plaited ¦ Flechtwerk ¦ vannerie tressée ¦ trenzado ¦ flettet ¦ intrecciato
structure | ask | Gewebe (Zindel?) ¦ tessuto velato ¦ tissu crêpelé ¦ twined?? or coiled?
selvedge | tubularEdge | tubular selvedge ¦ Schlauchkante ¦ lisière tubulaire ¦ cimosa tubolare ¦ orillo tubular ¦ rundvævet kant
selvedge | hem | hemmed edge ¦ gesäumt ¦ ourlé ¦ bord ourlé ¦ dobladillo ¦ sømmet kant
selvedge | ask | orlo
selvedge | absent | selvedges lacking ¦ ohne Webkanten ¦ aucune lisière ¦ nessuna cimosa ¦ sin orillos ¦ ingen ægkanter
selvedge | not-observed | edges lost ¦ Webkante unbekannt ¦ bords perdus ¦ bordi non conservati ¦ bordes no conservados ¦ kanter ikke bevaret
preservation | mineralisedIron | replaced by iron corrosion ¦ Eisenkorrosion ¦ minéralisé par le fer ¦ mineralizzato (ferro) ¦ mineralizado por hierro ¦ jernkorrosion ¦ rust-mineralised
preservation | desiccated | dried out ¦ ausgetrocknet ¦ desséché ¦ essiccato ¦ desecado ¦ udtørret
preservation | bog | bog find ¦ Moorfund ¦ trouvé en tourbière ¦ mosefund ¦ from peat
preservation | impression | impression in clay ¦ Abdruck auf Keramik ¦ empreinte sur céramique ¦ impronta su ceramica ¦ impronta en barro ¦ aftryk i ler
phase | not-observed | no phase ¦ ohne Phase ¦ phase non attribuée ¦ fase non determinata ¦ fase sin determinar ¦ fase ubestemt ¦ not phased
site | not-observed | site unknown ¦ Herkunft unbekannt ¦ lieu de découverte inconnu ¦ luogo di rinvenimento ignoto ¦ lugar de hallazgo desconocido ¦ fundsted ikke oplyst ¦ provenance not recorded
date | not-observed | date unknown ¦ Datierung unsicher, keine ¦ datation inconnue ¦ datazione ignota ¦ fecha desconocida ¦ datering ukendt ¦ not datable
date | -299--200 | 3rd century BC ¦ 3. Jahrhundert v. Chr. ¦ IIIe siècle av. J.-C. ¦ III secolo a.C. ¦ siglo III a. C. ¦ 3. århundrede f.Kr.
date | 101-200 | 2nd c. CE ¦ 2. Jh. n. Chr. ¦ IIe s. ap. J.-C. ¦ II sec. d.C. ¦ s. II d.C.
rowSlant | Z | Z slant ¦ leaning Z ¦ Reihen Z-geneigt ¦ rangs inclinés en Z ¦ file inclinate a Z ¦ filas inclinadas en Z ¦ Z-hældning
rowSlant | not-observed | slant not recorded ¦ Neigung unbestimmt ¦ inclinaison non relevée ¦ inclinación no registrada
tightness1 | tight | tightly spun ¦ fest gedreht ¦ torsion serrée ¦ torsione stretta ¦ hårdt snoet
tightness1 | medium | moderately twisted ¦ mittlere Drehung ¦ torsion moyenne ¦ torsione media ¦ torsión media ¦ middel snoning
spacingClass | open | rows widely spaced ¦ weit auseinander stehende Reihen ¦ rangs espacés ¦ file distanziate ¦ filas separadas ¦ åben
spacingClass | close | compact rows ¦ eng ¦ rangs serrés ¦ file serrate ¦ filas apretadas ¦ tætte rækker
processing | spliced | spliced ¦ gespleißt ¦ épissé ¦ empalmado
fibreMethod | sem | SEM ¦ scanning electron microscopy ¦ REM ¦ MEB ¦ SEM-Analyse ¦ microscopia elettronica a scansione ¦ microscopía electrónica de barrido
fibreMethod | byEye | by eye ¦ makroskopisch ¦ à l'œil nu ¦ a occhio nudo ¦ a simple vista ¦ med det blotte øje
`;
