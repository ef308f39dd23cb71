import { isBlank, known } from '../../../catalogue/schema/fields.ts';
import { formatDate } from '../../../core/dating/format-date.ts';
import { formatWeight, weightIn } from '../../../core/measures/parse-weight.ts';
import { formatSize } from '../../../core/measures/parse-size.ts';
import { formatReference } from '../../../core/references/reference.ts';
import type { Named, PublicPiece } from '../../../publish/public-piece.ts';
import { boardWords } from '../../words/board.ts';
import { capital } from '../../words/capital.ts';
import { pieceWords } from '../../words/piece.ts';
import { ticketWords } from '../../words/ticket.ts';

/** The small note that lies with a piece. A line that is not known is left out; an unknown one says so. */
export type Ticket = {
  readonly number: string;
  /** The ruler, large. */
  readonly ruler: string | null;
  readonly lines: readonly string[];
  readonly measures: readonly string[];
  readonly references: readonly string[];
};

export function ticketOf(piece: PublicPiece): Ticket {
  const { sure, axis } = piece;
  const [weight, size] = [known(piece.weight), known(piece.size)];
  const [denomination, mint] = [nameOf(piece.denomination), nameOf(piece.mint)];
  const given = (lines: readonly (string | null)[]): readonly string[] =>
    lines.flatMap((line) => (line === null || line === '' ? [] : [line]));
  const { altered } = piece;
  return {
    number: piece.number,
    ruler:
      altered == null
        ? rulersOf(piece)
        : capital(altered.became ?? (altered.done.map(({ what }) => what).join(', ') || ticketWords.altered)),
    lines:
      altered != null
        ? given([
            altered.became === undefined ? null : capital(altered.done.map(({ what }) => what).join(', ')),
            capital(ticketWords.madeFrom(altered.host)),
            alteredWhen(piece),
          ])
        : given([
            denomination === null
              ? capital(piece.kind === 'coin' || piece.kind === 'unknown' ? '' : piece.kind.replaceAll('-', ' '))
              : ticketWords.unsure(capital(denomination), sure.denomination),
            mint === null ? null : ticketWords.unsure(mint, sure.mint),
            dateInWords(piece),
          ]),
    measures: given([
      weight === null ? null : formatWeight(weight),
      size === null ? null : formatSize(size),
      axis === null || axis === undefined || axis.hours === null ? null : ticketWords.axis(axis.hours),
    ]),
    references: piece.references.map((reference) =>
      ticketWords.unsure(formatReference(reference, reference.cited), sure.references),
    ),
  };
}

/** When a piece was altered; null where it is not, or nobody has said when. */
export function alteredWhen({ altered }: Pick<PublicPiece, 'altered'>): string | null {
  const [date] = altered?.done.flatMap((one) => (one.date === undefined ? [] : [one.date])) ?? [];
  return date === undefined ? null : formatDate(date);
}

/** A ticket in one line, for what lies under a picture that names the piece: `1280–81, 1.38 g`; in grams, so that neighbours compare. */
export function ticketLine(piece: PublicPiece): string {
  const when = alteredWhen(piece) ?? dateInWords(piece);
  const weight = weightInGrams(piece);
  return weight === null ? when : `${when}, ${weight}`;
}

/** The weight of a piece in grams, whatever it was written in: `1.38 g ± 0.01`. */
export function weightInGrams(piece: PublicPiece): string | null {
  const weight = known(piece.weight);
  if (weight === null) return null;
  return weight.unit === 'g' ? formatWeight(weight) : pieceWords.grams(weightIn(weight, 'g'));
}

/** The date of a piece for a visitor, with how sure it is: `probably 1280–88`; a blank in words. */
export function dateInWords({ date, sure }: PublicPiece): string {
  if (date === null || date === undefined) return boardWords.undated;
  if (isBlank(date)) return date === 'unknown' ? boardWords.dateUnknown : boardWords.dateNone;
  const said = formatDate(date);
  // What is marked as doubtful says so in its own words: `perhaps 1280`.
  return date.doubtful ? said : ticketWords.dated(said, sure.date);
}

/** In whose name it is, and for whom it was struck; where it names no ruler, who was responsible. */
function rulersOf({ rulers, struckFor, issuer, sure }: PublicPiece): string | null {
  if (rulers === null || rulers === 'none')
    return issuer === null || issuer === 'unknown' || issuer === 'none'
      ? null
      : ticketWords.unsure(issuer, sure.issuer);
  if (rulers === 'unknown') return capital(ticketWords.unknown);
  const ruler = ticketWords.unsure(rulers.map(({ name }) => name).join(' & '), sure.ruler);
  if (struckFor.length === 0) return ruler;
  const others = ticketWords.struckFor(struckFor.map(({ name }) => name).join(' & '));
  return `${ruler}, ${ticketWords.unsure(others, sure['struck-for'])}`;
}

function nameOf(named: Named | string | null): string | null {
  if (named === null || typeof named === 'string') return null;
  return named.name;
}
