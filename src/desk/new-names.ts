import type { FieldFacts, List } from '../catalogue/fields/row.ts';
import type { Records } from '../catalogue/records.ts';
import { BLANKS } from '../catalogue/schema/fields.ts';
import type { FieldChange } from '../catalogue/write/edit-fields.ts';
import { formatListFile } from '../catalogue/write/write-piece.ts';
import { fileId, freeId } from '../core/file-id.ts';
import type { Written } from '../catalogue/yaml.ts';
import { isFields } from './form/leaves.ts';
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
  const idFor = (list: List, said: string, isMade: boolean): string => {
    const known = idOf(list, said, records);
    if (known !== null || !isMade || list === 'pieces' || list === 'sets') return known ?? said;
    const names = [...records.named[list], ...(taken.get(list) ?? [])];
    const id = freeId(fileId(said), (one) => names.includes(one));
    taken.set(list, [...(taken.get(list) ?? []), id]);
    const text = formatListFile(list, list === 'works' ? { title: said } : { name: said });
    made.push({ file: `${list}/${id}.yaml`, text });
    return id;
  };
  const meantBy = (row: FieldFacts | null, name: string, value: Written): Written => {
    if (isFields(value))
      return Object.fromEntries(
        Object.entries(value).map(([part, held]) => [
          part,
          meantBy(row?.parts?.[part] ?? null, `${name}.${part}`, held),
        ]),
      );
    if (row === null || typeof value === 'string') {
      const list = row?.list;
      const isMade = posted.get(`${name}.make`) === 'yes';
      return list === undefined || typeof value !== 'string' ? value : idFor(list, value, isMade);
    }
    return value.map((one, at) => meantBy(row, isFields(one) ? `${name}.${at}` : name, one));
  };
  const meant = changes.map((change): FieldChange => {
    const row = rowAt(leaves, change.path);
    return change.value === null ? change : { ...change, value: meantBy(row, change.path.join('.'), change.value) };
  });
  return { changes: meant, made };
}

/** The row of what is at a path, in the leaves or in their parts. */
function rowAt(leaves: readonly Leaf[], path: readonly string[]): FieldFacts | null {
  const leaf = leaves.find((one) => one.path.every((step, at) => step === path[at]));
  const inner = path.slice(leaf?.path.length ?? 0).filter((step) => !/^\d+$/.test(step));
  return inner.reduce<FieldFacts | null>((row, step) => row?.parts?.[step] ?? null, leaf?.row ?? null);
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
