import { iiifManifest } from '../../../publish/iiif.ts';
import type { IiifPicture } from '../../../publish/iiif.ts';
import { jsonLd } from '../../../publish/json-ld.ts';
import type { PublicPiece } from '../../../publish/public-piece.ts';
import type { Cabinet } from '../../cabinet.ts';
import { inFull, urls } from '../../urls.ts';
import { openDataWords } from '../../words/open-data.ts';
import { altOf } from '../shared/alt.ts';

/** A piece as linked data: the file `data/pieces/<id>.json`, and the same inside the piece's page. */
export function linkedData(cabinet: Cabinet, piece: PublicPiece): object {
  const at = {
    page: inFull(urls.piece(piece.id)),
    site: inFull(urls.home()),
    pictures: picturesOf(cabinet, piece).map(({ address }) => address),
  };
  return jsonLd(piece, at, cabinet.lists.cabinet.title);
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
  };
  return iiifManifest(piece, at, pictures, cabinet.lists.cabinet.language, openDataWords.manifestFacts);
}

/** The listed pieces that have a manifest. */
export function withManifest(cabinet: Cabinet): readonly PublicPiece[] {
  return cabinet.listed.filter((piece) => picturesOf(cabinet, piece).length > 0);
}

/** The JPEG of every face that was photographed, with absolute addresses. */
function picturesOf(cabinet: Cabinet, piece: PublicPiece): readonly IiifPicture[] {
  return (cabinet.photographs[piece.id] ?? []).flatMap(({ face, jpeg }) => {
    const said = piece.pictures.find((picture) => picture.face === face);
    if (said === undefined) return [];
    const { by, licence } = said;
    const address = inFull(urls.photograph(piece.id, jpeg.file));
    return [{ face, address, width: jpeg.width, height: jpeg.height, alt: altOf(piece, face), by, licence }];
  });
}
