import type { APIRoute } from 'astro';
import { robotsText } from '../site/models/open-data/pages-of-site.ts';

export const GET: APIRoute = () => new Response(robotsText(), { headers: { 'Content-Type': 'text/plain' } });
