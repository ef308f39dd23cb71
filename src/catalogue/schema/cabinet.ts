import { z } from 'zod';
import { parseDate } from '../../core/dating/parse-date.ts';
import { SCALE_IDS } from '../../core/grade/grade.ts';
import { parseMoney } from '../../core/money/money.ts';
import { field, words } from './fields.ts';

const within = z.strictObject({ name: words, in: words });
/** A language, with a script and a region if need be, that the Unicode locale data know by name. */
function isLanguage(tag: string): boolean {
  const [language = '', ...rest] = tag.split('-');
  const isKnown = (type: 'language' | 'region' | 'script', code: string): boolean => {
    try {
      const name = new Intl.DisplayNames(['en'], { type, fallback: 'none' }).of(code);
      return name !== undefined;
    } catch {
      return false;
    }
  };
  return (
    /^[a-z]{2,3}$/i.test(language) &&
    isKnown('language', language) &&
    rest.every((part) => (part.length === 4 ? isKnown('script', part) : isKnown('region', part)))
  );
}

/** `cabinet.yaml`: what the whole site needs to know. */
export const cabinetSchema = z.strictObject({
  title: words,
  /** The keeper's public name, as the site prints it. */
  keeper: words,
  /** Where visitors may write, in public: a mail address or a page of the web. */
  contact: words
    .refine(
      (text) => /^[^\s@<>]+@[^\s@<>.]+(?:\.[^\s@<>.]+)+$/.test(text) || /^https?:\/\/\S+$/.test(text),
      'Write one address, like cabinet@example.org or https://example.org/contact.',
    )
    .optional(),
  /** The language of the texts: `en`, `de`, `pt-BR`. The site's own words are English. */
  language: words
    .refine(isLanguage, 'A language is written as its tag, like en, de or pt-BR (BCP 47). This one is not known.')
    .default('en'),
  /** Where the site will stand: `https://example.org/coins/`. */
  address: z
    .url({ protocol: /^https?$/, error: 'An address begins with https://, like https://example.org/coins/.' })
    .optional(),
  /** On what terms others may use the texts and the photographs: `{ texts: CC BY 4.0, photographs: CC BY-NC 4.0 }`. */
  licence: z.strictObject({ texts: words.optional(), photographs: words.optional() }).optional(),
  /** Whether search engines may list the site. */
  robots: z.enum(['all', 'none']).default('all'),
  /** `yes` cuts the public pictures into tiles as well, for picture viewers of other sites. */
  tiles: z.enum(['yes', 'no']).default('no'),
  /** What this cabinet is, in a few sentences. */
  about: words.optional(),
  /** `yes` marks invented data; only then may git track `private/`. */
  demo: z.enum(['yes', 'no']).default('no'),
  units: z.enum(['metric', 'grains']).default('metric'),
  /** The scale of grades beside which none is named; left out, each may be on any scale that has its word. */
  'grade-scale': z.enum(SCALE_IDS).optional(),
  /** What `gr` after a weight means in this cabinet; left out, each one is asked about. */
  gr: z.enum(['grains', 'grams']).optional(),
  /** The money the ledger is kept in: GBP. */
  currency: z
    .string()
    .regex(/^[A-Z]{3}$/, 'A currency is three capitals, like GBP.')
    .default('GBP'),
  /** Areas that lie within wider ones, for sets and era schemes: `[{ name: County Durham, in: England }]`. */
  areas: z.array(within).default([]),
  /** Realms that lie within wider ones, for sets. */
  realms: z.array(within).default([]),
  /** Whose metal value pages show: of what is kept for its metal (ingots, hacksilver, the tag `bullion`), of `all`, or of `none`. */
  'metal-values': z.enum(['bullion', 'all', 'none']).default('bullion'),
  /** Whether the page of measures adds up the fine gold and silver that is here: asked for, since it tells a thief how much there is. */
  'metal-totals': z.enum(['yes', 'no']).default('no'),
  /** Your own metal prices, a troy ounce, each with its day and source. */
  'metal-prices': z
    .array(
      z.strictObject({
        metal: words,
        /** A troy ounce: `24.10 GBP`. */
        price: field(parseMoney, 'money-unreadable'),
        date: field((text) => parseDate(text, { dateOf: 'event' }), 'date-unreadable'),
        source: words,
      }),
    )
    .default([]),
});

export type CabinetFields = z.infer<typeof cabinetSchema>;

/** The columns of `private/not-secret.csv`: an alarm that was answered, and when. */
export const NOT_SECRET_COLUMNS = ['column', 'value', 'date'] as const;
/** The columns of `private/guide.csv`. */
export const GUIDE_COLUMNS = ['set', 'place', 'grade', 'low', 'high', 'currency', 'source', 'date'] as const;
