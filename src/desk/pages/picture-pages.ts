import { randomBytes } from 'node:crypto';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Hono } from 'hono';
import { html } from 'hono/html';
import sharp from 'sharp';
import { good } from '../../core/outcome.ts';
import type { Outcome } from '../../core/outcome.ts';
import { openAny } from '../../photographs/bring/open-any.ts';
import { tidyCopy } from '../../photographs/bring/tidy-copy.ts';
import { twoFaces } from '../../photographs/bring/two-faces.ts';
import { requestFor } from '../../photographs/render/picture-request.ts';
import { DOUBTS, findInFile, findInPixels } from '../look-at-photograph.ts';
import type { FoundInFile } from '../look-at-photograph.ts';
import { copyAll, turned } from '../copy-photographs.ts';
import { cropForm, cropRoutes } from './crop-pages.ts';
import type { Box } from '../../photographs/locate/pixels.ts';
import { FORBIDDEN, text, told } from '../route-helpers.ts';
import type { Desk } from '../route-helpers.ts';
import { postForm } from '../frame.ts';
import type { Html } from '../frame.ts';

/** The widest a photograph is shown at the desk, in pixels. */
const WIDE = 700;
const FACES = ['obverse', 'reverse', 'edge'] as const;
/** A photograph smaller than this each way shows nothing; below the second, little. */
const [LEAST, BETTER] = [200, 600];
/** Mean lightness, 0 to 255, under which a picture is dark. */
const DARK = 50;

/** A photograph that was chosen and is not copied yet. */
type Waiting = {
  readonly piece: string;
  readonly face: string;
  readonly bytes: Uint8Array;
  readonly says: readonly string[];
};

/** The photographs of a piece: those that are there, and new ones, looked at before they are copied. */
export function picturePages(app: Hono, desk: Desk): void {
  const waiting = new Map<string, Waiting>();
  shownRoutes(app, desk, waiting);
  chooseRoutes(app, desk, waiting);
  cropRoutes(app, desk);
}

function shownRoutes(app: Hono, { state, token, page }: Desk, waiting: ReadonlyMap<string, Waiting>): void {
  app.get('/pieces/:id/:face{[a-z0-9-]+\\.webp}', async (c) => {
    const face = c.req.param('face').replace(/\.webp$/, '');
    const held = waiting.get(face.replace(/^new-/, ''));
    const piece = state.records().pieces.find(({ id }) => id === c.req.param('id'));
    const picture = piece?.pictures.find((one) => one.face === face);
    const from = face.startsWith('new-')
      ? held?.bytes
      : picture === undefined
        ? undefined
        : join(state.at, picture.file);
    if (from === undefined) return c.notFound();
    const wide = c.req.query('wide') === '96' ? 96 : WIDE;
    const small = sharp(from).rotate().resize({ width: wide, withoutEnlargement: true });
    return c.body(new Uint8Array(await small.webp({ quality: 80 }).toBuffer()), 200, { 'Content-Type': 'image/webp' });
  });
  app.get('/pieces/:id/photographs', async (c) => {
    const piece = state.records().pieces.find(({ id }) => id === c.req.param('id'));
    if (piece === undefined) return c.notFound();
    const found: (FoundInFile | null)[] = [];
    // One after another: a photograph is large while it is looked at.
    for (const { face, file } of piece.pictures)
      found.push(await findInFile(join(state.at, file), requestFor(piece, face)));
    const shown = html`<p><a href="/pieces/${piece.id}">Back to the piece</a></p>
      <div class="faces">
        ${piece.pictures.map(({ face }, index) => cropForm(piece, face, token, found[index] ?? null))}
      </div>
      ${piece.pictures.length === 0 ? html`<p>There is no photograph yet.</p>` : ''} ${chooseForm(piece.id, token)}`;
    return page(c, `Photographs of ${piece.fields.title}`, shown, 200, told(c));
  });
}

function chooseRoutes(app: Hono, desk: Desk, waiting: Map<string, Waiting>): void {
  const { state, token, page } = desk;
  app.post('/pieces/:id/photographs', async (c) => {
    const form = await desk.form(c);
    if (form === null) return c.text(FORBIDDEN, 403);
    const piece = state.records().pieces.find(({ id }) => id === c.req.param('id'));
    if (piece === undefined) return c.notFound();
    waiting.clear();
    const refused: string[] = [];
    for (const face of [...FACES, 'both']) {
      const file = form.get(face);
      if (!(file instanceof File) || file.size === 0) continue;
      const looked = await lookAt(
        new Uint8Array(await file.arrayBuffer()),
        face,
        Number(text(form, `${face}-turn`) ?? '0'),
      );
      if (!looked.ok) refused.push(`${face}: ${looked.problem}`);
      else for (const one of looked.value) waiting.set(randomBytes(8).toString('hex'), { ...one, piece: piece.id });
    }
    return page(
      c,
      `Photographs of ${piece.fields.title}`,
      lookedAt(piece.id, token, waiting, refused),
      refused.length > 0 ? 422 : 200,
    );
  });
  app.post('/pieces/:id/copy', async (c) => {
    const form = await desk.form(c);
    if (form === null) return c.text(FORBIDDEN, 403);
    const id = c.req.param('id');
    const chosen = [...waiting]
      .filter(([key, one]) => one.piece === id && text(form, key) === 'yes')
      .map(([, one]) => one);
    const done = await copyAll(
      state.at,
      id,
      chosen,
      state.records().pieces.find((one) => one.id === id)?.pictures ?? [],
    );
    waiting.clear();
    if (!done.ok)
      return page(
        c,
        'Photographs',
        html`<p class="problem" role="alert">${done.problem}</p>
          <p><a href="/pieces/${id}/photographs">Back</a></p>`,
        409,
      );
    await state.readAgain();
    return c.redirect(`/pieces/${id}/photographs?told=copied`, 303);
  });
}

function chooseForm(id: string, token: string): Html {
  const turns = [['0', 'as it is'], ['90', 'a quarter to the right'], ['180', 'upside down'], ['270', 'a quarter to the left']] as const; // prettier-ignore
  const box = (face: string, label: string): Html =>
    html`<div class="field">
      <label for="${face}">${label}</label><input type="file" id="${face}" name="${face}" accept="image/*,.heic" />
      <label for="${face}-turn">Turn it</label
      ><select id="${face}-turn" name="${face}-turn">
        ${turns.map(([by, says]) => html`<option value="${by}">${says}</option>`)}
      </select>
    </div>`;
  return postForm(
    `/pieces/${id}/photographs`,
    token,
    html`<div class="boxes">
        ${box('obverse', 'Obverse')}${box('reverse', 'Reverse')}${box('edge', 'Edge')}${box('both', 'One picture of both faces')}
      </div>
      <p class="says">
        They are looked at first and copied when you say so: upright, with nothing in them but the pixels. Your own
        files stay as they are.
      </p>
      <p class="doing"><button class="main" type="submit">Look at them</button></p>`,
    { withFiles: true },
  );
}

function lookedAt(id: string, token: string, waiting: ReadonlyMap<string, Waiting>, refused: readonly string[]): Html {
  return html`${refused.map((says) => html`<p class="problem" role="alert">${says}</p>`)}
  ${
    waiting.size === 0
      ? html`<p>Choose at least one photograph.</p>`
      : postForm(
          `/pieces/${id}/copy`,
          token,
          html`<div class="faces">
              ${[...waiting].map(
                ([key, { face, says }]) =>
                  html`<figure>
                    <img src="/pieces/${id}/new-${key}.webp" alt="The new ${face}" width="360" />
                    <figcaption>
                      <label class="tick"
                        ><input type="checkbox" name="${key}" value="yes" checked /> Copy it as the ${face}</label
                      >${says.map((one) => html`<p class="says">${one}</p>`)}
                    </figcaption>
                  </figure>`,
              )}
            </div>
            <p class="doing">
              <button class="main" type="submit">Copy them</button>
              <a href="/pieces/${id}/photographs">Choose others</a>
            </p>`,
        )
  }`;
}

/** A chosen photograph as it would be copied, one or both faces, with what is to be said of each. */
async function lookAt(
  bytes: Uint8Array,
  face: string,
  turn: number,
): Promise<Outcome<readonly Omit<Waiting, 'piece'>[]>> {
  const folder = await mkdtemp(join(tmpdir(), 'underglass-'));
  try {
    const file = join(folder, 'chosen');
    await writeFile(file, bytes);
    const opened = await openAny(file);
    if (!opened.ok) return opened;
    const pixels = await turned(opened.value.pixels, [90, 180, 270].includes(turn) ? turn : 0);
    const place = opened.value.hadPlace ? ['It said where it was taken; the copy does not.'] : [];
    const two = face === 'both' ? twoFaces(pixels) : null;
    if (face === 'both' && two === null)
      return {
        ok: false,
        problem: 'Two faces of one size cannot be seen in this picture. Choose one picture for each face.',
      };
    const parts: readonly (readonly [string, Box | null])[] = two === null ? [[face, null]] : [['obverse', two[0]], ['reverse', two[1]]]; // prettier-ignore
    const looked = parts.map(async ([name, part]) => {
      const copy = await tidyCopy(pixels, part);
      return { face: name, bytes: copy, says: [...place, ...(await remarksOn(copy))] };
    });
    return good(await Promise.all(looked));
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

/** What is wrong with a photograph, before it is copied. */
async function remarksOn(copy: Uint8Array): Promise<readonly string[]> {
  const { data, info } = await sharp(copy).removeAlpha().raw().toBuffer({ resolveWithObject: true });
  const { channels } = await sharp(copy).greyscale().stats();
  const { box, doubt } = await findInPixels({ width: info.width, height: info.height, rgb: data });
  const side = Math.min(box?.width ?? info.width, box?.height ?? info.height);
  return [
    ...(Math.min(info.width, info.height) < LEAST
      ? [`It is ${info.width} × ${info.height} pixels, too small to show a piece.`]
      : side < BETTER
        ? [`The piece is about ${Math.round(side)} pixels across; ${BETTER} or more show it better.`]
        : []),
    ...((channels[0]?.mean ?? 255) < DARK ? ['It is dark. More light from the side shows the relief.'] : []),
    ...(doubt === null ? [] : [DOUBTS[doubt]]),
  ];
}
