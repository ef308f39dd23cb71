import type { Language, Headings } from './mapping.ts';
import { LANGUAGES } from './mapping.ts';
import { DOUBTFUL } from './headings/doubtful.ts';
import { IDENTITY } from './headings/identity.ts';
import { MEASURES } from './headings/measures.ts';
import { PRIVATE, PRIVATE_WORDS } from './headings/private.ts';
import { isLedgerColumn } from '../../catalogue/fields/ledger-columns.ts';
import type { LedgerColumn } from '../../catalogue/fields/ledger-columns.ts';

/** What a heading says by itself. */
export type Matched = {
  readonly languages: readonly Language[];
  /** The unit or currency that is in it. */
  readonly unit: string | null;
} & (
  | { readonly kind: 'field'; readonly field: string }
  | { readonly kind: 'ledger'; readonly column: LedgerColumn }
  | { readonly kind: 'doubtful'; readonly doubt: string }
  | { readonly kind: 'nothing' }
  | { readonly kind: 'not known' }
);

type Row = {
  readonly kind: 'field' | 'ledger' | 'doubtful';
  readonly to: string;
  readonly languages: readonly Language[];
};

/** Every heading, plain. A private meaning goes before a public one, and a doubt before both. */
const BY_HEADING: ReadonlyMap<string, Row> = tableOf([
  ['field', MEASURES],
  ['field', IDENTITY],
  ['ledger', PRIVATE],
  ['doubtful', DOUBTFUL],
]);

function tableOf(tables: readonly (readonly [Row['kind'], readonly Headings[]])[]): ReadonlyMap<string, Row> {
  const table = new Map<string, Row>();
  for (const [kind, headings] of tables)
    for (const row of headings) {
      for (const word of row.any ?? []) table.set(plainHeading(word), { kind, to: row.to, languages: [] });
      for (const language of LANGUAGES)
        for (const word of row[language] ?? []) {
          const plain = plainHeading(word);
          const held = table.get(plain);
          const also = held?.kind === kind && held.to === row.to ? held.languages : [];
          table.set(plain, { kind, to: row.to, languages: [...also, language] });
        }
    }
  return table;
}

/** Small letters without accents, one blank between words; `gradeAsGiven` is three. */
export function plainHeading(heading: string): string {
  return heading
    .replace(/(\p{Ll})(\p{Lu})/gu, '$1 $2')
    .replace(/ø/gi, '⌀')
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/ß/g, 'ss')
    .replace(/[^\p{L}\p{N}⌀#°º]+/gu, ' ')
    .trim();
}

const UNIT_WORDS: Readonly<Record<string, readonly string[]>> = {
  g: ['g', 'gm', 'gms', 'gram', 'grams', 'gramm', 'gramme', 'grammes', 'grammi', 'gramos', 'grammo', 'gramo'],
  gr: ['gr', 'grs'],
  'gr ': ['grain', 'grains', 'gn'],
  dwt: ['dwt', 'pennyweight', 'pennyweights'],
  'oz t': ['oz t', 'ozt', 'troy oz', 'troy ounces'],
  mm: ['mm', 'millimetre', 'millimetres', 'millimeter', 'millimeters', 'millimetri', 'milimetros'],
  cm: ['cm', 'centimetres', 'zentimeter'],
  in: ['in', 'inch', 'inches'],
  h: ['h', 'hour', 'hours', 'uhr', 'heures', 'ore', 'horas', 'uur', 'o clock'],
  '°': ['°', 'degrees', 'deg', 'grad', 'degres'],
  thousandths: ['‰', 'thousandths', 'tausendteile', 'milliemes', 'millesimi', 'milesimas', '1000', 'mil'],
  '%': ['%', 'percent', 'prozent'],
  numeric: ['numeric', '1-70'],
  us: ['us', 'usa', 'american'],
  uk: ['uk', 'british', 'english'],
  GBP: ['£', 'gbp', 'pounds', 'sterling'],
  EUR: ['€', 'eur', 'euro', 'euros'],
  USD: ['us$', 'usd', 'dollars'],
  CHF: ['chf', 'sfr'],
  CAD: ['cad', 'cdn', 'c$', 'can$', 'cdn$'],
  AUD: ['aud', 'a$', 'au$'],
  NZD: ['nzd', 'nz$'],
  SEK: ['sek'],
  NOK: ['nok'],
  DKK: ['dkk'],
  PLN: ['pln', 'zl'],
  CZK: ['czk'],
  HUF: ['huf'],
  DEM: ['dem', 'dm'],
  ITL: ['itl'],
  FRF: ['frf'],
  NLG: ['nlg', 'hfl'],
}; // prettier-ignore
const UNIT_OF: ReadonlyMap<string, string> = new Map(
  Object.entries(UNIT_WORDS).flatMap(([unit, words]) => words.map((word) => [word, unit.trim()] as const)),
);
/** The grain is told from `gr`, which may be a gram. */
export const GRAINS: ReadonlySet<string> = new Set(UNIT_WORDS['gr ']);

/** What a heading means, its unit apart: `Weight (g)`, `Gewicht in Gramm`, `Ø mm`, `price_eur`. */
export function matchHeading(heading: string): Matched {
  const { bare, unit } = orUnitAlone(heading);
  const row = rowOf(heading) ?? rowOf(bare);
  if (row === undefined) {
    const column = privateBy(heading);
    if (column !== null) return { kind: 'ledger', column, languages: [], unit };
    return REFERENCES.test(heading)
      ? { kind: 'field', field: 'references', languages: [], unit }
      : { kind: 'not known', languages: [], unit };
  }
  const { languages, to } = row;
  if (row.kind === 'ledger' && isLedgerColumn(to)) return { kind: 'ledger', column: to, languages, unit };
  return row.kind === 'doubtful'
    ? { kind: 'doubtful', doubt: to, languages, unit }
    : { kind: 'field', field: to, languages, unit };
}

/** A heading without its unit; one that is a unit and nothing else, as `mm`, is that of its column. */
function orUnitAlone(heading: string): ReturnType<typeof withoutUnit> {
  const alone = UNIT_OF.get(heading.trim().toLowerCase().replace(/\.$/, ''));
  return alone === undefined ? withoutUnit(heading) : { bare: heading, unit: alone };
}

/** Letters that stand for an umlaut, as in Muenzstaette, are tried too. */
function rowOf(heading: string): Row | undefined {
  const plain = plainHeading(heading);
  return BY_HEADING.get(plain) ?? BY_HEADING.get(plain.replace(/([aou])e/g, '$1'));
}

function withoutUnit(heading: string): { readonly bare: string; readonly unit: string | null } {
  const forms = [
    /^(.*?)[\s_]*[([]([^)\]]+)[)\]]\s*$/,
    /^(.*?) (?:in|en) ([\p{L}£€$°‰%]+)\.?$/iu,
    /^(.*?)[\s,_/:.]+([\p{L}£€$°‰%]+)\.?$/u,
  ];
  for (const form of forms) {
    const [, bare, written = ''] = form.exec(heading.trim()) ?? [];
    const unit = UNIT_OF.get(written.trim().toLowerCase().replace(/\.$/, ''));
    if (bare !== undefined && bare !== '' && unit !== undefined) return { bare, unit };
  }
  const bracketed = /^(.*?)[\s_]*[([][^)\]]*[)\]]\s*$/.exec(heading.trim())?.[1];
  const language = /^(.*?)[\s_](?:en|fr|de|it|es|nl)$/i.exec(heading.trim())?.[1];
  return { bare: bracketed ?? language ?? heading, unit: null };
}

/** A word that makes a column one of references, whatever is beside it: `Spink / other refs`, `Lit. (Jaeger)`. */
const REFERENCES =
  /(?<!\p{L})(?:refs?|rif|riferiment[oi]|bibl|references?|referenz(?:en)?|zitate?|lit|literatur|bibliographie)(?!\p{L})/iu;

/** A private word anywhere in a heading nobody knows whole. */
function privateBy(heading: string): LedgerColumn | null {
  const words = plainHeading(heading).split(' ');
  const found = Object.entries(PRIVATE_WORDS).find(([, some]) => some.some((word) => words.includes(word)))?.[0];
  return found !== undefined && isLedgerColumn(found) ? found : null;
}
