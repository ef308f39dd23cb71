import type { Run, SetLine } from './typeset-text.ts';
import { lineHeight, setText, widthOfText } from './typeset-text.ts';

/** A card as it is printed and lies in the case: its size in millimetres, its type in points, its lines. */
export type Card = {
  readonly width: number;
  readonly height: number;
  readonly points: number;
  readonly lines: readonly SetLine[];
  /** How many of them are facts above the words of a label: a text of its own, which may run the other way. */
  readonly above?: number;
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

/** A label: written by hand below the facts of its piece, or made of facts alone. */
type Says = {
  readonly label: string;
  readonly facts: readonly string[] | null;
  readonly identity?: readonly string[];
};

/**
 * A label that is no higher than `most`: facts are left out from the end until it is, the first of a label made of facts never. Words
 * that are not made of facts are kept whole, below the facts that have room above them.
 */
export function setLabel(
  { label, facts, identity = [] }: Says,
  width: number,
  points: number,
  most: number | null,
): Card {
  const made = facts ?? identity;
  const least = facts === null ? 0 : 1;
  const withFacts = (kept: number): Card => {
    const told = made.slice(0, kept).join(' ');
    return facts === null ? below(told, setCard(label, width, points)) : setCard(told, width, points);
  };
  if (most === null) return facts === null ? withFacts(made.length) : setCard(label, width, points);
  for (let kept = made.length; kept > least; kept -= 1) {
    const card = withFacts(kept);
    if (card.height <= most + 1e-9) return card;
  }
  return facts === null ? withFacts(0) : setCard(facts[0] ?? label, width, points);
}

/** The card with a text above its own. */
function below(text: string, card: Card): Card {
  const above = setCard(text, card.width, card.points);
  const lines = [...above.lines, ...card.lines];
  return {
    ...card,
    lines,
    above: above.lines.length,
    height: lines.length * lineHeight(card.points) + 2 * CARD_MARGIN,
  };
}
