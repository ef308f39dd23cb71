import { known } from '../../../catalogue/schema/fields.ts';
import { formatGrade } from '../../../core/grade/grade.ts';
import { sizeSpan } from '../../../core/measures/parse-size.ts';
import type { PhotographManifest } from '../../../photographs/cache/manifest.ts';
import type { PublicPiece } from '../../../publish/public-piece.ts';
import type { Cabinet } from '../../cabinet.ts';
import type { ComparedFace, ComparedFact, ComparedPiece } from '../../compare/record.ts';
import { urls } from '../../urls.ts';
import { capital, kindInWords } from '../../words/capital.ts';
import { compareWords } from '../../words/compare.ts';
import { pieceWords } from '../../words/piece.ts';
import { ticketLine } from '../shared/ticket.ts';
import { faceOf, lookOf } from '../shared/face.ts';
import { attributionRows } from '../piece/attribution.ts';
import { sidesOf } from '../piece/legends.ts';
import { measureRows } from '../piece/measures.ts';
import type { Row } from '../piece/row.ts';

/** What the page of comparing lays of a piece. */
export function comparedOf(piece: PublicPiece, cabinet: Cabinet): ComparedPiece {
  const hours = piece.axis?.hours ?? null;
  return {
    id: piece.id,
    to: urls.piece(piece.id),
    title: piece.title,
    line: ticketLine(piece),
    faces: {
      obverse: comparedFace(piece, 'obverse', cabinet.photographs),
      reverse: comparedFace(piece, 'reverse', cabinet.photographs),
    },
    turn: hours === null ? null : (hours % 12) * 30,
    facts: factsOf(piece, cabinet),
  };
}

function comparedFace(piece: PublicPiece, face: string, manifest: PhotographManifest): ComparedFace {
  const laid = faceOf(piece, face, manifest);
  const { alt, wide, millimetres } = laid;
  if (laid.shown === 'photograph') {
    const { pictures, width, height } = laid;
    return { alt, wide, millimetres, pictures, width, height };
  }
  return { alt, wide, millimetres, tall: laid.tall, look: lookOf(laid), says: laid.says };
}

/** What is told otherwise or is no likeness: the kind, which a coin's page leaves unsaid, where it is now, what it was gathered under. */
const APART: readonly string[] = [pieceWords.field.kind, pieceWords.field.status, pieceWords.field.tags];

function factsOf(piece: PublicPiece, cabinet: Cabinet): readonly ComparedFact[] {
  const { field } = pieceWords;
  const size = known(piece.size);
  const measures: Readonly<Record<string, ComparedFact['measure']>> = {
    [field.weight]: figure(known(piece.weight)?.grams, 'g'),
    [field.size]: size === null ? undefined : figure(sizeSpan(size).width, 'mm'),
  };
  const fact = (name: string, text: string): ComparedFact => {
    const measure = measures[name];
    return measure === undefined ? { name, text } : { name, text, measure };
  };
  return [
    fact(field.kind, kindInWords(piece.kind)),
    ...attributionRows(piece)
      .filter(({ name }) => !APART.includes(name))
      .map((row) => fact(row.name, textOf(row))),
    // A value is dated and no offer, which a cell has no room to say.
    ...measureRows(piece, cabinet)
      .filter(({ name }) => name !== field.value)
      .map((row) => fact(row.name, textOf(row))),
    ...gradeFacts(piece),
    ...sidesOf(piece).flatMap(({ name, legend, design }) => [
      ...(legend === null ? [] : [fact(compareWords.legendOf(name), legend.text)]),
      ...(design === null ? [] : [fact(compareWords.designOf(name), design)]),
    ]),
  ];
}

function gradeFacts({ grade, problem }: PublicPiece): readonly ComparedFact[] {
  if (grade === null) return [];
  const text = grade.notGraded === undefined ? capital(formatGrade(grade)) : pieceWords.notGraded(grade.notGraded);
  return [
    { name: compareWords.grade, text },
    ...(problem === null ? [] : [{ name: compareWords.problem, text: problem }]),
  ];
}

function textOf({ doubt, values }: Row): string {
  return [doubt, values.map(({ text }) => text).join(', ')].filter((part) => part !== '').join(' ');
}

function figure(value: number | undefined, unit: 'g' | 'mm'): ComparedFact['measure'] {
  return value === undefined ? undefined : { value, unit };
}
