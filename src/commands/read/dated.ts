import type { Bound, Dating, Reign } from '../../core/dating/dating.ts';
import { formatDate, formatYear } from '../../core/dating/format-date.ts';
import { parseDate } from '../../core/dating/parse-date.ts';
import { formatGrade, SCALE_IDS } from '../../core/grade/grade.ts';
import { parseGrade } from '../../core/grade/parse-grade.ts';
import { isScaleId } from '../../core/grade/scales.ts';
import { refuse } from '../../core/outcome.ts';
import { answer, ofOneText } from './kind.ts';
import type { Kind } from './kind.ts';

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
