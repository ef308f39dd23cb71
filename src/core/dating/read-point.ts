import type { Reign } from './dating.ts';
import type { PointReader } from './point-reader.ts';
import { readCentury } from './read-century.ts';
import { readCountedEra, readFrozenYear } from './read-counted-era.ts';
import { readCyclical } from './read-cyclical.ts';
import { readDay } from './read-day.ts';
import { readJapanese } from './read-japanese.ts';
import { regnalReader, type DateReader } from './read-regnal.ts';
import { readDecade } from './read-decade.ts';
import { readLetterYear } from './read-letter-year.ts';
import { readSeason } from './read-season.ts';
import { readYear } from './read-year.ts';
import { ASIDE } from './words.ts';
import { anyOf } from './written-text.ts';

const ASIDES = new RegExp(`^(?:${anyOf(ASIDE)} )+`, 'i');
const PLAIN: readonly PointReader[] = [
  readYear,
  readDay,
  readSeason,
  readCentury,
  readDecade,
  readFrozenYear,
  readCountedEra,
  readJapanese,
  readCyclical,
  readLetterYear,
];

/** No single point in time takes more signs, the longest name of a ruler with his year included. */
const LONGEST_POINT = 72;
/** What joins two points is part of neither; "and" is left out, for William and Mary. */
const JOINED = / (?:-|to|or|bis|à) /i;

/** Reads one point in time, whatever it is counted by. `readDate` reads the bounds of reigns. */
export function pointReader(reigns: readonly Reign[], readDate: DateReader): PointReader {
  const readers = [...PLAIN, regnalReader(reigns, readDate)];
  const readBare: PointReader = (text) => {
    for (const reader of readers) {
      const outcome = reader(text);
      if (outcome) return outcome;
    }
    return undefined;
  };
  return (text) => {
    if (text.length > LONGEST_POINT || JOINED.test(text)) return undefined;
    const words = text.replace(ASIDES, '');
    return readBare(text) ?? (words === text ? undefined : readBare(words));
  };
}
