import { yearsInWords } from '../eras/years-in-words.ts';
import { conditions } from './answer-where.ts';
import { FACT_WORDS, folded, parseAskedDie } from './facts.ts';
import type { Fact, Where, WhereFacts } from './set-rule.ts';

/** Facts of which a piece has one only, so that two different values exclude each other. */
const SINGLE: readonly Fact[] = ['kind', 'issuer', 'mint', 'area', 'denomination', 'metal', 'shape', 'made'];

/** Why no piece can be both what the set and what one of its places asks; null when one can. Half a sentence, with its remedy. */
export function clashOf(set: Where, place: Where): string | null {
  return (
    apart(set, place) ??
    shutOut(place, set.not, 'the whole set shuts out') ??
    shutOut(place, place.not, 'the place itself shuts out') ??
    shutOut(set, place.not, 'the place shuts out') ??
    neverTogether(set, place)
  );
}

/** Why a rule cannot be asked: it names a die without its face. Half a sentence, with its remedy; null when it can. */
export function namelessDie(where: Where): string | null {
  for (const die of [...(where.die ?? []), ...(where.not?.die ?? [])]) {
    const asked = parseAskedDie(die);
    if (!asked.ok) return `${asked.problem.charAt(0).toLowerCase()}${asked.problem.slice(1)}`;
  }
  return null;
}

/** Why no piece can be what a rule asks by itself; null when one can. */
export function clashWithin(where: Where): string | null {
  return shutOut(where, where.not, 'the same rule shuts out');
}

function apart(set: WhereFacts, place: WhereFacts): string | null {
  for (const [fact, values] of conditions(place)) {
    const ofSet = set[fact]?.map(folded);
    if (!ofSet || !SINGLE.includes(fact) || values.map(folded).some((value) => ofSet.includes(value))) continue;
    return `the ${FACT_WORDS[fact]} is to be ${values.join(' or ')}, and the whole set asks for ${set[fact]?.join(' or ') ?? ''}. Change one of the two.`;
  }
  return null;
}

/** Every value that is asked for is barred. */
function shutOut(asked: WhereFacts, not: WhereFacts | undefined, by: string): string | null {
  for (const [fact, values] of conditions(asked)) {
    const barred = not?.[fact]?.map(folded);
    if (!barred || !values.map(folded).every((value) => barred.includes(value))) continue;
    return `the ${FACT_WORDS[fact]} is to be ${values.join(' or ')}, which ${by} under not:. Change one of the two.`;
  }
  return null;
}

function neverTogether(set: Where, place: Where): string | null {
  if (!set.date || !place.date || (place.date.high >= set.date.low && set.date.high >= place.date.low)) return null;
  return `the date is ${yearsInWords(place.date)}, and the whole set asks for ${yearsInWords(set.date)}. Change one of the two.`;
}
