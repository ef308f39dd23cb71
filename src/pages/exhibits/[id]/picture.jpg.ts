import type { APIRoute, GetStaticPaths, InferGetStaticPropsType } from 'astro';
import { loadCabinet } from '../../../site/cabinet.ts';
import { sharedExhibits, sharingPicture } from '../../../site/models/exhibit/sharing-picture.ts';

export const getStaticPaths = (async () =>
  sharedExhibits(await loadCabinet()).map((exhibit) => ({
    params: { id: exhibit.id },
    props: { exhibit },
  }))) satisfies GetStaticPaths;

type Props = InferGetStaticPropsType<typeof getStaticPaths>;

export const GET: APIRoute<Props> = async ({ props }) =>
  new Response(new Uint8Array(await sharingPicture(await loadCabinet(), props.exhibit)), {
    headers: { 'Content-Type': 'image/jpeg' },
  });
