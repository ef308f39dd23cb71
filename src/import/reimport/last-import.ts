import type { Written } from '../../catalogue/yaml.ts';

/** A piece as it was last imported from a sheet: what the next time is compared with. */
export type BroughtIn = {
  readonly id: string;
  readonly number: string;
  readonly row: number;
  /** The cells of its row as they stood. */
  readonly cells: readonly string[];
  readonly facts: Readonly<Record<string, Written>>;
  readonly story: string;
  readonly ledger: Readonly<Record<string, string>>;
};

/** One line a piece, in the order of the sheet; `parseBroughtIn` reads it back. */
export function formatBroughtIn(pieces: readonly BroughtIn[]): string {
  return pieces.map((piece) => `${JSON.stringify(piece)}\n`).join('');
}

/** The pieces of a file that `formatBroughtIn` wrote; a line that a hand has spoiled counts as never imported. */
export function parseBroughtIn(text: string): readonly BroughtIn[] {
  return text.split('\n').flatMap((line) => {
    try {
      const held: unknown = JSON.parse(line);
      return isBroughtIn(held) ? [held] : [];
    } catch {
      return [];
    }
  });
}

function isBroughtIn(held: unknown): held is BroughtIn {
  if (typeof held !== 'object' || held === null) return false;
  const { id, number, row, cells, facts, story, ledger } = held as Readonly<Record<string, unknown>>;
  return (
    typeof id === 'string' &&
    typeof number === 'string' &&
    typeof row === 'number' &&
    Array.isArray(cells) &&
    typeof facts === 'object' &&
    facts !== null &&
    typeof story === 'string' &&
    typeof ledger === 'object' &&
    ledger !== null
  );
}
