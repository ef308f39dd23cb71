import { parseReferences } from '../core/references/parse-reference.ts';
import type { CitedWork, Reference } from '../core/references/reference.ts';
import type { ById, Catalogue, Piece } from './catalogue.ts';
import { eraSchemeOf } from './era-scheme.ts';
import { gradeOf } from './grade-of.ts';
import type { Filed, FiledPiece, Records } from './records.ts';

const NUMBERS = new Intl.Collator('en', { numeric: true });

/** Joins the records of a cabinet to one another. The records have been checked: see `checkRecords`. */
export function linkRecords(records: Omit<Records, 'named'>): Catalogue {
  const works = citedWorks(records.works);
  return {
    cabinet: records.cabinet?.fields ?? {
      title: 'A cabinet', keeper: '', language: 'en', robots: 'all', demo: 'no', units: 'metric', currency: 'GBP', 'metal-prices': [],
      areas: [], realms: [],
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

function linkPiece(piece: FiledPiece, works: readonly CitedWork[]): Piece {
  const grade = gradeOf(piece.fields);
  return {
    id: piece.id,
    file: piece.file,
    fields: piece.fields,
    story: piece.story,
    pictures: piece.pictures,
    grade: grade?.ok === true ? grade.value : null,
    references: (piece.fields.references ?? []).flatMap((text): readonly Reference[] => {
      const outcome = parseReferences(text, { works });
      return outcome.ok ? outcome.value : [];
    }),
  };
}

/** The books of a cabinet as they may be cited: by key, and by the short name. */
export function citedWorks(works: Records['works']): readonly CitedWork[] {
  return works.map(({ id, fields }) => ({ id, names: fields.short === undefined ? [] : [fields.short] }));
}

function byId<T extends Filed<unknown>>(filed: readonly T[]): ById<T> {
  return Object.fromEntries(filed.map((one) => [one.id, one]));
}
