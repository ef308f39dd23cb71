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
import { piecesOfRuler } from './pieces-of-ruler.ts';
import { timeLine } from '../charts/timed.ts';
import { spanInWords } from '../charts/years.ts';
import type { TimeLine, UndrawnRow } from '../charts/timed.ts';

export type RealmShown = { readonly realm: string; readonly name: string; readonly line: TimeLine };
export type RulersPage = { readonly head: PageHead; readonly realms: readonly RealmShown[] };

/** Every ruler of the lists by realm, the oldest realm first, each realm on its own line of years. */
export function rulersPage(cabinet: Cabinet): RulersPage {
  const { title, description } = rulersWords;
  const all = Object.values(cabinet.lists.rulers);
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
      ...shown(
        rulersWords.elsewhere,
        rulersWords.elsewhere,
        few.map((ruler) => rulerRow(cabinet, ruler, ruler.fields.realm)),
      ),
      ...shown(
        rulersWords.reignless,
        rulersWords.reignless,
        reignless.map((ruler) => rulerRow(cabinet, ruler, ruler.fields.realm)),
      ),
    ],
  };
}

function hasReign({ fields }: Ruler): boolean {
  return fields.reigns.length > 0;
}

/** A realm of fewer rulers is told with the other small ones: a line of years wants something to compare. */
const ENOUGH = 3;

function shown(realm: string, name: string, rows: readonly UndrawnRow[]): readonly RealmShown[] {
  if (rows.length === 0) return [];
  // Rulers without a known reign are listed without a line of years.
  const bare = rows.map((row) => ({
    name: row.name,
    href: row.href,
    years: row.years,
    note: row.note,
    face: row.face ?? null,
    bars: [],
  }));
  return [{ realm, name, line: timeLine(rows) ?? { ticks: [], behind: [], rows: bare } }];
}

function rulerRow(cabinet: Cabinet, ruler: Ruler, realm?: string): UndrawnRow {
  const { own, forOther, inOther } = piecesOfRuler(cabinet, ruler.id);
  const count = own.length + forOther.length + inOther.length;
  const { reigns } = ruler.fields;
  const pictured = [...own, ...inOther, ...forOther].filter(({ id }) => cabinet.photographs[id] !== undefined);
  // A piece that may be another's stands for a ruler only where nothing else does.
  const seen =
    pictured.find(({ sure }) => [sure.ruler, sure['struck-for']].every((how) => (how ?? 'certain') === 'certain')) ??
    pictured[0];
  const struckNone = reigns.length > 0 && reigns.every(({ coins }) => coins === false);
  return {
    name: ruler.fields.name,
    href: urls.ruler(ruler.id),
    years: ruler.fields.reigns.map(reignInWords).join(', '),
    note: [
      count === 0 && struckNone ? rulersWords.noCoins : countWords.piecesIfAny(count),
      ...(inOther.length === 0 ? [] : [rulersWords.parts(own.length + forOther.length, inOther.length)]),
      ...(realm === undefined ? [] : [realm]),
    ].join(' · '),
    face: seen === undefined ? null : leadingFace(seen, cabinet.photographs),
    spans: ruler.fields.reigns.map((reign) => ({
      span: spanOf(reign),
      kind: count === 0 ? 'gap' : reign.with === undefined ? 'sure' : 'joint',
    })),
  };
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
