import type { Dating } from '../dating/dating.ts';

export const EVIDENCE = [
  'plate-match',
  'museum-number',
  'document',
  'ticket',
  'published',
  'statement',
  'inference',
] as const;

/** What a link rests on. */
export type Evidence = (typeof EVIDENCE)[number];

/**
 * One passage of a piece from hand to hand. `direct`: it passed straight to the owner of the next link (true), or did
 * not (false); left out, the names decide. `possibly`: the link is not certain. `dealer`: the one it came from (or, with none
 * named, the one it went to) was in the trade.
 */
export type Link = {
  readonly when?: Dating;
  readonly how?: string;
  readonly from?: string;
  readonly to?: string;
  readonly evidence?: Evidence;
  readonly source?: string;
  readonly says?: string;
  readonly direct?: boolean;
  readonly possibly?: boolean;
  readonly dealer?: boolean;
};

/**
 * Whether this kind of evidence documents a date: something made at the time or in print. What a later owner says and
 * what somebody concludes do not (AAM, *Guide to Provenance Research*, 2001, ch. 1: tell what is documented from what is told).
 */
export function isDocumented(link: Link): boolean {
  return (
    link.evidence !== undefined &&
    link.evidence !== 'statement' &&
    link.evidence !== 'inference' &&
    link.possibly !== true
  );
}
