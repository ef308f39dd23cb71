import { SCALES } from '../../core/grade/scales.ts';
import { claimsIn } from '../../core/cases/claims.ts';
import type { Catalogue, Piece, Work } from '../catalogue.ts';
import type { ReadExhibit } from './exhibit-texts.ts';
import type { Remark } from './remark.ts';
import { unsaid } from './label-text.ts';

const OURS = 'our own judgement';
/** Kinds that books of types describe. */
const IN_BOOKS = new Set(['coin', 'token', 'medal', 'jeton', 'pattern', 'paper']);
/** Pieces named before the rest is counted. */
const NAMED = 4;

/** Pieces whose size is not recorded lie in the plan at a guess. */
export function measureRemarks({ pieces }: ReadExhibit): readonly Remark[] {
  return pieces
    .filter(({ piece }) => piece.fields.diameter === undefined)
    .map(({ piece, path }) => ({
      path,
      says: `“${piece.fields.title}” has no diameter, so its place in the plan is a guess. Measure it, and add diameter: to its file.`,
      source: OURS,
    }));
}

/** Grades on more than one scale, which a judge cannot compare. */
export function scaleRemarks({ pieces, texts }: ReadExhibit): readonly Remark[] {
  const labels = new Map(
    texts.flatMap(({ is, words, piece }) => (is === 'label' && piece !== null ? [[piece, words]] : [])),
  );
  const told = pieces.flatMap(({ piece, path }) => {
    const { grade } = piece;
    // Words of ancient coins are English ones, as at home.
    if (grade === null || grade.notGraded !== undefined || grade.alsoOn !== undefined || grade.scale === 'ancient')
      return [];
    return wordsIn(labels.get(piece) ?? '').includes(wordsIn(grade.words))
      ? [{ piece, path, scale: SCALES[grade.scale].title }]
      : [];
  });
  const scales = [...new Set(told.map(({ scale }) => scale))];
  if (scales.length < 2) return [];
  const usual = scales.toSorted((a, b) => countOf(told, b) - countOf(told, a))[0];
  const others = told.filter(({ scale }) => scale !== usual);
  return listed(
    others,
    (names) =>
      `The labels give grades on ${String(scales.length)} scales (${scales.join(', ')}), which a judge cannot compare: ${names}. Say them all on one scale.`,
  );
}

/** A text with a space round every word, and nothing else between. */
function wordsIn(text: string): string {
  return ` ${text.split(/[\s,;:.()]+/).join(' ')} `;
}

function countOf(told: readonly { readonly scale: string }[], scale: string): number {
  return told.filter((one) => one.scale === scale).length;
}

/** Pieces whose attribution rests on nothing that could be looked up. */
export function sourceRemarks({ pieces }: ReadExhibit, catalogue: Catalogue): readonly Remark[] {
  const without = pieces.filter(
    ({ piece }) =>
      IN_BOOKS.has(piece.fields.kind) && !hasBook(piece, catalogue) && piece.fields.references === undefined,
  );
  const certain = without.filter(({ piece }) => isCertain(piece));
  const doubted = without.filter(({ piece }) => !isCertain(piece));
  return [
    ...listed(
      certain,
      (names, many) =>
        `${names} ${many ? 'are' : 'is'} attributed as certain and ${many ? 'name' : 'names'} no book. Add references: to ${many ? 'their files' : 'its file'}, or say how sure it is: sure: { date: probable }.`,
    ),
    ...listed(
      doubted,
      (names, many) =>
        `${names} ${many ? 'name' : 'names'} no book. Add references:, with cf. or unlisted if need be; an empty list, references: [], says that you have looked.`,
    ),
  ];
}

function listed(found: ReadExhibit['pieces'], says: (names: string, many: boolean) => string): readonly Remark[] {
  const [first] = found;
  if (first === undefined) return [];
  const names = found.slice(0, NAMED).map(({ piece }) => piece.id);
  const rest = found.length - names.length;
  const all = rest > 0 ? `${names.join(', ')} and ${String(rest)} more` : names.join(names.length > 2 ? ', ' : ' and ');
  return [{ path: first.path, says: says(all, found.length > 1), source: OURS }];
}

/** Whether nothing said of ruler, mint and date is in doubt. */
function isCertain({ fields: { sure } }: Piece): boolean {
  return !(['ruler', 'mint', 'date', 'issuer'] as const).some((field) => (sure?.[field] ?? 'certain') !== 'certain');
}

/** A reference, or a book named in its story or its provenance. A list left empty says that one was looked for, and is none. */
function hasBook(piece: Piece, { works }: Catalogue): boolean {
  if ((piece.fields.references ?? []).length > 0) return true;
  const told = [piece.story, ...(piece.fields.provenance ?? []).map(({ source }) => source ?? '')].join('\n');
  return Object.values(works).some((work) => isNamed(work, told));
}

function isNamed({ fields: { short, author, title } }: Work, text: string): boolean {
  const surname = author
    ?.split(/,| and |&/)[0]
    ?.trim()
    .split(' ')
    .at(-1);
  return [short, title, surname].some((name) => name !== undefined && name.length > 2 && text.includes(name));
}

/** Superlatives in a text that names no book: a judge reads the label, and not the piece's own page. */
export function claimRemarks({ texts }: ReadExhibit, catalogue: Catalogue): readonly Remark[] {
  return texts.flatMap(({ is, words, path, piece }): readonly Remark[] => {
    // A title or a heading promises; what it promises is claimed in the texts.
    if (is === 'title' || is === 'heading') return [];
    if (Object.values(catalogue.works).some((work) => isNamed(work, words))) return [];
    const [claim] = claimsIn(words);
    if (claim === undefined) return [];
    const where = `Name the book that says so in the ${piece === null ? 'text' : 'label'}`;
    return [
      {
        path,
        says: `“${claim}” is a claim that a judge will ask a book for. ${where}, or take the claim out.`,
        source: OURS,
      },
    ];
  });
}

const LAW = '16 CFR 304 (United States): a replica bears the word COPY; elsewhere common practice';
const PRACTICE = 'common practice';

/** Copies and counterfeits that neither the keeper's label nor the title calls what they are. */
export function copyRemarks({ texts }: ReadExhibit): readonly Remark[] {
  return texts.flatMap(({ is, words, path, piece, isOwn }): readonly Remark[] => {
    if (is !== 'label' || piece === null) return [];
    const { kind, title } = piece.fields;
    const source = kind === 'replica' ? LAW : PRACTICE;
    const what = kind === 'replica' ? 'a copy' : 'a counterfeit';
    const titled = unsaid(kind, title);
    return [
      ...(titled === null
        ? []
        : [
            {
              path,
              says: `The title of ${piece.id} does not say that it is ${what}. Write title: ${kind === 'replica' ? 'Copy' : 'Counterfeit'} of …`,
              source,
            },
          ]),
      ...(isOwn && /^A (?:modern copy|counterfeit)\. /.test(words) && titled !== null
        ? [
            {
              path,
              says: `Your label does not say that ${piece.id} is ${what}, so it was put before your words. Say it in them.`,
              source,
            },
          ]
        : []),
    ];
  });
}
