import { checkLabel, checkTitle } from '../../core/cases/label-checks.ts';
import type { CabinetFolder } from '../files.ts';
import type { Records } from '../records.ts';
import { placesIn } from '../rules/place.ts';

/** What a judge would remark on in an exhibit: gentle, and never in the way of a build. */
export type ExhibitRemark = {
  /** The exhibit's file, as in a problem. */
  readonly file: string;
  /** Counted from 1; null when the whole exhibit is meant. */
  readonly line: number | null;
  readonly says: string;
  /** Where the rule is printed, or that it is our own judgement. */
  readonly source: string;
};

/** Every remark on every exhibit of a cabinet, in the order of their files and lines. */
export function exhibitRemarks(records: Records, folder: CabinetFolder | null): readonly ExhibitRemark[] {
  const place = folder === null ? null : placesIn(folder);
  return records.exhibits.flatMap(({ file, fields }): readonly ExhibitRemark[] => {
    const line = (...path: readonly (string | number)[]): number | null => place?.(file, path).line ?? null;
    const { width, text: points } = fields.label;
    return [
      ...checkTitle(fields.title).map(({ says, source }) => ({ file, line: line('title'), says, source })),
      ...fields.cases.flatMap(({ groups }, c) =>
        groups.flatMap(({ pieces }, g) =>
          pieces.flatMap((entry, p) =>
            'label' in entry && entry.label !== undefined
              ? checkLabel(entry.label, width?.high ?? 90, points ?? 18).map(({ says, source }) => ({
                  file,
                  line: line('cases', c, 'groups', g, 'pieces', p, 'label'),
                  says,
                  source,
                }))
              : [],
          ),
        ),
      ),
    ];
  });
}
