import { good, refuse, type Outcome } from '../outcome.ts';
import type { Reading } from './dating.ts';
import { yearsOfPart } from './parts.ts';
import { CENTURY, CENTURY_LETTERS, ordinalNumber, SAECULUM } from './read-century.ts';
import { qualify, readYears } from './reading.ts';
import { AND, BEFORE_CHRIST, listed } from './words.ts';
import { anyOf } from './written-text.ts';

/** What lies between two centuries: `turn of the 12th and 13th centuries`, `przełom XIII i XIV w.`, `Wende 13./14. Jh.` */
const TURN = listed(
  'turn of the century, turn of the centuries, turn of the, turn of, turn, Jahrhundertwende, Wende vom, Wende von, Wende des, Wende der, Wende',
  'tournant du siècle, tournant des, tournant du, tournant entre les, charnière des, charnière du, eeuwwisseling van de, eeuwwisseling',
  'a cavallo tra il, a cavallo tra, a cavallo fra il, a cavallo fra, a cavallo dei, a cavallo del, a cavallo di',
  'a caballo entre los, a caballo entre el, a caballo entre, viragem do, virada do, viragem dos, virada dos, cambio de',
  'århundredeskiftet, århundreskiftet, århundredskiftet, århundradeskiftet, sekelskiftet, vuosisadan vaihde, přelom, přelomu, prelom, prelomu',
  'przełom, przełomie, рубеж, рубеже, перелом, переломе',
);
const LEAD = listed(
  'at the, around the, the, um die, die, an der, um, au, le, à la, vid, omkring, rundt, kring, ved, op de, rond de, de, na, no, на',
);
const FORM = new RegExp(`^(?:${anyOf(LEAD)} )?${anyOf(TURN)}(?: (?<rest>\\S.*))?$`, 'iu');
const FORM_AFTER = /^(?:the )?(?<rest>\S.*?) turn$/i;

const ROUND_YEAR = /^(?:(?:år|um|c\.|of|to) )?(?<year>\d{1,2}00)$/;
const ENDS_BEFORE_CHRIST = new RegExp(` ?${anyOf(BEFORE_CHRIST)}$`, 'i');
/** What may stand between and after two numbers of centuries, and says nothing more. */
const CONNECTING = new Set(
  [...CENTURY, ...CENTURY_LETTERS, ...SAECULUM, ...AND].concat(
    listed(
      'the, zum, to, il, el, los, do, des, du, del, le, les, la, i, a, и, og, y, vom, von, secoli, siglos, séculos, storočia, век',
    ),
  ),
);
const NUMBER = /^(?:\d{1,2}(?:\.|st|nd|rd|th|e|er|ste|de)?|[IVX]+(?:\.|e|er|ème)?|\p{L}+(?:st|nd|rd|th))$/iu;
/** What has a turn and no number. */
const NAMELESS = /^(?:the )?(?:era|millennium|millennia)$/i;

/** The turn from one century to the next. Of one century alone, and of none, it asks: both its ends are turns. */
export function readTurn(text: string): Outcome<Reading> | undefined {
  const groups = FORM.exec(text)?.groups ?? FORM_AFTER.exec(text)?.groups;
  if (!groups) return undefined;
  const rest = (groups['rest'] ?? '').trim();
  const year = ROUND_YEAR.exec(rest)?.groups?.['year'];
  if (year !== undefined) return good(qualify(readYears(Number(year), Number(year)), true, false));
  if (rest === '' || NAMELESS.test(rest)) return refuse(notSaid(text));
  const isBefore = ENDS_BEFORE_CHRIST.test(rest);
  const words = rest.replace(ENDS_BEFORE_CHRIST, '').split(/[ /-]+/).filter((word) => word !== ''); // prettier-ignore
  const numbers = words.flatMap((word) =>
    CONNECTING.has(word) ? [] : [NUMBER.test(word) ? ordinalNumber(word) : undefined],
  );
  if (numbers.length === 0) return refuse(notSaid(text));
  // The turn *to* a century is where it begins.
  const [one, next, ...more] =
    numbers.length === 1 && /^zum /i.test(rest) ? [(numbers[0] ?? 0) - 1, numbers[0]] : numbers;
  if (one === undefined || more.length > 0 || (next === undefined && numbers.length > 1)) return undefined;
  if (next === undefined) {
    const [begins, ends] = isBefore ? [one * 100, (one - 1) * 100 || 1] : [(one - 1) * 100 || 1, one * 100];
    const [of, before] = isBefore ? [' BC', ''] : ['', begins < 1000 ? 'AD ' : ''];
    return refuse(
      `"${text}" may be where that century begins or where it ends; write c. ${before}${begins}${of} or c. ${before}${ends}${of}.`,
    );
  }
  if (next !== one + (isBefore ? -1 : 1))
    return refuse(`"${text}" does not name two centuries that follow; write the years it is about, such as c. 1300.`);
  const firstOf = (century: number) => (isBefore ? 1 - 100 * century : 100 * (century - 1) + 1);
  const late = yearsOfPart(firstOf(one), 100, { number: 3, of: 3 });
  const early = yearsOfPart(firstOf(next), 100, { number: 1, of: 3 });
  return good(readYears(late.low, early.high));
}

function notSaid(text: string): string {
  return `"${text}" does not say which one; write the year it is about, such as c. 1300 or c. 1900.`;
}
