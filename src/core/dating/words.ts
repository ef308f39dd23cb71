/*
 * The words of the grammar, English first, then as lists in German, French, Latin, Italian, Spanish, Dutch, Danish and Polish
 * print them, and a few words of more languages. Adding a language is adding words here.
 */

/** Words written in one line, with commas between them. */
export function listed(...lines: readonly string[]): readonly string[] {
  return lines.flatMap((line) => line.split(', '));
}

export const ABOUT = listed(
  'c., ca., ca, c, cir., circ., circa, cca, about, around, approx., approximately, roughly, near, ~, ±',
  'um, um das Jahr, etwa, ungefähr, gegen, zirka, rund, vers, environ, env., autour de, aux environs de',
  'verso il, verso, intorno al, intorno a, attorno al, hacia, alrededor de, cerca de, circiter, por volta de',
  'omstreeks, ongeveer, rond, omkring, cirka, około, ok., kolem, około roku, około r., kolem roku, kolem r., okolo, okolo roku, přibližně, noin, cerca del, около, ок.',
);

export const PERHAPS = listed(
  'perhaps, possibly, probably, presumably, maybe, prob., poss., ?',
  'vielleicht, wohl, vermutlich, wahrscheinlich, peut-être, probablement, fortasse',
  'misschien, wellicht, mogelijk, waarschijnlijk, vermoedelijk, forse, probabilmente, quizás, quizá, probablemente',
  'måske, muligvis, formentlig, sandsynligvis, być może, zapewne, prawdopodobnie',
);

/** Words that carry no meaning for the date and may stand before it. */
export const ASIDE = listed(
  'the, in, the year, year, dated, the years, years, during, reign of the',
  "im Jahre, im Jahr, Jahr, das, dem, im, den, en, l'an, le, la, l'année, anno, A°, Ao, Ao., il, lo, nel, nell'anno",
  'el, el año, en el año, het, het jaar, in het jaar, roku, rok, r., w roku, w, lata, w latach, v roce, v letech, léta, leta, vuonna, vuosina, в',
);

/** What was done in the year that follows: `struck 1279-81`. It is the date made, which is the one wanted. */
export const STRUCK = listed(
  'struck, minted, coined, issued, made, cast, geprägt, frappé, frappée, coniato, coniata, acuñado, acuñada, geslagen',
  'slået, præget, wybito, wybity, wybita, bito, bity, bita',
);

export const UNDATED = listed(
  'n.d., n. d., n/d, nd, no date, undated, date unknown, not dated, unknown',
  'o.J., o. J., o.O. u. J., o.D., o. D., ohne Jahr, ohne Jahresangabe, ohne Datum, undatiert, s.d., s. d., s/d, sans date, non daté',
  's.a., s. a., sine anno, z.j., z. j., zonder jaar, zonder jaartal, ongedateerd, senza data, sin fecha, s/f, s.f., s. f.',
  'uden år, uden årstal, u.å., utan år, odaterad, odat., udateret, udatert, bez daty, b.d., b. d., bez roku, sem data, без даты, б/д',
);

export const OR = listed('or, or else, oder, ou, vel, aut, o, oppure, eller, lub, albo');
export const AND = listed('and, und, u., et, &, en, e, ed, y, og, och');
export const TO = listed(
  "to, -, until, till, through, up to, bis, à, au, jusqu'à, jusqu'en, ad, usque ad",
  'tot, tot en met, t/m, al, fino al, a, hasta, til, do',
);
export const FROM = listed('from, von, de, ab, a, van, dal, da, desde, fra, od');
export const BETWEEN = listed(
  'between, btw., btw, betw., betw, zwischen, zw., zw, entre, inter, tussen, tra, fra, mellem, mellan, między, pomiędzy',
);

export const BEFORE_CHRIST = listed(
  'BC, B.C., BCE, B.C.E., v. Chr., v. Chr, vor Chr., vor Christus, v. u. Z.',
  'av. J.-C., av. J.C., av. J. C., av. JC, avant J.-C., avant Jésus-Christ, av. n. è., avant notre ère',
  'a. C., aC, a. C. n., a. Chr., a. Chr. n., ante Christum, ante Christum natum, voor Chr., voor Christus',
  'avanti Cristo, a. de C., a. de J.C., antes de Cristo, f. Kr., før Kristus, p. n. e., przed Chr., до н. э.',
);

export const AFTER_CHRIST = listed(
  'AD, A.D., CE, C.E., n. Chr., n. Chr, nach Chr., nach Christus, u. Z.',
  'ap. J.-C., apr. J.-C., ap. J.C., ap. JC, après J.-C., de n. è., de notre ère, d. C., dC, p. C., p. Chr., p. Chr. n.',
  'post Christum, post Christum natum, anno Domini, na Chr., na Christus, dopo Cristo, d. de C., d. de J.C.',
  'después de Cristo, e. Kr., efter Kristus, n. e., po Chr., н. э.',
);

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
    words: listed(
      'before, bef., ante, prior to, earlier than, pre, vor, avant, antes de, prima del, <, voor, vóór',
      'prima di, anteriore al, anteriore a, anterior a, før, innan, przed, przed rokiem, před, před rokem, ennen',
    ),
    fixes: 'latest',
    nameIsAllowed: false,
    other: null,
  },
  {
    words: listed(
      'by, not after, not later than, no later than, at the latest, terminus ante quem, taq, t.a.q., in or before',
      'spätestens, nicht nach, nicht später als, non post, pas après, pas plus tard que, au plus tard, au plus tard en',
      'uiterlijk, niet na, niet later dan, no después de, no posterior a, a más tardar en, non dopo il, non oltre il',
      'non posteriore al, ikke efter, ikke senere end, senest, nie później niż, najpóźniej, najpóźniej w',
    ),
    fixes: 'latest',
    nameIsAllowed: true,
    other: null,
  },
  {
    words: listed(
      'after, aft., post, later than, nach, après, después de, dopo il, na, >',
      'dopo, posteriore al, posteriore a, posterior a, efter, po, po roku, po roce, после, depois de, després de, jälkeen',
    ),
    fixes: 'earliest',
    nameIsAllowed: false,
    other: null,
  },
  {
    words: listed(
      'not before, not earlier than, no earlier than, in or after, terminus post quem, tpq, t.p.q.',
      'frühestens, nicht vor, nicht früher als, non ante, pas avant, pas plus tôt que, au plus tôt, au plus tôt en',
      'niet voor, niet vóór, niet eerder dan, no antes de, no anterior a, non prima del, non anteriore al',
      'ikke før, ikke tidligere end, tidligst, nie wcześniej niż, najwcześniej, najwcześniej w',
    ),
    fixes: 'earliest',
    nameIsAllowed: true,
    other: null,
  },
  {
    words: listed("until, up to, till, bis, jusqu'en, jusqu'à, tot, fino al, hasta, indtil, til, do"),
    fixes: 'latest',
    nameIsAllowed: true,
    other: 'open',
  },
  {
    words: listed('from, since, ab, seit, dès, depuis, à partir de, vanaf, sinds, dal, da, desde, siden, od'),
    fixes: 'earliest',
    nameIsAllowed: true,
    other: 'open',
  },
];

/** What may follow a year from which a thing goes on, or at which it ends or begins without its other end being known. */
export const ONWARDS = listed('onwards, onward, to date, to the present, to present, and still current, ff.');
export const OR_LATER = listed(
  'or later, and later, or after, and after, of later, oder später, ou après, ou plus tard, o posterior',
);
export const OR_EARLIER = listed(
  'or earlier, and earlier, or before, and before, of eerder, oder früher, ou avant, ou plus tôt, o anterior',
);

/** Spring to winter, EDTF's 21 to 24. */
export const SEASONS: readonly (readonly string[])[] = [
  listed('spring, frühling, frühjahr, printemps, vere, primavera, lente, voorjaar, forår, vår, wiosna'),
  listed('summer, sommer, été, aestate, estate, verano, zomer, sommar, lato'),
  listed('autumn, fall, herbst, automne, autumno, autunno, otoño, herfst, efterår, høst, höst, jesień'),
  listed('winter, hiver, hieme, inverno, invierno, vinter, zima'),
];

/**
 * Months, each by the names that mean it and no other in the languages above; a full stop may follow. September to December also
 * as letters and old coins abbreviate them, and the old German and Dutch names but for those that `ask.ts` has.
 */
export const MONTHS: readonly (readonly string[])[] = [
  listed(
    'January, Jan, Januar, Jänner, janvier, janv, Ianuarii, Ianuarius, gennaio, gen, enero, ene, januari, styczeń, stycznia',
    'janeiro, jan, gener, leden, ledna, január, siječanj, siječnja, январь, января, янв, січень, січня, tammikuu, tammikuuta, louwmaand',
  ),
  listed(
    'February, Feb, Febr, Februar, février, févr, fév, Februarii, Februarius, febbraio, febrero, februari, luty, lutego, Hornung',
    'fevereiro, fev, febrer, únor, února, február, veljača, veljače, февраль, февраля, фев, лютий, лютого, helmikuu, helmikuuta, sprokkelmaand',
  ),
  listed(
    'March, Mar, März, mars, Martii, Martius, marzo, maart, marts, marzec, marca, Lenzmonat, lentemaand',
    'março, març, březen, března, marec, március, ožujak, ožujka, март, марта, березень, березня, maaliskuu, maaliskuuta',
  ),
  listed(
    'April, Apr, avril, avr, Aprilis, aprile, abril, kwiecień, kwietnia, Ostermonat, grasmaand',
    'duben, dubna, apríl, április, travanj, travnja, апрель, апреля, апр, квітень, квітня, huhtikuu, huhtikuuta',
  ),
  listed(
    'May, Mai, Maii, Maius, maggio, mayo, mei, maj, maja, Wonnemonat, bloeimaand',
    'maio, maig, květen, května, máj, mája, május, svibanj, svibnja, май, мая, травень, травня, toukokuu, toukokuuta',
  ),
  listed(
    'June, Jun, Juni, juin, Iunii, Iunius, giugno, junio, czerwiec, czerwca, Brachmonat, zomermaand',
    'junho, juny, červen, června, jún, júna, június, lipanj, lipnja, июнь, июня, червень, червня, kesäkuu, kesäkuuta',
  ),
  listed(
    'July, Jul, Juli, juillet, juil, Iulii, Iulius, luglio, julio, lipiec, lipca, Heumonat, hooimaand',
    'julho, juliol, červenec, července, júl, júla, július, srpanj, srpnja, июль, июля, липень, липня, heinäkuu, heinäkuuta',
  ),
  listed(
    'August, Aug, août, Augusti, Augustus, agosto, augusti, sierpień, sierpnia, Erntemonat, oogstmaand',
    'agost, srpen, augusztus, kolovoz, kolovoza, август, августа, авг, серпень, серпня, elokuu, elokuuta',
  ),
  listed(
    'September, Sept, Sep, septembre, Septembris, settembre, septiembre, wrzesień, września, 7ber, 7bre, 7bris, VIIber, VIIbre, VIIbris',
    'setembro, setembre, září, szeptember, rujan, rujna, сентябрь, сентября, сент, вересень, вересня, syyskuu, syyskuuta, herfstmaand',
  ),
  listed(
    'October, Oct, Oktober, Okt, octobre, Octobris, ottobre, octubre, październik, października, 8ber, 8bre, 8bris, VIIIber, VIIIbre, VIIIbris',
    'outubro, říjen, října, október, октябрь, октября, окт, жовтень, жовтня, lokakuu, lokakuuta, Weinmonat, wijnmaand',
  ),
  listed(
    'November, Nov, novembre, Novembris, noviembre, 9ber, 9bre, 9bris, IXber, IXbre, IXbris',
    'novembro, ноябрь, ноября, нояб, marraskuu, marraskuuta, slachtmaand',
  ),
  listed(
    'December, Dec, Dezember, Dez, décembre, déc, Decembris, dicembre, diciembre, grudzień, grudnia, 10ber, 10bre, Xber, Xbre, Xbris',
    'dezembro, desembre, prosinac, декабрь, декабря, дек, joulukuu, joulukuuta, Christmonat, wintermaand',
  ),
];

/** Names that mean one month in one language and another in the next, each with the languages. Grammars and dictionaries, from memory. */
export const TWO_MONTHS: readonly {
  readonly names: readonly string[];
  readonly means: readonly (readonly [month: string, where: string])[];
}[] = [
  {
    names: listed('listopad, listopada, listopadu, листопад, листопада'),
    means: [['October', 'Croatian'], ['November', 'Polish, Czech and Ukrainian']],
  },
  { names: listed('prosinec, prosince, prosinca'), means: [['December', 'Czech and Croatian'], ['January', 'Slovene']] },
  { names: listed('srpan, srpna'), means: [['July', 'Slovene'], ['August', 'Czech']] },
  { names: listed('traven, travna'), means: [['April', 'Slovene (mali traven)'], ['May', 'Slovene (veliki traven)']] },
  { names: listed('studeni, studenoga, studenog, студен, студзень, студзеня'), means: [['November', 'Croatian'], ['January', 'Belarusian']] },
  { names: listed('груден, грудня, грудень'), means: [['November', 'old Bulgarian'], ['December', 'Ukrainian']] },
  { names: listed('Herbstmonat'), means: [['September', 'most old German books'], ['October', 'some']] },
  { names: listed('Wintermonat'), means: [['November', 'Swiss and most old German books'], ['December', 'some']] },
]; // prettier-ignore

/** Months of the Hijra, as English, French, German and Turkish books spell them; accents and signs of length make no difference. */
export const HIJRI_MONTHS: readonly (readonly string[])[] = [
  listed('Muharram, Moharram, Muharrem, محرم'),
  listed('Safar, Safer, صفر'),
  listed('Rabi I, Rabi al-Awwal, Rabi ul-Awwal, Rabi al-Ula, Rebiülevvel, Rabia I, ربيع الاول'),
  listed('Rabi II, Rabi al-Thani, Rabi al-Akhir, Rabi us-Sani, Rabi ath-Thani, Rebiülahir, Rabia II, ربيع الثاني'),
  listed('Jumada I, Jumada al-Ula, Jumada al-Awwal, Cemaziyelevvel, Djumada I, Gumada I, جمادى الاولى'),
  listed('Jumada II, Jumada al-Akhira, Jumada al-Thani, Cemaziyelahir, Djumada II, Gumada II, جمادى الاخرة'),
  listed('Rajab, Receb, Recep, Radjab, رجب'),
  listed("Sha'ban, Shaaban, Shaban, Şaban, Schaban, شعبان"),
  listed('Ramadan, Ramazan, Ramadhan, رمضان'),
  listed('Shawwal, Shawal, Şevval, Schawwal, شوال'),
  listed("Dhu'l-Qa'da, Dhu al-Qa'da, Dhu al-Qi'da, Dhul Qadah, Zilkade, Zi'l-Qa'da, Dhu l-Qada, ذو القعدة"),
  listed("Dhu'l-Hijja, Dhu al-Hijja, Dhul Hijjah, Zilhicce, Zi'l-Hijja, Dhu l-Hidjdja, ذو الحجة"),
];

/** Months of the French Republic, and the days after them. */
export const REPUBLICAN_MONTHS: readonly (readonly string[])[] = [
  ...listed('vendémiaire, brumaire, frimaire, nivôse, pluviôse, ventôse').map((month) => [month]),
  ...listed('germinal, floréal, prairial, messidor, thermidor, fructidor').map((month) => [month]),
  listed('complémentaire, jour complémentaire, sans-culottide'),
];

/** Hebrew months, each first as the calendar's arithmetic names it. */
export const HEBREW_MONTHS: readonly (readonly string[])[] = [
  listed('tishri, Tishrei'),
  listed('heshvan, Cheshvan, Marheshvan'),
  listed('kislev'),
  listed('tevet, Tebet'),
  listed('shevat, Shvat'),
  listed('adar i, Adar Rishon'),
  listed('adar ii, Adar Sheni'),
  listed('adar'),
  listed('nisan'),
  listed('iyar, Iyyar'),
  listed('sivan'),
  listed('tammuz, Tamuz'),
  listed('av'),
  listed('elul'),
];
