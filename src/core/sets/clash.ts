import { yearsInWords } from '../eras/years-in-words.ts';
import { conditions } from './answer-where.ts';
import { FACT_WORDS, folded } from './facts.ts';
import type { Fact, Where } from './set-rule.ts';

/** Facts of which a piece has one only, so that two different values exclude each other. */
const SINGLE: readonly Fact[] = ['kind', 'issuer', 'mint', 'area', 'denomination', 'metal', 'shape', 'made'];

/** Why no piece can be both what the set and what one of its places asks; null when one can. Half a sentence, with its remedy. */
export function clashOf(set: Where, place: Where): string | null {
  for (const [fact, values] of conditions(place)) {
    const wanted = values.map(folded);
    const ofSet = set[fact]?.map(folded);
    if (ofSet && SINGLE.includes(fact) && !wanted.some((value) => ofSet.includes(value))) {
      return `its ${FACT_WORDS[fact]} is to be ${values.join(' or ')}, and the whole set asks for ${set[fact]?.join(' or ') ?? ''}. Change one of the two.`;
    }
    const barred = set.not?.[fact]?.map(folded);
    if (barred && wanted.every((value) => barred.includes(value))) {
      return `its ${FACT_WORDS[fact]} is to be ${values.join(' or ')}, which the whole set shuts out under not:. Change one of the two.`;
    }
  }
  if (set.date && place.date && (place.date.high < set.date.low || set.date.high < place.date.low)) {
    return `its date is ${yearsInWords(place.date)}, and the whole set asks for ${yearsInWords(set.date)}. Change one of the two.`;
  }
  return null;
}
