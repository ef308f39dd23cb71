import type { APIRoute, InferGetStaticPropsType } from 'astro';
import { manifestPaths } from '../../../../site/models/open-data/linked.ts';

export const getStaticPaths = manifestPaths;

type Props = InferGetStaticPropsType<typeof getStaticPaths>;

export const GET: APIRoute<Props> = async ({ props }) => Response.json(await props.page());
