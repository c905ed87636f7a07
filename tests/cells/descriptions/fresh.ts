/**
 * Descriptions as recorders write them in a hurry: slips, abbreviations, brackets, other parts named beside the
 * ground. What they say was decided by hand before they were read by the code; common practice, no source. The form
 * of a line is that of the other tables here.
 */
export const FRESH_NORTH = `
twined, close-set rows | twined | o=close
tw., open, Z | twined | o=open s=Z
weft-twined, rows closely spaced | twined | a=weft o=close
twined (open, diag., S-slant) | twined | o=open e=diagonal s=S
Z-slant close diagonal weft-twining | twined | s=Z o=close e=diagonal a=weft
open simple twining w/ pile | twined | o=open e=simple p=yes
open twinning | - | o=open | ?
twining, close; pile: no | twined | o=close p=no
three strand twining, close, S | twined | n=3 o=close s=S
diagonal twining; rows not touching | twined | e=diagonal o=open
close twining, tufts present | twined | o=close p=yes
close twining, tufts not preserved | twined | o=close p=gap
twining, probably open | twined | o=open
open or close twining | twined | o=close-or-open
twining with looped pile | twined | p=yes x=loopedPile
twining; knotted fringe | twined | | ?
twining, red | twined | | ?
red twining with pile | twined | p=yes | ?
2/2 twill, warp faced | twill22 | f=warp
2/1 twill (weft-faced) | twill21 | f=weft
twill, 2/2, herringbone | twill22 | t=herringbone
2/2 broken twill | twill22 | t=broken
2/2 point twill | twill22 | t=pointed
broken diamond twill 2/1 | twill21 | t=brokenLozenge
2/2 diamond twill, tablet-woven border | twill22 | t=lozenge
tabby, warp-faced, paired wefts | tabby | f=warp g=one
tabby, balanced | tabby | f=balanced
balanced tabby with tablet woven selvedge | tabby | f=balanced | ?
half basket, balanced | tabby | g=one f=balanced
tabby; paired in both systems | tabby | g=both
open tabby | tabby | o=open
dense tabby | tabby | o=close
weft-faced tabby, no pile | tabby | f=weft p=no
tabby with supplementary weft | tabby | u=supplementaryWeftElement
tabby brocaded | tabby | u=brocadingWeft
tabby, metal thread | tabby | | ?
wool, metal thread | - | | ?
silver-gilt thread | - | | ?
yarn | yarn |
Lining: tabby; tapestry | tapestry | | ?
tapestry; backing: 2/2 twill, modern | tapestry | | ?
warp-faced compound tabby | compoundWeave | f=warp
weft-faced compound twill | samite |
tabby with knotted pile | tabby | p=yes x=knottedPile
sprang, interlinked | interlinkedSprang |
coiled basketry | coiled |
twill plaiting 2/2 | twillPlaiting22 |
checker plaiting, close | checkerPlaiting | o=close
knotless netting | knotlessNetting |
netting with knots | knottedNetting |
not twined | - | | ?
twined? | twined |
20-02 02-01-01 | twill22 |
10-01 01-01-00 weft-faced | tabby | f=weft g=single
Zwirnbindung, offen, m. Flor | twined | o=open p=yes
offene Zwirnbindg. | twined | o=open | ?
dichte diagonale Zwirnbindung | twined | o=close e=diagonal
Zwirnbindung (eng), Z-Grat | twined | o=close s=Z
Schusszwirnbindung, halboffen | twined | a=weft o=semi
Kettenzwirnbindung | twined | a=warp | ?
Zwirnbindung, nicht diagonal | twined | | ?
Zwirnbindung ohne Flor und ohne Fransen | twined | p=no | ?
zwirnbindig, offen | twined | o=open
weitständige Zwirnbindung | twined | o=open
gegenläufige Zwirnbindung | twined | s=both
Dreifache Zwirnbindung | twined | n=3 | ?
Köper 2/2 schussbetont | twill22 | f=weft
Köper 2/1, kettbetont | twill21 | f=warp
Gleichgratköper | twill22 |
Spitzköper 2/2 | twill22 | t=pointed
Fischgratköper 2/2 | twill22 | t=herringbone
Rautenköper 2/1 | twill21 | t=lozenge
Diamantkoeper | twill | t=lozenge
Leinwandbdg., ausgeglichen | tabby | f=balanced
Leinwandbindung, schusssichtig | tabby | f=weft
Tuchbindung | tabby |
Halbpanama, ausgeglichen | tabby | g=one f=balanced
Panamabindung | tabby | g=both
Leinenbindung mit Flor | tabby | p=yes
Brettchengewebe | tabletWoven |
Leinwandbindung, Brettchenkante | tabby | | ?
Wirkerei | tapestry |
Schlingentechnik | looped | | ?
Nadelbindung | needleBound |
Netz, geknotet | knottedNetting |
Wulsttechnik | coiled |
Sprang | sprang |
Zwirngeflecht, dicht, Florbüschel | twined | o=close p=yes
Garn, Z | yarn | | ?
snoet binding | - | | ?
åben tvinding | twined | o=open | ?
toskaft, trenddominans | tabby | f=warp
2/2 kiper, spidskiper | twill22 | t=pointed
kiper 2/1 | twill21 |
lærred | tabby |
panamabinding | tabby | g=both
lærredsbinding med luv | tabby | p=yes
lærredsbinding uden luv | tabby | p=no
diamantkiper 2/1 | twill21 | t=lozenge
brikvævet bånd | tabletWoven |
gobelin | tapestry |
nålebinding | needleBound |
`;

/** The same in French, Italian and Spanish. */
export const FRESH_SOUTH = `
cordé espacé | twined | o=open
cordé serré, torsion Z | twined | o=close s=Z
cordé à deux brins, serré | twined | n=2 o=close
cordé croisé | twined | e=diagonal
cordé simple, espacé, sans poils | twined | o=open e=simple p=no
cordé avec poils | twined | p=yes
cordé de trame | twined | a=weft
toile | tabby |
toile équilibrée | tabby | f=balanced
toile à effet de trame | tabby | f=weft
toile, effet chaîne | tabby | f=warp
taffetas | tabby |
sergé 2/2 | twill22 |
sergé de 2 lie 2 | twill22 |
sergé 2/1 effet trame | twill21 | f=weft
sergé 2/2 à chevrons | twill22 | t=reversed
sergé losangé | twill | t=lozenge
sergé 3/1 brisé | twill31 | t=broken
satin de 5 | satin5 |
natté | tabby | g=both
toile louisine | tabby | g=one
toile avec trame supplémentaire | tabby | u=supplementaryWeftElement
tapisserie | tapestry |
tissage aux plaquettes | tabletWoven |
filet noué | knottedNetting |
filet sans nœuds | knotlessNetting |
vannerie spiralée | coiled |
toile, lisière aux plaquettes | tabby | | ?
cordé?, espacé | twined | o=open
toile (?) | tabby |
intreccio ritorto aperto | twined | o=open | ?
tela, faccia di trama | woven | f=weft | ?
saia 2/2 | twill22 |
saia 2/1, effetto ordito | twill21 | f=warp
saia 2/2 a spina di pesce | twill22 | t=herringbone
saia a losanga 2/2 | twill22 | t=lozenge
armatura a tela bilanciata | tabby | f=balanced
panama | tabby | g=both
raso da 5 | satin5 |
arazzo | tapestry |
rete annodata | knottedNetting |
tessitura a tavolette | tabletWoven |
saia 3/1 spezzata | twill31 | t=broken
tela con pelo | woven | p=yes | ?
sarga 2/2 | twill22 |
sarga 2/1, efecto trama | twill21 | f=weft
sarga en espiga 2/2 | twill22 | t=herringbone
tafetán equilibrado | tabby | f=balanced
tafetán, cara de urdimbre | tabby | f=warp
tafetán con trama suplementaria | tabby | u=supplementaryWeftElement
tejido encordado abierto | twined | o=open | ?
red | - | | ?
red anudada | knottedNetting |
tapiz | tapestry |
cestería en espiral | coiled |
ligamento tafetán, sin pelo | tabby | p=no
raso de 5 | satin5 |
`;
