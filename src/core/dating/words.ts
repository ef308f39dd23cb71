/**
 * The words of the grammar, English first, then as lists in German, French, Latin, Italian, Spanish and Dutch print
 * them, and "about" in a few languages more. Adding a language is adding words here.
 */

export const ABOUT = [
  ...['c.', 'ca.', 'ca', 'c', 'cir.', 'circa', 'about', 'around', 'approx.', 'approximately', 'roughly', '~', '±'],
  ...['um', 'etwa', 'ungefähr', 'gegen', 'zirka', 'vers', 'environ', 'env.', 'verso il', 'hacia', 'circiter'],
  ...['omstreeks', 'ongeveer', 'rond', 'verso', 'intorno al', 'attorno al', 'alrededor de', 'cerca de'],
  ...['omkring', 'cirka', 'por volta de', 'około', 'ok.', 'kolem', 'около', 'ок.'],
];

export const PERHAPS = [
  ...['perhaps', 'possibly', 'probably', 'presumably', 'maybe', 'prob.', 'poss.', '?'],
  ...['vielleicht', 'wohl', 'vermutlich', 'wahrscheinlich', 'peut-être', 'probablement', 'fortasse'],
  ...['misschien', 'wellicht', 'mogelijk', 'waarschijnlijk', 'vermoedelijk', 'forse', 'probabilmente'],
  ...['quizás', 'quizá', 'probablemente'],
];

/** Words that carry no meaning for the date and may stand before it. */
export const ASIDE = [
  ...['the', 'in', 'the year', 'year', 'dated', 'the years', 'years', 'during', 'reign of the'],
  ...['im Jahre', 'im Jahr', 'Jahr', 'das', 'dem', 'im', 'den', 'en', "l'an", 'le', 'la', "l'année", 'anno'],
  ...['il', 'nel', "nell'anno", 'el', 'el año', 'en el año', 'het', 'het jaar', 'in het jaar'],
];

/** What was done in the year that follows: `struck 1279-81`. It is the date made, which is the one wanted. */
export const STRUCK = [
  ...['struck', 'minted', 'coined', 'issued', 'geprägt', 'frappé', 'frappée', 'coniato', 'coniata'],
  ...['acuñado', 'acuñada', 'geslagen'],
];

export const UNDATED = [
  ...['n.d.', 'n. d.', 'nd', 'no date', 'undated', 'date unknown', 'not dated', 'unknown'],
  ...[
    'o.J.',
    'o. J.',
    'ohne Jahr',
    'undatiert',
    's.d.',
    's. d.',
    'sans date',
    'non daté',
    's.a.',
    's. a.',
    'sine anno',
  ],
  ...['z.j.', 'z. j.', 'zonder jaar', 'zonder jaartal', 'ongedateerd', 'senza data', 'sin fecha'],
];

export const OR = ['or', 'or else', 'oder', 'ou', 'vel', 'aut', 'o', 'oppure'];
export const AND = ['and', 'und', 'et', '&', 'en', 'e', 'y'];
export const TO = [
  'to',
  '-',
  'until',
  'till',
  'through',
  'up to',
  'bis',
  'à',
  'au',
  "jusqu'à",
  "jusqu'en",
  'ad',
  'usque ad',
  ...['tot', 'tot en met', 't/m', 'al', 'fino al', 'a', 'hasta'],
];
export const FROM = ['from', 'von', 'de', 'ab', 'a', 'van', 'dal', 'desde'];
export const BETWEEN = ['between', 'btw.', 'betw.', 'zwischen', 'entre', 'inter', 'tussen', 'tra', 'fra'];

export const BEFORE_CHRIST = [
  ...['BC', 'B.C.', 'BCE', 'B.C.E.', 'v. Chr.', 'v. Chr', 'vor Chr.', 'vor Christus', 'v. u. Z.'],
  ...['av. J.-C.', 'av. J.C.', 'av. J. C.', 'avant J.-C.', 'avant Jésus-Christ', 'av. n. è.', 'avant notre ère'],
  ...['a. C.', 'aC', 'a. C. n.', 'a. Chr.', 'a. Chr. n.', 'ante Christum', 'ante Christum natum'],
  ...['voor Chr.', 'voor Christus', 'avanti Cristo', 'a. de C.', 'a. de J.C.', 'antes de Cristo'],
];

export const AFTER_CHRIST = [
  ...['AD', 'A.D.', 'CE', 'C.E.', 'n. Chr.', 'n. Chr', 'nach Chr.', 'nach Christus', 'u. Z.'],
  ...['ap. J.-C.', 'apr. J.-C.', 'ap. J.C.', 'après J.-C.', 'de n. è.', 'de notre ère'],
  ...['d. C.', 'dC', 'p. C.', 'p. Chr.', 'p. Chr. n.', 'post Christum', 'post Christum natum', 'anno Domini'],
  ...['na Chr.', 'na Christus', 'dopo Cristo', 'd. de C.', 'd. de J.C.', 'después de Cristo'],
];

/** Which end a word fixes, and whether the year it names is itself allowed. */
export interface BoundWord {
  readonly words: readonly string[];
  readonly fixes: 'earliest' | 'latest';
  readonly nameIsAllowed: boolean;
  /** The other end: not known, or open because the words say that it goes on. */
  readonly other: null | 'open';
}

export const BOUND_WORDS: readonly BoundWord[] = [
  {
    words: [
      ...['before', 'bef.', 'ante', 'prior to', 'earlier than', 'pre', 'vor', 'avant', 'antes de', 'prima del', '<'],
      ...['voor', 'vóór'],
    ],
    fixes: 'latest',
    nameIsAllowed: false,
    other: null,
  },
  {
    words: [
      ...[
        'by',
        'not after',
        'not later than',
        'no later than',
        'at the latest',
        'terminus ante quem',
        'taq',
        'TAQ',
        't.a.q.',
      ],
      ...['in or before', 'spätestens', 'non post', 'pas après', 'au plus tard'],
      ...['uiterlijk', 'niet na', 'niet later dan', 'no después de', 'non dopo il'],
    ],
    fixes: 'latest',
    nameIsAllowed: true,
    other: null,
  },
  {
    words: ['after', 'aft.', 'post', 'later than', 'nach', 'après', 'después de', 'dopo il', 'na', '>'],
    fixes: 'earliest',
    nameIsAllowed: false,
    other: null,
  },
  {
    words: [
      ...['not before', 'not earlier than', 'no earlier than', 'in or after', 'terminus post quem', 'tpq', 't.p.q.'],
      ...['frühestens', 'nicht vor', 'non ante', 'pas avant', 'au plus tôt'],
      ...['niet voor', 'niet vóór', 'niet eerder dan', 'no antes de', 'non prima del'],
    ],
    fixes: 'earliest',
    nameIsAllowed: true,
    other: null,
  },
  {
    words: ['until', 'up to', 'till', 'bis', "jusqu'en", "jusqu'à", 'tot', 'fino al', 'hasta'],
    fixes: 'latest',
    nameIsAllowed: true,
    other: 'open',
  },
  {
    words: ['from', 'since', 'ab', 'seit', 'dès', 'depuis', 'à partir de', 'vanaf', 'sinds', 'dal', 'desde'],
    fixes: 'earliest',
    nameIsAllowed: true,
    other: 'open',
  },
];

/** What may follow a year from which a thing goes on. */
export const ONWARDS = ['onwards', 'onward', 'to date', 'to the present', 'to present', 'and still current', 'ff.'];

/** Spring to winter, EDTF's 21 to 24. */
export const SEASONS: readonly (readonly string[])[] = [
  ['spring', 'frühling', 'frühjahr', 'printemps', 'vere', 'primavera', 'lente', 'voorjaar'],
  ['summer', 'sommer', 'été', 'aestate', 'estate', 'verano', 'zomer'],
  ['autumn', 'fall', 'herbst', 'automne', 'autumno', 'autunno', 'otoño', 'herfst'],
  ['winter', 'hiver', 'hieme', 'inverno', 'invierno'],
];

/** Months, each by the beginnings that name it in the languages above; a full stop may follow. */
export const MONTHS: readonly (readonly string[])[] = [
  ['January', 'Jan', 'Januar', 'Jänner', 'janvier', 'janv', 'Ianuarii', 'Ianuarius', 'gennaio', 'enero', 'januari'],
  ['February', 'Feb', 'Februar', 'février', 'févr', 'Februarii', 'Februarius', 'febbraio', 'febrero', 'februari'],
  ['March', 'Mar', 'März', 'mars', 'Martii', 'Martius', 'marzo', 'maart'],
  ['April', 'Apr', 'avril', 'avr', 'Aprilis', 'aprile', 'abril'],
  ['May', 'Mai', 'Maii', 'Maius', 'maggio', 'mayo', 'mei'],
  ['June', 'Jun', 'Juni', 'juin', 'Iunii', 'Iunius', 'giugno', 'junio'],
  ['July', 'Jul', 'Juli', 'juillet', 'juil', 'Iulii', 'Iulius', 'luglio', 'julio'],
  ['August', 'Aug', 'août', 'Augusti', 'Augustus', 'agosto'],
  ['September', 'Sept', 'Sep', 'septembre', 'Septembris', 'settembre', 'septiembre'],
  ['October', 'Oct', 'Oktober', 'Okt', 'octobre', 'Octobris', 'ottobre', 'octubre'],
  ['November', 'Nov', 'novembre', 'Novembris', 'noviembre'],
  ['December', 'Dec', 'Dezember', 'Dez', 'décembre', 'déc', 'Decembris', 'dicembre', 'diciembre'],
];
