import type { Outcome } from '../outcome.ts';
import { good, refuse } from '../outcome.ts';
import { quoted, tidy } from './amount.ts';

/** The turn of the reverse against the obverse, as a clock hour from 1 to 12; null for a piece that has no axis. */
export type Axis = { readonly hours: number | null };

const HOUR = /^(\d{1,3})(?: ?(?:h|h\.|hrs?\.?|hours?|o'?clock|o’clock|uhr))?$/i;
/** `6:00`, and a Roman hour, as a clock face has it. */
const CLOCK = /^(\d{1,2})[:.]00(?: ?h)?$/i;
const ROMAN = new Map(
  ['i', 'ii', 'iii', 'iv', 'v', 'vi', 'vii', 'viii', 'ix', 'x', 'xi', 'xii'].map((word, at) => [word, at + 1]),
);
const TWICE = /^([^()]+) \(([^()]+)\)$/;
const DEGREES = /^(\d{1,3}) ?(?:°|deg\.?|degrees?)$/i;

/** Turns that have a name or a sign. Common practice. */
const NAMED: ReadonlyMap<string, number | null> = new Map<string, number | null>([
  ['none', null],
  ['coin', 6],
  ['coin alignment', 6],
  ['coin turn', 6],
  ['coin axis', 6],
  ['medal', 12],
  ['medal alignment', 12],
  ['medal turn', 12],
  ['medal axis', 12],
  ['medallic', 12],
  ['medallic alignment', 12],
  // The words of German, French and Italian lists.
  ['kehrprägung', 6],
  ['wendeprägung', 12],
  ['frappe monnaie', 6],
  ['frappe médaille', 12],
  ['alla francese', 6],
  ['alla tedesca', 12],
  // One arrow shows where the reverse points, as sylloges print it beside the weight.
  ['↑', 12],
  ['→', 3],
  ['↓', 6],
  ['←', 9],
  ['↑↓', 6],
  ['↑↑', 12],
  ['↑→', 3],
  ['↑←', 9],
  ['⇅', 6],
  ['⇵', 6],
  ['↕', 6],
  ['⇈', 12],
]);

/** What a list says before the hour. */
const NAMES = 'die[ -]?axis(?: measurement)?|axis|axe(?: des coins)?|asse|eje|stempelstellung|posición de cuños';
const CALLED = new RegExp(`^(?:${NAMES})[.:= ]+(?=[\\divx])`, 'u');

const ASK = 'Write a clock hour like 6h, or none for a piece with one face or cast.';

/** Reads `6h`, `6`, `6 o'clock`, `180°`, `↑↓`, `medal alignment`, `none`. */
export function parseAxis(text: string): Outcome<Axis> {
  const words = tidy(text)
    .toLowerCase()
    .replace(CALLED, '')
    .replace(/(?<=\d)\.$/, '');
  const [, said, again] = TWICE.exec(words) ?? [];
  if (said !== undefined && again !== undefined) return readTwice(said, again, text);
  const named = NAMED.get(
    words
      .replace(/[⬆⇑]/g, '↑')
      .replace(/[⬇⇓]/g, '↓')
      .replace(/\uFE0F/g, '')
      .replace(/ ?([↑↓→←]) ?/g, '$1'),
  );
  if (named !== undefined) return good({ hours: named });
  const hour = HOUR.exec(words)?.[1];
  if (hour !== undefined) return readHour(Number(hour), text);
  const clock = CLOCK.exec(words)?.[1];
  if (clock !== undefined) return readHour(Number(clock), text);
  if (/^\d{1,2}:\d\d/.test(words))
    return refuse(`A die axis is a whole hour of the clock; ${quoted(text)} lies between two. Write the nearer one.`);
  const roman = ROMAN.get(words.replace(/ ?h\.?$/, ''));
  if (roman !== undefined) return readHour(roman, text);
  const degrees = DEGREES.exec(words)?.[1];
  if (degrees !== undefined) return readDegrees(Number(degrees), text);
  if (/[↖↗↘↙]/.test(words))
    return refuse(
      `A slanting arrow lies between two hours; this says ${quoted(text)}. Write the nearer clock hour, like 1h or 2h.`,
    );
  return refuse(`A die axis is a clock hour from 1h to 12h; this says ${quoted(text)}. ${ASK}`);
}

/** `6h`, or `none`. */
export function formatAxis(axis: Axis): string {
  return axis.hours === null ? 'none' : `${axis.hours}h`;
}

/** `6h (coin alignment)`: the two must agree. */
function readTwice(said: string, again: string, text: string): Outcome<Axis> {
  const [one, other] = [parseAxis(said), parseAxis(again)];
  if (!one.ok) return one;
  if (other.ok && other.value.hours === one.value.hours) return one;
  return refuse(`${quoted(text)} names two turns. Write ${formatAxis(one.value)} if that is the right one.`);
}

function readHour(hours: number, text: string): Outcome<Axis> {
  if (hours >= 1 && hours <= 12) return good({ hours });
  const instead = hours === 0 ? 'Write 12h.' : hours <= 24 ? `Write ${hours - 12}h.` : ASK;
  return refuse(`A die axis is a clock hour from 1h to 12h; this says ${quoted(text)}. ${instead}`);
}

function readDegrees(degrees: number, text: string): Outcome<Axis> {
  const hours = Math.round(degrees / 30) % 12 || 12;
  if (degrees <= 360 && degrees % 30 === 0) return good({ hours });
  if (degrees > 360) return refuse(`A turn has 360 degrees; this says ${quoted(text)}. ${ASK}`);
  const [before, after] = [Math.floor(degrees / 30), Math.floor(degrees / 30) + 1].map((hour) => `${hour % 12 || 12}h`);
  const nearer = degrees % 30 === 15 ? `${before} or ${after}` : `${hours}h`;
  return refuse(
    `A die axis is kept to the hour of 30 degrees; ${quoted(text)} lies between ${before} and ${after}. Write ${nearer}.`,
  );
}
