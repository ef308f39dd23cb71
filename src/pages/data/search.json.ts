import type { APIRoute } from 'astro';
import { loadCabinet } from '../../site/cabinet.ts';
import { findRecords } from '../../site/models/find/record-of.ts';

export const GET: APIRoute = async () => Response.json(await findRecords(await loadCabinet()));
