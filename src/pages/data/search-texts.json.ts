import type { APIRoute } from 'astro';
import { loadCabinet } from '../../site/cabinet.ts';
import { packedSearch } from '../../site/models/find/record-of.ts';

export const GET: APIRoute = async () =>
  new Response((await packedSearch(await loadCabinet())).texts, { headers: { 'content-type': 'application/json' } });
