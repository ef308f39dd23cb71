import type { Bound, Dating } from '../dating/dating.ts';
import { isDocumented, orderLinks, passesDirectly } from './provenance.ts';
import type { Link } from './provenance.ts';

/** The day the UNESCO Convention on illicit trade in cultural property was adopted (Paris, 14 November 1970). */
export const THRESHOLD = '1970-11-14';
const THRESHOLD_YEAR = 1970;

/** A break between two links, by their places in `links`; the years on either side of it where they are known. */
export type Gap = {
  readonly after: number;
  readonly before: number;
  readonly from: number | null;
  readonly to: number | null;
};

/**
 * What a chain proves. `earliestDocumented`: the year by which the piece is first documented, the last year of that
 * link's date when it is a range. `before1970`: documented before 14 November 1970; `no` when every link begins later,
 * or it was found later; `not known` when something undocumented or undated may reach further back.
 */
export type ChainAnalysis = {
  readonly earliestDocumented: number | null;
  readonly before1970: 'yes' | 'no' | 'not known';
  readonly gaps: readonly Gap[];
  readonly links: readonly Link[];
};

function year(bound: Bound | undefined): number | null {
  return typeof bound === 'number' ? bound : null;
}

/** A date wholly before the threshold; in the year itself only a day can tell, and what is *about* proves nothing. */
function endsBefore(when: Dating | undefined): boolean {
  const latest = year(when?.latest);
  if (latest === null || when?.doubtful === true || when?.about === true) return false;
  return (
    latest < THRESHOLD_YEAR ||
    (latest === THRESHOLD_YEAR && /^1970-\d\d-\d\d/u.test(when?.to ?? '') && (when?.to ?? '') < THRESHOLD)
  );
}

/** A date wholly after it (or on the day). About 1971 may be 1970. */
function beginsAfter(when: Dating | undefined): boolean {
  const earliest = year(when?.earliest);
  if (earliest === null || when?.about === true) return false;
  return earliest > THRESHOLD_YEAR || (earliest === THRESHOLD_YEAR && (when?.from ?? '') >= THRESHOLD);
}

const FOUND = /\b(?:finds?|found|excavat\w+|dug up|metal[- ]detect\w+|detected|hoard|treasure)\b/iu;

function before1970(links: readonly Link[]): ChainAnalysis['before1970'] {
  if (links.some((link) => isDocumented(link) && endsBefore(link.when))) return 'yes';
  if (links.some((link) => FOUND.test(link.how ?? '') && link.possibly !== true && beginsAfter(link.when))) return 'no';
  const documented = links.some(isDocumented);
  return documented && links.every((link) => beginsAfter(link.when)) ? 'no' : 'not known';
}

/**
 * Reads a chain of links, oldest first or not. Documented years come from plate matches, museum numbers, documents,
 * tickets and publications that are not marked `possibly`, with a date that is neither doubtful nor about.
 */
export function analyseChain(chain: readonly Link[]): ChainAnalysis {
  const links = orderLinks(chain);
  const years = links
    .filter((link) => isDocumented(link) && link.when?.doubtful !== true && link.when?.about !== true)
    .map((link) => year(link.when?.latest));
  const known = years.filter((value) => value !== null);
  const gaps = links.flatMap((link, after): readonly Gap[] => {
    const next = links[after + 1];
    if (next === undefined || passesDirectly(link, next)) return [];
    return [{ after, before: after + 1, from: year(link.when?.latest), to: year(next.when?.earliest) }];
  });
  return {
    earliestDocumented: known.length === 0 ? null : Math.min(...known),
    before1970: before1970(links),
    gaps,
    links,
  };
}
