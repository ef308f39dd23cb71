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

/** A day as a number that sorts: the day if it is known, else the first of the year; null when nothing is known. */
function begins({ when }: Link): number | null {
  if (when === undefined || typeof when.earliest !== 'number') return null;
  const [, month = '0', day = '0'] = /^-?\d+-(\d\d)-(\d\d)/u.exec(when.from ?? '') ?? [];
  return when.earliest * 10_000 + Number(month) * 100 + Number(day);
}

/** Oldest first. A link without a date stays behind the one it was written after. */
export function orderLinks(links: readonly Link[]): readonly Link[] {
  let last = -Infinity;
  return links
    .map((link) => ({ link, at: (last = begins(link) ?? last) }))
    .sort((one, other) => (one.at === other.at ? 0 : one.at - other.at))
    .map(({ link }) => link);
}

/** Whether two names are one, whatever their capitals, stops and articles. */
export function sameName(one: string | undefined, other: string | undefined): boolean {
  const plain = (name: string): string =>
    name.toLowerCase().replace(/^(?:(?:the|an)\s+|a\s+(?=\p{L}{2}))|[^\p{L}\p{N}]/gu, '');
  return one !== undefined && other !== undefined && plain(one) === plain(other);
}

/** Whether the piece went straight from one link to the next: the keeper says so, or the new owner is the next seller. */
export function passesDirectly(link: Link, next: Link): boolean {
  return link.direct ?? sameName(link.to, next.from);
}
