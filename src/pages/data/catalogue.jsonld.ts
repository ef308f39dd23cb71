import type { APIRoute } from 'astro';
import { loadCabinet } from '../../site/cabinet.ts';
import { linkedWhole } from '../../site/models/open-data/linked-lists.ts';

export const GET: APIRoute = async () =>
  new Response(JSON.stringify(linkedWhole(await loadCabinet())), {
    headers: { 'Content-Type': 'application/ld+json' },
  });
