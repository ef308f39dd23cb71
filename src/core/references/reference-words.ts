import type { Relation } from './reference.ts';

/** Words of one meaning as one pattern: any case, the longest first, a stop after each allowed. */
export function oneOf(words: readonly string[]): string {
  const parts = words
    .toSorted((a, b) => b.length - a.length)
    .map((word) => word.replace(/[.*+?^${}()|[\]\\]/gu, '\\$&'));
  return `(?:${parts.join('|')})(?![\\p{L}\\p{M}])\\.?`;
}

// The words are those of English, German, French, Italian, Spanish and Dutch catalogues and lists. Common practice.

const LIKE = [
  'cf', 'cp', 'conf', 'vgl', 'compare', 'near', 'like', 'similar to', 'see', 'as', 'wie', 'cfr', 'voir', 'comme', 'vergl',
]; // prettier-ignore
const VARIANT = ['var', 'vars', 'variant', 'variante', 'variety', 'varieté', 'variété', 'varietà'];
const CORRECTED = ['corr', 'corrigenda', 'corrigendum', 'corrected', 'korr'];
const UNLISTED = [
  'unlisted', 'not listed', 'unrecorded', 'unpublished', 'missing', 'lacking', 'not', 'fehlt', 'fehlt bei', 'manque', 'manca', 'falta', 'absent from',
]; // prettier-ignore
const THIS = [
  'this coin', 'this piece', 'this specimen', 'this example', 'this medal', 'this token', 'this very coin', 'this exact coin', 'dieses exemplar',
  'dieses ex', 'dies ex', 'diese münze', 'cet exemplaire', 'cette monnaie', 'questo esemplare', 'este ejemplar', 'dit exemplaar',
]; // prettier-ignore
const MORE_OF_THIS = ['illustrated', 'cited', 'listed', 'pictured', 'published', 'abgebildet', 'illustré'];

/** What may stand before the name of a book. */
export const BEFORE: readonly (readonly [RegExp, Relation])[] = [
  [new RegExp(`^${oneOf(LIKE)}\\s*(?=\\S)`, 'iu'), 'cf.'],
  [new RegExp(`^${oneOf(VARIANT)}\\s+(?:(?:of|von|de|di)\\s+)?`, 'iu'), 'var.'],
  [new RegExp(`^${oneOf(UNLISTED)}\\s+(?:(?:in|to|by|from)\\s+)?`, 'iu'), 'unlisted'],
  [new RegExp(`^${oneOf(THIS)}(?:\\s+${oneOf(MORE_OF_THIS)})?\\s*(?:is|in|=|:|,)?\\s+`, 'iu'), 'this coin'],
];

/** What may stand behind the number. */
export const AFTER: readonly (readonly [RegExp, Relation])[] = [
  [new RegExp(`^(?:${oneOf(VARIANT)})(?:\\s*(?=[,;(]|$))?`, 'iu'), 'var.'],
  [new RegExp(`^(?:${oneOf(CORRECTED)})`, 'iu'), 'corr.'],
  [new RegExp(`^(?:${oneOf(['unlisted', 'not listed', 'unrecorded', 'unpublished', 'fehlt', 'manque'])})`, 'iu'), 'unlisted'],
  [new RegExp(`^(?:${oneOf(THIS)})(?:\\s+${oneOf(MORE_OF_THIS)})?`, 'iu'), 'this coin'],
]; // prettier-ignore

const DOUBTFUL = [
  'probably',
  'possibly',
  'perhaps',
  'prob',
  'poss',
  'apparently',
  'wohl',
  'vermutlich',
  'peut-être',
  'forse',
  'quizá',
  'quizás',
];
/** `probably North 1018`. */
export const DOUBT = new RegExp(`^${oneOf(DOUBTFUL)}\\s+`, 'iu');

const ORDINALS = 'st|nd|rd|th|e|a|ª|º|ème|ed';
const EDITION_WORDS = oneOf([
  'ed',
  'edn',
  'edition',
  'éd',
  'édition',
  'aufl',
  'auflage',
  'ediz',
  'edizione',
  'edición',
  'druk',
]);
const SPELT = ['first', 'second', 'third', 'fourth', 'fifth', 'sixth', 'seventh', 'eighth'];

/** `(2nd ed.)`, `second edition`, `2. Aufl.`, `ed. 2`, `²`. */
export const EDITION: readonly RegExp[] = [
  new RegExp(`^(\\d{1,2})(?:${ORDINALS}|\\.)?\\s?${EDITION_WORDS}`, 'iu'),
  new RegExp(`^(${SPELT.join('|')})\\s+${EDITION_WORDS}`, 'iu'),
  new RegExp(`^${EDITION_WORDS}\\s?(\\d)(?![\\p{N}\\p{L}])`, 'iu'),
  /^([¹²³⁴⁵⁶⁷⁸⁹][⁰¹²³⁴⁵⁶⁷⁸⁹]?)/u,
];
/** An ordinal alone before a number: `North (3rd) 1018`, `North 3rd 1018`. */
export const ORDINAL = /^(\d{1,2})(?:st|nd|rd|th)(?=$|\s+\p{L}?\d)/u;

export function editionNumber(text: string): number {
  const spelt = SPELT.indexOf(text.toLowerCase()) + 1;
  // Raised figures are plain ones in this form.
  return spelt > 0 ? spelt : Number(text.normalize('NFKC'));
}

const PART = `(?:\\s?[./-]\\s?\\d{1,2}[a-z]?(?![\\d])|,?\\s(?:${oneOf(['part', 'pt', 'teil', 'partie', 'parte'])})\\s?(?:\\d{1,2}|[IVX]+))?`;
/** `vol. 2`, `Bd. II`, `vol. II, part 1`. */
export const VOLUME = new RegExp(
  `^${oneOf(['vol', 'vols', 'volume', 'bd', 'band', 'tome', 'tomo', 'tom', 't', 'deel'])}\\s?([IVX]+${PART}|\\d{1,2}${PART})`,
  'iu',
);
/** `II`, `V/1`, `II.1`: a volume when a number follows. */
export const ROMAN_VOLUME = new RegExp(
  `^([IVX]+(?:[./-]\\d[a-z]?|,?\\s(?:${oneOf(['part', 'pt', 'teil'])})\\s?(?:\\d|[IVX]+))?)(?=[\\s,:²³(]|$)`,
  'u',
);

const PLATES = [
  'pl',
  'pls',
  'plate',
  'plates',
  'taf',
  'tafel',
  'tf',
  'tav',
  'tavola',
  'planche',
  'lám',
  'lámina',
  'plaat',
];
const FIGURES = ['fig', 'figs', 'figure', 'abb', 'ill'];
const PAGES = ['pp', 'pg', 'pgs', 'page', 'pages', 'pag', 'seite', 'blz', 'pág'];
const CLASSES = ['class', 'cl', 'klasse', 'kl', 'classe', 'clase', 'klas'];
const SMALL_ROMAN = '[ivxlc]+|[IVXLC]+';

function anyCase(words: readonly string[]): readonly string[] {
  return words.flatMap((word) => [word, `${word.slice(0, 1).toUpperCase()}${word.slice(1)}`, word.toUpperCase()]);
}

/** `p. 446`, `pp. 44-5`; a capital P joined to a figure is a number of its own in some books: `Price P123`. */
export const PAGE = new RegExp(
  `^(?:${oneOf(anyCase(PAGES))}\\s?|[Pp](?:\\.\\s?|\\s)|p(?=\\d))((?:\\d+|${SMALL_ROMAN})(?:\\s?[-–]\\s?\\d+)?)(?![\\p{L}\\p{N}])`,
  'u',
);
/** `pl. 5, 3`, `Taf. XII.4`, `fig. 3`. */
export const PLATE = new RegExp(
  `^${oneOf(PLATES)}\\s?((?:${SMALL_ROMAN}|\\d+|[A-Z])(?:[ ,.:/]+(?:(?:${oneOf([...FIGURES, 'no', 'nr'])})\\s?)?\\d+[a-z]?)?)(?![\\p{L}\\p{N}])`,
  'iu',
); // prettier-ignore
export const FIGURE = new RegExp(`^(${oneOf(FIGURES)}\\s?\\d+[a-z]?)(?![\\p{L}\\p{N}])`, 'iu');
/** `class 3b`. */
export const CLASS = new RegExp(`^${oneOf(CLASSES)}\\s?((?:\\d+|[IVX]+|[A-Z])[a-z]{0,2}\\d?)(?![\\p{L}\\p{N}])`, 'iu');
/** `R2`, `RRR`, `scarce`. A single letter only in brackets. */
export const RARITY = /^(?:[RC]\d{1,2}|R{2,5}|CC|(?:extremely |very )?(?:rare|scarce)|R|S|N|C|U)$/iu;

/** Words that a number may follow inside a book, and which are never a book: places in it, and headings under which it counts. */
const NEVER_A_BOOK = new Set(
  [
    ...PLATES, ...FIGURES, ...PAGES, ...CLASSES, 'vol', 'volume', 'bd', 'band', 'tome', 'tomo', 'part', 'teil', 'ed', 'edn',
    'edition', 'no', 'nr', 'num', 'number', 'type', 'typ', 'group', 'series', 'issue', 'period', 'obv', 'rev', 'obverse', 'reverse', 'av',
    'die', 'dies', 'lot', 'los', 'ex', 'note', 'this', 'var', 'cf', 'symbol', 'c', 'ca', 'circa', 'ad', 'bc', 'ah',
    'january', 'february', 'march', 'april', 'may', 'june', 'july', 'august', 'september', 'october', 'november', 'december',
    // What leads in a citation, and where a thing lies that is cited.
    'ref', 'refs', 'reference', 'literature', 'literatur', 'lit', 'published', 'cat', 'kat', 'inv', 'col', 'sammlung', 'slg', 'coll', 'collection',
    // Headings of the corpora of Roman and English coins, which number afresh under each.
    'augustus', 'tiberius', 'caligula', 'gaius', 'claudius', 'nero', 'galba', 'otho', 'vitellius', 'vespasian', 'titus', 'domitian', 'nerva',
    'trajan', 'hadrian', 'sabina', 'antoninus', 'pius', 'faustina', 'aurelius', 'lucilla', 'verus', 'commodus', 'pertinax', 'septimius', 'severus',
    'julia', 'domna', 'caracalla', 'geta', 'macrinus', 'elagabalus', 'alexander', 'maximinus', 'gordian', 'philip', 'decius', 'gallus', 'valerian',
    'gallienus', 'postumus', 'victorinus', 'tetricus', 'aurelian', 'tacitus', 'probus', 'carus', 'carinus', 'numerian', 'diocletian', 'maximian',
    'carausius', 'allectus', 'constantius', 'constantine', 'licinius', 'crispus', 'helena', 'constans', 'magnentius', 'julian', 'valens', 'gratian',
    'theodosius', 'arcadius', 'honorius', 'edward', 'henry', 'william', 'charles', 'george', 'elizabeth', 'victoria', 'james', 'richard', 'john',
    'london', 'rome', 'antioch', 'siscia', 'trier', 'lyons', 'arles', 'aquileia', 'ticinum', 'thessalonica', 'heraclea', 'nicomedia', 'cyzicus',
    'alexandria', 'constantinople', 'sirmium', 'carthage', 'serdica', 'ostia', 'amiens', 'milan', 'ravenna',
  ].map((word) => word.toLowerCase()),
); // prettier-ignore

export function isNeverABook(word: string): boolean {
  return NEVER_A_BOOK.has(word.toLowerCase().replace(/\.$/u, ''));
}

/** Books whose Roman figures are volumes, so that one alone is no number. */
export const COUNTED_BY_VOLUME = /^(?:ric|rpc|bmcre|doc|mec|mib|bmc)$/iu;
