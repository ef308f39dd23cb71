import { lettersPerLine } from './type-size.ts';

/** A remark on how a label reads: a warning, or a refusal of what nobody could read. */
export type LabelRemark = { readonly weight: 'warns' | 'refuses'; readonly says: string; readonly source: string };

const SMITHSONIAN = 'Smithsonian Institution, Guidelines for Accessible Exhibition Design';
const SERRELL = 'B. Serrell, Exhibit Labels, 2nd ed.';
const OURS = 'our own judgement: a club case is read at 40–50 cm';

/** Letters in a line that are followed with ease. Source: Smithsonian Institution, as above. */
export const LETTERS_IN_LINE = 55;
/** The most of each that is read or followed. Sources: Smithsonian for the first two, Serrell for titles. */
const MOST = { wordsOnLabel: 100, wordsInSentence: 25, wordsInTitle: 7 } as const;
/** Points of type that are read with ease, and read at all. */
const EASY_POINTS = 18;
export const LEAST_POINTS = 8;

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
  if (words > MOST.wordsOnLabel)
    remarks.push({
      weight: 'warns',
      says: `This label has ${String(words)} words; at most ${MOST.wordsOnLabel} are read.`,
      source: SMITHSONIAN,
    });
  for (const sentence of sentencesOf(text)) {
    const long = countWords(sentence);
    if (long > MOST.wordsInSentence)
      remarks.push({
        weight: 'warns',
        says: `The sentence “${sentence.slice(0, 40)}…” has ${String(long)} words; at most ${MOST.wordsInSentence} are followed.`,
        source: SMITHSONIAN,
      });
  }
  const letters = lettersPerLine(width, points);
  if (letters > LETTERS_IN_LINE)
    remarks.push({
      weight: 'warns',
      says: `A line of this label holds ${String(letters)} letters; at most ${LETTERS_IN_LINE} are followed.`,
      source: SMITHSONIAN,
    });
  if (points < LEAST_POINTS)
    remarks.push({
      weight: 'refuses',
      says: `Type of ${String(points)} pt cannot be read in a case. Write at least ${LEAST_POINTS} pt.`,
      source: OURS,
    });
  else if (points < EASY_POINTS)
    remarks.push({
      weight: 'warns',
      says: `Type of ${String(points)} pt is hard to read in a case; ${EASY_POINTS} pt is easy.`,
      source: OURS,
    });
  return remarks;
}

/** What a judge would remark on a title. */
export function checkTitle(title: string): readonly LabelRemark[] {
  const words = countWords(title);
  return words > MOST.wordsInTitle
    ? [
        {
          weight: 'warns',
          says: `The title “${title}” has ${String(words)} words; at most ${MOST.wordsInTitle} are read.`,
          source: SERRELL,
        },
      ]
    : [];
}
