import type { Interval } from '../eras/era-scheme.ts';
import type { Graded } from '../grade/compare-grades.ts';
import type { CitedWork } from '../references/reference.ts';
import type { TimeSpan } from './set-piece.ts';

type Values = readonly string[] | undefined;

/** The facts that a set may ask about, each with the values that will do. */
export type WhereFacts = {
  readonly kind?: Values;
  readonly ruler?: Values;
  /** The actual authority; for a piece that names none, its ruler. */
  readonly 'struck-for'?: Values;
  readonly issuer?: Values;
  readonly mint?: Values;
  readonly area?: Values;
  readonly denomination?: Values;
  readonly metal?: Values;
  readonly tag?: Values;
  readonly shape?: Values;
  readonly made?: Values;
  /** A work and the number as printed there: `north 1018`. */
  readonly references?: Values;
  readonly realm?: Values;
  /** An obverse die, a reverse die, or the pair: `obverse A1`, `reverse b3`, `A1-b3`. */
  readonly die?: Values;
  /** A type, by its id or `series/id`; a piece of a narrower type is one too. */
  readonly type?: Values;
  /** The dynasty of its rulers. */
  readonly dynasty?: Values;
};

export type Fact = keyof WhereFacts;

/** What a piece must be: every fact named, in one of its values; made wholly within the date; and nothing under `not`. */
export type Where = WhereFacts & {
  readonly date?: TimeSpan | undefined;
  readonly not?: WhereFacts | undefined;
};

/** A place as the keeper writes it: an id, or an id with its label, its own rule, or the reason why nothing can stand there. */
export type PlaceWritten = {
  readonly is: string;
  readonly label?: string | undefined;
  readonly where?: Where | undefined;
  readonly excused?: string | undefined;
};

export type OnePer =
  'ruler' | 'dynasty' | 'mint' | 'area' | 'issuer' | 'date' | 'type' | 'reference' | 'die' | 'listed';

export type Accept = {
  /** `yes`: a piece made over from another may fill a place, also one of its host's ruler. */
  readonly altered: 'yes' | 'no';
  /** What a piece with a problem does: stand as a filler, fill like any other, or nothing. */
  readonly details: 'filler' | 'yes' | 'no';
  /** Whether an uncertain statement makes a possible place or none. */
  readonly uncertain: 'count-as-possible' | 'no';
  /** `both`: a piece of a joint reign fills the places of all its rulers; `one`: of one of them. */
  readonly 'joint-reign': 'one' | 'both';
  /** `yes`: counterfeits and replicas may fill places; they also may where the rule asks for that kind. */
  readonly copies: 'yes' | 'no';
  readonly 'one-piece': 'one-place' | 'any-places';
};

/** The written rule of a set, in the words of its file. */
export type SetRule = {
  readonly id: string;
  readonly title: string;
  readonly 'one-per': OnePer;
  /** Whether a ruler counts as the name on the piece or as the one it was struck for; the name when left out. */
  readonly count?: 'ruler' | 'struck-for' | undefined;
  readonly where: Where;
  /** Of one per type: which series, and at which of its levels; its leaves when that is left out. */
  readonly series?: string | undefined;
  readonly level?: string | undefined;
  /** Absent: every value the rule yields from the list files. */
  readonly places?: readonly PlaceWritten[] | undefined;
  /** What is left out stands as in `ACCEPT`. */
  readonly accept?: Partial<Accept> | undefined;
  /** Whether a date counts as the time of making, or as it stands on the piece where it does; of making when left out. */
  readonly dates?: 'as-made' | 'as-dated' | undefined;
  /** The grade aimed at. */
  readonly aim?: Graded | null | undefined;
};

export const ACCEPT: Accept = {
  altered: 'no',
  details: 'filler',
  uncertain: 'count-as-possible',
  'joint-reign': 'one',
  copies: 'no',
  'one-piece': 'one-place',
};

/** A name that lies within a wider one: County Durham in England. */
export type Within = { readonly name: string; readonly in: string };

/** A type as a rule may draw places from it; `leaf` where none is narrower. */
export type ListedType = {
  readonly id: string;
  /** What it may be called in a rule: its own id and those of the types it is under, with and without the series. */
  readonly names: readonly string[];
  readonly series: string;
  readonly label: string;
  readonly level: string | null;
  readonly leaf: boolean;
  /** What holds of every piece of it, by the fact; empty where the type says that it has none. */
  readonly states?: Readonly<Partial<Record<Fact, readonly string[]>>> | undefined;
  /** When its pieces were made. */
  readonly made?: Interval | undefined;
};

/** What the list files say, as far as a rule may draw places from them. */
export type Lists = {
  readonly rulers: readonly {
    readonly id: string;
    readonly name: string;
    readonly realm?: string | undefined;
    readonly dynasty?: string | undefined;
    /** `coins: false` for a reign that struck none; `realm` where it was called otherwise than the ruler's realm. */
    readonly reigns: readonly (Interval & {
      readonly coins?: boolean | undefined;
      readonly realm?: string | undefined;
    })[];
  }[];
  readonly mints: readonly {
    readonly id: string;
    readonly name: string;
    readonly area?: string | undefined;
    /** When it struck coins; left out when the file does not say. */
    readonly struck?: readonly Interval[] | undefined;
  }[];
  /** The books by which references are compared. */
  readonly works?: readonly CitedWork[] | undefined;
  /** The types of every series, in the order of their tables. */
  readonly types?: readonly ListedType[] | undefined;
  readonly areas?: readonly Within[] | undefined;
  readonly realms?: readonly Within[] | undefined;
};
