import { good, refuse } from '../../../core/outcome.ts';
import type { Outcome } from '../../../core/outcome.ts';
import { decodeAs } from './encodings.ts';

/** What a text that is not Unicode is weighed as, in the order in which equals are taken. */
const CANDIDATES = [
  'windows-1252',
  'windows-1250',
  'windows-1251',
  'windows-1253',
  'windows-1254',
  'windows-1256',
  'macintosh',
] as const;

const SAMPLE_LINES = 2000;
const PREVIEW = 90;

/** Readings that are less than this share as plausible as the best are no readings: they make no words at all. */
const LEAST = 0.6;

type Weighed = {
  readonly encoding: string;
  readonly doubts: readonly { readonly encoding: string; readonly preview: string }[];
};

/** The likeliest encoding of these bytes, and every other that makes different words that could be meant. */
export function weighEncodings(bytes: Uint8Array): Outcome<Weighed> {
  const { used, lines } = highBytes(bytes);
  const readings: { encoding: string; letters: string; lines: readonly string[]; weight: number }[] = [];
  for (const encoding of CANDIDATES) {
    const letters = decodeAs(used, encoding);
    // A byte that an encoding has no letter for is a sign that the file is in another.
    if (/[\x80-\x9f\uFFFD]/.test(letters) || readings.some((known) => known.letters === letters)) continue;
    const decoded = lines.map((line) => decodeAs(line, encoding));
    readings.push({ encoding, letters, lines: decoded, weight: plausibility(decoded) });
  }
  readings.sort((a, b) => b.weight - a.weight);
  const best = readings[0];
  if (best === undefined) {
    return refuse(
      'The letters of this file are in no encoding that is known here. Save it as UTF-8, or as .xlsx or .ods.',
    );
  }
  const possible = readings.filter(({ weight }) => weight > best.weight * LEAST);
  if (possible.length === 1) return good({ encoding: best.encoding, doubts: [] });
  const at = tellingLine(possible.map((reading) => reading.lines));
  const doubts = possible.map(({ encoding, lines: decoded }) => ({ encoding, preview: cut(decoded, best.lines, at) }));
  return good({ encoding: best.encoding, doubts });
}

/** Every byte above 127 that occurs, once each, and the lines they are in, as many as are needed to weigh. */
function highBytes(bytes: Uint8Array): { readonly used: Uint8Array; readonly lines: readonly Uint8Array[] } {
  const seen = new Set<number>();
  const lines: Uint8Array[] = [];
  let from = 0;
  let isHigh = false;
  for (let at = 0; at <= bytes.length; at += 1) {
    const byte = bytes[at] ?? 10;
    if (byte > 127) {
      seen.add(byte);
      isHigh = true;
    } else if (byte === 10 || byte === 13) {
      if (isHigh && lines.length < SAMPLE_LINES) lines.push(bytes.subarray(from, Math.min(at, from + 4000)));
      from = at + 1;
      isHigh = false;
    }
  }
  return { used: Uint8Array.from([...seen].sort((a, b) => a - b)), lines };
}

/** The line that reads in the most different ways. */
function tellingLine(readings: readonly (readonly string[])[]): number {
  let best = { at: 0, ways: 0 };
  const count = readings[0]?.length ?? 0;
  for (let at = 0; at < count; at += 1) {
    const ways = new Set(readings.map((lines) => lines[at])).size;
    if (ways > best.ways) best = { at, ways };
  }
  return best.at;
}

/** A stretch of that line round its first letter that is in doubt. */
function cut(lines: readonly string[], best: readonly string[], at: number): string {
  const line = lines[at] ?? '';
  const first = Math.max(0, (best[at] ?? '').search(/[^\0-\x7f]/));
  const from = Math.max(0, first - PREVIEW / 3);
  return `${from > 0 ? '…' : ''}${line.slice(from, from + PREVIEW).trim()}${line.length > from + PREVIEW ? '…' : ''}`;
}

/** Letters of the languages that each script is mostly met in here, legends included; the others of it are rare. */
const COMMON = new Set(
  'éèàâêîôûçëïüöäßñáíóúåæøÉÈÀÇÖÜÄÑÁÍÓÚÅÆØÞþÐðœŒÂÊÎÔãõ' +
    'łńśźżćąęŁŚŻŹĆšžčřěůýŠŽČŘďťňľĺőűŐŰţşăŢŞĂđĐğıİĞ' +
    'оеаинтсрвлкмдпуяьыгзбчйхжшюцщэфёъОЕАИНТСРВЛКМДПУЯГЗБЧЙХЖШЮЦЩЭФ' +
    'αοιετσνηυρπκμλωςγδθχφβξζψάέήίόύώΑΟΙΕΤΣΝΗΥΡΠΚΜΛΩΓΔΘΧΦΒΞΖΨΆΈΉΊΌΎΏ',
);
/** Signs that people type or their programs put in. */
const SIGNS = new Set('£€©®°½¼¾×±§•™«»–—‘’“”„…‚·²³ªº\u00a0µ№‰¿¡');
const VOWELS = /[аеёиоуыэюяіїєαεηιουωάέήίόύώϊϋΐΰ]/iu;

/** How far lines read as words people write: 0 not at all, 1 wholly. Each sign above 127 counts once. */
function plausibility(lines: readonly string[]): number {
  let sum = 0;
  let count = 0;
  for (const line of lines) {
    for (const { 0: sign, index } of line.matchAll(/[^\0-\x7f]/gu)) {
      count += 1;
      sum += weightOf(sign, line, index);
    }
  }
  return count === 0 ? 0 : sum / count;
}

function weightOf(sign: string, line: string, at: number): number {
  const before = line[at - 1] ?? ' ';
  const after = line[at + sign.length] ?? ' ';
  if (!/[\p{L}\p{M}]/u.test(sign)) return weightOfSign(sign, before, after);
  if (/\d/.test(before) || /\d/.test(after)) return 0.1;
  const isLower = /\p{Ll}/u.test(sign);
  // A capital inside a word written small, or the other way round.
  if (/\p{Lu}/u.test(sign) && /\p{Ll}/u.test(before)) return 0;
  if (isLower && (/\p{Lu}/u.test(after) || (/\p{Lu}/u.test(before) && /\p{Lu}/u.test(line[at - 2] ?? ' ')))) return 0.1;
  const word = wordAt(line, at);
  const script = scriptOf(sign);
  if (word.match(/\p{L}/gu)?.some((letter) => scriptOf(letter) !== script)) return 0;
  if (script === 'latin') {
    // Three foreign letters in a row are another alphabet, misread.
    if (/[^\0-\x7f]{3}/u.test(word)) return 0.1;
  } else if (script !== 'arabic' && word.length > 3 && !VOWELS.test(word)) return 0.3;
  return script === 'arabic' || COMMON.has(sign) ? 1 : 0.6;
}

function weightOfSign(sign: string, before: string, after: string): number {
  const isInWord = /\p{L}/u.test(before) && /\p{L}/u.test(after);
  if (isInWord) return sign === '’' || sign === '·' || sign === '–' ? 1 : sign === '‘' ? 0.4 : 0;
  // Signs come one by one; a run of them is a word of another alphabet, misread.
  if (/[^\0-\x7f\p{L}\s]/u.test(after) && !/[»”’“‘«…]/.test(after + sign)) return 0.1;
  return SIGNS.has(sign) ? 1 : 0.3;
}

function wordAt(line: string, at: number): string {
  let from = at;
  let to = at;
  while (from > 0 && at - from < 40 && /[\p{L}\p{M}]/u.test(line[from - 1] ?? '')) from -= 1;
  while (to < line.length && to - at < 40 && /[\p{L}\p{M}]/u.test(line[to] ?? '')) to += 1;
  return line.slice(from, to);
}

function scriptOf(letter: string): 'latin' | 'cyrillic' | 'greek' | 'arabic' | 'other' {
  if (/\p{Script=Latin}/u.test(letter)) return 'latin';
  if (/\p{Script=Cyrillic}/u.test(letter)) return 'cyrillic';
  if (/\p{Script=Greek}/u.test(letter)) return 'greek';
  return /\p{Script=Arabic}/u.test(letter) ? 'arabic' : 'other';
}
