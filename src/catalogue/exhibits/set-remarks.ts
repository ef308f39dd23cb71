import { completenessIn } from '../../core/cases/claims.ts';
import type { ReadExhibit } from './exhibit-texts.ts';
import type { Remark } from './remark.ts';

/** How far a set has come by its own rule; excused places are not in `of`. */
export type SetCount = {
  readonly id: string;
  readonly title: string;
  readonly of: number;
  readonly filled: { readonly low: number; readonly high: number };
};

const SOURCE = 'the rule of the set itself';

/** What a text says of how complete a set is, held against what the set's own rule makes it. */
export function setRemarks({ exhibit, texts }: ReadExhibit, counts: readonly SetCount[]): readonly Remark[] {
  if (counts.length === 0) return [];
  const named = counts.filter(({ id }) => exhibit.fields.sets.includes(id));
  return texts.flatMap(({ words, path }): readonly Remark[] => {
    const meant = [...counts.filter(({ title }) => words.includes(title)), ...named];
    return completenessIn(words).flatMap((said): readonly Remark[] => {
      if (meant.length === 0) {
        // A number of pieces in a case needs no set behind it; a complete one does.
        return said.is === 'whole'
          ? [
              {
                path,
                says: `“${said.says}” names no set that could be held against it. Add a line sets: with the name of a file in sets/.`,
                source: SOURCE,
              },
            ]
          : [];
      }
      if (meant.some((set) => agrees(said, set))) return [];
      if (said.is === 'counted' && !meant.some(({ of }) => of === said.of) && meant.length > 1) return [];
      const [set] = meant;
      if (set === undefined) return [];
      const count =
        set.filled.low === set.filled.high
          ? String(set.filled.low)
          : `${String(set.filled.low)} to ${String(set.filled.high)}`;
      return [
        {
          path,
          says: `The text says “${said.says}”, and the set “${set.title}” has ${count} of ${String(set.of)}. Write ${count} of ${String(set.of)}.`,
          source: SOURCE,
        },
      ];
    });
  });
}

function agrees(said: ReturnType<typeof completenessIn>[number], { of, filled }: SetCount): boolean {
  return said.is === 'whole' ? filled.low === of : said.of === of && said.low >= filled.low && said.high <= filled.high;
}
