import { parseMoney } from '../core/money/money.ts';

/** The columns that hold sums. */
export const MONEY = ['cost', 'value', 'insured'];
const SUMS = [...MONEY, 'amount', 'costs'];
/** Single words that say where, from whom or how in any cabinet, and so give nobody's away. */
export const COMMON: ReadonlySet<string> = new Set(
  (
    'album anonymous auction aunt bank bought boxes brother cabinet collection collector common damaged dealer ditto drawer ' +
    'envelope estate exchange fair father field folder found friend garden gentleman gift grandfather grandmother house idem ' +
    'inherited library market mother office online postal present private river saturday shelf shop sleeve small stall stored ' +
    'street study sunday swapped trade tray uncle unknown various vault widow woods ' +
    // The same in German, French, Italian, Spanish and Dutch.
    'auktion bekannter bekannte borse erbe erbschaft erbstuck flohmarkt freund geerbt geschenk geschenkt handler kasten laden markt messe ' +
    'munzborse nachlass privat sammlung sammler schachtel schublade schuhkarton tante tausch tresor trodel unbekannt onkel verein ' +
    'achat album ami boite bourse brocante cadeau coffre collection commerce don echange famille foire heritage herite inconnu marchand ' +
    'marche oncle particulier plateau prive salon succession tiroir vente ' +
    'acquisto asta cassaforte eredita fiera mercato mercatino regalo scambio scatola zio zia ' +
    'amigo caja cajon compra feria herencia mercado regalo subasta tienda ' +
    'beurs doos erfenis familie geschonken kluis lade markt rommelmarkt ruil veiling vriend'
  ).split(' '),
);

/** A cell as a whole, where that is long enough to be told from others. A sum is no text. */
export function wholesOf(column: string, cell: string): readonly string[] {
  const value = cell.trim();
  return value.length >= 5 && !(SUMS.includes(column) && parseMoney(value, { dollar: 'USD' }).ok) ? [value] : [];
}

/** The parts of a cell, between commas, that give a place or a person away as well as the whole of it does. */
export function partsOf(column: string, cell: string): readonly string[] {
  const parts = cell.split(/[,;]/).map((part) => part.trim());
  if (column === 'storage')
    return parts.filter((part) => part.length >= 8 || (part.length >= 6 && boxIn(part) === part));
  if (column === 'find-spot') return parts.filter((part) => part.length >= 8 || /^\p{Lu}\p{L}{4,}$/u.test(part));
  if (column === 'seller' || column === 'with') return parts.filter((part) => part.length >= 8 && part.includes(' '));
  return [];
}

const ARTICLE = /^(?:the|le|la|les|l['’]|el|los|las|il|lo|gli|de|het|der|die|das) ?/i;
/** What a place in the country may be called, behind its own name. */
const KIND_OF_PLACE = / (?:farm|fm|fields?|meadows?|woods?|lane|house|hall|quarry|cottage|acker|hof|feld|wiese)\.?$/i;
/** What is counted within a box or a book, and is in no other place for it. */
const COUNTED_WORDS =
  'p pp page row slot place column sheet seite blatt reihe platz zeile spalte ligne feuille pagina rij blad fila hoja riga foglio no nr n';
const COUNTED = new RegExp(`^(?:${COUNTED_WORDS.replaceAll(' ', '|')})\\b`, 'i');

/** The box with its number that a part of a place begins with; null when there is none. */
function boxIn(part: string): string | null {
  return COUNTED.test(part) ? null : (/^\D*\p{L}{3,}\D*\d+[a-z]?(?![\p{L}\d])/u.exec(part)?.[0] ?? null);
}

/**
 * A part of a place with less beside its name: without its article and the kind of place it is (*Hob Hill* of Hob Hill Farm), and
 * of where a piece is kept the box with its number (*coffre 207*, of a *coffre 207 de la banque*).
 */
export function shorterOf(column: string, part: string): readonly string[] {
  if (column === 'storage') {
    const box = boxIn(part);
    return box !== null && box.length >= 6 && box !== part ? [box] : [];
  }
  if (column !== 'find-spot') return [];
  const own = part.replace(ARTICLE, '');
  const name = own.replace(KIND_OF_PLACE, '');
  return [own, name].filter(
    (one, at) => one.length >= 8 && one !== part && (at === 0 || (one !== own && one.includes(' '))),
  );
}

/** What is typed for a letter that a keyboard has not, and back. */
const TYPED: readonly (readonly [written: RegExp, typed: (letters: string) => string])[] = [
  [/[äöüåø]/g, (letter) => ({ ä: 'ae', ö: 'oe', ü: 'ue', å: 'aa', ø: 'oe' })[letter] ?? letter],
  [/(?<![qaeou])(?:ae|oe|ue)|aa/g, ([first = '']) => first],
  [/ij/g, () => 'y'],
  [/(?<=[b-df-hj-np-z])y/g, () => 'ij'],
];
const NUMBER_SIGN = /(?:#|(?<!\p{L})n[or]?[.°º]?) ?(?=\d)/gu;
const NUMBER_WORDS = ['no. ', 'no ', 'nr. ', 'n° ', '#', 'number ', 'nummer ', 'numero '];
/** Words of an address, short and in full; common usage. */
const SHORTENED = (
  'fm farm, rd road, ave avenue, ln lane, dr drive, hse house, cott cottage, str strasse, st street, terr terrace, cres crescent, gdns gardens'
).split(', ').map((pair) => pair.split(' ')); // prettier-ignore
const IN_FULL = new Map(
  SHORTENED.flatMap(([short = '', full = '']) => [[short, full] as const, [full, short] as const]),
);
const OF_AN_ADDRESS = new RegExp(`(?<=\\p{L} )(${[...IN_FULL.keys()].join('|')})(?![\\p{L}'])\\.?`, 'gu');

/** Endings of names of streets, in full and short; common usage. */
const SHORT_ENDINGS: Readonly<Record<string, string>> = {
  straße: 'str',
  strasse: 'str',
  weg: 'wg',
  straat: 'str',
  laan: 'ln',
};
const STREET_ENDING = new RegExp(`(?<=\\p{L}{3})(?:${Object.keys(SHORT_ENDINGS).join('|')})(?!\\p{L})`, 'gu');

/** A value, in small letters, as others may type it: with `oe` for ö, a number with its sign or without, *Farm* for *Fm*. */
export function spellingsOf(value: string): readonly string[] {
  // A short word may be another one without its second vowel: *Baars*, bars.
  const typed = TYPED.map(([written, by]) => value.replace(written, by)).filter(
    (one) => one.length >= 6 || one.length > value.length,
  );
  const bare = value.replace(NUMBER_SIGN, '');
  const signed = /\p{L} \d/u.test(bare) ? NUMBER_WORDS.map((sign) => bare.replace(/(?<=\p{L} )(?=\d)/u, sign)) : []; // prettier-ignore
  const addressed = value.replace(OF_AN_ADDRESS, (_, word: string) => IN_FULL.get(word) ?? word);
  const streets = value.replace(STREET_ENDING, (ending) => SHORT_ENDINGS[ending] ?? ending);
  return [...new Set([value, ...typed, bare, ...signed, addressed, streets, ...runTogether(value)])];
}

/** Fewer figures, wherever they stand, name nothing. */
const SIX_FIGURES = /(?:\d\D*){6}/;

/** What in a note names an account, a policy, a telephone or a mailbox: seven figures or more together, or six with a letter, and no day. */
export function identifiersIn(cell: string): readonly string[] {
  if (!cell.includes('@') && !SIX_FIGURES.test(cell)) return [];
  const mails = (cell.match(/[\w.+-]+@[\w-]+(?:\.[\w-]+)+/g) ?? []).flatMap(mailForms);
  const phones = cell.match(/(?<![\d.,])\(?\+?0\d[\d ()/-]{7,}\d/g) ?? [];
  const split = phones.flatMap((phone) => {
    const figures = phone.replace(/\D/g, '');
    const two = [3, 4, 5].map((at) => [figures.slice(0, at), figures.slice(at)] as const);
    return [phone, figures, ...two.flatMap(([area, rest]) => [`${area} ${rest}`, `(${area}) ${rest}`, `${area}/${rest}`])];
  }); // prettier-ignore
  const tokens = (cell.match(/(?<![\p{L}\d£€$.,])[\p{L}\d]+(?:[-/][\p{L}\d]+)*(?![\p{L}\d]|[.,]\d)/gu) ?? []).filter(
    (token) => (token.match(/\d/g) ?? []).length >= (/\p{L}/u.test(token) ? 6 : 7) && !isOfDays(token),
  );
  return [...new Set([...mails, ...split, ...tokens.flatMap(certificatesIn)])];
}

/** A mailbox, and as it is written to be read by people alone: `vera (at) example (dot) org`. */
function mailForms(mail: string): readonly string[] {
  const [name = '', host = ''] = mail.split('@');
  const spelled = ([open, close]: readonly [string, string]): readonly string[] =>
    ['.', ` ${open}dot${close} `, ` ${open}punkt${close} `].map((stop) => `${name} ${open}at${close} ${host.replaceAll('.', stop)}`);
  return [mail, ...([['(', ')'], ['[', ']'], ['', '']] as const).flatMap(spelled)];
} // prettier-ignore

/** A day, the years from and to, or figures alone, which may count what was struck. */
function isOfDays(token: string): boolean {
  return /^(?:\d+|\d{1,4}[-/]\d{1,2}(?:[-/]\d{1,4})?|[12]\d{3}[-/][12]\d{3})$/.test(token);
}

/** A value of several words as one, as in the name of a file or behind `#`. */
export function runTogether(value: string): readonly string[] {
  return /^\p{L}+(?:[ -]\p{L}+)+$/u.test(value) && value.length > 10 ? [value.replace(/[ -]/g, '')] : [];
}

/** A number of six figures or more, with the letters that belong to it, in the ways it may be parted. */
export function certificatesIn(cell: string): readonly string[] {
  return [...cell.matchAll(/[\p{L}\d]+(?:[-/. ]?[\p{L}\d]+)*/gu)].flatMap(([run]) => {
    const words = run.split(' ');
    const number = words.filter((word) => /\d/.test(word)).join(' ');
    const plain = number.replace(/[^\p{L}\d]/gu, '');
    if ((plain.match(/\d/g) ?? []).length < 6 && !(plain.length >= 6 && /\p{L}/u.test(plain) && /\d{3}/.test(plain)))
      return [];
    const isAllFigures = /^\d+$/.test(plain);
    // Letters that stand before it by themselves may be written with it.
    const before = words[words.findIndex((word) => /\d/.test(word)) - 1] ?? '';
    // Six figures behind letters, parted, are as often a year and a count.
    return [
      number,
      plain,
      ...(/[-/. ]/.test(number) ? ['/', '.'].map((sign) => number.replace(/[-/. ]/g, sign)) : []),
      ...(before === '' || before.length > 5 ? [] : [`${before}${number}`, `${before}${plain}`]),
      ...(number.match(/\d{6,}/g) ?? []),
      ...plainFigures(plain).flatMap((one) => (isAllFigures || one.length >= 7 ? partedFigures(one) : [one])),
    ];
  });
}

/** Figures in the ways they may be parted; two groups of four may be the years from and to, and six figures a measure. */
function partedFigures(plain: string): readonly string[] {
  const byThree = plain.replace(/\B(?=(?:\d{3})+$)/g, ' ');
  if (plain.length < 7) return [byThree, byThree.replace(' ', ',')];
  const byFour = plain.replace(/\d{4}(?=\d)/g, '$& ');
  const isYears = /^[12]\d{3} [12]\d{3}$/.test(byFour);
  const pairs = plain.length % 2 === 0 ? [plain.replace(/\d\d(?=\d)/g, '$& ')] : [];
  const groups = [byThree, ...(isYears ? [] : [byFour])];
  const inTwo = Array.from({ length: plain.length - 5 }, (_, at) => `${plain.slice(0, at + 3)} ${plain.slice(at + 3)}`);
  return [
    plain,
    ...pairs,
    ...inTwo.filter((one) => !isYears || one !== byFour),
    ...groups.flatMap((one) => [' ', ',', '.', '/'].map((sign) => one.replaceAll(' ', sign))),
  ];
}

/** The figures of a number without its letters, where there are six or more together. */
function plainFigures(plain: string): readonly string[] {
  return plain.match(/\d{6,}/g) ?? [];
}

/** What an amount of money looks like in a note: a sign or three capitals on either side. */
const SUM = /(?:[£€$¥]|\b[A-Z]{3}) ?\d[\d.,']*|\d[\d.,']* ?(?:[£€¥]|[A-Z]{3}\b)/g;
/** Headings of a keeper's own under which a bare figure is money. */
const PRICED =
  /pri[cx]|cost|paid|value|worth|insur|bought for|preis|kauf|wert|bezahlt|prijs|waarde|prezzo|costo|precio|valor/i;

/** The amounts of money in a cell that is no column of sums: in a note, or under a heading of the keeper's own. */
export function amountsInCell(column: string, cell: string, currency: string): readonly string[] {
  const said = (cell.match(SUM) ?? []).map((one) => one.replace(/[.,']+$/, ''));
  const isBare = PRICED.test(column) && /^\d+(?:[.,]\d{1,2})?$/.test(cell.trim());
  return isBare ? [`${cell.trim().replace(',', '.')} ${currency}`] : said;
}

/** A note as a whole, and each of its sentences that says something by itself. */
export function sentencesOf(cell: string): readonly string[] {
  const whole = cell.trim();
  if (!/[.;!?\n]/.test(whole)) return [whole];
  const sentences = whole.split(/(?<=[.;!?])\s+|\n/).map((one) => one.replace(/[.;!?]+$/, '').trim());
  return [...new Set([whole, ...sentences.filter((one) => one.split(/\s+/).length >= 3)])];
}

/** A figure, a name, or three words: less is what any note may say. */
export function saysMuch(value: string): boolean {
  return (/\d|.\p{Lu}/u.test(value) || value.split(/\s+/, 3).length >= 3) && tells(value);
}

/** Without an article, accents and the stop at its end. */
function bare(value: string): string {
  return value
    .toLowerCase()
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .replace(/^(?:an?|the|my|in|at) |[.!]+$/g, '');
}

/** No common word, whatever article it has. */
const THREE_WORDS = /\S\s+\S+\s+\S/;

/** Whether a value can be told from others: no bare figure or day, and no single common word. */
export function tells(value: string): boolean {
  return !/^[\d\s.,/-]+$/.test(value) && (THREE_WORDS.test(value) || !COMMON.has(bare(value)));
}

/** Words that begin with a capital in some language and name nobody. */
const NAMELESS = new Set(
  (
    'january february march april june july august september october november december ' +
    'monday tuesday wednesday thursday friday saturday sunday christmas easter england english britain british scotland ireland ' +
    'wales europe european german germany france french italy italian spain spanish roman greek latin north south east west'
  ).split(' '),
);
/** Columns whose every word with a capital may be a name; elsewhere the first word of a sentence is left. */
const NAMING = ['seller', 'find-spot', 'storage'];

const CAPITAL = /\p{Lu}/u;

/** The words of a cell that may be the name of a person or a place: five letters or more, with a capital. */
export function namesInCell(column: string, cell: string): readonly string[] {
  if (!CAPITAL.test(cell)) return [];
  const words = [...cell.matchAll(/(?<![\p{L}\p{N}-])\p{Lu}[\p{L}’'-]{4,}(?!\p{N})/gu)].filter(
    ({ index }) => NAMING.includes(column) || !/(?:^|[.!?:;“"(])\s*$/.test(cell.slice(0, index)),
  );
  // Of a double name each half is one too, and a genitive has its own ending.
  return words
    .flatMap(([word]) => [word, ...word.split('-')].map((one) => one.replace(/['’]s?$/, '')))
    .filter((word, at, all) => /^\p{Lu}.{4}/u.test(word) && all.indexOf(word) === at)
    .filter((word) => !isNameless(word.toLowerCase()));
}

/**
 * A name as a sentence may need it: of a seller's the whole family, *the Brocklebanks*, and what was theirs, *die Möhrenbrinksche
 * Sammlung*; of a place in German *des Galgenberges*. A short name with such an ending is as often another word: *Marsh*, marshes.
 */
export function formsOf(column: string, name: string): readonly string[] {
  const isPerson = PERSONS.includes(column);
  const endings = [
    ...(isPerson && !name.endsWith('s') ? ['s'] : []),
    ...(isPerson && name.length >= LONG_NAME ? ['sche', 'schen', 'scher', 'sches'] : []),
    ...(column === 'find-spot' && name.length >= LONG_NAME ? ['s', 'e', 'es'] : []),
  ];
  const typed = spellingsOf(name);
  return [...typed, ...endings.flatMap((ending) => typed.map((one) => `${one}${ending}`))];
}

/** Columns of persons. */
const PERSONS = ['seller', 'with'];
const LONG_NAME = 8;
/** Before the name of a person in five languages, in small letters. */
const TITLES =
  'mr mr. mrs mrs. ms ms. miss dr dr. herr herrn frau m. monsieur mme madame sr. senor don sra. senora dona sig. signor signora dhr. meneer mevr. mevrouw'.split(' '); // prettier-ignore

/** A short name of a person behind a title, where it can be nothing else: *Mr Aird*. */
export function titledNames(column: string, cell: string): readonly string[] {
  if (!PERSONS.includes(column)) return [];
  const last = cell
    .split(/[,;(]/)[0]
    ?.match(/(?<!\p{L})\p{Lu}\p{Ll}{1,3}$/u)?.[0]
    .toLowerCase();
  return last === undefined || isNameless(last) ? [] : TITLES.map((title) => `${title} ${last}`);
}

function isNameless(word: string): boolean {
  return NAMELESS.has(word) || COMMON.has(word) || COMMON.has(word.replace(/s$/, ''));
}
