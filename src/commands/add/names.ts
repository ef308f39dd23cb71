import { nearestName } from '../../catalogue/nearest.ts';
import type { Records } from '../../catalogue/records.ts';
import { BLANKS } from '../../catalogue/schema/fields.ts';
import { formatListFile } from '../../catalogue/write/write-piece.ts';
import type { WrittenFields } from '../../catalogue/write/write-piece.ts';
import type { Outcome } from '../../core/outcome.ts';
import { good, refuse } from '../../core/outcome.ts';
import type { NewFile } from './new-piece.ts';
import { newId } from './new-piece.ts';

/** The lists a piece names things in. */
export const LISTED = { ruler: 'rulers', mint: 'mints', denomination: 'denominations' } as const;
export type Listed = keyof typeof LISTED;

/** A name as a file's id: of a file that is there, or of one that is made now. */
export type FoundName = { readonly id: string; readonly made: NewFile | null };

/** The id of what is called so: by its id, its name or another of its names; null when nothing is. */
export function idOf(listed: Listed, said: string, records: Records): string | null {
  const wanted = said.trim().toLowerCase();
  if (BLANKS.some((blank) => blank === wanted)) return wanted;
  const found = records[LISTED[listed]].find(({ id, fields }) =>
    [
      id,
      fields.name,
      ...('other-names' in fields ? fields['other-names'] : []),
      ...('names' in fields ? fields.names.map(({ name }) => name) : []),
    ].some((name) => name.toLowerCase() === wanted),
  );
  return found?.id ?? null;
}

/** Every name of a list. */
export function namesIn(listed: Listed, records: Records): readonly string[] {
  return records[LISTED[listed]].flatMap(({ fields }) => [
    fields.name,
    ...('other-names' in fields ? fields['other-names'] : []),
  ]);
}

/** A file for what is in no list yet. Of a ruler the realm and the reign must be known. */
export function newName(listed: Listed, said: string, about: WrittenFields, records: Records): FoundName {
  const kind = LISTED[listed];
  const id = newId(said, records.named[kind]);
  return { id, made: { file: `${kind}/${id}.yaml`, text: formatListFile(kind, { name: said.trim(), ...about }) } };
}

/** What to write when a name is in no list. */
export function unknownName(listed: Listed, said: string, records: Records): Outcome<never> {
  const known = records[LISTED[listed]].flatMap(({ id, fields }) => [id, fields.name]);
  const near = nearestName(said, known);
  const anew = {
    ruler: '--realm England --reign 1216/1272',
    mint: '--new-mint',
    denomination: '--new-denomination',
  };
  const meant =
    near === null ? '' : ` Write --${listed} ${/\s/.test(near) ? `"${near}"` : near}, or, if it is another,`;
  return refuse(
    `There is no ${listed} "${said}" in this cabinet.${meant === '' ? ' To make one now,' : meant} add ${anew[listed]}.`,
  );
}

/** A reign from `1216/1272`, `1216-1272` or `1216 to 1272`. */
export function reignFrom(text: string): Outcome<{ readonly from: string; readonly to: string }> {
  const [, from, to] = /^\s*(.+?)\s*(?:\/|\bto\b|–|(?<=\d)\s?-\s?(?=\d))\s*(.+?)\s*$/.exec(text) ?? [];
  if (from === undefined || to === undefined)
    return refuse(`A reign has a beginning and an end; this says "${text}". Write 1216/1272.`);
  return good({ from, to });
}
