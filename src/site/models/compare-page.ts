import type { PublicPiece } from '../../publish/public-piece.ts';
import type { Cabinet } from '../cabinet.ts';
import { urls } from '../urls.ts';
import { compareWords } from '../words/compare.ts';
import { worthComparing } from './compare/worth-comparing.ts';
import type { PageHead } from './head.ts';

/** Pieces a visitor may want side by side: the address that lays them, why, and each by itself. */
export type Company = {
  readonly to: string;
  readonly because: string;
  readonly pieces: readonly { readonly title: string; readonly to: string }[];
};

export type ComparePage = {
  readonly head: PageHead;
  /** The file of what can be found; what is laid of each piece lies beside it. */
  readonly records: string;
  readonly companies: readonly Company[];
};

/** More would be a list to read and not an invitation. */
const MOST = 12;

/** The page on which pieces are laid side by side, with companies that are worth it. */
export function comparePage({ listed }: Cabinet): ComparePage {
  return {
    head: { title: compareWords.title, description: compareWords.description, here: urls.compare() },
    records: urls.searchJson(),
    companies: worthComparing(listed).slice(0, MOST).map(companyOf),
  };
}

function companyOf({ because, pieces }: { because: 'die' | 'type'; pieces: readonly PublicPiece[] }): Company {
  return {
    to: urls.compare(...pieces.map(({ id }) => id)),
    because: compareWords.because[because],
    pieces: pieces.map(({ id, title }) => ({ title, to: urls.piece(id) })),
  };
}
