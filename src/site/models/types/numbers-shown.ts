import { numbersOf } from '../../../catalogue/types/types-of.ts';
import { formatReference } from '../../../core/references/reference.ts';
import { numberKey } from '../../../core/types/concordance.ts';
import { cited } from '../../../publish/public-piece.ts';
import type { Cabinet } from '../../cabinet.ts';
import { urls } from '../../urls.ts';
import { pieceWords } from '../../words/piece.ts';
import { typesWords } from '../../words/types.ts';
import type { Link } from '../sets/place-shown.ts';

export type NumberShown = {
  readonly text: string;
  readonly to: string;
  /** The book, by its key. */
  readonly work: string;
  /** How it stands to the type, and how surely; empty where it is certainly that of the same type. */
  readonly relation: string;
  /** Which of the sources says so; null where none is named. */
  readonly source: NumberSource | null;
};
/** A source is named once, by a small letter (`a` to `z`, then `aa`), and its words stand under the table. */
export type NumberSource = { readonly mark: string; readonly id: string; readonly says: string };
export type NumbersShown = {
  readonly rows: readonly { readonly type: Link | null; readonly numbers: readonly NumberShown[] }[];
  readonly sources: readonly NumberSource[];
};

/** The numbers of types in books, each with how it stands to its type and who says so. `type` is null where the page is about it. */
export function numbersShown(
  { lists }: Cabinet,
  series: string,
  types: readonly { readonly id: string; readonly type: Link | null }[],
): NumbersShown {
  const sources = new Map<string, NumberSource>();
  const sourceOf = (says: string): NumberSource => {
    const found = sources.get(says) ?? numberSource(sources.size, says);
    sources.set(says, found);
    return found;
  };
  const rows = types.map(({ id, type }) => ({
    type,
    numbers: numbersOf(lists.types, { series, id }).map((line) => {
      const isDisputed = lists.types.concordance.disputed.has(numberKey(line));
      const isPlain = line.relation === 'equal' && line.sure === 'certain' && !isDisputed;
      const relation = [pieceWords.doubt[line.sure], typesWords.relation[line.relation]].filter((word) => word !== '');
      return {
        text: formatReference(line.reference, cited(line.reference, lists).cited),
        to: urls.work(line.work),
        work: line.work,
        relation: isPlain ? '' : `${relation.join(' ')}${isDisputed ? `, ${pieceWords.disputed}` : ''}`,
        source: line.source === undefined ? null : sourceOf(line.source),
      };
    }),
  }));
  return { rows, sources: [...sources.values()] };
}

/** A source with the letter it has as the first, second … of those that are named. */
export function numberSource(at: number, says: string): NumberSource {
  const mark = markOf(at);
  return { mark, id: `source-${mark}`, says };
}

function markOf(at: number): string {
  const letter = String.fromCodePoint(('a'.codePointAt(0) ?? 0) + (at % 26));
  return at < 26 ? letter : `${markOf(Math.floor(at / 26) - 1)}${letter}`;
}
