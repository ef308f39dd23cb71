import type { FiledPiece } from '../../catalogue/records.ts';
import { known } from '../../catalogue/schema/fields.ts';
import { sizeSpan } from '../../core/measures/parse-size.ts';
import { formatCrop } from '../../catalogue/crop.ts';
import type { Doubt } from '../locate/find-piece.ts';
import type { Fault } from './faults.ts';
import type { FacePictures, PhotographManifest } from '../cache/manifest.ts';
import { PICTURE_SETTINGS } from '../cache/picture-settings.ts';

/**
 * What could be better about a photograph, and need not be: the file inside the cabinet, one sentence, and how good it is
 * as it is, from 0, the piece not being found, to 1.
 */
export type PhotographRemark = { readonly file: string; readonly says: string; readonly good: number };

/** Remarks that are told unasked. */
const TOLD = 8;

/** How large a piece is shown on its page at most, in pixels of the style sheet a millimetre: `--piece-most` in tokens.css. */
const SHOWN_AT = 12;

/** What could be better about the photographs of these pieces, by what the last run of the step saw in them. */
export function photographRemarks(
  pieces: readonly FiledPiece[],
  manifest: PhotographManifest,
): readonly PhotographRemark[] {
  return pieces.flatMap((piece) =>
    piece.pictures.flatMap(({ face, file }) => {
      const made = manifest[piece.id]?.find((one) => one.face === face);
      return made === undefined ? [] : remarksOn(piece, file, made);
    }),
  );
}

/**
 * Remarks to print: a line that says they need not be followed, then two lines each, the worst first, and how many more
 * there are, with the words that name the cabinet to the command which tells them; all of them for `null`. Nothing when there
 * are none.
 */
export function formatRemarks(
  remarks: readonly PhotographRemark[],
  folder: string,
  cabinetFlag: string | null,
): string {
  if (remarks.length === 0) return '';
  const worstFirst = remarks.toSorted((one, other) => one.good - other.good);
  const told = worstFirst.slice(0, cabinetFlag === null ? undefined : TOLD);
  const each = told.map(({ file, says }) => `${folder}/${file}\n  ${says}`);
  const left = remarks.length - told.length;
  const more = left === 0 ? '' : `And ${left} more. All of them: npm run check -- --every${cabinetFlag ?? ''}\n\n`;
  return `\nPhotographs that could be better; nothing of this has to be done:\n\n${each.join('\n\n')}\n\n${more}`;
}

function remarksOn(piece: FiledPiece, file: string, made: FacePictures): readonly PhotographRemark[] {
  if (made.doubt !== null) return [{ file, says: notCutOut(made, made.doubt), good: made.sure / 10 }];
  const wanted = made.face === 'obverse' || made.face === 'reverse' ? wantedPixels(piece) : null;
  const shown = Math.max(made.seen.piece.width, made.seen.piece.height);
  const faults = made.faults.map((fault) => ({ file, says: FAULTS[fault], good: 0.5 }));
  if (wanted === null || made.placed === 'whole' || shown >= wanted) return faults;
  return [
    ...faults,
    {
      file,
      says: `The ${made.face} is ${shown} pixels across in this photograph, and its page shows it at ${wanted}, on a fine screen at twice that, so it looks soft. Photograph it from nearer, or send the picture from the camera at its full size.`,
      good: shown / wanted,
    },
  ];
}

/** Why a photograph is shown whole, and what the keeper can do about it. */
function notCutOut({ face, seen: { photograph }, seems }: FacePictures, doubt: Doubt): string {
  const { width, height } = photograph;
  const side = Math.min(width, height);
  const middle = {
    left: Math.round((width - side) / 2),
    top: Math.round((height - side) / 2),
    width: side,
    height: side,
  };
  const crop = formatCrop({ ...(seems ?? middle), unit: 'px' });
  const visible =
    'The whole photograph is shown, and marked as not to scale; whatever else is in it, a label or a number, a visitor can read.';
  return `${BECAUSE[doubt]} ${visible} To have it cut out, write where the piece is, from the left, from the top, width and height, in piece.md: photographs: { ${face}: { crop: ${crop} } }.`;
}

/** Why nothing is cut out of a photograph. */
export const BECAUSE: Readonly<Record<Doubt, string>> = {
  unsure: 'It is not clear where the piece ends in this photograph.',
  'cut by the frame':
    'The edge of this photograph cuts off a part of the piece: photograph it again, with some board all round.',
  'a label':
    'What stands out in this photograph has straight sides, as a label, a holder or a ruler has. If it is the piece, write shape: square (or oblong, cut, irregular) in piece.md, or its diameter as height x width.',
  several: 'Several pieces lie in this photograph, and any of them could be the one meant.',
  covered: 'Something lies on the rim of the piece, as a finger does: lay it down and photograph it again.',
  'in a holder':
    'The piece lies in something, such as a holder, a slab or a capsule, or is square itself. For a square piece write shape: square in piece.md.',
};

/** How many pixels across a piece is shown on its page; null when its size is not recorded. */
function wantedPixels({ fields }: FiledPiece): number | null {
  const size = known(fields.diameter);
  if (size === null) return null;
  const { width, height } = sizeSpan(size);
  return Math.min(PICTURE_SETTINGS.sides.at(-1) ?? 0, Math.ceil(Math.max(width, height) * SHOWN_AT));
}

/** What a photograph suffers from, and the remedy. */
const FAULTS: Readonly<Record<Fault, string>> = {
  dark: 'This photograph is dark. Photograph the piece by daylight, near a window, and touch it on the screen so that the telephone sets the light by it.',
  glare: 'Parts of the piece are burnt out by glare. Turn it, or hang white paper between it and the lamp.',
  blurred:
    'This photograph is blurred. Rest the telephone on something, touch the piece on the screen, and wait until it is sharp.',
  tinted:
    'Everything in this photograph leans to one colour, as under a lamp at night. Use daylight, or lay a piece of white paper beside it and set the white balance by that.',
};
