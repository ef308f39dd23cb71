import { readdir } from 'node:fs/promises';
import { join, relative, sep } from 'node:path';
import { ADDRESSES, withdraw } from '../catalogue/addresses.ts';
import { today } from '../catalogue/check-cabinet.ts';
import { LIFE } from '../catalogue/life-file.ts';
import type { Problem } from '../catalogue/problem.ts';
import type { Records } from '../catalogue/records.ts';
import { addRow, cutRows } from '../catalogue/write/edit-table.ts';
import { DELETED } from './cabinet-files.ts';
import type { FileChange } from './cabinet-files.ts';
import { digestOf, LEDGER } from './cabinet-state.ts';
import type { CabinetState } from './cabinet-state.ts';
import { exhibitsWithout, onlyPieceOf } from './change-exhibit.ts';
import { ledgerRow } from './form/ledger-rows.ts';
import { setStateOf } from './linked-cabinet.ts';
import { namesIn } from './new-names.ts';

/** What can be deleted at the desk, by its folder, and what one is called. */
export const DELETABLE = {
  pieces: 'piece', sets: 'set', exhibits: 'exhibit', rulers: 'ruler', mints: 'mint', denominations: 'denomination',
  works: 'book', eras: 'era scheme',
} as const; // prettier-ignore
export type Deletable = keyof typeof DELETABLE;

/** What a keeper says beside that: whether the private lines are kept, and whether exhibits without another piece go too. */
export type DeletionAsked = { readonly keepsPrivate: boolean; readonly withExhibits: boolean };

/** What deleting one thing comes to; nothing is written yet. */
export type Deletion = {
  readonly title: string;
  readonly changes: readonly FileChange[];
  /** What goes or changes with it, a sentence each. */
  readonly goes: readonly string[];
  /** What the private tables say of it, a line each. */
  readonly saidInPrivate: readonly string[];
  /** Exhibits in which nothing would be left; null for none. */
  readonly emptied: { readonly titles: readonly string[]; readonly says: string } | null;
  /** What would be wrong after it, so that it cannot be. */
  readonly problems: readonly Problem[];
  /** Of everything above: another one when something has changed since it was shown. */
  readonly digest: string;
};

const PRICES = 'private/prices.csv';
const GUIDE = 'private/guide.csv';
const TABLES = { [LEDGER]: 'The ledger', [LIFE]: 'Came and left', [PRICES]: 'Prices seen', [GUIDE]: 'Guide prices' };

/** What deleting a thing of the cabinet would do; null when there is no such thing. */
export async function planDeletion(
  state: CabinetState,
  kind: Deletable,
  id: string,
  asked: DeletionAsked,
): Promise<Deletion | null> {
  const records = state.records();
  if (!records.named[kind].includes(id)) return null;
  const title = titleOf(records, kind, id);
  const own = await filesOf(state, kind, id);
  const tables = await privateLines(state, kind, id, title, asked.keepsPrivate);
  const exhibits = kind === 'pieces' ? exhibitsWithout(state, id) : [];
  const emptied = exhibits.filter(({ left }) => left === null);
  const gone = await exhibitsGone(state, asked.withExhibits ? emptied : [], `${kind}/${id}/`);
  const taken = exhibits.flatMap(({ file, left, from }) => (left === null ? [] : [{ file, text: left, from }]));
  const changes = [...own, ...tables.changes, ...taken, ...gone.changes];
  const problems = state.problemsOf(changes);
  const goes = [
    filesInWords(kind, own),
    ...exhibits.flatMap((one) => (one.left === null ? [] : [`It is taken out of the exhibit “${one.title}”.`])),
    ...(kind === 'pieces' ? placesAfter(state, id) : []),
    ...linksTo(records, kind, id).map((one) => `The text of “${one}” has a link to it, which then leads nowhere. Take the link out there.`), // prettier-ignore
    ...gone.letGo.map((one) => `Its page /${one} was published. After the next build and upload that address says that it was withdrawn, and nothing more.`), // prettier-ignore
  ];
  const digest = digestOf(JSON.stringify([changes, goes, tables.says]));
  return {
    title, changes, goes, saidInPrivate: tables.says, emptied: emptied.length === 0 ? null : { titles: emptied.map((one) => one.title), says: onlyPieceOf(emptied) }, problems, digest,
  }; // prettier-ignore
}

function titleOf(records: Records, kind: Deletable, id: string): string {
  if (kind === 'eras' || kind === 'exhibits') return records[kind].find((one) => one.id === id)?.fields.title ?? id;
  return namesIn(kind, records).find((one) => one.id === id)?.names[0] ?? id;
}

/** Every file of a thing, to go: of a piece or an exhibit, all that lies in its folder. */
async function filesOf(state: CabinetState, kind: Deletable, id: string): Promise<readonly FileChange[]> {
  const hasFolder = kind === 'pieces' || kind === 'exhibits';
  const folder = join(state.at, kind, id);
  const found = hasFolder ? await readdir(folder, { recursive: true, withFileTypes: true }) : [];
  const names = hasFolder
    ? found.filter((entry) => !entry.isDirectory()).map((entry) => join(entry.parentPath, entry.name))
    : [join(state.at, kind, `${id}.yaml`)];
  const files = names.map((name) => relative(state.at, name).split(sep).join('/')).sort();
  return Promise.all(
    files.map(async (file) => {
      const isRead = state.heldText(file) !== null;
      return { file, text: null, from: isRead ? await state.textOf(file) : null };
    }),
  );
}

function filesInWords(kind: Deletable, files: readonly FileChange[]): string {
  const names = files.map(({ file }) => file.split('/').slice(2).join('/'));
  const others = names.filter((name) => name !== 'piece.md' && name !== 'exhibit.md');
  if (kind !== 'pieces' && kind !== 'exhibits') return `Its file goes: ${files.map(({ file }) => file).join(', ')}.`;
  const what = kind === 'pieces' ? 'What is written of it goes' : 'Its cases, labels and statement go; the pieces stay';
  if (others.length === 0) return `${what}; there are no photographs with it.`;
  return `${what}, and ${others.length === 1 ? 'one file' : `${others.length} files`} with it: ${others.join(', ')}. Your own originals elsewhere stay.`;
}

/** What the private tables say of a thing, and what becomes of it. */
async function privateLines(state: CabinetState, kind: Deletable, id: string, title: string, isKept: boolean) {
  const tables = kind === 'pieces' ? ([[LEDGER, 'piece'], [LIFE, 'piece'], [PRICES, 'piece']] as const) : kind === 'sets' ? ([[GUIDE, 'set'], [PRICES, 'set']] as const) : []; // prettier-ignore
  const changes: FileChange[] = [];
  const says: string[] = [];
  const kept: Record<string, string>[] = [];
  for (const [file, column] of tables) {
    const from = await state.textOf(file);
    if (from === null) continue;
    const { text, rows } = cutRows(from, { column, value: id });
    if (rows.length === 0) continue;
    changes.push({ file, text, from });
    for (const row of rows) {
      const cells = Object.entries(row).filter(([name, cell]) => name !== column && cell.trim() !== '');
      const words = cells.map(([name, cell]) => `${file === LEDGER ? ledgerRow(name).label : name} ${cell}`).join(', ');
      says.push(`${TABLES[file]}: ${words === '' ? 'nothing but its name' : words}`);
      if (file === LEDGER) kept.unshift(Object.fromEntries(cells));
      else kept.push({ notes: words });
    }
  }
  if (!isKept || kind !== 'pieces' || kept.length === 0) return { changes, says };
  const { number = '' } = state.records().pieces.find((piece) => piece.id === id)?.fields ?? {};
  const from = await state.textOf(DELETED);
  const text = kept.reduce(
    (now, cells) => addRow(now, { piece: id, number, title, deleted: today(), ...cells }),
    from ?? '',
  );
  return { changes: [...changes, { file: DELETED, text, from }], says };
}

/** Exhibits deleted as a whole, and the addresses let go that they had, with that of whatever else goes. */
export async function exhibitsGone(
  state: CabinetState,
  exhibits: readonly { readonly id: string }[],
  ...also: readonly string[]
): Promise<{ readonly changes: readonly FileChange[]; readonly letGo: readonly string[] }> {
  const files = await Promise.all(exhibits.map(({ id }) => filesOf(state, 'exhibits', id)));
  const from = await state.textOf(ADDRESSES);
  let text = from ?? '';
  const letGo: string[] = [];
  for (const address of [...also, ...exhibits.map(({ id }) => `exhibits/${id}/`)]) {
    const after = withdraw(text, address);
    text = after.text;
    letGo.push(...after.letGo);
  }
  const list = from === null || text === from ? [] : [{ file: ADDRESSES, text, from }];
  return { changes: [...files.flat(), ...list], letGo };
}

/** In a cabinet of more pieces it is not worked out what fills a place then, which takes many seconds. */
const LARGE = 3000;

/** What becomes of the places that a piece fills in sets. */
function placesAfter(state: CabinetState, id: string): readonly string[] {
  const records = state.records();
  const without = { ...records, pieces: records.pieces.filter((piece) => piece.id !== id) };
  const titles = new Map(records.pieces.map((piece) => [piece.id, piece.fields.title]));
  return records.sets.flatMap((set) => {
    const text = state.heldText(set.file) ?? '';
    const now = setStateOf(records, set.id, text);
    const place = now.ok ? now.value.places.find(({ piece }) => piece === id) : undefined;
    if (place === undefined) return [];
    if (records.pieces.length > LARGE) return [`It fills the place ${place.label} of the set “${set.fields.title}”.`];
    const then = setStateOf(without, set.id, text);
    const after = then.ok ? then.value.places.find((one) => one.id === place.id)?.piece : undefined;
    const what = after === undefined ? 'nothing fills it then' : `“${titles.get(after) ?? after}” fills it then`;
    return [`It fills the place ${place.label} of the set “${set.fields.title}”: ${what}.`];
  });
}

/** What has a link to the page of a thing in its text, by its title. */
function linksTo(records: Records, kind: Deletable, id: string): readonly string[] {
  const isLink = (address: string): boolean => {
    const steps = address.split(/[/#?]/).filter((step) => !/^\.*$/.test(step));
    return steps.at(-1) === id && ['', kind].includes(steps.at(-2) ?? '');
  };
  return [...records.pieces, ...records.exhibits]
    .filter((one) => one.id !== id)
    .filter(({ story }) => [...story.matchAll(/\]\(([^)\s]+)/g)].some(([, address = '']) => isLink(address)))
    .map(({ fields }) => fields.title);
}
