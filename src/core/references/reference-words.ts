import type { Relation } from './reference.ts';

/** Words of one meaning as one pattern: any case, the longest first, a stop after each allowed. */
export function oneOf(words: readonly string[]): string {
  const parts = words
    .toSorted((a, b) => b.length - a.length)
    .map((word) => word.replace(/[.*+?^${}()|[\]\\]/gu, '\\$&'));
  return `(?:${parts.join('|')})(?![\\p{L}\\p{M}])\\.?`;
}

// The words are those of English, German, French, Italian, Spanish and Dutch catalogues and lists. Common practice.

export const LIKE = [
  'cf', 'cp', 'conf', 'confer', 'compare', 'comp', 'near', 'like', 'similar to', 'akin to', 'see', 'see also', 'as', 'cf. also', 'vgl', 'vergl',
  'vergleiche', 'vgl. auch', 'siehe', 'siehe auch', 'wie', 'zu', 'ähnlich', 'ähnlich wie', 'ähnl', 'cfr', 'voir', 'voir aussi', 'comme',
  'similaire à', 'proche de', 'vedi', 'come', 'simile a', 'véase', 'como', 'similar a', 'zie', 'vgl. ook', 'zoals', 'jf', 'jfr', 'jämför', 'por',
]; // prettier-ignore
const VARIANT = [
  'var',
  'vars',
  'variant',
  'variante',
  'variety',
  'varieté',
  'variété',
  'varietà',
  'varietät',
  'variedad',
];
const OF = [
  'of',
  'to',
  'on',
  'from',
  'von',
  'vom',
  'zu',
  'zur',
  'de',
  'du',
  'à',
  'di',
  'del',
  'van',
  'op',
  'bij',
  'av',
  'af',
  'til',
  'till',
];
const A = ['a', 'an', 'eine', 'ein', 'une', 'un', 'una', 'een', 'en'];
const CORRECTED = ['corr', 'corrigenda', 'corrigendum', 'corrected', 'korr'];
/** Said of a piece that no book has: `Unpublished; cf. RIC 45`. */
export const OF_ITSELF = [
  'unlisted', 'not listed', 'unrecorded', 'not recorded', 'unpublished', 'not published', 'unedited', 'unediert', 'unpubliziert', 'inédit', 'inédite', 'inedit', 'inedito',
  'inedita', 'inédito', 'inédita', 'onuitgegeven', 'opublicerad', 'upubliceret', 'nieopublikowany', 'nepublikováno',
]; // prettier-ignore
export const UNLISTED = [
  ...OF_ITSELF, 'missing', 'lacking', 'fehlt', 'fehlt bei', 'manque', 'manca', 'falta', 'absent from', 'absent de', 'not in', 'nicht in', 'nicht bei', 'nicht im', 'non in',
  'pas dans', 'pas chez', 'niet in', 'niet bij', 'no en', 'no consta en', 'no figura en', 'ikke i', 'inte i', 'ej i', 'saknas i', 'mangler i', 'brak w', 'brak u',
]; // prettier-ignore
/** Words before a book that say what entry a piece is not, or whose copy it is. */
const DENIED = [
  'not', 'not like', 'not as', 'unlike', 'never', 'neither', 'nor', 'other than', 'different from', 'differs from', 'differing from', 'distinct from', 'except',
  'rather than', 'instead of', 'against', 'contra', 'after', 'copy of', 'wrongly', 'falsely', 'erroneously', 'formerly', 'misattributed to', 'nicht',
  'nicht wie', 'kein', 'keine', 'anders als', 'verschieden von', 'statt', 'gegen', 'entgegen', 'nach', 'falsch', 'fälschlich', 'irrtümlich', 'früher', 'non',
  'jamais', 'différent de', 'au lieu de', 'contre', "d'après", 'd’après', 'à tort', 'diverso da', 'invece di', 'contro', 'distinto de', 'en lugar de', 'según',
  'niet', 'geen', 'anders dan', 'tegen', 'naar', 'noch', 'ikke', 'inte', 'ingen', 'efter', 'weder', '≠',
]; // prettier-ignore
const THIS = [
  'this coin', 'this piece', 'this specimen', 'this example', 'this medal', 'this token', 'this very coin', 'this exact coin', 'dieses exemplar',
  'dieses ex', 'dies ex', 'diese münze', 'cet exemplaire', 'cette monnaie', 'questo esemplare', 'este ejemplar', 'dit exemplaar',
]; // prettier-ignore
const MORE_OF_THIS = ['illustrated', 'cited', 'listed', 'pictured', 'published', 'abgebildet', 'illustré'];

/** What may stand before the name of a book. A small *s.* before a capital is German *siehe*. */
export const BEFORE: readonly (readonly [RegExp, Relation])[] = [
  [new RegExp(`^${oneOf(LIKE)}\\s*(?=\\S)`, 'iu'), 'cf.'],
  [/^s\.\s*(?=\p{Lu}[\p{L}\p{M}.&]*\s.*\d)/u, 'cf.'],
  [new RegExp(`^(?:${oneOf(A)}\\s+)?${oneOf(VARIANT)}\\s+(?:${oneOf(OF)}\\s+)?`, 'iu'), 'var.'],
  [new RegExp(`^${oneOf(UNLISTED)}\\s+(?:(?:in|to|by|from|bei|dans)\\s+)?`, 'iu'), 'unlisted'],
  [new RegExp(`^${oneOf(THIS)}(?:\\s+${oneOf(MORE_OF_THIS)})?\\s*(?:is|in|=|:|,)?\\s+`, 'iu'), 'this coin'],
];
/** `nicht RIC 123`, `not like North 1018`, `after RIC 123`. */
export const DENIED_BEFORE = new RegExp(`^(?!${oneOf(UNLISTED)})${oneOf(DENIED)}\\s*(?=\\S)`, 'iu');

/** What may stand behind the number. */
export const AFTER: readonly (readonly [RegExp, Relation])[] = [
  [new RegExp(`^(?:${oneOf(VARIANT)})(?:\\s*(?=[,;(]|$))?`, 'iu'), 'var.'],
  [new RegExp(`^(?:${oneOf(CORRECTED)})`, 'iu'), 'corr.'],
  [new RegExp(`^(?:${oneOf([...OF_ITSELF, 'unl', 'fehlt', 'manque', 'manca', 'falta', 'mangler', 'saknas'])})`, 'iu'), 'unlisted'],
  [new RegExp(`^(?:${oneOf(THIS)})(?:\\s+${oneOf(MORE_OF_THIS)})?`, 'iu'), 'this coin'],
]; // prettier-ignore

const DOUBTFUL = [
  'probably', 'possibly', 'perhaps', 'maybe', 'presumably', 'likely', 'most likely', 'seemingly', 'supposedly', 'prob', 'poss', 'apparently', 'wohl',
  'vermutlich', 'vielleicht', 'evtl', 'eventuell', 'möglicherweise', 'wahrscheinlich', 'wahrsch', 'anscheinend', 'vmtl', 'peut-être', 'probablement',
  'possiblement', 'sans doute', 'forse', 'probabilmente', 'possibilmente', 'quizá', 'quizás', 'tal vez', 'acaso', 'probablemente', 'posiblemente',
  'misschien', 'waarschijnlijk', 'vermoedelijk', 'mogelijk', 'kanske', 'måske', 'kanskje', 'troligen', 'sannolikt', 'formentlig', 'muligvis',
]; // prettier-ignore
/** `probably North 1018`, `? North 1018`. */
export const DOUBT = new RegExp(`^(?:${oneOf(DOUBTFUL)}\\s+|(?:\\?+|\\(\\?+\\))\\s*(?=\\p{L}))`, 'iu');

/** A bracket that says no more than that a piece is like the entry: `RIC 123 (cf.)`, `(similar)`. */
export const LIKE_ALONE = new RegExp(
  `^(?:${oneOf(['cf', 'cp', 'cfr', 'vgl', 'like', 'similar', 'similar to', 'ähnlich', 'ähnl', 'similaire', 'simile', 'jf', 'jfr', 'por'])})$`,
  'iu',
);
const WRONG = [
  'wrong', 'wrongly', 'error', 'erroneous', 'misprint', 'misprinted', 'recte', 'correctly', 'corrige', 'should be', 'sic', 'falsch', 'irrtümlich', 'fälschlich', 'richtig',
  'druckfehler', 'erreur', 'faux', 'coquille', 'errore', 'errato', 'erróneo', 'fout', 'drukfout', 'fel', 'feil',
]; // prettier-ignore
const DIFFERENT = [
  'without', 'but', 'different', 'differs', 'differ', 'differing', 'except', 'ohne', 'aber', 'jedoch', 'anders', 'andere', 'anderer', 'abweichend', 'weicht', 'sans', 'mais', 'différent',
  'différente', 'senza', 'ma', 'diverso', 'diversa', 'sin', 'pero', 'distinto', 'distinta', 'zonder', 'maar', 'afwijkend', 'utan', 'uden', 'uten',
]; // prettier-ignore
const WITHIN = (words: readonly string[]) => new RegExp(`(?<![\\p{L}\\p{M}])${oneOf(words)}`, 'iu');
// Small words of other languages, or names, that a note may have for itself.
const COMMON = new Set([
  'as', 'see', 'near', 'comp', 'por', 'come', 'como', 'wie', 'zu', 'after', 'nach', 'naar', 'formerly', 'früher', 'efter', 'según', 'against', 'gegen', 'contre', 'contro',
]); // prettier-ignore
/** A note that says of an entry that it is not this one, or is another; whatever the relation, or where none is stated. */
export const NOTE_IS_WRONG = WITHIN(WRONG);
/** Not the *no.* of a number. */
export const NOTE_HAS_NO = /(?<![\p{L}\p{M}])no(?![\p{L}\p{M}.]|\s*\d)/iu;
export const NOTE_DIFFERS = WITHIN([...LIKE, ...DENIED, ...UNLISTED, ...DIFFERENT].filter((word) => !COMMON.has(word)));

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
  `^([IVX]+(?:[./-]\\d[a-z]?|,?\\s(?:${oneOf(['part', 'pt', 'teil'])})\\s?(?:\\d|[IVX]+))?)(?:\\.(?=\\s))?(?=[\\s,:²³(]|$)`,
  'u',
);

/** `IVc`, `V.i`, `V(1)`, `IV iii`: a part by a letter, or small Roman figures; where volumes are counted. `I(2)` may be a second edition, and asks. */
export const VOLUME_BY_PART = /^([IVX]+)(?:[./-]?([a-e])|[./ -]\s?(i{1,3}|iv)|\(([ivx]{1,3})\))(?=[\s,:²³(]|$)/u;

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
  `^(?:${oneOf(anyCase(PAGES))}\\s?|[Pp](?:\\.\\s?|\\s)|p(?=\\d))((?:\\d+|${SMALL_ROMAN})(?:\\s?[-–]\\s?\\d+)?)(?![\\p{L}\\p{N}]|\\/\\d)`,
  'u',
);
const MORE = '(?:\\s?[-–]\\s?\\d+[a-z]?|\\s(?:and|und|et|e|y|&)\\s\\d+[a-z]?)?';
/** `pl. 5, 3`, `Taf. XII.4`, `pl. III, 4-6`, `pl. III.4 and 5`, `fig. 3`. */
export const PLATE = new RegExp(
  `^${oneOf(PLATES)}\\s?((?:${SMALL_ROMAN}|\\d+|[A-Z])(?:[ ,.:/]+(?:(?:${oneOf([...FIGURES, 'no', 'nr'])})\\s?)?\\d+[a-z]?${MORE})?)(?![\\p{L}\\p{N}]|\\s?[-–]\\s?\\d)`,
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
    ...PLATES, ...FIGURES, ...PAGES, ...CLASSES, ...LIKE, ...DENIED, ...DOUBTFUL, ...VARIANT, 'vol', 'volume', 'bd', 'band', 'tome', 'tomo', 'part', 'teil', 'ed', 'edn',
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

/** Particles that may open an author's name in small letters. */
const PARTICLES =
  'de|la|le|les|du|des|del|della|di|da|do|dos|van|von|vom|der|den|ten|ter|zu|zur|of|al|el|ibn|bin|af|av|st|mc|y|e';
const PARTICLE = new RegExp(`^(?:${PARTICLES}|d[’']\\p{Lu}.*)$`, 'u');
/** Books that are never a heading in another. */
const BOOKS = 'ric|rpc|rrc|rsc|bmcre|bmcrr|bmc|doc|mib|mec|km|esc|sng|crawford|sydenham|cohen|north|spink|dannenberg';
const ALWAYS_A_BOOK = new RegExp(`^(?:${BOOKS})$`, 'iu');
const WORDS = /[\p{L}\p{M}&.'’-]+/gu;

/** Whether the words before a figure are a word that was taken for a book, and then a book: `wibble RIC 123`, `Typ RIC 12`. */
export function namesBookInside(named: string, number: string, isKnown: boolean): boolean {
  const headings = (/^(?:\p{L}[\p{L}\p{M}.'’&-]*\s+)+/u.exec(number)?.[0].match(WORDS) ?? []).map(stopless);
  if (ALWAYS_A_BOOK.test(headings.length === 1 ? (headings[0] ?? '') : '')) return true;
  if (/^(?:RIC|RPC|RRC|BMC|KM)$/u.test(headings[0] ?? '')) return true;
  const [first = '', ...more] = [...(named.match(WORDS) ?? []).map(stopless), ...headings];
  const isKey = /^[a-z]+(?:-[a-z0-9]+)+$/u.test(first);
  const isPlain = !isKnown && /^\p{Ll}/u.test(first) && !PARTICLE.test(first) && !isKey;
  return isPlain && more.some((word) => /^\p{Lu}/u.test(word) && !isNeverABook(word));
}

function stopless(word: string): string {
  return word.replace(/\.$/u, '');
}

/** A figure lost or in brackets of its own, or a letter in brackets: `12[3]`, `?23`, `10..`, `123(a)`, `123 (a)`. */
export const PART_OF_NUMBER = new RegExp(
  [
    '[\\p{L}\\p{N}][[(](?:\\p{N}+|\\p{L}|[ivx]{1,4})[\\])]',
    '[[(]\\p{N}+[\\])]\\p{N}|\\?\\p{N}|\\p{N}\\.\\.',
    '\\p{N}\\s*\\((?![RSCNU]\\))(?:\\p{L}|[ivx]{1,4}|\\p{N}{1,3})\\)',
  ].join('|'),
  'u',
);

/** Books whose Roman figures are volumes, so that one alone is no number. */
export const COUNTED_BY_VOLUME = /^(?:ric|rpc|bmcre|doc|mec|mib|bmc)$/iu;
