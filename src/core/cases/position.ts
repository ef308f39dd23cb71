import type { Outcome } from '../outcome.ts';
import { good, refuse } from '../outcome.ts';
import type { Corner } from './boxes.ts';

/** A place in a case: `120 80 mm` is 120 mm from its left and 80 mm from its top, inside. A comma may stand between. */
export function parsePosition(text: string): Outcome<Corner> {
  const match = /^\s*(\d+(?:\.\d+)?)\s*(?:mm)?\s*[\s,]\s*(\d+(?:\.\d+)?)\s*mm\s*$/.exec(text);
  return match === null
    ? refuse(
        `A place in a case is millimetres from its left, then from its top, inside; this says "${text}". Write 120 80 mm.`,
      )
    : good({ left: Number(match[1]), top: Number(match[2]) });
}

export function formatPosition({ left, top }: Corner): string {
  return `${String(left)} ${String(top)} mm`;
}
