import type { FacePictures } from '../../../photographs/cache/manifest.ts';
import type { Exhibit } from '../../../catalogue/catalogue.ts';
import { tilesOf } from '../../../photographs/render/make-tiles.ts';
import { exhibitManifest, iiifManifest, imageInfo } from '../../../publish/iiif.ts';
import type { IiifPicture } from '../../../publish/iiif.ts';
import { jsonLd } from '../../../publish/json-ld.ts';
import { sameAs } from '../../../publish/identifiers.ts';
import { licenceAddress } from '../../../publish/licences.ts';
import type { PublicPiece } from '../../../publish/public-piece.ts';
import { loadCabinet } from '../../cabinet.ts';
import type { Cabinet } from '../../cabinet.ts';
import { keyedBy } from '../../keyed.ts';
import { inFull, urls } from '../../urls.ts';
import { exhibitWords } from '../../words/exhibits.ts';
import { openDataWords } from '../../words/open-data.ts';
import { shownExhibit } from '../exhibit/shown-exhibit.ts';
import { alone, withOwn } from '../piece/around-piece.ts';
import { altOf } from '../shared/alt.ts';
import { extentOf, pictureWidth } from '../shared/sizes.ts';

/** A piece as linked data: the file `data/pieces/<id>.json`, and the same inside the piece's page. */
export function linkedData(cabinet: Cabinet, piece: PublicPiece): object {
  const at = {
    page: inFull(urls.piece(piece.id)),
    site: inFull(urls.home()),
    pictures: picturesOf(cabinet, piece).map(({ address }) => address),
    ruler: (id: string) => inFull(urls.ruler(id)),
    mint: (id: string) => inFull(urls.mint(id)),
    type: (series: string, id: string) => inFull(urls.type(series, id)),
    sameAs: (list: 'rulers' | 'mints' | 'denominations', id: string) =>
      sameAs(cabinet.lists[list][id]?.fields.identifiers),
  };
  const { title, language, licence } = cabinet.lists.cabinet;
  return jsonLd(piece, at, { title, language, licence: licenceAddress(licence?.texts ?? '') });
}

/** The pictures of a piece for another viewer; null where there are none, for a manifest must show something. */
export function manifestOf(cabinet: Cabinet, piece: PublicPiece): object | null {
  const pictures = picturesOf(cabinet, piece);
  if (pictures.length === 0) return null;
  const manifest = inFull(urls.iiif(piece.id));
  const at = {
    manifest,
    under: manifest.slice(0, manifest.lastIndexOf('/') + 1),
    page: inFull(urls.piece(piece.id)),
    linked: inFull(urls.pieceJson(piece.id)),
  };
  return iiifManifest(piece, at, pictures, cabinet.lists.cabinet.language, openDataWords.manifestFacts);
}

/** The photographed faces of an exhibit for another viewer, by case and group; null where there are none. */
export function exhibitManifestOf(cabinet: Cabinet, exhibit: Exhibit): object | null {
  const shown = shownExhibit(cabinet, exhibit);
  const cases = shown.cases.map((one) => ({
    label: exhibitWords.caseName(one.number, one.title),
    groups: one.groups.map((group) => ({
      title: group.title,
      faces: group.pieces.flatMap(({ key, piece, faces }) =>
        faces.flatMap((face) => {
          const picture = picturesOf(cabinet, piece).find((one) => one.face === face);
          return picture === undefined
            ? []
            : [{ name: `piece-${key}-${face}`, title: `${piece.title}, ${face}`, picture }];
        }),
      ),
    })),
  }));
  if (cases.every(({ groups }) => groups.every(({ faces }) => faces.length === 0))) return null;
  const manifest = inFull(urls.exhibitManifest(exhibit.id));
  const at = { manifest, under: manifest.replace(/[^/]*$/, ''), page: inFull(urls.exhibit(exhibit.id)) };
  const { title, scope } = shown;
  return exhibitManifest({ title, scope, cases }, at, cabinet.lists.cabinet.language, openDataWords.manifestFacts);
}

/** The listed pieces that have a manifest. */
export function withManifest(cabinet: Cabinet): readonly PublicPiece[] {
  return cabinet.listed.filter((piece) => picturesOf(cabinet, piece).length > 0);
}

/** A path for each of them. */
export const manifestPaths = keyedBy(
  (cabinet) => withManifest(cabinet).map(({ id }) => ({ id })),
  (cabinet, { id }) => withOwn(cabinet, id),
  ({ piece, own }) => manifestOf(alone(piece, own), piece),
);

/** The tiles of every face that a manifest shows, where the keeper wants them; `page` is what they say of themselves. */
export async function tilePaths(): Promise<{ params: { id: string; tiles: string }; props: { info: object } }[]> {
  const cabinet = await loadCabinet();
  if (cabinet.lists.cabinet.tiles !== 'yes') return [];
  return withManifest(cabinet).flatMap(({ id }) =>
    (cabinet.photographs[id] ?? []).map((made) => {
      const tiled = tilesOf(made);
      const info = imageInfo(inFull(urls.photograph(id, tiled.file)), tiled);
      return { params: { id, tiles: tiled.file }, props: { info } };
    }),
  );
}

/** The picture of every face that was photographed, with absolute addresses. */
function picturesOf(cabinet: Cabinet, piece: PublicPiece): readonly IiifPicture[] {
  return (cabinet.photographs[piece.id] ?? []).flatMap((made) => {
    const { face, jpeg } = made;
    const said = piece.pictures.find((picture) => picture.face === face);
    if (said === undefined) return [];
    const { by, licence, alt } = said;
    const tiled = cabinet.lists.cabinet.tiles === 'yes' ? tilesOf(made) : null;
    const service = tiled === null ? null : inFull(urls.photograph(piece.id, tiled.file));
    const address =
      service === null ? inFull(urls.photograph(piece.id, jpeg.file)) : `${service}/full/max/0/default.jpg`;
    const { width, height } = tiled ?? jpeg;
    const [small] = made.webp;
    const thumbnail = small === undefined ? null : { ...small, address: inFull(urls.photograph(piece.id, small.file)) };
    const scale = extentOf(piece) === null || !isToScale(made) ? null : pictureWidth(piece, made) / width;
    const terms = licence ?? cabinet.lists.cabinet.licence?.photographs ?? null;
    return [
      {
        face,
        address,
        service,
        width,
        height,
        scale,
        thumbnail,
        alt: altOf(piece, face),
        hasOwnAlt: alt !== null,
        by,
        licence: terms,
      },
    ];
  });
}

/** Whether the piece was found in its photograph, or shown by the keeper: only then are its millimetres known. */
function isToScale({ placed }: FacePictures): boolean {
  return placed === 'found' || placed === 'crop';
}
