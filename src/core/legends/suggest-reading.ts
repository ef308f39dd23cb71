import type { Abbreviation, Series } from './abbreviations.ts';
import { ABBREVIATIONS, ENGLISH_WORDS, IN_COMPANY } from './abbreviations.ts';
import type { Legend } from './legend.ts';
import { normalLegend } from './normal-legend.ts';

/** A reading proposed from the table of abbreviations, with the books it rests on. It is a proposal: the keeper decides. */
export type SuggestedReading = { readonly text: string; readonly series: Series; readonly sources: readonly string[] };

/** As many words as the longest phrase of the table has. */
const LONGEST_PHRASE = 4;

/** The words of a legend as they stand, letters restored and supplied included; a loss is a word of its own. */
function wordsOf(legend: Legend): readonly string[] {
  const text = legend.parts.map((part) => {
    if (part.kind === 'lost') return ' … ';
    return part.kind === 'break' || part.kind === 'stop' || part.kind === 'mark' ? ' ' : part.text;
  });
  return text
    .join('')
    .split(' ')
    .filter((word) => word !== '');
}

/** A word as it is printed inside a sentence: small letters after the first, and V as u where it is no consonant. */
function plainWord(word: string): string {
  if (/^[IVXLC]+$/u.test(word) || word === '…') return word;
  const small = word.toLowerCase().replace(/v(?![aeio])|(?<=q)v/gu, 'u');
  if (/^(?:rex|regina|et|in|de|on)$/u.test(small)) return small;
  return small.charAt(0).toUpperCase() + small.slice(1);
}

/** The rows that hold for a legend, by their words in the normal form. A word by itself needs no company. */
function rowsFor(series: Series, phrase: string): ReadonlyMap<string, Abbreviation> {
  const { words, company } = IN_COMPANY[series];
  const sure = company.test(phrase) || !phrase.includes(' ');
  const rows = ABBREVIATIONS.filter((row) => row.series === series && (sure || !words.includes(row.write)));
  return new Map(rows.map((row) => [row.write.split(' ').map(normalLegend).join(' '), row]));
}

/**
 * Writes out the Latin abbreviations of a legend: `EDW R' ANGL' DNS hYB'` as `Edwardus rex Angliae dominus Hiberniae`.
 * Null when the table has none of its words, or the legend is not in Latin letters.
 */
export function suggestReading(legend: Legend): SuggestedReading | null {
  if (legend.script !== 'latin') return null;
  const words = wordsOf(legend);
  const series: Series = words.some((word) => ENGLISH_WORDS.test(word.toUpperCase())) ? 'english' : 'roman';
  const rows = rowsFor(series, words.map(normalLegend).join(' '));
  const read: string[] = [];
  const sources = new Set<string>();
  for (let at = 0; at < words.length;) {
    const lengths = Array.from({ length: LONGEST_PHRASE }, (_, i) => LONGEST_PHRASE - i).filter(
      (length) => at + length <= words.length,
    );
    const phrase = (length: number): string =>
      words
        .slice(at, at + length)
        .map(normalLegend)
        .join(' ');
    const length = lengths.find((count) => rows.has(phrase(count)));
    const row = length === undefined ? undefined : rows.get(phrase(length));
    read.push(row?.means ?? plainWord(words[at] ?? ''));
    if (row !== undefined) sources.add(row.source);
    at += length ?? 1;
  }
  return sources.size === 0 ? null : { text: read.join(' '), series, sources: [...sources] };
}
