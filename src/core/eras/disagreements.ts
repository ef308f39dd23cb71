import { periodYears } from './era-scheme.ts';
import type { EraScheme, Interval } from './era-scheme.ts';
import { placeInScheme } from './place-in-scheme.ts';
import type { EraPlacing } from './place-in-scheme.ts';
import { yearsInWords } from './years-in-words.ts';

/** What one scheme says of a piece, with the bounds it says it by and who says so. */
export type Claim = {
  readonly scheme: string;
  readonly title: string;
  readonly source: string;
  readonly region: string | null;
  readonly state: EraPlacing['state'];
  /** Every period touched, with its own years in words: `1066–1540`. */
  readonly periods: readonly {
    readonly id: string;
    readonly name: string;
    readonly share: number | null;
    readonly years: string;
  }[];
};

export type Disagreement = {
  readonly piece: string;
  /** Every scheme's claim, in the order given. */
  readonly claims: readonly Claim[];
  /** Each difference in a sentence; at least one. */
  readonly because: readonly string[];
};

/**
 * The pieces over which schemes disagree. Two schemes do when both know a period by one name and give it different parts of the
 * piece's years, or when one places the piece in a period and the other splits it or has no period for it.
 * That schemes use different names is no disagreement: one may count by dynasties and another by ages.
 */
export function disagreements(
  pieces: readonly { readonly id: string; readonly interval: Interval | null }[],
  schemes: readonly EraScheme[],
): readonly Disagreement[] {
  return pieces.flatMap(({ id, interval }) => {
    const claims = schemes.map((scheme) => claimOf(interval, scheme));
    const pairs = claims.flatMap((one, at) => claims.slice(at + 1).map((other) => [one, other] as const));
    const because = pairs.flatMap(([one, other]) => differencesOf(one, other, schemes));
    return because.length === 0 ? [] : [{ piece: id, claims, because }];
  });
}

function claimOf(interval: Interval | null, scheme: EraScheme): Claim {
  const { state, periods } = placeInScheme(interval, scheme);
  const { id, title, source, region = null } = scheme;
  return {
    scheme: id,
    title,
    source,
    region,
    state,
    periods: periods.map((period) => ({ ...period, years: yearsOf(scheme, period.id) })),
  };
}

function differencesOf(one: Claim, other: Claim, schemes: readonly EraScheme[]): readonly string[] {
  const known = (claim: Claim) => schemes.find(({ id }) => id === claim.scheme)?.periods ?? [];
  const byName = known(one).flatMap((period) => {
    const namesake = known(other).find(({ name }) => sameName(name, period.name));
    if (!namesake) return [];
    const [here, there] = [shareIn(one, period.id), shareIn(other, namesake.id)];
    if (here === there) return [];
    return [
      `“${period.name}” is ${yearsInWords(periodYears(period))} in ${one.title} and includes ${part(here)} of its years; ` +
        `it is ${yearsInWords(periodYears(namesake))} in ${other.title} and includes ${part(there)}.`,
    ];
  });
  if (byName.length > 0) return byName;
  if (one.state === other.state || one.state === 'unknown' || other.state === 'unknown') return [];
  return [`${one.title} ${saysOf(one)}; ${other.title} ${saysOf(other)}.`];
}

function saysOf({ state, periods }: Claim): string {
  const named = periods.map(({ name, years }) => `“${name}” (${years})`);
  if (state === 'outside') return 'has no period for it';
  if (state === 'straddles')
    return named.length === 1
      ? `has a period for a part of it only, ${named.join()}`
      : `splits it between ${named.join(' and ')}`;
  const whole = periods.filter(({ share }) => share === 1 || (share === null && periods.length === 1));
  return `places it in ${(whole.length === 0 ? periods : whole).map(({ name, years }) => `“${name}” (${years})`).join(' and ')}`;
}

function shareIn(claim: Claim, id: string): number | null {
  const period = claim.periods.find((each) => each.id === id);
  return period === undefined ? 0 : period.share;
}

function part(share: number | null): string {
  if (share === null) return 'some';
  return share === 0 ? 'none' : share === 1 ? 'all' : `${String(Math.round(share * 100))} %`;
}

function yearsOf(scheme: EraScheme, id: string): string {
  const period = scheme.periods.find((each) => each.id === id);
  return period ? yearsInWords(periodYears(period)) : '';
}

/** `Post-Medieval` and `Post Medieval` are one name. */
function sameName(one: string, other: string): boolean {
  const letters = (name: string) => name.toLowerCase().replaceAll(/[^\p{L}\p{M}\p{N}]/gu, '');
  return letters(one) === letters(other);
}
