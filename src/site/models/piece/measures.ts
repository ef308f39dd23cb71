import { isBlank } from '../../../catalogue/schema/fields.ts';
import { yearsOf } from '../../../core/dating/interval.ts';
import { formatLength } from '../../../core/measures/parse-length.ts';
import { formatSize } from '../../../core/measures/parse-size.ts';
import { formatWeight } from '../../../core/measures/parse-weight.ts';
import { GRAIN, TROY_OUNCE } from '../../../core/measures/units.ts';
import { formatFineness } from '../../../core/metal/parse-fineness.ts';
import { againstStandard, standardOf } from '../../../core/metal/standards.ts';
import type { PublicPiece } from '../../../publish/public-piece.ts';
import type { Cabinet } from '../../cabinet.ts';
import { pieceWords } from '../../words/piece.ts';
import { siteWords } from '../../words/site.ts';
import type { Row } from './row.ts';
import { row } from './row.ts';

const { field } = pieceWords;

/** What a piece measures, what metal it holds, and how it stands to the standard it was struck to. */
export function measureRows(piece: PublicPiece, cabinet: Cabinet): readonly Row[] {
  const { weight, size, thickness, fineness, axis } = piece;
  return [
    ...blankable(field.weight, weight, (held) => formatWeight(held), (held) => `${(held.grams / GRAIN).toFixed(1)} grains`),
    ...standardRow(piece, cabinet),
    ...blankable(field.size, size, formatSize),
    ...blankable(field.thickness, thickness, formatLength),
    ...(axis === null || axis === undefined ? [] : row(field.axis, axis.hours === null ? siteWords.none : `${axis.hours}h`)),
    ...row(field.metal, piece.metal, { doubt: pieceWords.doubt[piece.sure.metal ?? 'certain'] }),
    ...blankable(field.fineness, fineness, formatFineness, (held) => (held.text === formatFineness(held) ? undefined : `recorded as ${held.text}`)),
    ...fineRow(piece),
  ];
}

function blankable<T extends object>(name: string, held: T | string | null | undefined, say: (held: T) => string, note?: (held: T) => string | undefined): readonly Row[] {
  if (held === null || held === undefined) return [];
  if (typeof held === 'string') return row(name, held === 'none' ? siteWords.none : siteWords.unknown);
  return row(name, say(held), { note: note?.(held) });
}

function fineRow({ fineGrams }: PublicPiece): readonly Row[] {
  if (fineGrams === null) return [];
  const { low, high } = fineGrams;
  const say = (value: number, places: number): string => value.toFixed(places);
  const grams = say(low, 2) === say(high, 2) ? say(low, 2) : `${say(low, 2)}–${say(high, 2)}`;
  const [lowest, highest] = [say(low / TROY_OUNCE, 4), say(high / TROY_OUNCE, 4)];
  return row(field.fine, `${grams} g`, { note: `${lowest === highest ? lowest : `${lowest}–${highest}`} troy ounce; weight times fineness, with the doubt of both` });
}

function standardRow(piece: PublicPiece, cabinet: Cabinet): readonly Row[] {
  const { weight, denomination, years } = piece;
  if (weight === null || weight === undefined || isBlank(weight) || denomination === null || typeof denomination === 'string' || years === null) return [];
  const standards = (cabinet.lists.denominations[denomination.id]?.fields.standards ?? []).map((stated) =>
    standardOf(stated, { low: yearsOf(stated.from).low, high: yearsOf(stated.to).high }),
  );
  const against = againstStandard(weight, standards, years);
  if (!against.ok) return [];
  const { low, high } = against.value.percent;
  const percent = Math.round(low) === Math.round(high) ? `${Math.round(low)} %` : `${Math.round(low)}–${Math.round(high)} %`;
  const first = against.value.rows[0]?.standard;
  const grams = first?.grams;
  const said = grams === null || grams === undefined ? undefined : grams.low === grams.high ? grams.low.toFixed(2) : `${grams.low.toFixed(2)}–${grams.high.toFixed(2)}`;
  return row(field.standard, `${percent} of it`, { note: said === undefined ? undefined : `standard of ${said} g: ${first?.source ?? ''}` });
}
