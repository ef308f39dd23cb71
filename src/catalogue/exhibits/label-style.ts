import type { LabelStyle } from '../../core/cases/case-to-plan.ts';
import type { ExhibitFields } from '../schema/exhibit.ts';

/** Taken where the exhibit does not say: a label that a case of the common club size holds eight of in a row. */
const USUAL = { width: 90, points: 18 };

/** How the labels of an exhibit are made. */
export function styleOf({ width, text, height, stand }: ExhibitFields['label']): LabelStyle {
  return {
    width: width?.high ?? USUAL.width,
    points: text ?? USUAL.points,
    height: height?.high ?? null,
    stand: stand ?? null,
  };
}
