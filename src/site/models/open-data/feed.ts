import type { PublicPiece } from '../../../publish/public-piece.ts';
import { FEED_LENGTH, rssFeed } from '../../../publish/xml.ts';
import type { Cabinet } from '../../cabinet.ts';
import { inFull, urls } from '../../urls.ts';
import { openDataWords } from '../../words/open-data.ts';

/** The pieces entered last, the newest first. The order is that of the inventory numbers: no day of purchase is published. */
export function newestPieces(cabinet: Cabinet, count: number): readonly PublicPiece[] {
  return cabinet.listed.slice(-count).reverse();
}

/** The feed of new pieces: `feed.xml`. */
export function feedOf(cabinet: Cabinet): string {
  const { title, about, language, licence } = cabinet.lists.cabinet;
  const feed = {
    title: openDataWords.feedTitle(title),
    address: inFull(urls.home()),
    own: inFull(urls.feed()),
    says: about ?? openDataWords.feedDescription,
    language,
    licence: licence?.texts ?? null,
  };
  const entries = newestPieces(cabinet, FEED_LENGTH).map((piece) => ({
    title: piece.title,
    address: inFull(urls.piece(piece.id)),
    says: firstParagraph(piece.story) ?? piece.title,
  }));
  return rssFeed(feed, entries);
}

/** The first paragraph of a story without its Markdown marks; null where there is no story. */
function firstParagraph(story: string): string | null {
  const paragraph = story.trim().split(/\n\s*\n/)[0] ?? '';
  const words = paragraph
    .replace(/!?\[([^\]]*)\]\([^)]*\)/g, '$1')
    .replace(/[*_`]+/g, '')
    .replace(/\s+/g, ' ')
    .trim();
  return words === '' ? null : words;
}
