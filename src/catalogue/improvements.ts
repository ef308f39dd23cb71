import { oddMeasures } from './odd-measures.ts';
import { datesOutsideReigns } from './rules/dates.ts';
import type { FiledPiece, Records } from './records.ts';

/** Something that would make the catalogue better: what, why it is worth the while, and the pieces it is wanted for. */
export type Improvement = {
  /** `weight`, as in "12 of 77 pieces have no weight". */
  readonly wanted: string;
  readonly why: string;
  /** Ids, in the order of the files. */
  readonly pieces: readonly string[];
  /** How many pieces could have it. */
  readonly of: number;
  /** What is to be said of a piece beside its id. */
  readonly says?: Readonly<Record<string, string>>;
};

type Want = Omit<Improvement, 'pieces' | 'of'> & {
  /** What it is worth against the other wants, for one piece. */
  readonly worth: number;
  readonly isFor: (piece: FiledPiece) => boolean;
  readonly isThere: (piece: FiledPiece) => boolean;
};

const isCoinLike = ({ fields: { kind } }: FiledPiece): boolean =>
  !['ingot', 'hacksilver', 'paper', 'coin-weight', 'other', 'unknown'].includes(kind);
const isTwoSided = ({ fields }: FiledPiece): boolean => fields.faces !== 'uniface';
const isAnything = (): boolean => true;
const shows = ({ pictures }: FiledPiece, face: string): boolean => pictures.some((picture) => picture.face === face);

/** What a field left out costs the reader. A field that says `unknown` or `none` has been thought about and is not wanted. */
const WANTS: readonly Want[] = [
  {
    wanted: 'known kind',
    why: 'its page says "kind not known", and no set that asks for a kind is sure of it; write kind: and take what a sheet called it, under as-written, out',
    worth: 900,
    isFor: isAnything,
    isThere: ({ fields }) => fields.kind !== 'unknown' && fields['as-written']?.['kind'] === undefined,
  },
  {
    wanted: 'photograph',
    why: 'nothing tells a piece from its like, or gets a stolen one back, as surely',
    worth: 10,
    isFor: isAnything,
    isThere: ({ pictures }) => pictures.length > 0,
  },
  {
    wanted: 'photograph of the reverse',
    why: 'the piece cannot be turned over',
    worth: 6,
    isFor: (piece) => isTwoSided(piece) && piece.pictures.length > 0,
    isThere: (piece) => shows(piece, 'reverse'),
  },
  {
    wanted: 'diameter',
    why: 'without it the piece cannot be shown at its true size, on the page or in a case',
    worth: 8,
    isFor: isAnything,
    isThere: ({ fields }) => fields.diameter !== undefined,
  },
  {
    wanted: 'weight',
    why: 'without it nothing can be said of the standard, the fine metal or a forgery',
    worth: 8,
    isFor: ({ fields }) => fields.kind !== 'paper',
    isThere: ({ fields }) => fields.weight !== undefined,
  },
  {
    wanted: 'reference',
    why: 'a reader cannot look the type up, and your attribution rests on your word',
    worth: 7,
    isFor: isCoinLike,
    isThere: ({ fields }) => (fields.references ?? []).length > 0,
  },
  {
    wanted: 'date',
    why: 'the piece is in no era and on no time line; "c. 1280" or "13th century" will do',
    worth: 7,
    isFor: isAnything,
    isThere: ({ fields }) => fields.date !== undefined,
  },
  {
    wanted: 'grade',
    why: 'no set can tell whether another would be better; "not graded" is an answer too',
    worth: 4,
    isFor: isCoinLike,
    isThere: ({ fields }) => fields.grade !== undefined,
  },
  {
    wanted: 'die axis',
    why: 'the faces cannot be turned as they were struck; "none" for a cast piece',
    worth: 3,
    isFor: (piece) => isCoinLike(piece) && isTwoSided(piece),
    isThere: ({ fields }) => fields.axis !== undefined,
  },
  {
    wanted: 'legend or design',
    why: 'who cannot see the photograph learns nothing of it, and a worn coin finds no match in it',
    worth: 4,
    isFor: isCoinLike,
    isThere: ({ fields }) => [fields.obverse, fields.reverse].some((side) => side !== undefined),
  },
  {
    wanted: 'provenance',
    why: 'where it came from is soonest forgotten and hardest found again',
    worth: 5,
    isFor: isAnything,
    isThere: ({ fields }) => (fields.provenance ?? []).length > 0 || fields.found !== undefined,
  },
  {
    wanted: 'reading yet of what stands under as-written',
    why: 'a sheet said it in words that could not be read, and no visitor is told',
    worth: 9,
    isFor: isAnything,
    isThere: ({ fields }) => fields['as-written'] === undefined,
  },
];

/** What would most improve a catalogue, most first: how many pieces want it, times what it is worth to a reader. */
export function improvementsOf(records: Pick<Records, 'pieces' | 'denominations' | 'rulers'>): readonly Improvement[] {
  const { pieces } = records;
  const wants = WANTS.map(({ worth, isFor, isThere, ...want }) => {
    const could = pieces.filter(isFor);
    const lacking = could.filter((piece) => !isThere(piece)).map(({ id }) => id);
    return { worth: worth * lacking.length, improvement: { ...want, pieces: lacking, of: could.length } };
  });
  return [...wants, likelyMeasures(records), datesInReigns(records)]
    .filter(({ worth }) => worth > 0)
    .sort((a, b) => b.worth - a.worth)
    .map(({ improvement }) => improvement);
}

/** Weights and diameters that can hardly be right. It is worth more than a lack: what is wrong misleads. */
function likelyMeasures({ pieces, denominations }: Pick<Records, 'pieces' | 'denominations'>): {
  readonly worth: number;
  readonly improvement: Improvement;
} {
  const measured = pieces.filter(({ fields }) => fields.weight !== undefined || fields.diameter !== undefined);
  const odd = measured.flatMap(({ id, fields }) => {
    const [first] = oddMeasures(fields, denominations);
    return first === undefined ? [] : [[id, first.says] as const];
  });
  return {
    worth: 1000 * odd.length,
    improvement: {
      wanted: 'likely weight or diameter',
      why: 'a point or a unit in the wrong place makes nonsense of every comparison',
      pieces: odd.map(([id]) => id),
      of: measured.length,
      says: Object.fromEntries(odd),
    },
  };
}

/** Dates outside their rulers' reigns: right for an heir's or a posthumous issue, and misleading where they are a slip. */
function datesInReigns(records: Pick<Records, 'pieces' | 'rulers'>): {
  readonly worth: number;
  readonly improvement: Improvement;
} {
  const outside = datesOutsideReigns(records);
  return {
    worth: 500 * outside.length,
    improvement: {
      wanted: "date within its ruler's reign",
      why: 'it may be posthumous or an heir’s, and then struck-for: says so, or it is a slip',
      pieces: outside.map(({ id }) => id),
      of: records.pieces.length,
      says: Object.fromEntries(outside.map(({ id, says }) => [id, says])),
    },
  };
}

/** Pieces named before the rest is counted. */
const NAMED = 4;

/** A sentence: `12 of 77 pieces have no weight: …`. */
export function formatImprovement({ wanted, why, pieces, of, says }: Improvement, named = NAMED): string {
  const shown = pieces
    .slice(0, named)
    .map((id) => (says !== undefined && Object.hasOwn(says, id) ? `${id}: ${says[id] ?? ''}` : id))
    .join(says === undefined ? ', ' : '\n  ');
  const more = pieces.length > named ? ` and ${pieces.length - named} more` : '';
  const who =
    of === 1 ? 'The one piece has' : `${pieces.length} of ${of} pieces ${pieces.length === 1 ? 'has' : 'have'}`;
  return `${who} no ${wanted}: ${why}.\n  ${shown}${more}`;
}
