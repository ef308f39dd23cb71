import { JAPANESE_ERAS, lengthOfEra } from '../calendars/japanese-eras.ts';
import { good, refuse } from '../outcome.ts';
import { readHanNumber } from './han-numeral.ts';
import type { PointReader } from './point-reader.ts';
import { readYears } from './reading.ts';
import { foldedText } from './written-text.ts';

const LETTERS = /^(?<name>[A-Za-zĀ-ž' -]+?),? (?:year )?(?<number>\d{1,2})(?: ?nen)?$/i;
const CHARACTERS = /^(?<name>\p{Script=Han}{2})(?<number>\d{1,2}|[元一二三四五六七八九十]+)年?$/u;

/** `Meiji 3`, `Kan'ei 13`, `Tenpō year 6`, `明治三年`. */
export const readJapanese: PointReader = (text) => {
  const groups = (LETTERS.exec(text) ?? CHARACTERS.exec(text))?.groups;
  const name = foldedName(groups?.['name'] ?? '');
  const era = JAPANESE_ERAS.find((row) => foldedName(row.name) === name || row.characters === groups?.['name']);
  if (!groups || !era) return undefined;
  const written = groups['number'] ?? '';
  const number = readHanNumber(written) ?? Number(written);
  const years = lengthOfEra(era);
  if (number < 1 || number > years) {
    return refuse(`${era.name} has the years 1 to ${String(years)}; write one of them, or the western year.`);
  }
  return good(readYears(era.first + number - 1, era.first + number - 1, 'japanese'));
};

/** Names without marks of length, however these were typed: Tenpō, Tempo and Tenpou are one era. */
function foldedName(name: string): string {
  return foldedText(name).replaceAll('mp', 'np').replaceAll('mb', 'nb').replaceAll('mm', 'nm').replace(/ou/g, 'o');
}
