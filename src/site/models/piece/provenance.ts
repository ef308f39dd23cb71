import { isBlank } from '../../../catalogue/schema/fields.ts';
import { formatDate } from '../../../core/dating/format-date.ts';
import { formatYear } from '../../../core/dating/format-year.ts';
import { analyseChain } from '../../../core/provenance/analyse-chain.ts';
import { formatChain } from '../../../core/provenance/format-chain.ts';
import type { Link } from '../../../core/provenance/provenance.ts';
import type { PublicPiece } from '../../../publish/public-piece.ts';
import { pieceWords } from '../../words/piece.ts';

export type ChainStep =
  | { readonly gap: true }
  | { readonly gap: false; readonly when: string; readonly what: string; readonly evidence: string };

/** How a piece came down: in the museum's line, step by step with the evidence, and what that proves. */
export type ChainShown = { readonly line: string; readonly steps: readonly ChainStep[]; readonly proves: readonly string[] };

/** Null when nothing is recorded. */
export function chainShown({ provenance }: PublicPiece): ChainShown | null {
  if (provenance.length === 0) return null;
  const chain = provenance.map(linkOf);
  const { links, gaps, earliestDocumented, before1970 } = analyseChain(chain);
  const steps = links.flatMap((link, index): readonly ChainStep[] => [
    stepOf(link),
    ...(gaps.some(({ after }) => after === index) ? [{ gap: true } as const] : []),
  ]);
  const documented = earliestDocumented === null ? pieceWords.undocumented : pieceWords.documented(formatYear(earliestDocumented));
  return { line: formatChain(chain), steps, proves: [documented, pieceWords.before1970[before1970]] };
}

function linkOf({ when, direct, possibly, dealer, ...rest }: PublicPiece['provenance'][number]): Link {
  const said = (answer: string | undefined): boolean | undefined => (answer === undefined ? undefined : answer === 'yes');
  const link = { ...rest, when: isBlank(when) ? undefined : when, direct: said(direct), possibly: said(possibly), dealer: said(dealer) };
  return Object.fromEntries(Object.entries(link).filter(([, value]) => value !== undefined)) as Link;
}

function stepOf(link: Link): ChainStep {
  const what = [link.possibly === true ? 'possibly' : undefined, link.how, link.from === undefined ? undefined : `from ${link.from}`, link.to === undefined ? undefined : `to ${link.to}`]
    .filter((part) => part !== undefined)
    .join(' ');
  const evidence = [link.evidence === undefined ? undefined : pieceWords.evidence[link.evidence], link.source, link.says === undefined ? undefined : `“${link.says}”`]
    .filter((part) => part !== undefined)
    .join(', ');
  return { gap: false, when: link.when === undefined ? '' : formatDate(link.when), what, evidence };
}
