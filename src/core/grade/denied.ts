import { isFault, namesFault } from './faults.ts';

/*
 * What is said not to be there, and what is said of the design or of the die. The words are those of lists in English,
 * German, French, Italian, Spanish, Dutch and the Scandinavian languages; common practice.
 */

/** Whole words, any of them, as a pattern. */
function anyOf(...lines: readonly string[]): string {
  const words = lines.flatMap((line) => line.split(', ')).toSorted((a, b) => b.length - a.length);
  return `(?<![\\p{L}-])(?:${words.join('|')})(?![\\p{L}])`;
}

/** Words that deny what follows them. */
const DENIAL = new RegExp(
  anyOf(
    'no, not, never, without, neither, nor, lacking, lacks, lack of, free of, free from, absence of, nil, zero',
    'ohne, kein, keine, keinen, keinerlei, nicht, nie, niemals, weder, frei von, sans, aucun, aucune, jamais, ni, non, pas',
    "exempte? de, exempte? d', dépourvue? de, point de, senza, mai, né, nessun, nessuno, nessuna, privo di, priva di, esente da",
    'sin, ningún, ningun, ninguna, nunca, jamás, libre de, exent[ao] de, zonder, geen, niet, nooit, vrij van, ingen, inga, inte, ej, utan, uden, ikke',
  ),
  'iu',
);
/** Behind what it denies: `corrosion: none`. */
const DENIED_LAST = new RegExp(
  `[:=]?\\s*${anyOf(
    'none, nil, no, keine?, nein, aucune?, non, nessuna?, ninguna?, geen, nee, ingen, absent, absente?s?, abwesend, assent[ei], ausentes?, afwezig',
    'fehlt, fehlen, fehlend, not present, nicht vorhanden, niet aanwezig, non present[ei], non présente?s?, no presente?s?, not found, not seen',
  )}$`,
  'iu',
);
/** A denial of what was said before it: `but is not`, `not so`. Whether it is that is asked. */
const SO = 'so|it|true|the case|correct|right|this one|this|der fall|wahr|richtig|ça|vrai|vero|così|así|verdad|waar|zo';
const OF_BEFORE = new RegExp(`^\\W*(?:${SO})?\\W*$`, 'iu');

/** What others say, what is so of others, or what is so at times: with a fault it is asked. */
const OTHERWISE = new RegExp(
  anyOf(
    'wrongly, falsely, erroneously, incorrectly, mistakenly, said to, said by, described, called, claimed, alleged, allegedly, supposed, supposedly, reported, thought to',
    'anything but, far from, unlike, others, other (?:specimens?|examples?|pieces?|coins?|copies), most (?:specimens?|examples?|pieces?|coins?|copies), usually, often, typically, rarely, seldom, if',
    'angeblich, irrtümlich, fälschlich, beschrieben, alles andere als, sonst, meist, meistens, oft, andere (?:exemplare|stücke|münzen), anders als, selten',
    'prétendument, à tort, soi-disant, décrite?, tout sauf, souvent, loin de, autres (?:exemplaires|pièces), presunt[oa], descritt[oa], tutt.altro che, spesso, altri esemplari',
    'supuestamente, descrit[oa], todo menos, a menudo, otros ejemplares, zogenaamd, beschreven, allesbehalve, vaak, andere (?:exemplaren|stukken)',
  ),
  'iu',
);
/** A hole that may be of the design, as in the coins of many countries. */
const HOLE_OF_DESIGN = new RegExp(
  '(?<!\\p{L})(?:square|cent(?:er|re|ral)|middle|round cent(?:er|re|ral)) holed?(?!\\p{L})|' +
    anyOf(
      'holed? (?:in|through) (?:the )?(?:design|cent(?:er|re)|middle), centrally holed, trou (?:central|carré|rond central), loch in der mitte, (?:quadratisches|zentrales|viereckiges) loch',
      'foro (?:centrale|quadrato), agujero (?:central|cuadrado), (?:vierkant|centraal) gaatje',
    ),
  'iu',
);

/** Dutch and German `noch … noch`, after a first denial. */
const NEITHER = /(?:weder|niet|geen|noch)\s.*?(?<!\p{L})noch(?!\p{L})/iu;

/** What takes a denial back: `no doubt cleaned`, `not only cleaned`. */
const AFFIRMED = new RegExp(
  anyOf(
    'no doubt, without a doubt, without doubt, without question, no question, not only, not just, not merely, nothing but, not without',
    'ohne zweifel, nicht nur, nicht ohne, nichts als, sans doute, non seulement, pas seulement, pas sans, rien que, senza dubbio, non solo, sin duda, no sólo, no solo',
    'zonder twijfel, niet alleen, niet zonder',
  ),
  'giu',
);

/** Half a denial: `hardly cleaned`, `no serious scratches`, `no longer corroded`. What it leaves is asked. */
const NO =
  'no|not|without|ohne|kein\\p{L}*|nicht|sans|aucune?|pas|non|senza|nessun[oa]?|sin|ningun[ao]?|geen|niet|zonder';
const VERY = [
  'fully, badly, heavily, very, too, much, completely, seriously, entirely, totally, really, so, overly, obviously, recently, longer',
  'serious, major, heavy, deep, bad, significant, obvious, visible, noticeable, real, great, big, large, other, further, more, many',
  'sehr, ganz, stark, zu, mehr, vollständig, grob\\p{L}*, größer\\p{L}*, stark\\p{L}*, tief\\p{L}*, trop, très, entièrement, gross?e?s?, autres?, graves?',
  'nennenswert\\p{L}*, erwähnenswert\\p{L}*, notables?, molto, troppo, gravi, altri, altre, muy, demasiado, del todo, grandes?, otros, otras, erg, helemaal, grote, zware, andere, più, meer',
];
const HARDLY = anyOf(
  'hardly, barely, scarcely, almost no, almost never, nearly no, virtually no, practically no, kaum, à peine, appena, apenas, nauwelijks, ya no',
);
const HALF = new RegExp(`${HARDLY}|(?<![\\p{L}-])(?:${NO}) ${anyOf(...VERY).replace('(?<![\\p{L}-])', '')}`, 'iu');

const NEARLY = new RegExp(
  anyOf(
    'almost, nearly, virtually, practically, largely, mostly, mainly, generally, relatively, fairly, quite, partly, not very, worth mentioning',
    'fast, beinahe, nahezu, weitgehend, presque, pratiquement, quasi, praticamente, casi, prácticamente, bijna, vrijwel, nagenoeg, nästan, næsten',
    'apart from, save for, other than, except, excepting, außer, bis auf, abgesehen von, sauf, à part, hormis, tranne, salvo, excepto, behalve',
  ),
  'iu',
);

/** What ends a denial. */
const BUT = new RegExp(
  `,? ${anyOf('but, though, although, yet, aber, jedoch, sondern, mais, ma, pero, sino, maar')} `,
  'iu',
);
const AND = new RegExp(` ${anyOf('and, &, und, et, e, ed, y, en, och, og')} `, 'iu');
/** The endings of what was done to a piece, which "and" may set beside a denial instead of under it. */
const DONE = /(?:ed|bent|t|te[rsn]?|ée?s?|at[oaie]|ad[oa]s?)$/iu;

/** Behind one denial, another takes it back: `not uncleaned`, `nicht frei von Kratzern`. */
const AGAIN = new RegExp(
  anyOf('free of, free from, without, frei von, sans, senza, sin, zonder, exempte? de, vrij van'),
  'iu',
);
/** Stands for a word that denies within itself. */
const WITHIN_WORD = '‥';

/** What was so when it left the mint. */
const AS_MADE = /^.*(?<!\p{L})as (?:struck|made|issued|minted|produced|intended)(?!\p{L})/iu;
const FACE = '(?: (?:obverse|reverse|obv\\.?|rev\\.?|upper|lower))?';
const FINELY = 'finely|beautifully|superbly|boldly|well|exquisitely|delicately|skilfully|skillfully|crudely|poorly';
const OF_DIES =
  'crack|rust|flaw|break|polish|clash|chip|damage|wear|scratch|gouge|line|file|filing|scrape|repair|tooling|cleaning';
const OF_A_DIE = [
  /\p{L}+ (?:on|in|to|of) (?:the )?(?:obverse |reverse )?dies?(?!\p{L})(?! \p{L}+ing)/giu,
  new RegExp(`(?<!\\p{L})die[ -](?:${OF_DIES})\\p{L}*`, 'giu'),
  new RegExp(`[\\p{L}-]+${FACE} (?:dies?|punch|punches|puncheons?|hubs?|stempel|conio|coni|cuños?)(?![\\p{L}])`, 'giu'),
  /\p{L}+ (?:de|du|di|del) (?:coin|conio|cuño)(?!\p{L})/giu,
  /(?<!\p{L})(?:coin|conio|cuño) (?:cassé|rouillé|fendu|rotto|roto)(?!\p{L})/giu,
  /(?<!\p{L})engraved by(?!\p{L})|(?<!\p{L})(?:gravé|inciso|grabado) (?:par|da|por)(?!\p{L})/giu,
  new RegExp(`(?<!\\p{L})(?:${FINELY}) engraved(?=$| (?:dies?|portraits?|busts?|head|design|style|legends?|work|with great))`, 'giu'),
]; // prettier-ignore

/** Words of damage that describe a design, and the parts of designs they describe. */
const IMAGES = [
  'sceptre, scepter, cross, crosses, mullet, mullets, cinquefoil, quatrefoil, trefoil, rosette, star, stars, rose, sun, crescent, pellet, annulet, lis',
  'sword, spear, lance, arrow, column, pillar, mast, oar, branch, tree, tower, bridge, wheel, chain, arm, knee, leg, staff, bow, anchor, key, trident',
  'crook, crosier, crozier, thunderbolt, prow, ornaments?, annulets, tressure, lozenge, saltire, quatrefoils, tail, feather, plume, ribbon',
  'heart, hearts, shield, shields, flower, leaf, wing, wings, crown, eagle, fleur-de-lis, helmet, skull, moon, ship, banner',
].join(', ');
const OF_THE_DESIGN = [
  ['bent, broken, pierced, holed, cracked, plugged, looped', IMAGES],
  [
    'mounted',
    'horseman, horsemen, knight, king, emperor, rider, warrior, archer, figure, soldier, hunter, cavalryman, st george, saint george',
  ],
  ['spotted', 'lion, leopard, bull, dog, deer, horse, cow, cat, panther, hyena'],
  ['brushed, clipped, cropped, waxed', 'hair, beard, mane, moustache, tail, wings, hedge'],
  ['broken, clipped', 'letters?, serifs?, numerals?, digits?'],
  ['burning', 'altar, torch, city'],
].map(([said = '', of = '']) => [anyOf(said), anyOf(of).replace('(?<![\\p{L}-])', '')] as const);
const WEAPONS = 'arrows?|swords?|spears?|lances?|nails?|daggers?|thorns?';
/** Where the thing is said before the damage. */
const AFTER_NOUN = [
  new RegExp(`(?:${anyOf(IMAGES)}|\\p{L}+) (?:pierced|transfixed) (?:by|with) (?:an? |the |two |three |\\p{L}+ )?(?:${WEAPONS})(?!\\p{L})`, 'giu'),
  /(?<!\p{L})spots? (?:on|of) (?:the )?(?:leopard|dog|deer|horse|cow|lion|panther|hyena|animal)s?(?!\p{L})/giu,
  new RegExp(
    anyOf(
      "c(?:œ|oe)ur, étoile, croix, rose, croissant, bouclier, colonne, épée, molette, quintefeuille, stella, cuore, croce, rosa, scudo, colonna, spada, estrella, corazón, cruz, escudo, columna, espada",
    ) +
      ` ${anyOf('percée?s?, forat[oa], perforad[oa], rott[oa], rot[oa], brisée?s?, cassée?s?')}`,
    'giu',
  ),
]; // prettier-ignore
const BEFORE_IMAGE = OF_THE_DESIGN.map(([said, of]) => new RegExp(`${said} ${of}`, 'giu'));
const AFTER_IMAGE = new RegExp(
  `${anyOf(IMAGES, 'horseman, knight, rider, king')} ${anyOf('bent, broken, pierced, holed, mounted')}`,
  'iu',
);
/** `broken A in legend`, `clipped Z`: a letter of the legend, in capitals. */
const LETTER = new RegExp(
  '(?<!\\p{L})(?:[Bb]roken|[Cc]lipped|[Cc]racked|[Bb]ent|[Pp]ierced) \\p{Lu}' +
    `(?=$|[,;.'’]| (?:in|of|on|over|at|punch|type|variety)(?!\\p{L}))`,
  'gu',
);

/** `corrosion-free`, `kratzerfrei`, `non-porous`, `ungereinigt`: a fault denied within a word. */
const WITHIN =
  /(?<![\p{L}-])(?:(?<denied>\p{L}+?)s?[- ]?(?:free|frei|vrij)|(?:un|on|in|non-?)(?<base>\p{L}{4,}))(?![\p{L}-])/giu;

export interface WithoutDenied {
  /** What is left when all that is denied, or of the design or the die, is taken out. */
  readonly left: string;
  /** Whether it is clear what is denied. */
  readonly isClear: boolean;
  /** Whether anything was taken out. */
  readonly isDenied: boolean;
}

/** Takes out of a phrase what it says is not there, and what it says of the design or of the die. */
export function withoutDenied(words: string): WithoutDenied {
  const plain = words.normalize('NFC');
  // Cleaned and holed as issued: only one of the two may be.
  const isBoth = AND.test(AS_MADE.exec(plain)?.[0] ?? '');
  const made = [AS_MADE, ...OF_A_DIE, ...AFTER_NOUN, ...BEFORE_IMAGE, LETTER].reduce(
    (text, pattern) => text.replace(pattern, '…'),
    plain,
  );
  const within = made.replace(WITHIN, (word: string, denied = '', base = '') =>
    [denied, base].some((part: string) => isFault(part.toLowerCase())) || /^uncirculated$/iu.test(word)
      ? WITHIN_WORD
      : word,
  );
  const text = within.replace(AFFIRMED, '');
  const unclear = { left: plain, isClear: false, isDenied: true };
  const isHalf = [HALF, OTHERWISE, HOLE_OF_DESIGN].some((pattern) => pattern.test(text)) && namesFault(text);
  if (AFTER_IMAGE.test(text) || isHalf || isBoth) return unclear;
  const clauses = text.split(BUT);
  const kept = clauses.map(withoutDenial);
  if (kept.includes(undefined)) return unclear;
  const isDenied = within !== plain || kept.some((clause, at) => clause !== clauses[at]);
  // Nearly no scratches are some; what is said of the die alone may be as near as it likes.
  const isOfFault =
    within.includes(WITHIN_WORD) || (kept.some((clause, at) => clause !== clauses[at]) && namesFault(plain));
  if (isOfFault && NEARLY.test(plain)) return unclear;
  return { left: kept.join(' '), isClear: true, isDenied };
}

/** Whether a phrase says what was done to a piece: `cleaned or polished`. */
export function saysWhatWasDone(phrase: string): boolean {
  const words = phrase.toLowerCase().split(' ');
  return words.some((word) => isFault(word) && DONE.test(word));
}

/** A clause without what it denies; undefined when "and" may set a fault beside the denial or under it. */
function withoutDenial(clause: string): string | undefined {
  if (DENIED_LAST.test(clause)) return AND.test(clause) ? undefined : '';
  const first = NEITHER.exec(clause) ?? DENIAL.exec(clause);
  if (first === null) return clause;
  const scope = clause.slice(first.index + first[0].length);
  if (scope.includes(WITHIN_WORD) || (AGAIN.test(scope) && !NEITHER.test(clause))) return undefined;
  // What is denied may stand before the denial: `cleaning not suspected`.
  const head = clause.slice(0, first.index);
  if (OF_BEFORE.test(scope) || (namesFault(head) && !namesFault(scope))) return undefined;
  const [, ...beside] = scope.split(AND);
  const words = beside.flatMap((part) => part.split(' ').slice(0, 2)).map((word) => word.toLowerCase());
  if (words.some((word) => isFault(word) && DONE.test(word)) && !/^(?:neither|weder)/iu.test(first[0]))
    return undefined;
  return head;
}
