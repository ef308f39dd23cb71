import type { NamedInSheet } from '../plan/draft.ts';
import { plainLetters } from '../../core/file-id.ts';
import { formatInLine } from '../../catalogue/write/write-yaml.ts';
import type { Said } from './cell-result.ts';
import { besideName } from './beside-name.ts';
import { fact, unread } from './cell-result.ts';
import { BY_KIND } from './word-cell.ts';

type Named = 'ruler' | 'mint' | 'denomination';

const REIGN = /^(.*?\D)[,;:]? ?[([]?(?:reg\.|r\.|reigned|regn\.|reg\. ab|règne|regno) ?([^)\]]*\d[^)\]]*)[)\]]?$/i;
const YEARS_IN_BRACKETS = /^(.*?)[,;:]? ?[([]((?:AD|BC|A\.D\.|c\.|ca\.|AH)? ?\d{1,4}[^)\]]*)[)\]]$/i;
const FIRST_YEAR = String.raw`(?:AD |A\.D\. |AH |c\. ?)?\d{1,4} ?(?:BC|B\.C\.)?`;
const LAST_YEAR = String.raw`\d{1,4} ?(?:AD|BC|A\.D\.|B\.C\.|v\. ?Chr\.|n\. ?Chr\.)?`;
const YEARS_AFTER = new RegExp(String.raw`^(.*?\D)[,;:]? (${FIRST_YEAR} ?[-–/] ?${LAST_YEAR})$`, 'i');

/** A name, or several of a joint reign, with the years a sheet puts behind it; a question mark behind it is a doubt. */
export function readNames(text: string, field: Named): readonly Said[] {
  if (field === 'ruler' && POSTHUMOUS.test(text))
    return [
      ...readNames(text.replace(POSTHUMOUS, ''), field),
      { kind: 'more', field: 'peculiarities', values: ['posthumous'] },
    ];
  const parts = field === 'ruler' ? text.split(/\s*;\s*|\s+\/\s+|\s*\n\s*/) : [text];
  const doubtful = parts.some((part) => part.includes('?'));
  const names = parts.map((part) => part.replace(DOUBT, '$1').trim()).filter((part) => part !== '');
  const [only = ''] = names;
  const cut = field === 'ruler' ? null : besideName(only, field);
  if (cut !== null) {
    const { name, beside, because } = cut;
    const read = name === 'unknown' ? fact(field, name) : readNames(name, field);
    return [...read, { kind: 'unread', field, because, text: beside }];
  }
  const odd = names.map((name) => noName(name, field)).find((because) => because !== null);
  if (odd !== undefined) return unread(field, odd);
  const read = names.map((name) => (field === 'ruler' ? withYears(name) : { name: tidy(name) }));
  return [
    { kind: 'name', field, names: read },
    ...(doubtful ? [{ kind: 'fact', field: `sure.${field}`, value: 'possible' } as const] : []),
  ];
}

/** A question mark behind a name, or before the years behind it: `Foscari? (1423-1457)`. */
const DOUBT = /\s*(?:\(\s*\?\s*\)|\[\s*\?\s*\]|\?)((?:\s*[([][^()[\]]*\d[^()[\]]*[)\]])?)$/;

function withYears(text: string): NamedInSheet {
  for (const form of [YEARS_IN_BRACKETS, REIGN, YEARS_AFTER]) {
    const [, name, years] = form.exec(text) ?? [];
    if (name !== undefined && years !== undefined && /\p{L}/u.test(name))
      return { name: tidy(name.replace(/[,;:(]+$/, '')), years: years.trim() };
  }
  return { name: tidy(text) };
}

function tidy(text: string): string {
  return text.replace(/\s+/g, ' ').trim();
}

/** Gods and personifications whose heads coins show, and in whose name none was struck; plain letters. Common practice. */
const GODS: ReadonlySet<string> = new Set(
  `roma hercules herakles heracles apollo apollon zeus jupiter juppiter athena minerva mars ares venus aphrodite diana artemis sol helios
  mercury mercurius hermes nike liberty libertas ceres demeter janus saturn neptune poseidon juno hera bacchus dionysos
  dionysus serapis sarapis isis concordia fortuna tyche pietas medusa pan silenus vulcan vesta cybele melqart baal britannia hibernia
  helvetia marianne justitia`.split(/\s+/),
);
/** Words that describe a side, and are in no name. */
const DESCRIBING =
  'with|wit|mit|avec|con|struck|minted|issued|coined|engraved|showing|geprägt|frappée?|coniata?|bust|head|buste|tête|kopf|büste|in the name of';
const PHRASE = new RegExp(`(?:^|\\s)(?:${DESCRIBING})(?=\\s|$)`, 'iu');
const BY_WATER = /\s(?:on the|upon|am|an der|sur|sul|sull)\s?\p{Lu}/u;
const OF_SOMEBODY = /\s(?:of|von|des|du|de|di)\s+(?:the\s+)?\p{Lu}/u;

/** A mint's letter or sign, several of them, or a place in two or three letters and a stop: `A`, `(m)`, `•`, `D, F, G, J`, `CA`, `Wü.` */
const IN_SHORT = /^[([]?(?:\p{Lu}{1,2}(?:\s*[,/+-]\s*\p{Lu}{1,2})*|\p{Lu}\p{Ll}{1,2}\.|\p{L}|\P{L}+)[)\]]?$/u;
/** One of two places or denominations: `London or Canterbury`, `Dupondius/As`. For rulers, who may also rule together, it is asked later. */
const EITHER = /\s(?:or|oder|ou|eller)\s|\p{L}{3}\/\p{L}{3}/u;
/** Said of a ruler who was dead when the piece was struck. */
const POSTHUMOUS = /,? [([]?(?:posthum(?:ous(?:ly)?|e)?|postumo|póstumo|postuum)\.?[)\]]?$/iu;
/** Words for several that are not named. */
const MANY =
  /^(?:various|several|misc|div|diverse?|versch|verschiedene?|diverses?|vari[eo]|varios|varias|mixed|gemischt)\.?$/iu;

/** Why a text is no name of a ruler, a mint or a denomination; null where it may be one. */
function noName(text: string, field: Named): string | null {
  const plain = plainLetters(text).trim();
  if (PHRASE.test(text))
    return `"${text}" is more than a name. Write the ${field} alone, and the rest where it belongs.`;
  if (field === 'mint' && IN_SHORT.test(text))
    return `"${text}" is a mint in short, and several places have used it. Write the place, or what it stands for under words: in the mapping, as in mint: { ${formatInLine(text)}: the name of the place }.`;
  if (field !== 'ruler' && EITHER.test(text))
    return `"${text}" leaves open which. Write the more likely one with a question mark behind it, or leave it out.`;
  if (MANY.test(text)) return `"${text}" names none. Leave it out, or write which.`;
  if (field === 'ruler' && GODS.has(plain))
    return `"${text}" is shown on coins and struck none. Write the ruler or issuer here, and ${text} in the design.`;
  if (field === 'ruler' && BY_WATER.test(text))
    return `"${text}" reads like a place and not like a ruler. Make it the mint or the issuer.`;
  if (field === 'denomination' && BY_KIND.get('coin')?.includes(plain) === true)
    return `"${text}" says what sort of object it is, and no denomination. Make it the kind.`;
  if (field === 'denomination' && OF_SOMEBODY.test(text))
    return `"${text}" is a denomination with a ruler or a place. Write each in a column of its own, or add a pattern like {denomination} of {ruler}.`;
  return null;
}

/** The names of rulers' files for whom a piece was struck. */
export function readStruckFor(text: string): readonly Said[] {
  const names = text.split(/\s*;\s*/);
  if (names.every((name) => /^[a-z0-9]+(-[a-z0-9]+)*$/.test(name))) return fact('struck-for', names);
  return unread('struck-for', `"${text}" is not the name of a ruler's file. Write it like edward-i.`);
}
