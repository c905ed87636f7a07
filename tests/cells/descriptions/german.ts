/** As english.ts, of German catalogues. */
export const GERMAN = `
A 1/4 (2) | satin5 | 
A 4/1 (3) | satin5 | 
A 1/7 (3) | satin8 | 
Atlas 1/4 (2) | satin5 | 
P 2/2 | tabby | g=both
R 2/2 | - | | ?
Zwirnbindung | twined |
Zwirnbindung mit Abstand | twined | o=open
offene Zwirnbindung | twined | o=open
dichte Zwirnbindung | twined | o=close
halboffene Zwirnbindung | twined | o=semi
Zwirnbindung, offen, versetzt | twined | o=open e=diagonal
Zwirnbindung mit Abstand, versetzt, mit Flor | twined | o=open e=diagonal p=yes
offene Schusszwirnbindung mit Flor | twined | o=open a=weft p=yes
Schußzwirnbindung, dicht | twined | a=weft o=close
Kettzwirnbindung | twined | a=warp
Diagonalzwirnbindung, dicht | twined | e=diagonal o=close
diagonale Zwirnbindung ohne Flor | twined | e=diagonal p=no
Zwirnbindung, einfach, Z | twined | e=simple s=Z
S-Zwirnbindung | twined | s=S
Zwirnbindung, S- und Z-Reihen | twined | s=both
Zwirnbindung mit wechselnder Neigung | twined | s=both
dreisträngige Zwirnbindung | twined | n=3
Zwirngeflecht mit Abstand | twined | o=open
enge Zwirnbindungen | twined | o=close
Zwirnb., offen | twined | o=open
Vliesgeflecht | twined | p=yes
Florgeflecht, dicht | twined | p=yes o=close
Zwirnbindung, Flor nicht erkennbar | twined | p=gap
Zwirnbindung, Flor fehlt | twined | p=no
Zwirnbindung ohne Flor und Noppen | twined | p=no
Zwirnbindung ohne Abstand | twined | o=close
wohl offene Zwirnbindung | twined | o=open
Zwirnbindung (offen?) | twined | o=open
Leinwandbindung | tabby |
leinwandbindig | tabby |
leinwandbindiges Gewebe | tabby |
Gewebe in Leinwandbindung | tabby |
LW | tabby |
LW 1/1 | tabby |
L 1/1 | tabby |
Lwb. | tabby |
Leinwandbindung, ausgeglichen | tabby | f=balanced
Leinwandbindung, schussbetont | tabby | f=weft
Leinwandbindung, kettbetont | tabby | f=warp
Rips | tabby | f=faced
Schussrips | tabby | f=weft
Schußrips mit Flor | tabby | f=weft p=yes
Kettrips | tabby | f=warp
Halbpanama | tabby | g=one
Halbpanamabindung | tabby | g=one
Panamabindung | tabby | g=both
Panama 2/2 | tabby | g=both
Köper | twill |
köperbindig | twill |
Köper 2/2 | twill22 |
K 2/2 | twill22 |
K 2/1 | twill21 |
2/2-Köper, schussbetont | twill22 | f=weft
Köper 2/2, schussbetont, ohne Flor | twill22 | f=weft p=no
Gleichgratköper | twill22 |
dreibindiger Köper | twill21 |
Spitzköper 2/2 | twill22 | t=pointed
Spitzköperbindung | twill | t=pointed
Fischgratköper | twill | t=herringbone
Köper 2/2, Fischgrat | twill22 | t=herringbone
Rautenköper 2/1 | twill21 | t=lozenge
Diamantköper | twill | t=lozenge
Köper 2/2 mit Rauten | twill22 | t=lozenge
gebrochener Köper 2/2 | twill22 | t=broken
Kreuzköper | twill | t=broken
Kettköper 2/1 | twill21 | f=warp
Schussköper | twill | f=weft
Atlas | satin |
fünfbindiger Atlas | satin5 |
Damast | damask |
Köperdamast | twillDamask |
Samit | samite |
Wirkerei | tapestry |
Brettchengewebe | tabletWoven |
Dreherbindung | gauze |
Samt | woven | p=yes x=warpPile
Florgewebe | woven | p=yes
Knüpfteppich | woven | p=yes x=knottedPile
Leinwandbindung, broschiert | tabby | u=brocadingWeft
Leinwandbindung mit Zierschuss | tabby | u=supplementaryWeftElement
Sprang | sprang |
Nadelbindung | needleBound |
geknotetes Netz | knottedNetting |
Netz, geknotet | knottedNetting |
knotenloses Netz | knotlessNetting |
Netz ohne Knoten | knotlessNetting |
Spiralwulst | coiled |
Köpergeflecht | twillPlaiting |
Köpergeflecht 2/2 | twillPlaiting22 |
Filz | felt |
gestrickt | knitted |
Gewebe, unbestimmt | woven |
Leinwandbindung oder Köper | woven |
Köper?, Rauten | twill | t=lozenge
vgl. Köper 2/2 | twill22 |
Leinwandbindung mit Brettchenkante | tabby | | ?
Zwirnbindung, Anfangskante in Rips | twined | | ?
Köper, fein | twill | |
köperartig | - | | ?
kein Köper | - | | ?
Leinwandbinding | - | | ?
Umwicklung | - | | ?
Matte | - | | ?
geknotet | - | | ?
kett- oder schussbetonte Leinwandbindung | - | | ?
`;
