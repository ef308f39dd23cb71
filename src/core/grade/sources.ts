import type { Grade, Mapping } from './grade.ts';

/** The tables that say where a word stands on the numeric scale. A living seller's list is called by its kind. */
export const SOURCES = {
  numeric: 'the words that go with the numeric scale; common practice',
  french: 'a French glossary table of terms in six countries',
  british: 'a published note of 2003 on British and American grading',
  german: 'a German list of terms beside numbers',
  italian: 'an Italian table of terms in five languages, read by its English word',
  spanish: "a Spanish collectors' table of terms, read by its American word",
  finnish: 'a Finnish list of terms, read by its English word',
  essay: 'an essay on ancient coins that puts fair, good and fine near 5, 10 and 15',
  memory: 'common practice, from memory',
} as const;

export type SourceId = keyof typeof SOURCES;

/** The table of the country whose words a scale has: what a keeper there means by them. */
const OWN: Readonly<Record<string, SourceId>> = {
  de: 'german', fr: 'french', uk: 'british', it: 'italian', es: 'spanish', numeric: 'numeric',
}; // prettier-ignore

/** Where the table of the grade's own country puts it; null where that country's table does not have the word. */
export function ownMapping({ scale, mappings }: Pick<Grade, 'scale' | 'mappings'>): Mapping | null {
  const own = OWN[scale];
  return mappings.find(({ source }) => own !== undefined && source === SOURCES[own]) ?? null;
}

/** One word of a scale. Its names are compared without case, stops, spaces and hyphens. */
export type ScaleWord = {
  /** The short form it is printed in. */
  readonly word: string;
  readonly means: string;
  readonly names: readonly string[];
  readonly mappings: readonly (readonly [source: SourceId, low: number, high: number])[];
  readonly proof?: true;
  /** A later word of the scale that this one may reach up to: *uncirculated* says nothing against *gem uncirculated*. */
  readonly upTo?: string;
};

/** How a language says *a little less* or *a little more* than a word. */
export type Qualifier = {
  readonly leaning: 'near' | 'good';
  /** How it is printed before the word; a single letter or sign is joined to it. */
  readonly print: string;
  /** Words that stand before, with a space. */
  readonly words: readonly string[];
  /** Letters or signs that lean on the word: `aVF`, `GVF`, `qSPL`, `-ss`. */
  readonly letters: readonly string[];
};

export type Scale = {
  readonly title: string;
  readonly qualifiers: readonly Qualifier[];
  /** From the poorest to the best. */
  readonly words: readonly ScaleWord[];
};

export const ENGLISH_QUALIFIERS: readonly Qualifier[] = [
  { leaning: 'near', print: 'about', words: ['about', 'abt'], letters: ['a'] },
  {
    leaning: 'near',
    print: 'near',
    words: ['near', 'nearly', 'almost', 'practically', 'virtually', 'nr', 'n'],
    letters: ['n'],
  },
  { leaning: 'good', print: 'good', words: ['good', 'gd', 'g'], letters: ['g'] },
  { leaning: 'good', print: 'choice', words: ['choice', 'ch'], letters: [] },
  { leaning: 'good', print: 'strong', words: ['strong', 'bold'], letters: [] },
];
