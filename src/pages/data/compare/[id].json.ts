import type { APIRoute } from 'astro';
import type { PublicPiece } from '../../../publish/public-piece.ts';
import { loadCabinet } from '../../../site/cabinet.ts';
import { comparedPaths } from '../../../site/models/compare/compared-paths.ts';
import { comparedOf } from '../../../site/models/compare/record-of.ts';

export const getStaticPaths = comparedPaths;

export const GET: APIRoute<{ piece: PublicPiece }> = async ({ props }) =>
  Response.json(comparedOf(props.piece, await loadCabinet()));
