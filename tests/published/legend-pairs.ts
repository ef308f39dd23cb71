/** One legend as two printers set it, or as a printer set it and as it stands in plain capitals. */
export type LegendPair = { readonly one: string; readonly other: string; readonly source: string };

const PAS = 'Portable Antiquities Scheme, guide to medieval coin inscriptions';
const JEWITT = 'Jewitt and Head, English Coins and Tokens (1886), Edward III';
const LATIN_EDITING = 'Sandys, Latin Epigraphy (2nd ed. 1927): V and U are one letter, I and J are one letter';
const MUSEUM = 'Museums Victoria, item 78286, groat of Edward III, read against Jewitt and Head (1886)';
const UNICODE = 'The Unicode Standard, character names and compatibility decompositions';

export const SAME_LEGENDS: readonly LegendPair[] = [
  { one: 'POSUI DEUM ADJUTOREM MEUM', other: 'POSVI DEVM ADIVTOREM MEVM', source: `${PAS}; ${JEWITT}` },
  { one: 'DOMINUS HYBERNIA', other: 'DOMINVS HYBERNIA', source: PAS },
  { one: 'EDWARD. DEI G. REX. ANGL.', other: 'EDWARD DEI G REX ANGL', source: JEWITT },
  { one: 'EDWARDVS. REX. ANGL. DNS. HYB.', other: 'EDWARDVS REX ANGL DNS hYB', source: JEWITT },
  {
    one: 'EDWARD. D. G. REX. ANGL. Z. FRANC. D.H.Y.',
    other: 'EDWARD D G REX ANGL Z FRANC D HY',
    source: `${JEWITT}; ${MUSEUM}`,
  },
  { one: 'CIVITAS LONDON', other: 'CIVI TAS LON DON', source: JEWITT },
  { one: 'CIVITAS EBORACI', other: 'CIVI/TAS/EBO/RACI', source: JEWITT },
  { one: 'DOMINE NE IN FVRORE TVO ARGVAS ME', other: 'Domine ne in furore tuo arguas me', source: JEWITT },
  {
    one: 'DECVS ET TVTAMEN',
    other: 'Decus et tutamen',
    source: 'edge of the crown of 1818, as printed by Jewitt and Head (1886)',
  },
  {
    one: 'TUEATUR UNITA DEUS',
    other: 'TVEATVR VNITA DEVS',
    source: 'crown of 1847, as printed by Jewitt and Head (1886)',
  },
  { one: 'IMP CAES DIVI VESP F DOMITIAN AVG', other: 'Imp. Caes. Diui Vesp. f. Domitian Aug.', source: LATIN_EDITING },
  { one: 'IVLIA AVGVSTA', other: 'JULIA AUGUSTA', source: LATIN_EDITING },
  { one: 'IVSTITIA', other: 'JUSTITIA', source: LATIN_EDITING },
  { one: 'ÆÐELRED REX', other: 'AETHELRED REX', source: `${UNICODE}: AE, and ETH named for the sound th` },
  { one: 'PŒNA', other: 'POENA', source: `${UNICODE}: ligature OE` },
  { one: 'EDǷARD', other: 'EDWARD', source: `${UNICODE}: WYNN, the letter w of Old English` },
  { one: 'ＲＥＸ', other: 'REX', source: `${UNICODE}: full-width forms` },
  { one: 'ﬁd def', other: 'FID DEF', source: `${UNICODE}: ligature fi` },
  { one: 'GRÃTIA', other: 'GRATIA', source: `${UNICODE}: tilde is a combining mark` },
  { one: 'ANNO Ⅻ', other: 'ANNO XII', source: `${UNICODE}: Roman numeral twelve` },
  { one: 'ΒΑCΙΛΕΩC', other: 'ΒΑΣΙΛΕΩΣ', source: `${UNICODE}: the lunate sigma, as on coins, typed as C` },
  { one: 'Ἀλεξάνδρου', other: 'ΑΛΕΞΑΝΔΡΟΥ', source: `${UNICODE}: Greek breathings and accents are marks` },
  { one: 'Βασιλέως', other: 'ΒΑΣΙΛΕΩΣ', source: `${UNICODE}: final sigma` },
  { one: 'مُحَمَّد', other: 'محمد', source: `${UNICODE}: Arabic vowel signs are marks` },
  { one: 'أحمد', other: 'احمد', source: `${UNICODE}: alef with hamza decomposes to alef` },
  { one: 'محـمد', other: 'محمد', source: `${UNICODE}: TATWEEL only stretches` },
  { one: 'سنة ٢٩٤', other: 'سنة 294', source: `${UNICODE}: digit values` },
  { one: 'ירושלים', other: 'ירושלימ', source: `${UNICODE}: FINAL MEM` },
  { one: 'копейка', other: 'КОПЕИКА', source: `${UNICODE}: short I decomposes to I` },
];

/** Legends that the same rules must keep apart. */
export const DIFFERENT_LEGENDS: readonly LegendPair[] = [
  { one: 'CIVITAS LONDON', other: 'VILLA LONDON', source: PAS },
  { one: 'EDWARD REX', other: 'HENRIC REX', source: JEWITT },
  { one: 'ANGLIE', other: 'ANGLI', source: JEWITT },
  {
    one: 'COS III',
    other: 'COS IIII',
    source: 'Sandys, Latin Epigraphy (2nd ed. 1927): the number of the consulship dates the coin',
  },
  { one: 'AVG', other: 'AVGG', source: 'Stevenson, Dictionary of Roman Coins (1889): one Augustus and two' },
];
