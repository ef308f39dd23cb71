import type { APIRoute, GetStaticPaths } from 'astro';
import { loadCabinet } from '../../../site/cabinet.ts';
import { setIds } from '../../../site/models/sets/set-page.ts';
import { setOnBoard } from '../../../site/models/sets/set-picture.ts';
import { boardPicture } from '../../../site/models/shared/board-picture.ts';

export const getStaticPaths = (async () => {
  const cabinet = await loadCabinet();
  return setIds(cabinet).flatMap((id) => (setOnBoard(cabinet, id).length === 0 ? [] : [{ params: { id } }]));
}) satisfies GetStaticPaths;

export const GET: APIRoute = async ({ params }) =>
  new Response(new Uint8Array(await boardPicture(setOnBoard(await loadCabinet(), params['id'] ?? ''))), {
    headers: { 'Content-Type': 'image/jpeg' },
  });
