import type { Exhibit, Work } from '../../../catalogue/catalogue.ts';
import type { PublicPiece } from '../../../publish/public-piece.ts';
import type { Cabinet } from '../../cabinet.ts';
import { labelOf } from './label-of.ts';

export type ShownFace = 'obverse' | 'reverse';

/** A piece in an exhibit: the faces shown, and what its label says. */
export type ShownPiece = {
  /** Counted through the whole exhibit, from 1. */
  readonly key: number;
  readonly piece: PublicPiece;
  readonly faces: readonly ShownFace[];
  readonly label: string;
};
export type ShownGroup = {
  readonly title: string;
  readonly text: string | null;
  readonly pieces: readonly ShownPiece[];
};
export type ShownCase = {
  /** Counted from 1. */
  readonly number: number;
  readonly title: string | null;
  /** Inside measures in millimetres. */
  readonly inside: { readonly width: number; readonly height: number; readonly depth: number | null };
  readonly groups: readonly ShownGroup[];
};

/** An exhibit with its pieces and books in place of their ids. */
export type ShownExhibit = {
  readonly id: string;
  readonly title: string;
  readonly scope: string | null;
  /** Null when the exhibit is to be shown without a name. */
  readonly keeper: string | null;
  /** Markdown. */
  readonly statement: string;
  readonly cases: readonly ShownCase[];
  /** The label's width in millimetres and its type in points. */
  readonly label: { readonly width: number; readonly points: number };
  readonly bibliography: readonly Work[];
  readonly furtherReading: readonly Work[];
  readonly acknowledgements: string | null;
};

/** Taken where the exhibit does not say: a label that a case of the common club size holds eight of in a row. */
const LABEL = { width: 90, points: 18 };

export function shownExhibit(cabinet: Cabinet, exhibit: Exhibit): ShownExhibit {
  const { id, fields, story } = exhibit;
  const byId = new Map(cabinet.listed.map((piece) => [piece.id, piece]));
  const works = (ids: readonly string[]): readonly Work[] =>
    ids.map((work) => cabinet.lists.works[work]).filter((work) => work !== undefined);
  let key = 0;
  return {
    id,
    title: fields.title,
    scope: fields.scope ?? null,
    keeper: fields['keeper-shown'] === 'yes' ? cabinet.lists.cabinet.keeper : null,
    statement: story.trim(),
    cases: fields.cases.map(({ title, inside, groups }, index) => ({
      number: index + 1,
      title: title ?? null,
      inside: { width: inside.width, height: inside.height, depth: inside.depth ?? null },
      groups: groups.map((group) => ({
        title: group.title,
        text: group.text ?? null,
        pieces: group.pieces.flatMap((entry): readonly ShownPiece[] => {
          const piece = byId.get(entry.piece);
          if (piece === undefined) return [];
          key += 1;
          return [
            { key, piece, faces: facesOf(entry), label: labelOf(piece, 'label' in entry ? entry.label : undefined) },
          ];
        }),
      })),
    })),
    label: {
      width: fields.label.width === undefined ? LABEL.width : fields.label.width.high,
      points: fields.label.text ?? LABEL.points,
    },
    bibliography: works(fields.bibliography),
    furtherReading: works(fields['further-reading']),
    acknowledgements: fields.acknowledgements ?? null,
  };
}

/** Every piece of an exhibit, in the order of its cases. */
export function piecesShown({ cases }: ShownExhibit): readonly ShownPiece[] {
  return cases.flatMap(({ groups }) => groups.flatMap(({ pieces }) => pieces));
}

type Entry = Exhibit['fields']['cases'][number]['groups'][number]['pieces'][number];

function facesOf(entry: Entry): readonly ShownFace[] {
  const side = 'side' in entry ? entry.side : undefined;
  return side === 'both' ? ['obverse', 'reverse'] : [side ?? 'obverse'];
}
