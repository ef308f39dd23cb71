import type { Cabinet } from '../../cabinet.ts';
import { hasPublicAddress, urls } from '../../urls.ts';
import { openDataWords } from '../../words/open-data.ts';
import type { PageHead } from '../shared/head.ts';
import { exhibitManifestOf, withManifest } from './linked.ts';

/** A file, where it lies and what it holds. */
export type OpenFile = { readonly name: string; readonly href: string; readonly says: string };
/** One that a visitor may want, called by what it is for. */
export type UsefulFile = OpenFile & { readonly does: string };

/** The page that says which files there are and on what terms. */
export type OpenData = {
  readonly head: PageHead;
  /** The table, which asks for no program of one's own. */
  readonly sheet: OpenFile;
  readonly files: readonly UsefulFile[];
  /** What each file is written in, and those that only a program reads. */
  readonly formats: readonly OpenFile[];
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
  const shown = cabinet.lists.exhibits.filter((exhibit) => exhibitManifestOf(cabinet, exhibit) !== null);
  return {
    head: { title: w.title, description: w.description, here: urls.data() },
    sheet: { name: w.piecesCsv, href: urls.piecesCsv(), says: w.sheetSays(cabinet.listed.length) },
    files: [
      {
        does: w.piecesJsonDoes,
        name: w.piecesJson,
        href: urls.piecesJson(),
        says: w.piecesJsonSays(cabinet.listed.length),
      },
      { does: w.linkedWholeDoes, name: w.linkedWhole, href: urls.linkedWhole(), says: w.linkedWholeSays },
      ...shown.map(({ id, fields }) => ({
        does: w.exhibitManifestDoes(fields.title),
        name: w.exhibitManifest,
        href: urls.exhibitManifest(id),
        says: w.exhibitManifestSays,
      })),
      { does: w.feedDoes, name: w.feed, href: urls.feed(), says: w.feedSays },
    ],
    formats: [
      { name: w.piecesCsv, href: urls.piecesCsv(), says: w.piecesCsvSays },
      { name: w.piecesCsvMetadata, href: urls.piecesCsvMetadata(), says: w.piecesCsvMetadataSays },
      { name: w.piecesSchema, href: urls.piecesSchema(), says: w.piecesSchemaSays },
      { name: w.linkedWhole, href: urls.linkedWhole(), says: w.linkedWholeFormat },
      ...shown
        .slice(0, 1)
        .map(({ id }) => ({ name: w.exhibitManifest, href: urls.exhibitManifest(id), says: w.exhibitManifestFormat })),
      { name: w.feed, href: urls.feed(), says: w.feedFormat },
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
