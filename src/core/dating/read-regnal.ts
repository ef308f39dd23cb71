import { civilFromDay, dayFromCivil, dayFromIso, lengthOfMonth, type Reckoning } from '../calendars/reckoning.ts';
import { good, refuse, type Outcome } from '../outcome.ts';
import type { Bound, Reading, Reign } from './dating.ts';
import type { PointReader } from './point-reader.ts';
import { readDays, readYears } from './reading.ts';
import { foldedText } from './written-text.ts';

const YEAR = '(?:regnal year|year|yr\\.?|r\\. ?y\\.|a\\. ?r\\.|anno regni|Jahr|an)';
const FORMS = [
  new RegExp(`^(?<name>\\D.*?),? ${YEAR} (?<number>\\d{1,2})$`, 'i'),
  new RegExp(`^${YEAR} (?<number>\\d{1,2}) (?:of |de |von )?(?:the reign of )?(?<name>\\D.*)$`, 'i'),
  /^(?<number>\d{1,2}) (?<name>\D.*)$/,
  /^(?:(?:the )?reign of|temp\.|tempore) (?<name>\D.*)$/i,
];

/** What reads a bound of a reign as its file states it: any date at all. */
export type DateReader = (text: string) => Outcome<Reading> | undefined;

/** `Edward I, year 7`, `7 Edward I`, `year 7 of Edward I`, `reign of Edward I`, for the rulers whose reigns are given. */
export function regnalReader(reigns: readonly Reign[], readDate: DateReader): PointReader {
  let named: ReadonlyMap<string, readonly Reign[]> | undefined;
  return (text) => {
    for (const [index, form] of FORMS.entries()) {
      const groups = form.exec(text)?.groups;
      if (!groups) continue;
      // Only a text that may name a ruler pays for the index of their names.
      named ??= reignsByName(reigns);
      const known = named.get(foldedText(groups['name'] ?? '')) ?? [];
      if (known.length > 0) return settled(text, known, groups['number'], readDate);
      if (index !== 2)
        return refuse(
          `No reign of "${groups['name'] ?? ''}" is known here; write the name as in the ruler's file, or the year AD.`,
        );
    }
    return undefined;
  };
}

function reignsByName(reigns: readonly Reign[]): ReadonlyMap<string, readonly Reign[]> {
  const named = new Map<string, Set<Reign>>();
  for (const reign of reigns) {
    for (const name of [reign.ruler, ...reign.names].map(foldedText)) {
      named.set(name, (named.get(name) ?? new Set()).add(reign));
    }
  }
  return new Map([...named].map(([name, all]) => [name, [...all]]));
}

function settled(
  text: string,
  reigns: readonly Reign[],
  number: string | undefined,
  readDate: DateReader,
): Outcome<Reading> {
  const outcomes = reigns.map((reign) =>
    readReign(text, reign, number === undefined ? undefined : Number(number), readDate),
  );
  const readings = outcomes.flatMap((outcome) => (outcome.ok ? [outcome.value] : []));
  const distinct = new Set(readings.map(({ edtf, from }) => `${edtf} ${from ?? ''}`));
  if (distinct.size > 1)
    return refuse(`"${text}" fits more than one reign; write the year AD, or name the reign as its file does.`);
  const [only] = readings;
  return only ? good(only) : (outcomes[0] ?? refuse(`"${text}" fits no reign; write the year AD.`));
}

function readReign(text: string, reign: Reign, number: number | undefined, readDate: DateReader): Outcome<Reading> {
  const start = readDate(reign.from);
  const end = readDate(reign.to);
  const counted = reign.regnalFrom === undefined ? start : readDate(reign.regnalFrom);
  if (!start?.ok || !end?.ok || !counted?.ok) {
    return refuse(
      `The reign of ${reign.ruler} has no dates that can be read; write them in the ruler's file, as 1272-11-20.`,
    );
  }
  if (number === undefined) return good({ ...readYears(start.value.earliest, end.value.latest, 'regnal') });
  const year = yearOfReign(counted.value, number);
  const last = end.value;
  if (number < 1 || !year || beginsAfter(year, last)) {
    return refuse(
      `"${text}" lies outside the reign of ${reign.ruler}, ${reign.from} to ${reign.to}; write a year within it.`,
    );
  }
  return good(cutShort(year, last));
}

/** The years a regnal year touches, or its days when the day is known from which the years are counted. */
function yearOfReign(counted: Reading, number: number): Reading | undefined {
  const { from, to, reckoning, earliest, latest } = counted;
  if (from !== undefined && from === to && reckoning) {
    const first = anniversary(from, reckoning, number - 1);
    return readDays(first, anniversary(from, reckoning, number) - 1, 'regnal');
  }
  if (typeof earliest !== 'number' || typeof latest !== 'number') return undefined;
  return readYears(earliest + number - 1, latest + number, 'regnal');
}

function anniversary(iso: string, reckoning: Reckoning, years: number): number {
  const civil = civilFromDay(dayFromIso(iso, reckoning), reckoning);
  const year = civil.year + years;
  return dayFromCivil({ ...civil, year, day: Math.min(civil.day, lengthOfMonth(year, civil.month)) }, reckoning);
}

/** A reign's last year ends with the reign. */
function cutShort(year: Reading, end: Reading): Reading {
  if (year.from && year.to && year.reckoning && end.to && end.reckoning) {
    const first = dayFromIso(year.from, year.reckoning);
    const last = Math.min(dayFromIso(year.to, year.reckoning), dayFromIso(end.to, end.reckoning));
    return readDays(first, Math.max(first, last), 'regnal');
  }
  if (numberOr(year.latest) <= closes(end)) return year;
  return readYears(year.earliest, end.latest, 'regnal');
}

function beginsAfter(year: Reading, end: Reading): boolean {
  if (year.from && year.reckoning && end.to && end.reckoning) {
    return dayFromIso(year.from, year.reckoning) > dayFromIso(end.to, end.reckoning);
  }
  return numberOr(year.earliest) > closes(end);
}

function closes({ latest }: Reading): number {
  return numberOr(latest);
}

function numberOr(bound: Bound): number {
  return typeof bound === 'number' ? bound : Number.POSITIVE_INFINITY;
}
