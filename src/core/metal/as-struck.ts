/** What a keeper says of a piece that bears on what its weight means. */
export type ToldOfMetal = {
  readonly metal?: string | null | undefined;
  readonly problem?: string | null | undefined;
  readonly shape?: string | null | undefined;
  readonly treatments?: readonly string[] | undefined;
};

/** Why the weight of a piece is not that of one metal as it was struck. */
export type NotAsStruck = {
  /** Metal over another metal, so that the weight is of both. */
  readonly plated: boolean;
  /** In a mount that was weighed with it. */
  readonly mounted: boolean;
  /** Metal was taken off, or put in a hole. */
  readonly lost: boolean;
};

/* The words of lists, English first; common practice. */
const PLATED = /plated|plating|gilt|gilded|silvered|\bwash(?:ed)?\b|coated|\bclad\b|fourr|subaerat|suberat/i;
const MOUNTED = /mount|brooch|\bloop|jewel|pendant|bezel|\bset in\b/i;
const MOUNT_GONE = anyOf(
  [
    String.raw`\bex-? ?(?:mount|loop|brooch|jewel)\w*`,
    String.raw`(?:mount|loop|brooch)\w*(?: mark)?s? (?:removed|off|traces?)`,
    String.raw`traces? of (?:a )?(?:mount|loop)\w*`,
  ],
  'gi',
);
const LOST = anyOf(
  [
    String.raw`(?<!un)clip`, 'pierc', String.raw`\b(?:test-?)?cut\b`, 'halved', 'quartered', String.raw`\bhol(?:e|low)`, 'drill',
    'broken', 'plug', 'chip', String.raw`\bfil(?:ed|ing)`, 'shaved', 'fragment', 'melted',
  ],
  'i',
); // prettier-ignore

function anyOf(patterns: readonly string[], flags: string): RegExp {
  return new RegExp(patterns.join('|'), flags);
}

/** Whether a piece is plated, mounted, or short of metal, by what is said of its metal, shape, treatments and problem. */
export function notAsStruck({ metal, problem, shape, treatments = [] }: ToldOfMetal): NotAsStruck {
  const said = [metal, problem, shape, ...treatments].filter((words) => words !== null && words !== undefined);
  const told = said.join('; ');
  // A mount that came off is no longer weighed, and took metal with it or left solder.
  const present = told.replace(MOUNT_GONE, '');
  return { plated: PLATED.test(told), mounted: MOUNTED.test(present), lost: LOST.test(told) || present !== told };
}
