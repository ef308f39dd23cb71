import type { APIRoute, InferGetStaticPropsType } from 'astro';
import { pieceFilePaths } from '../../../site/models/open-data/piece-file.ts';

export const getStaticPaths = pieceFilePaths;

type Props = InferGetStaticPropsType<typeof getStaticPaths>;

export const GET: APIRoute<Props> = async ({ props }) => Response.json(await props.page());
