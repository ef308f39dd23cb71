/** A text as a sentence: one full stop at its end, whether or not it had one, as initials do. */
export function ended(text: string): string {
  return /[.!?]$/.test(text) ? text : `${text}.`;
}
