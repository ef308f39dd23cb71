import { LEDGER_NAMES, LEDGER_ROWS } from '../../catalogue/fields/ledger-columns.ts';
import type { LedgerColumn } from '../../catalogue/fields/ledger-columns.ts';
import type { ReadAs } from '../../catalogue/fields/row.ts';
import { parseSize } from '../../core/measures/parse-size.ts';
import { formatLength } from '../../core/measures/parse-length.ts';
import type { Outcome } from '../../core/outcome.ts';
import { good } from '../../core/outcome.ts';
import type { Consulted } from '../read/consulted.ts';
import { kinds } from '../read/all-kinds.ts';

/** Something a piece may have: its flag, which is its field unless `field` says another, and how it is asked for. */
export type Question = {
  readonly flag: string;
  /** Where the answer is in `piece.md`; the flag where nothing else is said. */
  readonly field?: readonly string[];
  /** Several answers are given, with a comma between when they are asked for. */
  readonly isList?: true;
  /** How it is asked for; a question without is only taken from its flag. */
  readonly asks?: string;
  readonly example?: string;
  /** How the answer is read aloud: a kind of `npm run read`, or a size. */
  readonly reads?: Exclude<ReadAs, 'event'>;
  /** It is in the ledger and not in the piece's file. */
  readonly isPrivate?: true;
};

/** In the order in which they are asked. The number, the kind, the title and the names in lists are asked apart. */
export const QUESTIONS: readonly Question[] = [
  { flag: 'date', asks: 'When was it made?', example: 'c. 1280, 1279/1281, AH 294, 44 BC', reads: 'date' },
  { flag: 'dated', },
  { flag: 'metal', asks: 'What is it made of?', example: 'silver' },
  { flag: 'fineness', reads: 'fineness' },
  { flag: 'weight', asks: 'What does it weigh?', example: '1.38 g, 21.3 grains', reads: 'weight' },
  { flag: 'diameter', asks: 'How wide is it?', example: '18.6 mm, or 9 x 24 mm', reads: 'size' },
  { flag: 'thickness', reads: 'length' },
  { flag: 'axis', asks: 'How do the faces stand to one another?', example: '6h; none for a cast or one-sided piece', reads: 'axis' },
  { flag: 'made' },
  { flag: 'faces' },
  { flag: 'shape' },
  { flag: 'treatment', field: ['treatments'], isList: true },
  { flag: 'peculiarity', field: ['peculiarities'], isList: true },
  { flag: 'grade', asks: 'What condition is it in?', example: 'VF, or: not graded', reads: 'grade' },
  { flag: 'grade-scale' },
  { flag: 'graded-by' },
  { flag: 'problem', asks: 'Is there a problem with it?', example: 'cleaned, bent, tooled' },
  { flag: 'reference', field: ['references'], isList: true, asks: 'Which books describe it?', example: 'north 1018', reads: 'reference' },
  { flag: 'obverse-legend', field: ['obverse', 'legend'], asks: 'What stands on the obverse?', example: "+EDW R' ANGL' DNS hYB'", reads: 'legend' },
  { flag: 'obverse', field: ['obverse', 'design'], asks: 'What is shown on the obverse?', example: 'Crowned facing bust' },
  { flag: 'reverse-legend', field: ['reverse', 'legend'], asks: 'What stands on the reverse?', example: 'CIVI TAS EBO RACI', reads: 'legend' },
  { flag: 'reverse', field: ['reverse', 'design'], asks: 'What is shown on the reverse?', example: 'Long cross' },
  { flag: 'edge-legend', field: ['edge', 'legend'], reads: 'legend' },
  { flag: 'issuer' },
  { flag: 'status' },
  { flag: 'publish' },
  { flag: 'tag', field: ['tags'], isList: true },
  ...LEDGER_NAMES.map(privately),
]; // prettier-ignore

/** A column of the ledger as it is asked for; what happened is read as a date. */
function privately(flag: LedgerColumn): Question {
  const { asks, example, reads } = LEDGER_ROWS[flag];
  const said = reads === 'event' ? 'date' : reads;
  return {
    flag,
    isPrivate: true,
    example,
    ...(asks !== undefined && { asks }),
    ...(said !== undefined && { reads: said }),
  };
}

/** An answer as it is understood, in a sentence; a problem where it cannot be read. Nothing is said of plain words. */
export function readAloud({ reads }: Question, answer: string, consulted: Consulted, scale?: string): Outcome<string> {
  if (reads === undefined) return good('');
  if (reads === 'size') {
    const size = parseSize(answer);
    if (!size.ok) return size;
    const { value } = size;
    return good(
      value.shape === 'rectangle'
        ? `${value.height} mm high and ${value.width} mm wide.`
        : `${formatLength({ low: value.low, high: value.high })} across.`,
    );
  }
  const kind = kinds(consulted).find(({ name }) => name === reads);
  const read = kind?.read([answer], scale === undefined ? {} : { scale });
  if (read === undefined) return good('');
  return read.ok ? good(read.value.sentence) : read;
}
