import { isBlank } from '../../../catalogue/schema/fields.ts';
import { formatDate } from '../../../core/dating/format-date.ts';
import { formatYear } from '../../../core/dating/format-years.ts';
import { analyseChain } from '../../../core/provenance/analyse-chain.ts';
import { formatChain } from '../../../core/provenance/format-chain.ts';
import type { Link } from '../../../core/provenance/provenance.ts';
import type { PublicPiece } from '../../../publish/public-piece.ts';
import { pieceWords } from '../../words/piece.ts';

/** A passage from hand to hand, or a gap in what is known. */
export type ChainStep =
  | { readonly is: 'gap' }
  | { readonly is: 'link'; readonly when: string; readonly what: string; readonly evidence: string };

/** How a piece came down: in the museum's line, step by step with the evidence, and what that proves. */
export type Chain = { readonly line: string; readonly steps: readonly ChainStep[]; readonly proves: readonly string[] };

/** Null when nothing is recorded. */
export function chainOf({ provenance, ...piece }: PublicPiece): Chain | null {
  if (provenance.length === 0) return null;
  const chain = provenance.map(linkOf);
  const { links, gaps, earliestDocumented, before1970 } = analyseChain(chain);
  const documented =
    earliestDocumented === null ? pieceWords.undocumented : pieceWords.documented(formatYear(earliestDocumented));
  return {
    line: formatChain(chain),
    steps: links.flatMap((link, at): readonly ChainStep[] =>
      gaps.some(({ after }) => after === at) ? [stepOf(link), { is: 'gap' }] : [stepOf(link)],
    ),
    proves:
      asksFor1970(piece) && (before1970 === 'yes' || isFound(piece))
        ? [documented, pieceWords.before1970[before1970]]
        : [documented],
  };
}

/**
 * Whether it matters that a piece was known before the Convention of 1970: one that was found, or that may have been at least 250
 * years old then, the age from which the law that carries it out counts an object as archaeological (19 U.S.C. 2601(2)(i)).
 */
export function asksFor1970({ kind, years, found }: Pick<PublicPiece, 'kind' | 'years' | 'found'>): boolean {
  if (isFound({ found })) return true;
  return kind !== 'replica' && kind !== 'paper' && (years === null || years.low <= 1970 - 250);
}

/** Of a find it is told whatever is known; of another old piece only what a document proves, since a list of *not known* tells nothing. */
function isFound({ found }: Pick<PublicPiece, 'found'>): boolean {
  return found !== null && found !== undefined;
}

function linkOf({ when, how, from, to, evidence, source, says, ...answers }: PublicPiece['provenance'][number]): Link {
  return {
    ...(when === undefined || isBlank(when) ? {} : { when }),
    ...(how === undefined ? {} : { how }),
    ...(from === undefined ? {} : { from }),
    ...(to === undefined ? {} : { to }),
    ...(evidence === undefined ? {} : { evidence }),
    ...(source === undefined ? {} : { source }),
    ...(says === undefined ? {} : { says }),
    ...(answers.direct === undefined ? {} : { direct: answers.direct === 'yes' }),
    ...(answers.possibly === undefined ? {} : { possibly: answers.possibly === 'yes' }),
    ...(answers.dealer === undefined ? {} : { dealer: answers.dealer === 'yes' }),
  };
}

function stepOf(link: Link): ChainStep {
  const { possibly, how, from, to, when, evidence, source, says, dealer } = link;
  const given = (parts: readonly (string | undefined)[]): string[] => parts.filter((part) => part !== undefined);
  const what = given([
    possibly === true ? pieceWords.possibly : undefined,
    pieceWords.passage(how, { from, to }),
    dealer === true ? `(${pieceWords.inTrade})` : undefined,
  ]).join(' ');
  const rests = given([
    evidence === undefined ? undefined : pieceWords.evidence[evidence],
    source,
    says === undefined ? undefined : `“${says}”`,
  ]).join(', ');
  return { is: 'link', when: when === undefined ? '' : formatDate(when), what, evidence: rests };
}
