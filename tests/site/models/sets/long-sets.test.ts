import { describe, expect, test, vi } from 'vitest';
import { linkRecords } from '../../../../src/catalogue/link.ts';
import { readCabinet } from '../../../../src/catalogue/read-cabinet.ts';
import { publicPieces } from '../../../../src/publish/public-piece.ts';
import { placesPage, setPage } from '../../../../src/site/models/sets/set-page.ts';
import { setsPage } from '../../../../src/site/models/sets/sets-page.ts';
import { wantedPage } from '../../../../src/site/models/sets/wanted-page.ts';
import { changed, markedCabinet } from '../../../catalogue/small-cabinet.ts';

vi.stubEnv('SITE', 'https://example.org');
const PLACES = 450;
const SETS = 70;
const named = (count: number): readonly number[] => Array.from({ length: count }, (_, at) => at);

const places = named(PLACES).map((at) => `  - { is: place-${at}, label: Place ${at}, where: { denomination: penny, date: ${1000 + at} } }`); // prettier-ignore
const sets = named(SETS).map((at) => [`sets/more-${at}.yaml`, `title: Set ${at}\none-per: ruler\n`]);
const { pieces: linked, ...lists } = linkRecords(
  readCabinet(
    changed(await markedCabinet(), {
      'sets/long.yaml': `title: A penny of every year\none-per: listed\nwhere: { kind: coin }\nplaces:\n${places.join('\n')}\n`,
      ...(Object.fromEntries(sets) as Record<string, string>),
    }),
  ).records,
);
const pieces = publicPieces({ ...lists, pieces: linked });
const cabinet = { lists, pieces, listed: pieces.filter(({ listed }) => listed), photographs: {}, changed: {} };

describe('a set of 450 places', () => {
  const first = setPage(cabinet, 'long');
  const ways = first.pager?.pages.map(({ page }) => page) ?? [];
  const further = ways.filter((page) => page > 1).map((page) => placesPage(cabinet, 'long', page));

  test('is on several pages, and every place is on one of them, once', () => {
    const shown = [first.places, ...further.map((page) => page.places)].flat().map(({ id }) => id);
    expect(shown).toEqual(named(PLACES).map((at) => `place-${at}`));
    expect(Math.max(...[first, ...further].map((page) => page.places.length))).toBeLessThan(151);
  });

  test('says which of its places a page has, and leads to the others and back', () => {
    expect(further.map(({ says }) => says).at(-1)).toMatch(/^Places \d+ to 450 of 450\.$/);
    expect(further.map(({ head }) => head.here)).toEqual(ways.slice(1).map((page) => `/sets/long/page/${page}/`));
    expect(further[0]?.pager?.pages[0]?.to).toBe('/sets/long/');
  });

  test('counts all its places on the first, and wants all on one list', () => {
    expect(first.says).toMatch(/^450 places: /);
    const wanted = wantedPage(cabinet, 'long').groups.flatMap(({ rows }) => rows);
    expect(new Set(wanted.map(({ label }) => label)).size).toBeGreaterThan(PLACES - 5);
  });
});

test('a list of 71 sets is cut, and every set is on one page of it', () => {
  const all = [1, 2, 3].map((page) => setsPage(cabinet, page));
  expect(all[0]?.pager?.pages.map(({ to }) => to)).toEqual(['/sets/', '/sets/page/2/', '/sets/page/3/']);
  const titles = all.flatMap((page) => page.sets.map(({ title }) => title));
  expect(titles).toEqual(lists.sets.map(({ fields }) => fields.title));
  const long = all.flatMap((page) => page.sets).find(({ title }) => title === 'A penny of every year');
  expect((long?.places.length ?? 0) + (long?.more ?? 0)).toBe(PLACES);
});
