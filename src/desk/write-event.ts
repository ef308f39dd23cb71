import { LIFE, LIFE_COLUMNS } from '../catalogue/life-file.ts';
import { splitFrontMatter } from '../catalogue/front-matter.ts';
import { editFacts } from '../catalogue/write/edit-list.ts';
import { addRow } from '../catalogue/write/edit-table.ts';
import { PIECE_ORDER } from '../catalogue/write/write-piece.ts';
import { readYaml } from '../catalogue/yaml.ts';
import { yearsOf } from '../core/dating/interval.ts';
import { parseDate } from '../core/dating/parse-date.ts';
import type { LifeEventName } from '../core/life/life.ts';
import { good, refuse } from '../core/outcome.ts';
import type { Outcome } from '../core/outcome.ts';
import type { CabinetState } from './cabinet-state.ts';
import type { FileChange } from './cabinet-files.ts';
import { exhibitsWithout, onlyPieceOf } from './change-exhibit.ts';
import { exhibitsGone } from './delete-record.ts';
import { isFields } from './form/leaves.ts';
import { idOf, unknownName } from './new-names.ts';

/** What is to be done beside the table: the piece taken out of its exhibits, the year it came put on its page. */
export type AlsoDone = {
  readonly takeOut: boolean;
  /** Whether an exhibit in which nothing else is goes with it. */
  readonly deleteEmptied: boolean;
  readonly publishYear: boolean;
};

/** How a provenance says that a piece came to its keeper. */
const HOW_IT_CAME: Readonly<Partial<Record<LifeEventName, string>>> = {
  bought: 'purchase', 'given to me': 'gift', inherited: 'inheritance', 'dug up': 'find', 'exchanged in': 'exchange',
}; // prettier-ignore

/** What writing an event down changes; `cells` are those of its row, `now` is the table as it is. */
export async function changesOfEvent(
  state: CabinetState,
  cells: ReadonlyMap<string, string>,
  now: string | null,
  { takeOut, deleteEmptied, publishYear }: AlsoDone,
): Promise<Outcome<readonly FileChange[]>> {
  const records = state.records();
  const said = cells.get('piece') ?? '';
  const piece = said === '' ? '' : idOf('pieces', said, records);
  if (piece === null) return refuse(`${unknownName(records, 'pieces', said)} Write its title or its number.`);
  const before = now === null || now.trim() === '' ? `${LIFE_COLUMNS.join(',')}\n` : now;
  const row = addRow(before, { ...Object.fromEntries(cells), piece });
  const changes: FileChange[] = [{ file: LIFE, text: row, from: now }];
  const laid = exhibitsWithout(state, piece);
  const only = laid.filter(({ left }) => left === null);
  if (takeOut && !deleteEmptied && only.length > 0) return refuse(onlyPieceOf(only));
  for (const { file, from, left } of takeOut ? laid : []) if (left !== null) changes.push({ file, text: left, from });
  if (deleteEmptied) changes.push(...(await exhibitsGone(state, only)).changes);
  if (!publishYear) return good(changes);
  const file = `pieces/${piece}/piece.md`;
  const held = await state.textOf(file);
  const told = held === null ? refuse('Say which piece it is.') : withYear(held, cells.get('event') ?? '', cells.get('date') ?? ''); // prettier-ignore
  return told.ok ? good([...changes, { file, text: told.value, from: held }]) : told;
}

/** A piece whose provenance ends with how and in which year it came to its keeper, and nothing else: no day, dealer or price. */
function withYear(text: string, event: string, date: string): Outcome<string> {
  const how = Object.hasOwn(HOW_IT_CAME, event) ? HOW_IT_CAME[event as LifeEventName] : undefined;
  if (how === undefined) return refuse('Only the year in which a piece came is put on its page.');
  const read = parseDate(date, { dateOf: 'event' });
  const years = read.ok ? yearsOf(read.value) : null;
  if (years === null || years.low !== years.high)
    return refuse('The year it came must be known to be put on its page. Write it under When: 2003.');
  const facts = readYaml(splitFrontMatter(text)?.facts ?? '');
  const links = facts.ok && isFields(facts.value) ? facts.value['provenance'] : undefined;
  const link = { when: String(years.low), how };
  const change = Array.isArray(links)
    ? { path: ['provenance', String(links.length)], value: link }
    : { path: ['provenance'], value: [link] };
  return editFacts(text, [change], PIECE_ORDER);
}
