import { formatDate } from '../dating/format-date.ts';
import { orderLinks, passesDirectly } from './order-links.ts';
import type { Link } from './provenance.ts';

const HOW: Readonly<Record<string, string>> = {
  auction: 'at auction',
  purchase: 'by purchase',
  gift: 'by gift',
  bequest: 'by bequest',
  inheritance: 'by inheritance',
  descent: 'by descent',
  exchange: 'by exchange',
  transfer: 'by transfer',
  loan: 'on loan',
};

function inTrade(name: string, dealer: boolean): string {
  return dealer ? `(${name})` : name;
}

/** The owners a link names, in order, and how, when and with what words the piece reached the last of them. */
function phrases(link: Link, before: Link | undefined): readonly string[] {
  const seller =
    before !== undefined && passesDirectly(before, link) && before.to !== undefined ? undefined : link.from;
  const fact = [
    link.how === undefined ? '' : (HOW[link.how] ?? link.how),
    link.when === undefined ? '' : formatDate(link.when),
    link.says ?? '',
  ];
  const words = fact.filter((word) => word !== '').join(', ');
  const dealer = link.dealer === true;
  const owner = link.to === undefined ? '' : inTrade(link.to, dealer);
  const passage = [owner, words].filter((word) => word !== '').join(', ');
  const told = link.possibly === true && passage !== '' ? `possibly ${passage}` : passage;
  return [seller === undefined ? '' : inTrade(seller, dealer && link.to === undefined), told].filter(
    (phrase) => phrase !== '',
  );
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
    const told = phrases(link, before);
    if (before !== undefined && passesDirectly(before, link)) runs.at(-1)?.push(...told);
    else runs.push([...told]);
  }
  return runs
    .filter((run) => run.length > 0)
    .map((run) => `${capital(run.join('; '))}.`)
    .join(' ')
    .replace(/\.\./gu, '.');
}
