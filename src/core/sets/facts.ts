import type { Interval } from '../eras/era-scheme.ts';
import { good, refuse } from '../outcome.ts';
import type { Outcome } from '../outcome.ts';
import type { Fact, ListedType, Lists, Where, Within } from './set-rule.ts';
import type { HowSure, SetPiece, StatedReference } from './set-piece.ts';

/** What a piece states of one fact, folded for comparing. */
export type Stated = {
  readonly values: ReadonlySet<string>;
  /** What it may be besides, being known no nearer: types under the one it is of. */
  readonly maybe?: ReadonlySet<string>;
  readonly sure: HowSure;
  /** Why nothing is stated, where nothing is; `none` says that the piece has no such thing. */
  readonly blank: 'not recorded' | 'unknown' | 'none';
};

/** A die of one face, or a pair, as a rule asks for it; folded. */
export type AskedDie =
  { readonly face: 'obverse' | 'reverse'; readonly die: string } | { readonly face: 'pair'; readonly die: string };

export type StatedDie = { readonly die: string; readonly sure: HowSure };

export type Facts = {
  readonly stated: Readonly<Record<Exclude<Fact, 'references' | 'die'>, Stated>>;
  /** The years it was made in, and whether that is certain or at least probable. */
  readonly made: { readonly years: Interval; readonly isSure: boolean } | null;
  /** The first year in which anything could be made in the name of its rulers; before any, where that is not known. */
  readonly notBefore: number;
  readonly references: readonly StatedReference[];
  readonly referencesSure: HowSure;
  readonly dies: { readonly obverse: StatedDie | null; readonly reverse: StatedDie | null };
};

/** How sentences call a fact. */
export const FACT_WORDS: Readonly<Record<Fact, string>> = {
  kind: 'kind', ruler: 'ruler', 'struck-for': 'ruler', issuer: 'issuer', mint: 'mint', area: 'area',
  denomination: 'denomination', metal: 'metal', tag: 'tag', shape: 'shape', made: 'way of making',
  references: 'reference', realm: 'realm', die: 'die', type: 'type', dynasty: 'dynasty',
}; // prettier-ignore

/** Small letters and digits, joined by hyphens: `East Riding` and `east-riding` are one value. */
export function folded(text: string): string {
  // Ids, which most of what is compared is, are so already.
  if (/^[a-z0-9]+(?:-[a-z0-9]+)*$/.test(text)) return text;
  return (
    text
      .normalize('NFC')
      .toLowerCase()
      .match(/[\p{L}\p{M}\p{N}]+/gu)
      ?.join('-') ?? ''
  );
}

/** A name and every wider one it lies within: County Durham, England. */
export function withWider(name: string, within: readonly Within[] | undefined): readonly string[] {
  const names = [name];
  for (const one of names) {
    for (const step of within ?? []) {
      const isNew = !names.some((known) => folded(known) === folded(step.in));
      if (folded(step.name) === folded(one) && isNew) names.push(step.in);
    }
  }
  return names;
}

/** Every name in an area that is written from the narrow to the wide: `Yorkshire, England` is Yorkshire and England. */
export function namesInArea(area: string): readonly string[] {
  const parts = area.split(/[,;]/u).map((part) => part.trim().replace(/^(?:now|today) /u, ''));
  return [...new Set([area, ...parts.filter((part) => part !== '')])];
}

/** An area, the areas its own name says it lies in, and the wider ones that the cabinet's list gives for any of them. */
export function areasAround(area: string, within: readonly Within[] = NO_LIST): readonly string[] {
  const known = AROUND.get(within) ?? new Map<string, readonly string[]>();
  AROUND.set(within, known);
  const around = known.get(area) ?? [...new Set(namesInArea(area).flatMap((name) => withWider(name, within)))];
  known.set(area, around);
  return around;
}

const NO_LIST: readonly Within[] = [];
/** By the cabinet's list: thousands of pieces are of a few areas. */
const AROUND = new WeakMap<readonly Within[], Map<string, readonly string[]>>();

/** Every name that lies within a wider one: what is said to be of England may be of County Durham. */
function narrower(name: string, within: readonly Within[] = []): ReadonlySet<string> {
  const all = within.filter((one) => withWider(one.name, within).some((wider) => folded(wider) === folded(name)));
  return new Set(all.map((one) => folded(one.name)).filter((one) => one !== folded(name)));
}

/** Whether a type itself says what no piece of it can be under a rule: a place for it could never be filled. */
export function statesOtherwise({ states = {}, made }: ListedType, { date, not = {}, ...where }: Where): boolean {
  const meets = (stated: readonly string[], asked: readonly string[]): boolean => stated.some((one) => asked.map(folded).includes(folded(one)));
  const isOutside = date !== undefined && made !== undefined && (made.high < date.low || date.high < made.low);
  return (
    isOutside ||
    (Object.keys(states) as Fact[]).some((fact) => {
      const [stated = [], asked, barred] = [states[fact], where[fact], not[fact]];
      return (asked !== undefined && !meets(stated, asked)) || (barred !== undefined && meets(stated, barred));
    })
  );
} // prettier-ignore

/** A half of a penny is called a halfpenny, and is of a type of the penny. */
const CUT = /cut|half|halve|quarter|fragment/u;

/**
 * Whether a piece that names no type is of none of these: what it states for certain is otherwise in every one of them. Where
 * its ruler is certainly none that they name, no doubt about its date saves it for a type of other years.
 */
export function isRuledOut({ stated, made, notBefore }: Facts, types: readonly ListedType[]): boolean {
  if (stated.type.values.size > 0 || (stated.type.maybe?.size ?? 0) > 0 || types.length === 0) return false;
  const named = new Set(types.flatMap(({ states = {} }) => states.ruler ?? []).map(folded));
  const { values: rulers, sure: rulerSure, blank } = stated.ruler;
  const hasRuler = rulerSure === 'certain' && (rulers.size > 0 || blank === 'none');
  const isAnothers = hasRuler && named.size > 0 && ![...rulers].some((ruler) => named.has(ruler));
  const isCut = [...stated.shape.values].some((shape) => CUT.test(shape));
  const telling = isCut ? (['ruler', 'mint'] as const) : (['ruler', 'mint', 'denomination'] as const);
  return types.every(({ states = {}, made: theirs }) => {
    if (theirs !== undefined && made !== null && (made.isSure || isAnothers)) {
      if (made.years.high < theirs.low || theirs.high < made.years.low) return true;
    }
    if (theirs !== undefined && isAnothers && theirs.high < notBefore) return true;
    return telling.some((fact) => {
      const { values, sure, blank } = stated[fact];
      const asked = states[fact] ?? [];
      if (asked.length === 0 || sure !== 'certain' || (values.size === 0 && blank !== 'none')) return false;
      return !asked.some((value) => values.has(folded(value)));
    });
  });
}

/** Everything a rule may ask of a piece. Its area is its mint's when it has none of its own, its realms are its rulers'. */
export function factsOf(piece: SetPiece, lists: Lists): Facts {
  const { sure, blanks = {} } = piece;
  const rulers = piece.host === undefined ? piece.rulers : [...piece.rulers, piece.host];
  const area = piece.area ?? lists.mints.find((mint) => mint.id === piece.mint)?.area;
  const of = (fact: string, values: readonly (string | undefined)[], doubt: HowSure | undefined = sure[fact]): Stated => ({
    values: new Set(values.filter((value) => value !== undefined).map(folded)),
    sure: doubt ?? 'certain',
    blank: blanks[fact] ?? 'not recorded',
  }); // prettier-ignore
  const realms = realmsOf(piece, rulers, lists);
  return {
    stated: {
      kind: piece.kind === 'unknown' ? { ...of('kind', []), blank: 'unknown' } : of('kind', [piece.kind]),
      ruler: of('ruler', rulers),
      'struck-for': piece.struckFor.length === 0 ? of('ruler', rulers) : of('struck-for', piece.struckFor),
      issuer: of('issuer', [piece.issuer]),
      mint: of('mint', [piece.mint]),
      area: {
        ...of('area', area === undefined ? [] : areasAround(area, lists.areas), sure['area'] ?? sure['mint']),
        // Where the mint is known, its area is as near as it goes.
        ...(piece.area !== undefined && piece.mint === undefined ? { maybe: narrower(piece.area, lists.areas) } : {}),
      },
      denomination: of('denomination', [piece.denomination]),
      metal: of('metal', [piece.metal]),
      tag: { ...of('tag', piece.tags), blank: 'none' },
      shape: of('shape', [piece.shape]),
      made: of('made', [piece.made]),
      type: { ...of('type', piece.types?.is ?? []), maybe: new Set((piece.types?.maybe ?? []).map(folded)) },
      dynasty: of('dynasty', dynastiesOf(rulers, lists), sure['ruler']),
      realm: of('realm', realms.names, realms.changes ? 'possible' : sure['ruler']),
    },
    made: piece.interval && { years: piece.interval, isSure: sure['date'] !== 'possible' },
    notBefore: (sure['ruler'] ?? 'certain') === 'certain' ? accessionOf(piece.rulers, lists) : -Infinity,
    references: piece.references,
    referencesSure: sure['references'] ?? 'certain',
    dies: {
      obverse: statedDie(piece.dies?.obverse, sure['dies'] ?? sure['die']),
      reverse: statedDie(piece.dies?.reverse, sure['dies'] ?? sure['die']),
    },
  };
}

/** The year in which the last of these rulers to begin began; before any year where that is not listed of one. */
function accessionOf(rulers: readonly string[], lists: Lists): number {
  const firsts = rulers.map((ruler) => {
    const reigns = lists.rulers.find(({ id }) => id === ruler)?.reigns ?? [];
    return reigns.length === 0 ? -Infinity : Math.min(...reigns.map(({ low }) => low));
  });
  return firsts.length === 0 ? -Infinity : Math.max(...firsts);
}

function dynastiesOf(rulers: readonly string[], lists: Lists): readonly string[] {
  return lists.rulers.flatMap(({ id, dynasty }) => (rulers.includes(id) && dynasty !== undefined ? [dynasty] : []));
}

/** The realms of a piece's rulers, at the time of the piece; `changes` when the name changed within that time. */
function realmsOf(
  { interval }: SetPiece,
  rulers: readonly string[],
  lists: Lists,
): { readonly names: readonly string[]; readonly changes: boolean } {
  const each = lists.rulers
    .filter(({ id }) => rulers.includes(id))
    .map(({ realm, reigns }) => {
      const then = reigns.filter(({ low, high }) => interval === null || (low <= interval.high && interval.low <= high));
      const named = (then.length === 0 ? reigns : then).map((reign) => reign.realm ?? realm);
      const names = named.length === 0 ? [realm] : named;
      return [...new Set(names.filter((name) => name !== undefined))];
    }); // prettier-ignore
  return {
    names: each.flat().flatMap((name) => withWider(name, lists.realms)),
    changes: each.some((names) => names.length > 1),
  };
}

function statedDie(name: string | undefined, sure: HowSure | undefined): StatedDie | null {
  if (name === undefined) return null;
  const doubted = /\?\s*\)?$/u.test(name) ? 'possible' : 'certain';
  return { die: folded(name), sure: sure ?? doubted };
}

/** Reads `obverse A1`, `reverse b3`, `A1-b3`; a single name without its face may be of either, and is refused. */
export function parseAskedDie(text: string): Outcome<AskedDie> {
  const die = folded(text);
  const [, face, name] = /^(obverse|obv|reverse|rev)-(.+)$/u.exec(die) ?? [];
  if (name !== undefined) return good({ face: face?.startsWith('obv') === true ? 'obverse' : 'reverse', die: name });
  if (die.includes('-')) return good({ face: 'pair', die });
  return refuse(`The die “${text}” may be of either face. Write obverse ${text}, or reverse ${text}.`);
}
