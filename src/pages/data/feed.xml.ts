import type { APIRoute } from 'astro';
import { loadCabinet } from '../../site/cabinet.ts';
import { feedOf } from '../../site/models/open-data/feed.ts';

export const GET: APIRoute = async () =>
  new Response(feedOf(await loadCabinet()), { headers: { 'Content-Type': 'application/rss+xml' } });
