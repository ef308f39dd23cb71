import type { APIRoute, GetStaticPaths } from 'astro';
import { loadCabinet } from '../../../../site/cabinet.ts';
import { manifestOf, withManifest } from '../../../../site/models/open-data/linked.ts';

export const getStaticPaths = (async () => {
  const cabinet = await loadCabinet();
  return withManifest(cabinet).map((piece) => ({
    params: { id: piece.id },
    props: { manifest: manifestOf(cabinet, piece) },
  }));
}) satisfies GetStaticPaths;

export const GET: APIRoute = ({ props }) => Response.json(props['manifest']);
