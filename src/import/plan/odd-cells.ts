import { parseDate } from '../../core/dating/parse-date.ts';
import { parseSize } from '../../core/measures/parse-size.ts';
import { parseWeight } from '../../core/measures/parse-weight.ts';
import type { Outcome } from '../../core/outcome.ts';
import { isLedgerColumn } from '../../catalogue/fields/ledger-columns.ts';
import { namesFault } from '../../core/grade/faults.ts';
import { oddMeasures } from '../../catalogue/odd-measures.ts';
import type { Records } from '../../catalogue/records.ts';
import { KINDS } from '../../catalogue/fields/piece-fields.ts';
import type { Written } from '../../catalogue/yaml.ts';
import { kindsIn } from '../cells/word-cell.ts';
import { grouped } from '../names/grouped.ts';
import type { PlacedPiece } from './piece-to-write.ts';

/** A sentence for each weight and diameter of new and changed pieces that can hardly be right; they are written all the same. */
export function oddCells(
  pieces: readonly PlacedPiece[],
  { denominations }: Pick<Records, 'denominations'>,
  headings: ReadonlyMap<string, string>,
): readonly string[] {
  return pieces
    .filter(({ state }) => state !== 'same')
    .flatMap(({ row, base: { facts } }) => {
      const kind = KINDS.find((one) => one === facts['kind']);
      if (kind === undefined) return [];
      const odd = oddMeasures(
        {
          kind,
          metal: words(facts['metal']),
          weight: read(facts['weight'], parseWeight),
          diameter: read(facts['diameter'], parseSize),
          date: read(facts['date'], (text) => parseDate(text)),
          denomination: words(facts['denomination']),
          made: words(facts['made']),
          shape: words(facts['shape']),
          problem: words(facts['problem']),
        },
        denominations,
      );
      return odd.map(({ field, says }) => `row ${row}, ${headings.get(field) ?? field}: ${says}`);
    });
}

/** What a word in any cell of a row may mean of the piece, and what to do about it. Words in six languages; common practice. */
const TELLING: readonly { readonly words: string; readonly unless: readonly string[]; readonly field: 'kind' | 'status'; readonly says: string }[] = [
  {
    words: `copy, copies, imitation, imitazione, imitación, imitatie, replica, replicas, reproduction, forgery, fake, not genuine, not real, counterfeit, electrotype, kopie, kopien, replik,
      fälschung, faelschung, falsch, nachguss, abguss, galvano, nachahmung, copie, réplique, faux, fausse, contrefaçon, surmoulage, copia,
      replica, falso, falsa, falsificación, kopieën, vals, vervalsing`,
    unless: ['replica', 'counterfeit'], field: 'kind', says: 'speaks of a copy, an imitation or a forgery, and the kind says no such thing',
  },
  {
    words: `gone, sold, given to, gave to, gave it to, swapped with, swapped for, stolen, verkauft, verschenkt, vertauscht, getauscht gegen, gestohlen,
      abgegeben, vendu, vendue, donné à, donnée à, échangé contre, volé, volée, venduto, venduta, regalato a, rubato, vendido, vendida, robado,
      verkocht, gestolen`,
    unless: ['sold', 'given', 'exchanged', 'lost', 'lent'], field: 'status', says: 'may tell that the piece is no longer here, and its status is kept',
  },
  {
    words: `wanted, still wanted, to find, suchliste, gesucht, fehlt, fehlt noch, fehlliste, mancoliste, recherché, recherchée, manque, manquant, manca,
      mancante, falta, ontbreekt, gezocht`,
    unless: ['sold', 'given', 'exchanged', 'lost'], field: 'status', says: 'may tell that the piece is only wanted, and it would be published as yours',
  },
]; // prettier-ignore
/** A word or a few, as a whole. */
const BY_WORDS = TELLING.map(({ words: all }) => {
  const either = [...new Set(all.split(/,\s*/))].map((one) => one.trim().replace(/ /g, '\\s+')).join('|');
  return new RegExp(`(?<![\\p{L}-])(?:${either})(?![\\p{L}-])`, 'iu');
});
/** More than one piece in a row: `Bun pennies (6)`, `10 Pfennig 4x`, `3 Stück`, `Maundy set`. */
const SEVERAL =
  /\(\d{1,2}\)|\(\d+ ?[x×]\)|(?<!\d)\d+ ?[x×](?!\d)|(?<!\d)(?:[2-9]|\d\d+) (?:st|stk|stück|pcs|pieces|coins)(?!\p{L})/iu;
/** As many as a note says: `lot de 6`, `4 St.` */
const COUNTS = `st, stk, stück, pcs, pieces, coins, münzen, pièces, monnaies, exemplaires, pezzi, monete`;
const COUNTED = new RegExp(
  `^[2-9] ?[x×](?![\\p{L}\\d])|(?<!\\d)(?:[2-9]|\\d\\d) (?:${COUNTS.replaceAll(', ', '|')})(?!\\p{L})|(?<!\\p{L})(?:lots?|konvolut|set|satz) (?:de|of|von|mit|di|van) \\d`,
  'iu',
);
const SET = /(?<!\p{L})(?:lot|set|sets|konvolut|satz|various|diverse|verschiedene|divers|lotto|serie)(?!\p{L})/iu;

/** Cells in which a row is looked through for such words; a longer one is a story, and may speak of other pieces. */
const LONGEST = 120;

/** A sentence for each group of rows in which a cell says what the piece does not: that it is a copy, gone, wanted, damaged, or several. */
export function oddRows(pieces: readonly PlacedPiece[], cells: ReadonlyMap<number, readonly string[]>): readonly string[] {
  const found = pieces.flatMap(({ row, state, ledger, base: { facts } }) => {
    if (state === 'same') return [];
    const texts = (cells.get(row) ?? []).filter((text) => text !== '' && text.length <= LONGEST);
    const told = TELLING.flatMap(({ unless, field, says }, at) => {
      const isSaid = unless.includes(words(facts[field]) ?? '');
      return !isSaid && texts.some((text) => BY_WORDS[at]?.test(text) === true) ? [{ row, says }] : [];
    });
    const isDamaged = facts['problem'] === undefined && hasFault(ledger);
    const title = words(facts['title']) ?? '';
    const isSeveral = countsSeveral(ledger) || SEVERAL.test(title) || texts.some((text) => COUNTED.test(text)) || (SET.test(title) && title.length <= LONGEST);
    return [...told, ...(isDamaged ? [{ row, says: HIDDEN_FAULT }] : []), ...(isSeveral ? [{ row, says: 'speaks of several pieces, and becomes one. Give each a row of its own, or a title that says it is a lot' }] : [])];
  });
  return grouped(found, ({ says }) => says).map((some) => {
    const [{ says } = { says: '' }] = some;
    return `${rowsIn(some)}: ${some.length === 1 ? 'this' : 'each'} ${says}. Change the sheet, or the files once they are written.`;
  });
} // prettier-ignore

/** Headings over how many pieces a row stands for. */
const QUANTITY =
  `qty, quantity, count, pieces, no of coins, no of pieces, anzahl, stück, stückzahl, menge, quantità, q tà, pezzi, quantité, qté, nombre,
  cantidad, cant, piezas, aantal, stuks`.split(/,\s*/);

/** Which headings count pieces; thousands of rows have the same few dozen. */
const COUNTING = new Map<string, boolean>();

function isOfQuantities(heading: string): boolean {
  const plain = (): string =>
    heading
      .toLowerCase()
      .replace(/[^\p{L}]+/gu, ' ')
      .trim();
  const known = COUNTING.get(heading) ?? QUANTITY.includes(plain());
  COUNTING.set(heading, known);
  return known;
}

function countsSeveral(ledger: PlacedPiece['ledger']): boolean {
  return Object.keys(ledger).some((column) => isOfQuantities(column) && Number(ledger[column]) > 1);
}

const HIDDEN_FAULT =
  'names damage or another fault in what stays private, and its page would show a piece without one. Say it under problem';

/** Whether a note that goes to the ledger names a fault; a long one may speak of other pieces. */
function hasFault(ledger: PlacedPiece['ledger']): boolean {
  return Object.entries(ledger).some(
    ([column, text]) => (column === 'notes' || !isLedgerColumn(column)) && text.length <= LONGEST && namesFault(text),
  );
}

/** `row 7`, or `rows 7, 9 and 12`, of many the first twelve. */
function rowsIn(some: readonly { readonly row: number }[]): string {
  const first = some.slice(0, 12).map(({ row }) => String(row));
  const more = some.length > 12 ? ` and ${some.length - 12} more` : '';
  return `${some.length === 1 ? 'row' : 'rows'} ${first.join(', ')}${more}`;
}

/** A sentence for each kind that titles name and the pieces so called are not: a sheet of coins may have tokens in it. */
export function oddKinds(pieces: readonly PlacedPiece[]): readonly string[] {
  const found = pieces.flatMap(({ row, state, base: { facts } }) => {
    const kind = words(facts['kind']) ?? '';
    const named = kindsNamed(words(facts['title']) ?? '', words(facts['metal']) ?? '', kind);
    const isOdd = state !== 'same' && kind !== 'unknown' && named.length > 0 && !named.includes(kind);
    return isOdd ? [{ row, kind, named: named.map(kindInWords).join(' or ') }] : [];
  });
  return grouped(found, ({ kind, named }) => `${kind} ${named}`).map((some) => {
    const { named = '', kind = '' } = some[0] ?? {};
    const titles = some.length === 1 ? 'the title names' : 'the titles name';
    return `${rowsIn(some)}: ${titles} ${named}, and the kind is ${kind}. Give the rows a column of kinds, or change the files once they are written.`;
  });
}

function kindInWords(kind: string): string {
  return kind === 'other' ? 'a piece of the kind other' : `${/^[aeiou]/.test(kind) ? 'an' : 'a'} ${kind}`;
}

/** Kinds that stand within a word, or that only a title names: `Goldbarren`, `Siegelstempel`, `Gutschein`. */
const WITHIN: readonly (readonly [kind: string, form: RegExp])[] = [
  ['jeton', /jett?ons?(?!\p{L})|rechenpfennige?/iu],
  ['ingot', /barren(?!\p{L})|(?<!\p{L})ingots?(?!\p{L})/iu],
  ['paper', /(?:gut|geld|kassen|not)schein|bank ?notes?(?!\p{L})/iu],
  [
    'other',
    /siegel(?!\p{L}{5})|siegelstempel|(?<!\p{L})seal|(?<!\p{L})sceau|verdienstkreuz|ehrenzeichen|abzeichen|(?<!\p{L})badge/iu,
  ],
];
/** What coins alone are called; below a heading of medals it is a coin all the same. */
const COIN_NAMES = `taler, thaler, kreuzer, gulden, groschen, dukaten?, ducats?, pfennige?, heller, penny, pennies, shillings?, crowns?, sovereigns?,
  denar, denare, denarius`;
const OF_COINS = new RegExp(`(?:${COIN_NAMES.split(/,\s*/).join('|')})(?!\\p{L})`, 'iu');

/** The kinds that a title, or paper for a metal, names; of a piece that is no coin, a coin where its title names one and nothing else. */
function kindsNamed(title: string, metal: string, kind: string): readonly string[] {
  const within = WITHIN.flatMap(([one, form]) => (form.test(title) ? [one] : []));
  const named = [...new Set([...kindsIn(title), ...within, ...(/^papi?er$/i.test(metal) ? ['paper'] : [])])];
  const isCoin = named.length === 0 && (kind === 'medal' || kind === 'jeton') && OF_COINS.test(title);
  return isCoin ? ['coin'] : named;
}

function words(written: Written | undefined): string | undefined {
  return typeof written === 'string' ? written : undefined;
}

function read<T>(written: Written | undefined, parse: (text: string) => Outcome<T>): T | undefined {
  const outcome = typeof written === 'string' ? parse(written) : null;
  return outcome?.ok === true ? outcome.value : undefined;
}
