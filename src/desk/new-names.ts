import type { FieldFacts, List } from '../catalogue/fields/row.ts';
import { nearestName } from '../catalogue/nearest.ts';
import type { Records } from '../catalogue/records.ts';
import { BLANKS } from '../catalogue/schema/fields.ts';
import type { FieldChange } from '../catalogue/write/edit-fields.ts';
import { citedWorks } from '../catalogue/types/cited-works.ts';
import { formatListFile } from '../catalogue/write/write-piece.ts';
import { fileId, freeId } from '../core/file-id.ts';
import { parseReferences } from '../core/references/parse-reference.ts';
import type { Written } from '../catalogue/yaml.ts';
import { isFields } from './form/leaves.ts';
import type { Leaf, Posted } from './form/leaves.ts';

/** What a list is called. */
export const LIST_WORDS: Readonly<Record<List, string>> = {
  rulers: 'rulers', mints: 'mints', denominations: 'denominations', works: 'books', pieces: 'pieces', sets: 'sets',
}; // prettier-ignore

/** A file of a ruler, mint, denomination or book that is made on the way. */
export type NewName = { readonly file: string; readonly text: string };

export type Meant = {
  readonly changes: readonly FieldChange[];
  readonly made: readonly NewName[];
  /** Names that are in no list and are not to be made, by their box. */
  readonly unknown: Readonly<Record<string, string>>;
};

/**
 * Names put into fields of names become the names of their files: `Edward I` is `edward-i`. A name that is in no list stays as it
 * is, and is told as a problem, unless the form says that its file is to be made (`mint.make`). The book of a reference is such a
 * name too.
 */
export function namesMeant(
  changes: readonly FieldChange[],
  leaves: readonly Leaf[],
  posted: Posted,
  records: Records,
): Meant {
  const made: NewName[] = [];
  const unknown: Record<string, string> = {};
  const taken = new Map<List, string[]>();
  const idFor = (list: List, said: string, box: string): string => {
    const known = idOf(list, said, records);
    if (known !== null) return known;
    if (posted.get(`${box}.make`) !== 'yes' || list === 'pieces' || list === 'sets') {
      unknown[box] ??= unknownName(records, list, said);
      return said;
    }
    const names = [...records.named[list], ...(taken.get(list) ?? [])];
    const id = freeId(fileId(said), (one) => names.includes(one));
    taken.set(list, [...(taken.get(list) ?? []), id]);
    const text = formatListFile(list, list === 'works' ? { title: said } : { name: said });
    made.push({ file: `${list}/${id}.yaml`, text });
    return id;
  };
  const books = citedWorks(records.works);
  const makeBook = (reference: string, box: string): void => {
    // A book that is in no list is known by the words before the number.
    const listed = parseReferences(reference, { works: books });
    const read = listed.ok ? listed : parseReferences(reference);
    for (const { work, named } of read.ok ? read.value : [])
      if (!records.named.works.includes(work) && posted.get(`${box}.make`) === 'yes') {
        // A name that no file can have is cited by the short name of the book.
        const id = fileId(work);
        const file = `works/${id === work ? id : freeId(id, (one) => records.named.works.includes(one))}.yaml`;
        const fields = id === work ? { title: named } : { title: named, short: named };
        if (made.every((one) => one.file !== file)) made.push({ file, text: formatListFile('works', fields) });
      } else if (!records.named.works.includes(work)) unknown[box] ??= unknownName(records, 'works', named);
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
      if (row?.reads === 'reference' && typeof value === 'string') makeBook(value, name);
      return row?.list === undefined || typeof value !== 'string' ? value : idFor(row.list, value, name);
    }
    return value.map((one, at) => meantBy(row, isFields(one) ? `${name}.${at}` : name, one));
  };
  const meant = changes.map((change): FieldChange => {
    const row = rowAt(leaves, change.path);
    return change.value === null ? change : { ...change, value: meantBy(row, change.path.join('.'), change.value) };
  });
  return { changes: meant, made, unknown };
}

/** The row of what is at a path, in the leaves or in their parts. */
function rowAt(leaves: readonly Leaf[], path: readonly string[]): FieldFacts | null {
  const leaf = leaves.find((one) => one.path.every((step, at) => step === path[at]));
  const inner = path.slice(leaf?.path.length ?? 0).filter((step) => !/^\d+$/.test(step));
  return inner.reduce<FieldFacts | null>((row, step) => row?.parts?.[step] ?? null, leaf?.row ?? null);
}

export const NOT_IN_LIST = 'is not in your list of';

/** Says that a name is in no list, and what may be meant. */
export function unknownName(records: Records, list: List, said: string): string {
  const names = namesIn(list, records).flatMap((one) => one.names);
  const nearest = nearestName(said, names) ?? onlyWith(said, names);
  return `“${said}” ${NOT_IN_LIST} ${LIST_WORDS[list]}.${nearest === null ? '' : ` Is it ${nearest}?`}`;
}

/** The only name in which these words stand, whatever their case; null where none or several have them. */
function onlyWith(said: string, names: readonly string[]): string | null {
  const wanted = said.trim().toLowerCase();
  const found = names.filter((name) => name.toLowerCase().includes(wanted));
  return wanted.length > 2 && found.length === 1 ? (found[0] ?? null) : null;
}

/** The id of what is called so: by its id, its name or another of its names; null when nothing or more than one is. */
export function idOf(list: List, said: string, records: Records): string | null {
  const wanted = said.trim().toLowerCase();
  if (BLANKS.some((blank) => blank === wanted)) return wanted;
  if (records.named[list].includes(said.trim())) return said.trim();
  const found = namesIn(list, records).filter(({ names }) => names.some((name) => name.toLowerCase() === wanted));
  return found.length === 1 ? (found[0]?.id ?? null) : null;
}

/** What a thing is called in a box: its name, where that is its alone and has no comma in it; else its id. */
export function calledById(records: Records): (list: List, id: string) => string {
  return (list, id) => {
    const name = namesIn(list, records).find((one) => one.id === id)?.names[0];
    return name !== undefined && !/[,;]/.test(name) && idOf(list, name, records) === id ? name : id;
  };
}

/** A form whose boxes of names say ids, as the file does, where the names are known. */
export function withIds(posted: Posted, rowOf: (box: string) => FieldFacts | null, records: Records): Posted {
  return {
    get: (box) => {
      const words = posted.get(box);
      const { list, several } = rowOf(box) ?? {};
      if (words === null || words.trim() === '' || list === undefined || /\.(make|remove|count)$/.test(box))
        return words;
      const idIn = (said: string): string => idOf(list, said, records) ?? said;
      return several === true && /[,;]/.test(words)
        ? words
            .split(/[,;]/)
            .map((one) => idIn(one.trim()))
            .join(', ')
        : idIn(words.trim());
    },
  };
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
  return records.pieces.map(({ id, fields }) => ({ id, names: [fields.title, fields.number] }));
}
