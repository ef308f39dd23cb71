/** What ends in a stop and no sentence: `c. 1280`, `St. Peter`, an initial. */
const SHORTENED = /(?:^|[\s(])(?:c|ca|cf|vol|no|nos|fl|d|b|r|St|Mr|Mrs|Dr|Revd|ed|\p{Lu})\.$/u;

/** The first sentence of a text, its end included; the whole text where none ends before it does. */
export function firstSentence(text: string): string {
  let first: string | null = null;
  for (const end of text.matchAll(/[.!?]["”’')]*(?=\s)/gu)) {
    const sentence = text.slice(0, end.index + end[0].length);
    if (SHORTENED.test(sentence)) continue;
    if (!quotes(sentence)) return sentence;
    first ??= sentence;
  }
  // A quotation that nobody closed does not make one sentence of the whole.
  return quotes(text) ? (first ?? text) : text;
}

/** Whether a quotation is open at the end of a text. */
function quotes(text: string): boolean {
  // After a figure it is an inch.
  const plain = text.replace(/\d"/g, '');
  const count = (mark: string): number => plain.split(mark).length - 1;
  return count('“') > count('”') || count('"') % 2 === 1;
}
