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
  if (!groups) return undefined;
  const era = ERAS.get(groups['name'] ?? '') ?? ERAS.get(foldedName(groups['name'] ?? ''));
  if (!era) return undefined;
  const written = groups['number'] ?? '';
  const number = /^\d/.test(written) ? Number(written) : readHanNumber(written);
  if (number === undefined) return undefined;
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

const ERAS = new Map(
  JAPANESE_ERAS.flatMap((era) => [[foldedName(era.name), era] as const, [era.characters, era] as const]),
);
