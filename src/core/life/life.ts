import type { Dating } from '../dating/dating.ts';
import type { Money } from '../money/money.ts';

/** What an event does with a piece: it comes, it leaves, it goes out for a time, it is back. */
export type Effect = 'comes' | 'leaves' | 'lent' | 'returned' | 'recovered';

/** Everything that can become of a piece, in the words of `private/life.csv`. */
export const LIFE_EVENTS = {
  bought: 'comes',
  'given to me': 'comes',
  inherited: 'comes',
  'dug up': 'comes',
  'exchanged in': 'comes',
  sold: 'leaves',
  given: 'leaves',
  'exchanged out': 'leaves',
  lost: 'leaves',
  stolen: 'leaves',
  lent: 'lent',
  returned: 'returned',
  recovered: 'recovered',
} as const satisfies Readonly<Record<string, Effect>>;
export type LifeEventName = keyof typeof LIFE_EVENTS;

/** One row: what became of a piece, and when. */
export type LifeEvent = {
  readonly piece: string;
  readonly event: LifeEventName;
  readonly date: Dating;
  /** What was paid or got for it alone; null where nothing was said. No value is worked out for what was exchanged. */
  readonly amount: Money | null;
  /** What it cost beside that: postage, fees. */
  readonly costs: Money | null;
  readonly due: Dating | null;
  /** What ties it to the others of one exchange or job lot. */
  readonly deal: string | null;
  /** The line of the table it stands on. */
  readonly line: number;
};

/** Where a piece is after all that is told of it. */
export type Whereabouts = 'kept' | 'lent' | 'left';

/** Something that cannot have been: the line of the event, and a sentence. */
export type LifeFault = { readonly line: number; readonly says: string };

export type Course = {
  /** In the order in which it was. */
  readonly events: readonly LifeEvent[];
  readonly where: Whereabouts;
  /** The event that made it so; null where nothing is told. */
  readonly by: LifeEvent | null;
  readonly faults: readonly LifeFault[];
};

/** First and last day an event can have been on, as ISO days; years before 1 or without an end are as wide as can be. */
export function daysOf({ from, to, earliest, latest }: Dating): { readonly first: string; readonly last: string } {
  const year = (one: number): string => String(one).padStart(4, '0');
  return {
    first: from ?? (typeof earliest === 'number' && earliest > 0 ? `${year(earliest)}-01-01` : '0000-01-01'),
    last: to ?? (typeof latest === 'number' && latest > 0 ? `${year(latest)}-12-31` : '9999-12-31'),
  };
}

/**
 * The events of one piece in the order in which they were: by their days, and where these leave it open (a bare year beside a
 * day of it) as they were written down.
 */
export function inOrderOfTime(events: readonly LifeEvent[]): readonly LifeEvent[] {
  const ordered: LifeEvent[] = [];
  for (const event of events) {
    const { last } = daysOf(event.date);
    const at = ordered.findIndex((one) => daysOf(one.date).first > last);
    ordered.splice(at === -1 ? ordered.length : at, 0, event);
  }
  return ordered;
}

/** What became of one piece, and what of it cannot have been. Where nothing tells how it came, it was there. */
export function courseOf(events: readonly LifeEvent[]): Course {
  const ordered = inOrderOfTime(events);
  const faults: LifeFault[] = [];
  let where: Whereabouts = 'kept';
  let by: LifeEvent | null = null;
  for (const event of ordered) {
    const refusal = refusalOf(event, where, by);
    if (refusal === null) {
      where = AFTER[LIFE_EVENTS[event.event]];
      by = event;
    } else faults.push({ line: event.line, says: refusal });
  }
  return { events: ordered, where, by, faults };
}

const AFTER: Readonly<Record<Effect, Whereabouts>> = {
  comes: 'kept',
  leaves: 'left',
  lent: 'lent',
  returned: 'kept',
  recovered: 'kept',
};

/** Why an event cannot follow; null when it can. */
function refusalOf({ event }: LifeEvent, where: Whereabouts, by: LifeEvent | null): string | null {
  const effect = LIFE_EVENTS[event];
  const since = by === null ? '' : ` (${by.event} ${by.date.text})`;
  if (effect === 'comes')
    return where === 'left' || by === null
      ? null
      : `This piece is with you already${where === 'lent' ? ', and lent' : ''}${since}. Write how it left first, or take this line out.`;
  if (where === 'left')
    return effect !== 'recovered'
      ? `This piece has left${since}. Write how it came back first: recovered, bought …`
      : by?.event === 'lost' || by?.event === 'stolen'
        ? null
        : `Only what was lost or stolen is recovered; this piece was ${by?.event ?? 'gone'}${since}. Write how it came: bought, given to me …`;
  if (effect === 'recovered') return 'This piece was neither lost nor stolen. Write that first, or take this line out.';
  if (effect === 'returned')
    return where === 'lent' ? null : 'This piece was not lent. Write lent first, or take this line out.';
  if (where === 'kept' || event === 'lost' || event === 'stolen') return null;
  return `This piece is lent${since}. Write returned first.`;
}

/** The status of a piece that its life tells, in the words of its file; null where its life says nothing of that. */
export function statusOf({ where, by }: Course): 'kept' | 'lent' | 'sold' | 'given' | 'exchanged' | 'lost' | null {
  if (by === null) return null;
  if (where !== 'left') return where;
  if (by.event === 'sold' || by.event === 'given' || by.event === 'lost') return by.event;
  return by.event === 'exchanged out' ? 'exchanged' : 'lost';
}
