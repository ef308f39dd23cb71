import { isFirstName } from './first-names.ts';
import { grouped } from './grouped.ts';
import type { KnownName, NameUse } from './name.ts';
import { reignIn } from './reign.ts';
import { rulerKey, spelledAlike } from './ruler-key.ts';
import type { Span } from './spans.ts';
import { clustered, formatYears, hullOf, overlaps } from './spans.ts';

/** The longest reign of a sovereign that is on record: Louis XIV, from May 1643 to September 1715. */
const LONGEST_REIGN = 72;
/** Pieces of two realms this many years apart may still be one ruler's, who had both. */
const ONE_HAND = 10;

/** What tells a use of a name apart from others of the same: `Scotland`, `1424-1437`, `Naples, 1816-1825`; empty where there is nothing to tell. */
export type Parting = (use: NameUse) => string;

/**
 * What parts the uses of one ruler's name: the realm that stands beside them, where there are several, and their dates, where pieces lie
 * further apart than anybody reigned. Where the sheet or the lists say several reigns, those part them, and nothing is done here.
 */
export function partingOf(uses: readonly NameUse[], known: readonly KnownName[]): Parting {
  const parts = new Map<string, string>();
  const filesBy = new Map<string, KnownName[]>();
  for (const file of known)
    for (const key of new Set([file.id, ...file.names].map(rulerKey)))
      filesBy.set(key, [...(filesBy.get(key) ?? []), file]);
  for (const some of grouped(uses, ({ name }) => rulerKey(name))) {
    const files = filesBy.get(rulerKey(some[0]?.name ?? '')) ?? [];
    const stated = some.flatMap(({ years }) => (years === undefined ? [] : (reignIn(years)?.span ?? [])));
    if (clustered(stated, 0).length > 1 || files.filter(({ reigns }) => reigns.length > 0).length > 1) continue;
    const anchors = [...stated, ...files.flatMap(({ reigns }) => reigns)];
    const named = namesOfRealms(some, files);
    const realmOf = ({ realm }: NameUse): string => named.get(realm ?? '') ?? '';
    for (const mine of grouped(some, realmOf)) {
      const realm = realmOf(mine[0] ?? { name: '', row: 0, made: null });
      const datesOf = datesIn(mine, realm === '' ? anchors : []);
      for (const use of mine)
        if (use.years === undefined)
          parts.set(useKey(use), [realm, datesOf(use)].filter((part) => part !== '').join(', '));
    }
  }
  return (use) => parts.get(useKey(use)) ?? '';
}

/** What parts places of one name: the area that stands beside them, where there are several, the lists' own counted. */
export function areaPartingOf(uses: readonly NameUse[], known: readonly KnownName[]): Parting {
  const parts = new Map<string, string>();
  for (const some of grouped(uses, ({ name }) => spelledAlike(name))) {
    const key = spelledAlike(some[0]?.name ?? '');
    const files = known.filter(({ id, names }) => [id, ...names].some((name) => spelledAlike(name) === key));
    const named = namesOfRealms(some, files);
    for (const use of some) parts.set(useKey(use), named.get(use.realm ?? '') ?? '');
  }
  return (use) => parts.get(useKey(use)) ?? '';
}

function useKey({ name, realm, years, made }: NameUse): string {
  return JSON.stringify([name, realm, years, made]);
}

/** Each realm the sheet names by the shortest of its ways to write it; nothing where there is but one, the lists' own counted. */
function namesOfRealms(uses: readonly NameUse[], files: readonly KnownName[]): ReadonlyMap<string, string> {
  const written = [...new Set(uses.flatMap(({ realm }) => realm ?? []))];
  const shortest = written.toSorted((a, b) => a.length - b.length || (a < b ? -1 : 1));
  const named = new Map(written.map((one) => [one, shortest.find((other) => isSameRealm(one, other)) ?? one] as const));
  const all = [...new Set(named.values()), ...files.flatMap(({ realm }) => realm ?? [])];
  return all.some((one) => all.some((other) => !isSameRealm(one, other))) ? named : new Map();
}

/** `England` and `Kingdom of England` are one realm; `Roman Empire` and `Holy Roman Empire` are two. */
export function isSameRealm(one: string, other: string): boolean {
  return realmName(one) === realmName(other);
}

const STATES =
  'kingdom, republic, duchy, county, principality, royaume, konigreich, republik, herzogtum, regno, reino, koninkrijk';
const FORM_OF_STATE = new RegExp(`^(?:the )?(?:${STATES.split(', ').join('|')}) (?:of|de|du|von|di|van) (?:the )?`);

function realmName(realm: string): string {
  return spelledAlike(realm).replace(FORM_OF_STATE, '').replace(/^the /, '');
}

/** The years of the pieces that one belongs with, where others lie too far off to be of the same reign. */
function datesIn(uses: readonly NameUse[], anchors: readonly Span[]): (use: NameUse) => string {
  const made = uses.flatMap((one) => (one.years === undefined && isNarrow(one.made) ? [one.made] : []));
  const clusters = clustered([...made, ...anchors], LONGEST_REIGN);
  return (use) => {
    if (clusters.length < 2 || !isNarrow(use.made) || !isPersonal(use.name)) return '';
    const own = clusters.find((cluster) => use.made !== null && overlaps(cluster, use.made));
    // A piece near a reign that is stated needs no years beside its name.
    return own === undefined || anchors.some((anchor) => overlaps(own, anchor)) ? '' : formatYears(own);
  };
}

/** "13th century" says something of when a piece was made; "1200-1500" too little to part rulers by. */
function isNarrow(span: Span | null): span is Span {
  return span !== null && span.high - span.low <= 100;
}

/** A name with a numeral, or one that people bear: neither *Anonymous* nor *Republic*, of which pieces may lie centuries apart. */
function isPersonal(name: string): boolean {
  const key = rulerKey(name);
  return /\d/.test(key) || key.split(' ').some(isFirstName);
}

/** Parts that differ in the realm alone and lie within one hand's reach are one ruler's for now, and asked about. */
export function joinedParts<T extends { readonly part: string; readonly made: Span | null }>(
  labels: readonly T[],
): readonly (readonly T[])[] {
  const byPart = grouped(labels, ({ part }) => part).map((some) => ({
    labels: some,
    spans: some.flatMap(({ made }) => (made === null ? [] : [made])),
  }));
  const joined: { labels: T[]; spans: Span[] }[] = [];
  for (const part of byPart) {
    const near = joined.filter(({ spans }) => isInReach(spans, part.spans));
    const [first] = near;
    if (first === undefined) {
      joined.push({ labels: [...part.labels], spans: [...part.spans] });
      continue;
    }
    for (const other of near.slice(1)) joined.splice(joined.indexOf(other), 1);
    first.labels.push(...near.slice(1).flatMap((other) => other.labels), ...part.labels);
    first.spans.push(...near.slice(1).flatMap((other) => other.spans), ...part.spans);
  }
  return joined.map((one) => one.labels);
}

function isInReach(some: readonly Span[], others: readonly Span[]): boolean {
  const [a, b] = [hullOf(some), hullOf(others)];
  return a !== null && b !== null && a.low - ONE_HAND <= b.high && b.low - ONE_HAND <= a.high;
}
