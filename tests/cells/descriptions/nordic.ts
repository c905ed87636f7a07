/** As english.ts, of Danish and Norwegian catalogues. */
export const NORDIC = `
tvinding | twined |
åben tvinding | twined | o=open
tæt tvinding | twined | o=close
halvåben tvinding | twined | o=semi
åben tvinding med luv | twined | o=open p=yes
tæt diagonal tvinding uden luv | twined | o=close e=diagonal p=no
tvinding, enkel, Z | twined | e=simple s=Z
skudtvinding, åben | twined | a=weft o=open
tvinding, luv ikke bevaret | twined | p=gap
tvinding med S- og Z-rækker | twined | s=both
lærredsbinding | tabby |
toskaft | tabby |
lærredsbundet stof | tabby |
toskaft, balanceret | tabby | f=balanced
repsvævning | tabby | f=faced
skudreps | tabby | f=weft
trendreps | tabby | f=warp
halvpanama | tabby | g=one
panamabinding | tabby | g=both
kiper | twill |
2/2 kiper | twill22 |
kiper 2/1 | twill21 |
spidskiper | twill | t=pointed
2/2 spidskiper | twill22 | t=pointed
2/2 kiper, krystalkiper | twill22 | t=lozenge
diamantkiper 2/1 | twill21 | t=lozenge
gåseøje | twill | t=pointLozenge
brudt kiper | twill | t=broken
kypert | twill |
2/2 kypert, ringvend | twill22 | t=lozenge
ligesidet kiper | twill22 |
trebindet kiper | twill21 |
brikvævning | tabletWoven |
brikkevev | tabletWoven |
billedvæv | tapestry |
luvvæv | woven | p=yes
toskaft med broderi | tabby | | ?
sprang | sprang |
nålebinding | needleBound |
knyttet net | knottedNetting |
knudeløst net | knotlessNetting |
spiralsyet | coiled |
strikket | knitted |
filt | felt |
lærredsbinding eller kiper | woven |
formentlig kiper 2/2 | twill22 |
ikke kiper | - | | ?
måtte | - | | ?
omviklet | - | | ?
kiperlignende | - | | ?
`;
