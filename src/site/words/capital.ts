/** A text with a capital at its head. */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** A grade at the head of a line: `Good F`, and `ss+` as German lists have it. */
export function gradeInWords(words: string): string {
  return /^\p{Ll}{4}/u.test(words) ? capital(words) : words;
}

/** A tag as a visitor reads it: `about-york` is “about york”. Its address keeps the hyphens. */
export function tagInWords(tag: string): string {
  return tag.replaceAll('-', ' ');
}

/** A kind of piece as a visitor reads it: `Coin weight`; nobody has said of some pieces what they are. */
export function kindInWords(kind: string): string {
  return kind === 'unknown' ? 'Kind not known' : capital(kind.replaceAll('-', ' '));
}
