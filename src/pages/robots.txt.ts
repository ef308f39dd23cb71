import type { APIRoute } from 'astro';
import { loadCabinet } from '../site/cabinet.ts';
import { robotsText } from '../site/models/open-data/pages-of-site.ts';

export const GET: APIRoute = async () =>
  new Response(robotsText(await loadCabinet()), { headers: { 'Content-Type': 'text/plain' } });
