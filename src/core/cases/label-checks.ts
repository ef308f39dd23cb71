import { lettersPerLine } from './type-size.ts';

/** A remark on how a text reads, and where the rule is printed. */
export type LabelRemark = { readonly says: string; readonly source: string };

const SMITHSONIAN = 'Smithsonian Institution, Guidelines for Accessible Exhibition Design';
const SERRELL = 'B. Serrell, Exhibit Labels, 2nd ed.';
const OURS = 'our own judgement: a club case is read at 40–50 cm';

/** Letters in a line that are followed with ease. Source: Smithsonian Institution, as above. */
export const LETTERS_IN_LINE = 55;
const WORDS_IN_SENTENCE = 25;
const WORDS_IN_TITLE = 7;
/** The most words that are read: of a label by the Smithsonian, of a text with a group and of a statement by Serrell. */
const MOST_WORDS = {
  label: { most: 100, source: SMITHSONIAN },
  text: { most: 150, source: SERRELL },
  statement: { most: 300, source: SERRELL },
} as const;
/** Points of type that are read with ease, and read at all. */
const EASY_POINTS = 18;
export const LEAST_POINTS = 8;

export function countWords(text: string): number {
  return text.split(/\s+/).filter((word) => /[\p{L}\p{N}]/u.test(word)).length;
}

/** The sentences of a text. A point after a single letter, a figure or a known short form ends none. */
export function sentencesOf(text: string): readonly string[] {
  return text
    .replace(/(?<![\p{L}’'])(\p{L}|c|cf|no|vol|pp?|mm|St)\.(?=\s)/gu, '$1\u2024')
    .split(/(?<=[.!?…])\s+(?=[\p{Lu}\p{N}“"(])/u)
    .map((sentence) => sentence.replace(/\u2024/g, '.').trim())
    .filter((sentence) => sentence !== '');
}

/** What a judge would remark on the words of a label, or of a longer text of at most so many words. */
export function checkWords(text: string, what: keyof typeof MOST_WORDS = 'label'): readonly LabelRemark[] {
  const { most, source } = MOST_WORDS[what];
  const words = countWords(text);
  const long =
    words > most
      ? [{ says: `This ${what} has ${String(words)} words; at most ${String(most)} are read.`, source }]
      : [];
  const sentences = sentencesOf(text).flatMap((sentence) => {
    const many = countWords(sentence);
    if (many <= WORDS_IN_SENTENCE) return [];
    const says = `The sentence “${beginning(sentence)}” has ${String(many)} words; at most ${WORDS_IN_SENTENCE} are followed.`;
    return [{ says, source: SMITHSONIAN }];
  });
  return [...long, ...sentences];
}

function beginning(sentence: string): string {
  const words = sentence.split(/\s+/);
  return words.length <= 7 ? sentence : `${words.slice(0, 6).join(' ')} …`;
}

/** What a judge would remark on labels set so wide (millimetres, from letter to letter) in type of this size (points). */
export function checkType(width: number, points: number): readonly LabelRemark[] {
  const letters = lettersPerLine(width, points);
  const line =
    letters > LETTERS_IN_LINE
      ? [
          {
            says: `A line of these labels holds ${String(letters)} letters; at most ${LETTERS_IN_LINE} are followed.`,
            source: SMITHSONIAN,
          },
        ]
      : [];
  const small =
    points < EASY_POINTS
      ? [{ says: `Type of ${String(points)} pt is hard to read in a case; ${EASY_POINTS} pt is easy.`, source: OURS }]
      : [];
  return [...line, ...small];
}

/** What a judge would remark on a title. */
export function checkTitle(title: string): readonly LabelRemark[] {
  const words = countWords(title);
  if (words <= WORDS_IN_TITLE) return [];
  const says = `The title “${title}” has ${String(words)} words; at most ${WORDS_IN_TITLE} are read.`;
  return [{ says, source: SERRELL }];
}
