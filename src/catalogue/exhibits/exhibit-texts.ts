import type { CaseToSet, PieceToSet } from '../../core/cases/case-to-plan.ts';
import type { Size } from '../../core/cases/boxes.ts';
import { depthNeeded, roomInHolder } from '../../core/cases/furniture.ts';
import type { Holder } from '../../core/cases/furniture.ts';
import { sizeSpan } from '../../core/measures/parse-size.ts';
import type { Catalogue, Exhibit, Piece } from '../catalogue.ts';
import type { ExhibitFields } from '../schema/exhibit.ts';
import { known, isBlank } from '../schema/fields.ts';
import type { Blank } from '../schema/fields.ts';
import { labelText } from './label-text.ts';
import type { LabelledPiece } from './label-text.ts';

/** A text of an exhibit and the way to the line it stands on; of a label, its piece. */
type ExhibitText = {
  readonly is: 'title' | 'scope' | 'heading' | 'text' | 'label' | 'research' | 'statement';
  readonly words: string;
  readonly path: readonly (string | number)[];
  readonly piece: Piece | null;
  /** Whether the keeper wrote it, or it was made from the piece. */
  readonly isOwn: boolean;
};

/** A piece shown, and the way to its line. */
type ExhibitPiece = { readonly piece: Piece; readonly path: readonly (string | number)[] };

/** An exhibit as it will be shown: its texts, its pieces, and its cases as they are to be laid. */
export type ReadExhibit = {
  readonly exhibit: Exhibit;
  readonly texts: readonly ExhibitText[];
  readonly pieces: readonly ExhibitPiece[];
  readonly cases: readonly CaseToSet[];
};

/** How large a piece is drawn whose size is not recorded. */
const UNMEASURED = { width: 20, height: 20 };

/** Reads an exhibit with the pieces that may be shown: published, and in the catalogue. */
export function readExhibit(exhibit: Exhibit, catalogue: Catalogue): ReadExhibit {
  const { fields, story } = exhibit;
  const byId = new Map(catalogue.pieces.filter((one) => one.fields.publish === 'yes').map((one) => [one.id, one]));
  const texts: ExhibitText[] = [];
  const pieces: ExhibitPiece[] = [];
  const tell = (
    is: ExhibitText['is'],
    words: string | undefined,
    path: ExhibitText['path'],
    piece: Piece | null = null,
    isOwn = true,
  ): void => {
    if (words !== undefined && words.trim() !== '') texts.push({ is, words, path, piece, isOwn });
  };
  tell('title', fields.title, ['title']);
  tell('scope', fields.scope, ['scope']);
  const cases = fields.cases.map(({ title, inside, kind, groups }, c): CaseToSet => {
    tell('heading', title, ['cases', c, 'title']);
    return {
      inside,
      kind,
      groups: groups.map((group, g) => {
        const path = ['cases', c, 'groups', g] as const;
        tell('heading', group.title, [...path, 'title']);
        tell('text', group.text, [...path, 'text']);
        return {
          title: group.title,
          text: group.text ?? null,
          ...(group.at === undefined ? {} : { at: group.at }),
          pieces: group.pieces.flatMap((entry, p) => {
            const piece = byId.get(entry.piece);
            if (piece === undefined) return [];
            const own = 'label' in entry ? entry.label : undefined;
            const at = 'at' in entry ? entry.at : undefined;
            const { label, facts, identity } = labelText(labelledPiece(piece, catalogue), own, fields.label);
            const spot = [...path, 'pieces', p];
            tell('label', label, own === undefined ? spot : [...spot, 'label'], piece, own !== undefined);
            pieces.push({ piece, path: spot });
            return [
              {
                key: pieces.length,
                piece: piece.id,
                title: piece.fields.title,
                ...roomOf(sizeOf(piece), facesIn(entry), thicknessOf(piece), holderOf(entry, fields)),
                label,
                facts,
                identity,
                ...(at === undefined ? {} : { at }),
              },
            ];
          }),
        };
      }),
    };
  });
  tell('research', fields.research, ['research']);
  tell('statement', story, []);
  return { exhibit, texts, pieces, cases };
}

function sizeOf({ fields }: Piece): Size {
  const size = known(fields.diameter);
  return size === null ? UNMEASURED : sizeSpan(size);
}

function thicknessOf({ fields }: Piece): number | null {
  return known(fields.thickness)?.high ?? null;
}

function facesIn(entry: Entry): number {
  return 'side' in entry && entry.side === 'both' ? 2 : 1;
}

type Entry = ExhibitFields['cases'][number]['groups'][number]['pieces'][number];

/** What a piece lies in: what its own line says, or else the exhibit; null when it lies bare. */
export function holderOf(entry: Entry, { holder = null }: Pick<ExhibitFields, 'holder'>): Holder | null {
  return 'holder' in entry && entry.holder !== undefined ? entry.holder : holder;
}

/** The room a piece takes in its case with what it lies in, for as many faces as are shown. */
export function roomOf(
  piece: Size,
  faces: number,
  thickness: number | null,
  holder: Holder | null,
): Pick<PieceToSet, 'faces' | 'thickness' | 'holder'> {
  return {
    faces: Array.from({ length: faces }, () => roomInHolder(piece, holder)),
    thickness: depthNeeded(thickness, holder),
    ...(holder === null ? {} : { holder: { is: holder, piece } }),
  };
}

/** A piece of the catalogue as a label may tell of it, for the checks; pages have it from `publicPiece`. */
function labelledPiece({ fields, references }: Piece, lists: Catalogue): LabelledPiece {
  const { ruler, mint, denomination } = fields;
  return {
    title: fields.title,
    number: fields.number,
    kind: fields.kind,
    rulers: named(ruler, (ids) => [ids].flat().map((id) => ({ name: lists.rulers[id]?.fields.name ?? id }))),
    issuer: fields.issuer ?? null,
    mint: named(mint, (id) => ({ name: lists.mints[id]?.fields.name ?? id })),
    makers: fields.makers ?? [],
    denomination: named(denomination, (id) => ({ name: lists.denominations[id]?.fields.name ?? id })),
    date: fields.date,
    dated: fields.dated ?? null,
    metal: fields.metal ?? null,
    weight: fields.weight,
    size: fields.diameter,
    axis: fields.axis,
    sure: fields.sure ?? {},
    references: references.map((reference) => {
      const work = lists.works[reference.work]?.fields;
      return { ...reference, cited: work?.short ?? work?.author ?? work?.title ?? reference.work };
    }),
  };
}

function named<T, N>(value: T | Blank | undefined, of: (held: Exclude<T, Blank>) => N): N | Blank | null {
  if (value === undefined) return null;
  return isBlank(value) ? value : of(value as Exclude<T, Blank>);
}
