/**
 * Headers of columns as tables in six languages write them, each with the attribute that a specialist would give it, or
 * "ask" where it may be several things; all decided before any was read by the code. One line a cell of the column and
 * its meaning: `meaning | structure | cell | header ¦ header ¦ …`. Common practice, no source.
 */
export const HEADERS_1 = `
density1 | tabby | 14 | Warp count/cm ¦ Kettfäden pro cm ¦ Fils de chaîne au cm ¦ Fili di ordito/cm ¦ Hilos de urdimbre por cm ¦ Trendtråde pr. cm ¦ Ends per cm
density2 | tabby | 12 | Weft count/cm ¦ Schussfäden je cm ¦ Nb de duites/cm ¦ Riduzione trama (fili/cm) ¦ Pasadas por cm ¦ Islættråde pr. cm ¦ Picks/cm
twist1 | tabby | S | Warp spin direction ¦ Drehrichtung Kette ¦ Sens de torsion chaîne ¦ Torsione ordito ¦ Torsión urdimbre ¦ Spinderetning trend
twist2 | tabby | Z | Weft twist ¦ Drehung Schuss ¦ Torsion trame ¦ Torsione della trama ¦ Torsión de la trama ¦ Spinding islæt
ask | tabby | 2 | Nb brins ¦ Nombre de brins ¦ No. of strands ¦ Number of strands ¦ Anzahl Stränge ¦ N. capi ¦ N.º de cabos ¦ Antal tråde
ask | tabby | S | Spin ¦ Twist ¦ Drehung ¦ Torsion ¦ Torsione ¦ Torsión ¦ Snoning
ask | tabby | 2/2 | Pattern ¦ Muster ¦ Motif ¦ Motivo ¦ Patrón ¦ Mønster
ask | tabby | 1 | Code ¦ Typ ¦ Class ¦ Group
ask | tabby | 12 | Abstand ¦ Ecart ¦ Distanza ¦ Distancia ¦ Afstand
ask | tabby | 12 | Count ¦ Dichte ¦ Compte ¦ Conteggio
diameter1 | tabby | 0.5 | Warp thread diameter (mm) ¦ Fadendurchmesser Kette (mm) ¦ Diamètre du fil de chaîne (mm) ¦ Diametro filo ordito (mm) ¦ Diámetro hilo urdimbre (mm) ¦ Tråddiameter trend (mm)
rowSpacing | twining | 12 | Spacing ¦ Row spacing, mm ¦ Reihenabstand (mm) ¦ Espacement des rangs (mm) ¦ Distance centre to centre of rows (mm)
rowGap | twining | 5 | Gap between rows, mm ¦ Lücke zwischen den Reihen (mm) ¦ Intervalle entre les rangs (mm)
preservation | tabby | charred | State of preservation ¦ Erhaltungsart ¦ Mode de conservation ¦ Conservazione ¦ Tipo de conservación ¦ Bevaringsform
fibre | tabby | wool | Raw material ¦ Faserart ¦ Matière première ¦ Materia prima ¦ Fibra ¦ Fibermateriale
site | tabby | Drommavel | Findspot ¦ Fundort ¦ Lieu de découverte ¦ Luogo di rinvenimento ¦ Yacimiento ¦ Findested
length | tabby | 12 | Length (cm) ¦ Länge (cm) ¦ Longueur (cm) ¦ Lunghezza (cm) ¦ Longitud (cm) ¦ Længde (cm) ¦ L. max. (cm)
ask | tabby | 12 | Size ¦ Maße ¦ Mesures ¦ Misura
selvedge | tabby | hem | Selvedge type ¦ Webkante ¦ Lisière ¦ Cimosa ¦ Orillo ¦ Ægkant
dye | tabby | yes | Dye present ¦ Färbung ¦ Colorant ¦ Tintura ¦ Tinte
strandsPerRow | twining | 2 | Strands per row ¦ Stränge pro Reihe
recordedUse | tabby | bag | Function ¦ Verwendung ¦ Fonction ¦ Funzione ¦ Función ¦ Anvendelse
`;
