import type { Bound, Dating, Reign } from '../../core/dating/dating.ts';
import { formatDate, formatYear } from '../../core/dating/format-date.ts';
import { parseDate } from '../../core/dating/parse-date.ts';
import { formatGrade, SCALE_IDS } from '../../core/grade/grade.ts';
import { parseGrade } from '../../core/grade/parse-grade.ts';
import { isScaleId } from '../../core/grade/scales.ts';
import { refuse } from '../../core/outcome.ts';
import { answer, ofOneText } from './kind.ts';
import type { Kind } from './kind.ts';
import { dieEstimate, formatDieEstimate } from '../../core/dies/estimate.ts';
import { formatMoney, parseMoney } from '../../core/money/money.ts';
import { parseRarity, rarityOf } from '../../core/rarity/parse-rarity.ts';
import { rarityScale } from '../../core/rarity/scales.ts';

/** A whole number as people write it; NaN for anything else, which the core then refuses in its own words. */
function count(text: string): number {
  return /^\d{1,9}$/u.test(text.trim()) ? Number(text) : Number.NaN;
}

function range(low: number | null, high: number | null): string {
  if (low === null) return 'no number is given for it';
  if (high === null) return `${low} or more`;
  return low === high ? String(low) : `${low} to ${high}`;
}

/** `american 5`: five pieces are known. `american R-7`: the class itself. */
const rarity: Kind = {
  name: 'rarity',
  args: ['scale', 'number known'],
  optional: 1,
  examples: [['american', '5'], ['RIC I R4']],
  read: (words, { scale }) => {
    const asked = scale === undefined ? words : [scale, ...words];
    const known = asked.at(-1) ?? '';
    const named = asked.slice(0, -1).join(' ');
    const counted = asked.length > 1 && /^-?[\d.]+$/u.test(known);
    return answer(counted ? rarityOf(count(known), named) : parseRarity(asked.join(' ')), (read) => ({
      sentence: `${read.class} on the scale ${rarityScale(read.scale)?.title ?? read.scale}: ${range(read.low, read.high)} (${rarityScale(read.scale)?.counts ?? 'known'}).`,
      fields: { scale: read.scale, class: read.class },
    }));
  },
};

const dies: Kind = {
  name: 'dies',
  args: ['coins', 'dies', 'dies known from one coin'],
  examples: [['318', '69', '12']],
  read: (words) => {
    const [n = Number.NaN, d = Number.NaN, d1 = Number.NaN] = words.map(count);
    return answer(dieEstimate({ n, d, d1 }), (read) => ({
      sentence: [formatDieEstimate({ n, d, d1 }, read), ...read.cautions].join(' '),
      fields: { coverage: read.coverage, good: read.good, singleton: read.singleton, geometric: read.geometric },
    }));
  },
};

const money = ofOneText('money', ['£5.00', 'EUR 1234.50', '5.00'], (text) =>
  answer(parseMoney(text), (read) => ({
    sentence: `${formatMoney(read)}.`,
    fields: { minor: read.minor, currency: read.currency },
  })),
);

/** What is counted. */
export const COUNTED: readonly Kind[] = [rarity, dies, money];

function bound(year: Bound): string {
  if (year === null) return 'a year not known';
  return year === 'open' ? 'no end' : formatYear(year);
}

function years({ earliest, latest }: Dating): string {
  return earliest === latest ? bound(earliest) : `from ${bound(earliest)} to ${bound(latest)}`;
}

/** The kind for dates, with the reigns of a cabinet for `Edward I, year 7`. */
export function dateKind(reigns: readonly Reign[]): Kind {
  const kind = ofOneText('date', ['AH 1255, year 15', 'c. 1279-81', '44 BC', 'late 12th century'], (text) =>
    answer(parseDate(text, { reigns }), (read) => {
      const days =
        read.from === undefined || read.to === undefined
          ? ''
          : `, ${read.from} to ${read.to} ${read.dayCalendar ?? ''}`.trimEnd();
      const doubts = [read.about ? 'about' : '', read.doubtful ? 'doubtful' : ''].filter((word) => word !== '');
      const { earliest, latest, edtf, calendar, about, doubtful, from, to, dayCalendar } = read;
      return {
        sentence: `${formatDate(read)}: ${[years(read) + days, `EDTF ${edtf}`, `${calendar} calendar`, ...doubts].join('; ')}.`,
        fields: { earliest, latest, edtf, calendar, about, doubtful, from, to, dayCalendar },
      };
    }),
  );
  return { ...kind, consults: 'in need' };
}

export const gradeKind: Kind = ofOneText('grade', ['VF', 'good VF/F', 'ss+', 'MS-63'], (text, { scale, problem }) => {
  if (scale !== undefined && !isScaleId(scale))
    return refuse(`No grading scale is called "${scale}" here. Write one of ${SCALE_IDS.join(', ')}.`);
  const options = { ...(scale === undefined ? {} : { scale }), ...(problem === undefined ? {} : { problem }) };
  return answer(parseGrade(text, options), (read) => {
    const sources = read.mappings.map((row) => `${row.low}–${row.high} in ${row.source}`).join('; ');
    const where =
      read.low === null || read.high === null ? '' : `: ${read.low} to ${read.high} on the numeric scale (${sources})`;
    return {
      sentence: `${formatGrade(read)}${where}.`,
      fields: {
        low: read.low,
        high: read.high,
        scale: read.scale,
        mappings: read.mappings,
        problem: read.problem ?? null,
        notGraded: read.notGraded ?? null,
      },
    };
  });
});
