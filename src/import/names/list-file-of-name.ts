import type { ListKind, WrittenFields } from '../../catalogue/write/write-piece.ts';
import { formatListFile } from '../../catalogue/write/write-piece.ts';
import type { NewName } from './name.ts';
import { reignIn } from './reign.ts';

/** A file of the cabinet that is to be written. */
export type NewFile = { readonly file: string; readonly text: string };

/** The file of a name that the sheet brings: its name, other spellings, and the reign if the sheet says one; nothing besides. */
export function newListFile(kind: ListKind, { id, name, otherNames, years, realm }: NewName): NewFile {
  return { file: `${kind}/${id}.yaml`, text: formatListFile(kind, fieldsOf(kind, name, otherNames, years, realm)) };
}

function fieldsOf(
  kind: ListKind,
  name: string,
  others: readonly string[],
  years: string | null,
  realm: string | undefined,
): WrittenFields {
  if (kind === 'works') return { title: name, short: name };
  if (kind === 'mints')
    return {
      name,
      ...(others.length === 0 ? {} : { names: others.map((other) => ({ name: other })) }),
      ...(realm === undefined ? {} : { area: realm }),
    };
  if (kind === 'denominations') return { name };
  const reign = years === null ? null : reignIn(years);
  return {
    name,
    ...(others.length === 0 ? {} : { 'other-names': others }),
    ...(realm === undefined ? {} : { realm }),
    ...(reign === null ? {} : { reigns: [{ from: reign.from, to: reign.to }] }),
  };
}
