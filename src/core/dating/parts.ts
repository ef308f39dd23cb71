import { anyOf } from './written-text.ts';

/** A part of a century or decade: the `number`th of `of` equal parts. */
export interface Part {
  readonly number: number;
  readonly of: number;
}

/** Words written in one line, with commas between them. */
const listed = (...lines: readonly string[]) => lines.flatMap((line) => line.split(', '));

/** Early, middle and late are thirds, as PeriodO reads them in published periods and as Latin palaeography's in., med., ex. */
export const THIRDS: readonly (readonly string[])[] = [
  listed(
    'early, beginning of, beginning, beg. of, start of, opening of, Anfang, Beginn, frühes, frühe, früh',
    'début, déb., in., in, ineunte, begin, vroege, vroeg, inizio, inizi, principio, principios, comienzos, inicios',
  ),
  listed(
    'mid, middle of, middle, Mitte, mittleres, milieu, mil., med., med, medio, mediante, midden, halverwege',
    'metà, mediados, mitad',
  ),
  listed(
    'late, later, end of, end, ending of, close of, Ende, spätes, späte, spät, fin, ex., ex, exeunte',
    'eind, einde, laat, fine, finales, fines',
  ),
];

const FRACTIONS: readonly { readonly of: number; readonly words: readonly string[] }[] = [
  { of: 2, words: listed('half, Hälfte, H., Hft., moitié, dimidium, helft, metà, mitad') },
  { of: 3, words: listed('third, Drittel, tiers, derde, terzo, tercio') },
  { of: 4, words: listed('quarter, Viertel, V., quart, kwart, quarto, cuarto') },
];

const ORDINALS: readonly (readonly string[])[] = [
  listed(
    'first, 1st, 1., 1, erste, erstes, ersten, première, premier, 1re, 1ère, 1er, eerste, 1e, 1ste',
    'prima, primo, primera, primer, 1a, 1o',
  ),
  listed(
    'second, 2nd, 2., 2, zweite, zweites, zweiten, seconde, deuxième, 2e, 2de, 2nde, tweede',
    'seconda, secondo, segunda, segundo, 2a, 2o',
  ),
  listed('third, 3rd, 3., 3, dritte, drittes, dritten, troisième, 3e, derde, 3de, terzo, terza, tercer, tercero, 3o'),
  listed('fourth, 4th, 4., 4, vierte, viertes, vierten, quatrième, 4e, vierde, 4de, quarto, cuarto, 4o'),
];
const LAST = listed('last, letzte, letztes, letzten, dernier, dernière, laatste, ultimo, ultima, último, última');

const JOIN = /(?<![ -])[ -]*(?:of the|of|in the|des|der|dem|du|de la|d'|del|di|van de|van het|van|de)?$/i;
const FRACTION = `(?<fraction>${anyOf(FRACTIONS.flatMap(({ words }) => words))})`;
const ORDINAL_FRACTION = new RegExp(
  `^(?:(?<last>${anyOf(LAST)})|(?<ordinal>${anyOf(ORDINALS.flat())})) ?${FRACTION}$`,
  'i',
);
/** Palaeographers' `s. XIII¹`, `s. XIII 2/4`: halves by a bare figure. */
const FIGURES = /^(?:(?<half>[12])|(?<number>[1-4])\/(?<of>[234]))$/;

/** Reads a part written in figures. */
export function parseFigures(text: string): Part | undefined {
  const figures = FIGURES.exec(text.trim())?.groups;
  return figures && existing(Number(figures['half'] ?? figures['number']), Number(figures['of'] ?? 2));
}

/** Reads the words for a part: "late", "first half of the", "letztes Viertel des". Undefined if they name none. */
export function parsePart(text: string): Part | undefined {
  const words = text.trim();
  return partOfWords(words) ?? partOfWords(words.replace(JOIN, ''));
}

function partOfWords(words: string): Part | undefined {
  const third = THIRDS.findIndex((row) => row.some((word) => word.toLowerCase() === words.toLowerCase()));
  if (third >= 0) return { number: third + 1, of: 3 };
  const named = ORDINAL_FRACTION.exec(words)?.groups;
  if (!named) return undefined;
  const has = (row: readonly string[], word: string | undefined) =>
    row.some((candidate) => candidate.toLowerCase() === word?.toLowerCase());
  const of = FRACTIONS.find((fraction) => has(fraction.words, named['fraction']))?.of ?? 0;
  const number = named['last'] ? of : ORDINALS.findIndex((row) => has(row, named['ordinal'])) + 1;
  return existing(number, of);
}

function existing(number: number, of: number): Part | undefined {
  return number <= of ? { number, of } : undefined;
}

/**
 * The years of a part, rounded outwards: a hundred years do not divide in three, so the year in which one third passes
 * into the next (34 and 67) belongs to both, which is how PeriodO's published bounds have it.
 */
export function yearsOfPart(first: number, length: number, { number, of }: Part): { low: number; high: number } {
  return {
    low: first + Math.floor((length * (number - 1)) / of),
    high: first + Math.ceil((length * number) / of) - 1,
  };
}
