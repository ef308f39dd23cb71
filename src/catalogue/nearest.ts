import { distance } from 'fastest-levenshtein';

/** The known name nearest to what was written, or null when none is near enough to be meant. */
export function nearestName(found: string, known: readonly string[]): string | null {
  const wanted = found.toLowerCase();
  let best: string | null = null;
  // Two letters changed places count as two; in a short word two changes are another word.
  let least = (wanted.length < 4 ? 1 : Math.max(2, Math.floor(wanted.length / 3))) + 1;
  for (const name of known) {
    const far = distance(wanted, name.toLowerCase());
    if (far < least) [best, least] = [name, far];
  }
  return best;
}
