import type { Cabinet } from '../../cabinet.ts';
import { urls } from '../../urls.ts';
import { exhibitWords } from '../../words/exhibits.ts';
import type { PageHead } from '../shared/head.ts';
import type { CaseFromAbove } from './case-from-above.ts';
import { exhibitPage } from './exhibit-page.ts';

/** An exhibit in the list of them: a few words, and its first case; null where it has none. */
export type ExhibitInList = {
  readonly href: string;
  readonly title: string;
  readonly scope: string | null;
  readonly says: string;
  readonly figure: CaseFromAbove | null;
};
export type ExhibitsPage = { readonly head: PageHead; readonly exhibits: readonly ExhibitInList[] };

export function exhibitsPage(cabinet: Cabinet): ExhibitsPage {
  return {
    head: { title: exhibitWords.title, description: exhibitWords.description, here: urls.exhibits() },
    exhibits: cabinet.lists.exhibits.map((exhibit) => {
      const { title, scope, says, cases } = exhibitPage(cabinet, exhibit);
      return { href: urls.exhibit(exhibit.id), title, scope, says, figure: cases[0]?.figure ?? null };
    }),
  };
}
