import type { APIRoute, GetStaticPaths } from 'astro';
import { loadCabinet } from '../../../site/cabinet.ts';
import { keyFile } from '../../../site/models/types/key-page.ts';
import { seriesWithKey } from '../../../site/models/types/types-page.ts';

export const getStaticPaths = (async () =>
  seriesWithKey(await loadCabinet()).map((series) => ({ params: { series } }))) satisfies GetStaticPaths;

export const GET: APIRoute = async ({ params }) => Response.json(keyFile(await loadCabinet(), params['series'] ?? ''));
