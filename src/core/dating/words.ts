/**
 * The words of the grammar, English first, then as lists in German, French, Latin and now and then Italian or
 * Spanish print them. Adding a language is adding words here.
 */

export const ABOUT = [
  ...['c.', 'ca.', 'ca', 'c', 'cir.', 'circa', 'about', 'around', 'approx.', 'approximately', 'roughly', '~', '±'],
  ...['um', 'etwa', 'ungefähr', 'gegen', 'zirka', 'vers', 'environ', 'env.', 'verso il', 'hacia', 'circiter'],
];

export const PERHAPS = [
  ...['perhaps', 'possibly', 'probably', 'presumably', 'maybe', 'prob.', 'poss.', '?'],
  ...['vielleicht', 'wohl', 'vermutlich', 'wahrscheinlich', 'peut-être', 'probablement', 'fortasse'],
];

/** Words that carry no meaning for the date and may stand before it. */
export const ASIDE = [
  ...['the', 'in', 'the year', 'year', 'dated', 'the years', 'years', 'during', 'reign of the'],
  ...['im Jahre', 'im Jahr', 'Jahr', 'das', 'dem', 'im', 'den', 'en', "l'an", 'le', 'la', "l'année", 'anno'],
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
];

export const OR = ['or', 'or else', 'oder', 'ou', 'vel', 'aut', 'o'];
export const AND = ['and', 'und', 'et', '&'];
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
];
export const FROM = ['from', 'von', 'de', 'ab', 'a'];
export const BETWEEN = ['between', 'btw.', 'betw.', 'zwischen', 'entre', 'inter'];

export const BEFORE_CHRIST = [
  ...['BC', 'B.C.', 'BCE', 'B.C.E.', 'v. Chr.', 'v. Chr', 'vor Chr.', 'vor Christus', 'v. u. Z.'],
  ...['av. J.-C.', 'av. J.C.', 'av. J. C.', 'avant J.-C.', 'avant Jésus-Christ', 'av. n. è.'],
  ...['a. C.', 'aC', 'a. C. n.', 'a. Chr.', 'a. Chr. n.', 'ante Christum', 'ante Christum natum'],
];

export const AFTER_CHRIST = [
  ...['AD', 'A.D.', 'CE', 'C.E.', 'n. Chr.', 'n. Chr', 'nach Chr.', 'nach Christus', 'u. Z.'],
  ...['ap. J.-C.', 'apr. J.-C.', 'ap. J.C.', 'après J.-C.', 'de n. è.'],
  ...['d. C.', 'dC', 'p. C.', 'p. Chr.', 'p. Chr. n.', 'post Christum', 'post Christum natum', 'anno Domini'],
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
    words: ['before', 'bef.', 'ante', 'prior to', 'earlier than', 'pre', 'vor', 'avant', 'antes de', 'prima del', '<'],
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
    ],
    fixes: 'latest',
    nameIsAllowed: true,
    other: null,
  },
  {
    words: ['after', 'aft.', 'post', 'later than', 'nach', 'après', 'después de', 'dopo il', '>'],
    fixes: 'earliest',
    nameIsAllowed: false,
    other: null,
  },
  {
    words: [
      ...['not before', 'not earlier than', 'no earlier than', 'in or after', 'terminus post quem', 'tpq', 't.p.q.'],
      ...['frühestens', 'nicht vor', 'non ante', 'pas avant', 'au plus tôt'],
    ],
    fixes: 'earliest',
    nameIsAllowed: true,
    other: null,
  },
  {
    words: ['until', 'up to', 'till', 'bis', "jusqu'en", "jusqu'à"],
    fixes: 'latest',
    nameIsAllowed: true,
    other: 'open',
  },
  {
    words: ['from', 'since', 'ab', 'seit', 'dès', 'depuis', 'à partir de'],
    fixes: 'earliest',
    nameIsAllowed: true,
    other: 'open',
  },
];

/** What may follow a year from which a thing goes on. */
export const ONWARDS = ['onwards', 'onward', 'to date', 'to the present', 'to present', 'and still current', 'ff.'];

/** Spring to winter, EDTF's 21 to 24. */
export const SEASONS: readonly (readonly string[])[] = [
  ['spring', 'frühling', 'frühjahr', 'printemps', 'vere'],
  ['summer', 'sommer', 'été', 'aestate'],
  ['autumn', 'fall', 'herbst', 'automne', 'autumno'],
  ['winter', 'hiver', 'hieme'],
];

/** Months, each by the beginnings that name it in the languages above; a full stop may follow. */
export const MONTHS: readonly (readonly string[])[] = [
  ['January', 'Jan', 'Januar', 'Jänner', 'janvier', 'janv', 'Ianuarii', 'Ianuarius', 'gennaio', 'enero'],
  ['February', 'Feb', 'Februar', 'février', 'févr', 'Februarii', 'Februarius', 'febbraio', 'febrero'],
  ['March', 'Mar', 'März', 'mars', 'Martii', 'Martius', 'marzo'],
  ['April', 'Apr', 'avril', 'avr', 'Aprilis', 'aprile', 'abril'],
  ['May', 'Mai', 'Maii', 'Maius', 'maggio', 'mayo'],
  ['June', 'Jun', 'Juni', 'juin', 'Iunii', 'Iunius', 'giugno', 'junio'],
  ['July', 'Jul', 'Juli', 'juillet', 'juil', 'Iulii', 'Iulius', 'luglio', 'julio'],
  ['August', 'Aug', 'août', 'Augusti', 'Augustus', 'agosto'],
  ['September', 'Sept', 'Sep', 'septembre', 'Septembris', 'settembre', 'septiembre'],
  ['October', 'Oct', 'Oktober', 'Okt', 'octobre', 'Octobris', 'ottobre', 'octubre'],
  ['November', 'Nov', 'novembre', 'Novembris', 'noviembre'],
  ['December', 'Dec', 'Dezember', 'Dez', 'décembre', 'déc', 'Decembris', 'dicembre', 'diciembre'],
];
