const FIGURES = '〇一二三四五六七八九';
const ONLY_FIGURES = /^[〇一二三四五六七八九]{1,4}$/;
const TENS = new Map([
  ['十', 10],
  ['廿', 20],
  ['卅', 30],
]);

/** The number that Chinese characters stand for, to 199; 元, "first", is 1. Undefined when they are no number. */
export function readHanNumber(text: string): number | undefined {
  if (text === '元') return 1;
  const parts =
    /^(?<hundred>百|一百)?(?<times>[二三四五六七八九])?(?<tens>[十廿卅])?(?<unit>[一二三四五六七八九])?$/.exec(
      text,
    )?.groups;
  if (text === '' || !parts) return readFigures(text);
  const { hundred, times, tens, unit } = parts;
  // A figure before "ten" multiplies it; without a "ten" it is a unit, and two units in a row are figures.
  if (times !== undefined && (tens === undefined ? unit !== undefined : tens !== '十')) return readFigures(text);
  const ten = tens === undefined ? 0 : (TENS.get(tens) ?? 0) * (times === undefined ? 1 : FIGURES.indexOf(times));
  const loose = tens === undefined && times !== undefined ? FIGURES.indexOf(times) : 0;
  return (hundred === undefined ? 0 : 100) + ten + loose + (unit === undefined ? 0 : FIGURES.indexOf(unit));
}

/** Characters used figure by figure, as in 一九一四. */
function readFigures(text: string): number | undefined {
  if (!ONLY_FIGURES.test(text)) return undefined;
  return Number(text.replace(/./g, (sign) => String(FIGURES.indexOf(sign))));
}
