import type { APIRoute } from 'astro';
import { loadCabinet } from '../site/cabinet.ts';
import { webManifest } from '../site/models/shared/browser-frame.ts';

export const GET: APIRoute = async () =>
  new Response(JSON.stringify(webManifest(await loadCabinet())), {
    headers: { 'Content-Type': 'application/manifest+json' },
  });
