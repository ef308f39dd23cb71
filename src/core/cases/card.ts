import type { Run, SetLine } from './typeset-text.ts';
import { lineHeight, setText, widthOfText } from './typeset-text.ts';

/** A card as it is printed and lies in the case: its size in millimetres, its type in points, its lines. */
export type Card = {
  readonly width: number;
  readonly height: number;
  readonly points: number;
  readonly lines: readonly SetLine[];
};

/** From the edge of a card to its text, in millimetres. */
export const CARD_MARGIN = 3;

/** Sets a text on a card of this width; the card is as high as the text needs. */
export function setCard(text: string | readonly Run[], width: number, points: number): Card {
  const lines = setText(text, width - 2 * CARD_MARGIN, points);
  return { width, points, lines, height: lines.length * lineHeight(points) + 2 * CARD_MARGIN };
}

/** The same card no wider than its longest line needs. */
export function trimmed(card: Card): Card {
  const widths = card.lines.map((line) =>
    line.reduce((sum, { text, italic }) => sum + widthOfText(text, card.points, italic), 0),
  );
  return { ...card, width: Math.min(card.width, Math.ceil(Math.max(0, ...widths)) + 2 * CARD_MARGIN) };
}

/**
 * A label of so many facts that it is no higher than `most`: facts are left out from the end until it is, the first never.
 * A text that is not made of facts is kept whole.
 */
export function setLabel(
  says: { readonly label: string; readonly facts: readonly string[] | null },
  width: number,
  points: number,
  most: number | null,
): Card {
  const whole = setCard(says.label, width, points);
  if (most === null || says.facts === null) return whole;
  for (let kept = says.facts.length; kept > 1; kept -= 1) {
    const card = setCard(says.facts.slice(0, kept).join(' '), width, points);
    if (card.height <= most + 1e-9) return card;
  }
  return setCard(says.facts[0] ?? says.label, width, points);
}
