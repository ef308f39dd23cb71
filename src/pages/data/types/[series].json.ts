import type { APIRoute, InferGetStaticPropsType } from 'astro';
import { keyedPaths } from '../../../site/keyed.ts';
import { keyFile } from '../../../site/models/types/key-page.ts';
import { seriesWithKey } from '../../../site/models/types/types-page.ts';

export const getStaticPaths = keyedPaths(
  (cabinet) => seriesWithKey(cabinet).map((series) => ({ series })),
  (cabinet, { series }) => keyFile(cabinet, series),
);

type Props = InferGetStaticPropsType<typeof getStaticPaths>;

export const GET: APIRoute<Props> = async ({ props }) => Response.json(await props.page());
