import { bibTeX, cslJson } from '../../../publish/cite.ts';
import type { Cited } from '../../../publish/cite.ts';
import type { Cabinet } from '../../cabinet.ts';
import { hasPublicAddress, inFull, pathInSite } from '../../urls.ts';
import { citeWords } from '../../words/cite.ts';

/** How a page is cited: a sentence, and the same for programs that keep references. */
export type Citation = {
  readonly plain: string;
  readonly formats: readonly { readonly name: string; readonly text: string }[];
};

/** What is cited. `here` is its page, `shows` the pages of the pieces it shows: what changed in them has changed in it. */
export type CitedPage = Pick<Cited, 'key' | 'title' | 'number' | 'keeper'> & {
  readonly here: string;
  readonly shows?: readonly string[];
};

export function citationOf({ here, shows = [], ...cited }: CitedPage, { lists, changed }: Cabinet): Citation {
  const { cabinet } = lists;
  const days = [here, ...shows].flatMap((page) => changed[pathInSite(page)] ?? []).sort();
  const whole: Cited = {
    ...cited,
    collection: cabinet.title,
    address: hasPublicAddress() ? inFull(here) : null,
    changed: days.at(-1) ?? null,
    language: cabinet.language,
  };
  return {
    plain: citeWords.plain(whole),
    formats: [
      { name: citeWords.bibTeX, text: bibTeX(whole) },
      { name: citeWords.cslJson, text: cslJson(whole) },
    ],
  };
}
