import { formatDate } from '../dating/format-date.ts';
import { orderLinks, passesDirectly, sameName } from './provenance.ts';
import type { Link } from './provenance.ts';

const HOW = new Map([
  ['auction', 'at auction'],
  ['purchase', 'by purchase'],
  ['gift', 'by gift'],
  ['bequest', 'by bequest'],
  ['inheritance', 'by inheritance'],
  ['descent', 'by descent'],
  ['exchange', 'by exchange'],
  ['transfer', 'by transfer'],
  ['loan', 'on loan'],
  ['sale', 'by sale'],
  ['find', 'found'],
]);

/** A place in a catalogue or a list stands as it is; anything else that was said is quoted. */
function quoted(says: string): string {
  return /^(?:lots?|nos?\.?|plates?|pl\.|pp?\.) ?\d/iu.test(says) ? says : `“${says}”`;
}

/** The owners a link names, in order, and how, when and with what words the piece reached the last of them. */
function phrases(link: Link, before: Link | undefined, next: Link | undefined): readonly string[] {
  const inTrade = (name: string, dealer: boolean): string => (dealer ? `(${name})` : name);
  const dealer = link.dealer === true;
  const printed = before !== undefined && passesDirectly(before, link) && before.to !== undefined;
  const seller = printed || link.from === undefined ? '' : inTrade(link.from, dealer);
  const isDealer = (dealer && link.from === undefined) || (next?.dealer === true && sameName(link.to, next.from));
  const passage = [
    link.to === undefined ? '' : inTrade(link.to, isDealer),
    link.how === undefined ? '' : (HOW.get(link.how) ?? link.how),
    link.when === undefined ? '' : formatDate(link.when),
    link.says === undefined ? '' : quoted(link.says),
  ];
  const words = passage.filter((word) => word !== '').join(', ');
  const told = link.possibly === true && words !== '' ? `possibly ${words}` : words;
  return [seller, told].filter((phrase) => phrase !== '');
}

function capital(text: string): string {
  return text.replace(/^(\(?)(\p{Ll})/u, (_, bracket: string, letter: string) => bracket + letter.toUpperCase());
}

/**
 * A chain as museums print it, oldest owner first: a semicolon where the piece passed directly, a full stop where there
 * is a gap, dealers in parentheses, `possibly` kept (American Alliance of Museums, *Guide to Provenance Research*, 2001).
 */
export function formatChain(chain: readonly Link[]): string {
  const links = orderLinks(chain);
  const runs: string[][] = [];
  for (const [i, link] of links.entries()) {
    const before = links[i - 1];
    const told = phrases(link, before, links[i + 1]);
    if (before !== undefined && passesDirectly(before, link)) runs.at(-1)?.push(...told);
    else runs.push([...told]);
  }
  return runs
    .filter((run) => run.length > 0)
    .map((run) => `${capital(run.join('; '))}.`)
    .join(' ')
    .replace(/\.(”?)\./gu, '.$1');
}

/** How a provenance is printed, for a visitor's table. After the American Alliance of Museums, *Guide to Provenance Research* (2001). */
export const PROVENANCE_EXAMPLES: readonly { readonly write: string; readonly means: string }[] = [
  { write: 'A; B', means: 'it passed directly from A to B' },
  { write: 'A. B', means: 'B had it after A, but how it came from one to the other is not known' },
  { write: '(A)', means: 'A was a dealer or a saleroom' },
  { write: 'possibly A', means: 'it is not certain that A had it' },
];
