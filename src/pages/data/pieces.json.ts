import type { APIRoute } from 'astro';
import { loadCabinet } from '../../site/cabinet.ts';
import { pieceFacts } from '../../site/models/open-data/records.ts';

export const GET: APIRoute = async () => Response.json(pieceFacts(await loadCabinet()));
