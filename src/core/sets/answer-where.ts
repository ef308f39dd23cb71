import { yearsInWords } from '../eras/years-in-words.ts';
import { dayFromCivil } from '../calendars/civil.ts';
import { parseReference } from '../references/parse-reference.ts';
import { isEntry, isOtherCase } from '../references/reference.ts';
import type { Reference } from '../references/reference.ts';
import { FACT_WORDS, folded, parseAskedDie } from './facts.ts';
import type { AskedDie, Facts, StatedDie } from './facts.ts';
import type { SetPiece, TimeSpan } from './set-piece.ts';
import type { Fact, Lists, SetRule, Where, WhereFacts } from './set-rule.ts';

/** Whether a piece is what a rule asks for. `unrecorded`: it does not say; `maybe`: it says, but not for certain. */
export type Answer = {
  readonly verdict: 'yes' | 'maybe' | 'unrecorded' | 'no';
  /** Why it is not a plain yes; clauses without a full stop. */
  readonly because: readonly string[];
  /** Whether it meets at least one thing that was asked, its kind aside, so that being left out is worth a word. */
  readonly meetsSome: boolean;
};

const YES: Answer = { verdict: 'yes', because: [], meetsSome: false };
const NO: Answer = { verdict: 'no', because: [], meetsSome: false };
const MET: Answer = { verdict: 'yes', because: [], meetsSome: true };
const WORST_LAST = ['yes', 'maybe', 'unrecorded', 'no'] as const;

/** One fact a rule names, its values ready for comparing. */
type Condition = {
  readonly fact: Fact;
  readonly values: readonly string[];
  readonly references: readonly Reference[];
  readonly dies: readonly AskedDie[];
};

/** A rule made ready for asking many pieces. */
export type Asked = {
  readonly facts: readonly Condition[];
  readonly not: readonly Condition[];
  readonly date: TimeSpan | undefined;
  readonly dates: 'as-made' | 'as-dated';
};

export function askedOf(where: Where, { dates = 'as-made' }: Pick<SetRule, 'dates'>, { works = [] }: Lists): Asked {
  const ready = (facts: WhereFacts): readonly Condition[] =>
    conditions(facts).map(([fact, values]) => ({
      fact,
      values: values.map(folded),
      references: fact === 'references' ? values.flatMap((text) => askedReference(text, works)) : [],
      dies:
        fact !== 'die'
          ? []
          : values.map(parseAskedDie).flatMap((die): readonly AskedDie[] => (die.ok ? [die.value] : [])),
    }));
  return { facts: ready(where), not: ready(where.not ?? {}), date: where.date, dates };
}

function askedReference(text: string, works: NonNullable<Lists['works']>): readonly Reference[] {
  const listed = parseReference(text, works);
  const read = listed.ok ? listed : parseReference(text, []);
  return read.ok ? [read.value] : [];
}

/** What a piece says to every condition of a rule at once: the worst of its answers. */
export function answerWhere(piece: SetPiece, facts: Facts, asked: Asked): Answer {
  let answer = YES;
  for (const condition of asked.facts) {
    const to = answerFact(matchOf(facts, condition), condition.fact);
    if (to.verdict === 'no') return NO;
    answer = both(answer, to);
  }
  if (asked.date) answer = both(answer, answerDate(piece, asked.date, asked.dates));
  for (const condition of asked.not) answer = both(answer, answerNot(facts, condition));
  return answer.verdict === 'no' ? NO : answer;
}

export function both(one: Answer, other: Answer): Answer {
  const worse = Math.max(WORST_LAST.indexOf(one.verdict), WORST_LAST.indexOf(other.verdict));
  return {
    verdict: WORST_LAST[worse] ?? 'no',
    because: [...one.because, ...other.because.filter((clause) => !one.because.includes(clause))],
    meetsSome: one.meetsSome || other.meetsSome,
  };
}

/** The facts a rule names, with their values; its date and its `not` are read apart. */
export function conditions(where: WhereFacts): readonly (readonly [Fact, readonly string[]])[] {
  return FACTS.flatMap((fact): (readonly [Fact, readonly string[]])[] => {
    const values = where[fact];
    return values === undefined ? [] : [[fact, values]];
  });
}

const FACTS: readonly Fact[] = [
  'mint', 'ruler', 'struck-for', 'denomination', 'references', 'die', 'kind', 'issuer', 'area', 'metal', 'tag', 'shape',
  'made', 'realm', 'type', 'dynasty',
]; // prettier-ignore

/** Whether what a piece states is among what is asked; the clause says why it is not a plain yes or no. */
type Match = { readonly is: Answer['verdict']; readonly clause?: string };

function matchOf(facts: Facts, { fact, values, references, dies }: Condition): Match {
  if (fact === 'references') return matchReferences(facts, references);
  if (fact === 'die') return bestOf(dies.map((die) => matchDie(facts.dies, die)));
  const { values: stated, maybe, sure, blank } = facts.stated[fact];
  const name = FACT_WORDS[fact];
  if (values.some((value) => stated.has(value)))
    return sure === 'certain' ? { is: 'yes' } : { is: 'maybe', clause: `the ${name} is only ${sure}` };
  if (values.some((value) => maybe?.has(value)))
    return { is: 'maybe', clause: `the ${name} is known no nearer than that` };
  if (stated.size > 0 || blank === 'none') return { is: 'no' };
  return { is: 'unrecorded', clause: `the ${name} is ${blank}` };
}

function matchReferences({ references, referencesSure }: Facts, asked: readonly Reference[]): Match {
  return bestOf(
    asked.map((one): Match => {
      const inBook = references.filter(({ work }) => work === one.work);
      if (inBook.length === 0) return { is: 'unrecorded', clause: 'the reference is not recorded' };
      return bestOf(
        inBook.map((stated): Match => {
          const is = isEntry(stated, one);
          if (is === 'no') return { is: 'no' };
          if (is === 'maybe') return { is: 'maybe', clause: whyNear(stated, one) };
          if (referencesSure === 'certain') return { is: 'yes' };
          return { is: 'maybe', clause: `the reference is only ${referencesSure}` };
        }),
      );
    }),
  );
}

function whyNear(stated: Facts['references'][number], asked: Reference): string {
  const { relation, doubtful, to, mayBe, disputed } = stated;
  if (isOtherCase(stated, asked)) return `the number is ${stated.number}, and ${asked.number} may be another`;
  if (disputed === true) return 'the concordances contradict themselves on that number';
  if (mayBe === true) return 'the type is known no nearer than that';
  if (relation === 'cf.' || relation === 'var.') return 'the reference is given only as near (cf. or var.)';
  if (doubtful === true) return 'the reference is given with a question mark';
  return to === undefined ? 'the edition of the reference is not said' : 'the reference covers several numbers';
}

function matchDie({ obverse, reverse }: Facts['dies'], asked: AskedDie): Match {
  if (asked.face !== 'pair') {
    const stated = asked.face === 'obverse' ? obverse : reverse;
    if (stated === null) return { is: 'unrecorded', clause: `the ${asked.face} die is not recorded` };
    return stated.die === asked.die ? surely(asked.face, stated) : { is: 'no' };
  }
  if (obverse !== null && reverse !== null) {
    if (`${obverse.die}-${reverse.die}` !== asked.die) return { is: 'no' };
    return obverse.sure === 'certain' ? surely('reverse', reverse) : surely('obverse', obverse);
  }
  const fits = obverse !== null ? asked.die.startsWith(`${obverse.die}-`) : reverse !== null && asked.die.endsWith(`-${reverse.die}`);
  if (!fits && (obverse ?? reverse) !== null) return { is: 'no' };
  return { is: 'unrecorded', clause: `the ${obverse === null ? 'obverse' : 'reverse'} die is not recorded` };
} // prettier-ignore

function surely(face: string, { sure }: StatedDie): Match {
  return sure === 'certain' ? { is: 'yes' } : { is: 'maybe', clause: `the ${face} die is only ${sure}` };
}

function bestOf(matches: readonly Match[]): Match {
  return matches.toSorted((a, b) => WORST_LAST.indexOf(a.is) - WORST_LAST.indexOf(b.is))[0] ?? { is: 'no' };
}

function answerFact({ is, clause }: Match, fact: Fact): Answer {
  if (is === 'no') return NO;
  const because = clause === undefined ? [] : [clause];
  return { verdict: is, because, meetsSome: is !== 'unrecorded' && fact !== 'kind' };
}

/** What must not be so. A piece that does not say, or is not sure of what it says, may be what is shut out: it is possible. */
function answerNot(facts: Facts, condition: Condition): Answer {
  const { is, clause } = matchOf(facts, condition);
  if (is === 'yes') return NO;
  const { fact } = condition;
  const sure = fact === 'references' || fact === 'die' ? 'certain' : facts.stated[fact].sure;
  if (is === 'no' && sure === 'certain') return YES;
  const because = clause ?? `the ${FACT_WORDS[fact]} is only ${sure}`;
  return { ...YES, verdict: 'maybe', because: [because] };
}

function answerDate(piece: SetPiece, asked: TimeSpan, dates: Asked['dates']): Answer {
  const onPiece = dates === 'as-dated' ? piece.dated : undefined;
  if (onPiece === 'unreadable')
    return { verdict: 'unrecorded', because: ['the date on the piece is not understood here'], meetsSome: false };
  const made = onPiece ?? piece.interval;
  const called = onPiece === undefined ? 'date' : 'date on the piece';
  if (made === null) {
    const blank = piece.blanks?.['date'] ?? 'not recorded';
    return { verdict: 'unrecorded', because: [`the date is ${blank === 'none' ? 'not recorded' : blank}`], meetsSome: false };
  }
  const inside = insideOf(made, asked);
  if (inside === 'no') return NO;
  const because: string[] = [];
  if (inside === 'partly') because.push(`the ${called}, ${yearsInWords(made)}, lies only partly in ${yearsInWords(asked)}`);
  const sure = onPiece === undefined ? (piece.sure['date'] ?? 'certain') : 'certain';
  if (sure !== 'certain') because.push(`the date is only ${sure}`);
  return { ...MET, verdict: because.length === 0 ? 'yes' : 'maybe', because };
} // prettier-ignore

/** Where a time lies in another: by days where both are known to the day, else by years. */
function insideOf(made: TimeSpan, asked: TimeSpan): 'wholly' | 'partly' | 'no' {
  const byDay = made.days !== undefined || asked.days !== undefined;
  const limits = byDay ? daysOf(asked) : asked;
  const spans = made.alternatives ?? [made];
  const ends = spans.map((span) => (byDay ? daysOf(made.alternatives === undefined ? made : span) : span));
  const meeting = ends.filter(({ low, high }) => low <= limits.high && limits.low <= high);
  if (meeting.length === 0) return 'no';
  const within = ends.every(({ low, high }) => low >= limits.low && high <= limits.high);
  return within ? 'wholly' : 'partly';
}

/** The first and last day as day numbers; of plain years, 1 January and 31 December. */
function daysOf({ low, high, days }: TimeSpan): { readonly low: number; readonly high: number } {
  if (days !== undefined) return { low: days[0], high: days[1] };
  return {
    low: Number.isFinite(low) ? dayFromCivil({ year: low, month: 1, day: 1 }) : low,
    high: Number.isFinite(high) ? dayFromCivil({ year: high, month: 12, day: 31 }) : high,
  };
}
