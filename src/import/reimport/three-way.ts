import { isSame } from '../../catalogue/write/edit-fields.ts';
import type { Written } from '../../catalogue/yaml.ts';
import type { FlatFacts } from './flat-facts.ts';

/** A field that was changed both in the sheet and by hand; the file is left as it is until somebody decides. */
export type Conflict = {
  readonly path: string;
  readonly was: Written | null;
  readonly inSheet: Written;
  readonly inFile: Written | null;
};

/** Whose word counts where both have changed; null leaves it and tells of it. */
export type Preference = 'sheet' | 'file' | null;

export type Merged = {
  readonly changes: readonly { readonly path: string; readonly value: Written | null }[];
  readonly conflicts: readonly Conflict[];
  /** Fields that the sheet has no longer; they stay in the file. */
  readonly emptied: readonly string[];
  /** What counts as imported from now on. */
  readonly base: FlatFacts;
};

/**
 * What a sheet changes in a file since it was last imported: a field that the sheet has changed and no hand has. `base` is what was
 * imported then, `sheet` what the sheet says now, `file` what the file says now.
 */
export function mergeThreeWays(base: FlatFacts, sheet: FlatFacts, file: FlatFacts, prefer: Preference): Merged {
  const changes: { path: string; value: Written | null }[] = [];
  const conflicts: Conflict[] = [];
  const emptied: string[] = [];
  const next = new Map(base);
  for (const path of new Set([...base.keys(), ...sheet.keys()])) {
    const was = base.get(path);
    const now = sheet.get(path);
    const held = file.get(path);
    if (isSame(was, now)) continue;
    if (now === undefined) {
      // What could not be read and now can be needs no keeping beside its field.
      const isRead = path.startsWith('as-written.') && isSame(held, was);
      if (isRead) changes.push({ path, value: null });
      else if (held !== undefined) emptied.push(path);
      if (isRead || held === undefined) next.delete(path);
    } else if (isSame(held, now) || isSame(held, was) || prefer === 'sheet') {
      if (!isSame(held, now)) changes.push({ path, value: now });
      next.set(path, now);
    } else if (prefer === 'file') next.set(path, now);
    else conflicts.push({ path, was: was ?? null, inSheet: now, inFile: held ?? null });
  }
  return { changes, conflicts, emptied, base: next };
}
