import type { Outcome } from '../core/outcome.ts';

/** What the desk is handed by the command that opens it: what other commands do as well. */
export type DeskTools = {
  /** The number after the highest one. */
  readonly nextNumber: (numbers: readonly string[]) => string;
  /** Builds the site; each line of its progress is told. Answers with what it says at its end. */
  readonly build: (tell: (line: string) => void) => Promise<Outcome<string>>;
  /** Serves what was built under another port; answers with the address. */
  readonly preview: () => Promise<Outcome<string>>;
  /** The folder to upload. */
  readonly out: string;
};
