/**
 * Rulers of England from 1413 to 1603 with the years of their reigns: E. B. Fryde, D. E. Greenway, S. Porter and I. Roy,
 * *Handbook of British Chronology* (third edition, 1986), “Rulers of England”, set down from memory. That no coin was struck for
 * Jane is common knowledge of the trade; those of Edward V are disputed (J. J. North, *English Hammered Coinage* 2).
 */
export const ENGLISH_RULERS = [
  { id: 'henry-v', name: 'Henry V', reigns: [[1413, 1422]] },
  { id: 'henry-vi', name: 'Henry VI', reigns: [[1422, 1461], [1470, 1471]] },
  { id: 'edward-iv', name: 'Edward IV', reigns: [[1461, 1470], [1471, 1483]] },
  { id: 'edward-v', name: 'Edward V', reigns: [[1483, 1483]] },
  { id: 'richard-iii', name: 'Richard III', reigns: [[1483, 1485]] },
  { id: 'henry-vii', name: 'Henry VII', reigns: [[1485, 1509]] },
  { id: 'henry-viii', name: 'Henry VIII', reigns: [[1509, 1547]] },
  { id: 'edward-vi', name: 'Edward VI', reigns: [[1547, 1553]] },
  { id: 'jane', name: 'Jane', reigns: [[1553, 1553]], coins: false },
  { id: 'mary-i', name: 'Mary I', reigns: [[1553, 1558]] },
  { id: 'philip-of-spain', name: 'Philip of Spain', reigns: [[1554, 1558]] },
  { id: 'elizabeth-i', name: 'Elizabeth I', reigns: [[1558, 1603]] },
] as const; // prettier-ignore
