import type { WordReader } from './qualifiers.ts';

const STRUCK_LATER =
  /^(?:dated )?(?<dated>[^()]*\d[^()]*?),? \(?(?:re-?struck|re-?strike|struck|minted|made|geprägt|nachgeprägt|frappée?)(?: in| of| from)?:? (?<made>[^()]*\d[^()]*)\)?$/i;

/**
 * The sentence for a text that gives both the date on the piece and the date it was made, as a taler dated 1780 and
 * struck ever since: each has its own field. Undefined for any other text.
 */
export function askForTwoDates(text: string, read: WordReader): string | undefined {
  const { dated, made } = STRUCK_LATER.exec(text)?.groups ?? {};
  if (dated === undefined || made === undefined || !read(made)?.ok) return undefined;
  return `"${text}" gives the date on the piece and the date it was made; write date: ${made} and, on a line of its own, dated: "${dated}".`;
}
