/**
 * Reigns as Nomisma.org publishes them (snapshot of February 2026, nomisma.org, licence CC BY 4.0), some rows and columns
 * only. The years are of the type gYear in XML Schema 1.0, which has no year 0: -0027 is 27 BC. Beside each stands the
 * reign as books print it: E. J. Bickerman, *Chronology of the Ancient World* (1968), lists of rulers; from memory.
 */
export const NOMISMA_REIGNS = [
  { id: 'augustus', start: '-0027', end: '0014', printed: '27 BC - AD 14' },
  { id: 'tiberius', start: '0014', end: '0037', printed: 'AD 14-37' },
  { id: 'nero', start: '0054', end: '0068', printed: 'AD 54-68' },
  { id: 'trajan', start: '0098', end: '0117', printed: 'AD 98-117' },
  { id: 'hadrian', start: '0117', end: '0138', printed: 'AD 117-138' },
  { id: 'trajan_decius', start: '0249', end: '0251', printed: 'AD 249-251' },
  { id: 'alexander_iii', start: '-0336', end: '-0323', printed: '336-323 BC' },
  { id: 'philip_ii', start: '-0359', end: '-0336', printed: '359-336 BC' },
  { id: 'cleopatra_vii', start: '-0051', end: '-0030', printed: '51-30 BC' },
  { id: 'ptolemy_xii', start: '-0080', end: '-0058', printed: '80-58 BC' },
  { id: 'ptolemy_xiii', start: '-0051', end: '-0047', printed: '51-47 BC' },
  { id: 'mithradates_vi_pontus', start: '-0120', end: '-0063', printed: '120-63 BC' },
  { id: 'darius_i_persia', start: '-0522', end: '-0486', printed: '522-486 BC' },
  { id: 'darius_ii_persia', start: '-0423', end: '-0404', printed: '423-404 BC' },
  { id: 'darius_iii_persia', start: '-0336', end: '-0330', printed: '336-330 BC' },
  { id: 'croesus_lydia', start: '-0560', end: '-0546', printed: '560-546 BC' },
] as const;

/**
 * One coin as the guide for contributors to Nomisma.org shows it (nomisma.org, documentation, CC BY 4.0): the axis a whole
 * number of clock hours, the weight in grams and the diameter in millimetres as bare decimals.
 */
export const NOMISMA_COIN = {
  title: 'Antoninianus of Gallienus, Rome, 254-255. 1991.17.140.',
  hasAxis: '6',
  hasDiameter: '22',
  hasWeight: '2.86',
} as const;
