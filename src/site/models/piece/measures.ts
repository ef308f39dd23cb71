import { known } from '../../../catalogue/schema/fields.ts';
import { formatLength } from '../../../core/measures/parse-length.ts';
import { formatSize } from '../../../core/measures/parse-size.ts';
import { formatWeight, weightIn } from '../../../core/measures/parse-weight.ts';
import type { Weight } from '../../../core/measures/parse-weight.ts';
import { TROY_OUNCE } from '../../../core/measures/units.ts';
import { formatFineness } from '../../../core/metal/parse-fineness.ts';
import { againstStandard } from '../../../core/metal/standards.ts';
import type { PublicPiece } from '../../../publish/public-piece.ts';
import type { Cabinet } from '../../cabinet.ts';
import { capital } from '../../words/capital.ts';
import { pieceWords } from '../../words/piece.ts';
import { siteWords } from '../../words/site.ts';
import { standardsOfPiece } from '../measures/weight-rows.ts';
import { afterType } from './after-type.ts';
import { isIdle, row } from './row.ts';
import type { Row } from './row.ts';
import { formatDate } from '../../../core/dating/format-date.ts';
import { figuresOf, fineMetal, metalValue, notAsStruck, toFigures } from '../../../core/metal/fine-metal.ts';
import type { MetalPrice } from '../../../core/metal/fine-metal.ts';

const { field, range, recordedAs } = pieceWords;

/** What a piece measures, what metal it holds, and how it stands to the standard it was struck to. */
export function measureRows(piece: PublicPiece, cabinet: Cabinet): readonly Row[] {
  return measured(piece, cabinet)
    .filter((each) => !isIdle(each, piece))
    .map((each) => afterType(each, piece));
}

function measured(piece: PublicPiece, cabinet: Cabinet): readonly Row[] {
  const { weight, size, thickness, fineness, axis } = piece;
  return [
    ...blankable(field.weight, weight, formatWeight, inOtherUnit),
    ...standardRows(piece, cabinet),
    ...blankable(field.size, size, formatSize),
    ...blankable(field.thickness, thickness, formatLength),
    ...row(
      field.axis,
      axis === null || axis === undefined ? null : axis.hours === null ? siteWords.none : `${axis.hours}h`,
    ),
    ...row(field.metal, capital(piece.metal ?? ''), { doubt: pieceWords.doubt[piece.sure.metal ?? 'certain'] }),
    ...blankable(field.fineness, fineness, formatFineness, (held) => {
      const notes = [
        held.text === formatFineness(held) ? '' : recordedAs(held.text),
        isOfStandard(piece, cabinet) ? pieceWords.standardFineness : '',
      ].filter((note) => note !== '');
      return notes.length === 0 ? undefined : notes.join('; ');
    }),
    ...fineRows(piece, cabinet),
    ...valueRows(piece, cabinet),
  ];
}

function blankable<T extends object>(
  name: string,
  held: T | string | null | undefined,
  say: (held: T) => string,
  note?: (held: T) => string | undefined,
): readonly Row[] {
  if (held === null || held === undefined) return [];
  if (typeof held === 'string') return row(name, held === 'none' ? siteWords.none : siteWords.unknown);
  return row(name, say(held), { note: note?.(held) });
}

const IN_GRAMS: ReadonlySet<string> = new Set(['g', 'mg', 'kg']);
/** A weight in grains is told in grams as well, and one in grams in grains; every other unit in grams. */
function inOtherUnit(weight: Weight): string {
  return IN_GRAMS.has(weight.unit)
    ? pieceWords.grains(weightIn(weight, 'gr'))
    : pieceWords.grams(weightIn(weight, 'g'));
}

/** The books round the third of a third: two figures nearer than this are one. */
const ROUNDED = 0.0005;

/** Whether a fineness is, to the figure, that of the standard in force: an assay does not come out so. */
export function isOfStandard(piece: PublicPiece, cabinet: Pick<Cabinet, 'lists'>): boolean {
  const { years } = piece;
  const fineness = known(piece.fineness);
  if (fineness === null || years === null) return false;
  return standardsOfPiece(piece, cabinet).some(
    (standard) =>
      standard.fineness !== null &&
      standard.years.low <= years.high &&
      years.low <= standard.years.high &&
      Math.abs(standard.fineness.low - fineness.low) < ROUNDED &&
      Math.abs(standard.fineness.high - fineness.high) < ROUNDED &&
      fineness.high - fineness.low < ROUNDED,
  );
}

/** The fine metal, to the figures of what it is worked out from; not from a fineness that only the law gives, unless it is asked for. */
function fineRows(piece: PublicPiece, cabinet: Cabinet): readonly Row[] {
  const { fineGrams } = piece;
  const [weight, fineness] = [known(piece.weight), known(piece.fineness)];
  if (fineGrams === null || weight === null || fineness === null) return [];
  if (isOfStandard(piece, cabinet) && !isAskedFor(piece, cabinet)) return [];
  const unsure = [weight.plusMinus === null ? '' : 'weight', fineness.low === fineness.high ? '' : 'fineness'].filter(
    (part) => part !== '',
  );
  const figures = figuresOf(weight.text, fineness.text);
  const ounces = { low: fineGrams.low / TROY_OUNCE, high: fineGrams.high / TROY_OUNCE };
  return row(field.fine, `${range(...toFigures(fineGrams, figures))} g`, {
    note: pieceWords.fineNote(range(...toFigures(ounces, figures)), unsure),
  });
}

function standardRows(piece: PublicPiece, cabinet: Cabinet): readonly Row[] {
  const { years } = piece;
  const weight = known(piece.weight);
  if (weight === null || years === null || piece.altered != null) return [];
  const against = againstStandard(weight, standardsOfPiece(piece, cabinet), years, !notAsStruck(piece).lost);
  if (!against.ok) return [];
  const { percent, rows } = against.value;
  const notes = rows.flatMap(({ standard: { grams, source } }) =>
    grams === null ? [] : [pieceWords.standardNote(range(grams.low.toFixed(2), grams.high.toFixed(2)), source)],
  );
  return row(field.standard, pieceWords.percent(inPercent(percent.low), inPercent(percent.high)), {
    note: [...new Set(notes)].join('; '),
  });
}

/** A whole per cent; where that would call a piece exactly right that is not, one decimal. */
function inPercent(value: number): string {
  const whole = Math.round(value);
  return whole === 100 && Math.abs(value - 100) >= 0.05 ? value.toFixed(1) : String(whole);
}

/** What was made before this year is told to be more than its metal. */
const OLD = 1900;

/** What the fine metal would come to at the keeper's own price; nothing where that would mislead or no price is given. */
export function valueRows(piece: PublicPiece, cabinet: Cabinet): readonly Row[] {
  const { metal } = piece;
  if (!isAskedFor(piece, cabinet)) return [];
  const [weight, fineness] = [known(piece.weight), known(piece.fineness)];
  if (weight === null || fineness === null) return [];
  const { plated, mounted } = notAsStruck(piece);
  const value = metalValue({
    fine: fineMetal(weight, fineness),
    price: priceOf(metal, cabinet),
    plated,
    mounted,
    altered: piece.altered !== null && piece.altered !== undefined,
  });
  if (!value.ok) return [];
  const { low, high, currency, caution } = value.value;
  // A sum has no more figures than the metal it is of: two of `0.90/0.94` come to £20, not to £20.10.
  const figures = figuresOf(weight.text, fineness.text);
  const said = pieceWords.range(pieceWords.money(low, currency, figures), pieceWords.money(high, currency, figures));
  const isOld = (piece.found ?? null) !== null || (piece.years !== null && piece.years.high < OLD);
  return row(pieceWords.field.value, said, { note: isOld ? `${caution} ${pieceWords.oldMetal}` : caution });
}

/** A penny is not shown as so much scrap unless the keeper wants that. */
function isAskedFor({ kind, tags, metalValue }: PublicPiece, { lists }: Cabinet): boolean {
  if (metalValue !== null) return metalValue === 'yes';
  const of = lists.cabinet['metal-values'];
  return of === 'all' || (of === 'bullion' && (kind === 'ingot' || kind === 'hacksilver' || tags.includes('bullion')));
}

/** The keeper's price of a metal, the latest where there are several. */
function priceOf(metal: string | null, { lists }: Cabinet): MetalPrice | null {
  const found = lists.cabinet['metal-prices'].findLast((price) => price.metal === metal);
  if (found === undefined) return null;
  const { minor, currency } = found.price;
  return { minorPerTroyOunce: minor, currency, date: formatDate(found.date), source: found.source };
}
