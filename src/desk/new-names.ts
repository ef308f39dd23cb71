import type { List } from '../catalogue/fields/row.ts';
import type { Records } from '../catalogue/records.ts';
import { BLANKS } from '../catalogue/schema/fields.ts';
import type { FieldChange } from '../catalogue/write/edit-fields.ts';
import { formatListFile } from '../catalogue/write/write-piece.ts';
import { fileId, freeId } from '../core/file-id.ts';
import type { Written } from '../catalogue/yaml.ts';
import { nameOf } from './form/leaves.ts';
import type { Leaf, Posted } from './form/leaves.ts';

/** A file of a ruler, mint, denomination or book that is made on the way. */
export type NewName = { readonly file: string; readonly text: string };

type Meant = { readonly changes: readonly FieldChange[]; readonly made: readonly NewName[] };

/**
 * Names put into fields of names become the names of their files: `Edward I` is `edward-i`. A name that is in no list stays as it
 * is, and is told as a problem, unless the form says that its file is to be made (`mint.make`).
 */
export function namesMeant(
  changes: readonly FieldChange[],
  leaves: readonly Leaf[],
  posted: Posted,
  records: Records,
): Meant {
  const made: NewName[] = [];
  const taken = new Map<List, string[]>();
  const byName = new Map(leaves.map((leaf) => [nameOf(leaf), leaf.row]));
  const meant = changes.map((change): FieldChange => {
    const name = change.path.join('.');
    const list = byName.get(name)?.list;
    if (list === undefined || change.value === null) return change;
    const isMade = posted.get(`${name}.make`) === 'yes';
    const idFor = (said: string): string => {
      const known = idOf(list, said, records);
      if (known !== null || !isMade || list === 'pieces' || list === 'sets') return known ?? said;
      const names = [...records.named[list], ...(taken.get(list) ?? [])];
      const id = freeId(fileId(said), (one) => names.includes(one));
      taken.set(list, [...(taken.get(list) ?? []), id]);
      made.push({
        file: `${list}/${id}.yaml`,
        text: formatListFile(list, list === 'works' ? { title: said } : { name: said }),
      });
      return id;
    };
    const { value } = change;
    if (typeof value === 'string') return { ...change, value: idFor(value) };
    return Array.isArray(value)
      ? { ...change, value: (value as readonly Written[]).map((one) => (typeof one === 'string' ? idFor(one) : one)) }
      : change;
  });
  return { changes: meant, made };
}

/** The id of what is called so: by its id, its name or another of its names; null when nothing or more than one is. */
export function idOf(list: List, said: string, records: Records): string | null {
  const wanted = said.trim().toLowerCase();
  if (BLANKS.some((blank) => blank === wanted)) return wanted;
  if (records.named[list].includes(said.trim())) return said.trim();
  const found = namesIn(list, records).filter(({ names }) => names.some((name) => name.toLowerCase() === wanted));
  return found.length === 1 ? (found[0]?.id ?? null) : null;
}

/** Everything in a list, with what it is called. */
export function namesIn(
  list: List,
  records: Records,
): readonly { readonly id: string; readonly names: readonly string[] }[] {
  if (list === 'rulers')
    return records.rulers.map(({ id, fields }) => ({ id, names: [fields.name, ...fields['other-names']] }));
  if (list === 'mints')
    return records.mints.map(({ id, fields }) => ({
      id,
      names: [fields.name, ...fields.names.map(({ name }) => name)],
    }));
  if (list === 'denominations') return records.denominations.map(({ id, fields }) => ({ id, names: [fields.name] }));
  if (list === 'works')
    return records.works.map(({ id, fields }) => ({
      id,
      names: [fields.title, ...(fields.short === undefined ? [] : [fields.short])],
    }));
  if (list === 'sets') return records.sets.map(({ id, fields }) => ({ id, names: [fields.title] }));
  return records.pieces.map(({ id, fields }) => ({ id, names: [fields.title] }));
}
