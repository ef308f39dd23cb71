import {
  AFTER,
  CLASS,
  COUNTED_BY_VOLUME,
  EDITION,
  editionNumber,
  isNeverABook,
  ORDINAL,
  PAGE,
  PLATE,
  ROMAN_VOLUME,
  VOLUME,
  VOLUME_BY_PART,
} from './reference-words.ts';
import { shown } from './ranges.ts';
import type { Lettering, Numbering } from './ranges.ts';
import { plainVolume, volumeNumber } from './reference.ts';
import type { CitedWork } from './reference.ts';

/** The book a text begins with, and what follows its name. */
export type Head = {
  readonly work: string;
  readonly named: string;
  readonly edition?: number;
  readonly volume?: string;
  readonly numbers?: Numbering;
  readonly letters?: Lettering;
  readonly rest: string;
};

/** A name taken apart: `RIC II.1²` is RIC, volume 2.1, edition 2. */
type Name = {
  readonly work: string;
  readonly base: RegExp;
  /** The plain letter or figure that it begins with, small; empty where that is another sign. */
  readonly first: string;
  readonly length: number;
  readonly volume?: string;
  readonly edition?: number;
};

/** The book in the list that a text begins with: the longest name, with its own volume and edition. `other edition`: only that is missing. */
export function knownWork(text: string, works: readonly CitedWork[]): Head | 'other edition' | null {
  let best: { head: Head; worth: number } | null = null;
  let otherEdition = false;
  const first = firstOf(text);
  for (const cited of works) {
    const { id, numbers, letters } = cited;
    for (const name of allNamesOf(cited)) {
      // Most names begin with another letter: a quick look saves a slow one.
      if (name.first !== first && name.first !== '' && first !== '') continue;
      const match = name.base.exec(text);
      if (match === null || runsOn(match[0], text.slice(match[0].length))) continue;
      const isCounted = numbers === 'by-volume' || COUNTED_BY_VOLUME.test(match[0].trim());
      const after = withVolume(text.slice(match[0].length), name.volume !== undefined, isCounted);
      if (name.volume !== undefined && plainVolume(after.volume ?? '') !== name.volume) continue;
      if (name.volume === undefined && after.volume !== undefined && /\d$/u.test(match[0])) continue;
      if (name.edition !== undefined && after.edition === undefined) otherEdition = true;
      if (name.edition !== undefined && after.edition !== name.edition) continue;
      const worth = name.length + (name.volume === undefined ? 0 : 100) + (name.edition === undefined ? 0 : 100);
      if (best !== null && worth <= best.worth) continue;
      const { volume, edition, rest } = after;
      const more = {
        ...(name.volume !== undefined || volume === undefined ? {} : { volume }),
        ...(name.edition !== undefined || edition === undefined ? {} : { edition }),
      };
      best = {
        worth,
        head: {
          work: id,
          named: match[0].trim(),
          ...more,
          ...(numbers && { numbers }),
          ...(letters && { letters }),
          rest,
        },
      };
    }
  }
  return best?.head ?? (otherEdition ? 'other edition' : null);
}

function firstOf(text: string): string {
  return /^[a-z\d]/i.exec(text)?.[0].toLowerCase() ?? '';
}

/** Nobody cites a book by more letters than this, and no pattern can be made of tens of thousands. */
const LONGEST = 1000;
/** The patterns of a book's names, made once for each book: a cabinet has thousands of references. */
const patterns = new WeakMap<CitedWork, readonly Name[]>();

function allNamesOf(cited: CitedWork): readonly Name[] {
  const known = patterns.get(cited);
  if (known !== undefined) return known;
  const { id, names = [] } = cited;
  const short = [id, ...names].filter(({ length }) => length <= LONGEST);
  const made = short.flatMap((each, at) => (at === 0 && each === id ? [nameOf(id, id)] : namesOf(id, each)));
  patterns.set(cited, made);
  return made;
}

/** A name as it stands, and, where it ends with a volume, taken apart. */
function namesOf(work: string, name: string): readonly Name[] {
  const { edition, rest } = withEditionAtEnd(name);
  const [, base, volume] =
    /^(.*\p{L}.*?)[\s,]+(?:vol(?:ume|\.)?\s?)?([IVX]+(?:[./]\d[a-z]?)?|\d{1,2})$/u.exec(rest) ?? [];
  const whole = edition === undefined ? [nameOf(work, name)] : [];
  const extra = edition === undefined ? {} : { edition };
  if (base === undefined || volume === undefined)
    return edition === undefined ? whole : [{ ...nameOf(work, rest), ...extra }];
  return [...whole, { ...nameOf(work, base), volume: plainVolume(volume), ...extra }];
}

function withEditionAtEnd(name: string): { readonly rest: string; readonly edition?: number } {
  for (const { index: at } of name.matchAll(/[\s(¹²³⁴⁵⁶⁷⁸⁹]+/gu)) {
    const tail = name.slice(at).replace(/^[\s(]+/u, '');
    const found = EDITION.map((pattern) => pattern.exec(tail)).find((match) => match !== null);
    if (found?.[1] !== undefined && at > 0 && /^\)?$/u.test(tail.slice(found[0].length)))
      return { rest: name.slice(0, at), edition: editionNumber(found[1]) };
  }
  return { rest: name };
}

/** A name as a pattern: any case, `&` as `and`, stops and blanks as one likes. */
function nameOf(work: string, name: string): Name {
  const words = name.trim().split(/(\s*&\s*|[.,]?\s+|\.)/u);
  const source = words.map((word, at) => {
    if (at % 2 === 0) return word.replace(/[\\^$*+?()[\]{}|/]/gu, '\\$&');
    if (word.includes('&')) return '\\.?\\s*(?:&|and\\b|et\\b|und\\b)\\s*';
    if (at === words.length - 2 && words.at(-1) === '') return word.includes('.') ? '\\.?' : '';
    return word.includes('.') ? '\\.?\\s*' : word.includes(',') ? ',?\\s+' : '\\s+';
  });
  // D. & H. for D&H.
  const stop = /&\s*\p{L}$/u.test(name) ? '\\.?' : '';
  const base = new RegExp(`^${source.join('')}${stop}`, 'iu');
  return { work, base, first: firstOf(name.trim()), length: name.length };
}

const RAISED = /^[¹²³⁴⁵⁶⁷⁸⁹]/u;

/** A name ends where no letter follows, and a figure only after a letter; a volume does not end before `.1` or `/1`, its part. */
function runsOn(name: string, rest: string): boolean {
  if (/^[\p{L}\p{M}]/u.test(rest)) return !name.endsWith('.');
  if (/^-/u.test(rest))
    return !/^-\d[\p{L}\p{N}./]*(?![\p{L}\p{N}])(?!.*\d)/u.test(rest) && !/^-(?=\s|$|[,;(])/u.test(rest);
  if (/^\p{N}/u.test(rest) && !RAISED.test(rest)) return !/[\p{L}.]$/u.test(name);
  return /(?:\d|\b[IVX]+)$/u.test(name) && /^[./]\s?\d/u.test(rest);
}

/** Takes the edition and the volume off the front of what follows a name; a bare figure only where one is expected. */
export function withVolume(
  text: string,
  bareToo: boolean,
  isCounted: boolean,
): { readonly rest: string; readonly volume?: string; readonly edition?: number } {
  let rest = text.replace(/^[\s,:]+/u, '');
  const found: { volume?: string; edition?: number } = {};
  for (let more = true; more;) {
    more = false;
    const inner = /^\(([^()]{1,30})\)/u.exec(rest);
    const open = inner?.[1]?.trim() ?? rest;
    const isBeforeNumber = inner === null || /^\s*\p{L}?\d/u.test(rest.slice(inner[0].length));
    const edition = [...EDITION, ...(isBeforeNumber ? [ORDINAL] : [])]
      .map((pattern) => pattern.exec(open))
      .find((match) => match !== null);
    if (found.edition === undefined && edition?.[1] !== undefined && (inner === null || edition[0] === open)) {
      found.edition = editionNumber(edition[1]);
      rest = (inner === null ? rest.slice(edition[0].length) : rest.slice(inner[0].length)).replace(/^[\s,:]+/u, '');
      more = true;
    }
    const volume = found.volume === undefined ? volumeAt(rest, bareToo, isCounted) : null;
    if (volume !== null) {
      found.volume = volume.volume;
      rest = rest.slice(volume.length).replace(/^[\s,:]+/u, '');
      more = true;
    }
  }
  return { ...found, rest };
}

/** A number, a dash or a word for what the book lacks, without which a Roman figure is the number itself. */
function isNumberOrUnlisted(text: string): boolean {
  const isUnlisted = AFTER.some(([pattern, relation]) => relation === 'unlisted' && pattern.test(text.trim()));
  return isUnlisted || /[\p{N}–—]|\s-/u.test(text.replace(/^[²³]/u, ''));
}

function volumeAt(
  text: string,
  bareToo: boolean,
  isCounted: boolean,
): { readonly volume: string; readonly length: number } | null {
  const said = VOLUME.exec(text);
  if (said?.[1] !== undefined) return { volume: tidyVolume(said[1]), length: said[0].length };
  const byPart = isCounted ? VOLUME_BY_PART.exec(text) : null;
  if (byPart !== null && isNumberOrUnlisted(text.slice(byPart[0].length)))
    return { volume: partedVolume(byPart), length: byPart[0].length };
  const roman = ROMAN_VOLUME.exec(text);
  const follows = roman === null ? '' : text.slice(roman[0].length);
  if (roman?.[1] !== undefined && (isNumberOrUnlisted(follows) || bareToo))
    return { volume: tidyVolume(roman[1]), length: roman[0].length };
  const bare = bareToo ? /^(\d{1,2}(?:[./]\d)?)(?=[\s,:²³(])/u.exec(text) : null;
  return bare?.[1] === undefined ? null : { volume: bare[1], length: bare[0].length };
}

/** `IVc`, `IV.iii` and `IV(3)` as `IV.3`. */
function partedVolume([, volume = '', letter, roman, inBrackets]: RegExpExecArray): string {
  const written = roman ?? inBrackets ?? '';
  const part = letter === undefined ? (volumeNumber(written.toUpperCase()) ?? written) : ' abcde'.indexOf(letter);
  return `${volume}.${String(part)}`;
}

/** `II, part 1` as `II.1`. */
function tidyVolume(volume: string): string {
  return volume
    .replace(/,?\s(?:part|pt|teil|partie|parte)\.?\s?/iu, '.')
    .replace(/\s/gu, '')
    .toUpperCase()
    .replace(/(\d)([A-Z])$/u, (_, digit: string, letter: string) => digit + letter.toLowerCase());
}

const PARTICLES = '(?:van|von|de|di|del|della|da|do|dos|du|la|le|st|der|den|ten|ter|vom)';
const WORD = "\\p{L}(?:[\\p{L}\\p{M}\\d&'’-]|\\.(?!\\d))*";
const JOINED = new RegExp(
  `^(?:${PARTICLES}\\s+){0,2}${WORD}(?:\\s*(?:&|\\band\\b|\\bund\\b|\\bet\\b)\\s*${WORD})?`,
  'iu',
);

/**
 * With no list of works to go by, the first word is the key; two names joined by "&" make one, `dalton-hamer`, and so do
 * a name and its particle. With `every word`, all words before the number are its name: `SNG Copenhagen 123`.
 */
export function unknownWork(text: string, names: 'first word' | 'every word'): Head | null {
  const key = /^[a-z]+(?:-[a-z0-9]+)+(?=\s)/u.exec(text)?.[0];
  if (key !== undefined && /^\s.*(?:[\p{L}\p{N}]|[-–—])/su.test(text.slice(key.length)))
    return { work: key, named: key, ...withVolume(text.slice(key.length), false, false) };
  const joined = /^\p{L}+(?=[-#°]?\d)/u.exec(text)?.[0] ?? JOINED.exec(text)?.[0];
  if (joined === undefined) return null;
  let named = joined.replace(/-$/u, '');
  if (/\d$/u.test(named) && /^[./]\d/u.test(text.slice(named.length))) return null;
  if (isNeverABook(named) || /^pp?$/u.test(named.replace('.', ''))) return null;
  for (let more = names === 'every word'; more;) {
    const next = new RegExp(`^\\s+(?![IVX]+(?:[\\s,./]|$))${WORD}`, 'u').exec(text.slice(named.length))?.[0];
    const word = next?.trim() ?? '';
    more =
      next !== undefined &&
      !/\d/u.test(word) &&
      !isNeverABook(word) &&
      /\d/u.test(text.slice(named.length + next.length));
    if (more && ![PAGE, PLATE, CLASS, VOLUME].some((pattern) => pattern.test(text.slice(named.length).trim())))
      named += next ?? '';
    else more = false;
  }
  const { volume, edition, rest } = withVolume(text.slice(named.length), false, COUNTED_BY_VOLUME.test(named));
  if (volume === undefined && COUNTED_BY_VOLUME.test(named) && /^[IVX]+(?:[./]\d)?$/u.test(rest)) return null;
  return {
    work: keyOf(named),
    named: named.replace(/[,:]$/u, ''),
    ...(volume === undefined ? {} : { volume }),
    ...(edition === undefined ? {} : { edition }),
    rest,
  };
}

/** The key of a name: `D & H`, `D&H` and `D. and H.` are one book. */
function keyOf(named: string): string {
  const words = named.toLowerCase().split(/\s*(?:&|\band\b|\bund\b|\bet\b)\s*|\s+/u);
  return words
    .map((word) => word.replace(/\.$/u, ''))
    .filter((word) => word !== '')
    .join('-');
}

/** `C 45`: a letter that lists give several books by, where none of the cabinet's is called so. */
export function letterAlone(text: string, works: readonly CitedWork[]): string | undefined {
  const { letter, number = '' } = /^(?<letter>[A-Z])\.?\s?(?<number>\d[^\s,;]*)/u.exec(text)?.groups ?? {};
  if (letter === undefined || works.some(({ names = [] }) => names.some((name) => name.replace('.', '') === letter)))
    return undefined;
  return `"${shown(text)}" does not begin with a work: ${letter} stands for several. Write its name in full, then ${number}.`;
}
