import { join } from 'node:path';
import type { Hono } from 'hono';
import sharp from 'sharp';
import type { Desk } from '../desk.ts';

/** The widest a photograph is shown at the desk, in pixels. */
const WIDE = 700;

/** The photographs of a piece as they lie in the cabinet, made small, with nothing in them but the pixels. */
export function picturePages(app: Hono, { state }: Desk): void {
  app.get('/pieces/:id/:face{[a-z0-9-]+\\.webp}', async (c) => {
    const face = c.req.param('face').replace(/\.webp$/, '');
    const piece = state.records().pieces.find(({ id }) => id === c.req.param('id'));
    const picture = piece?.pictures.find((one) => one.face === face);
    if (picture === undefined) return c.notFound();
    const made = await sharp(join(state.at, picture.file))
      .rotate()
      .resize({ width: WIDE, withoutEnlargement: true })
      .webp({ quality: 80 })
      .toBuffer();
    return c.body(new Uint8Array(made), 200, { 'Content-Type': 'image/webp' });
  });
}
