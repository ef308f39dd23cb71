import type { Cabinet } from '../../cabinet.ts';
import { hasPublicAddress } from '../../urls.ts';
import { paperWords } from '../../words/paper.ts';
import { piecesShown } from '../exhibit/shown-exhibit.ts';
import type { ShownExhibit, ShownPiece } from '../exhibit/shown-exhibit.ts';

/** An exhibit with the keeper's name nowhere, and in sentences, none of which says the name, what was done about it. */
export type Anonymous = {
  readonly shown: ShownExhibit;
  readonly clear: (text: string) => string;
  readonly reports: readonly string[];
};

export function withoutName(exhibit: ShownExhibit, cabinet: Cabinet): Anonymous {
  const { keeper } = cabinet.lists.cabinet;
  const { clear, kept } = withholding(keeper, ordinaryWords(exhibit, cabinet));
  const places = new Set<string>();
  const shown = clearAll({ ...exhibit, keeper: null }, clear, (path) => {
    const place = placeIn(exhibit, path);
    if (place !== null) places.add(place);
  });
  const initials = keeper
    .split(/\s+/)
    .map((part) => Array.from(part)[0] ?? '')
    .join('');
  const isNumbered = initials.length > 1 && piecesShown(exhibit).some(({ piece }) => piece.number.startsWith(initials));
  return {
    shown,
    clear,
    reports: [
      places.size === 0 ? paperWords.nothingWithheld : paperWords.withheld([...places]),
      ...(kept.length === 0 ? [] : [paperWords.ordinaryKept(kept.length)]),
      ...(isNumbered ? [paperWords.initialsInNumbers] : []),
      ...(shown.titleCard.length === 0 ? [] : [paperWords.titleCardKept(shown.titleCard)]),
      ...(hasPublicAddress() ? [paperWords.codesKept] : []),
    ],
  };
}

/** Words that mean something else in this exhibit: those of the lists, of its kinds and metals, and all written small. */
function ordinaryWords(exhibit: ShownExhibit, { lists, pieces }: Cabinet): ReadonlySet<string> {
  const named = [
    ...Object.values(lists.rulers).map(({ fields }) => fields.name),
    ...Object.values(lists.mints).map(({ fields }) => fields.name),
    ...Object.values(lists.denominations).map(({ fields }) => fields.name),
  ];
  const plain = pieces.flatMap(({ kind, metal, made, shape, faces, status }) => [
    kind,
    metal ?? '',
    made ?? '',
    shape ?? '',
    faces,
    status,
  ]);
  const written = [exhibit.statement, exhibit.scope ?? '', ...exhibit.cases.flatMap(({ groups }) =>
    groups.flatMap(({ text, pieces: shown }) => [text ?? '', ...shown.map(({ label }) => label)]),
  )]; // prettier-ignore
  const small = written.join(' ').match(/(?<![\p{L}@.-])\p{Ll}[\p{Ll}\p{M}]*(?![\p{L}@.-]\p{L})/gu) ?? [];
  const words = [...named, ...plain].flatMap((name) => name.toLowerCase().split(/[^\p{L}\p{M}]+/u));
  return new Set([...words, ...small].filter((word) => word !== ''));
}

/** Facts of a piece that stand on paper. */
const PRINTED = /^(?:title|number|rulers|denomination|mint|references|issuer)\b/;

/** Where a text stands, in a keeper's words; null for what is not printed. */
function placeIn({ cases }: ShownExhibit, path: string): string | null {
  const inCase = /^cases\.(\d+)\.(?:groups\.(\d+)\.)?(?:pieces\.(\d+)\.)?(.*)$/.exec(path);
  if (inCase === null) return paperWords.placeOf[path.replace(/\..*/, '')] ?? null;
  const [, one = '', group, at, field = ''] = inCase;
  const shownGroup = group === undefined ? undefined : cases[Number(one)]?.groups[Number(group)];
  if (shownGroup === undefined) return paperWords.inCaseTitle(Number(one) + 1);
  const shown: ShownPiece | undefined = at === undefined ? undefined : shownGroup.pieces[Number(at)];
  if (shown === undefined) return paperWords.inGroup(Number(one) + 1, Number(group) + 1);
  if (!field.startsWith('piece.')) return paperWords.inLabel(shown.key);
  return PRINTED.test(field.slice('piece.'.length)) ? paperWords.inPiece(shown.key) : null;
}

/** Where a form without a name has put other words in place of the keeper's, and where it has left a word of the name standing. */
type Withheld = {
  /** What the page may show: the same text with "the exhibitor" for the keeper. */
  readonly clear: (text: string) => string;
  /** The words of the name that were left alone when they stand alone, for they are also ordinary words or names in the lists. */
  readonly kept: readonly string[];
};

/** Words before a name that go with it. From memory: the common English ones. */
const STYLES = String.raw`(?:(?:Mr|Mrs|Ms|Miss|Dr|Prof|Professor|Sir|Dame|Lady|Lord|Rev)\.?\s+)`;
const LETTER = String.raw`[\p{L}\p{M}\p{N}]`;
const BEFORE = `(?<!${LETTER})`;
const AFTER = `(?!${LETTER})`;

/**
 * Reads a keeper's name as a stranger would find it: whole, turned about ("Layerthorpe, Hester"), with initials, the surname
 * alone, a given name alone. A part of the name that is also a word of `ordinary` (the names of rulers, mints and the like, or
 * a word the exhibit uses uncapitalised) is only withheld as part of the whole name: a keeper named York may still write of York.
 */
export function withholding(keeper: string, ordinary: ReadonlySet<string>): Withheld {
  const parts = keeper
    .normalize('NFC')
    .trim()
    .split(/\s+/)
    .filter((part) => part !== '');
  const surname = parts.at(-1);
  if (surname === undefined) return { clear: (text) => text, kept: [] };
  const given = parts.slice(0, -1);
  const alone = parts.filter((part) => part.replace(/\P{L}/gu, '').length > 1);
  const kept = alone.filter((part) => ordinary.has(part.toLowerCase()));
  const withheld = alone.filter((part) => !kept.includes(part));
  const family = eitherCase(surname);
  const givens = `(?:(?:${given.flatMap((part) => [eitherCase(part), `${initialOf(part)}\\.?`]).join('|')})[\\s.-]*)+`;
  const isPlain = kept.includes(surname);
  const whole = [
    ...(given.length === 0 ? [] : [`${givens}${family}`, ...(isPlain ? [] : [String.raw`${family},\s*${givens}`])]),
    `${STYLES}${family}`,
    ...(given.length === 0 ? [] : [parts.map((part) => String.raw`${initialOf(part)}\.`).join(String.raw`\s?`)]),
    ...withheld.map((part) => (part === surname ? `${family}s?` : eitherCase(part))),
  ];
  const pattern = new RegExp(
    String.raw`(${BEFORE}[Tt]he\s+)?${BEFORE}${STYLES}?(?:${whole.join('|')})${AFTER}(['’]s${AFTER})?`,
    'gu',
  );
  return {
    clear: (text) =>
      text
        .normalize('NFC')
        .replace(
          pattern,
          (found: string, article: string | undefined, own: string | undefined, at: number, all: string) => {
            const opens = article?.startsWith('T') ?? /(?:^|[.!?]\s+)$/.test(all.slice(0, at));
            const called = opens ? paperWords.theExhibitorOpening : paperWords.theExhibitor;
            // "The Layerthorpe collection" is the exhibitor's.
            const isOwner =
              own !== undefined || (article !== undefined && /^\s+\p{L}/u.test(all.slice(at + found.length)));
            return isOwner ? `${called}’s` : called;
          },
        ),
    kept,
  };
}

/** A part of a name as it is written, in capitals, or in small letters as in an address. */
function eitherCase(part: string): string {
  return `(?:${[...new Set([part, part.toUpperCase(), part.toLowerCase()])].map(escaped).join('|')})`;
}

function initialOf(part: string): string {
  return escaped(Array.from(part)[0] ?? '');
}

function escaped(text: string): string {
  return text.replace(/[.*+?^${}()|[\]\\/-]/g, '\\$&');
}

/**
 * Every text of plain data, cleared; `tell` hears where something was put in place of it. Ids stay as they are, for they name
 * things and are not printed.
 */
function clearAll<T extends object>(from: T, clear: (text: string) => string, tell: (where: string) => void): T {
  const copy = structuredClone(from);
  const walk = (held: object, path: string): void => {
    for (const key of Reflect.ownKeys(held)) {
      if (typeof key !== 'string' || key === 'id') continue;
      const value: unknown = Reflect.get(held, key);
      const here = path === '' ? key : `${path}.${key}`;
      if (typeof value === 'string') {
        const cleared = clear(value);
        if (cleared === value) continue;
        Reflect.set(held, key, cleared);
        tell(here);
      } else if (typeof value === 'object' && value !== null) walk(value, here);
    }
  };
  walk(copy, '');
  return copy;
}
