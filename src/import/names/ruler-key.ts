import { plainLetters } from '../../core/file-id.ts';
import { englishByname, englishName } from './first-names.ts';

/** Words before a name that say a rank, and articles; they part no ruler from another. */
const LEFT_OUT = new Set(
  'king queen emperor empress tsar tsarina czar kaiser kaiserin konig koenig konigin roi reine empereur imperatrice re regina imperatore rey reina emperador emperatriz koning koningin keizer the der die das den le la les el il lo l de het divus diva'.split(
    ' ',
  ),
);

/** Ordinals in full, from the first to the twelfth, in six languages; inflected as they stand behind a name. */
const ORDINALS: readonly string[] = [
  'first premier erste ersten primo primero eerste prima primera premiere 1er ier ire',
  'second deuxieme zweite zweiten secondo segundo tweede seconda segunda seconde',
  'third troisieme dritte dritten terzo tercero derde terza tercera',
  'fourth quatrieme vierte vierten quarto cuarto vierde quarta cuarta',
  'fifth cinquieme funfte funften quinto quinta vijfde',
  'sixth sixieme sechste sechsten sesto sexto zesde sesta sexta',
  'seventh septieme siebte siebten settimo septimo zevende settima septima',
  'eighth huitieme achte achten ottavo octavo achtste ottava octava',
  'ninth neuvieme neunte neunten nono noveno negende nona novena',
  'tenth dixieme zehnte zehnten decimo tiende decima',
  'eleventh onzieme elfte elften undicesimo undecimo elfde',
  'twelfth douzieme zwolfte zwolften dodicesimo duodecimo twaalfde',
]; // prettier-ignore
const ORDINAL = new Map(ORDINALS.flatMap((line, index) => line.split(' ').map((word) => [word, index + 1] as const)));

const ROMAN: Readonly<Record<string, number>> = { i: 1, v: 5, x: 10, l: 50 };

/**
 * What a ruler's name says whichever way it is spelled, for finding names that may be one ruler's: `Edw. I`, `Edward the First`,
 * `EDWARD I` and `Eduard I.` have one key. A name with a numeral and the same name without one have two.
 */
export function rulerKey(name: string): string {
  return keyOf(name, (word) => englishByname(word.replace(/\.$/, '')) ?? englishName(word));
}

/** The same without a second language: `Edw. I` and `Edward the First` have one key, `Eduard I` another. */
export function plainRulerKey(name: string): string {
  return keyOf(name, (word) => (word.endsWith('.') ? englishName(word) : null));
}

function keyOf(name: string, inWords: (word: string) => string | null): string {
  const words = plainLetters(
    name
      .replace(/[’‘]/g, "'")
      .replace(/\.(?=\p{L}{2})/gu, '. ')
      .replace(/\bd'|\bl'/gi, ' '),
  )
    .replace(/[^\p{L}\p{N}.]+/gu, ' ')
    .split(' ')
    .filter((word) => word !== '' && word !== '.');
  const said = words.flatMap((word, index): readonly string[] => {
    const bare = word.replace(/\.$/, '');
    if (LEFT_OUT.has(bare)) return [];
    const numeral = index === 0 ? null : numeralOf(word);
    if (numeral !== null) return [String(numeral)];
    return [inWords(word) ?? bare];
  });
  const key = said.join(' ');
  return key === '' ? spelledAlike(name) : (SAME.get(key) ?? key);
}

/** Rulers whose by-name has grown into the name. */
const SAME: ReadonlyMap<string, string> = new Map([['charlemagne', 'charles great']]);

/** 1 for `I`, `I.`, `Ier`, `1st`, `1er`, `first`; null for what is no numeral of a ruler. */
function numeralOf(word: string): number | null {
  const bare = word.replace(/\.$/, '');
  const spelled = ORDINAL.get(bare);
  if (spelled !== undefined) return spelled;
  const figures = /^(\d{1,2})(?:st|nd|rd|th|er|e|eme|o|a|te|de)?$/.exec(bare);
  if (figures !== null) return Number(figures[1]);
  return /^[ivxl]+$/.test(bare) ? roman(bare) : null;
}

function roman(text: string): number | null {
  const values = Array.from(text, (letter) => ROMAN[letter] ?? 0);
  const sum = values.reduce((whole, value, at) => whole + (value < (values[at + 1] ?? 0) ? -value : value), 0);
  return sum > 0 && sum < 90 ? sum : null;
}

/** A name without what spelling by hand may change: capitals, accents, points, blanks. */
export function spelledAlike(name: string): string {
  const plain = plainLetters(name)
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();
  return plain === '' ? name.normalize('NFC').trim() : plain;
}
