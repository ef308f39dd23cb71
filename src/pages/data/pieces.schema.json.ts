import type { APIRoute } from 'astro';
import { piecesSchema } from '../../publish/pieces-schema.ts';

export const GET: APIRoute = () => Response.json(piecesSchema());
