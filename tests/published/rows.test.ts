import { readdirSync, readFileSync } from 'node:fs';
import { beforeAll, describe, expect, test } from 'vitest';

/*
 * How much of the outside world the tables of this folder hold: every row names its source, and those are counted whose
 * source is a work that can be looked up. Not counted: what is set down from memory or as common practice, sources without a
 * title, and hijri-years.json, which is arithmetic that ICU and the Temporal polyfill bear out elsewhere.
 */
const WORKS = [
  'Inter gravissimas',
  'Calendar (New Style) Act 1750',
  'Decree of the Sovnarkom',
  'Royal Society',
  'Cheney, A Handbook of Dates',
  'Reingold and Dershowitz, Calendrical Calculations',
  'Bickerman, Chronology of the Ancient World',
  'Indian Calendar Reform Committee',
  'Freeman-Grenville, The Muslim and Christian Calendars',
  'unt-edtf-validate',
  'ixc-python-edtf',
  'inukshuk-edtf.js',
  'PeriodO',
  'Nomisma.org',
  'Coinage Act 1870',
  'Act of Congress, 2 April 1792',
  'Act of 18 January 1837',
  '31 U.S.C. 5112',
  'BGBl.',
  'Director of the Mint, Monetary Systems',
  'Handbók fyrir hvern mann',
  'Year-Book',
  'printed manual of the Meissen and Saxon mints',
  'international yard and pound agreement, 1959',
  'Allen, Numismatic Chronicle 165',
  'Rose, The Metallurgy of Gold',
  'CRC Handbook of Chemistry and Physics',
  'Sandys, Latin Epigraphy',
  'Stevenson, Dictionary of Roman Coins',
  'Portable Antiquities Scheme',
  'Jewitt and Head, English Coins and Tokens',
  'printed by Jewitt and Head',
  'The Unicode Standard',
  'Breen, Complete Encyclopedia',
  'The Numismatist, June 1992',
  'RIC I (1984)',
  'American Alliance of Museums',
  'New Hart’s Rules',
  'Crawford, Roman Republican Coinage',
] as const;

/** The source of tables that name one for all their rows, in the comment above them. */
const OF_THE_TABLE: Readonly<Record<string, string>> = {
  REGNAL_YEARS: 'C. R. Cheney, A Handbook of Dates, from memory',
  CYCLICAL_YEARS: 'common knowledge of Chinese history',
  PERIOD_LABELS: 'PeriodO, dataset of 2014',
  ERA_SCHEMES: 'PeriodO, dataset of 2014',
  NOMISMA_REIGNS: 'Nomisma.org, snapshot of February 2026',
  ENGLISH_RULERS: 'Handbook of British Chronology, from memory',
  MINTS_OF_1279: 'North, English Hammered Coinage, from memory',
  VOLUME_PARTS: 'auction and sale catalogues; common practice',
  OPEN_BY_1281: 'North, English Hammered Coinage, from memory',
  ADDED_BY_1301: 'North, English Hammered Coinage, from memory',
  DIE_COUNTS: 'the table of one hoard study, without a title',
  thirtySteps: 'common practice',
};

const folder = new URL('.', import.meta.url);

interface Row {
  readonly table: string;
  readonly source: string | undefined;
}

/** A row says its source in a field of that name, in the field of the gazette, or in its last column. */
function sourceOf(table: string, row: unknown): string | undefined {
  if (OF_THE_TABLE[table] !== undefined) return OF_THE_TABLE[table];
  const last: unknown = Array.isArray(row) ? row.at(-1) : undefined;
  const { source, gazette } = (typeof row === 'object' && row !== null ? row : {}) as Record<string, unknown>;
  return [source, gazette, last].find((said) => typeof said === 'string');
}

async function publishedRows(): Promise<readonly Row[]> {
  const names = readdirSync(folder).filter((name) => name.endsWith('.ts') && !name.endsWith('.test.ts'));
  const tables: [string, unknown][] = [];
  for (const name of names) {
    const loaded = (await import(new URL(name, folder).href)) as Record<string, unknown>;
    tables.push(...Object.entries(loaded));
  }
  const rows = tables.flatMap(([table, held]) =>
    Array.isArray(held) ? held.map((row) => ({ table, source: sourceOf(table, row) })) : [],
  );
  const sample = JSON.parse(readFileSync(new URL('calendar-sample-dates.json', folder), 'utf8')) as {
    about: string;
    rows: readonly unknown[];
  };
  return [...rows, ...sample.rows.map(() => ({ table: 'calendar-sample-dates.json', source: sample.about }))];
}

const workOf = ({ source = '' }: Row) =>
  source.includes('from memory') && !source.includes('title from memory')
    ? undefined
    : WORKS.find((work) => source.includes(work));

describe('the published tables', () => {
  let rows: readonly Row[] = [];
  beforeAll(async () => {
    rows = await publishedRows();
  });

  test('every row names where it comes from', () => {
    expect(rows.filter(({ source }) => source === undefined)).toEqual([]);
  });

  test('at least 300 rows come from named works besides the strings of the EDTF suites, and every work is used', () => {
    const counted = rows.filter((row) => workOf(row) !== undefined);
    expect(counted.length).toBeGreaterThanOrEqual(600);
    expect(counted.filter(({ table }) => table !== 'EDTF_STRINGS').length).toBeGreaterThanOrEqual(300);
    expect(new Set(counted.map(workOf))).toEqual(new Set(WORKS));
  });

  test('at least twelve works give three rows or more', () => {
    const shares = WORKS.map((work) => rows.filter((row) => workOf(row) === work).length);
    expect(shares.filter((share) => share >= 3).length).toBeGreaterThanOrEqual(12);
  });
});
