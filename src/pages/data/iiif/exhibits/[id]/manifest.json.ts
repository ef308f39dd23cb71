import type { APIRoute, GetStaticPaths } from 'astro';
import { loadCabinet } from '../../../../../site/cabinet.ts';
import { exhibitManifestOf } from '../../../../../site/models/open-data/linked.ts';

export const getStaticPaths = (async () => {
  const cabinet = await loadCabinet();
  return cabinet.lists.exhibits.flatMap((exhibit) => {
    const manifest = exhibitManifestOf(cabinet, exhibit);
    return manifest === null ? [] : [{ params: { id: exhibit.id }, props: { manifest } }];
  });
}) satisfies GetStaticPaths;

export const GET: APIRoute = ({ props }) => Response.json(props['manifest']);
