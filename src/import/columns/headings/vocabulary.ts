import type { Language } from '../mapping.ts';

/** The headings of one field: by language, and those that are the same in all. Accents, capitals and stops do not matter. */
export type Headings = { readonly to: string; readonly any?: readonly string[] } & {
  readonly [language in Language]?: readonly string[];
};
