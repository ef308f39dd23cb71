import type { Catalogue, Piece } from '../catalogue/catalogue.ts';
import type { PieceType, TypeNumber } from '../catalogue/types/types-of.ts';
import { seriesNamed } from '../catalogue/types/types-of.ts';
import { isBlank } from '../catalogue/schema/fields.ts';
import type { Blank } from '../catalogue/schema/fields.ts';
import type { PieceFields } from '../catalogue/schema/piece.ts';
import { yearsOf } from '../core/dating/interval.ts';
import { placePiece } from '../core/eras/place-in-scheme.ts';
import type { EraPlacing } from '../core/eras/place-in-scheme.ts';
import type { Grade } from '../core/grade/grade.ts';
import { fineMetal } from '../core/metal/fine-metal.ts';
import type { Reference } from '../core/references/reference.ts';

/** A name and the id of the page that tells about it. */
export type Named = { readonly id: string; readonly name: string };
export type Span = { readonly low: number; readonly high: number };
export type PublicPicture = {
  readonly face: string;
  /** What is seen, in the keeper's own words; null where the keeper left that to the site. */
  readonly alt: string | null;
  readonly by: string | null;
  readonly licence: string | null;
  /** Said of a drawing only; a picture is a photograph otherwise. */
  readonly what?: 'drawing';
};

/** A type with its label and the title of its series, and for sets every name it goes by and may go by. */
export type PublicType = PieceType & {
  readonly label: string;
  readonly seriesTitle: string;
  /** Whether its series has a chart of dies. */
  readonly hasDies?: true;
  /** Whether a piece of its series can be identified by its marks. */
  readonly hasKey?: true;
};

/**
 * All that a page, a file of data or the search may know of a piece. Blanks stay apart: `null` is *not recorded*,
 * `unknown` and `none` are what the keeper wrote.
 */
export type PublicPiece = {
  readonly id: string;
  readonly number: string;
  readonly title: string;
  readonly kind: PieceFields['kind'];
  /** False for an unlisted piece: it has a page and is in no list. */
  readonly listed: boolean;
  readonly status: PieceFields['status'];
  readonly rulers: readonly Named[] | Blank | null;
  readonly struckFor: readonly Named[];
  readonly issuer: string | null;
  readonly mint: (Named & { readonly area: string | null }) | Blank | null;
  readonly makers: readonly {
    readonly name: string;
    readonly role: string;
    readonly on?: 'obverse' | 'reverse' | undefined;
  }[];
  readonly denomination: Named | Blank | null;
  readonly date: PieceFields['date'] | null;
  readonly dated: string | null;
  readonly references: readonly (Reference & { readonly cited: string })[];
  /** The type its file names, as written there. */
  readonly type: string | null;
  /** Its types, the one its file names first; and what of its facts follows from that one. */
  readonly types: readonly PublicType[];
  readonly fromType: readonly string[];
  /** For sets: the types it is, broader ones included, those it may be, and their numbers. */
  readonly mayBe: Piece['mayBe'];
  /** Numbers of other books for the same type. */
  readonly elsewhere: readonly (TypeNumber & { readonly cited: string })[];
  readonly metal: string | null;
  readonly fineness: PieceFields['fineness'] | null;
  readonly weight: PieceFields['weight'] | null;
  readonly size: PieceFields['diameter'] | null;
  readonly thickness: PieceFields['thickness'] | null;
  readonly axis: PieceFields['axis'] | null;
  readonly made: string | null;
  readonly faces: NonNullable<PieceFields['faces']>;
  readonly shape: string | null;
  readonly treatments: readonly string[];
  readonly peculiarities: readonly string[];
  readonly grade: Grade | null;
  readonly gradedBy: NonNullable<PieceFields['graded-by']> | null;
  readonly problem: string | null;
  readonly obverse: PieceFields['obverse'] | null;
  readonly reverse: PieceFields['reverse'] | null;
  readonly edge: PieceFields['edge'] | null;
  readonly altered: PieceFields['altered'] | null;
  readonly sure: NonNullable<PieceFields['sure']>;
  readonly provenance: NonNullable<PieceFields['provenance']>;
  readonly found: PieceFields['found'] | null;
  readonly dies: PieceFields['dies'] | null;
  readonly tags: readonly string[];
  readonly formerly: readonly string[];
  /** The keeper's choice between equals in a set. */
  readonly prefer: number | null;
  /** Whether its page shows what its metal comes to; null where the cabinet decides. */
  readonly metalValue: 'yes' | 'no' | null;
  /** Markdown. */
  readonly story: string;
  readonly pictures: readonly PublicPicture[];
  /** Computed: the years it may have been made in; infinite where open or unknown. Null when undated. */
  readonly years: Span | null;
  /** Computed: where it falls under each era scheme, by the scheme's id. */
  readonly eras: Readonly<Record<string, EraPlacing>>;
  /** Computed: fine metal in grams, when weight and fineness are known. */
  readonly fineGrams: Span | null;
};

/**
 * The one way from the catalogue to anything published. Null for a piece that is not to be published at all.
 */
export function publicPiece(piece: Piece, catalogue: Catalogue): PublicPiece | null {
  const { fields } = piece;
  if (fields.publish === 'no') return null;
  const ruler = (id: string): Named => ({ id, name: catalogue.rulers[id]?.fields.name ?? id });
  const years = fields.date === undefined || isBlank(fields.date) ? null : yearsOf(fields.date);
  const { weight, fineness } = fields;
  const mint = fields.mint === undefined || isBlank(fields.mint) ? null : catalogue.mints[fields.mint];
  const where = {
    made: mint
      ? { mint: mint.id, area: mint.fields.area ?? null, sure: fields.sure?.mint ?? ('certain' as const) }
      : null,
    found: fields.found?.area ?? null,
    rulers: rulersForSure(fields),
  };
  const denomination =
    fields.denomination === undefined || isBlank(fields.denomination)
      ? null
      : catalogue.denominations[fields.denomination];
  return {
    id: piece.id,
    number: fields.number,
    title: fields.title,
    kind: fields.kind,
    listed: fields.publish === 'yes',
    status: fields.status,
    rulers: fields.ruler === undefined ? null : isBlank(fields.ruler) ? fields.ruler : fields.ruler.map(ruler),
    struckFor: (fields['struck-for'] ?? []).map(ruler),
    issuer: fields.issuer ?? null,
    mint: mint ? { id: mint.id, name: mint.fields.name, area: mint.fields.area ?? null } : blankOf(fields.mint),
    makers: fields.makers ?? [],
    denomination: denomination ? { id: denomination.id, name: denomination.fields.name } : blankOf(fields.denomination),
    date: fields.date ?? null,
    dated: fields.dated ?? null,
    references: piece.references.map((reference) => cited(reference, catalogue)),
    type: fields.type ?? null,
    types: piece.types.map((type) => publicType(type, catalogue)),
    fromType: piece.fromType,
    mayBe: piece.mayBe,
    elsewhere: piece.elsewhere.map((reference) => cited(reference, catalogue)),
    metal: fields.metal ?? null,
    fineness: fineness ?? null,
    weight: weight ?? null,
    size: fields.diameter ?? null,
    thickness: fields.thickness ?? null,
    axis: fields.axis ?? null,
    made: fields.made ?? null,
    faces: fields.faces ?? 'two',
    shape: fields.shape ?? null,
    treatments: fields.treatments ?? [],
    peculiarities: fields.peculiarities ?? [],
    grade: piece.grade,
    gradedBy: fields['graded-by'] ?? null,
    // A grade may say it by itself: `VF details`, `VF, cleaned`.
    problem: fields.problem ?? piece.grade?.problem ?? null,
    obverse: fields.obverse ?? null,
    reverse: fields.reverse ?? null,
    edge: fields.edge ?? null,
    altered: fields.altered ?? null,
    sure: fields.sure ?? {},
    provenance: fields.provenance ?? [],
    found: fields.found ?? null,
    dies: fields.dies ?? null,
    tags: fields.tags,
    formerly: fields.formerly ?? [],
    prefer: fields.prefer ?? null,
    metalValue: fields['metal-value'] ?? null,
    story: piece.story,
    pictures: piece.pictures.map(({ face }) => pictureOf(face, fields)),
    years,
    eras: Object.fromEntries(
      catalogue.eras.map(({ id, scheme }) => [id, placePiece(years, where, scheme, catalogue.cabinet.areas)]),
    ),
    fineGrams:
      weight === undefined || fineness === undefined || isBlank(weight) || isBlank(fineness)
        ? null
        : fineMetal(weight, fineness).grams,
  };
}

/** Whom it was struck for, where that is said and not in doubt. */
function rulersForSure({ ruler, 'struck-for': struckFor, sure = {} }: PieceFields): readonly string[] {
  const isSure = (fact: 'ruler' | 'struck-for'): boolean => (sure[fact] ?? 'certain') === 'certain';
  if (struckFor !== undefined) return isSure('struck-for') ? struckFor : [];
  return ruler === undefined || isBlank(ruler) || !isSure('ruler') ? [] : ruler;
}

/** A reference with the name its book is cited by. */
export function cited<T extends Reference>(
  reference: T,
  { works }: Pick<Catalogue, 'works'>,
): T & { readonly cited: string } {
  const work = works[reference.work]?.fields;
  return { ...reference, cited: work?.short ?? work?.author ?? work?.title ?? reference.work };
}

function publicType(type: PieceType, { types }: Pick<Catalogue, 'types'>): PublicType {
  const series = seriesNamed(types, type.series);
  return {
    ...type,
    label: series?.types.get(type.id)?.label ?? type.id,
    seriesTitle: series?.fields.title ?? type.series,
    ...(series !== undefined && (series.tables.dies?.rows.length ?? 0) > 0 ? { hasDies: true } : {}),
    ...((series?.characters.length ?? 0) > 0 ? { hasKey: true } : {}),
  };
}

/** Every piece that may be published, listed or not, in the order of the catalogue. */
export function publicPieces(catalogue: Catalogue): readonly PublicPiece[] {
  return catalogue.pieces.map((piece) => publicPiece(piece, catalogue)).filter((piece) => piece !== null);
}

function blankOf(value: unknown): Blank | null {
  return isBlank(value) ? value : null;
}

function pictureOf(face: string, fields: PieceFields): PublicPicture {
  const credit = face === 'obverse' || face === 'reverse' || face === 'edge' ? fields.photographs?.[face] : undefined;
  const said = { face, alt: credit?.alt ?? null, by: credit?.by ?? null, licence: credit?.licence ?? null };
  return credit?.what === 'drawing' ? { ...said, what: 'drawing' } : said;
}
