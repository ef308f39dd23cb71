import type { Outcome } from '../core/outcome.ts';

/** The site, an offline copy of the whole catalogue, or one that also lists what is on no list. */
export const BUILT = ['site', 'copy', 'copy with unlisted'] as const;
export type Built = (typeof BUILT)[number];

/** What the desk is handed by the command that opens it: what other commands do as well. */
export type DeskTools = {
  /** The number after the highest one. */
  readonly nextNumber: (numbers: readonly string[]) => string;
  /** Builds the site, or a copy for one friend; each line of its progress is told. Answers with what it says at its end. */
  readonly build: (what: Built, tell: (line: string) => void) => Promise<Outcome<string>>;
  /** Serves what was built under another port; answers with the address. */
  readonly preview: () => Promise<Outcome<string>>;
  /** The folder into which it is built. */
  readonly into: (what: Built) => string;
};
