/** As english.ts, of French, Italian and Spanish catalogues. */
export const FRENCH = `
étoffe cordée | twined |
cordé | twined |
CORDÉ SERRÉ | twined | o=close
cordé espacé | twined | o=open
cordé ouvert en quinconce, sans poils | twined | o=open e=diagonal p=no
cordé espacé à poils | twined | o=open p=yes
cordé de trame serré | twined | a=weft o=close
cordé de chaîne | twined | a=warp
cordé semi-ouvert | twined | o=semi
cordé simple, ajouré | twined | e=simple o=open
vannerie cordée, serrée | twined | o=close
vannerie cordée ajourée | twined | o=open
étoffe cordée à mèches | twined | p=yes
cordé en S | twined | s=S
cordé serré en Z | twined | o=close s=Z
cordé à trois brins | twined | n=3
cordé à montants alternés | twined | e=diagonal
étoffe cordée, poils non visibles | twined | p=gap
étoffe cordée, poils absents | twined | p=no
toile | tabby |
armure toile | tabby |
taffetas | tabby |
toile équilibrée | tabby | f=balanced
toile, effet trame | tabby | f=weft
toile à effet de chaîne | tabby | f=warp
reps | tabby | f=faced
reps de trame | tabby | f=weft
toile demi-nattée | tabby | g=one
louisine | tabby | g=one
natté | tabby | g=both
toile nattée | tabby | g=both
sergé | twill |
sergé 2 lie 2 | twill22 |
sergé de 2 lie 1 | twill21 |
sergé 2/2 à losanges | twill22 | t=lozenge
sergé losangé | twill | t=lozenge
sergé à chevrons | twill | t=reversed
sergé brisé | twill | t=broken
sergé 2/2, effet trame | twill22 | f=weft
satin de 5 | satin5 |
damas | damask |
samit | samite |
gaze | gauze |
velours | woven | p=yes x=warpPile
tapisserie | tapestry |
toile brochée | tabby | u=brocadingWeft
toile avec trame supplémentaire | tabby | u=supplementaryWeftElement
tissage aux tablettes | tabletWoven |
filet à nœuds | knottedNetting |
filet noué | knottedNetting |
filet sans nœuds | knotlessNetting |
vannerie spiralée | coiled |
tressé | plaited |
vannerie tressée | plaited |
bouclé simple | simpleLooping |
tricot | knitted |
toile ou sergé | woven |
sergé probable | twill |
corde | - | | ?
tresse | - | | ?
natte | - | | ?
clayonnage | - | | ?
toile avec lisière cordée | tabby | | ?
faux sergé | - | | ?
`;
export const ITALIAN = `
intreccio ritorto | twined |
intreccio ritorto aperto | twined | o=open
ritorto serrato | twined | o=close
intreccio ritorto aperto diagonale con ciuffi | twined | o=open e=diagonal p=yes
intreccio ritorto di trama, semiaperto | twined | a=weft o=semi
intreccio ritorto semplice | twined | e=simple
intreccio ritorto, senza pelo | twined | p=no
ritorto a Z | twined | s=Z
intreccio ritorto a S e Z alternate | twined | s=both
ritorto a tre capi | twined | n=3
armatura tela | tabby |
armatura a tela, effetto trama | tabby | f=weft
armatura tela equilibrata | tabby | f=balanced
reps di trama | tabby | f=weft
reps di ordito | tabby | f=warp
mezzo panama | tabby | g=one
armatura panama | tabby | g=both
saia | twill |
saia 2/1 | twill21 |
saia 2/2 a losanghe | twill22 | t=lozenge
saia 2/2, spina di pesce | twill22 | t=herringbone
saia a spina di pesce | twill | t=herringbone
saia da 4 | twill | | ?
raso da 5 | satin5 |
damasco | damask |
sciamito | samite |
velluto | woven | p=yes x=warpPile
armatura tela, broccata | tabby | u=brocadingWeft
tessitura a tavolette | tabletWoven |
rete annodata | knottedNetting |
rete senza nodi | knotlessNetting |
intreccio a spirale | coiled |
armatura tela o saia | woven |
forse saia 2/2 | twill22 |
tela | woven | | ?
avvolto | - | | ?
vimini | - | | ?
stuoia | - | | ?
`;
export const SPANISH = `
cordado | twined |
cordado abierto | twined | o=open
cordado cerrado | twined | o=close
cordado abierto diagonal con pelo | twined | o=open e=diagonal p=yes
cordado de trama, abierto | twined | a=weft o=open
cordado semiabierto | twined | o=semi
cordado simple, sin pelo | twined | e=simple p=no
cestería cordada abierta | twined | o=open
cordado en Z | twined | s=Z
cordado en S y Z | twined | s=both
cordado de tres cabos | twined | n=3
cordado con mechones | twined | p=yes
cordado, pelo no conservado | twined | p=gap
tafetán | tabby |
tafetán, cara de trama | tabby | f=weft
tafetán cara de urdimbre | tabby | f=warp
ligamento tafetán equilibrado | tabby | f=balanced
medio panamá | tabby | g=one
ligamento panamá | tabby | g=both
ligamento sarga 2/2 | twill22 |
sarga 2/1 | twill21 |
sarga 2/2 en espiga | twill22 | t=herringbone
sarga romboidal | twill | t=lozenge
sarga 2/2 de rombos | twill22 | t=lozenge
raso de 8 | satin8 |
damasco | damask |
terciopelo | woven | p=yes x=warpPile
tapiz | tapestry |
gasa | gauze |
tafetán con trama suplementaria | tabby | u=supplementaryWeftElement
red anudada | knottedNetting |
red sin nudos | knotlessNetting |
cestería en espiral | coiled |
anillado simple | simpleLooping |
tafetán o sarga | - | | ?
tafetán o ligamento sarga | woven |
posible tafetán | tabby |
sarga | - | | ?
tela | woven | | ?
enrollado | - | | ?
mimbre | - | | ?
tafetán con orillo | tabby | | ?
`;
