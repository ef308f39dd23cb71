import type { Cabinet } from '../../cabinet.ts';
import { hasPublicAddress, urls } from '../../urls.ts';
import { openDataWords } from '../../words/open-data.ts';
import type { PageHead } from '../shared/head.ts';
import { exhibitManifestOf, withManifest } from './linked.ts';

/** A file, where it lies and what it holds. */
export type OpenFile = { readonly name: string; readonly href: string; readonly says: string };

/** The page that says which files there are and on what terms. */
export type OpenData = {
  readonly head: PageHead;
  /** The table, which asks for no program of one's own. */
  readonly sheet: OpenFile;
  readonly files: readonly OpenFile[];
  readonly sets: readonly { readonly title: string; readonly file: string; readonly href: string }[];
  /** Where the files of a piece are, when there are more pieces than a page can name; `pieces` is empty then. */
  readonly elsewhere: string | null;
  readonly pieces: readonly {
    readonly number: string;
    readonly title: string;
    readonly page: string;
    readonly linked: string;
    /** Null where the piece has no photograph. */
    readonly iiif: string | null;
  }[];
  readonly terms: readonly string[];
};

/** Pieces that are named one by one. A table of thousands is megabytes that nobody reads. */
const NAMED = 300;

export function openData(cabinet: Cabinet): OpenData {
  const w = openDataWords;
  const isNamed = cabinet.listed.length <= NAMED;
  const pictured = new Set(withManifest(cabinet).map(({ id }) => id));
  return {
    head: { title: w.title, description: w.description, here: urls.data() },
    sheet: { name: w.piecesCsv, href: urls.piecesCsv(), says: w.sheetSays(cabinet.listed.length) },
    files: [
      { name: w.piecesJson, href: urls.piecesJson(), says: w.piecesJsonSays(cabinet.listed.length) },
      { name: w.piecesSchema, href: urls.piecesSchema(), says: w.piecesSchemaSays },
      { name: w.piecesCsvMetadata, href: urls.piecesCsvMetadata(), says: w.piecesCsvMetadataSays },
      { name: w.linkedWhole, href: urls.linkedWhole(), says: w.linkedWholeSays },
      ...cabinet.lists.exhibits
        .filter((exhibit) => exhibitManifestOf(cabinet, exhibit) !== null)
        .map(({ id, fields }) => ({
          name: w.exhibitManifest,
          href: urls.exhibitManifest(id),
          says: w.exhibitManifestSays(fields.title),
        })),
      { name: w.feed, href: urls.feed(), says: w.feedSays },
      { name: w.sitemap, href: urls.sitemap(), says: w.sitemapSays },
    ],
    sets: cabinet.lists.sets.map(({ id, fields }) => ({
      title: fields.title,
      file: `${id}.json`,
      href: urls.setJson(id),
    })),
    elsewhere: isNamed ? null : w.elsewhere(cabinet.listed.length, urls.pieceJson('<id>'), urls.iiif('<id>')),
    pieces: (isNamed ? cabinet.listed : []).map(({ id, number, title }) => ({
      number,
      title,
      page: urls.piece(id),
      linked: urls.pieceJson(id),
      iiif: pictured.has(id) ? urls.iiif(id) : null,
    })),
    terms: [
      w.notHere,
      w.facts,
      w.pictures,
      ...(hasPublicAddress() ? [] : [w.noAddress]),
      ...(cabinet.lists.cabinet.demo === 'yes' ? [w.demo] : []),
    ],
  };
}
