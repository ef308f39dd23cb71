import { listed } from './words.ts';
import { anyOf } from './written-text.ts';

/** A part of a century or decade: the `number`th of `of` equal parts. */
export interface Part {
  readonly number: number;
  readonly of: number;
}

/** Early, middle and late are thirds, as PeriodO reads them in published periods and as Latin palaeography's in., med., ex. */
export const THIRDS: readonly (readonly string[])[] = [
  listed(
    'early, beginning of, beginning, beg. of, start of, opening of, Anfang, Beginn, frühes, frühe, früh',
    'début, déb., in., in, ineunte, begin, vroege, vroeg, inizio, inizi, principio, principios, comienzos, inicios',
    'begyndelsen, begynnelsen, begyndelse, begynnelse, starten, inledning, alku, alkupuoli, tidlig, tidligt, tidlige, början, początek, początku, pocz., začátek, počátek, poč.',
    'início, inícios, princípios, principis, начало, нач., primi, primi anni, primi decenni',
  ),
  listed(
    'mid, middle of, middle, Mitte, mittleres, milieu, mil., med., med, medio, mediante, midden, halverwege',
    'metà, mediados, mitad, midten, mitten, midte, mitt, puoliväli, połowa, połowy, połowie, poł., polovina, poloviny, pol., meados, mitjan',
    'середина, сер.',
  ),
  listed(
    'late, later, end of, end, ending of, close of, Ende, spätes, späte, spät, fin, ex., ex, exeunte',
    'eind, einde, laat, fine, finales, fines, slutningen, slutten, slutet, slutning, slutt, slut, loppu, loppupuoli, sent, sene, koniec, końca, końcu, kon., schyłek',
    'konec, final, finais, fim, finals, конец, кон., ultimi anni, ultimi decenni',
  ),
];

const FRACTIONS: readonly { readonly of: number; readonly words: readonly string[] }[] = [
  {
    of: 2,
    words: listed(
      'half, Hälfte, H., Hft., moitié, dimidium, helft, metà, mitad, halvdel, halvdelen, hälft, hälften, halvan',
      'połowa, połowie, połowy, poł., polovina, pol., metade, meitat, половина, пол.',
    ),
  },
  {
    of: 3,
    words: listed('third, Drittel, tiers, derde, terzo, tercio, tredjedel, tredjedelen, tercja, třetina, terço, треть'),
  },
  {
    of: 4,
    words: listed(
      'quarter, Viertel, V., quart, kwart, quarto, cuarto, fjerdedel, fjerdedelen, fjärdedel, fjärdedelen',
      'ćwierć, ćwierci, ćw., ćwierćwiecze, ćwierćwiecza, ćwierćwieczu, čtvrtina, čtvrt., quartel, четверть, четв.',
    ),
  },
  {
    of: 10,
    words: listed('decade, Jahrzehnt, décennie, decennio, década, decennium, årti, årtiondet, dekada, desetiletí'),
  },
];

const ORDINALS: readonly (readonly string[])[] = [
  listed(
    'first, 1st, 1., 1, I, erste, erstes, ersten, première, premier, 1re, 1ère, 1er, eerste, 1e, 1ste',
    'prima, primo, primero, primera, primer, 1a, 1o, 1.a, 1.o, første, första, pierwsza, pierwsze, pierwszej, první, primeira, первая, 1-я',
  ),
  listed(
    'second, 2nd, 2., 2, II, zweite, zweites, zweiten, seconde, deuxième, 2e, 2de, 2nde, tweede',
    'seconda, secondo, segunda, segundo, segona, 2a, 2o, 2.a, 2.o, anden, andet, annen, andra, druga, drugie, drugiej, druhá, вторая, 2-я',
  ),
  listed(
    'third, 3rd, 3., 3, III, dritte, drittes, dritten, troisième, 3e, derde, 3de, terzo, terza, tercer, tercero, 3o, 3.o',
    'tredje, trzecia, trzecie, trzeciej, třetí, terceiro, третья, 3-я',
  ),
  listed(
    'fourth, 4th, 4., 4, IV, vierte, viertes, vierten, quatrième, 4e, vierde, 4de, quarto, cuarto, 4o, 4.o',
    'fjerde, fjärde, czwarta, czwarte, czwartej, čtvrtá, четвёртая, четвертая, 4-я',
  ),
];
const LAST = listed(
  'last, letzte, letztes, letzten, dernier, dernière, laatste, ultimo, ultima, último, última',
  'sidste, siste, sista, ostatnia, ostatnie, ostatniej, poslední, последняя',
);

/** What stands before a part: `in der 2. Hälfte`, `au milieu`, `all'inizio`, `pod koniec`. */
const LEAD = new RegExp(
  `^(?:${anyOf(
    listed(
      'in the, at the, the, in der, am, zu, zum, im, die, das, der, den, dem, au, à la, dans la, dans le, la, le, les, à',
      'alla, nella, nel, il, lo, a la, a, el, los, in het, aan het, op het, het, de, i, på, vid, na, pod, w, em, no, a mitjan',
    ),
  )} |all'|l')(?=.)`,
  'i',
);
const JOIN = new RegExp(
  `(?<![ -])[ -]*(?:of the|of|in the|${anyOf(
    listed("des, der, dem, du, de la, d', dell', del, di, van de, van het, van, de, af det, af, av, i, do, da"),
  )})?$`,
  'i',
);
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

/** Reads the words for a part: "late", "first half of the", "in der letzten Hälfte des". Undefined if they name none. */
export function parsePart(text: string): Part | undefined {
  const words = text.trim();
  const bare = words.replace(LEAD, '');
  return partOfWords(words) ?? partOfWords(words.replace(JOIN, '')) ?? partOfWords(bare.replace(JOIN, ''));
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
