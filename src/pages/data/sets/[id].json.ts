import type { APIRoute, GetStaticPaths } from 'astro';
import { loadCabinet } from '../../../site/cabinet.ts';
import { setRecords } from '../../../site/models/open-data/records.ts';

export const getStaticPaths = (async () =>
  setRecords(await loadCabinet()).map((set) => ({ params: { id: set.id }, props: { set } }))) satisfies GetStaticPaths;

export const GET: APIRoute = ({ props }) => Response.json(props['set']);
