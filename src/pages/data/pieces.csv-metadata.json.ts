import type { APIRoute } from 'astro';
import { loadCabinet } from '../../site/cabinet.ts';
import { tableMetadata } from '../../site/models/open-data/records.ts';

export const GET: APIRoute = async () => Response.json(tableMetadata(await loadCabinet()));
