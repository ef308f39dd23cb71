import type { APIRoute } from 'astro';
import type { PublicPiece } from '../../../publish/public-piece.ts';
import { loadCabinet } from '../../../site/cabinet.ts';
import { pieceFile, pieceFilePaths } from '../../../site/models/open-data/piece-file.ts';

export const getStaticPaths = pieceFilePaths;

export const GET: APIRoute<{ piece: PublicPiece }> = async ({ props }) =>
  Response.json(pieceFile(props.piece, await loadCabinet()));
