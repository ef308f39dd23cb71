import { areasAround, folded } from '../sets/facts.ts';
import type { Within } from '../sets/set-rule.ts';

/** Where a piece was made and where it was found, as far as that is recorded; null where it is not. */
export type Whereabouts = {
  readonly made: {
    /** The mint's own name in the lists: `york`. */
    readonly mint: string;
    /** The area as the list of mints has it: `Yorkshire, England`. */
    readonly area: string | null;
    readonly sure: 'certain' | 'probable' | 'possible';
  } | null;
  /** The area a find was made in. */
  readonly found: string | null;
};

/**
 * Whether a scheme applies to a piece: its mint or its find lies in one of the places named. `perhaps` when neither is known to,
 * and one of the two, at least, may. What is not recorded of a find is no doubt where the mint is known to lie elsewhere:
 * most pieces were never found by anybody.
 */
export function schemeApplies(
  places: readonly string[],
  { made, found }: Whereabouts,
  within: readonly Within[] = [],
): 'yes' | 'perhaps' | 'no' {
  const wanted = new Set(places.map(folded));
  const isIn = (names: readonly string[]) =>
    names.flatMap((name) => areasAround(name, within)).some((name) => wanted.has(folded(name)));
  const isMadeIn = made !== null && isIn([made.mint, ...(made.area === null ? [] : [made.area])]);
  if ((isMadeIn && made.sure !== 'possible') || (found !== null && isIn([found]))) return 'yes';
  const isMadeElsewhere = made !== null && made.area !== null && made.sure !== 'possible';
  return isMadeElsewhere ? 'no' : 'perhaps';
}
