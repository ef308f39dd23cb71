import { checkTitle, checkType, checkWords } from '../../core/cases/label-checks.ts';
import { CARD_MARGIN } from '../../core/cases/card.ts';
import { slideNotes } from '../../core/cases/holder-checks.ts';
import { layCase } from '../../core/cases/plan-case.ts';
import type { Catalogue } from '../catalogue.ts';
import type { CabinetFolder } from '../files.ts';
import { linkRecords } from '../link.ts';
import type { Records } from '../records.ts';
import { placesIn } from '../rules/rule.ts';
import { countRemarks, lastNumberRemarks, scopeRemarks } from './contents-remarks.ts';
import type { ReadExhibit } from './exhibit-texts.ts';
import { readExhibit } from './exhibit-texts.ts';
import { styleOf } from './label-style.ts';
import { doubtRemarks } from './label-doubts.ts';
import { nameRemarks } from './name-remarks.ts';
import type { ExhibitRemark, Remark } from './remark.ts';
import { claimRemarks, copyRemarks, measureRemarks, scaleRemarks, sourceRemarks } from './source-remarks.ts';
import { completenessIn } from '../../core/cases/claims.ts';

/**
 * Every remark on every exhibit of a cabinet, in the order of their files and lines. `counts` says how far the sets have come,
 * so that what a text says of them can be held against it; without it nothing is said of sets.
 */
export function exhibitRemarks(
  records: Records,
  folder: CabinetFolder | null,
  counts: readonly SetCount[] = [],
): readonly ExhibitRemark[] {
  const place = folder === null ? null : placesIn(folder);
  const catalogue = linkRecords(records);
  return catalogue.exhibits.flatMap((exhibit) => {
    const { file } = exhibit;
    const read = readExhibit(exhibit, catalogue);
    const lineOf = (path: Remark['path']): number | null => {
      if (path === null || place === null) return null;
      return (path.length === 0 ? place(file, [], exhibit.story.trim().slice(0, 40)) : place(file, path)).line ?? null;
    };
    return remarksOn(read, catalogue, counts)
      .map(({ path, says, source }) => ({ file, line: lineOf(path), says, source }))
      .sort((a, b) => (a.line ?? 0) - (b.line ?? 0));
  });
}

function remarksOn(read: ReadExhibit, catalogue: Catalogue, counts: readonly SetCount[]): readonly Remark[] {
  return [
    ...readingRemarks(read),
    ...caseRemarks(read),
    ...measureRemarks(read),
    ...scaleRemarks(read),
    ...sourceRemarks(read, catalogue),
    ...claimRemarks(read, catalogue),
    ...copyRemarks(read),
    ...scopeRemarks(read, catalogue),
    ...countRemarks(read, catalogue),
    ...lastNumberRemarks(read, catalogue),
    ...setRemarks(read, counts),
    ...nameRemarks(read, catalogue),
    ...doubtRemarks(read, catalogue),
  ];
}

/** How its texts read: their length, the length of their sentences and lines, the size of their type. */
function readingRemarks({ exhibit, texts }: ReadExhibit): readonly Remark[] {
  const { width, points } = styleOf(exhibit.fields.label);
  const type = checkType(width - 2 * CARD_MARGIN, points).map((remark) => ({ ...remark, path: ['label'] }));
  const words = texts.flatMap(({ is, words: says, path }) => {
    const remarks =
      is === 'title' || is === 'heading'
        ? checkTitle(says)
        : checkWords(says, is === 'scope' || is === 'research' ? 'text' : is);
    return remarks.map((remark) => ({ ...remark, path }));
  });
  const missing = [
    ...(exhibit.fields.scope === undefined
      ? [
          {
            path: null,
            says: 'The exhibit does not say what it shows and what it leaves out. Add a line scope:.',
            source: OURS,
          },
        ]
      : []),
    ...(exhibit.fields.research === undefined
      ? [
          {
            path: null,
            says: 'The exhibit does not say what in it is your own research, which judges look for. Add a line research:, or write research: none.',
            source: PRACTICE,
          },
        ]
      : []),
    ...(exhibit.story.trim() === ''
      ? [
          {
            path: null,
            says: 'The exhibit has no statement. Write one below the second line ---, 20 to 300 words.',
            source: SERRELL,
          },
        ]
      : []),
  ];
  return [...missing, ...type, ...words];
}

const PRACTICE = 'common practice: originality and research are on the score sheets of clubs';
const OURS = 'our own judgement';
const SERRELL = 'B. Serrell, Exhibit Labels, 2nd ed.';
const AT_SIZE = 'measured: laid out at true size';

/** What does not fit in its cases, and what would make it fit. */
function caseRemarks({ exhibit, cases }: ReadExhibit): readonly Remark[] {
  const style = styleOf(exhibit.fields.label);
  return cases.flatMap((one, c): readonly Remark[] => {
    const { misfits, whyKey } = layCase(one, style);
    return [
      ...misfits.map(({ says, piece }) => ({ path: spotOf(exhibit.fields.cases, c, piece), says, source: AT_SIZE })),
      ...slideNotes(one).map((says) => ({ path: ['cases', c], says, source: AT_SIZE })),
      ...(whyKey === null ? [] : [{ path: ['cases', c], says: whyKey, source: AT_SIZE }]),
    ];
  });
}

/** The way to the piece in that case, or to the case. */
function spotOf(
  cases: ReadExhibit['exhibit']['fields']['cases'],
  c: number,
  piece: string | null,
): readonly (string | number)[] {
  for (const [g, group] of (cases[c]?.groups ?? []).entries()) {
    const p = group.pieces.findIndex((entry) => entry.piece === piece);
    if (p !== -1) return ['cases', c, 'groups', g, 'pieces', p];
  }
  return ['cases', c];
}

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
