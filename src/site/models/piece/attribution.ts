import { isBlank } from '../../../catalogue/schema/fields.ts';
import { isCopy } from '../../../catalogue/types/inherit-facts.ts';
import { formatDate } from '../../../core/dating/format-date.ts';
import { formatReference } from '../../../core/references/reference.ts';
import type { Named, PublicPiece } from '../../../publish/public-piece.ts';
import { slug, urls } from '../../urls.ts';
import { capital, kindInWords, tagInWords } from '../../words/capital.ts';
import { pieceWords } from '../../words/piece.ts';
import { keyWords } from '../../words/key.ts';
import { siteWords } from '../../words/site.ts';
import { afterType } from './after-type.ts';
import { isIdle, row } from './row.ts';
import type { Row } from './row.ts';

const { field, doubt, recordedAs } = pieceWords;

/** What a piece is and how sure that is, in the order of a ticket. */
export function attributionRows(piece: PublicPiece): readonly Row[] {
  return statedRows(piece)
    .filter((each) => !isIdle(each, piece))
    .map((each) => afterType(each, piece));
}

function statedRows(piece: PublicPiece): readonly Row[] {
  const sure = howSure(piece);
  return [
    ...row(field.kind, piece.kind === 'coin' ? null : kindInWords(piece.kind), {
      doubt: sure('kind'),
    }),
    ...row(field.altered, piece.altered?.host),
    ...(piece.altered?.done ?? []).flatMap((one) => row(capital(one.what), doneInWords(one) || siteWords.unknown)),
    ...(piece.altered == null ? strikingRows(piece) : []),
    ...typeRows(piece),
    ...referenceRows(piece, sure('references')),
    ...elsewhereRows(piece),
    ...row(field.made, piece.made === null ? null : capital(piece.made)),
    ...row(field.shape, piece.shape === 'round' ? null : piece.shape),
    ...row(field.peculiarities, piece.peculiarities.join(', ')),
    ...row(field.treatments, treatmentsBesides(piece).join(', ')),
    ...diesRow(piece),
    ...row(field.found, foundInWords(piece)),
    ...tagRows(piece),
    ...row(field.status, pieceWords.status[piece.status]),
    ...(piece.altered == null ? [] : strikingRows(piece).map((each) => ({ ...each, under: pieceWords.ofHost }))),
  ];
}

/** What was done to it later, as far as the rows of an altered piece do not say it. */
function treatmentsBesides({ treatments, altered }: PublicPiece): readonly string[] {
  const done = new Set(altered?.done.map(({ what }) => what));
  return treatments.filter((treatment) => !done.has(treatment));
}

function howSure({ sure }: PublicPiece) {
  return (name: keyof PublicPiece['sure']): string => doubt[sure[name] ?? 'certain'];
}

/** In whose name, by whom, where and when it was struck; of an altered piece that is told of the one it was made from. */
function strikingRows(piece: PublicPiece): readonly Row[] {
  const sure = howSure(piece);
  return [
    ...(piece.rulers === 'none'
      ? row(field.noRuler, pieceWords.unnamed)
      : named(field.ruler, piece.rulers, urls.ruler, sure('ruler'))),
    ...named(field.struckFor, piece.struckFor, urls.ruler, sure('struck-for')),
    ...row(field.issuer, piece.issuer === 'unknown' ? siteWords.unknown : piece.issuer, { doubt: sure('issuer') }),
    ...named(field.mint, piece.mint, urls.mint, sure('mint')),
    ...piece.makers.flatMap(({ name, role, on }) =>
      row(pieceWords.makerOf(capital(role), on), name, {
        doubt: sure('makers'),
        note: piece.fromType.includes('makers') ? pieceWords.afterType : undefined,
      }),
    ),
    ...named(
      field.denomination,
      piece.denomination,
      (id) => (piece.listed ? urls.facet('denomination', id) : undefined),
      sure('denomination'),
    ),
    ...dateRows(piece, sure('date')),
    ...row(field.dated, piece.dated),
  ];
}

function named(
  name: string,
  held: readonly Named[] | Named | string | null,
  to: (id: string) => string | undefined,
  how: string,
): readonly Row[] {
  if (held === null) return [];
  if (typeof held === 'string') return row(name, held === 'none' ? siteWords.none : siteWords.unknown);
  const all = 'id' in held ? [held] : held;
  return all.length === 0
    ? []
    : [{ name, values: all.map((one) => ({ text: capital(one.name), to: to(one.id), isBlank: false })), doubt: how }];
}

function dateRows({ date }: PublicPiece, how: string): readonly Row[] {
  if (date === null || date === undefined) return [];
  if (isBlank(date)) return row(pieceWords.field.date, date === 'none' ? siteWords.none : siteWords.unknown);
  const said = formatDate(date);
  return row(field.date, said, { doubt: how, note: isInOwnWords(date.text, said) ? recordedAs(date.text) : undefined });
}

/** Signs of an era, *about* and the prefix of strict EDTF: an import puts them to figures that a sheet has bare. */
const SIGNS = /edtf:|(?<!\p{L})(?:AD|CE|BCE?|c\.|ca\.|circa|about|before|after)(?!\p{L})/giu;

/** The keeper's own words are worth repeating where they are words; years in figures are not, nor may they be quoted as what a sheet said. */
function isInOwnWords(text: string, said: string): boolean {
  return /\p{L}/u.test(text.replace(SIGNS, '').replaceAll(/(?<=\d)X+/g, '')) && !said.includes(text);
}

function referenceRows({ references, listed }: PublicPiece, how: string): readonly Row[] {
  if (references.length === 0) return [];
  const values = references.map((reference) => ({
    text: formatReference(reference, reference.cited),
    to: listed ? urls.work(reference.work) : undefined,
    isBlank: false,
  }));
  return [{ name: field.references, values, doubt: how }];
}

/** Its dies, with the way to the chart of dies of its series. */
function diesRow({ dies, types: [type], listed }: PublicPiece): readonly Row[] {
  const text = [dies?.obverse, dies?.reverse].filter((die) => die !== undefined).join(' / ');
  if (text === '') return [];
  const to = listed && type?.hasDies === true ? urls.dieChart(type.series) : undefined;
  return [{ name: field.dies, values: [{ text, to, isBlank: false }], doubt: '' }];
}

/** Each type it is of, with the way that is known. */
function typeRows(piece: PublicPiece): readonly Row[] {
  const { type, types, listed } = piece;
  if (isBlank(type)) return row(field.type, type === 'none' ? siteWords.none : siteWords.unknown);
  return types.flatMap(({ series, id, label, seriesTitle, how, sure, hasKey }) => [
    {
      name: isCopy(piece) ? field.model : field.type,
      values: [{ text: label, to: listed ? urls.type(series, id) : undefined, isBlank: false }],
      ...(listed && hasKey === true ? { onward: { text: keyWords.yours, to: urls.typeKey(series) } } : {}),
      doubt: doubt[sure],
      note: [seriesTitle, pieceWords.typeBy[how]].filter((part) => part !== undefined).join(', '),
    },
  ]);
}

function elsewhereRows({ elsewhere, listed }: PublicPiece): readonly Row[] {
  if (elsewhere.length === 0) return [];
  const values = elsewhere.map((reference) => ({
    text: `${formatReference(reference, reference.cited)}${reference.disputed === true ? `, ${pieceWords.disputed}` : ''}`,
    to: listed ? urls.work(reference.work) : undefined,
    isBlank: false,
  }));
  return [{ name: field.elsewhere, values, doubt: '', note: pieceWords.elsewhereNote }];
}

function tagRows({ tags, listed }: PublicPiece): readonly Row[] {
  if (tags.length === 0) return [];
  const values = tags.map((tag) => ({
    text: tagInWords(tag),
    to: listed ? urls.facet('tag', slug(tag)) : undefined,
    isBlank: false,
  }));
  return [{ name: field.tags, values, doubt: '' }];
}

type Done = NonNullable<PublicPiece['altered']>['done'][number];

/** Where, when, by whom and for whom it was done. */
function doneInWords({ on, date, by, for: forWhom }: Done): string {
  return [
    on === undefined ? undefined : doneWhere(on),
    date === undefined ? undefined : formatDate(date),
    by === undefined ? undefined : by === 'unknown' ? 'by an unknown hand' : `by ${by}`,
    forWhom === undefined ? undefined : `for ${forWhom}`,
  ]
    .filter((part) => part !== undefined)
    .join(' ');
}

/** A face takes its article; any other place is said as the keeper wrote it. */
function doneWhere(on: string): string {
  if (['obverse', 'reverse', 'edge'].includes(on)) return `on the ${on}`;
  return on === 'both faces' ? `on ${on}` : on;
}

function foundInWords({ found }: PublicPiece): string | null {
  if (found === null || found === undefined) return null;
  const when = found.when === undefined ? undefined : formatDate(found.when);
  return [found.area, found.how, when, found.recorded].filter((part) => part !== undefined).join(', ');
}
