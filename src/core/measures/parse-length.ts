import type { Outcome } from '../outcome.ts';
import { good, refuse } from '../outcome.ts';
import { AMOUNT, mayBeRange, quoted, readAmount, tidy, writeAmount } from './amount.ts';
import { INCH, LINE, PARIS_LINE } from './units.ts';
import type { Interval } from './units.ts';

/** A length, or the ends of one that varies, in millimetres. */
export type Length = Interval & { readonly text: string };

const UNITS: ReadonlyMap<string, number> = new Map([
  ...'mm mms millimetre millimetres millimeter millimeters millimètre millimètres milímetro milímetros millimetro millimetri'
    .split(' ')
    .map((name) => [name, 1] as const),
  ...'cm centimetre centimetres centimeter centimeters zentimeter centimètre centimètres centímetro centímetros centimetro centimetri'
    .split(' ')
    .map((name) => [name, 10] as const),
  ...['in', 'ins', 'inch', 'inches', '"', '″', '”', "''"].map((name) => [name, INCH] as const),
  ...['line', 'lines', 'english line', 'english lines'].map((name) => [name, LINE] as const),
  ...['paris line', 'paris lines', 'ligne', 'lignes', 'pariser linie', 'pariser linien'].map(
    (name) => [name, PARIS_LINE] as const,
  ),
]);

const ONE = new RegExp(`^(${AMOUNT}) ?(.+?)$`);
const PRECISION = new RegExp(`^(.*?) ?(?:±|\\+/-|\\+-) ?(${AMOUNT}) ?(.*)$`);
const RANGE = new RegExp(`^(${AMOUNT}) ?([^\\d]*?) ?(?:-| to ) ?(${AMOUNT}) ?([^\\d]+)$`, 'i');
/** What a list says before the figures, or after them. */
const NAMES = 'durchmesser|diamètre|diámetro';
const CALLED = `diam(?:eter|etro|\\.)?|dia\\.?|d\\.|dm\\.?|${NAMES}`;
const AFTER = `(?:in |de |di )?(?:diam(?:eter|etro|\\.)?|dia\\.?|${NAMES})`;
const DIAMETER = new RegExp(`^(?:[Øø⌀∅]|${CALLED})[:= ]*(?=\\d)| ?${AFTER}$`, 'iu');
const LONGEST = 80;
const ASK = 'Write a number and its unit, like 18.6 mm, 18.2-19.4 mm or 1.205 in.';

/** Reads `18.6 mm`, `18.2-19.4 mm`, `18.6 mm ± 0.1`, `1.205 in`, `8 lines`, `9 Paris lines`. */
export function parseLength(text: string): Outcome<Length> {
  const words = tidy(text).replace(DIAMETER, '');
  if (words === '' || words.length > LONGEST) return refuse(`${quoted(text)} is not a length. ${ASK}`);
  const ends = readPrecise(words) ?? readRange(words) ?? readOne(words);
  if (!ends.ok) return ends;
  if (!(ends.value.low > 0)) return refuse(`${quoted(text)} leaves no length. Leave it out when it was not taken.`);
  return good({ ...ends.value, text: text.trim() });
}

/** In millimetres to the thousandth, to be read back: `18.6 mm`, `18.2–19.4 mm`. */
export function formatLength({ low, high }: Interval): string {
  return low === high ? `${writeAmount(low, 3)} mm` : `${writeAmount(low, 3)}–${writeAmount(high, 3)} mm`;
}

function readPrecise(words: string): Outcome<Interval> | null {
  const [, before = '', amount = '', after = ''] = PRECISION.exec(words) ?? [];
  if (amount === '') return null;
  const middle = readOne(/[a-z"″”']/i.test(before) ? before : `${before} ${after}`);
  if (!middle.ok) return middle;
  const off = readOne(`${amount} ${after === '' ? (ONE.exec(before)?.[2] ?? '') : after}`);
  if (!off.ok) return off;
  return good({ low: exactly(middle.value.low - off.value.high), high: exactly(middle.value.high + off.value.high) });
}

/** Binary fractions leave crumbs in the sixteenth figure; nobody measures a millionth of a millimetre. */
function exactly(millimetres: number): number {
  return Number(millimetres.toFixed(9));
}

function readRange(words: string): Outcome<Interval> | null {
  const [, from, unitFrom = '', to = '', unitTo = ''] = RANGE.exec(words) ?? [];
  if (from === undefined) return null;
  const low = readOne(`${from} ${unitFrom === '' ? unitTo : unitFrom}`);
  const high = readOne(`${to} ${unitTo}`);
  if (!low.ok) return low;
  if (!high.ok) return high;
  if (low.value.low > high.value.high) {
    return refuse(`${quoted(words)} runs from long to short. Write ${to}-${from} ${unitTo.trim()}.`);
  }
  return good({ low: low.value.low, high: high.value.high });
}

function readOne(words: string): Outcome<Interval> {
  const [, number = '', unitText = ''] = ONE.exec(words) ?? [];
  const perUnit = UNITS.get(unitText.toLowerCase().replace(/\./g, '').trim());
  const amount = readAmount(number);
  if (amount === 'two ways') {
    return refuse(
      `The comma in ${quoted(words)} can be read two ways. Write ${number.replace(',', '.')} or ${number.replace(',', '')}.`,
    );
  }
  if (/^[\d.,]+$/.test(words)) return refuse(`${quoted(words)} has no unit. Write ${words} mm.`);
  if (amount === null || perUnit === undefined) return refuse(`${quoted(words)} is not a length. ${ASK}`);
  if (mayBeRange(number, perUnit === 1 || perUnit === 10)) {
    const instead = `${number.replace('/', '-')} ${unitText}`;
    return refuse(`${quoted(words)} may be a range or a fraction. Write ${instead} for the range.`);
  }
  const millimetres = exactly(amount.value * perUnit);
  return good({ low: millimetres, high: millimetres });
}
