import { formatReference } from '../../core/references/reference.ts';
import { yearsOf } from '../../core/dating/interval.ts';
import { parseDate } from '../../core/dating/parse-date.ts';
import type { Records } from '../../catalogue/records.ts';
import { isBlank } from '../../catalogue/schema/fields.ts';
import type { ListKind } from '../../catalogue/write/write-piece.ts';
import type { Written } from '../../catalogue/yaml.ts';
import type { Draft, NamedInSheet, UnreadCell } from '../plan/draft.ts';
import { joinNames } from './join-names.ts';
import type { JoinedNames } from './join-names.ts';
import type { KnownName, NameQuestion, NameUse, NewName } from './name.ts';
import { withVolume } from './book-keys.ts';
import { openBook, withoutOpenBooks } from './open-books.ts';
import { byPerson } from './persons.ts';
import { isSameRealm } from './split-rulers.ts';
import { formatYears, yearsBetween } from './spans.ts';
import type { Span } from './spans.ts';
import type { SaidOfLists } from './names-file.ts';
import { grouped } from './grouped.ts';
import { composeTitle } from '../plan/compose-title.ts';

/** A draft whose names are those of list files; `unread` also tells of names that could mean several. */
export type JoinedDraft = Omit<Draft, 'names' | 'titledBy'>;

export type JoinedSheet = {
  readonly drafts: readonly JoinedDraft[];
  readonly created: { readonly [kind in ListKind]: readonly NewName[] };
  readonly questions: readonly NameQuestion[];
  /** What a keeper should look at, a sentence each. */
  readonly remarks: readonly string[];
};

type Known = { readonly [kind in ListKind]: readonly KnownName[] };
type Joined = { readonly [kind in ListKind]: JoinedNames };

/** Joins every name in the drafts to the list files. */
export function joinSheet(fromSheet: readonly Draft[], records: Records, said: SaidOfLists): JoinedSheet {
  const known = knownNames(records);
  const drafts = byPerson(fromSheet, known.rulers, said.rulers);
  const made = new Map(drafts.map(({ row, facts }) => [row, madeIn(facts['date'])]));
  const uses = (name: (draft: Draft) => readonly NamedInSheet[]): readonly NameUse[] =>
    drafts.flatMap((draft) => name(draft).map((one) => useOf(one, draft, made)));
  // Only a table of our own has the names of folders, and names files where others write names.
  const namesFiles = drafts.some(({ id }) => id !== undefined);
  const join = (kind: ListKind, name: (draft: Draft) => readonly NamedInSheet[]): JoinedNames =>
    joinNames(kind, uses(name), known[kind], said[kind], namesFiles);
  const joined = {
    rulers: join('rulers', (draft) => [...(draft.names.ruler ?? []), ...struckFor(draft)].filter(isName)),
    mints: join('mints', ({ names }) => mintsIn(names).filter(isName)),
    denominations: join('denominations', ({ names }) =>
      names.denomination === undefined ? [] : [names.denomination].filter(isName),
    ),
    works: join('works', ({ names }) =>
      (names.references ?? [])
        .map((one) => ({ name: withVolume(one, known.works).name }))
        .filter((one) => isName(one) && openBook(one.name, known.works, said.works) === undefined),
    ),
  };
  return {
    drafts: drafts.map((draft) =>
      joinDraft(withoutOpenBooks(draft, known.works, said.works), joined, known, made, (kind, id) =>
        calledIn(kind, id, known, joined),
      ),
    ),
    created: {
      rulers: joined.rulers.created,
      mints: joined.mints.created,
      denominations: joined.denominations.created,
      works: joined.works.created,
    },
    questions: Object.values(joined).flatMap(({ questions }) => questions),
    remarks: farApart(
      drafts.flatMap((draft) =>
        (draft.names.ruler ?? []).filter(isName).flatMap((one) => {
          const found = joined.rulers.idOf(useOf(one, draft, made));
          // A reign in the list parts them already, and a date outside it is told of for itself.
          if ('because' in found || reignsIn(found.id, known, joined)) return [];
          const name = calledIn('rulers', found.id, known, joined) ?? one.name;
          return [{ id: found.id, name, row: draft.row, made: made.get(draft.row) ?? null }];
        }),
      ),
    ),
  };
}

function joinDraft(
  draft: Draft,
  joined: Joined,
  known: Known,
  made: ReadonlyMap<number, Span | null>,
  called: (kind: ListKind, id: string) => string | null,
): JoinedDraft {
  const { names, titledBy, ...rest } = draft;
  const facts: Record<string, Written> = { ...draft.facts };
  const unread: UnreadCell[] = [...draft.unread];
  const ids = (kind: ListKind, field: string, named: readonly NamedInSheet[]): readonly string[] =>
    named.flatMap((one) => {
      if (!isName(one)) return isBlank(one.name) ? [one.name] : [];
      const found = joined[kind].idOf(useOf(one, draft, made));
      if ('id' in found) return [found.id];
      unread.push({ row: draft.row, heading: field, text: one.name, because: found.because, field });
      return [];
    });
  const put = (field: string, found: readonly string[]): void => {
    const [only] = found;
    if (only !== undefined) facts[field] = found.length === 1 ? only : [...new Set(found)];
  };
  const forWhom = struckFor(draft);
  delete facts['struck-for'];
  put('ruler', ids('rulers', 'ruler', names.ruler ?? []));
  put('struck-for', ids('rulers', 'struck-for', forWhom));
  const { realm } = names;
  const isToldByRuler = [facts['ruler'] ?? []]
    .flat()
    .some(
      (id) => typeof id === 'string' && realm !== undefined && isSameRealm(realmIn(id, known, joined) ?? '?', realm),
    );
  if (realm !== undefined && !isToldByRuler) {
    const { issuer } = facts;
    if (issuer === undefined) facts['issuer'] = realm;
    else if (typeof issuer !== 'string' || !isSameRealm(issuer, realm))
      unread.push({
        row: draft.row,
        heading: 'realm',
        text: realm,
        because: `The file of the ruler does not name the realm "${realm}", and the issuer is another. Write realm: ${realm} in the file of the ruler if it belongs there.`,
        field: 'realm',
      });
  }
  put('mint', ids('mints', 'mint', mintsIn(names)));
  put(
    'denomination',
    ids('denominations', 'denomination', names.denomination === undefined ? [] : [names.denomination]),
  );
  const references = (names.references ?? []).flatMap((one) => {
    const { name, cited } = withVolume(one, known.works);
    const [work] = ids('works', 'references', [{ name }]);
    return work === undefined ? [] : [formatReference(cited, work)];
  });
  if (references.length > 0) facts['references'] = references;
  const title = titledBy === undefined ? null : joinedTitle(titledBy, draft, facts, called);
  if (title !== null) facts['title'] = title;
  return { ...rest, facts, unread };
}

/** Whether a ruler's file says, or will say, when he reigned. */
function reignsIn(id: string, known: Known, joined: Joined): boolean {
  const file = known.rulers.find((one) => one.id === id);
  return file === undefined
    ? joined.rulers.created.some((one) => one.id === id && one.years !== null)
    : file.reigns.length > 0;
}

/** What a ruler's file says, or will say, was ruled. */
function realmIn(id: string, known: Known, joined: Joined): string | null {
  const file = known.rulers.find((one) => one.id === id);
  return file?.realm ?? joined.rulers.created.find((one) => one.id === id)?.realm ?? null;
}

/** What a file of a list is called, whether it is there or will be made. */
function calledIn(kind: ListKind, id: string, known: Known, joined: Joined): string | null {
  const there = known[kind].find((one) => one.id === id)?.names[0];
  return there ?? joined[kind].created.find((one) => one.id === id)?.name ?? null;
}

function struckFor({ facts }: Draft): readonly NamedInSheet[] {
  const said = facts['struck-for'];
  const names = said === undefined ? [] : [said].flat();
  return names.flatMap((name): readonly NamedInSheet[] => (typeof name === 'string' ? [{ name }] : []));
}

/** A mint with the area a column says it lies in; a place is told from another by that and not by who ruled. */
function mintsIn({ mint, mintArea }: Draft['names']): readonly NamedInSheet[] {
  return mint === undefined ? [] : [{ ...mint, realm: mintArea ?? '' }];
}

function useOf(one: NamedInSheet, { row, names }: Draft, made: ReadonlyMap<number, Span | null>): NameUse {
  const { realm = names.realm, ...named } = one;
  return { ...named, ...(realm === undefined || realm === '' ? {} : { realm }), row, made: made.get(row) ?? null };
}

/** `unknown` and `none` name nobody, and no more does nothing. */
function isName({ name }: NamedInSheet): boolean {
  return !isBlank(name) && name.trim() !== '';
}

function madeIn(date: Written | undefined): Span | null {
  if (typeof date !== 'string' || isBlank(date)) return null;
  const read = parseDate(date);
  return read.ok ? yearsOf(read.value) : null;
}

function knownNames(records: Records): Known {
  return {
    rulers: records.rulers.map(({ id, fields }) => ({
      id,
      names: [fields.name, ...fields['other-names']],
      reigns: fields.reigns.map(({ from, to }) => ({ low: yearsOf(from).low, high: yearsOf(to).high })),
      ...(fields.realm === undefined ? {} : { realm: fields.realm }),
    })),
    mints: records.mints.map(({ id, fields }) => ({
      id,
      names: [fields.name, ...fields.names.map(({ name }) => name)],
      reigns: [],
      ...(fields.area === undefined ? {} : { realm: fields.area }),
    })),
    denominations: records.denominations.map(({ id, fields }) => ({
      id,
      names: [fields.name, ...(fields.plural === undefined ? [] : [fields.plural])],
      reigns: [],
    })),
    works: records.works.map(({ id, fields }) => ({
      id,
      names: [fields.title, ...(fields.short === undefined ? [] : [fields.short])],
      reigns: [],
    })),
  };
}

/** A piece that is in the name of a file of the list. */
type InName = { readonly id: string; readonly name: string; readonly row: number; readonly made: Span | null };

/** Nobody ruled as long as this; a name may outlive its bearer on coins, so it is told and no more. */
const FAR = 100;

/** A sentence for each name that stands for pieces a century and more apart. */
function farApart(uses: readonly InName[]): readonly string[] {
  return grouped(uses, ({ id }) => id).flatMap((some) => {
    const dated = some.flatMap(({ made, ...one }) =>
      made === null || made.high - made.low > FAR ? [] : [{ ...one, made }],
    );
    const first = dated.toSorted((a, b) => a.made.high - b.made.high)[0];
    const last = dated.toSorted((a, b) => b.made.low - a.made.low)[0];
    if (first === undefined || last === undefined) return [];
    const years = yearsBetween(first.made, last.made);
    if (years < FAR) return [];
    const centuries = Math.floor(years / 100);
    const apart = centuries === 1 ? 'a century and more' : `${centuries} centuries and more`;
    return [
      `${first.name} stands for pieces ${apart} apart: row ${first.row} (${formatYears(first.made)}) and row ${last.row} (${formatYears(last.made)}). If these are two, write the reign beside the name in the sheet, as in ${first.name} (1406-1437).`,
    ];
  });
}

/** A title composed anew with the names the lists use: *Edward I*, however the sheet spells him. Null when no part has anything. */
function joinedTitle(
  pattern: string,
  { facts: read, names }: Draft,
  joined: Readonly<Record<string, Written>>,
  called: (kind: ListKind, id: string) => string | null,
): string | null {
  const named = (kind: ListKind, field: string, said: readonly NamedInSheet[]): readonly NamedInSheet[] => {
    const ids = [joined[field] ?? []]
      .flat()
      .filter((id) => typeof id === 'string')
      .filter((id) => id !== 'none' && id !== 'unknown');
    return ids.length === 0 ? said : ids.map((id) => ({ name: called(kind, id) ?? id }));
  };
  const [mint] = named('mints', 'mint', names.mint === undefined ? [] : [names.mint]);
  const [denomination] = named(
    'denominations',
    'denomination',
    names.denomination === undefined ? [] : [names.denomination],
  );
  return composeTitle(pattern, byPath(read), {
    ...(names.ruler === undefined ? {} : { ruler: named('rulers', 'ruler', names.ruler) }),
    ...(mint === undefined ? {} : { mint }),
    ...(denomination === undefined ? {} : { denomination }),
  });
}

/** Facts by their paths: `obverse.design`. */
function byPath(facts: Draft['facts']): ReadonlyMap<string, Written> {
  return new Map(
    Object.entries(facts).flatMap(([field, value]): readonly (readonly [string, Written])[] =>
      typeof value === 'string' || Array.isArray(value)
        ? [[field, value]]
        : Object.entries(value).map(([inner, held]) => [`${field}.${inner}`, held]),
    ),
  );
}
