import { formatMapping } from '../../catalogue/import/mapping/format-mapping.ts';
import type { Mapping } from '../../catalogue/import/mapping/mapping.ts';
import { EMPTY_MAPPING } from '../../catalogue/import/mapping/mapping.ts';
import { parseMapping } from '../../catalogue/import/mapping/parse-mapping.ts';
import type { Outcome } from '../../core/outcome.ts';
import { good, refuse } from '../../core/outcome.ts';
import type { Sheet } from '../../catalogue/sheets/sheet.ts';
import { readIfThere, writeSafely } from './write-safely.ts';

export type WantedMapping = {
  readonly sheet: Sheet;
  /** Where the mapping lies or will lie. */
  readonly at: string;
  readonly shown: string;
  /** Whether the keeper has named the file. */
  readonly isGiven: boolean;
};

/** The mapping that is there, or one suggested for the sheet and written where the keeper finds it. */
export async function mappingOf({
  at,
  shown,
  isGiven,
}: WantedMapping): Promise<Outcome<{ readonly mapping: Mapping; readonly shown: string; readonly isNew: boolean }>> {
  const text = await readIfThere(at);
  if (text !== null) {
    const read = parseMapping(text);
    return read.ok ? good({ mapping: read.value, shown, isNew: false }) : refuse(`${shown} · ${read.problem}`);
  }
  if (isGiven) return refuse(`There is no mapping ${shown}. Leave --mapping out, and one is suggested.`);
  await writeSafely(at, formatMapping(EMPTY_MAPPING));
  return good({ mapping: EMPTY_MAPPING, shown, isNew: true });
}
