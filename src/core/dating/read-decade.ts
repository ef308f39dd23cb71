import { good, refuse } from '../outcome.ts';
import { parsePart, yearsOfPart } from './parts.ts';
import type { PointReader } from './point-reader.ts';
import { readYears } from './reading.ts';
import { AFTER_CHRIST, BEFORE_CHRIST } from './words.ts';
import { anyOf } from './written-text.ts';

const ERA = `(?: ?(?:(?<bc>${anyOf(BEFORE_CHRIST)})|(?<ad>${anyOf(AFTER_CHRIST)})))?`;
const FORMS = [
  new RegExp(`^(?<part>.*?)(?<![\\d-])(?<decade>\\d{1,3})0(?:'?s| ?er Jahre| ?er)${ERA}$`, 'i'),
  new RegExp(
    `^(?<part>.*?)(?:(?:les )?années|(?:de )?jaren|(?:gli )?anni|(?:los )?años) (?<decade>\\d{3})0${ERA}$`,
    'i',
  ),
];

/** `1280s`, `late 1280s`, `330s BC`, `1840er Jahre`, `années 1840`, `jaren 1840`. */
export const readDecade: PointReader = (text) => {
  const groups = FORMS.map((form) => form.exec(text)?.groups).find((found) => found !== undefined);
  const decade = groups?.['decade'] ?? '';
  const part = groups?.['part'] ? parsePart(groups['part']) : undefined;
  if (!groups || (groups['part'] && !part)) return undefined;
  const hasEra = groups['bc'] !== undefined || groups['ad'] !== undefined;
  if (decade.endsWith('0')) {
    return refuse(`"${text}" may be ten years or a hundred; write them as a range, such as ${decade}0-${decade}9.`);
  }
  if (!hasEra && decade.length < 3) {
    return refuse(`A bare ${decade}0s could be counted from any era; write ${decade}0s AD or ${decade}0s BC.`);
  }
  // The 330s BC are the years from 339 to 330.
  const first = groups['bc'] === undefined ? Number(`${decade}0`) : 1 - Number(`${decade}9`);
  const { low, high } = part ? yearsOfPart(first, 10, part) : { low: first, high: first + 9 };
  const edtf = first > 0 && !part ? { edtf: `${decade.padStart(3, '0')}X` } : {};
  return good({ ...readYears(low, high), ...edtf });
};
