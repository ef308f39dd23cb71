import { yearsOf } from '../../core/dating/interval.ts';
import { parseDate } from '../../core/dating/parse-date.ts';
import type { CabinetFolder } from '../../catalogue/files.ts';
import { readCabinet } from '../../catalogue/read-cabinet.ts';
import type { ListKind } from '../../catalogue/write/write-piece.ts';
import type { Records } from '../../catalogue/records.ts';
import type { JoinedSheet } from './join-sheet.ts';
import type { NewFile } from './list-file-of-name.ts';
import type { NewName } from './name.ts';
import { reignIn } from './reign.ts';
import { spelledAlike } from './ruler-key.ts';
import type { Span } from './spans.ts';
import { formatYears, overlaps, yearsBetween } from './spans.ts';
import { isSameRealm } from './split-rulers.ts';

/** A file of the lists that come with the program, which a new name of the sheet may be. */
export type Offer = {
  readonly kind: ListKind;
  /** The file that the name gets in the cabinet. */
  readonly file: string;
  readonly name: string;
  /** What the file brings, in a few words: `England, 1272-1307`. */
  readonly says: string;
  readonly text: string;
};

type Lent = {
  readonly kind: ListKind;
  readonly names: readonly string[];
  /** A realm, or the areas a mint lies in. */
  readonly areas: readonly string[];
  readonly reigns: readonly Span[];
  readonly says: string;
  readonly text: string;
};

/** Coins went on in a name for a while after its bearer had died. */
const NEAR = 50;

/**
 * Of the lists that come with the program the files whose name is that of a new one, and which nothing in the sheet speaks against: a
 * realm or region that is another, or a piece made far from the reign. A name that two files have is offered by neither.
 */
export function offersFor({ drafts, created }: JoinedSheet, lent: CabinetFolder): readonly Offer[] {
  const files = lentFiles(lent);
  const dates = new Map<string, Span[]>();
  for (const { facts } of drafts)
    for (const id of [facts['ruler'] ?? [], facts['struck-for'] ?? []].flat()) {
      const read = typeof facts['date'] === 'string' ? parseDate(facts['date']) : null;
      if (typeof id === 'string' && read?.ok === true) dates.set(id, [...(dates.get(id) ?? []), yearsOf(read.value)]);
    }
  return (['rulers', 'mints', 'denominations', 'works'] as const).flatMap((kind) =>
    created[kind].flatMap((one): readonly Offer[] => {
      const found = files.filter((file) => file.kind === kind && isCalled(file, one));
      const [only] = found;
      const made = kind === 'rulers' ? (dates.get(one.id) ?? []) : [];
      if (only === undefined || found.length > 1 || !mayBe(only, one, made)) return [];
      return [{ kind, file: `${kind}/${one.id}.yaml`, name: one.name, says: only.says, text: only.text }];
    }),
  );
}

function isCalled({ names }: Lent, { name, otherNames }: NewName): boolean {
  const wanted = new Set([name, ...otherNames].map(spelledAlike));
  return names.some((one) => wanted.has(spelledAlike(one)));
}

function mayBe({ areas, reigns }: Lent, { years, realm }: NewName, made: readonly Span[]): boolean {
  const stated = years === null ? null : (reignIn(years)?.span ?? null);
  if (stated !== null && !reigns.some((reign) => overlaps(reign, stated))) return false;
  if (realm !== undefined && areas.length > 0 && !areas.some((area) => isSameRealm(area, realm))) return false;
  if (reigns.length === 0) return true;
  const isNear = made.every((span) => reigns.some((reign) => yearsBetween(reign, span) <= NEAR));
  return isNear && (stated !== null || made.some((span) => reigns.some((reign) => overlaps(reign, span))));
}

function lentFiles(lent: CabinetFolder): readonly Lent[] {
  const { rulers, mints, denominations, works } = readCabinet(lent).records;
  const texts = new Map(lent.files.map(({ file, text }) => [file, text ?? '']));
  // Who reigned together is left out: the other's file may not be there.
  const textOf = (file: string): string => (texts.get(file) ?? '').replace(/^ +with:.*\n/gm, '');
  const plain = { areas: [], reigns: [] };
  return [
    ...rulers.map(({ file, fields }): Lent => {
      const reigns = fields.reigns.map(({ from, to }) => ({ low: yearsOf(from).low, high: yearsOf(to).high }));
      const areas = fields.realm === undefined ? [] : [fields.realm];
      const says = [...areas, ...reigns.map(formatYears)].join(', ');
      return { kind: 'rulers', names: [fields.name, ...fields['other-names']], areas, reigns, says, text: textOf(file) };
    }),
    ...mints.map(({ file, fields }): Lent => {
      const names = [fields.name, ...fields.names.map(({ name }) => name)];
      const areas = fields.area === undefined ? [] : [fields.area, ...fields.area.split(/, */)];
      return { ...plain, kind: 'mints', names, areas, says: `${fields.area ?? ''} with coordinates`, text: textOf(file) };
    }),
    ...denominations.map(({ file, fields }): Lent => {
      const says = fields.standards.length === 0 ? '' : `${fields.standards.length} standards`;
      return { ...plain, kind: 'denominations', names: [fields.name, ...(fields.plural === undefined ? [] : [fields.plural])], says, text: textOf(file) };
    }),
    ...works.map(({ file, fields }): Lent => {
      const names = [fields.title, ...(fields.short === undefined ? [] : [fields.short])];
      return { ...plain, kind: 'works', names, says: fields.title, text: textOf(file) };
    }),
  ]; // prettier-ignore
}

/** The records with lists that are about to be written. */
export function withLists(records: Records, lists: readonly NewFile[]): Records {
  const { rulers, mints, denominations, works } = readCabinet({ at: '.', files: lists }).records;
  return {
    ...records,
    rulers: [...records.rulers, ...rulers],
    mints: [...records.mints, ...mints],
    denominations: [...records.denominations, ...denominations],
    works: [...records.works, ...works],
  };
}
