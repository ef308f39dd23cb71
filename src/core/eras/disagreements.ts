import { periodYears } from './era-scheme.ts';
import type { EraScheme } from './era-scheme.ts';
import type { EraPlacing } from './place-in-scheme.ts';
import { yearsInWords } from './years-in-words.ts';

/** A piece as its placings say, by the name of each scheme. */
export type Placed = { readonly id: string; readonly eras: Readonly<Record<string, EraPlacing>> };

/** One thing over which schemes disagree, and every piece it is over. */
export type Disagreement = {
  /** What each scheme says, in the order of the schemes: the years it gives a name, or what it makes of these pieces. */
  readonly claims: readonly { readonly scheme: string; readonly says: string }[];
  /** The name the schemes share, or null where one of them has a period and the other splits the pieces or has none. */
  readonly name: string | null;
  readonly pieces: readonly string[];
};

/**
 * Where schemes disagree over pieces. Two schemes do when both know a period by one name and give it different parts of a piece's
 * years, or when one places the piece in a period and the other splits it or has no period for it. That schemes use different
 * names is no disagreement: one may count by dynasties and another by ages. A scheme that does not apply to a piece says nothing of it.
 */
export function disagreements(pieces: readonly Placed[], schemes: readonly EraScheme[]): readonly Disagreement[] {
  const found = new Map<string, { claims: Map<string, string>; name: string | null; pieces: Set<string> }>();
  for (const piece of pieces) {
    for (const { key, name, claims } of differencesOver(piece, schemes)) {
      const known = found.get(key) ?? { claims: new Map<string, string>(), name, pieces: new Set<string>() };
      for (const [scheme, says] of claims) known.claims.set(scheme, says);
      known.pieces.add(piece.id);
      found.set(key, known);
    }
  }
  const claimsOf = (claims: ReadonlyMap<string, string>): Disagreement['claims'] =>
    schemes.flatMap(({ id }) => {
      const says = claims.get(id);
      return says === undefined ? [] : [{ scheme: id, says }];
    });
  const named = [...found.values()].filter(({ name }) => name !== null);
  const unnamed = joined([...found.values()].filter(({ name }) => name === null));
  return [...named, ...unnamed].map(({ name, claims, pieces }) => ({
    name,
    pieces: [...pieces],
    claims: name === null ? claimsOf(claims) : toldApart(claimsOf(claims), schemes),
  }));
}

type Found = {
  readonly claims: Map<string, string>;
  readonly name: string | null;
  readonly pieces: ReadonlySet<string>;
};

/** What is said over the same pieces, in no words that contradict, is one disagreement of all these schemes. */
function joined(found: readonly Found[]): readonly Found[] {
  const all: Found[] = [];
  for (const one of found) {
    const same = all.find(
      ({ pieces, claims }) =>
        pieces.size === one.pieces.size &&
        [...pieces].every((piece) => one.pieces.has(piece)) &&
        [...one.claims].every(([scheme, says]) => (claims.get(scheme) ?? says) === says),
    );
    if (same === undefined) all.push({ ...one, claims: new Map(one.claims) });
    else for (const [scheme, says] of one.claims) same.claims.set(scheme, says);
  }
  return all;
}

/** Where all give a name the same years, they disagree about the years at its ends. */
function toldApart(claims: Disagreement['claims'], schemes: readonly EraScheme[]): Disagreement['claims'] {
  if (new Set(claims.map(({ says }) => says)).size > 1) return claims;
  return claims.map(({ scheme, says }) => {
    const isShared = schemes.find(({ id }) => id === scheme)?.ends === 'shared';
    return {
      scheme,
      says: `${says}, ${isShared ? 'each of its end years shared with the next period' : 'its first and last year wholly in it'}`,
    };
  });
}

type Difference = {
  readonly key: string;
  readonly name: string | null;
  readonly claims: readonly (readonly [scheme: string, says: string])[];
};

function differencesOver({ eras }: Placed, schemes: readonly EraScheme[]): readonly Difference[] {
  const saying = schemes.flatMap((scheme) => {
    const placing = eras[scheme.id];
    const isSilent = placing === undefined || placing.state === 'unknown' || placing.state === 'not applicable';
    return isSilent ? [] : [{ scheme, placing }];
  });
  return saying.flatMap((one, at) =>
    saying.slice(at + 1).flatMap((other): readonly Difference[] => {
      const byName = namesBetween(one, other);
      if (byName.length > 0) return byName;
      if (one.placing.state === other.placing.state) return [];
      const claims = [one, other].map((each) => [each.scheme.id, saysOf(each)] as const);
      return [{ key: JSON.stringify(claims), name: null, claims }];
    }),
  );
}

type Saying = { readonly scheme: EraScheme; readonly placing: EraPlacing };

/** The names that two schemes share and give different parts of the piece's years. */
function namesBetween(one: Saying, other: Saying): readonly Difference[] {
  return one.scheme.periods.flatMap((period) => {
    const namesake = other.scheme.periods.find(({ name }) => lettersOf(name) === lettersOf(period.name));
    if (namesake === undefined || shareIn(one, period.id) === shareIn(other, namesake.id)) return [];
    const claims = [
      [one.scheme.id, yearsInWords(periodYears(period))],
      [other.scheme.id, yearsInWords(periodYears(namesake))],
    ] as const;
    return [{ key: lettersOf(period.name), name: period.name, claims }];
  });
}

function saysOf({ scheme, placing: { state, periods } }: Saying): string {
  const named = (some: EraPlacing['periods']) =>
    some.map(({ id, name }) => `“${name}” (${yearsOfPeriod(scheme, id)})`).join(' and ');
  if (state === 'outside') return 'has no period for them';
  if (state === 'straddles')
    return periods.length === 1
      ? `has a period for a part of their years, ${named(periods)}`
      : `splits them between ${named(periods)}`;
  const whole = periods.filter(({ share }) => share === 1 || (share === null && periods.length === 1));
  return `places them in ${named(whole.length === 0 ? periods : whole)}`;
}

function shareIn({ placing }: Saying, id: string): number | null {
  const period = placing.periods.find((each) => each.id === id);
  return period === undefined ? 0 : period.share;
}

function yearsOfPeriod(scheme: EraScheme, id: string): string {
  const period = scheme.periods.find((each) => each.id === id);
  return period ? yearsInWords(periodYears(period)) : '';
}

/** `Post-Medieval` and `Post Medieval` are one name. */
function lettersOf(name: string): string {
  return name.toLowerCase().replaceAll(/[^\p{L}\p{M}\p{N}]/gu, '');
}
