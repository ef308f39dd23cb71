import { tidy } from '../measures/amount.ts';
import { parseLength } from '../measures/parse-length.ts';
import { INCH } from '../measures/units.ts';
import type { Outcome } from '../outcome.ts';
import { good, refuse } from '../outcome.ts';
import type { Size } from './boxes.ts';

/** What a case is: one that lies, one whose ground slopes towards the visitor, or a frame on a wall. */
export const CASE_KINDS = ['flat', 'sloped', 'wall-frame'] as const;
export type CaseKind = (typeof CASE_KINDS)[number];

export type CaseUnit = 'mm' | 'cm' | 'in';
/** A case inside its frame, in millimetres, and as the keeper measured it: `32¾ × 20¾ × 2¾ in`. */
export type CaseSize = Size & { readonly depth: number | null; readonly unit: CaseUnit; readonly text: string };

const CROSS = / ?(?:[x×*]| by ) ?/iu;
const UNIT = / ?(mm|cm|in|ins|inch|inches|["″”])$/iu;
const CASE_ASK =
  'Write width x height x depth inside, like 300 x 200 x 40 mm, 83 x 52 x 7 cm or 32 3/4 x 20 3/4 x 2 3/4 in.';

/** Reads `300 x 200 x 40 mm`, `83.2 x 52.7 cm`, `32 3/4 x 20 3/4 x 2 3/4 in`; the unit may stand once, at the end. */
export function parseCaseSize(text: string): Outcome<CaseSize> {
  const read = sidesOf(tidy(text));
  if (read === null || read.sides.length < 2 || read.sides.length > 3)
    return refuse(`A case is width x height x depth inside; this says "${text}". ${CASE_ASK}`);
  const [width = 0, height = 0, depth = null] = read.sides;
  return good({ width, height, depth, unit: read.unit, text: `${read.said.join(' × ')} ${read.unit}` });
}

/** A width and a height in the unit a case is measured in, rounded up so that it is never told too small. */
export function inCaseUnit({ width, height }: Size, unit: CaseUnit = 'mm'): string {
  // Whole steps of the unit: a quarter of an inch, half a centimetre, a millimetre.
  const [per, steps] = unit === 'in' ? [INCH, 4] : unit === 'cm' ? [10, 2] : [1, 1];
  const said = (length: number): string => {
    const number = String(Math.ceil((length / per) * steps - 1e-6) / steps);
    return unit === 'in' ? withFractions(number) : number;
  };
  return `${said(width)} × ${said(height)} ${unit}`;
}

const QUARTERS: Readonly<Record<string, string>> = { '.25': '¼', '.5': '½', '.75': '¾' };

function withFractions(number: string): string {
  return number.replace(/\.(?:25|5|75)$/u, (part) => QUARTERS[part] ?? part);
}

const GLYPHS: Readonly<Record<string, string>> = { '1/2': '½', '1/4': '¼', '3/4': '¾', '1/8': '⅛', '3/8': '⅜', '5/8': '⅝', '7/8': '⅞' }; // prettier-ignore

type Sides = { readonly sides: readonly number[]; readonly said: readonly string[]; readonly unit: CaseUnit };

/** Lengths with crosses between, in millimetres and as they were written; null when they are none. */
function sidesOf(text: string): Sides | null {
  const word = UNIT.exec(text)?.[1];
  if (word === undefined) return null;
  const unit: CaseUnit = /^mm$/iu.test(word) ? 'mm' : /^cm$/iu.test(word) ? 'cm' : 'in';
  const parts = text.split(CROSS).map((part) => part.replace(UNIT, '').trim());
  const lengths = text
    .split(CROSS)
    .map((part, at) => parseLength(UNIT.test(part) ? part : `${parts[at] ?? ''} ${word}`));
  const sides = lengths.flatMap((length) =>
    length.ok && length.value.low === length.value.high ? [length.value.low] : [],
  );
  const units = new Set(text.split(CROSS).map((part) => UNIT.exec(part)?.[1]?.toLowerCase() ?? word.toLowerCase()));
  if (sides.length !== parts.length || units.size > 1) return null;
  const said = parts.map((part) => part.replace(/ ?(\d\/\d)$/u, (whole, vulgar: string) => GLYPHS[vulgar] ?? whole));
  return { sides, said, unit };
}

/** What a piece lies in or on when it is shown. */
type HolderRow = {
  readonly name: string;
  /** The usual outer size in millimetres; null where each maker has his own and it must be measured. */
  readonly usual: number | null;
  readonly isRound: boolean;
  /** Whether the piece is inside it, and must be smaller. */
  readonly encloses: boolean;
  readonly like: string;
};

/** Outer sizes: a 2 × 2 is two inches square by its name (common practice); the rest the keeper measures. */
export const HOLDERS = {
  '2x2': { name: '2 × 2 holder', usual: 2 * INCH, isRound: false, encloses: true, like: '2x2' },
  'capsule': { name: 'capsule', usual: null, isRound: true, encloses: true, like: 'capsule 40 mm' },
  'slab': { name: 'slab', usual: null, isRound: false, encloses: true, like: 'slab 60 x 86 x 7 mm' },
  'ticket': { name: 'ticket', usual: null, isRound: true, encloses: false, like: 'ticket 38 mm' },
  'pocket': { name: 'pocket of an album page', usual: null, isRound: false, encloses: true, like: 'pocket 50 x 50 mm' },
} as const satisfies Readonly<Record<string, HolderRow>>; // prettier-ignore
export type HolderKind = keyof typeof HOLDERS;

/** A holder by its outer size in millimetres; `depth` is null where its thickness is not given. */
export type Holder = Size & { readonly kind: HolderKind; readonly isRound: boolean; readonly depth: number | null };

const HOLDER_ASK = `Write one of ${Object.values(HOLDERS).map(({ like }) => like).join(', ')}, or none.`; // prettier-ignore
const TWO_BY_TWO = /^2 ?[x×] ?2(?: ?(?:in|inch|inches|["″]))?(?: holder)?$/iu;

/** Reads `2x2`, `capsule 40 mm`, `slab 60 x 86 x 7 mm` (width, height, thickness outside), `ticket 38 mm`; null for `none`. */
export function parseHolder(text: string): Outcome<Holder | null> {
  const words = tidy(text).toLowerCase();
  if (words === 'none') return good(null);
  if (TWO_BY_TWO.test(words)) return good(square('2x2', 2 * INCH));
  const [, name = '', size = ''] = /^([a-z]+) ?(.*)$/u.exec(words) ?? [];
  if (!isSized(name)) return refuse(`"${text}" is no holder known here. ${HOLDER_ASK}`);
  const row: HolderRow = HOLDERS[name];
  const sides = sidesOf(size)?.sides ?? [];
  const [width, second, third] = sides;
  const isPlain = (row.isRound && sides.length === 1) || (!row.isRound && sides.length >= 2 && sides.length <= 3);
  if (width === undefined || !(isPlain || (row.isRound && sides.length === 2)))
    return refuse(`A ${row.name} needs its outer size, measured on yours. Write ${row.like}.`);
  // A ticket may be square; of a round capsule the second measure is its thickness.
  const isRound = row.isRound && !(name === 'ticket' && sides.length === 2);
  const height = isRound ? width : (second ?? width);
  return good({ kind: name, width, height, isRound, depth: (isRound ? second : third) ?? null });
}

function isSized(name: string): name is Exclude<HolderKind, '2x2'> {
  return name !== '2x2' && Object.hasOwn(HOLDERS, name);
}

function square(kind: HolderKind, side: number): Holder {
  return { kind, width: side, height: side, isRound: false, depth: null };
}

/** To be read back. */
export function formatHolder(holder: Holder | null): string {
  if (holder === null) return 'none';
  const { kind, width, height, depth, isRound } = holder;
  if (kind === '2x2') return kind;
  const sides = [width, ...(isRound ? [] : [height]), ...(depth === null ? [] : [depth])];
  return `${kind} ${sides.map((side) => String(Number(side.toFixed(3)))).join(' x ')} mm`;
}

/** The room a piece takes with what it lies in: its holder's, unless it is larger than that. */
export function roomInHolder(piece: Size, holder: Holder | null): Size {
  if (holder === null) return piece;
  return { width: Math.max(piece.width, holder.width), height: Math.max(piece.height, holder.height) };
}

/** How deep a piece needs its case; null when neither its own thickness nor that of its holder tells. */
export function depthNeeded(thickness: number | null, holder: Holder | null): number | null {
  if (holder === null) return thickness;
  if (holder.depth !== null) return holder.depth;
  return HOLDERS[holder.kind].encloses ? null : thickness;
}
