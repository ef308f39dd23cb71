import { formatYear } from '../dating/format-date.ts';
import { yearsInWords } from '../eras/years-in-words.ts';
import type { Interval } from '../eras/era-scheme.ts';
import { good, refuse } from '../outcome.ts';
import type { Outcome } from '../outcome.ts';
import { clashOf, clashWithin, namelessDie } from './clash.ts';
import { areasAround, folded, statesOtherwise, withWider } from './facts.ts';
import { numberInWords } from '../references/parse-reference.ts';
import type { Lists, PlaceWritten, SetRule, Where, Within } from './set-rule.ts';

/** One position in a set, with everything a piece must be to be in it beyond what the whole set asks. */
export type SetPlace = {
  readonly id: string;
  readonly label: string;
  readonly where: Where;
  /** Why nothing can stand here. */
  readonly excused?: string;
};

/** Every place of a set in order: those written out, or those the rule yields from the list files. */
export function placesOf(rule: SetRule, lists: Lists): Outcome<readonly SetPlace[]> {
  const within = namelessDie(rule.where) ?? clashWithin(rule.where);
  if (within !== null) return refuse(`Nothing can be in “${rule.title}”: ${within}`);
  if (rule.places === undefined) return placesByRule(rule, lists);
  if (rule.places.length === 0)
    return refuse(`“${rule.title}” has no place. Name at least one under places:, or leave places: out.`);
  const places: SetPlace[] = [];
  for (const written of rule.places) {
    if (places.some(({ id }) => id === written.is)) {
      return refuse(`“${rule.title}” names the place ${written.is} twice. Give the second its own id, or remove it.`);
    }
    const place = readPlace(written, rule, lists);
    if (!place.ok) return place;
    places.push(place.value);
  }
  return good(places);
}

function readPlace(written: PlaceWritten, rule: SetRule, lists: Lists): Outcome<SetPlace> {
  const named = byId(written.is, rule, lists);
  const label = written.label ?? (named.ok ? named.value.label : written.is);
  if (written.excused !== undefined) return good({ id: written.is, label, where: {}, excused: written.excused });
  if (written.where === undefined && !named.ok) return named;
  const where = written.where ?? (named.ok ? named.value.where : {});
  const clash = namelessDie(where) ?? clashOf(rule.where, where);
  const printed = where.references?.[0] === label ? numberInWords(label, lists.works) : label;
  if (clash === null) return good({ id: written.is, label: printed, where });
  return refuse(`Nothing can fill the place ${written.is} of “${rule.title}”: ${clash}`);
}

function byId(id: string, rule: SetRule, lists: Lists): Outcome<SetPlace> {
  const unknown = (file: string) =>
    refuse(
      `“${rule.title}” names the place ${id}, and there is no ${file}/${id}.yaml. Add the file, or write { is: ${id}, where: { … } }.`,
    );
  switch (rule['one-per']) {
    case 'ruler': {
      const ruler = lists.rulers.find((each) => each.id === id);
      return ruler ? good({ id, label: ruler.name, where: rulerWhere(id, rule) }) : unknown('rulers');
    }
    case 'mint': {
      const mint = lists.mints.find((each) => each.id === id);
      return mint ? good({ id, label: mint.name, where: { mint: [id] } }) : unknown('mints');
    }
    case 'date': {
      const year = /^(\d{1,4})(-bc)?$/.exec(id);
      if (year === null)
        return refuse(
          `The place ${id} of “${rule.title}” is no year. Write 1887 or 44-bc, or { is: ${id}, where: { date: … } }.`,
        );
      return good(yearPlace(year[2] === undefined ? Number(year[1]) : 1 - Number(year[1])));
    }
    case 'type': {
      const [type, other] = (lists.types ?? []).filter(
        (each) => each.id === id && (rule.series === undefined || each.series === rule.series),
      );
      if (type !== undefined && other !== undefined)
        return refuse(
          `“${rule.title}” names the place ${id}, and that is a type of ${type.series} and of ${other.series}. Write series: ${type.series} in the set, or { is: ${id}, where: { type: ${type.series}/${id} } }.`,
        );
      return type
        ? good({ id, label: type.label, where: { type: [`${type.series}/${id}`] } })
        : refuse(
            `“${rule.title}” names the place ${id}, and no series in types/ has such a type. Add it, or write the number of a book: north 1017.`,
          );
    }
    case 'dynasty':
      return good({ id, label: id, where: { dynasty: [id] } });
    case 'issuer':
      return good({ id, label: id, where: { issuer: [id] } });
    case 'area':
      return good({ id, label: id, where: { area: [id] } });
    case 'reference':
      return good({ id, label: numberInWords(id, lists.works), where: { references: [id] } });
    case 'die':
      return good({ id, label: id, where: { die: [id] } });
    case 'listed':
      return refuse(
        `“${rule.title}” does not say what fills the place ${id}. Write { is: ${id}, where: { tag: ${id} } }, or any other fact.`,
      );
  }
}

/** The ruler a place asks for: the one named on the piece, or the one it was struck for. */
function rulerWhere(id: string, rule: SetRule): Where {
  return rule.count === 'struck-for' ? { 'struck-for': [id] } : { ruler: [id] };
}

function yearPlace(year: number): SetPlace {
  const id = year > 0 ? String(year) : `${String(1 - year)}-bc`;
  return { id, label: formatYear(year), where: { date: { low: year, high: year } } };
}

/** More years than any series of dated coins has; beyond it a rule is a slip of the pen. */
const MOST_YEARS = 1000;

/** Every place a rule yields: rulers by first reign, mints and areas by name, years in order. */
function placesByRule(rule: SetRule, lists: Lists): Outcome<readonly SetPlace[]> {
  switch (rule['one-per']) {
    case 'ruler':
      return silentRulers(rule, lists) ?? some(rulers(rule, lists), rule, 'no ruler in rulers/');
    case 'mint': {
      const places = mints(rule, lists).map(({ id, name }) => ({ id, label: name, where: { mint: [id] } }));
      return silentMints(rule, lists) ?? some(places, rule, 'no mint in mints/');
    }
    case 'area':
      return silentMints(rule, lists) ?? some(areas(rule, lists), rule, 'no area of a mint in mints/');
    case 'dynasty':
      return some(dynasties(rule, lists), rule, 'no ruler of a dynasty in rulers/');
    case 'type':
      return some(types(rule, lists), rule, 'no type in types/');
    case 'date':
      return years(rule);
    case 'issuer':
    case 'reference':
    case 'die':
    case 'listed':
      return refuse(
        `“${rule.title}” is one per ${rule['one-per']}, which no list file can yield. Write its places out under places:.`,
      );
  }
}

function some(places: readonly SetPlace[], rule: SetRule, lacking: string): Outcome<readonly SetPlace[]> {
  if (places.length > 0) return good(places);
  return refuse(
    `The rule of “${rule.title}” yields no place: ${lacking} answers it. Widen where:, or write the places out under places:.`,
  );
}

type Ruler = Lists['rulers'][number];

/** The rulers a rule may mean by their names alone. */
function namedRulers({ where }: SetRule, { rulers }: Lists): readonly Ruler[] {
  const named = where.ruler ?? where['struck-for'];
  const barred = where.not?.ruler ?? where.not?.['struck-for'];
  return rulers
    .filter(({ id }) => named === undefined || named.includes(id))
    .filter(({ id }) => barred?.includes(id) !== true);
}

/** The realms of a ruler in the years a rule asks for: those of the reigns then, else the ruler's own. */
function realmsOf(ruler: Ruler, date: Interval | undefined): readonly string[] {
  const then = ruler.reigns.filter((reign) => meets(reign, date));
  const realms = then.length === 0 ? [ruler.realm] : then.map(({ realm }) => realm ?? ruler.realm);
  return realms.filter((realm) => realm !== undefined);
}

function rulers(rule: SetRule, lists: Lists): readonly SetPlace[] {
  const { where } = rule;
  const ruled = (ruler: Ruler, realms: readonly string[] | undefined): boolean =>
    realmsOf(ruler, where.date).some((realm) => among(realm, realms, lists.realms));
  return namedRulers(rule, lists)
    .filter((ruler) => where.realm === undefined || ruled(ruler, where.realm))
    .filter((ruler) => where.not?.realm === undefined || !ruled(ruler, where.not.realm))
    .map((ruler) => ({ ...ruler, struck: ruler.reigns.filter(({ coins }) => coins !== false) }))
    .filter(({ reigns, struck }) => reigns.length === 0 || struck.some((reign) => meets(reign, where.date)))
    .map((ruler) => ({ ...ruler, first: Math.min(...ruler.struck.map(({ low }) => low)) }))
    .sort((a, b) => (a.first === b.first ? inOrder(a.name, b.name) : a.first - b.first))
    .map(({ id, name }) => ({ id, label: name, where: rulerWhere(id, rule) }));
}

/** Dynasties in the order in which their first rulers reigned. */
function dynasties(rule: SetRule, lists: Lists): readonly SetPlace[] {
  const { where } = rule;
  const within = namedRulers(rule, lists).filter(
    (ruler) =>
      (where.realm === undefined ||
        realmsOf(ruler, where.date).some((realm) => among(realm, where.realm, lists.realms))) &&
      ruler.reigns.some((reign) => reign.coins !== false && meets(reign, where.date)),
  );
  const first = (name: string): number =>
    Math.min(...within.flatMap((ruler) => (ruler.dynasty === name ? ruler.reigns.map(({ low }) => low) : [])));
  const names = [...new Set(within.flatMap(({ dynasty }) => dynasty ?? []))];
  return names
    .filter((name) => where.dynasty === undefined || where.dynasty.map(folded).includes(folded(name)))
    .toSorted((a, b) => first(a) - first(b) || inOrder(a, b))
    .map((name) => ({ id: folded(name), label: name, where: { dynasty: [name] } }));
}

/** The types of a series at one of its levels, or its leaves, in the order of their table. */
function types({ where, series, level }: SetRule, lists: Lists): readonly SetPlace[] {
  return (lists.types ?? [])
    .filter((type) => series === undefined || type.series === series)
    .filter((type) => !statesOtherwise(type, where) && (level === undefined ? type.leaf : type.level === level))
    .filter(({ names }) => where.type === undefined || where.type.some((one) => names.includes(one)))
    .filter(({ names }) => where.not?.type?.some((one) => names.includes(one)) !== true)
    .map(({ id, series: of, label }) => ({ id, label, where: { type: [`${of}/${id}`] } }));
}

/** A rule cannot tell whether a ruler belongs whose file does not say what it asks for: it asks, instead of leaving him out. */
function silentRulers(rule: SetRule, lists: Lists): Outcome<never> | null {
  const { title, where } = rule;
  const all = namedRulers(rule, lists);
  const stateless = where.realm === undefined && where.not?.realm === undefined ? [] : all.filter((ruler) => realmsOf(ruler, undefined).length === 0);
  if (stateless.length > 0) {
    const wants = where.realm === undefined ? 'leaves out rulers by their realm' : `wants the rulers of ${where.realm.join(' or ')}`;
    return silence(`“${title}” ${wants}`, stateless, all.length, 'rulers', 'realm');
  }
  const reignless = where.date === undefined || where.ruler !== undefined || where['struck-for'] !== undefined ? [] : all.filter(({ reigns }) => reigns.length === 0);
  if (where.date === undefined || reignless.length === 0) return null;
  return silence(`“${title}” wants every ruler of ${yearsInWords(where.date)}`, reignless, all.length, 'rulers', 'reign');
} // prettier-ignore

/** `12 of 13 rulers have no reign`, and what to do about it. */
function silence(
  wants: string,
  silent: readonly { readonly id: string }[],
  all: number,
  list: 'rulers' | 'mints',
  lacks: 'reign' | 'realm' | 'area' | 'time of striking',
): Outcome<never> {
  const named = silent.slice(0, 3).map(({ id }) => id).join(', ');
  const more = silent.length > 3 ? ` and ${String(silent.length - 3)} more` : '';
  const field = { reign: 'reigns:', realm: 'realm:', area: 'area:', 'time of striking': 'struck:' }[lacks];
  const have = `${String(silent.length)} of ${String(all)} ${list} ${silent.length === 1 ? 'has' : 'have'} no ${lacks} (${named}${more})`;
  return refuse(
    `${wants}, and ${have}, so the rule cannot tell whether they belong. Add ${field} to their files in ${list}/, or write the places out under places:.`,
  );
} // prettier-ignore

function mints({ where }: SetRule, lists: Lists): Lists['mints'] {
  return lists.mints
    .filter((mint) => where.mint === undefined || where.mint.includes(mint.id))
    .filter((mint) => where.not?.mint?.includes(mint.id) !== true)
    .filter((mint) => among(mint.area, where.area, lists.areas, areasAround))
    .filter(
      (mint) =>
        where.date === undefined || mint.struck === undefined || mint.struck.some((span) => meets(span, where.date)),
    )
    .toSorted((a, b) => inOrder(a.name, b.name));
}

function areas(rule: SetRule, lists: Lists): readonly SetPlace[] {
  const names = mints(rule, lists).flatMap(({ area }) => (area === undefined ? [] : [area]));
  const first = names.filter((area, at) => names.findIndex((other) => folded(other) === folded(area)) === at);
  return first.toSorted(inOrder).map((area) => ({ id: folded(area), label: area, where: { area: [area] } }));
}

/** As for rulers: a mint whose file does not say what the rule asks for. */
function silentMints(rule: SetRule, lists: Lists): Outcome<never> | null {
  const { title, where } = rule;
  const named = lists.mints.filter(({ id }) => where.mint === undefined || where.mint.includes(id)).filter(({ id }) => where.not?.mint?.includes(id) !== true);
  const placeless = where.area === undefined && rule['one-per'] !== 'area' ? [] : named.filter(({ area }) => area === undefined);
  if (placeless.length > 0) {
    const wants = where.area === undefined ? 'has one place per area' : `wants the mints of ${where.area.join(' or ')}`;
    return silence(`“${title}” ${wants}`, placeless, named.length, 'mints', 'area');
  }
  const all = mints(rule, lists);
  const timeless = where.date === undefined || where.mint !== undefined ? [] : all.filter(({ struck }) => struck === undefined);
  if (where.date === undefined || timeless.length === 0) return null;
  return silence(`“${title}” wants every mint that struck in ${yearsInWords(where.date)}`, timeless, all.length, 'mints', 'time of striking');
} // prettier-ignore

function years({ title, where }: SetRule): Outcome<readonly SetPlace[]> {
  const { low, high } = where.date ?? { low: -Infinity, high: Infinity };
  if (!Number.isFinite(high - low))
    return refuse(`“${title}” is one per date. Say from when to when: where: { date: 1838/1901 }.`);
  if (high - low >= MOST_YEARS)
    return refuse(
      `“${title}” would have ${String(high - low + 1)} places, one a year. Narrow its date, or write the places out.`,
    );
  return good(Array.from({ length: high - low + 1 }, (_, at) => yearPlace(low + at)));
}

/** Whether a name, or a wider one it lies within, is among those asked for. */
function among(value: string | undefined, values: readonly string[] | undefined, within: readonly Within[] = [], around = withWider): boolean {
  if (values === undefined) return true;
  const asked = values.map(folded);
  return value !== undefined && around(value, within).some((name) => asked.includes(folded(name)));
} // prettier-ignore

function meets(span: Interval, date: Interval | undefined): boolean {
  return date === undefined || (span.low <= date.high && date.low <= span.high);
}

/** By letters alone, the same on every machine. */
function inOrder(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
