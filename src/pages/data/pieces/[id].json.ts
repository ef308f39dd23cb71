import type { APIRoute, GetStaticPaths } from 'astro';
import { loadCabinet } from '../../../site/cabinet.ts';
import { linkedData } from '../../../site/models/open-data/linked.ts';

export const getStaticPaths = (async () => {
  const cabinet = await loadCabinet();
  return cabinet.listed.map((piece) => ({ params: { id: piece.id }, props: { linked: linkedData(cabinet, piece) } }));
}) satisfies GetStaticPaths;

export const GET: APIRoute = ({ props }) => Response.json(props['linked']);
