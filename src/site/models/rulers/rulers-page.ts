import type { Ruler } from '../../../catalogue/catalogue.ts';
import { yearsOf } from '../../../core/dating/interval.ts';
import type { Interval } from '../../../core/eras/era-scheme.ts';
import type { Cabinet } from '../../cabinet.ts';
import { urls } from '../../urls.ts';
import { capital } from '../../words/capital.ts';
import { countWords } from '../../words/counts.ts';
import { rulersWords } from '../../words/rulers.ts';
import { leadingFace } from '../shared/face.ts';
import { gather } from '../shared/gather.ts';
import type { PageHead } from '../shared/head.ts';
import { representative } from '../shared/representative.ts';
import { isCertain, tallyOf } from '../shared/tally.ts';
import { issuersOf, yearsOfAll } from './issuers.ts';
import { piecesOfRuler, tallyOfRuler } from './pieces-of-ruler.ts';
import type { RulerTally } from './pieces-of-ruler.ts';
import { scaleOver } from '../charts/time-scale.ts';
import { timeLine } from '../charts/timed.ts';
import { byYears, spanInWords } from '../charts/years.ts';
import type { TimeKind, TimeLine, UndrawnRow } from '../charts/timed.ts';

/** A realm and its rulers: on one line of years, or on several of one scale, one after another, where one would make a crumb of each reign. */
export type RealmShown = {
  readonly realm: string;
  readonly lines: readonly { readonly name: string; readonly line: TimeLine }[];
};
export type RulersPage = { readonly head: PageHead; readonly realms: readonly RealmShown[] };

/** Every ruler of the lists by realm, the oldest realm first, each realm on its own years. */
export function rulersPage(cabinet: Cabinet): RulersPage {
  const { title, description } = rulersWords;
  const every = Object.values(cabinet.lists.rulers);
  const all = every.filter(({ fields }) => fields.role === undefined);
  const others = every
    .filter(({ fields }) => fields.role !== undefined)
    .toSorted((a, b) => firstYear(a) - firstYear(b));
  const rulers = all.filter(hasReign).toSorted((a, b) => firstYear(a) - firstYear(b) || compareDays(a, b));
  const reignless = all.filter((ruler) => !hasReign(ruler));
  const realms = gather(rulers, ({ fields }) => fields.realm ?? '');
  const small = new Set(realms.flatMap(({ key, all }) => (key === '' || all.length < ENOUGH ? all : [])));
  const few = rulers.filter((ruler) => small.has(ruler));
  return {
    head: { title, description, here: urls.rulers() },
    realms: [
      ...realms
        .filter(({ key, all }) => key !== '' && all.length >= ENOUGH)
        .flatMap(({ key, all }) =>
          shown(
            capital(key),
            rulersWords.listOf(key),
            all.map((ruler) => rulerRow(cabinet, ruler)),
          ),
        ),
      ...listed(
        rulersWords.elsewhere,
        few.map((ruler) => rulerRow(cabinet, ruler, ruler.fields.realm)),
      ),
      ...listed(
        rulersWords.reignless,
        reignless.map((ruler) => rulerRow(cabinet, ruler, ruler.fields.realm)),
      ),
      ...listed(
        rulersWords.notRulers,
        others.map((one) => rulerRow(cabinet, one, one.fields.role)),
      ),
      ...listed(rulersWords.issuers, issuerRows(cabinet)),
    ],
  };
}

function hasReign({ fields }: Ruler): boolean {
  return fields.reigns.length > 0;
}

/** A realm of fewer rulers is told with the other small ones: a line of years wants something to compare. */
const ENOUGH = 3;

function shown(realm: string, name: string, rows: readonly UndrawnRow[]): readonly RealmShown[] {
  const parts = inStretches(rows);
  const length = parts.reduce((most, part) => Math.max(most, endOf(part) - startOf(part)), 0);
  const lines = parts.flatMap((part) => {
    // Every part on as many years, so that a bar is as long as its reign in all of them.
    const scale = scaleOver([{ low: startOf(part), high: startOf(part) + length }]);
    const line = scale === null ? null : timeLine(part, { scale });
    return line === null ? [] : [{ name: parts.length === 1 ? name : rulersWords.from(name, startOf(part)), line }];
  });
  return lines.length === 0 ? listed(realm, rows) : [{ realm, lines }];
}

/** Rulers in words alone: without a known reign, or of realms that have nothing to compare with one another. */
function listed(realm: string, rows: readonly UndrawnRow[]): readonly RealmShown[] {
  if (rows.length === 0) return [];
  const bare = rows.map(({ spans: _, ...row }) => ({ ...row, face: row.face ?? null, bars: [] }));
  return [{ realm, lines: [{ name: realm, line: { ticks: [], behind: [], rows: bare } }] }];
}

/** More years than these are drawn in parts; a part holds the reigns that begin within so many. */
const MOST_YEARS = 320;
const PART = 190;

/** Rows in the order of their years, cut where a part would grow too long. */
function inStretches(rows: readonly UndrawnRow[]): readonly (readonly UndrawnRow[])[] {
  if (endOf(rows) - startOf(rows) <= MOST_YEARS) return [rows];
  const parts: UndrawnRow[][] = [];
  for (const row of rows) {
    const part = parts.at(-1);
    if (part === undefined || startOf([row]) > startOf(part) + PART) parts.push([row]);
    else part.push(row);
  }
  return parts;
}

function startOf(rows: readonly UndrawnRow[]): number {
  return endsOf(rows).reduce((least, year) => Math.min(least, year), Infinity);
}

function endOf(rows: readonly UndrawnRow[]): number {
  return endsOf(rows).reduce((most, year) => Math.max(most, year), -Infinity);
}

function endsOf(rows: readonly UndrawnRow[]): readonly number[] {
  return rows.flatMap(({ spans }) => spans.flatMap(({ span: { low, high } }) => [low, high])).filter(Number.isFinite);
}

function rulerRow(cabinet: Cabinet, ruler: Ruler, realm?: string): UndrawnRow {
  const pieces = piecesOfRuler(cabinet, ruler.id);
  const counted = tallyOfRuler(pieces);
  const { reigns } = ruler.fields;
  const seen =
    [[...pieces.own, ...pieces.inOther], pieces.forOther, pieces.copies]
      .map((some) => representative(some, cabinet, (piece) => isCertain(piece, 'ruler', 'struck-for')))
      .find((one) => one !== null) ?? null;
  const isEmpty = Object.values(pieces).every((list) => list.length === 0);
  const struckNone = reigns.length > 0 && reigns.every(({ coins }) => coins === false);
  return {
    name: ruler.fields.name,
    href: urls.ruler(ruler.id),
    years: ruler.fields.reigns.map(reignInWords).join(', '),
    note: [
      isEmpty && struckNone ? rulersWords.noCoins : rulersWords.count(counted),
      ...(realm === undefined ? [] : [realm]),
    ].join('; '),
    face: seen === null ? null : leadingFace(seen, cabinet.photographs),
    spans: ruler.fields.reigns.map((reign) => ({
      span: spanOf(reign),
      kind: kindOf(counted, reign.with !== undefined),
    })),
  };
}

/** Solid where a piece is certainly here, hollow where one may be or only bears the name, a broken outline where there is none but copies. */
function kindOf({ of, forOther }: RulerTally, isJoint: boolean): TimeKind {
  if (of.here.low > 0) return isJoint ? 'joint' : 'sure';
  return of.here.high + forOther.here.high > 0 ? 'unsure' : 'gap';
}

/** Who was responsible for pieces in somebody else's name, with the pieces. */
function issuerRows(cabinet: Cabinet): readonly UndrawnRow[] {
  return issuersOf(byYears(cabinet.listed)).map(({ name, href, pieces: own }) => {
    const seen = representative(own, cabinet, (piece) => isCertain(piece, 'issuer'));
    const count = countWords.tally(tallyOf(own, (piece) => isCertain(piece, 'issuer')));
    return {
      name,
      href,
      years: rulersWords.yearsOfPieces(yearsOfAll(own)),
      note: count,
      face: seen === null ? null : leadingFace(seen, cabinet.photographs),
      spans: [],
    };
  });
}

type Reign = Ruler['fields']['reigns'][number];

/** The years of a reign, from the earliest it may have begun to the latest it may have ended. */
export function spanOf({ from, to }: Pick<Reign, 'from' | 'to'>): Interval {
  return { low: yearsOf(from).low, high: yearsOf(to).high };
}

/** `about AD 895–905` where either end is only about right. */
function reignInWords(reign: Reign): string {
  const years = spanInWords(spanOf(reign));
  return reign.from.about || reign.to.about ? rulersWords.about(years) : years;
}

/** Within a year, whoever came to the throne on the earlier day; those known to the year alone stay as they came. */
function compareDays(a: Ruler, b: Ruler): number {
  const [one, other] = [a, b].map(({ fields }) => fields.reigns[0]?.from.from ?? '');
  if (one === undefined || other === undefined || one.length < 7 || other.length < 7) return 0;
  return one < other ? -1 : one > other ? 1 : 0;
}

function firstYear({ fields }: Ruler): number {
  const [first] = fields.reigns;
  const low = first === undefined ? 0 : yearsOf(first.from).low;
  return Number.isFinite(low) ? low : -10_000;
}
