import { identifierWords } from '../../words/identifiers.ts';

export type Identifier = { readonly name: string; readonly href: string | null };

/** The same thing in other people's lists. */
export function identifiersOf(identifiers: Readonly<Record<string, string>> | undefined): readonly Identifier[] {
  return Object.entries(identifiers ?? {}).map(([list, id]) => identifierWords.entry(list, id));
}
