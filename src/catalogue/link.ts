import { parseGrade } from '../core/grade/parse-grade.ts';
import type { Grade } from '../core/grade/grade.ts';
import { isScaleId } from '../core/grade/scales.ts';
import { parseReference } from '../core/references/parse-reference.ts';
import type { Reference } from '../core/references/parse-reference.ts';
import type { Outcome } from '../core/outcome.ts';
import { refuse } from '../core/outcome.ts';
import type { ById, Catalogue, Piece } from './catalogue.ts';
import { eraSchemeOf } from './era-scheme.ts';
import type { Filed, FiledPiece, Records } from './records.ts';
import type { PieceFields } from './schema/piece.ts';

const NUMBERS = new Intl.Collator('en', { numeric: true });

/** Joins the records of a cabinet to one another. The records have been checked: see `checkRecords`. */
export function linkRecords(records: Records): Catalogue {
  const works = records.works.map(({ id, fields }) => ({ id, names: fields.short === undefined ? [] : [fields.short] }));
  return {
    cabinet: records.cabinet?.fields ?? {
      title: 'A cabinet', keeper: '', language: 'en', demo: 'no', units: 'metric', currency: 'GBP', 'metal-prices': [],
    }, // prettier-ignore
    pieces: records.pieces
      .map((piece) => linkPiece(piece, works))
      .sort((a, b) => NUMBERS.compare(a.fields.number, b.fields.number)),
    rulers: byId(records.rulers),
    mints: byId(records.mints),
    denominations: byId(records.denominations),
    works: byId(records.works),
    eras: records.eras.map((era) => ({ ...era, scheme: eraSchemeOf(era) })),
    sets: records.sets,
    exhibits: records.exhibits,
  };
}

function linkPiece(piece: FiledPiece, works: readonly { id: string; names: readonly string[] }[]): Piece {
  const grade = gradeOf(piece.fields);
  return {
    id: piece.id,
    file: piece.file,
    fields: piece.fields,
    story: piece.story,
    pictures: piece.pictures,
    grade: grade?.ok === true ? grade.value : null,
    references: (piece.fields.references ?? []).flatMap((text): readonly Reference[] => {
      const outcome = parseReference(text, works);
      return outcome.ok ? [outcome.value] : [];
    }),
  };
}

/** The grade of a piece from its words, scale and problem; null when none is recorded. */
export function gradeOf(fields: PieceFields): Outcome<Grade> | null {
  const scale = fields['grade-scale'];
  if (fields.grade === undefined) return null;
  if (scale !== undefined && !isScaleId(scale)) return refuse(`There is no grade scale called "${scale}". Write uk, us, numeric, de, fr, it, es or ancient.`);
  return parseGrade(fields.grade, {
    ...(scale === undefined ? {} : { scale }),
    ...(fields.problem === undefined ? {} : { problem: fields.problem }),
  });
}

function byId<T extends Filed<unknown>>(filed: readonly T[]): ById<T> {
  return Object.fromEntries(filed.map((one) => [one.id, one]));
}

