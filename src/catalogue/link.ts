import { parseReferences } from '../core/references/parse-reference.ts';
import type { CitedWork, Reference } from '../core/references/reference.ts';
import type { ById, Catalogue, Piece } from './catalogue.ts';
import { eraSchemeOf } from './for-core/era-scheme.ts';
import { gradeOf } from './grade-of.ts';
import type { Filed, FiledPiece, Records } from './records.ts';
import { citedWorks } from './types/cited-works.ts';
import { canBeOf } from './types/against-type.ts';
import { inheritFacts } from './types/inherit-facts.ts';
import { numbersElsewhere, pieceTypes, readTypes, typeNames } from './types/types-of.ts';
import type { Types } from './types/types-of.ts';

const NUMBERS = new Intl.Collator('en', { numeric: true });

/** Joins the records of a cabinet to one another. The records have been checked: see `checkRecords`. */
export function linkRecords(records: Omit<Records, 'named'>): Catalogue {
  const works = citedWorks(records.works);
  const { types } = readTypes(records);
  return {
    cabinet: records.cabinet?.fields ?? {
      title: 'A cabinet', keeper: '', language: 'en', robots: 'all', tiles: 'no', demo: 'no', units: 'metric', currency: 'GBP', 'metal-prices': [],
      'metal-values': 'bullion', 'metal-totals': 'no',
      areas: [], realms: [],
    }, // prettier-ignore
    pieces: records.pieces
      .map((piece) => linkPiece(piece, works, types))
      .sort((a, b) => NUMBERS.compare(a.fields.number, b.fields.number)),
    rulers: byId(records.rulers),
    mints: byId(records.mints),
    denominations: byId(records.denominations),
    works: byId(records.works),
    eras: records.eras.map((era) => ({ ...era, scheme: eraSchemeOf(era, records.rulers) })),
    sets: records.sets,
    exhibits: records.exhibits,
    types,
  };
}

function linkPiece(filed: FiledPiece, works: readonly CitedWork[], types: Types): Piece {
  const piece = inheritFacts(filed, types);
  const grade = gradeOf(piece.fields);
  const references = (piece.fields.references ?? []).flatMap((text): readonly Reference[] => {
    const outcome = parseReferences(text, { works });
    return outcome.ok ? outcome.value : [];
  });
  const { sure } = piece.fields;
  const of = pieceTypes(types, piece.fields.type, sure?.type ?? 'certain', references, sure?.references ?? 'certain');
  return {
    id: piece.id,
    file: piece.file,
    fields: piece.fields,
    story: piece.story,
    pictures: piece.pictures,
    grade: grade?.ok === true ? grade.value : null,
    references,
    fromType: piece.fromType,
    types: of,
    mayBe: typeNames(types, of, (type) => canBeOf(filed.fields, type, types)),
    elsewhere: numbersElsewhere(types, of, references),
  };
}

function byId<T extends Filed<unknown>>(filed: readonly T[]): ById<T> {
  return Object.fromEntries(filed.map((one) => [one.id, one]));
}
