import type { WorkFields } from '../schema/lists.ts';

/** A short form and what it stands for. */
export type Abbreviation = { readonly short: string; readonly means: string };

/** Signs of the trade that a visitor may not know, how they are in a text, and what they mean. Common practice. */
const USUAL: readonly (Abbreviation & { readonly found: RegExp })[] = [
  { short: 'obv.', means: 'obverse, the face with the ruler', found: /\bobv\./i },
  { short: 'rev.', means: 'reverse, the other face', found: /\brev\./i },
  { short: 'c.', means: 'about (Latin circa)', found: /\bc\.\s?(?=\d|AH|AD)/ },
  { short: 'cf.', means: 'compare: like it, not the same', found: /\bcf\./ },
  { short: 'var.', means: 'a variety of it', found: /\bvar\./ },
  { short: 'AV', means: 'gold', found: /\bAV\b/ },
  { short: 'AR', means: 'silver', found: /\bAR\b/ },
  { short: 'Æ', means: 'copper or bronze', found: /(?<!\p{L})Æ(?!\p{L})/u },
  { short: 'AH', means: 'year of the Hijra, counted from AD 622', found: /\bAH\s?\d/ },
  { short: 'h', means: 'die axis: where the top of the reverse points, as on a clock', found: /\b\d{1,2}h\b/ },
];

/**
 * The key to abbreviations: the books whose short names are in these texts, the signs of the trade in them, and what the
 * keeper adds or explains in other words, in alphabetical order.
 */
export function abbreviationsOf(
  texts: readonly string[],
  works: readonly Pick<WorkFields, 'short' | 'author' | 'title' | 'year'>[],
  own: Readonly<Record<string, string>>,
): readonly Abbreviation[] {
  const all = texts.join('\n');
  const books = works.flatMap(({ short, author, title, year }): readonly Abbreviation[] => {
    if (short === undefined || short === title || !standsIn(short, all)) return [];
    return [{ short, means: [author, title, year].filter((part) => part !== undefined).join(', ') }];
  });
  const usual = USUAL.filter(({ found }) => found.test(all)).map(({ short, means }) => ({ short, means }));
  const keepers = Object.entries(own).map(([short, means]) => ({ short, means }));
  const byShort = new Map([...usual, ...books, ...keepers].map((one) => [one.short, one]));
  return [...byShort.values()].sort((a, b) => a.short.localeCompare(b.short, 'en'));
}

function standsIn(short: string, text: string): boolean {
  const escaped = short.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
  return new RegExp(`(?<![\\p{L}\\p{N}])${escaped}(?![\\p{L}\\p{N}])`, 'u').test(text);
}
