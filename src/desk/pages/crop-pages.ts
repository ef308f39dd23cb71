import { join } from 'node:path';
import type { Hono } from 'hono';
import { html } from 'hono/html';
import { formatCrop, parseCrop } from '../../catalogue/crop.ts';
import type { Crop } from '../../catalogue/crop.ts';
import type { FiledPiece } from '../../catalogue/records.ts';
import { editFields } from '../../catalogue/write/edit-fields.ts';
import { PIECE_ORDER } from '../../catalogue/write/write-piece.ts';
import { openAny } from '../../photographs/bring/open-any.ts';
import { tidyCopy } from '../../photographs/bring/tidy-copy.ts';
import { copyAll, turned } from '../copy-photographs.ts';
import { FORBIDDEN, pieceNamed, text, writeUnlessWrong } from '../route-helpers.ts';
import type { Desk } from '../route-helpers.ts';
import type { Html } from '../frame.ts';
import { DOUBTS } from '../look-at-photograph.ts';
import type { FoundInFile } from '../look-at-photograph.ts';
import { isFields } from '../form/leaves.ts';
import type { Fields } from '../form/leaves.ts';

/** A photograph with the box round its piece, which is dragged on it or written in figures; and a button that turns it. */
export function cropForm(piece: FiledPiece, face: string, token: string, found: FoundInFile | null): Html {
  const crop = piece.fields.photographs?.[face as 'obverse']?.crop;
  const isFace = ['obverse', 'reverse', 'edge'].includes(face);
  const box = found?.box ?? null;
  const says =
    crop !== undefined
      ? 'The box you drew is what is cut out.'
      : box !== null
        ? 'The box shows where the piece was found.'
        : found === null
          ? 'The photograph cannot be read.'
          : found.doubt === null
            ? 'The whole picture is shown.'
            : DOUBTS[found.doubt];
  return html`<figure>
    <div class="crop" data-crop="crop-${face}" data-found="${box === null ? '' : formatCrop({ ...box, unit: '%' })}">
      <img
        src="/pieces/${piece.id}/${face}.webp"
        alt="${face}"
        width="420"
        draggable="false"
        data-wide="${found?.wide ?? 0}"
        data-high="${found?.high ?? 0}"
      />
    </div>
    <figcaption>
      <p class="says">${face}. ${says}</p>
      <form method="post" action="/pieces/${piece.id}/crop">
        <input type="hidden" name="form-token" value="${token}" />
        <input type="hidden" name="face" value="${face}" />
        ${
          isFace
            ? html`<div class="field">
                <label for="crop-${face}">Box round the piece, ${face}</label
                ><input
                  id="crop-${face}"
                  name="crop"
                  value="${crop === undefined ? '' : formatCrop(crop)}"
                  autocomplete="off"
                  aria-describedby="crop-${face}-says"
                />
                <p class="says" id="crop-${face}-says">
                  Drag over the photograph, or write from the left, from the top, width, height: 10 8 60 60 %. Empty: it
                  is found.
                </p>
              </div>`
            : ''
        }
        <p class="doing">
          ${isFace ? html`<button name="do" value="crop">Save the box</button>` : ''}
          <button name="do" value="turn" aria-label="Turn the ${face} a quarter to the right">
            Turn it to the right
          </button>
        </p>
      </form>
    </figcaption>
  </figure>`;
}

export function cropRoutes(app: Hono, desk: Desk): void {
  app.post('/pieces/:id/crop', async (c) => {
    const form = await desk.form(c);
    if (form === null) return c.text(FORBIDDEN, 403);
    const id = c.req.param('id');
    const face = text(form, 'face') ?? '';
    const filed = desk.state.records().pieces.find((one) => one.id === id);
    const picture = filed?.pictures.find((one) => one.face === face);
    if (picture === undefined) return c.notFound();
    const problem =
      text(form, 'do') === 'turn'
        ? await turnPhotograph(desk, id, picture)
        : await saveCrop(desk, id, face, text(form, 'crop')?.trim() ?? '');
    if (problem === null) return c.redirect(`/pieces/${id}/photographs?told=saved`, 303);
    const body = html`<p class="problem" role="alert">${problem}</p>
      <p><a href="/pieces/${id}/photographs">Back</a></p>`;
    return desk.page(c, 'Photographs', body, 422);
  });
}

async function saveCrop(desk: Desk, id: string, face: string, words: string): Promise<string | null> {
  const piece = await pieceNamed(desk.state, id);
  if (piece === null) return 'This piece is gone.';
  const path = ['photographs', face, 'crop'];
  const edited = editFields(piece.text, [{ path, value: words === '' ? null : words }], PIECE_ORDER);
  if (!edited.ok) return edited.problem;
  if (edited.value === piece.text) return null;
  return writeUnlessWrong(desk, [{ file: piece.file, text: edited.value, from: piece.text }]);
}

/** Turns a photograph by a quarter, and the box round its piece with it, as one save. */
async function turnPhotograph(
  desk: Desk,
  id: string,
  { face, file }: { readonly face: string; readonly file: string },
): Promise<string | null> {
  const { state } = desk;
  const opened = await openAny(join(state.at, file));
  if (!opened.ok) return opened.problem;
  const { pixels } = opened.value;
  const piece = await pieceNamed(state, id);
  const crop = parseCrop(cropIn(piece?.facts ?? {}, face));
  const path = ['photographs', face, 'crop'];
  const value = crop.ok ? formatCrop(turnedCrop(crop.value, pixels.height)) : '';
  const edited = piece === null || !crop.ok ? null : editFields(piece.text, [{ path, value }], PIECE_ORDER);
  if (edited !== null && !edited.ok) return edited.problem;
  const texts = piece === null || edited === null ? [] : [{ file: piece.file, text: edited.value, from: piece.text }];
  const bytes = await tidyCopy(await turned(pixels, 90), null);
  const done = await copyAll(state.at, id, [{ face, bytes }], [{ face, file }], texts);
  await state.readAgain();
  return done.ok ? null : done.problem;
}

function cropIn(facts: Fields, face: string): string {
  const held = ['photographs', face, 'crop'].reduce<unknown>((now, step) => (isFields(now as Fields) ? (now as Fields)[step] : ''), facts); // prettier-ignore
  return typeof held === 'string' ? held : '';
}

/** The box after a quarter turn to the right of a picture so many pixels high. */
export function turnedCrop({ left, top, width, height, unit }: Crop, high: number): Crop {
  const whole = unit === '%' ? 100 : high;
  const tidy = (figure: number): number => Math.round(figure * 100) / 100;
  return { left: tidy(whole - top - height), top: left, width: height, height: width, unit };
}
