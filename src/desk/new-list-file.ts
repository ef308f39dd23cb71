import { formatYaml } from '../catalogue/write/write-yaml.ts';
import type { Written } from '../catalogue/yaml.ts';
import type { Outcome } from '../core/outcome.ts';
import { good, refuse } from '../core/outcome.ts';
import { fileId, freeId } from '../core/file-id.ts';
import type { CabinetState } from './cabinet-state.ts';
import type { FileChange } from './cabinet-files.ts';
import type { Posted } from './form/leaves.ts';
import { idOf } from './new-names.ts';

/** What can be made new beside pieces. */
export const NEW_KINDS = ['sets', 'exhibits', 'rulers', 'mints', 'denominations', 'works'] as const;
export type NewKind = (typeof NEW_KINDS)[number];
export const ONE_PER = ['ruler', 'mint', 'area', 'date', 'reference', 'die'] as const;
/** The facts a new set may ask for by a name of a list. */
export const ASKED = { ruler: 'rulers', mint: 'mints', denomination: 'denominations' } as const;

/** The file of a new set, exhibit or list entry, from what its form says. */
export function newListFile(
  state: CabinetState,
  kind: NewKind,
  posted: Posted,
): Outcome<{ readonly id: string; readonly changes: readonly FileChange[] }> {
  const words = (name: string): string => posted.get(name)?.trim() ?? '';
  const title = words('title');
  if (title === '') return refuse('Write what it is called.');
  const id = freeId(fileId(title), (one) => state.records().named[kind].includes(one));
  const fields = fieldsOf(state, kind, title, words);
  if (!fields.ok) return fields;
  const facts = formatYaml(fields.value);
  const file = kind === 'exhibits' ? `exhibits/${id}/exhibit.md` : `${kind}/${id}.yaml`;
  return good({ id, changes: [{ file, text: kind === 'exhibits' ? `---\n${facts}---\n` : facts, from: null }] });
}

type Fields = Readonly<Record<string, Written>>;

function fieldsOf(state: CabinetState, kind: NewKind, title: string, words: (name: string) => string): Outcome<Fields> {
  if (kind === 'sets') return setFields(state, title, words);
  if (kind === 'exhibits') return exhibitFields(state, title, words);
  return good(kind === 'works' ? { title } : { name: title });
}

function setFields(state: CabinetState, title: string, words: (name: string) => string): Outcome<Fields> {
  const where: Record<string, Written> = {};
  for (const [fact, list] of Object.entries(ASKED)) {
    const said = words(fact);
    const id = said === '' ? null : idOf(list, said, state.records());
    if (said !== '' && id === null)
      return refuse(`There is no ${fact} called "${said}". Write one of the list, or leave it empty.`);
    if (id !== null) where[fact] = id;
  }
  if (words('date') !== '') where['date'] = words('date');
  const rule = Object.keys(where).length === 0 ? {} : { where };
  return good({ title, 'one-per': words('one-per') === '' ? 'ruler' : words('one-per'), ...rule });
}

/** Cases are separated by a blank line; in each a piece has a line of its own. */
function exhibitFields(state: CabinetState, title: string, words: (name: string) => string): Outcome<Fields> {
  if (words('pieces') === '') return refuse('Choose at least one piece for it.');
  const cases: Written[] = [];
  for (const [index, one] of words('pieces')
    .replace(/\r\n?/g, '\n')
    .split(/\n\s*\n/)
    .entries()) {
    const pieces = one.split('\n').flatMap((line) => (line.trim() === '' ? [] : [line.trim()]));
    const ids = pieces.map((said) => idOf('pieces', said, state.records()));
    const unknown = pieces.find((_, at) => ids[at] === null);
    if (unknown !== undefined)
      return refuse(`There is no piece "${unknown}". Write the name of its folder, or its title.`);
    const group = { title: `Case ${index + 1}`, pieces: ids.flatMap((id) => id ?? []) };
    cases.push({ inside: words('inside'), groups: [group] });
  }
  return good({ title, cases });
}
