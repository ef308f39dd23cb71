import { yearsOf } from '../../core/dating/interval.ts';
import type { Catalogue, Piece } from '../catalogue.ts';
import { isBlank } from '../schema/fields.ts';
import type { ReadExhibit } from './exhibit-texts.ts';
import type { Remark } from './remark.ts';

const SOURCE = 'the pieces in the cases';
/** Pieces named before the rest is counted. */
const NAMED = 4;

/** Sentences that say what is not shown, and words that let a piece be outside. */
const LEFT_OUT = /\b(?:leav(?:e|es|ing) out|left out|without|except|exclud\w+|omit\w*|not|no|none|nor)\b/iu;
const ALLOWED = /\b(?:few|some|others?|elsewhere|besides|later|earlier|compar\w+|including|also|related)\b/iu;

/** A name of one of the lists, and the pieces shown of it. */
type ListName = { readonly id: string; readonly names: readonly string[] };

/** The scope against the contents: a ruler it names and nothing shows, and pieces outside what it names. */
export function scopeRemarks({ exhibit, pieces }: ReadExhibit, catalogue: Catalogue): readonly Remark[] {
  const { scope } = exhibit.fields;
  if (scope === undefined || pieces.length === 0) return [];
  const { language } = catalogue.cabinet;
  if (!/^en\b/u.test(language))
    return [
      {
        path: ['scope'],
        says: `Scope and counts are compared with the cases only where they are in English, and this cabinet is in “${language}”. Compare them yourself.`,
        source: SOURCE,
      },
    ];
  const said = scope.split(/(?<=[.;!?])\s+/u).filter((sentence) => !LEFT_OUT.test(sentence));
  const text = said.join(' ');
  const rulers = named(text, rulerNames(catalogue));
  const absent = rulers.filter(({ id }) => !pieces.some(({ piece }) => rulersOf(piece).includes(id)));
  // One name may be that of several rulers: of Cnut of York, or of England.
  const missing = absent.filter(
    ({ called }) => !rulers.some((other) => other.called === called && !absent.includes(other)),
  );
  const range = rangeOf(text, rulers, catalogue);
  const outside = ALLOWED.test(scope) ? [] : outsideOf(pieces, text, rulers, range, catalogue);
  return [
    ...missing.map(({ called }) => ({
      path: ['scope'],
      says: `The scope names ${called}, and no piece of ${called} is in the cases. Show one, or say in the scope that none is shown.`,
      source: SOURCE,
    })),
    ...(outside.length === 0
      ? []
      : [
          {
            path: outside[0]?.path ?? ['scope'],
            says: `Outside the scope: ${idsOf(outside.map(({ piece }) => piece.id))}. Take ${outside.length === 1 ? 'it' : 'them'} out, or let the scope say “with a few others”.`,
            source: SOURCE,
          },
        ]),
  ];
}

/** From one ruler to another, or between two years; null where the scope names no such ends. */
function rangeOf(
  text: string,
  rulers: readonly { readonly id: string; readonly called: string; readonly at: number }[],
  catalogue: Catalogue,
): { readonly low: number; readonly high: number } | null {
  const years = /(?<!\d)(\d{3,4})\s*(?:-|–|\bto\b|\band\b)\s*(\d{3,4})(?!\d)/u.exec(text);
  if (years !== null) return { low: Number(years[1]), high: Number(years[2]) };
  for (const [at, first] of rulers.entries()) {
    const second = rulers[at + 1];
    const between = second === undefined ? '' : text.slice(first.at + first.called.length, second.at);
    if (second === undefined || !/^\s+(?:to|until|down to)\s+(?:the\s+)?$/u.test(between)) continue;
    const [from, to] = [reignOf(first.id, catalogue), reignOf(second.id, catalogue)];
    if (from !== null && to !== null) return { low: from.low, high: to.high };
  }
  return null;
}

function reignOf(id: string, { rulers }: Catalogue): { readonly low: number; readonly high: number } | null {
  const reigns = rulers[id]?.fields.reigns ?? [];
  if (reigns.length === 0) return null;
  return {
    low: Math.min(...reigns.map(({ from }) => yearsOf(from).low)),
    high: Math.max(...reigns.map(({ to }) => yearsOf(to).high)),
  };
}

/** Pieces of another time, another ruler or another denomination than those a scope names. What is not recorded is not outside. */
function outsideOf(
  pieces: ReadExhibit['pieces'],
  text: string,
  rulers: readonly { readonly id: string }[],
  range: ReturnType<typeof rangeOf>,
  catalogue: Catalogue,
): ReadExhibit['pieces'] {
  const denominations = named(text, denominationNames(catalogue)).map(({ id }) => id);
  return pieces.filter(({ piece }) => {
    const { date, denomination } = piece.fields;
    const years = date === undefined || isBlank(date) ? null : yearsOf(date);
    if (range !== null && years !== null && (years.high < range.low || years.low > range.high)) return true;
    const own = rulersOf(piece);
    if (range === null && rulers.length > 0 && own.length > 0 && !rulers.some(({ id }) => own.includes(id)))
      return true;
    return (
      denominations.length > 0 &&
      denomination !== undefined && !isBlank(denomination) && !denominations.includes(denomination)
    ); // prettier-ignore
  });
}

function rulersOf({ fields }: Piece): readonly string[] {
  const { ruler } = fields;
  return [...(ruler === undefined || isBlank(ruler) ? [] : ruler), ...(fields['struck-for'] ?? [])];
}

function rulerNames({ rulers }: Catalogue): readonly ListName[] {
  return Object.values(rulers).map(({ id, fields }) => ({ id, names: [fields.name, ...fields['other-names']] }));
}

function denominationNames({ denominations }: Catalogue): readonly ListName[] {
  return Object.values(denominations).map(({ id, fields }) => ({
    id,
    // Pence are counted by value and pennies by the piece; a list of denominations has one of the two.
    names: [fields.name, ...(fields.plural === undefined ? [] : [fields.plural]), pluralOf(fields.name)].map((name) =>
      name.toLowerCase(),
    ),
  }));
}

function pluralOf(name: string): string {
  return /[^aeiou]y$/u.test(name) ? `${name.slice(0, -1)}ies` : `${name}s`;
}

/** The names in a text, in its order; the longest at each place, so that Edward III is not Edward I. */
function named(
  text: string,
  lists: readonly ListName[],
): readonly { readonly id: string; readonly called: string; readonly at: number }[] {
  const found = lists.flatMap(({ id, names }) => {
    const here = names.flatMap((called) => {
      const folded = called === called.toLowerCase() ? text.toLowerCase() : text;
      const at = folded.search(new RegExp(`(?<![\\p{L}-])${escaped(called)}(?![\\p{L}-])`, 'u'));
      return at === -1 ? [] : [{ id, called, at }];
    });
    return here.sort((a, b) => b.called.length - a.called.length).slice(0, 1);
  });
  return found
    .filter(
      (one) =>
        !found.some(
          ({ at, called }) =>
            called.length > one.called.length && at <= one.at && one.at + one.called.length <= at + called.length,
        ),
    )
    .sort((a, b) => a.at - b.at);
}

function escaped(text: string): string {
  return text.replace(/[.*+?^${}()|[\]\\]/gu, '\\$&');
}

function idsOf(ids: readonly string[]): string {
  const rest = ids.length - NAMED;
  return rest > 0 ? `${ids.slice(0, NAMED).join(', ')} and ${String(rest)} more` : ids.join(', ');
}

const SMALL = 'one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'.split(' '); // prettier-ignore
const TENS = 'twenty thirty forty fifty sixty seventy eighty ninety'.split(' ');
const NUMBER = String.raw`\d{1,3}|(?:${TENS.join('|')})(?:[- ](?:${SMALL.slice(0, 9).join('|')}))?|${[...SMALL].reverse().join('|')}`;
/** A text speaks of what is shown when it says so; a title and a scope always do. */
const SHOWN_HERE = /\b(?:here|shown|show|shows|these|this (?:case|exhibit|group)|in the cases?|on show)\b/iu;

/** A number of pieces, in figures or words, that is no number of what is shown. */
export function countRemarks({ exhibit, texts, pieces }: ReadExhibit, catalogue: Catalogue): readonly Remark[] {
  const nouns = [
    ...['pieces', 'coins', 'objects'].map((noun) => ({ noun, is: null })),
    ...denominationNames(catalogue).flatMap(({ id, names }) => names.slice(1).map((noun) => ({ noun, is: id }))),
  ];
  const counted = new RegExp(`(?<![\\p{L}\\d./–-])(${NUMBER})\\s+(${nouns.map(({ noun }) => escaped(noun)).join('|')})(?!\\p{L})`, 'giu'); // prettier-ignore
  return texts.flatMap(({ is, words, path, isOwn }): readonly Remark[] => {
    if (!isOwn || is === 'label') return [];
    return words.split(/(?<=[.;!?])\s+/u).flatMap((sentence) => {
      if (is !== 'title' && is !== 'scope' && !SHOWN_HERE.test(sentence)) return [];
      return Array.from(sentence.matchAll(counted)).flatMap(([says, number = '', noun = '']): readonly Remark[] => {
        const meant = nouns.find((one) => one.noun === noun.toLowerCase())?.is ?? null;
        const counts = countsOf(pieces, path, exhibit.fields.cases, meant);
        if (counts.includes(valueOf(number))) return [];
        const there = counts[0] ?? 0;
        return [
          { path, says: `The text says “${says}”, and ${String(there)} ${there === 1 ? 'is' : 'are'} shown.`, source: SOURCE },
        ]; // prettier-ignore
      });
    });
  });
}

function valueOf(number: string): number {
  const [first = '', second] = number.toLowerCase().split(/[- ]/u);
  if (/^\d/u.test(first)) return Number(first);
  const tens = TENS.indexOf(first);
  const ones = second === undefined ? 0 : SMALL.indexOf(second) + 1;
  return tens === -1 ? SMALL.indexOf(first) + 1 : (tens + 2) * 10 + ones;
}

/** How many there are: in the nearest thing the text is part of first, then in its case, then in all; coins may be all pieces. */
function countsOf(
  pieces: ReadExhibit['pieces'],
  path: readonly (string | number)[],
  cases: ReadExhibit['exhibit']['fields']['cases'],
  denomination: string | null,
): readonly number[] {
  const within = [4, 2, 0].filter((long) => path[0] !== 'cases' || long <= path.length);
  const kinds = (some: readonly Piece[]): readonly number[] =>
    denomination === null
      ? [some.length, some.filter(({ fields }) => fields.kind === 'coin').length]
      : [some.filter(({ fields }) => fields.denomination === denomination).length];
  const isIn = (long: number) => (other: readonly (string | number)[]) =>
    path.slice(0, long).every((step, at) => other[at] === step);
  const places = path[0] === 'cases' && cases.length > 0 ? within : [0];
  return places.flatMap((long) => kinds(pieces.filter(({ path: at }) => isIn(long)(at)).map(({ piece }) => piece)));
}

/** Numbers beyond the last that a book has, by its own file. */
export function lastNumberRemarks({ pieces }: ReadExhibit, { works }: Catalogue): readonly Remark[] {
  return pieces.flatMap(({ piece, path }) =>
    piece.references.flatMap(({ work, number, relation, text }): readonly Remark[] => {
      const last = Number(works[work]?.fields.last ?? NaN);
      const cited = Number(/^\d+/u.exec(number)?.[0] ?? NaN);
      if (relation === 'unlisted' || !(cited > last)) return [];
      return [
        {
          path,
          says: `“${text}” of ${piece.id} is beyond the last number of that book, ${String(last)}. Look it up again.`,
          source: `works/${work}.yaml`,
        },
      ];
    }),
  );
}
