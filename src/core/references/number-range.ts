/**
 * The ends of a range of numbers. The last may be cut short as in print: `223-5` is 223 to 225, `12a-c` is 12a to 12c; or
 * written out: `44/5-44/7`, `London 121-London 123`.
 * Where the second would not follow the first (`52-1`, a number of a book that numbers so) it is one number.
 */
export function splitRange(printed: string): { readonly number: string; readonly to?: string } {
  const whole = /^(.+?)(\d+)\s*[-–—]\s*\1(\d+)$/su.exec(printed);
  if (whole !== null) {
    const [, head = '', from = '', last = ''] = whole;
    if (BigInt(last) > BigInt(from)) return { number: head + from, to: head + last };
  }
  const figures = /^(.*?)(\d+)\s*[-–—]\s*(\d+)$/su.exec(printed);
  if (figures !== null) {
    const [, head = '', from = '', short = ''] = figures;
    const last = from.slice(0, Math.max(0, from.length - short.length)) + short;
    if (BigInt(last) > BigInt(from)) return { number: head + from, to: head + last };
  }
  const letters = /^(.*\d)(\p{L})\s*[-–—]\s*(?:\1)?(\p{L})$/su.exec(printed);
  if (letters !== null) {
    const [, head = '', from = '', last = ''] = letters;
    if (last > from && /\p{Lu}/u.test(from) === /\p{Lu}/u.test(last)) return { number: head + from, to: head + last };
  }
  return { number: printed };
}
