import { join } from 'node:path';
import { formatCrop } from '../../catalogue/crop.ts';
import type { FiledPiece } from '../../catalogue/records.ts';
import { BECAUSE } from './remarks.ts';
import { refineRim } from '../locate/best-path.ts';
import { findPieces, LOOK_AT } from '../locate/find-piece.ts';
import { drawnOutline, inFiner, outlineBox, outlinePoints } from '../locate/outline.ts';
import type { Outline } from '../locate/outline.ts';
import type { Box } from '../locate/pixels.ts';
import { reduced, release } from '../locate/pixels.ts';
import type { Placed } from '../locate/place-piece.ts';
import { placePiece } from '../locate/place-piece.ts';
import { decodePhotograph, heldPixels } from '../render/open-photograph.ts';
import type { Photograph } from '../render/open-photograph.ts';
import { requestFor } from '../render/picture-request.ts';

/** How wide and high a photograph is on the page at most, in pixels. */
const SHOWN = 440;
/** The most pieces that are pointed out in one photograph. */
const MANY = 40;

type Reviewed = { readonly good: number; readonly html: string };

/**
 * A page for the keeper alone: every photograph of the published pieces with the rim drawn on it, how sure that is, and
 * the crop to write, worst first. Everything is in the one file, and it loads nothing.
 */
export async function reviewPage(
  pieces: readonly FiledPiece[],
  cabinet: string,
  onProgress: (done: number, all: number) => void = () => undefined,
): Promise<string> {
  const all = pieces
    .filter(({ fields }) => fields.publish !== 'no')
    .flatMap((piece) => piece.pictures.map((picture) => ({ piece, ...picture })));
  const reviewed: Reviewed[] = [];
  for (const { piece, face, file } of all) {
    const photograph = await decodePhotograph(join(cabinet, file)).catch(() => null);
    if (photograph === null)
      reviewed.push({ good: -1, html: `<li><h2>${escaped(file)}</h2><p>This photograph cannot be read.</p></li>` });
    else {
      reviewed.push(await reviewOne(photograph, await placePiece(photograph, requestFor(piece, face)), face, file));
      release(photograph.rgb);
    }
    onProgress(reviewed.length, all.length);
  }
  return page(reviewed.toSorted((one, other) => one.good - other.good).map(({ html }) => html));
}

async function reviewOne(photograph: Photograph, placed: Placed, face: string, file: string): Promise<Reviewed> {
  const small = Math.min(1, SHOWN / Math.max(photograph.width, photograph.height));
  const size = { width: Math.round(photograph.width * small), height: Math.round(photograph.height * small) };
  const picture = await heldPixels(photograph)
    .resize(size.width, size.height, { fit: 'fill' })
    .jpeg({ quality: 78 })
    .toBuffer();
  const seen = placed.doubt === 'several' ? severalIn(photograph) : rimOf(placed, photograph);
  const rims = seen.map((rim, at) => rimSvg(rim, small, seen.length > 1 ? String(at + 1) : '')).join('');
  const crops = seen.map((rim, at) =>
    cropLine(outlineBox(rim), photograph, face, seen.length > 1 ? `${at + 1}: ` : ''),
  );
  const whole = placed.how === 'whole' && placed.doubt === null;
  const good = placed.doubt === null ? (whole ? 2 : placed.sure) : placed.sure - 1;
  return {
    good,
    html: `<li class="${placed.doubt === null ? 'cut' : 'whole'}"><h2>${escaped(file)}</h2>
<svg viewBox="0 0 ${size.width} ${size.height}" width="${size.width}" height="${size.height}" role="img" aria-label="The photograph with the rim drawn on it"><image href="data:image/jpeg;base64,${picture.toString('base64')}" width="${size.width}" height="${size.height}"/>${rims}</svg>
<p>${saysOf(placed)}</p>${crops.join('')}</li>`,
  };
}

function saysOf({ how, doubt, sure }: Placed): string {
  if (doubt === 'unsure') return `${BECAUSE[doubt]} Shown whole. Sure: ${Math.round(sure * 100)} of 100.`;
  if (doubt !== null) return `${BECAUSE[doubt]} Shown whole.`;
  if (how === 'crop') return 'Cut out where your crop says.';
  return how === 'whole'
    ? 'Shown whole, as a detail or an edge is.'
    : `Cut out. Sure: ${Math.round(sure * 100)} of 100.`;
}

/** The rim as it is cut out or seems to be, in the pixels of the photograph. */
function rimOf({ rim, box, seems }: Placed, photograph: Photograph): readonly Outline[] {
  if (rim.kind === 'drawn') return [drawnOutline(box, rim.shape)];
  if (rim.kind === 'none') return seems === null ? [] : [drawnOutline(seems, 'ellipse')];
  const { piece, left, top, times } = rim.copy;
  if (piece.rim.kind === 'silhouette') return [drawnOutline(box, 'rectangle')];
  const { outline, slack } = piece.rim;
  return [refineRim(photograph, inFiner(outline, -left / times, -top / times, times), slack)];
}

function severalIn(photograph: Photograph): readonly Outline[] {
  const look = reduced(photograph, 2 * LOOK_AT);
  const times = photograph.width / look.width;
  return findPieces(look, MANY).map(({ box: { left, top, width, height } }) =>
    drawnOutline({ left: left * times, top: top * times, width: width * times, height: height * times }, 'ellipse'),
  );
}

function rimSvg(rim: Outline, small: number, name: string): string {
  const points = outlinePoints(rim).map(({ x, y }) => `${(x * small).toFixed(1)},${(y * small).toFixed(1)}`);
  return `<polygon points="${points.join(' ')}"/>${name === '' ? '' : `<text x="${(rim.x * small).toFixed(0)}" y="${(rim.y * small).toFixed(0)}">${name}</text>`}`;
}

function cropLine({ left, top, width, height }: Box, photograph: Photograph, face: string, name: string): string {
  const full = photograph.full.width / photograph.width;
  const [x, y, wide, high] = [left, top, width, height].map((length) => Math.max(0, Math.round(length * full)));
  const crop = formatCrop({ left: x ?? 0, top: y ?? 0, width: wide ?? 0, height: high ?? 0, unit: 'px' });
  const line = `photographs: { ${face}: { crop: ${crop} } }`;
  return `<p class="crop">${name}<code>${escaped(line)}</code> <button type="button">Copy</button></p>`;
}

function page(items: readonly string[]): string {
  return `<!doctype html>
<html lang="en">
<meta charset="utf-8">
<meta name="viewport" content="width=device-width">
<meta name="robots" content="noindex">
<title>Photographs to review</title>
<style>
:root{color-scheme:light dark;font:1rem/1.5 system-ui,sans-serif}
body{margin:0 auto;max-width:80rem;padding:1.5rem}
ul{list-style:none;padding:0;display:grid;gap:2rem;grid-template-columns:repeat(auto-fill,minmax(min(100%,24rem),1fr))}
h2{font-size:1rem;margin:0 0 .5rem;overflow-wrap:anywhere}
svg{max-width:100%;height:auto;display:block}
polygon{fill:none;stroke:#f0f;stroke-width:2}
.whole polygon{stroke-dasharray:6 5}
text{fill:#f0f;font-size:16px;font-weight:bold;paint-order:stroke;stroke:#fff;stroke-width:3px}
p{margin:.4rem 0}
code{overflow-wrap:anywhere}
</style>
<h1>Photographs to review</h1>
<p>For you alone: this page lies in private/ and is never published. The least sure come first. Where the rim is wrong or only dashed, copy the line under the photograph into the piece's piece.md, correct its four numbers (from the left, from the top, width and height) and build again.</p>
<ul>
${items.join('\n')}
</ul>
<script>
document.addEventListener('click', async ({ target }) => {
  if (!(target instanceof HTMLButtonElement)) return;
  const code = target.previousElementSibling;
  try { await navigator.clipboard.writeText(code.textContent); target.textContent = 'Copied'; }
  catch { getSelection().selectAllChildren(code); target.textContent = 'Selected: copy it now'; }
});
</script>
</html>
`;
}

function escaped(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('"', '&quot;');
}
