/**
 * What visitors may type, with the pieces of which one must come first: written from the titles, rulers, places, dates and
 * references in the demo's piece files before the search was tried on any of them. `|` parts what may come first.
 */
export const WORDS_ASKED = `
crux penny: aethelred-crux-penny
aethelred crux: aethelred-crux-penny
æthelred ii york: aethelred-crux-penny
oban: aethelred-crux-penny
styca eardwulf: aethelred-styca
aethelred styca: aethelred-styca
aldfrith: aldfrith-sceat
aldfrith sceat: aldfrith-sceat
sceattas: aldfrith-sceat | eadberht-sceat
athelstan: athelstan-york-penny
æthelstan penny: athelstan-york-penny
regnald: athelstan-york-penny
caracalla: caracalla-denarius
caracalla liberty: caracalla-denarius
denarius libertas: caracalla-denarius
charles i half crown: charles-i-york-half-crown
halfcrown: charles-i-york-half-crown
half-crown york: charles-i-york-half-crown
half crowns: charles-i-york-half-crown
charles 1: charles-i-york-half-crown
cnut quatrefoil: cnut-quatrefoil-penny
quatrefoil penny: cnut-quatrefoil-penny
fargrim: cnut-quatrefoil-penny
coin weight: coin-weight-angel
coin-weight angel: coin-weight-angel
angel weight antwerp: coin-weight-angel
constantine london: constantine-follis
constantine sun: constantine-follis
follis constantine: constantine-follis
constantius: constantius-follis
deified constantius: constantius-follis
folles: constantine-follis | constantius-follis
eadberht: eadberht-sceat
eanred: eanred-styca
styca monne: eanred-styca
edgar: edgar-york-penny
edgar reform: edgar-york-penny
edward the confessor: edward-confessor-penny
confessor pyramids: edward-confessor-penny
pyramids: edward-confessor-penny
edward bristol: edward-i-bristol-penny
bristol penny: edward-i-bristol-penny
bury st edmunds: edward-i-bury-penny
hadeleie: edward-i-bury-penny
robert de hadeleie: edward-i-bury-penny
abbot of bury: edward-i-bury-penny
canterbury penny: edward-i-canterbury-penny
edward i canterbury: edward-i-canterbury-penny
chester: edward-i-chester-penny
pierced penny chester: edward-i-chester-penny
contemporary counterfeit: edward-i-counterfeit
counterfeit penny: edward-i-counterfeit
durham: edward-i-durham-penny
bishop of durham: edward-i-durham-penny
farthing york edward: edward-i-farthing-york
edward i farthing: edward-i-farthing-york
lincoln: edward-i-lincoln-penny
edward lincoln 3c: edward-i-lincoln-penny
london penny edward i: edward-i-london-penny
class 1c: edward-i-london-penny
newcastle: edward-i-newcastle-penny
edward iii half groat: edward-iii-york-half-groat
halfgroat edward iii: edward-iii-york-half-groat
edward 3 half-groat: edward-iii-york-half-groat
edward iii penny: edward-iii-york-penny
thoresby: edward-iii-york-penny
edward iv groat: edward-iv-york-groat
groat first reign: edward-iv-york-groat
edward 4 groat york: edward-iv-york-groat
edward iv second reign: edward-iv-york-penny
archbishop booth: edward-iv-york-penny
edward vi sixpence: edward-vi-york-sixpence
edward vi: edward-vi-york-sixpence | henry-viii-posthumous-groat
fine silver sixpence: edward-vi-york-sixpence
elizabeth: elizabeth-sixpence
elizabeth sixpence: elizabeth-sixpence
elizabeth 1 sixpence: elizabeth-sixpence
gallo-belgic: gallo-belgic-stater
gallo belgic stater: gallo-belgic-stater
ambiani: gallo-belgic-stater
gold stater: gallo-belgic-stater
arm ring: hack-arm-ring
arm-ring: hack-arm-ring
hacksilver: hack-arm-ring | ingot-nicked
hadrian: hadrian-as
hadrian britannia: hadrian-as
as of hadrian: hadrian-as
britannia seated: hadrian-as
harold: harold-ii-pax-penny
harold ii: harold-ii-pax-penny
harold pax: harold-ii-pax-penny
sutere: harold-ii-pax-penny
tealby: henry-ii-tealby-penny
cross and crosslets: henry-ii-tealby-penny
henry ii tealby: henry-ii-tealby-penny
henry iii: henry-iii-long-cross-york
voided long cross: henry-iii-long-cross-york
long cross ieremie: henry-iii-long-cross-york
henry vi penny: henry-vi-york-penny
rosette-mascle: henry-vi-york-penny
rosette mascle penny: henry-vi-york-penny
archbishop kempe: henry-vi-york-penny
henry vii: henry-vii-york-penny
sovereign penny: henry-vii-york-penny
henry 7 penny: henry-vii-york-penny
rotherham: henry-vii-york-penny | richard-iii-york-penny
posthumous groat: henry-viii-posthumous-groat
henry viii struck for edward vi: henry-viii-posthumous-groat
henry viii groat: henry-viii-york-groat | henry-viii-posthumous-groat
wolsey: henry-viii-york-groat
cardinal wolsey groat: henry-viii-york-groat
ingot: ingot-nicked
viking ingot: ingot-nicked
silver ingot: ingot-nicked
jeton: jeton-rose-orb
krauwinckel: jeton-rose-orb
nuremberg jeton: jeton-rose-orb
rose orb: jeton-rose-orb
lead token: lead-token
cross and pellets lead: lead-token
love token: love-token-1797
engraved penny: love-token-1797
lovetoken: love-token-1797
matthew boulton: love-token-1797
mary groat: mary-groat
mary i: mary-groat
japan: meiji-sen
meiji: meiji-sen
one sen: meiji-sen
osaka: meiji-sen
minster medal: minster-medal-1829
york minster fire: minster-medal-1829
medal: minster-medal-1829
white metal: minster-medal-1829
osberht: osberht-styca
blundered legend styca: osberht-styca
ottoman: ottoman-twenty-para
twenty para: ottoman-twenty-para
abdulmecid: ottoman-twenty-para
abdülmecid: ottoman-twenty-para
constantinople: ottoman-twenty-para
philip and mary: philip-mary-sixpence
philip mary sixpence: philip-mary-sixpence
raven: raven-replica
raven penny: raven-replica
replica: raven-replica
anlaf: raven-replica
richard ii: richard-ii-york-penny
richard 2 penny: richard-ii-york-penny
local dies richard: richard-ii-york-penny
richard iii: richard-iii-york-penny
richard 3: richard-iii-york-penny
samanid: samanid-dirham-cut
samanid dirham: samanid-dirham-cut
cut dirham: samanid-dirham-cut
al-shash: samanid-dirham-cut
shash: samanid-dirham-cut
septimius severus: severus-denarius
severus: severus-denarius
victory in britain: severus-denarius
severus denarius: severus-denarius
cut halfpenny: short-cross-cut-half-york
short cross halfpenny: short-cross-cut-half-york
short cross john: short-cross-john-york
struck for john: short-cross-john-york
class 5b: short-cross-john-york
short cross richard: short-cross-richard-york
struck for richard i: short-cross-richard-york
short-cross penny: short-cross-john-york | short-cross-richard-york
henry vi half-groat: sold-henry-vi-half-groat
annulet issue calais: sold-henry-vi-half-groat
calais: sold-henry-vi-half-groat
half-groats: sold-henry-vi-half-groat | edward-iii-york-half-groat
st peter sword: st-peter-sword
st peter: st-peter-sword | st-peter-swordless
saint peter penny: st-peter-sword | st-peter-swordless
without the sword: st-peter-swordless
stephen: stephen-york-penny
stephen york: stephen-york-penny
cross moline: stephen-york-penny
vespasian: vespasian-denarius
priestly implements: vespasian-denarius
vespasian denarius: vespasian-denarius
sovereign victoria: victoria-sovereign-1872
victoria: victoria-sovereign-1872
gold sovereign: victoria-sovereign-1872
st george: victoria-sovereign-1872
cunnetti: viking-cnut-penny
cvnnetti: viking-cnut-penny
cnut of northumbria: viking-cnut-penny
wigmund: wigmund-styca
archbishop wigmund: wigmund-styca
coenred: wigmund-styca
william i: william-i-paxs-penny
paxs: william-i-paxs-penny
william the conqueror: william-i-paxs-penny
william iii: william-iii-sixpence | william-iii-sixpence-second | william-iii-sixpence-cleaned
william iii cleaned: william-iii-sixpence-cleaned
cleaned sixpence: william-iii-sixpence-cleaned
sixpence second specimen: william-iii-sixpence-second
archbishop's mint: york-archbishop-penny | edward-iii-york-penny
archbishops mint edward i: york-archbishop-penny
halfpenny token: york-halfpenny-1795
york token minster: york-halfpenny-1795
class 3b: york-penny-3b
edward i york 3b: york-penny-3b
class 9b: york-penny-9b
9b: york-penny-9b
skelder: york-token-1666
marmaduke skelder: york-token-1666
half moon: york-token-1666
farthing token: york-token-1666
`;

/** Dates, weights, sizes and references: what comes first must be one of these. */
export const FIGURES_ASKED = `
north 770: aethelred-crux-penny
N770: aethelred-crux-penny
North 672: athelstan-york-penny
N 781: cnut-quatrefoil-penny
RIC 577: hadrian-as
RIC II 577: hadrian-as
ric-2 577: hadrian-as
RIC IV 161: caracalla-denarius
RIC 332: severus-denarius
RIC VI London 121a: constantine-follis
RIC VI London 110: constantius-follis
RIC 42 vespasian: vespasian-denarius
north 752: edgar-york-penny
N831: edward-confessor-penny
N 1012: edward-i-london-penny
north 1018: edward-i-lincoln-penny
North 1020: edward-i-newcastle-penny | york-archbishop-penny
N1022: edward-i-bristol-penny | edward-i-chester-penny | edward-i-durham-penny
north 1037/1: york-penny-9b
N 1583: edward-iv-york-groat
north 1799: henry-viii-york-groat
N1960: mary-groat
N 1997: elizabeth-sixpence
north 2315: charles-i-york-half-crown
north 848: william-i-paxs-penny
bmc viii: william-i-paxs-penny
bmc i stephen: stephen-york-penny
North 873: stephen-york-penny
van arsdell 52-1: gallo-belgic-stater
dalton hamer yorkshire 65: york-halfpenny-1795
north 987: henry-iii-long-cross-york
N 501: viking-cnut-penny
1066: harold-ii-pax-penny | edward-confessor-penny
AD 71: vespasian-denarius
57 BC: gallo-belgic-stater
57-50 BC: gallo-belgic-stater
1st century BC: gallo-belgic-stater
AD 121: hadrian-as
1572: elizabeth-sixpence
1666: york-token-1666
1697: william-iii-sixpence-cleaned
1795: york-halfpenny-1795
1797: love-token-1797
1829: minster-medal-1829
1554 sixpence: philip-mary-sixpence
AH 1269: ottoman-twenty-para
9th century styca: aethelred-styca | eanred-styca | osberht-styca | wigmund-styca
7th century: aldfrith-sceat
c. 1570: coin-weight-angel | elizabeth-sixpence
before 100: vespasian-denarius | gallo-belgic-stater
1643 half-crown: charles-i-york-half-crown
1.59 g: aethelred-crux-penny
14.86 g: charles-i-york-half-crown
25.12 g: love-token-1797
40.2 g: minster-medal-1829
26.34 g: ingot-nicked
34.6 mm: charles-i-york-half-crown
28.7 mm: york-halfpenny-1795
26-27 g: ingot-nicked
11 mm farthing: edward-i-farthing-york
21.6 grains: edward-i-canterbury-penny
`;
