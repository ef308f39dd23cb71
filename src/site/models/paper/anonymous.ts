import type { Cabinet } from '../../cabinet.ts';
import { paperWords } from '../../words/paper.ts';
import type { ShownExhibit, ShownPiece } from '../exhibit/shown-exhibit.ts';
import { piecesShown } from '../exhibit/shown-exhibit.ts';
import { clearAll, withholding } from './without-name.ts';

/** An exhibit with the keeper's name nowhere, and in sentences, none of which says the name, what was done about it. */
export type Anonymous = {
  readonly shown: ShownExhibit;
  readonly clear: (text: string) => string;
  readonly reports: readonly string[];
};

export function withoutName(exhibit: ShownExhibit, cabinet: Cabinet): Anonymous {
  const { keeper } = cabinet.lists.cabinet;
  const { clear, kept } = withholding(keeper, ordinaryWords(exhibit, cabinet));
  const places = new Set<string>();
  const shown = clearAll({ ...exhibit, keeper: null }, clear, (path) => {
    const place = placeIn(exhibit, path);
    if (place !== null) places.add(place);
  });
  const initials = keeper
    .split(/\s+/)
    .map((part) => Array.from(part)[0] ?? '')
    .join('');
  const isNumbered = initials.length > 1 && piecesShown(exhibit).some(({ piece }) => piece.number.startsWith(initials));
  return {
    shown,
    clear,
    reports: [
      places.size === 0 ? paperWords.nothingWithheld : paperWords.withheld([...places]),
      ...(kept.length === 0 ? [] : [paperWords.ordinaryKept(kept.length)]),
      ...(isNumbered ? [paperWords.initialsInNumbers] : []),
    ],
  };
}

/** Words that mean something else in this exhibit: those of the lists, of its kinds and metals, and all written small. */
function ordinaryWords(exhibit: ShownExhibit, { lists, pieces }: Cabinet): ReadonlySet<string> {
  const named = [
    ...Object.values(lists.rulers).map(({ fields }) => fields.name),
    ...Object.values(lists.mints).map(({ fields }) => fields.name),
    ...Object.values(lists.denominations).map(({ fields }) => fields.name),
  ];
  const plain = pieces.flatMap(({ kind, metal, made, shape, faces, status }) => [
    kind,
    metal ?? '',
    made ?? '',
    shape ?? '',
    faces,
    status,
  ]);
  const written = [exhibit.statement, exhibit.scope ?? '', ...exhibit.cases.flatMap(({ groups }) =>
    groups.flatMap(({ text, pieces: shown }) => [text ?? '', ...shown.map(({ label }) => label)]),
  )]; // prettier-ignore
  const small = written.join(' ').match(/(?<![\p{L}@.-])\p{Ll}[\p{Ll}\p{M}]*(?![\p{L}@.-]\p{L})/gu) ?? [];
  const words = [...named, ...plain].flatMap((name) => name.toLowerCase().split(/[^\p{L}\p{M}]+/u));
  return new Set([...words, ...small].filter((word) => word !== ''));
}

/** Facts of a piece that stand on paper. */
const PRINTED = /^(?:title|number|rulers|denomination|mint|references|issuer)\b/;

/** Where a text stands, in a keeper's words; null for what is not printed. */
function placeIn({ cases }: ShownExhibit, path: string): string | null {
  const inCase = /^cases\.(\d+)\.(?:groups\.(\d+)\.)?(?:pieces\.(\d+)\.)?(.*)$/.exec(path);
  if (inCase === null) return paperWords.placeOf[path.replace(/\..*/, '')] ?? null;
  const [, one = '', group, at, field = ''] = inCase;
  const shownGroup = group === undefined ? undefined : cases[Number(one)]?.groups[Number(group)];
  if (shownGroup === undefined) return paperWords.inCaseTitle(Number(one) + 1);
  const shown: ShownPiece | undefined = at === undefined ? undefined : shownGroup.pieces[Number(at)];
  if (shown === undefined) return paperWords.inGroup(Number(one) + 1, Number(group) + 1);
  if (!field.startsWith('piece.')) return paperWords.inLabel(shown.key);
  return PRINTED.test(field.slice('piece.'.length)) ? paperWords.inPiece(shown.key) : null;
}
