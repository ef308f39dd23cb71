import type { APIRoute, InferGetStaticPropsType } from 'astro';
import { keyedPaths } from '../../../site/keyed.ts';
import { setRecords } from '../../../site/models/open-data/records.ts';

export const getStaticPaths = keyedPaths(
  (cabinet) => setRecords(cabinet).map(({ id }) => ({ id })),
  (cabinet, { id }) => setRecords(cabinet).find((set) => set.id === id),
);

type Props = InferGetStaticPropsType<typeof getStaticPaths>;

export const GET: APIRoute<Props> = async ({ props }) => Response.json(await props.page());
