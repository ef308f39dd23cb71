import type { Interval } from '../eras/era-scheme.ts';
import { yearsInWords } from '../eras/years-in-words.ts';
import { FACT_WORDS, folded } from './facts.ts';
import type { Facts, Stated } from './facts.ts';
import type { SetPiece } from './set-piece.ts';
import type { Fact, Where, WhereFacts } from './set-rule.ts';

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

/** A rule made ready for asking many pieces: its values folded. */
export type Asked = {
  readonly facts: readonly Condition[];
  readonly not: readonly Condition[];
  readonly date: Interval | undefined;
};
type Condition = readonly [Fact, readonly string[]];

export function askedOf(where: Where): Asked {
  const fold = ([fact, values]: Condition): Condition => [fact, values.map(folded)];
  return { facts: conditions(where).map(fold), not: conditions(where.not ?? {}).map(fold), date: where.date };
}

/** What a piece says to every condition of a rule at once: the worst of its answers. */
export function answerWhere(piece: SetPiece, facts: Facts, asked: Asked): Answer {
  let answer = YES;
  for (const [fact, values] of asked.facts) {
    const to = answerFact(facts[fact], fact, values);
    if (to.verdict === 'no') return NO;
    answer = both(answer, to);
  }
  if (asked.date) answer = both(answer, answerDate(piece, asked.date));
  for (const [fact, values] of asked.not) answer = both(answer, answerNot(facts[fact], fact, values));
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
export function conditions(where: WhereFacts): readonly Condition[] {
  return FACTS.flatMap((fact): Condition[] => {
    const values = where[fact];
    return values === undefined ? [] : [[fact, values]];
  });
}

const FACTS: readonly Fact[] = [
  'mint', 'ruler', 'struck-for', 'denomination', 'references', 'die', 'kind', 'issuer', 'area', 'metal', 'tag', 'shape',
  'made', 'realm',
]; // prettier-ignore

function answerFact(stated: Stated, fact: Fact, asked: readonly string[]): Answer {
  const name = FACT_WORDS[fact];
  if (asked.some((value) => stated.values.has(value))) {
    const met = { ...MET, meetsSome: fact !== 'kind' };
    return stated.sure === 'certain'
      ? met
      : { ...met, verdict: 'maybe', because: [`its ${name} is only ${stated.sure}`] };
  }
  if (asked.some((value) => stated.near.has(value))) {
    return { ...MET, verdict: 'maybe', because: ['its reference is given only as near (cf. or var.)'] };
  }
  if (stated.values.size > 0 || fact === 'tag') return NO;
  return { verdict: 'unrecorded', because: [`its ${name} is not recorded`], meetsSome: false };
}

/** A piece without an issuer or a tag has none; without a mint, a ruler, a metal it has one that nobody wrote down. */
function answerNot(stated: Stated, fact: Fact, asked: readonly string[]): Answer {
  const name = FACT_WORDS[fact];
  const named = asked.some((value) => stated.values.has(value));
  if (stated.sure !== 'certain') return { ...YES, verdict: 'maybe', because: [`its ${name} is only ${stated.sure}`] };
  if (named) return NO;
  const hasOne = fact === 'mint' || fact === 'ruler' || fact === 'metal' || fact === 'denomination';
  if (stated.values.size > 0 || !hasOne) return YES;
  return { ...YES, verdict: 'maybe', because: [`its ${name} is not recorded`] };
}

function answerDate(piece: SetPiece, asked: Interval): Answer {
  const hull = piece.interval;
  if (hull === null) return { verdict: 'unrecorded', because: ['its date is not recorded'], meetsSome: false };
  const spans = piece.years?.map(([low, high]) => ({ low, high })) ?? [hull];
  if (!spans.some(({ low, high }) => low <= asked.high && asked.low <= high)) return NO;
  const because: string[] = [];
  if (spans.some(({ low, high }) => low < asked.low || high > asked.high)) {
    because.push(`its date, ${yearsInWords(hull)}, lies only partly in ${yearsInWords(asked)}`);
  }
  const sure = piece.sure['date'] ?? 'certain';
  if (sure !== 'certain') because.push(`its date is only ${sure}`);
  return { ...MET, verdict: because.length === 0 ? 'yes' : 'maybe', because };
}
