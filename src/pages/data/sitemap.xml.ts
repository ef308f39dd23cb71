import type { APIRoute } from 'astro';
import { loadCabinet } from '../../site/cabinet.ts';
import { sitemapOf } from '../../site/models/open-data/pages-of-site.ts';

export const GET: APIRoute = async () =>
  new Response(sitemapOf(await loadCabinet()), { headers: { 'Content-Type': 'application/xml' } });
