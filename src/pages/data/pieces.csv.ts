import type { APIRoute } from 'astro';
import { loadCabinet } from '../../site/cabinet.ts';
import { pieceTable } from '../../site/models/open-data/records.ts';

export const GET: APIRoute = async () =>
  new Response(pieceTable(await loadCabinet()), { headers: { 'Content-Type': 'text/csv; charset=utf-8' } });
