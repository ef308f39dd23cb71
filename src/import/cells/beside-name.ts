/** What a cell says beside the name of a mint or a denomination, and why it is no part of that name. */
export type BesideName = { readonly name: string; readonly beside: string; readonly because: string };

const either = (words: string): string => `(?:${words.split(/,\s*/).join('|')})`;
/** A core of base metal under silver or gold; common words of lists. */
const PLATED = either(
  `(?:silver|gold)?[ -]?plated, fourr[eé]e?s?, fouree?, subaerate?, subaeratus, suberat[oaie], subærat, gefüttert, foderat[oa], forrad[oa],
  argentat[oa], saucé`,
);
/** How it came to be, which is told under `made:` or of the kind; only in brackets, for names begin so as well. */
const MADE = either(
  `${PLATED}, cast, gegossen, coulée?, fus[oa], fundid[oa], imitation, imitative, barbarous, barbaric, barbarisch, contemporary (?:copy|forgery|imitation)`,
);
const PLATED_AT_END = [
  new RegExp(`^(?<name>\\p{L}.*?),? [([](?<beside>${MADE})[)\\]]$`, 'iu'),
  new RegExp(`^(?<name>\\p{L}.*?),? (?<beside>${PLATED})$`, 'iu'),
  new RegExp(`^(?<beside>${PLATED}) (?<name>\\p{L}.*)$`, 'iu'),
];

const ORDER = either(
  '\\d\\d?(?:st|nd|rd|th|a|e|ª|\\.)?, first, second, third, fourth, fifth, prima, seconda, terza, erste, zweite, dritte',
);
const WORKSHOP = either('officinae?, officine, off\\., offizin, oficina, workshop, werkstatt');
const BY_WORKSHOP = `(?:${ORDER} ?${WORKSHOP}|${WORKSHOP} ?(?:\\d{1,2}|\\p{Lu}{1,2}|${ORDER}))`;
const AT_A_MINT = [
  new RegExp(`^(?<name>\\p{L}.*?),? ?[([](?<beside>${BY_WORKSHOP})[)\\]]$`, 'iu'),
  new RegExp(`^(?<name>\\p{L}.*?),? (?<beside>${BY_WORKSHOP})$`, 'iu'),
];
/** `Paris (A)`: the letter on the coins of a place. Two letters may be its country. */
const LETTER = /^(?<name>\p{L}{3}.*?) ?[([](?<beside>\p{Lu}(?:\/\p{Lu})?)[)\]]$/u;
/** `zecca incerta (Sicilia?)`: a mint that is not known, and where it may have been. */
const NOT_KNOWN = either(
  `uncertain mint, unknown mint, unidentified mint, mint uncertain, zecca incerta, zecca ignota, atelier incertain, atelier inconnu,
  atelier indéterminé, unbestimmte münzstätte, unbekannte münzstätte, unsichere münzstätte, ceca incierta, onbekende munt`,
);
const UNCERTAIN = new RegExp(`^(?<name>${NOT_KNOWN})[ ,:]*[([]?(?<beside>[^)\\]]*\\p{L}[^)\\]]*)[)\\]]?$`, 'iu');

/** Cuts off what is beside the name of a denomination, or of a mint; null where the whole may be a name. */
export function besideName(text: string, field: 'mint' | 'denomination'): BesideName | null {
  const first = (forms: readonly RegExp[]): Pick<BesideName, 'name' | 'beside'> | null => {
    const { name = '', beside = '' } = forms.map((form) => form.exec(text)?.groups).find((found) => found) ?? {};
    return name === '' ? null : { name: name.trim(), beside };
  };
  if (field === 'denomination') {
    const made = first(PLATED_AT_END);
    return made && { ...made, because: `"${made.name}" is read; "${made.beside}" says how the piece was made, and is no part of a denomination. Write it with the metal, as in silver, fourrée, or under peculiarities or made.` };
  }
  const unsure = first([UNCERTAIN]);
  if (unsure)
    return { ...unsure, name: 'unknown', because: `The mint is read as unknown; "${unsure.beside}" is where it may have been. Write that in a column of the area of the mint, or write ${unsure.beside} with a question mark as the mint.` };
  const workshop = first(AT_A_MINT);
  if (workshop)
    return { ...workshop, because: `"${workshop.name}" is read; "${workshop.beside}" is one of its workshops and no mint. Write it in a column of notes, or with the design or legend that shows it.` };
  const letter = first([LETTER]);
  return letter && { ...letter, because: `"${letter.name}" is read; "${letter.beside}" is the letter on its coins. Write it with the legend or the date as it stands on the piece.` };
} // prettier-ignore
