import { ANCIENT, UK, US } from './scale/english.ts';
import { DE, NL, NORDIC } from './scale/germanic.ts';
import { ES, FR, IT } from './scale/romance.ts';
import { SCALE_IDS } from './grade.ts';
import type { ScaleId } from './grade.ts';
import type { Scale } from './sources.ts';

export { SOURCES } from './sources.ts';

/** Every scale, with its words from poorest to best and where each table puts them. */
export const SCALES: Readonly<Record<ScaleId, Scale>> = {
  numeric: { ...US, title: 'Numeric' },
  us: US,
  uk: UK,
  de: DE,
  fr: FR,
  it: IT,
  es: ES,
  nl: NL,
  nordic: NORDIC,
  ancient: ANCIENT,
};

/**
 * The scales asked together when a grade names none, and those asked only when none of these knows the word. Figures of
 * the Nordic scale must always name it.
 */
export const ASKED_FIRST: readonly ScaleId[] = ['uk', 'us', 'ancient', 'de', 'fr', 'it', 'es'];
export const ASKED_LAST: readonly ScaleId[] = ['nl'];

export function isScaleId(text: string): text is ScaleId {
  return SCALE_IDS.some((id) => id === text);
}
