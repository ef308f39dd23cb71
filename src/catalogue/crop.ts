import type { Outcome } from '../core/outcome.ts';
import { good, refuse } from '../core/outcome.ts';

/** Where a piece lies in its photograph: the box round it, in pixels or in hundredths of the picture's width and height. */
export type Crop = {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
  readonly unit: 'px' | '%';
};

const FORM = /^(\d+(?:\.\d+)?)[ ,]+(\d+(?:\.\d+)?)[ ,]+(\d+(?:\.\d+)?)[ ,]+(\d+(?:\.\d+)?) *(px|%)$/;

/**
 * Reads the box round a piece in its photograph, as the photograph is seen upright: from the left, from the top, width,
 * height, then the unit. `120 80 900 900 px`, `10 8 60 60 %`.
 */
export function parseCrop(text: string): Outcome<Crop> {
  const [, left, top, width, height, unit] = FORM.exec(text.trim().replace(/\s+/g, ' ')) ?? [];
  if (unit !== 'px' && unit !== '%')
    return refuse(
      `A crop is four figures, from the left, from the top, width and height, and px or %; this says "${text}". Write 120 80 900 900 px.`,
    );
  const crop = { left: Number(left), top: Number(top), width: Number(width), height: Number(height), unit } as const;
  if (crop.width === 0 || crop.height === 0)
    return refuse(
      `This crop is nothing wide or nothing high: "${text}". Give its width and height last, like 120 80 900 900 px.`,
    );
  if (unit === '%' && (crop.left + crop.width > 100 || crop.top + crop.height > 100))
    return refuse(
      `This crop reaches beyond the picture: "${text}". From the left and width together are 100 % at most, and so from the top and height.`,
    );
  return good(crop);
}

/** `120 80 900 900 px` */
export function formatCrop({ left, top, width, height, unit }: Crop): string {
  return `${left} ${top} ${width} ${height} ${unit}`;
}
