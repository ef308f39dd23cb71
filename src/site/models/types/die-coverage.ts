import type { TypeSeries } from '../../../catalogue/types/series.ts';
import { coverageInterval } from '../../../core/dies/estimate.ts';
import { dieCounts, issuesOf } from '../../../core/dies/links.ts';
import type { DiePair } from '../../../core/dies/links.ts';
import { typesWords } from '../../words/types.ts';

/** Fewer coins than this say nothing of the dies that are missing. */
const FEW = 10;

/** Coverage by issue: dies of issues years apart are of no one sample, so it is never told of a whole series. */
export function coverageOf(series: TypeSeries): readonly string[] {
  const issues = issuesOf(series.pairs).map(({ types, pairs }) => ({
    pairs,
    name: typesWords.issue(types.map((type) => series.types.get(type)?.label ?? type)),
    coins: dieCounts(pairs, 'obverse')?.n ?? 0,
  }));
  const few = issues.filter(({ coins }) => coins > 0 && coins < FEW);
  return [
    ...issues.filter(({ coins }) => coins >= FEW).flatMap(({ name, pairs }) => coverageOfIssue(name, pairs)),
    ...(few.length === 0 ? [] : [typesWords.fewCoins(few.map(({ name }) => name), FEW)]),
  ];
} // prettier-ignore

function coverageOfIssue(name: string, pairs: readonly DiePair[]): readonly string[] {
  return (['obverse', 'reverse'] as const).flatMap((side) => {
    const counts = dieCounts(pairs, side);
    if (counts === null) return [];
    const face = typesWords.faceOf[side];
    // With no die known from one coin alone, or with all, the formula gives all or nothing and no interval.
    if (counts.d1 === 0) return [typesWords.noLoneDie(name, face, counts.n, counts.d)];
    if (counts.d1 === counts.n) return [typesWords.loneDies(name, face, counts.n)];
    const { coverage, low, high } = coverageInterval(counts);
    const shares = [coverage, low, high].map((value) => `${(value * 100).toFixed(0)} per cent`);
    return [typesWords.coverage(name, face, shares, counts.n, counts.d)];
  });
}
