import type { Reign } from './dating.ts';

type Row = readonly [name: string, from: string, to: string, regnalFrom?: string];

/**
 * Regnal years of England and Great Britain as statutes and mint accounts count them: C. R. Cheney, *A Handbook of
 * Dates for Students of English History* (1945), from memory. Of William I, Stephen and John the years alone: their
 * days are disputed, or moved with Ascension Day. Days from 1603 to 1752 are given in the old style, then in force. Henry VI,
 * restored, called the year his 49th.
 */
const ROWS: readonly Row[] = [
  ['William I', '1066', '1087'],
  ['William II', '1087-09-26', '1100-08-02'],
  ['Henry I', '1100-08-05', '1135-12-01'],
  ['Stephen', '1135', '1154'],
  ['Henry II', '1154-12-19', '1189-07-06'],
  ['Richard I', '1189-09-03', '1199-04-06'],
  ['John', '1199', '1216'],
  ['Henry III', '1216-10-28', '1272-11-16'],
  ['Edward I', '1272-11-20', '1307-07-07'],
  ['Edward II', '1307-07-08', '1327-01-20'],
  ['Edward III', '1327-01-25', '1377-06-21'],
  ['Richard II', '1377-06-22', '1399-09-29'],
  ['Henry IV', '1399-09-30', '1413-03-20'],
  ['Henry V', '1413-03-21', '1422-08-31'],
  ['Henry VI', '1422-09-01', '1461-03-04'],
  ['Edward IV', '1461-03-04', '1483-04-09'],
  ['Henry VI', '1470-10-09', '1471-04-14', '1422-09-01'],
  ['Edward V', '1483-04-09', '1483-06-25'],
  ['Richard III', '1483-06-26', '1485-08-22'],
  ['Henry VII', '1485-08-22', '1509-04-21'],
  ['Henry VIII', '1509-04-22', '1547-01-28'],
  ['Edward VI', '1547-01-28', '1553-07-06'],
  ['Mary I', '1553-07-06', '1558-11-17'],
  ['Philip and Mary', '1554-07-25', '1558-11-17'],
  ['Elizabeth I', '1558-11-17', '24 March 1602/3'],
  ['James I', '24 March 1602/3', '27 March 1625 OS'],
  ['Charles I', '27 March 1625 OS', '30 January 1648/9'],
  ['Charles II', '30 January 1648/9', '6 February 1684/5'],
  ['James II', '6 February 1684/5', '11 December 1688 OS'],
  ['William and Mary', '13 February 1688/9', '28 December 1694 OS'],
  ['William III', '13 February 1688/9', '8 March 1701/2'],
  ['Anne', '8 March 1701/2', '1 August 1714 OS'],
  ['George I', '1 August 1714 OS', '11 June 1727 OS'],
  ['George II', '11 June 1727 OS', '1760-10-25'],
  ['George III', '1760-10-25', '1820-01-29'],
  ['George IV', '1820-01-29', '1830-06-26'],
  ['William IV', '1830-06-26', '1837-06-20'],
  ['Victoria', '1837-06-20', '1901-01-22'],
  ['Edward VII', '1901-01-22', '1910-05-06'],
  ['George V', '1910-05-06', '1936-01-20'],
  ['Edward VIII', '1936-01-20', '1936-12-11'],
  ['George VI', '1936-12-11', '1952-02-06'],
  ['Elizabeth II', '1952-02-06', '2022-09-08'],
];

export const ENGLISH_REIGNS: readonly Reign[] = ROWS.map(([ruler, from, to, regnalFrom]) => ({
  ruler,
  names: [],
  from,
  to,
  ...(regnalFrom === undefined ? {} : { regnalFrom }),
}));

/** Kings of England whose names and numbers other lands had too, whose years of reign are counted elsewhere. */
const SHARED_NAMES = [
  ...[
    'Charles I',
    'Charles II',
    'George I',
    'George II',
    'Henry I',
    'Henry II',
    'Henry III',
    'Henry IV',
    'James I',
    'James II',
    'John',
    'Stephen',
  ],
  ...['William I', 'William II', 'William III', 'William IV', 'Mary I', 'Elizabeth I'],
];

/** `10 George I` is how English law counts; with the name before the year, a king of any land may be meant. */
export function ofWhichLand(
  text: string,
  known: readonly Reign[],
  number: string | undefined,
  name: string,
): string | undefined {
  const isShared = known.every((reign) => ENGLISH_REIGNS.includes(reign) && SHARED_NAMES.includes(reign.ruler));
  if (number === undefined || !isShared) return undefined;
  return `"${text}" does not say of which land; write ${number} ${name} for the years of England, or the year AD.`;
}
