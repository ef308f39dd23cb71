import type { Cabinet } from '../../cabinet.ts';
import { urls } from '../../urls.ts';
import { firstSentence } from '../shared/first-sentence.ts';
import { aboutWords } from '../../words/about.ts';
import { tied } from '../../words/no-break.ts';
import { cautionWords } from '../../words/cautions.ts';
import type { CautionName } from '../../words/cautions.ts';
import { contactOf } from '../shared/contact.ts';
import type { Contact } from '../shared/contact.ts';
import { countWords } from '../../words/counts.ts';
import type { PageHead } from '../shared/head.ts';

export type AboutPage = {
  readonly head: PageHead;
  readonly keptBy: string;
  /** What the keeper says of the cabinet: the first sentence, and the rest. */
  readonly about: { readonly first: string; readonly rest: string } | null;
  readonly isDemo: boolean;
  readonly contents: string;
  /** The address the keeper chose to publish. */
  readonly contact: Contact | null;
  readonly cautions: readonly { readonly id: CautionName; readonly name: string; readonly says: string }[];
};

const CAUTIONS: readonly CautionName[] = ['finds', 'copies', 'counterfeits', 'cleaning', 'lead', 'value', 'publishing'];

export function aboutPage({ lists, listed }: Cabinet): AboutPage {
  const { title, description } = aboutWords;
  return {
    head: { title, description, here: urls.about() },
    keptBy: aboutWords.keptBy(lists.cabinet.keeper),
    about: lists.cabinet.about === undefined ? null : inTwo(lists.cabinet.about),
    isDemo: lists.cabinet.demo === 'yes',
    contents: aboutWords.contents(countWords.pieces(listed.length), countWords.byStatus(listed)),
    contact: contactOf(lists.cabinet.contact),
    cautions: CAUTIONS.map((id) => ({ id, name: cautionWords[id].name, says: aboutWords.cautions[id] })),
  };
}

function inTwo(text: string): { readonly first: string; readonly rest: string } {
  const first = firstSentence(text);
  return { first: tied(first), rest: tied(text.slice(first.length).trim()) };
}
