import { expect, test } from 'vitest';
import { formatDate } from '../../../src/core/dating/format-date.ts';
import {
  DATE_LANGUAGES,
  DATES_OF_DATABASES,
  MONTHS_BY_LANGUAGE,
  OLYMPIADS,
  REIGNS_WITH_YEARS,
  TURNS_AND_MONTHS,
  TWO_STYLES,
  WORDS_FOR_YEAR,
} from '../../published/date-languages.ts';
import { readAs, refusalOf, UNDER_EDWARD_I } from './read-as.ts';

const marks = ({ about, doubtful }: { about: boolean; doubtful: boolean }) =>
  [about ? 'about' : '', doubtful ? 'doubtful' : ''].filter((mark) => mark !== '').join(' ');

test.for([...DATE_LANGUAGES, ...DATES_OF_DATABASES, ...TURNS_AND_MONTHS, ...WORDS_FOR_YEAR])(
  '$write is $earliest to $latest, and what is printed reads back ($source)',
  (row) => {
    const dating = readAs(row.write);
    expect([dating.earliest, dating.latest, marks(dating)]).toEqual([row.earliest, row.latest, row.marks]);
    const again = readAs(formatDate(dating));
    expect([again.earliest, again.latest, marks(again)]).toEqual([row.earliest, row.latest, row.marks]);
  },
);

test.for(TWO_STYLES)('%s is the day %s: %s', ([text, day]) => {
  const dating = readAs(text);
  expect([dating.from, dating.to, dating.edtf]).toEqual([day, day, day]);
  expect(readAs(formatDate(dating)).edtf).toBe(day);
});

test.for(MONTHS_BY_LANGUAGE)('%s is the month %s', ([text, month]) => {
  expect(readAs(text).edtf).toBe(month);
});

test.for(OLYMPIADS)('%s runs from %i to %i: %s', ([text, earliest, latest]) => {
  const dating = readAs(text);
  expect([dating.earliest, dating.latest]).toEqual([earliest, latest]);
  expect(readAs(formatDate(dating))).toMatchObject({ earliest, latest });
});

test.for(REIGNS_WITH_YEARS)('%s is %s', ([text, years]) => {
  if (years === 'asks') expect(refusalOf(text, UNDER_EDWARD_I)).toMatch(/write/);
  else expect(readAs(text, UNDER_EDWARD_I).edtf).toBe(years);
});

/** What has two readings, or names what never was, and the words that say what to write. */
test.for([
  ['5/16 November 1605', 'or the first alone with OS'],
  ['5/6 November 1605', '5 or 6 November 1605'],
  ['5/15 November 1505', '5 - 15 November 1505'],
  ['1582-10-10', 'write 10 October 1582 OS'],
  ['edtf:1582-10-10', 'was left out'],
  ['10 October 1582', 'was left out'],
  ['12.11.1804', 'write 1804-11-12 or 1804-12-11'],
  ['1804 [1805]', 'write date: 1805 and, on a line of its own, dated: "1804"'],
  ['1804 [i.e. 1805]', 'dated: "1804"'],
  ['dated 1106', 'write AH 1106'],
  ['1106 (dated)', 'write AH 1106'],
  ['Kangxi (1700-1800)', 'No reign of "Kangxi"'],
  ['2505 (1862)', 'do not agree'],
  ['turn of the 13th century', 'write c. 1200 or c. 1300'],
  ['turn of the 1st century', 'write c. AD 1 or c. AD 100'],
  ['tournant du XIIIe siècle', 'write c. 1200 or c. 1300'],
  ['Jahrhundertwende', 'does not say which one'],
  ['viragem do século', 'does not say which one'],
  ['przełom XIII i XV w.', 'does not name two centuries that follow'],
  ['20 listopada 1920', 'write 20 October 1920 or 20 November 1920'],
  ['15. prosince 1920', 'December (Czech and Croatian) or January (Slovene)'],
  ['15. srpna 1920', 'July (Slovene) or August (Czech)'],
  ['Herbstmonat 1648', 'write September 1648 or October 1648'],
  ['class X, c. 1301-1310', 'write c. 1301-1310 alone'],
  ['até 1557', 'write 1557 alone if the word changes nothing, or before, after or c. in its place'],
  ['BS 1992', 'may be the sign of an era that is not known here'],
  ['1308 RY', 'may be the sign of an era that is not known here'],
  ['Ol. 95, 5', 'of four years each'],
  ['Ol. 294', 'run from 1 to 293'],
] as const)('%s asks', ([text, says]) => {
  expect(refusalOf(text)).toContain(says);
});
