/** A text with a capital at its head. */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** A tag as a visitor reads it: `about-york` is “about york”. Its address keeps the hyphens. */
export function tagInWords(tag: string): string {
  return tag.replaceAll('-', ' ');
}

/** A kind of piece as a visitor reads it: `Coin weight`; nobody has said of some pieces what they are. */
export function kindInWords(kind: string): string {
  return kind === 'unknown' ? 'Kind not known' : capital(kind.replaceAll('-', ' '));
}
