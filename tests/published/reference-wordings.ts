/**
 * References as catalogues and lists print them, and what each is: key of the work without a list of works, then the number and
 * whatever was said beside it. All forms are from memory of the works named.
 */
export type ReferenceWording = {
  readonly text: string;
  readonly reads: readonly Readonly<Record<string, unknown>>[];
  readonly source: string;
};

const ROMAN = 'how museum catalogues cite The Roman Imperial Coinage (1923–2019), from memory';
const ENGLISH = 'how English lists cite J. J. North, English Hammered Coinage, and its companions, from memory';
const REPUBLIC = 'M. H. Crawford, Roman Republican Coinage (1974): every number is an issue and a coin';
const GERMAN = 'German catalogues, from memory';
const FRENCH = 'French catalogues, from memory';
const TOKENS = 'R. Dalton and S. H. Hamer, The Provincial Token-Coinage (1910–1918): by county, then number';
const GREEK = 'how sylloges of Greek coins are cited, from memory';
const TRADE = 'common practice';

export const REFERENCE_WORDINGS: readonly ReferenceWording[] = [
  { text: 'RIC II.1 (2nd ed.) 123', reads: [{ work: 'ric', volume: 'II.1', edition: 2, number: '123' }], source: ROMAN },
  { text: 'RIC II.1² 123', reads: [{ work: 'ric', volume: 'II.1', edition: 2, number: '123' }], source: ROMAN },
  { text: 'RIC I² 207', reads: [{ work: 'ric', volume: 'I', edition: 2, number: '207' }], source: ROMAN },
  { text: 'RIC I (second edition) 207', reads: [{ work: 'ric', volume: 'I', edition: 2, number: '207' }], source: ROMAN },
  { text: 'RIC V/1, 123', reads: [{ work: 'ric', volume: 'V/1', number: '123' }], source: ROMAN },
  { text: 'RIC V, part 1, 123', reads: [{ work: 'ric', volume: 'V.1', number: '123' }], source: ROMAN },
  { text: 'RIC vol. II, part 1, no. 123', reads: [{ work: 'ric', volume: 'II.1', number: '123' }], source: ROMAN },
  { text: 'RIC IV 161a', reads: [{ work: 'ric', volume: 'IV', number: '161a' }], source: ROMAN },
  { text: 'RIC VI Londinium 121a', reads: [{ work: 'ric', volume: 'VI', number: 'Londinium 121a' }], source: ROMAN },
  { text: 'RIC II, Trajan 243', reads: [{ work: 'ric', volume: 'II', number: 'Trajan 243' }], source: ROMAN },
  { text: 'RIC Trajan 243', reads: [{ work: 'ric', number: 'Trajan 243' }], source: ROMAN },
  { text: 'RIC II 243 var. (bust left)', reads: [{ work: 'ric', volume: 'II', number: '243', relation: 'var.', note: 'bust left' }], source: ROMAN },
  { text: 'RIC VII 45 corr. (rarity)', reads: [{ work: 'ric', volume: 'VII', number: '45', relation: 'corr.', note: 'rarity' }], source: ROMAN },
  { text: 'RIC -', reads: [{ work: 'ric', number: '', relation: 'unlisted' }], source: ROMAN },
  { text: 'RIC –, cf. 45', reads: [{ work: 'ric', number: '45', relation: 'unlisted' }], source: ROMAN },
  { text: 'RIC IV unlisted', reads: [{ work: 'ric', volume: 'IV', number: '', relation: 'unlisted' }], source: ROMAN },
  { text: 'RIC IV -', reads: [{ work: 'ric', volume: 'IV', number: '', relation: 'unlisted' }], source: ROMAN },
  { text: 'RIC II 243; BMC 12; Cohen 34', reads: [{ work: 'ric', volume: 'II', number: '243' }, { work: 'bmc', number: '12' }, { work: 'cohen', number: '34' }], source: ROMAN },
  { text: 'RIC 55, BMC 123', reads: [{ work: 'ric', number: '55' }, { work: 'bmc', number: '123' }], source: ROMAN },
  { text: 'BMC 123 = Cohen 34', reads: [{ work: 'bmc', number: '123' }, { work: 'cohen', number: '34' }], source: ROMAN },
  { text: 'Crawford 44/5', reads: [{ work: 'crawford', number: '44/5' }], source: REPUBLIC },
  { text: 'Crawford 494/23a', reads: [{ work: 'crawford', number: '494/23a' }], source: REPUBLIC },
  { text: 'RRC 340/1; Sydenham 661', reads: [{ work: 'rrc', number: '340/1' }, { work: 'sydenham', number: '661' }], source: REPUBLIC },
  { text: 'Crawford 480/2a-c', reads: [{ work: 'crawford', number: '480/2a', to: '480/2c' }], source: REPUBLIC },
  { text: 'North 1018', reads: [{ work: 'north', number: '1018', relation: 'is' }], source: ENGLISH },
  { text: 'North 1018/2', reads: [{ work: 'north', number: '1018/2' }], source: ENGLISH },
  { text: 'N. 1018', reads: [{ work: 'n', number: '1018' }], source: ENGLISH },
  { text: 'N1018', reads: [{ work: 'n', number: '1018' }], source: ENGLISH },
  { text: 'S-1492', reads: [{ work: 's', number: '1492' }], source: ENGLISH },
  { text: 'North 1018; Spink 1492', reads: [{ work: 'north', number: '1018' }, { work: 'spink', number: '1492' }], source: ENGLISH },
  { text: 'North 1018?', reads: [{ work: 'north', number: '1018', doubtful: true }], source: ENGLISH },
  { text: 'North 1018 (?)', reads: [{ work: 'north', number: '1018', doubtful: true }], source: ENGLISH },
  { text: 'possibly North 1018', reads: [{ work: 'north', number: '1018', doubtful: true }], source: ENGLISH },
  { text: 'North 1018var', reads: [{ work: 'north', number: '1018', relation: 'var.' }], source: ENGLISH },
  { text: 'cf. North 1018', reads: [{ work: 'north', number: '1018', relation: 'cf.' }], source: ENGLISH },
  { text: 'North 10.18', reads: [{ work: 'north', number: '10.18' }], source: 'a point and a stroke are different numbers' },
  { text: 'North 10/18', reads: [{ work: 'north', number: '10/18' }], source: 'a point and a stroke are different numbers' },
  { text: 'North no. 1022/3', reads: [{ work: 'north', number: '1022/3' }], source: 'with no. it is one number, as the question says' },
  { text: 'ESC 123 (R2)', reads: [{ work: 'esc', number: '123', rarity: 'R2' }], source: ENGLISH },
  { text: 'ESC 123, R2', reads: [{ work: 'esc', number: '123', rarity: 'R2' }], source: ENGLISH },
  { text: 'North 1018; R2', reads: [{ work: 'north', number: '1018', rarity: 'R2' }], source: ENGLISH },
  { text: 'Price P123', reads: [{ work: 'price', number: 'P123' }], source: 'M. J. Price numbers Philip III from P1, from memory' },
  { text: 'KM P12', reads: [{ work: 'km', number: 'P12' }], source: 'P before the numbers of piedforts, common practice' },
  { text: 'North 1018, P. 44', reads: [{ work: 'north', number: '1018', page: '44' }], source: ENGLISH },
  { text: 'Peck 1234*', reads: [{ work: 'peck', number: '1234*' }], source: 'C. W. Peck marks specimens with an asterisk, from memory' },
  { text: 'H & L 417', reads: [{ work: 'h-l', number: '417' }], source: 'a book of two authors' },
  { text: 'D&H Middlesex 39a', reads: [{ work: 'd-h', number: 'Middlesex 39a' }], source: TOKENS },
  { text: 'Dalton & Hamer, Devon 2', reads: [{ work: 'dalton-hamer', number: 'Devon 2' }], source: TOKENS },
  { text: 'D & H Middlesex 39a', reads: [{ work: 'd-h', number: 'Middlesex 39a' }], source: TOKENS },
  { text: 'D. and H. Middlesex 39a', reads: [{ work: 'd-h', number: 'Middlesex 39a' }], source: TOKENS },
  { text: 'Dalton&Hamer Devon 2', reads: [{ work: 'dalton-hamer', number: 'Devon 2' }], source: TOKENS },
  { text: 'Vives 84-7', reads: [{ work: 'vives', number: '84-7' }], source: 'A. Vives, La moneda hispánica (1926): plate and number' },
  { text: 'Heiss 12-3', reads: [{ work: 'heiss', number: '12-3' }], source: 'A. Heiss, Monnaies antiques de l’Espagne (1870): plate and number' },
  { text: 'HMZ 2-345a', reads: [{ work: 'hmz', number: '2-345a' }], source: 'the Swiss handbook, by volume and number; from memory' },
  { text: 'JNDA 01-23', reads: [{ work: 'jnda', number: '01-23' }], source: 'the Japanese catalogue, by chapter and number; from memory' },
  { text: 'North no. 2-345', reads: [{ work: 'north', number: '2-345' }], source: 'with no. it is one number, as the question says' },
  { text: 'VA 1526-9', reads: [{ work: 'va', number: '1526-9' }], source: 'R. D. Van Arsdell, Celtic Coinage of Britain (1989)' },
  ...[
    ['RIC² 123', 'ric', 2, '123'], ['North³ 1018', 'north', 3, '1018'], ['North³, 1018', 'north', 3, '1018'], ['North (3rd) 1018', 'north', 3, '1018'],
    ['North 3rd 1018', 'north', 3, '1018'], ['Sear (5th) 1234', 'sear', 5, '1234'], ['Dav.² 12', 'dav', 2, '12'], ['ESC⁷ 123', 'esc', 7, '123'],
    ['Calicó² 12', 'calicó', 2, '12'], ['Seaby¹² 345', 'seaby', 12, '345'], ['RSC² 12', 'rsc', 2, '12'], ['Jaeger (12. Aufl.) 345', 'jaeger', 12, '345'],
  ].map(([text = '', work, edition, number]) => ({ text: String(text), reads: [{ work, edition, number }], source: 'an edition by a raised figure or an ordinal; New Hart’s Rules and common practice' })),
  { text: 'RIC II² 123', reads: [{ work: 'ric', edition: 2, volume: 'II', number: '123' }], source: ROMAN },
  ...[
    ['North 199-203a', '199', '203a'], ['North 199a-203', '199a', '203'], ['North 199a-203b', '199a', '203b'], ['North 1018a-1019b', '1018a', '1019b'],
    ['North 123-125a', '123', '125a'], ['North 123-5', '123', '125'], ['North 1198-205', '1198', '1205'], ['North 123 - 125', '123', '125'],
    ['North 12-12a', '12', '12a'], ['North 25.1-.3', '25.1', '25.3'], ['North 1018A-1018C', '1018A', '1018C'], ['North 12a-14', '12a', '14'],
  ].map(([text = '', number, to]) => ({ text, reads: [{ work: 'north', number, to }], source: 'several numbers as lists print them; common practice' })),
  { text: 'Van Arsdell 52-1', reads: [{ work: 'van-arsdell', number: '52-1' }], source: 'R. D. Van Arsdell, Celtic Coinage of Britain (1989)' },
  { text: 'KM# 12.1', reads: [{ work: 'km', number: '12.1' }], source: TRADE },
  { text: 'KM-25', reads: [{ work: 'km', number: '25' }], source: TRADE },
  { text: 'Y#12', reads: [{ work: 'y', number: '12' }], source: TRADE },
  { text: 'Dav. LS 123', reads: [{ work: 'dav', number: 'LS 123' }], source: 'J. S. Davenport numbers his large-size thalers LS, from memory' },
  { text: 'Koch vol. 2, page 446, class 4', reads: [{ work: 'koch', volume: '2', page: '446', number: 'class 4' }], source: TRADE },
  { text: 'BMC 123, p. 45', reads: [{ work: 'bmc', number: '123', page: '45' }], source: TRADE },
  { text: 'BMC p. 45, 123', reads: [{ work: 'bmc', number: '123', page: '45' }], source: TRADE },
  { text: 'BMC 123, pl. 5, 3', reads: [{ work: 'bmc', number: '123', plate: '5, 3' }], source: TRADE },
  { text: 'Hill 12, pl. V.3 (this coin)', reads: [{ work: 'hill', number: '12', plate: 'V.3', relation: 'this coin' }], source: TRADE },
  { text: 'Hill 12 (this coin illustrated)', reads: [{ work: 'hill', number: '12', relation: 'this coin' }], source: TRADE },
  { text: 'SNG Copenhagen 123', reads: [{ work: 'sng', number: 'Copenhagen 123' }], source: GREEK },
  { text: 'SNG ANS 123-5; BMC Galatia 45', reads: [{ work: 'sng', number: 'ANS 123', to: 'ANS 125' }, { work: 'bmc', number: 'Galatia 45' }], source: GREEK },
  { text: 'Vgl. Dannenberg 12', reads: [{ work: 'dannenberg', number: '12', relation: 'cf.' }], source: GERMAN },
  { text: 'Dannenberg Bd. 2, Nr. 1234, Taf. 12, 5', reads: [{ work: 'dannenberg', volume: '2', number: '1234', plate: '12, 5' }], source: GERMAN },
  { text: 'Dannenberg 12 (dieses Exemplar)', reads: [{ work: 'dannenberg', number: '12', relation: 'this coin' }], source: GERMAN },
  { text: 'Dannenberg 12, Taf. 3 (2. Aufl.)', reads: [{ work: 'dannenberg', number: '12', plate: '3', note: '2. Aufl.' }], source: GERMAN },
  { text: 'fehlt bei Dannenberg', reads: [{ work: 'dannenberg', number: '', relation: 'unlisted' }], source: GERMAN },
  { text: 'Ciani 12 bis', reads: [{ work: 'ciani', number: '12 bis' }], source: FRENCH },
  { text: 'Duplessy 123 (cet exemplaire)', reads: [{ work: 'duplessy', number: '123', relation: 'this coin' }], source: FRENCH },
  { text: 'Duplessy t. II, 123', reads: [{ work: 'duplessy', volume: 'II', number: '123' }], source: FRENCH },
  { text: 'DOC III.2 45', reads: [{ work: 'doc', volume: 'III.2', number: '45' }], source: 'P. Grierson, Catalogue of the Byzantine Coins (1966–1973), from memory' },
  ...[
    'zu RIC 123', 'Zu RIC 123', 'ähnlich RIC 123', 'ähnlich wie RIC 123', 'siehe RIC 123', 's. RIC 123', 'wie RIC 123', 'vgl. auch RIC 123', 'come RIC 123', 'vedi RIC 123',
    'simile a RIC 123', 'como RIC 123', 'véase RIC 123', 'voir aussi RIC 123', 'similaire à RIC 123', 'zie RIC 123', 'por. RIC 123', 'jf. RIC 123', 'jfr RIC 123', 'see also RIC 123',
    'RIC 123 (cf.)', 'RIC 123 (similar)', 'RIC 123 (vgl.)', 'RIC 123 (ähnlich)',
  ].map((text) => ({ text, reads: [{ work: 'ric', number: '123', relation: 'cf.' }], source: 'like an entry, in nine languages; common practice' })),
  ...[
    'evtl. RIC 123', 'vielleicht RIC 123', 'möglicherweise RIC 123', 'maybe RIC 123', 'presumably RIC 123', 'perhaps RIC 123', '? RIC 123', 'probablement RIC 123', 'forse RIC 123',
    'quizás RIC 123', 'tal vez RIC 123', 'misschien RIC 123', 'RIC 123 (perhaps)', 'RIC 123 (evtl.)',
  ].map((text) => ({ text, reads: [{ work: 'ric', number: '123', doubtful: true }], source: 'an entry in doubt, in six languages; common practice' })),
  ...[
    'Var. zu RIC 123', 'Variante zu RIC 123', 'var. von RIC 123', 'variante de RIC 123', 'variante di RIC 123', 'a variant of RIC 123', 'Variante von RIC 123', 'variant op RIC 123', 'variety of RIC 123',
  ].map((text) => ({ text, reads: [{ work: 'ric', number: '123', relation: 'var.' }], source: 'a variety of an entry; common practice' })),
  ...['RIC 123 (var.?)', 'RIC 123 (possibly var.)', 'perhaps a variety of RIC 123'].map((text) => ({ text, reads: [{ work: 'ric', number: '123', relation: 'var.', doubtful: true }], source: 'two things said at once; common practice' })),
  ...['not in RIC', 'nicht in RIC', 'nicht bei RIC', 'fehlt bei RIC', 'non in RIC', 'niet in RIC', 'RIC -', 'RIC unlisted'].map((text) => ({ text, reads: [{ work: 'ric', number: '', relation: 'unlisted' }], source: 'a book that lacks the piece; common practice' })),
  ...[
    ['De la Tour 123', 'de-la-tour', '123'], ['de la Tour 123', 'de-la-tour', '123'], ['von Kaenel 12', 'von-kaenel', '12'], ['Van Hengel 3', 'van-hengel', '3'], ['Le Rider 12', 'le-rider', '12'],
    ['van der Chijs 12', 'van-der-chijs', '12'], ['de Saulcy 12', 'de-saulcy', '12'], ['Du Molinet 5', 'du-molinet', '5'], ["D'Arcy 12", "d'arcy", '12'], ['dalton-hamer Devon 2', 'dalton-hamer', 'Devon 2'],
    ['PAS 1234', 'pas', '1234'],
  ].map(([text = '', work, number]) => ({ text, reads: [{ work, number }], source: 'names of authors and books that begin like other words; common practice' })),
  { text: 'RIC II. 123', reads: [{ work: 'ric', volume: 'II', number: '123' }], source: 'a volume with a stop; common practice' },
  { text: 'RIC II.1. 123', reads: [{ work: 'ric', volume: 'II.1', number: '123' }], source: 'a volume with a stop; common practice' },
  ...['spear against shoulder', 'lot no. 12', 'bust left', 'as struck'].map((note) => ({ text: `RIC 123 (${note})`, reads: [{ work: 'ric', number: '123', note }], source: 'a note that says nothing against the entry; common practice' })),
  { text: 'RIC 123 var. (no star)', reads: [{ work: 'ric', number: '123', relation: 'var.', note: 'no star' }], source: 'what a variety lacks; common practice' },
]; // prettier-ignore

/** What may be two things, or holds what is no reference: asked about, with words that must be in the question. */
export const REFERENCE_QUESTIONS: readonly { readonly text: string; readonly says: string; readonly source: string }[] = [
  { text: 'North 1022/3', says: '1022 to 1023', source: 'lists cut ranges short with a stroke, and books number with one' },
  { text: 'Spink 1492A/B', says: '1492A to 1492B', source: TRADE },
  { text: 'RIC 12, 15', says: 'does not say which book', source: TRADE },
  { text: 'BMC 123, Trajan 55', says: 'does not say which book', source: 'Trajan is a heading of the book and no book' },
  { text: 'Trajan 243', says: 'does not begin with a work', source: 'Trajan is a heading of the book and no book' },
  { text: 'vol. 2, page 446, class 4', says: 'does not begin with a work', source: 'a volume, a page and a class are no book' },
  { text: 'p. 45, 3', says: 'does not begin with a work', source: 'a page is no book' },
  { text: 'pl. 5, 3', says: 'does not begin with a work', source: 'a plate is no book' },
  { text: '1018var', says: 'does not begin with a work', source: TRADE },
  { text: 'RIC V', says: 'does not begin with a work', source: 'RIC counts by volumes: V alone is no number' },
  { text: 'BMC 123 RIC 55', says: 'BMC 123; RIC 55', source: TRADE },
  { text: 'North 1018 nice toning', says: '"nice toning"', source: TRADE },
  { text: 'cf. RIC II 243 var.', says: 'Write RIC II 243 var., or cf. RIC II 243.', source: TRADE },
  ...[
    ['North 123f', 'North 123 (and following), or North no. 123f'], ['RIC II 123f', 'RIC II 123 (and following), or RIC II no. 123f'], ['North 123f.', 'and following'], ['North 123 f', 'and following'],
    ['North 123ff', 'and following'], ['North 123 ff.', 'more numbers follow'], ['North 123 sq.', 'more numbers follow'], ['North 123 sqq.', 'more numbers follow'],
    ['North 123 et seq.', 'more numbers follow'], ['North 123 u. folg.', 'more numbers follow'], ['North 123 et suiv.', 'more numbers follow'],
    ['North 123 ss.', 'more numbers follow'], ['North 123s', 'and following'], ['North 123 e.v.', 'more numbers follow'], ['North 12-15 passim', 'more numbers follow'],
  ].map(([text = '', says = '']) => ({ text, says, source: '“and following” in six languages; common practice' })),
  ...[
    ['SNG Cop 1198-05', '1198-1205'], ['North 1198-00', '1198-1200'], ['North 1018i-iii', 'no. 1018i-iii'], ['North 1018I-III', 'several numbers'],
    ['North 120-1-2', 'several numbers'], ['North 1198-9-1200', 'several numbers'], ['Price 123-P125', 'several numbers'], ['North 123+125', 'several numbers'],
    ['Crawford 44/5-6/7', 'several numbers'], ['North 203-199', 'several numbers'], ['North 123-f', 'several numbers'], ['North 123, 125', 'does not say which book'],
    ['North 1018³', '"³"'],
  ].map(([text = '', says = '']) => ({ text, says, source: 'several numbers that are no plain range; common practice' })),
  ...[
    ['North 12/13', '12 to 13'], ['North 2/3', '2 to 3'], ['North 123a/124', 'one number with a stroke'], ['North 2-345', 'no. 2-345'], ['SCBI 45-123', 'no. 45-123'], ['KM 45.1/45.2', 'one number with a stroke'],
    ['Mack A12/B13', 'one number with a stroke'], ['RIC 12a R', 'RIC 12a (R), or RIC 12aR'], ['North 01-23', 'no. 01-23'],
  ].map(([text = '', says = '']) => ({ text, says, source: 'two numbers, or one number of a book that numbers so; common practice' })),
  ...['R', 'S', 'C', 'N', 'U'].map((letter) => ({ text: `RIC 123 ${letter}`, says: `RIC 123 (${letter}), or RIC 123${letter}`, source: 'a degree of rarity or a letter of the number; common practice' })),
  ...[
    'not RIC 123', 'not like RIC 123', 'not as RIC 123', 'unlike RIC 123', 'Unlike RIC 123', 'different from RIC 123', 'other than RIC 123', 'after RIC 123', 'contra RIC 123', 'nicht RIC 123', 'nicht wie RIC 123',
    'anders als RIC 123', 'nach RIC 123', 'statt RIC 123', 'non RIC 123', 'jamais RIC 123', 'différent de RIC 123', 'diverso da RIC 123', 'distinto de RIC 123', 'niet RIC 123', 'anders dan RIC 123', 'ikke RIC 123',
    'inte RIC 123', 'wrongly RIC 123', 'formerly RIC 123', 'probably not RIC 123', 'North 12; nicht RIC 123',
  ].map((text) => ({ text, says: 'does not say that the piece is in that entry', source: 'an entry denied, in eight languages; common practice' })),
  ...['wibble RIC 123', 'wibble North 12', 'wibble Dannenberg 12', 'Wibble RIC 123', 'ungefähr RIC II 123', 'pas RIC 123', 'RIC Not 123'].map((text) => ({ text, says: 'is not understood, or names two works', source: 'a word before a book that is no part of its name' })),
  ...['not in RIC 123', 'RIC 123 unlisted', 'fehlt RIC 123'].map((text) => ({ text, says: 'RIC – (cf. 123)', source: 'a book cannot lack a piece and number it' })),
  ...[
    'RIC II 12[3]', 'North 101[8]', 'North 1[01]8', 'North 10(18)', 'RIC II ?23', 'North ?18', 'North 10..', 'RIC 123(a)', 'RIC 123 (a)', 'RIC 123[a]', 'RIC 123(ii)', 'RIC 123 (2)',
  ].map((text) => ({ text, says: 'may be part of the number', source: 'figures restored, lost or in brackets; the signs of editors of inscriptions, and common practice' })),
  ...[
    'not in', 'no', 'wrong', 'recte 132', 'misprint for 132', 'nicht dieses', 'but obv. legend differs', 'not this', 'no star', 'without star', 'ohne Stern', 'sans étoile', 'senza stella', 'different die', 'falsch', 'cf. 132',
    'like new', 'except legend', 'Druckfehler', 'this coin not',
  ].map((note) => ({ text: `RIC 123 (${note})`, says: 'may say that the piece is not that entry', source: 'a bracket that takes an entry back; common practice' })),
  ...['RIC 123 var. (wrong)', 'cf. RIC 123 (recte 132)'].map((text) => ({ text, says: 'or the right number', source: 'a number taken back; common practice' })),
  { text: 'RIC II p. 45/123', says: '"p. 45/123"', source: 'pages, or a page and a number' },
  { text: 'RIC II, S. 123', says: 'RIC II p. 123, or RIC II S123', source: 'S. is German for page' },
]; // prettier-ignore

/** A part of a volume, as catalogues name it by a letter, small Roman figures or a figure behind a mark; each is the third part of volume IV. */
export const VOLUME_PARTS = [
  'RIC IVc 123', 'RIC IVc, 123', 'RIC IV.c 123', 'RIC IV/c 123', 'RIC IV.3 123', 'RIC IV/3 123', 'RIC IV-3 123', 'RIC IV(iii) 123', 'RIC IV.iii 123',
  'RIC IV iii 123', 'RIC IV, part 3, 123', 'RIC IV, part III, 123',
]; // prettier-ignore

/** Plates with several figures, as sylloges and studies of dies cite them. */
export const PLATES_WITH_FIGURES = [
  ['BMC 12 pl. III, 4', '12', 'III, 4'], ['BMC 12, pl. III, 4', '12', 'III, 4'], ['BMC 12, pl. III.4', '12', 'III.4'], ['Svoronos pl. III, 4-6', '', 'III, 4-6'], ['BMC 12 pl. III.4 and 5', '12', 'III.4 and 5'],
  ['BMC 12, Taf. III, 4-6', '12', 'III, 4-6'], ['Hill 3, pl. IV, 2 & 3', '3', 'IV, 2 & 3'],
] as const; // prettier-ignore

/** What names two numbers, or a book by a letter alone, and what is offered. */
export const NUMBERS_TO_PART = [
  ['KM 123.1, 123.2', 'Write KM 123.1; KM 123.2.'], ['KM 123.1 and 123.2', 'KM 123.1; KM 123.2.'], ['RIC 123 and 124', 'RIC 123; RIC 124.'], ['RIC 123 & 124', 'RIC 123; RIC 124.'],
  ['RIC II 123 und 124', 'RIC II 123; RIC II 124.'], ['RIC 123 or 124', 'RIC 123 (?); RIC 124 (?).'], ['RIC 123 oder 124', 'RIC 123 (?); RIC 124 (?).'], ['RIC IV, 3, 123', 'write RIC IV.3 123'],
  ['HGC 4, 1597', 'write HGC vol. 4, 1597'], ['SCBI 20, 123', 'write SCBI vol. 20, 123'], ['C 45', 'stands for several'], ['C. 45', 'stands for several'], ['RIC 123, C 45', 'C stands for several'],
] as const; // prettier-ignore

/** A book that lacks the piece, in the words of catalogues: never a number of it, at most one it is like. */
export const UNLISTED_WORDINGS: readonly ReferenceWording[] = [
  { text: 'Unpublished; cf. RIC 45', reads: [{ work: 'ric', number: '45', relation: 'unlisted' }], source: ROMAN },
  { text: 'Unpublished, cf. RIC 45', reads: [{ work: 'ric', number: '45', relation: 'unlisted' }], source: ROMAN },
  { text: 'unpublished (cf. RIC 45)', reads: [{ work: 'ric', number: '45', relation: 'unlisted' }], source: ROMAN },
  { text: 'Unpublished in the standard references; cf. RIC 45', reads: [{ work: 'ric', number: '45', relation: 'unlisted' }], source: ROMAN },
  { text: 'unlisted in RIC, cf. 45', reads: [{ work: 'ric', number: '45', relation: 'unlisted' }], source: ROMAN },
  { text: 'unlisted in RIC (cf. 45)', reads: [{ work: 'ric', number: '45', relation: 'unlisted' }], source: ROMAN },
  { text: 'Not in RIC; cf. 45', reads: [{ work: 'ric', number: '45', relation: 'unlisted' }], source: ROMAN },
  { text: 'RIC --, cf. 45', reads: [{ work: 'ric', number: '45', relation: 'unlisted' }], source: ROMAN },
  { text: 'Unediert, vgl. RIC 45', reads: [{ work: 'ric', number: '45', relation: 'unlisted' }], source: GERMAN },
  { text: 'fehlt bei RIC, vgl. 45', reads: [{ work: 'ric', number: '45', relation: 'unlisted' }], source: GERMAN },
  { text: 'inédit, cf. RIC 45', reads: [{ work: 'ric', number: '45', relation: 'unlisted' }], source: FRENCH },
  { text: 'apparently unpublished; cf. RIC 45', reads: [{ work: 'ric', number: '45', relation: 'unlisted', doubtful: true }], source: ROMAN },
  { text: 'not in North', reads: [{ work: 'north', number: '', relation: 'unlisted' }], source: ENGLISH },
  { text: 'not recorded in North', reads: [{ work: 'north', number: '', relation: 'unlisted' }], source: ENGLISH },
  { text: 'North unl.', reads: [{ work: 'north', number: '', relation: 'unlisted' }], source: ENGLISH },
  { text: 'North – (cf. 1018)', reads: [{ work: 'north', number: '1018', relation: 'unlisted' }], source: ENGLISH },
  { text: 'not in RIC or BMC', reads: [{ work: 'ric', number: '', relation: 'unlisted' }, { work: 'bmc', number: '', relation: 'unlisted' }], source: ROMAN },
  { text: 'Unpublished; cf. RIC 45 and BMC 12', reads: [{ work: 'ric', number: '45', relation: 'unlisted' }, { work: 'bmc', number: '12', relation: 'unlisted' }], source: ROMAN },
  { text: 'RIC vgl. 45', reads: [{ work: 'ric', number: '45', relation: 'cf.' }], source: GERMAN },
  { text: 'Cf. N 1018 but different bust', reads: [{ work: 'n', number: '1018', relation: 'cf.', note: 'but different bust' }], source: ENGLISH },
  { text: 'cf. N 1018, but different bust', reads: [{ work: 'n', number: '1018', relation: 'cf.', note: 'but different bust' }], source: ENGLISH },
  { text: 'Cf. N 1018, but reverse as N 1020', reads: [{ work: 'n', number: '1018', relation: 'cf.', note: 'but reverse as N 1020' }], source: ENGLISH },
  { text: 'Hede - (jfr 45)', reads: [{ work: 'hede', number: '45', relation: 'unlisted' }], source: TRADE },
  { text: 'saknas i Hede', reads: [{ work: 'hede', number: '', relation: 'unlisted' }], source: TRADE },
  { text: 'mangler i Hede', reads: [{ work: 'hede', number: '', relation: 'unlisted' }], source: TRADE },
]; // prettier-ignore
