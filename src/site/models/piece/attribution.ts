import { isBlank } from '../../../catalogue/schema/fields.ts';
import { formatDate } from '../../../core/dating/format-date.ts';
import { formatReference } from '../../../core/references/format-reference.ts';
import type { PublicPiece } from '../../../publish/public-piece.ts';
import { urls } from '../../urls.ts';
import { pieceWords } from '../../words/piece.ts';
import { siteWords } from '../../words/site.ts';
import type { Row } from './row.ts';
import { row } from './row.ts';

const { field, doubt } = pieceWords;

/** What a piece is and how sure that is, in the order of a ticket. */
export function attributionRows(piece: PublicPiece): readonly Row[] {
  const sure = (name: keyof PublicPiece['sure']): string => doubt[piece.sure[name] ?? 'certain'];
  const named = (name: string, held: readonly { id: string; name: string }[] | string | null, to: (id: string) => string, how: string): readonly Row[] => {
    if (held === null) return [];
    if (typeof held === 'string') return row(name, held === 'none' ? siteWords.none : siteWords.unknown);
    return held.length === 0 ? [] : [{ name, values: held.map((one) => ({ text: one.name, to: to(one.id) })), doubt: how }];
  };
  const one = <T>(held: T | string | null): readonly T[] | string | null => (held === null || typeof held === 'string' ? held : [held]);
  return [
    ...named(field.ruler, piece.rulers, urls.ruler, sure('ruler')),
    ...named(field.struckFor, piece.struckFor, urls.ruler, sure('struck-for')),
    ...row(field.issuer, piece.issuer, { doubt: sure('issuer') }),
    ...named(field.mint, one(piece.mint), urls.mint, sure('mint')),
    ...piece.makers.flatMap(({ name, role }) => row(capital(role), name, { doubt: sure('makers') })),
    ...named(field.denomination, one(piece.denomination), (id) => urls.facet('denomination', id), sure('denomination')),
    ...row(field.kind, piece.kind === 'coin' ? null : capital(piece.kind), { doubt: sure('kind') }),
    ...dateRow(piece, sure('date')),
    ...row(field.dated, piece.dated),
    ...(piece.references.length === 0
      ? []
      : [
          {
            name: field.references,
            values: piece.references.map((reference) => ({ text: formatReference(reference, reference.cited), to: urls.work(reference.work) })),
            doubt: sure('references'),
          },
        ]),
    ...row(field.made, piece.made === null ? null : capital(piece.made)),
    ...row(field.peculiarities, piece.peculiarities.join(', ')),
    ...row(field.treatments, piece.treatments.join(', ')),
    ...row(field.altered, piece.altered?.host, { note: piece.altered?.done.map(doneInWords).join('; ') }),
    ...row(field.dies, [piece.dies?.obverse, piece.dies?.reverse].filter((die) => die !== undefined).join(' / ')),
    ...row(field.found, foundInWords(piece)),
    ...row(field.status, pieceWords.sold[piece.status]),
  ];
}

function dateRow(piece: PublicPiece, how: string): readonly Row[] {
  const { date } = piece;
  if (date === null || date === undefined) return [];
  if (isBlank(date)) return row(field.date, date === 'none' ? siteWords.none : siteWords.unknown);
  const said = formatDate(date);
  return row(field.date, said, { doubt: how, note: said.replace(/\W/g, '') === date.text.replace(/\W/g, '') ? undefined : `recorded as “${date.text}”` });
}

type Done = NonNullable<PublicPiece['altered']>['done'][number];

function doneInWords({ what, on, date, by, for: forWhom }: Done): string {
  return [what, on === undefined ? '' : `on the ${on}`, date === undefined ? '' : formatDate(date), by === undefined ? '' : `by ${by}`, forWhom === undefined ? '' : `for ${forWhom}`]
    .filter((part) => part !== '')
    .join(' ');
}

function foundInWords({ found }: PublicPiece): string | null {
  if (found === null || found === undefined) return null;
  return [found.area, found.how, found.when === undefined ? undefined : formatDate(found.when), found.recorded].filter((part) => part !== undefined).join(', ');
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
