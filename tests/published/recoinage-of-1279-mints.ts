/**
 * The mints of Edward I's recoinage and when they struck pennies of the new type. J. J. North, *English Hammered Coinage*,
 * volume 2 (third edition, 1991), the classes of Edward I by mint; M. Mate, “Monetary policies in England, 1272–1307”, *British
 * Numismatic Journal* 41 (1972). Names and years set down from memory of these works; the years are those in which a mint opened
 * and shut, not of every class. The abbot of Reading's dies were granted in 1338 (North, under Edward III).
 */
export const MINTS_OF_1279 = [
  { id: 'london', name: 'London', struck: [[1279, 1307]] },
  { id: 'canterbury', name: 'Canterbury', struck: [[1279, 1307]] },
  { id: 'durham', name: 'Durham', struck: [[1280, 1307]] },
  { id: 'bury-st-edmunds', name: 'Bury St Edmunds', struck: [[1280, 1307]] },
  { id: 'york', name: 'York', struck: [[1280, 1281], [1300, 1301]] },
  { id: 'bristol', name: 'Bristol', struck: [[1280, 1281], [1300, 1301]] },
  { id: 'lincoln', name: 'Lincoln', struck: [[1280, 1281]] },
  { id: 'newcastle', name: 'Newcastle', struck: [[1280, 1281], [1300, 1301]] },
  { id: 'chester', name: 'Chester', struck: [[1280, 1281], [1300, 1301]] },
  { id: 'berwick', name: 'Berwick', struck: [[1296, 1318]] },
  { id: 'exeter', name: 'Exeter', struck: [[1300, 1301]] },
  { id: 'kingston-upon-hull', name: 'Kingston upon Hull', struck: [[1300, 1301]] },
  { id: 'reading', name: 'Reading', struck: [[1338, 1351]] },
] as const; // prettier-ignore

/** Open in the first years, 1279 to 1281, as the same works have it. */
export const OPEN_BY_1281 = [
  'bristol', 'bury-st-edmunds', 'canterbury', 'chester', 'durham', 'lincoln', 'london', 'newcastle', 'york',
]; // prettier-ignore

/** Added by the second wave of 1300, with Berwick, which was taken in 1296. */
export const ADDED_BY_1301 = ['berwick', 'exeter', 'kingston-upon-hull'];
