import { lettersPerLine } from './type-size.ts';

/** A remark on how a label reads: a warning, or a refusal of what nobody could read. */
export type LabelRemark = { readonly weight: 'warns' | 'refuses'; readonly says: string; readonly source: string };

const SMITHSONIAN = 'Smithsonian Institution, Guidelines for Accessible Exhibition Design';
const SERRELL = 'B. Serrell, Exhibit Labels, 2nd ed.';
const OURS = 'our own judgement: a club case is read at 40–50 cm';

/** The limits, each with where it is printed. */
export const LABEL_LIMITS = [
  { what: 'words in a sentence', most: 25, source: SMITHSONIAN },
  { what: 'words on a label', most: 100, source: SMITHSONIAN },
  { what: 'letters in a line', most: 55, source: SMITHSONIAN },
  { what: 'words in a title', most: 7, source: SERRELL },
  { what: 'words in an introduction', most: 300, source: SERRELL },
  { what: 'points of type, to be read with ease', least: 18, source: OURS },
  { what: 'points of type, to be read at all', least: 8, source: OURS },
] as const;

export function countWords(text: string): number {
  return text.split(/\s+/).filter((word) => /[\p{L}\p{N}]/u.test(word)).length;
}

/** The sentences of a text. A point after a single letter, a figure or a known short form ends none. */
export function sentencesOf(text: string): readonly string[] {
  return text
    .replace(/\b(\p{L}|c|cf|no|vol|pp?|mm|St)\.(?=\s)/gu, '$1\u2024')
    .split(/(?<=[.!?…])\s+(?=[\p{Lu}\p{N}“"(])/u)
    .map((sentence) => sentence.replace(/\u2024/g, '.').trim())
    .filter((sentence) => sentence !== '');
}

/** What a judge would remark on a label of this text, set so wide (millimetres) in type of this size (points). */
export function checkLabel(text: string, width: number, points: number): readonly LabelRemark[] {
  const remarks: LabelRemark[] = [];
  const words = countWords(text);
  if (words > 100)
    remarks.push({
      weight: 'warns',
      says: `This label has ${String(words)} words; at most 100 are read.`,
      source: SMITHSONIAN,
    });
  for (const sentence of sentencesOf(text)) {
    const long = countWords(sentence);
    if (long > 25)
      remarks.push({
        weight: 'warns',
        says: `The sentence “${sentence.slice(0, 40)}…” has ${String(long)} words; at most 25 are followed.`,
        source: SMITHSONIAN,
      });
  }
  const letters = lettersPerLine(width, points);
  if (letters > 55)
    remarks.push({
      weight: 'warns',
      says: `A line of this label holds ${String(letters)} letters; at most 55 are followed.`,
      source: SMITHSONIAN,
    });
  if (points < 8)
    remarks.push({
      weight: 'refuses',
      says: `Type of ${String(points)} pt cannot be read in a case. Write at least 8 pt.`,
      source: OURS,
    });
  else if (points < 18)
    remarks.push({
      weight: 'warns',
      says: `Type of ${String(points)} pt is hard to read in a case; 18 pt is easy.`,
      source: OURS,
    });
  return remarks;
}

/** What a judge would remark on a title. */
export function checkTitle(title: string): readonly LabelRemark[] {
  const words = countWords(title);
  return words > 7
    ? [
        {
          weight: 'warns',
          says: `The title “${title}” has ${String(words)} words; at most 7 are read.`,
          source: SERRELL,
        },
      ]
    : [];
}
