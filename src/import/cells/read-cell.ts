import { parseLegend } from '../../core/legends/parse-legend.ts';
import type { Mapping, Meaning, Reading } from '../columns/mapping.ts';
import { matchPattern } from '../columns/pattern.ts';
import type { Found, Suits } from '../columns/pattern.ts';
import { parseReading } from '../columns/parse-column-rule.ts';
import { WITH_BLANKS } from '../columns/targets.ts';
import type { Field } from '../columns/targets.ts';
import { blankIn, isAsAbove, pointsAbove } from './blank.ts';
import { readDate } from './date-cell.ts';
import { readLedger } from './ledger-cell.ts';
import { readAxis, readMeasure, readMeasures } from './measure-cell.ts';
import { readMetal } from './metal-cell.ts';
import { readNames, readStruckFor } from './name-cell.ts';
import { readReferences, readReferenceTo } from './reference-cell.ts';
import { fact, unread } from './cell-result.ts';
import type { Cell, Half, Said } from './cell-result.ts';
import { CHOICES, readChoice, readList, readMakers, readSure, saysUniface } from './word-cell.ts';
import { PROBLEM_NOT_SAID, SCALE_IDS } from '../../core/grade/grade.ts';
import type { Grade } from '../../core/grade/grade.ts';
import { parseGrade } from '../../core/grade/parse-grade.ts';

/** All that the readings of a column make of one cell. Patterns are tried in turn, the first that fits the whole cell is taken. */
export function readCell(cell: Cell, readings: readonly Reading[], heading: string, mapping: Mapping): readonly Said[] {
  if (cell.text === '') return [];
  const isPrivate = readings.some(({ kind }) => kind === 'ledger');
  if (cell.value?.kind === 'error' && !isPrivate)
    return unread(
      nameOf(readings),
      `The sheet itself could not work this cell out and says ${cell.value.says}. Fix the formula, or type the value.`,
    );
  const isSaid = readings.some(
    (reading) => reading.kind === 'field' && meantBy(cell.text, mapping.words[reading.field]) !== null,
  );
  if (!isPrivate && !isSaid && blankIn(cell.text, mapping.blanks) === null && isAsAbove(cell.text))
    return unread(nameOf(readings), pointsAbove(cell.text, heading));
  const patterns = readings.filter((reading) => reading.kind === 'pattern');
  // A field beside a pattern that names it is for the cells which the pattern does not fit.
  const [fitting] = waysOf(patterns, cell.text, () => true) ?? [];
  const inParts = new Set(fitting?.map(({ part }) => part));
  const whole = readings
    .filter((reading) => reading.kind !== 'pattern' && !(reading.kind === 'field' && inParts.has(reading.field)))
    .flatMap((reading) => readAs(cell, reading, heading, mapping));
  return patterns.length === 0 ? whole : [...whole, ...readParts(cell, patterns, whole.length > 0, heading, mapping)];
}

type Pattern = Extract<Reading, { kind: 'pattern' }>;

function readParts(
  cell: Cell,
  patterns: readonly Pattern[],
  hasPlace: boolean,
  heading: string,
  mapping: Mapping,
): readonly Said[] {
  const blank = blankIn(cell.text, mapping.blanks);
  if (blank !== null) return [{ kind: 'blank' }];
  const readPart = (part: string, text: string): readonly Said[] => {
    const reading = parseReading(part);
    if (isAsAbove(text)) return unread(part, pointsAbove(text, heading));
    return reading.ok ? readAs({ ...cell, text, value: undefined }, reading.value, heading, mapping) : [];
  };
  // A number of one word is likelier than one of two: `A.D. 249. 7.` ends in the number 7.
  const isLikely = (part: string, text: string) => part !== 'number' || !text.includes(' ');
  const isRead = (part: string, text: string) =>
    isLikely(part, text) && readPart(part, text).every(({ kind }) => kind !== 'unread');
  // First the ways to part the cell in which every part can be read, then any.
  const found =
    waysOf(patterns, cell.text, isRead) ??
    waysOf(patterns, cell.text, isLikely) ??
    waysOf(patterns, cell.text, () => true);
  if (found !== null) {
    const { parts, asked } = settledWay(found, cell.known);
    return [
      ...parts.flatMap(({ part, text }) =>
        (saysMoreThanDesign(part, text) ?? readPart(part, text)).map((each) =>
          each.kind === 'unread' ? { ...each, text: each.text ?? text } : each,
        ),
      ),
      ...asked.map(({ text, names }): Said => ({
        kind: 'unread',
        field: names[0] ?? 'pattern',
        because: `"${text}" may be the ${names.join(' or the ')}. Say which in a column of its own, or take one of the patterns out of the mapping.`,
        text,
      })),
    ];
  }
  if (hasPlace) return [];
  const tried = patterns.map(({ pattern }) => pattern).join(' or ');
  return unread('pattern', `"${cell.text}" does not fit ${tried}. Add a pattern that it fits to the mapping.`);
}

/** Words that begin what is said of the whole piece, behind its design: `bust of Majorianus, struck at Arles`. */
const OF_PIECE =
  /[,;] (?:struck|issued|minted|coined|engraved|geprägt|ausgegeben|frappée?|émise?|coniat[ao]|acuñad[ao])(?!\p{L})/iu;

/** Why the rest of a text is no design alone; null where it may be one. */
function saysMoreThanDesign(part: string, text: string): readonly Said[] | null {
  if (!part.endsWith('design') || !OF_PIECE.test(text)) return null;
  return unread(
    part,
    `"${text}" says more than the design. Add a pattern for it to the mapping, such as {${part}}, struck at {mint}, or write the design alone.`,
  );
}

/** The first pattern that fits, with those that part the cell at the same places under other names; null when none fits. */
function waysOf(patterns: readonly Pattern[], text: string, suits: Suits): readonly Found[] | null {
  const fits = patterns.flatMap(({ pattern }) => {
    const one = matchPattern(pattern, text, suits);
    return one === null ? [] : [one];
  });
  const [first] = fits;
  if (first === undefined) return null;
  const textsOf = (found: Found): string => JSON.stringify(found.map((one) => one.text));
  return fits.filter((one) => textsOf(one) === textsOf(first));
}

/** Names a sheet is sure of, by the part they are in: those of cells that only one pattern fits. */
type KnownParts = ReadonlyMap<string, ReadonlySet<string>>;

/** What each pattern alone finds in a column, for telling a ruler from a mint where a cell fits both. */
export function knownParts(texts: readonly string[], readings: readonly Reading[]): KnownParts {
  const patterns = readings.filter((reading) => reading.kind === 'pattern');
  const known = new Map<string, Set<string>>();
  if (patterns.length < 2) return known;
  for (const text of texts) {
    const [only, ...more] = waysOf(patterns, text, () => true) ?? [];
    if (only === undefined || more.length > 0) continue;
    for (const one of only) known.set(one.part, (known.get(one.part) ?? new Set()).add(one.text.toLowerCase()));
  }
  return known;
}

type Settled = {
  readonly parts: Found;
  readonly asked: readonly { readonly text: string; readonly names: readonly string[] }[];
};

/** Of several ways to name the same parts the one that the rest of the sheet speaks for; what stays open is asked. */
function settledWay(ways: readonly Found[], known: KnownParts = new Map()): Settled {
  const votes = (way: Found): number =>
    way.filter(({ part, text }) => known.get(part)?.has(text.toLowerCase()) === true).length;
  const most = Math.max(...ways.map(votes));
  const best = ways.filter((way) => votes(way) === most);
  const [first = []] = best;
  const names = first.map((_, at) => [...new Set(best.map((way) => way[at]?.part ?? ''))]);
  return {
    parts: first.filter((_, at) => names[at]?.length === 1),
    asked: first.flatMap(({ text }, at) => ((names[at]?.length ?? 1) > 1 ? [{ text, names: names[at] ?? [] }] : [])),
  };
}

function nameOf(readings: readonly Reading[]): string {
  const [first] = readings;
  return first?.kind === 'field' ? first.field : first?.kind === 'reference' ? 'references' : 'pattern';
}

/** A cell by one reading that is no pattern. */
function readAs(cell: Cell, reading: Reading, heading: string, mapping: Mapping): readonly Said[] {
  if (reading.kind === 'pattern' || reading.kind === 'nothing') return [];
  const blank = cell.value?.kind === 'number' ? null : blankIn(cell.text, mapping.blanks);
  if (reading.kind === 'ledger') {
    const dropped = blank !== null && reading.column !== undefined;
    const isDitto = !dropped && reading.column !== undefined && isAsAbove(cell.text);
    if (isDitto) return unread(`ledger ${reading.column}`, pointsAbove(cell.text, heading));
    return dropped ? [{ kind: 'blank' }] : readLedger(cell, reading.column, heading, reading.currency);
  }
  if (reading.kind === 'reference') {
    // A stroke in the column of a book says that the book has no such piece, or that nobody looked: nothing is made of it.
    return blank === null ? readReferenceTo(reading.work, cell.text) : [{ kind: 'blank' }];
  }
  if (blank !== null) return readBlank(reading.field, blank);
  const meant = meantBy(cell.text, mapping.words[reading.field]);
  if (meant !== null && reading.field === 'metal') return readMetal(meant, true);
  const asMeant = meant === null ? cell : { settings: cell.settings, ruled: cell.ruled, text: meant };
  return readField({ ...asMeant, unit: reading.unit }, reading.field, mapping);
}

/** What the keeper says a word of the sheet stands for; null for a word that the table does not have. */
function meantBy(text: string, words: Readonly<Record<string, string>> | undefined): string | null {
  if (words === undefined) return null;
  const plain = (word: string): string => word.replace(/\s+/g, ' ').trim().toLowerCase();
  return Object.entries(words).find(([word]) => plain(word) === plain(text))?.[1] ?? null;
}

/** Only where the form knows more than one blank is the kind of blank kept. */
function readBlank(field: Field, blank: Meaning): readonly Said[] {
  if (blank === 'not recorded') return [{ kind: 'blank' }];
  const keeps =
    WITH_BLANKS.has(field) ||
    field === 'type' ||
    (field === 'issuer' && blank === 'unknown') ||
    (field === 'axis' && blank === 'none');
  return keeps ? fact(field, blank) : [{ kind: 'blank' }];
}

type FieldReader = (cell: Cell, field: Field, mapping: Mapping) => readonly Said[];

const asName: FieldReader = ({ text }, field) => readNames(text, field as Parameters<typeof readNames>[1]);
const asHalf: FieldReader = ({ text }, field) => [{ kind: 'half', of: field as Half, text }];
const asMeasure: FieldReader = (cell, field) => readMeasure(cell, field);
const asList: FieldReader = ({ text }, field) => readList(text, field);
const asChoice: FieldReader = ({ text }, field) => readChoice(text, field);
const asWords: FieldReader = ({ text }, field) => readWords(text, field);
const asMaker: FieldReader = ({ text }, field) => readMakers(text, field);
const asDie: FieldReader = ({ text }, field) => fact(`dies.${field.replace(' die', '')}`, text);

/** How a cell of each field is read; every other field is a word of its choices, or words as they stand. */
const READERS: Partial<Record<Field, FieldReader>> = {
  id: ({ text }) => [{ kind: 'id', text }],
  ruler: asName,
  mint: asName,
  denomination: asName,
  type: ({ text }) => readType(text),
  realm: ({ text }) => [{ kind: 'realm', text: text.replace(/\s+/g, ' ') }],
  'mint area': ({ text }) => [{ kind: 'mint area', text: text.replace(/\s+/g, ' ') }],
  date: (cell) => readDate(cell, 'date'),
  'date from': asHalf,
  'date to': asHalf,
  height: asHalf,
  width: asHalf,
  'reference work': asHalf,
  'reference number': asHalf,
  references: ({ text }) => readReferences(text),
  metal: ({ text }) => readMetal(text),
  fineness: asMeasure,
  weight: asMeasure,
  diameter: asMeasure,
  thickness: asMeasure,
  axis: (cell) => readAxis(cell),
  measures: (cell) => readMeasures(cell),
  grade: (cell, _, { always }) => readGrade(cell, cell.unit ?? always['grade-scale']),
  treatments: asList,
  peculiarities: asList,
  tags: asList,
  makers: ({ text }) => readMakers(text, 'maker'),
  moneyer: asMaker,
  engraver: asMaker,
  medallist: asMaker,
  'die-sinker': asMaker,
  artist: asMaker,
  sure: ({ text }) => readSure(text),
  story: ({ text }) => [{ kind: 'story', text }],
  provenance: ({ text }) => [{ kind: 'more', field: 'provenance', values: [{ says: text }] }],
  'struck-for': ({ text }) => readStruckFor(text),
  'found area': ({ text }) => fact('found.area', text),
  'obverse die': asDie,
  'reverse die': asDie,
};

function readField(cell: Cell, field: Field, mapping: Mapping): readonly Said[] {
  if (saysUniface(cell.text, field)) return fact('faces', 'uniface');
  const read = READERS[field] ?? (field in CHOICES ? asChoice : asWords);
  return read(cell, field, mapping);
}

/** The id of a type, in small letters as in types.csv; a question mark behind it is a doubt. Whether there is one, the cabinet tells. */
function readType(text: string): readonly Said[] {
  const doubt = /\s*(?:\(\?\)|\?)$/;
  const words = text.replace(doubt, '').trim();
  const id = /^[a-z\d./-]+$/i.test(words) ? words.toLowerCase() : words;
  return [...fact('type', id), ...(doubt.test(text) ? fact('sure.type', 'possible') : [])];
}

/** Words as they stand; a legend must be one. */
function readWords(text: string, field: string): readonly Said[] {
  const path = /^(?:obverse|reverse|edge) (?:legend|reading|design)$/.test(field) ? field.replace(' ', '.') : field;
  if (!path.endsWith('.legend')) return fact(path, text);
  const read = parseLegend(text);
  return read.ok ? fact(path, text) : unread(field, read.problem);
}

/**
 * `VF-30 cleaned`: the grade as it was given, the scale where only one has it, and what ails the piece. A scale that the column or
 * the keeper names for all rows goes first; without one, a word of several scales keeps them all.
 */
function readGrade({ text }: Cell, scale: string | undefined): readonly Said[] {
  const named = SCALE_IDS.find((id) => id === scale);
  const onNamed = named === undefined ? null : parseGrade(text, { scale: named });
  const read = onNamed?.ok === true ? onNamed : parseGrade(text);
  if (!read.ok) return unread('grade', read.problem);
  const grade = read.value;
  const problem = grade.problem === PROBLEM_NOT_SAID ? undefined : grade.problem;
  const alone = problem === undefined ? null : withoutProblem(text, problem, grade);
  return [
    ...fact('grade', alone ?? text),
    ...(grade.notGraded === undefined && grade.alsoOn === undefined ? fact('grade-scale', grade.scale) : []),
    ...(alone === null || problem === undefined ? [] : fact('problem', problem)),
  ];
}

/** The grade without its fault, where it stays the same grade; null when it does not. */
function withoutProblem(text: string, problem: string, grade: Grade): string | null {
  const at = text.toLowerCase().lastIndexOf(problem.toLowerCase());
  if (at < 1) return null;
  const rest = text.slice(at + problem.length).replace(/^[)\s]+/, '');
  const alone = text.slice(0, at).replace(/[\s,;:(-]+$/, '');
  const read = parseGrade(alone);
  return rest === '' && read.ok && read.value.words === grade.words && read.value.problem === undefined ? alone : null;
}
