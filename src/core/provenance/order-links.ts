import type { Link } from './provenance.ts';

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
