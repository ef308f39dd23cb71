/** Millimetres in a typographic point: 1/72 of an inch of 25.4 mm. */
export const MILLIMETRES_PER_POINT = 25.4 / 72;

/** The mean width of a letter of a text face, as a part of its size. Common practice; the print is measured apart. */
const MEAN_LETTER = 0.42;

/** Line to line, as a part of the type size. */
export const LEADING = 1.25;

/** How many letters a line of this width holds, in the mean. */
export function lettersPerLine(width: number, points: number): number {
  return Math.max(1, Math.floor(width / (points * MILLIMETRES_PER_POINT * MEAN_LETTER)));
}

/** A text broken into lines of at most so many letters; a longer word stands on a line of its own. */
export function wrapText(text: string, letters: number): readonly string[] {
  const lines: string[] = [];
  for (const word of text.split(/\s+/).filter((one) => one !== '')) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + 1 + word.length <= letters) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}

/** The height of a text in millimetres, set in this width and size. */
export function textHeight(text: string, width: number, points: number): number {
  return wrapText(text, lettersPerLine(width, points)).length * points * MILLIMETRES_PER_POINT * LEADING;
}
