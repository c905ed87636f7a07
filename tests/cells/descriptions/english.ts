/**
 * Descriptions of structure as English catalogues write them, and what they say, by hand; common practice, no
 * source. A line: text | structure | facets. "-" where no structure is read; "?" behind the line: something in it
 * is asked about.
 */
export const ENGLISH = `
open twining | twined | o=open
open weft twining, tufted | twined | o=open a=weft p=yes
close diagonal twining | twined | o=close e=diagonal
2/2 twill, weft-faced | twill22 | f=weft
half-basket tabby | tabby | g=one
twill 2/2 diamond | twill22 | t=lozenge
open twining with pile | twined | o=open p=yes
open diagonal twining with pile | twined | o=open e=diagonal p=yes
twining, open, diagonal, no pile | twined | o=open e=diagonal p=no
twining: close; simple; Z-slant | twined | o=close e=simple s=Z
semi-open twining, S | twined | o=semi s=S
half-open weft-twining | twined | o=semi a=weft
close simple twining | twined | o=close e=simple
open simple twining, untufted | twined | o=open e=simple p=no
spaced twining | twined | o=open
openwork twining | twined | o=open
compact twining | twined | o=close
tight twining | twined | o=close
twining, rows touch | twined | o=close
twining, rows apart | twined | o=open
three-strand twining | twined | n=3
open 3-strand twining | twined | o=open n=3
two-strand twining, close | twined | n=2 o=close
countered twining | twined | s=both
twining, S and Z | twined | s=both
twining in S and Z rows, open | twined | s=both o=open
counter-twined, close | twined | s=both o=close
S-twined, open | twined | s=S o=open
Z-twining | twined | s=Z
warp twining | twined | a=warp
close warp-twining, Z | twined | a=warp o=close s=Z
twined basketry, open | twined | o=open
twined matting | twined |
plain twining | twined | e=simple
diag. twining | twined | e=diagonal
alternate-pair twining | twined | e=diagonal
twilled twining with tufts | twined | e=diagonal p=yes
wrapped twining | twined | w=crossings
open wrapped twining | twined | o=open w=crossings
twining without pile | twined | p=no
twining without pile or fringe | twined | p=no | ?
twining, pile absent | twined | p=no
twining, pile not visible | twined | p=gap
twining, pile lost | twined | p=gap
twining (open) | twined | o=open
twining [close] | twined | o=close
twined, semi open | twined | o=semi
tufted open twining | twined | p=yes o=open
shaggy twining | twined | p=yes
open or semi-open twining | twined | o=semi-or-open
open twining or close twining | twined | o=close-or-open
tabby | tabby |
plain weave | tabby |
tabbies | tabby |
tabby, balanced | tabby | f=balanced
balanced plain weave | tabby | f=balanced
weft-faced tabby | tabby | f=weft
tabby, weft-faced | tabby | f=weft
weft faced plain weave | tabby | f=weft
warp-faced plain weave | tabby | f=warp
tabby, weft- or warp-faced | tabby | f=faced
repp | tabby | f=faced
weft-faced repp | tabby | f=weft
warp repp | tabby | f=warp
tabby weft-faced with pile | tabby | f=weft p=yes
half-basket weave | tabby | g=one
half-panama | tabby | g=one
basket weave | tabby | g=both
2/2 basket weave | tabby | g=both
panama | tabby | g=both
tabby 2/2 | tabby | g=both
tabby with paired wefts | tabby | g=one
paired tabby | tabby | g=paired
twill | twill |
2/1 twill | twill21 |
twill 2/1 | twill21 |
1/2 twill | twill21 |
3/1 twill | twill31 |
4/4 twill | twill44 |
2/2 twill, plain | twill22 | t=straight
2/2 herringbone twill | twill22 | t=herringbone
herringbone | twill | t=herringbone
chevron twill 2/2 | twill22 | t=pointed
2/2 pointed twill | twill22 | t=pointed
2/1 diamond twill | twill21 | t=lozenge
2/2 broken diamond twill | twill22 | t=brokenLozenge
2/2 twill, broken | twill22 | t=broken
goose-eye twill | twill | t=pointLozenge
2/2 lozenge twill, weft-faced | twill22 | t=lozenge f=weft
warp-faced 2/1 twill | twill21 | f=warp
three-end twill | twill21 |
reversed twill 2/2 | twill22 | t=reversed
satin | satin |
5-end satin | satin5 |
warp-faced satin | satin | f=warp
damask | damask |
satin damask | satinDamask |
taqueté | taquete |
samite | samite |
weft-faced compound twill | samite |
lampas | lampas |
double cloth | doubleCloth |
gauze | gauze |
tapestry | tapestry |
tapestry weave with pile | tapestry | p=yes
twill tapestry | twillTapestry |
tablet-woven band | tabletWoven |
tablet weave | tabletWoven |
velvet | woven | p=yes x=warpPile
cut velvet, brocaded | woven | p=yes x=warpPile u=brocadingWeft
plain weave with supplementary weft | tabby | u=supplementaryWeftElement
tabby, brocaded | tabby | u=brocadingWeft
plain weave with supplementary weft patterning | tabby | u=supplementaryWeftElement
tabby with extra warp | tabby | u=supplementaryWarpElement
tabby with soumak | tabby | w=soumak
soumak | weftWrapping | w=soumak
knotted pile, symmetrical knots | woven | p=yes x=symmetricalKnot
weft-loop pile weave | woven | p=yes x=loopedPile
pile fabric | woven | p=yes
looped pile on tabby | tabby | p=yes x=loopedPile
woven, indet. | woven |
simple looping | simpleLooping |
cross-knit looping | crossKnit |
needle-bound | needleBound |
nalbinding | needleBound |
knitting | knitted |
crochet | crocheted |
linking | linked |
sprang | sprang |
interlinked sprang | interlinkedSprang |
knotted netting | knottedNetting |
net, knotted | knottedNetting |
net with knots | knottedNetting |
knotless netting | knotlessNetting |
net without knots | knotlessNetting |
net | netting |
coiled basketry | coiled |
open coiling | coiled | o=open
close coiled basketry | coiled | o=close
checker plaiting | checkerPlaiting |
2/2 twill plaiting | twillPlaiting22 |
twill plaiting | twillPlaiting |
oblique interlacing | obliqueInterlacing |
plaited matting | plaited |
basketry | basketry |
cordage | cordage |
braided cord | braid |
felt | felt |
barkcloth | barkcloth |
10-01 01-01-00 | tabby | g=single
20-02 02-01-01 | twill22 |
2/2 | twill22 |
1/1 | tabby |
prob. 2/2 twill | twill22 |
open twining? | twined | o=open
twining, open? | twined | o=open
cf. tabby | tabby |
twill, possibly diamond | twill | t=lozenge
tabby or twill | woven |
tabby/twill | woven |
OPEN TWINING, Z | twined | o=open s=Z
tabby with tablet-woven border | tabby | | ?
twining with knotted fringe | twined | | ?
2/2 twill, selvedge tablet-woven | twill22 | | ?
tabby, wool | tabby | | ?
open netting | netting | | ?
extended tabby | tabby | | ?
twining, pile no longer visible | twined | | ?
open twinning | - | o=open | ?
twilll | - | | ?
diagnal twining | twined | | ?
not a twill | - | | ?
pseudo-twill | - | | ?
twill-like tabby | - | | ?
wrapped | - | | ?
knotless | - | | ?
coptic stitch | looped | | ?
2/1 tabby | tabby | | ?
wicker | - | | ?
mat | - | | ?
brocade | woven | | ?
imitation of twining | - | | ?
twining or unknown | - | | ?
S | - | | ?
looks like tabby | - | | ?
woven basketry | basketry | | ?
silver thread, wrapped; symmetrically knotted pile | - | p=yes x=symmetricalKnot | ?
four weft threads inserted after each row | - | | ?
pile, inserted | - | p=yes x=insertedPile |
woven, wefts looped | woven | | ?
tapestry; edging: tablet-woven, 2/2 twill; lined | tapestry | | ?
satin brocaded with metallic thread | satin | u=brocadingWeft | ?
tabby, pile: none | tabby | p=no |
half-basket | tabby | g=one |
`;
