import type { APIRoute, InferGetStaticPropsType } from 'astro';
import { tilePaths } from '../../../../site/models/open-data/linked.ts';

export const getStaticPaths = tilePaths;

type Props = InferGetStaticPropsType<typeof getStaticPaths>;

export const GET: APIRoute<Props> = ({ props }) => Response.json(props.info);
