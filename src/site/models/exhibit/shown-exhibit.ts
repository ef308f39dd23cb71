import type { Exhibit, Work } from '../../../catalogue/catalogue.ts';
import type { Abbreviation } from '../../../catalogue/exhibits/abbreviations.ts';
import { abbreviationsOf } from '../../../catalogue/exhibits/abbreviations.ts';
import { styleOf } from '../../../catalogue/exhibits/label-style.ts';
import { holderOf } from '../../../catalogue/exhibits/exhibit-texts.ts';
import { dateOf, labelText } from '../../../catalogue/exhibits/label-text.ts';
import type { Corner } from '../../../core/cases/boxes.ts';
import type { CaseKind, CaseSize, Holder } from '../../../core/cases/furniture.ts';
import type { LabelStyle } from '../../../core/cases/case-to-plan.ts';
import { formatReference } from '../../../core/references/reference.ts';
import type { PublicPiece } from '../../../publish/public-piece.ts';
import type { Cabinet } from '../../cabinet.ts';

export type ShownFace = 'obverse' | 'reverse';

/** A piece in an exhibit: the faces shown, and what its label says. */
export type ShownPiece = {
  /** Counted through the whole exhibit, from 1. */
  readonly key: number;
  readonly piece: PublicPiece;
  readonly faces: readonly ShownFace[];
  /** In full; a printed label that must be low leaves out facts from the end. */
  readonly label: string;
  /** The facts of a label made from the piece; null for one written by hand. */
  readonly facts: readonly string[] | null;
  /** What stands above the keeper's own words, fact by fact. */
  readonly identity: readonly string[];
  /** Where the keeper has fixed its first face. */
  readonly at?: Corner;
  /** What it lies in; null when it lies bare. */
  readonly holder: Holder | null;
};
export type ShownGroup = {
  readonly title: string;
  readonly text: string | null;
  /** Where the keeper has fixed its heading. */
  readonly at?: Corner;
  readonly pieces: readonly ShownPiece[];
};
export type ShownCase = {
  /** Counted from 1. */
  readonly number: number;
  readonly title: string | null;
  /** Inside measures in millimetres. */
  readonly inside: CaseSize;
  readonly kind: CaseKind;
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
  /** How labels are made, in millimetres and points. */
  readonly label: LabelStyle;
  /** What else the title card says, line by line. */
  readonly titleCard: readonly string[];
  /** The key to abbreviations: the books and signs that its texts and tickets shorten, and the keeper's own. */
  readonly abbreviations: readonly Abbreviation[];
  readonly bibliography: readonly Work[];
  readonly furtherReading: readonly Work[];
  readonly research: string | null;
  readonly acknowledgements: string | null;
};

export function shownExhibit(cabinet: Cabinet, exhibit: Exhibit): ShownExhibit {
  const { id, fields, story } = exhibit;
  const byId = new Map(cabinet.listed.map((piece) => [piece.id, piece]));
  const works = (ids: readonly string[]): readonly Work[] =>
    ids.map((work) => cabinet.lists.works[work]).filter((work) => work !== undefined);
  let key = 0;
  const cases = fields.cases.map(({ title, inside, kind, groups }, index): ShownCase => ({
    number: index + 1,
    title: title ?? null,
    inside,
    kind,
    groups: groups.map((group) => ({
      title: group.title,
      text: group.text ?? null,
      ...(group.at === undefined ? {} : { at: group.at }),
      pieces: group.pieces.flatMap((entry): readonly ShownPiece[] => {
        const piece = byId.get(entry.piece);
        if (piece === undefined) return [];
        key += 1;
        const { label, facts, identity } = labelText(piece, 'label' in entry ? entry.label : undefined, fields.label);
        const at = 'at' in entry ? entry.at : undefined;
        return [
          {
            key,
            piece,
            faces: facesOf(entry),
            label,
            facts,
            identity,
            holder: holderOf(entry, fields),
            ...(at === undefined ? {} : { at }),
          },
        ];
      }),
    })),
  }));
  return {
    id,
    title: fields.title,
    scope: fields.scope ?? null,
    keeper: fields['keeper-shown'] === 'yes' ? cabinet.lists.cabinet.keeper : null,
    statement: story.trim(),
    cases,
    label: styleOf(fields.label),
    titleCard: fields['title-card'],
    abbreviations: abbreviationsOf(
      [fields.scope ?? '', story, ...cases.flatMap(wordsOfCase)],
      Object.values(cabinet.lists.works).map((work) => work.fields),
      fields.abbreviations,
    ),
    bibliography: works(fields.bibliography),
    furtherReading: works(fields['further-reading']),
    research: fields.research === 'none' ? null : (fields.research ?? null),
    acknowledgements: fields.acknowledgements ?? null,
  };
}

/** Every text of a case and of its tickets, for what it shortens. */
function wordsOfCase({ groups }: ShownCase): readonly string[] {
  return groups.flatMap(({ title, text, pieces }) => [
    title,
    text ?? '',
    ...pieces.flatMap(({ piece, label }) => [
      label,
      dateOf(piece) ?? '',
      ...piece.references.map((one) => formatReference(one, one.cited)),
    ]),
  ]);
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
