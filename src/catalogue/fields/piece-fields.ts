import { z } from 'zod';
import { formatDate } from '../../core/dating/format-date.ts';
import { parseDate } from '../../core/dating/parse-date.ts';
import type { DateContext } from '../../core/dating/dating.ts';
import { SCALE_IDS } from '../../core/grade/grade.ts';
import { formatAxis, parseAxis } from '../../core/measures/parse-axis.ts';
import { formatLength, parseLength } from '../../core/measures/parse-length.ts';
import { formatSize, parseSize } from '../../core/measures/parse-size.ts';
import { formatWeight, parseWeight } from '../../core/measures/parse-weight.ts';
import { formatFineness, parseFineness } from '../../core/metal/parse-fineness.ts';
import { CERTAINTIES, field, id, oneOrMore, orBlank, words } from '../schema/fields.ts';
import { alteredRows, CREDIT, DIES, foundRows, linkRows, MAKER, SIDE } from './piece-parts.ts';
import { pieceRow as row, shapeOf } from './row.ts';

export const KINDS = [
  'coin', 'token', 'medal', 'jeton', 'ingot', 'hacksilver', 'coin-weight', 'pattern', 'replica', 'counterfeit',
  'paper', 'other', 'unknown',
] as const; // prettier-ignore
const PUBLISH = ['yes', 'unlisted', 'no'] as const;
const STATUSES = ['kept', 'lent', 'sold', 'given', 'exchanged', 'lost'] as const;
const FACES = ['two', 'uniface', 'incuse-reverse'] as const;
const GRADED_BY = ['keeper', 'dealer', 'third party'] as const;
export const PHOTOGRAPHED = ['obverse', 'reverse', 'edge'] as const;
export const UNSURE_FIELDS = [
  'ruler', 'struck-for', 'issuer', 'mint', 'denomination', 'date', 'metal', 'references', 'kind', 'makers', 'type',
] as const; // prettier-ignore

const side = z.strictObject(shapeOf(SIDE)).optional();
/** The columns of a side: one for each of its parts. */
const parts = <S extends string>(of: S) => [`${of} legend`, `${of} reading`, `${of} design`] as const;

/**
 * Every field of a piece, one row each: the schema that reads it, and everything else the program knows about it. The
 * schema of `piece.md`, the public data, the table `pieces.csv`, what a spreadsheet can be read into, the reference in
 * `content/README.md` and the form at the desk follow from it. `reigns` (from the rulers' files) let a date say
 * `Edward I, year 7`; `gr` is what the cabinet means by it.
 */
export function pieceRows(context: DateContext = {}, gr?: 'grains' | 'grams') {
  const date = field((text) => parseDate(text, context), 'date-unreadable');
  const [altered, found, link] = [alteredRows(context), foundRows(context), linkRows(context)];
  return {
    number: row(words, {
      label: 'Number', control: 'line', seen: 'data', targets: ['number'], example: '"0123"',
      says: 'Inventory number, kept exactly as written, unique in the cabinet.',
    }),
    title: row(words, {
      label: 'Title', control: 'line', seen: 'data', targets: ['title'], example: 'Penny of Edward I, York, class 3b',
      says: 'What it is, in a line.',
    }),
    kind: row(z.enum(KINDS), {
      label: 'Kind', control: 'choice', choices: KINDS, seen: 'data', targets: ['kind'], doubted: true, asked: ['kind'],
      inherited: true, example: 'coin', says: 'What sort of object it is; unknown where nobody has said yet.',
    }),
    publish: row(z.enum(PUBLISH).default('yes'), {
      label: 'Publish', control: 'choice', choices: PUBLISH, usual: 'yes', seen: 'no', targets: ['publish'], example: 'yes',
      says: '`yes`; `unlisted` (a page, but in no list, feed, search or count); `no` (no trace at all).',
    }),
    status: row(z.enum(STATUSES).default('kept'), {
      label: 'Status', control: 'choice', choices: STATUSES, usual: 'kept', seen: 'data', targets: ['status'], example: 'kept',
      says: 'Where it is with you. A sold piece keeps its page.',
    }),
    ruler: row(orBlank(oneOrMore(id)).optional(), {
      label: 'Ruler', control: 'name', list: 'rulers', several: true, blanks: true, seen: 'data', shown: 'rulers',
      targets: ['ruler', 'realm'], doubted: true, asked: ['ruler', 'realm', 'dynasty'], inherited: true, example: 'edward-i',
      says: 'In whose name it stands (stated authority); several for a joint reign.',
    }),
    'struck-for': row(oneOrMore(id).optional(), {
      label: 'Struck for', control: 'name', list: 'rulers', several: true, seen: 'data', shown: 'struckFor',
      fact: 'struckFor', targets: ['struck-for'], doubted: true, asked: ['struck-for'], inherited: true, example: 'john',
      says: 'For whom it was struck in fact, only when that differs from the name on it.',
    }),
    issuer: row(words.optional(), {
      label: 'Issuer', control: 'line', seen: 'data', targets: ['issuer'], doubted: true, asked: ['issuer'],
      inherited: true, example: 'Archbishop of York', says: 'Who was responsible: moneyer, archbishop, town, company.',
    }),
    mint: row(orBlank(id).optional(), {
      label: 'Mint', control: 'name', list: 'mints', blanks: true, seen: 'data', targets: ['mint', 'mint area'],
      doubted: true,
      asked: ['mint', 'area'], inherited: true, example: 'york', says: 'Where it was made.',
    }),
    makers: row(z.array(z.strictObject(shapeOf(MAKER))).optional(), {
      label: 'Makers', control: 'rows', parts: MAKER, seen: 'data', doubted: true, inherited: true,
      targets: ['makers', 'moneyer', 'engraver', 'medallist', 'die-sinker', 'artist'],
      example: '[{ name: Davi, role: moneyer }]', says: 'The people who made it.',
    }),
    denomination: row(orBlank(id).optional(), {
      label: 'Denomination', control: 'name', list: 'denominations', blanks: true, seen: 'data',
      targets: ['denomination'], doubted: true, asked: ['denomination'], inherited: true, example: 'penny',
      says: 'What it was worth.',
    }),
    date: row(orBlank(date).optional(), {
      label: 'Date', control: 'line', reads: 'date', blanks: true, seen: 'data', print: formatDate,
      targets: ['date', 'date from', 'date to'], doubted: true, asked: ['date'], inherited: true, example: '1279/1281',
      says: 'When it was made: `c. 1280`, `late 12th century`, `AH 294`, `44 BC`.',
    }),
    dated: row(words.optional(), {
      label: 'Dated', control: 'line', seen: 'data', targets: ['dated'], example: '"1792"',
      says: 'The date that stands on the piece, as it stands.',
    }),
    references: row(z.array(words).optional(), {
      label: 'References', control: 'lines', reads: 'reference', seen: 'data', doubted: true, asked: ['references'],
      targets: ['references', 'reference work', 'reference number'], example: '[north 1017, cf. withers 23a]',
      says: 'The books that describe it: a book by its key or short name, then the number printed there. `[]`: looked for, in none.',
    }),
    metal: row(orBlank(words).optional(), {
      label: 'Metal', control: 'line', blanks: true, seen: 'data', targets: ['metal'], doubted: true, asked: ['metal'],
      inherited: true, example: 'silver', says: 'What it is made of.',
    }),
    fineness: row(orBlank(field(parseFineness, 'fineness-unreadable')).optional(), {
      label: 'Fineness', control: 'line', reads: 'fineness', blanks: true, seen: 'data', print: formatFineness,
      targets: ['fineness'], inherited: true, example: '925/1000',
      says: 'How fine: `22 ct`, `11 oz 2 dwt`, `0.90/0.92`, `15 loth`.',
    }),
    weight: row(orBlank(field((text) => parseWeight(text, { gr }), 'weight-unreadable')).optional(), {
      label: 'Weight', control: 'line', reads: 'weight', blanks: true, seen: 'data', print: formatWeight,
      targets: ['weight'], example: '1.38 g ± 0.01', says: 'What it weighs, with the unit: g, grains, dwt, oz t.',
    }),
    diameter: row(orBlank(field(parseSize, 'size-unreadable')).optional(), {
      label: 'Diameter', control: 'line', reads: 'size', blanks: true, seen: 'data', shown: 'size', print: formatSize,
      targets: ['diameter', 'height', 'width', 'measures'], example: '18.6 mm',
      says: 'Also `18.2-19.4 mm`, or height x width for what is not round.',
    }),
    thickness: row(orBlank(field(parseLength, 'length-unreadable')).optional(), {
      label: 'Thickness', control: 'line', reads: 'length', blanks: true, seen: 'data', print: formatLength,
      targets: ['thickness'], example: '0.9 mm', says: 'How thick.',
    }),
    axis: row(field(parseAxis, 'axis-unreadable').optional(), {
      label: 'Die axis', control: 'line', reads: 'axis', seen: 'data', print: formatAxis, targets: ['axis'],
      example: '6h', says: 'The turn between the faces, a clock hour; `none` for uniface and cast pieces.',
    }),
    made: row(words.optional(), {
      label: 'Made', control: 'line', seen: 'data', targets: ['made'], asked: ['made'], inherited: true,
      example: 'struck', says: 'How it was made: struck, cast, engraved, pressed.',
    }),
    faces: row(z.enum(FACES).optional(), {
      label: 'Faces', control: 'choice', choices: FACES, seen: 'data', targets: ['faces'], inherited: true,
      example: 'two', says: 'How many sides were made.',
    }),
    shape: row(words.optional(), {
      label: 'Shape', control: 'line', seen: 'data', targets: ['shape'], asked: ['shape'], inherited: true,
      example: 'round', says: 'round, square, cut half …',
    }),
    treatments: row(z.array(words).optional(), {
      label: 'Treatments', control: 'lines', seen: 'data', targets: ['treatments'], example: '[clipped, pierced]',
      says: 'What was done to it later: clipped, pierced, gilt.',
    }),
    peculiarities: row(z.array(words).optional(), {
      label: 'Peculiarities', control: 'lines', seen: 'data', targets: ['peculiarities'], example: '[off-centre]',
      says: 'What happened to it at the mint: off-centre, double-struck.',
    }),
    grade: row(words.optional(), {
      label: 'Grade', control: 'line', reads: 'grade', seen: 'data', fact: 'gradeAsGiven', targets: ['grade'],
      example: 'VF', says: 'The grade as it was given; `not graded` when it was not.',
    }),
    'grade-scale': row(words.optional(), {
      label: 'Grade scale', control: 'choice', choices: SCALE_IDS, seen: 'data', shown: 'grade', within: 'scale',
      fact: 'gradeScale', targets: ['grade-scale'], example: 'uk', says: 'The scale the grade is on.',
    }),
    'graded-by': row(z.enum(GRADED_BY).optional(), {
      label: 'Graded by', control: 'choice', choices: GRADED_BY, seen: 'data', shown: 'gradedBy', fact: 'gradedBy',
      targets: ['graded-by'], example: 'keeper', says: 'Who gave it.',
    }),
    problem: row(words.optional(), {
      label: 'Problem', control: 'line', seen: 'data', targets: ['problem'], example: 'cleaned',
      says: 'What makes it a details piece: cleaned, bent, tooled.',
    }),
    obverse: row(side, {
      label: 'Obverse', control: 'parts', parts: SIDE, seen: 'data', columns: parts('obverse'),
      targets: parts('obverse'), inherited: true, example: `{ legend: "+EDW R'", design: Crowned facing bust }`,
      says: 'The face with the ruler, or the first.',
    }),
    reverse: row(side, {
      label: 'Reverse', control: 'parts', parts: SIDE, seen: 'data', columns: parts('reverse'),
      targets: parts('reverse'), inherited: true, example: '{ legend: CIVI TAS, design: Long cross }',
      says: 'The other face.',
    }),
    edge: row(side, {
      label: 'Edge', control: 'parts', parts: SIDE, seen: 'data', columns: parts('edge'), targets: parts('edge'),
      inherited: true, example: '{ legend: PAYABLE AT EXETER }', says: 'What stands on the edge.',
    }),
    altered: row(z.strictObject(shapeOf(altered)).optional(), {
      label: 'Altered', control: 'parts', parts: altered, seen: 'page',
      example: '{ host: Penny of 1797, done: [{ what: engraved, on: obverse, date: c. 1810 }] }',
      says: 'What it was before, when it was made from another piece.',
    }),
    sure: row(z.partialRecord(z.enum(UNSURE_FIELDS), z.enum(CERTAINTIES)).optional(), {
      label: 'How sure', control: 'table', of: UNSURE_FIELDS, choices: CERTAINTIES, usual: 'certain', seen: 'data', targets: ['sure'],
      example: '{ mint: probable }', says: 'How sure each statement is, where it is not certain: probable, possible.',
    }),
    provenance: row(z.array(z.strictObject(shapeOf(link))).optional(), {
      label: 'Provenance', control: 'rows', parts: link, seen: 'page', targets: ['provenance'],
      example: '[{ when: 1934, how: auction, to: A. Collector, evidence: plate-match, source: sale list }]',
      says: 'How it came down to you, oldest first.',
    }),
    found: row(z.strictObject(shapeOf(found)).optional(), {
      label: 'Found', control: 'parts', parts: found, seen: 'page', targets: ['found area'],
      example: '{ area: East Riding, how: metal detecting, when: 1998 }',
      says: 'Where it was found, as coarse as you are willing to publish.',
    }),
    dies: row(z.strictObject(shapeOf(DIES)).optional(), {
      label: 'Dies', control: 'parts', parts: DIES, seen: 'page', asked: ['die'],
      targets: ['obverse die', 'reverse die'], example: '{ obverse: A1, reverse: b3 }',
      says: 'The dies, by your own or a book’s letters.',
    }),
    photographs: row(z.partialRecord(z.enum(PHOTOGRAPHED), z.strictObject(shapeOf(CREDIT))).optional(), {
      label: 'Photographs', control: 'each', choices: PHOTOGRAPHED, parts: CREDIT, seen: 'page', shown: 'pictures',
      example: '{ obverse: { by: your name, licence: CC0-1.0, crop: 10 8 60 60 % } }',
      says: 'Credits and words for the photographs beside this file.',
    }),
    tags: row(z.array(words).default([]), {
      label: 'Tags', control: 'lines', seen: 'data', targets: ['tags'], asked: ['tag'], example: '[favourite]',
      says: 'Your own words to gather pieces by.',
    }),
    'as-written': row(z.record(z.string(), words).optional(), {
      label: 'As written', control: 'pairs', seen: 'no', example: '{ weight: "about 1,4" }',
      says: 'What a sheet said of a field and could not be read, word for word; it is published nowhere.',
    }),
    formerly: row(oneOrMore(id).optional(), {
      label: 'Formerly', control: 'lines', seen: 'page', example: 'old-folder-name',
      says: 'Old ids of this piece, which stay alive as redirects.',
    }),
    type: row(words.optional(), {
      label: 'Type', control: 'line', completes: 'types', seen: 'data', targets: ['type'], doubted: true, asked: ['type'], example: 'lc-3b',
      says: 'What it is a specimen of: the id of a type in types/, or series/id. What is left out here is then the type’s.',
    }),
    prefer: row(
      z.string().regex(/^[1-9]\d*$/, 'This wants a whole number from 1.').transform(Number).optional(),
      {
        label: 'Prefer', control: 'line', seen: 'page', print: String, example: '1',
        says: 'Your choice among the pieces that fit a place of a set: 1 before 2.',
      },
    ),
    'metal-value': row(z.enum(['yes', 'no']).optional(), {
      label: 'Metal value', control: 'choice', choices: ['yes', 'no'], seen: 'page', shown: 'metalValue', example: 'yes',
      says: 'Whether its page shows what its metal comes to; left out, as `metal-values:` in cabinet.yaml has it.',
    }),
  }; // prettier-ignore
}

export type PieceRows = ReturnType<typeof pieceRows>;

/** The table without a cabinet's reigns, for everything but reading dates. */
export const PIECE_ROWS = pieceRows();
