import { readFileSync, readdirSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { checkCabinet } from '../../../src/catalogue/check-cabinet.ts';
import { readFolder } from '../../../src/catalogue/files.ts';
import { linkRecords } from '../../../src/catalogue/link.ts';
import { readCabinet } from '../../../src/catalogue/read-cabinet.ts';
import type { SetState } from '../../../src/core/sets/set-state.ts';
import { publicPieces } from '../../../src/publish/public-piece.ts';
import { setStates } from '../../../src/publish/set-states.ts';
import { PRIVACY } from '../../../src/privacy/privacy.ts';

/*
 * A small cabinet for every rule of sets, in files as a keeper writes them, and beside it what must come of it: written by hand
 * from the rules as `src/core/sets/set-rule.ts` and the form of a set state them, and never from what the program answers.
 */

/** What `expected.json` says of a set; the reasons only of the places it names under `because`. */
type Expected = {
  readonly of: number;
  readonly filled: { readonly low: number; readonly high: number };
  readonly excused: number;
  readonly places: readonly object[];
  readonly spares: readonly string[];
  readonly leftOut: readonly string[];
  readonly upgrades: readonly object[];
  readonly wanted: readonly object[];
  readonly because?: Readonly<Record<string, string>>;
};

function told(state: SetState, because: Expected['because']): Expected {
  const { of, filled, excused } = state;
  return {
    of,
    filled,
    excused,
    places: state.places.map(({ id, state: is, piece, others }) => ({
      id,
      state: is,
      ...(piece === undefined ? {} : { piece }),
      ...(others === undefined ? {} : { others }),
    })),
    spares: state.spares.map(({ piece }) => piece),
    leftOut: state.leftOut.map(({ piece }) => piece),
    upgrades: state.upgrades.map(({ place, from, to, certain }) => ({ place, from, to, certain })),
    wanted: state.wanted.map(({ place, why }) => ({ place, why })),
    ...(because === undefined
      ? {}
      : { because: Object.fromEntries(Object.keys(because).map((id) => [id, reasonOf(state, id)])) }),
  };
}

function reasonOf(state: SetState, place: string): string {
  return state.places.find(({ id }) => id === place)?.because ?? 'no such place';
}

const CABINETS = 'tests/cabinets';
const rules = readdirSync(CABINETS).filter((name) => readdirSync(`${CABINETS}/${name}`).includes('expected.json'));

test('there is a cabinet for every way to draw places and for every other rule', () => {
  expect(rules).toEqual(
    [
      'altered', 'any-places', 'best-not-first', 'copies', 'excused', 'gone-and-hidden', 'joint-reign', 'listed',
      'one-per-area', 'one-per-date', 'one-per-die', 'one-per-mint', 'one-per-reference', 'one-per-ruler',
      'partial-dates', 'problem-pieces', 'returning-ruler', 'struck-for', 'uncertain',
    ],
  );
}); // prettier-ignore

describe('every cabinet, read from its files, comes to what was worked out by hand', () => {
  test.for(rules)('%s', async (rule) => {
    const at = `${CABINETS}/${rule}/content`;
    expect((await checkCabinet(at, PRIVACY)).problems).toEqual([]);
    const folder = await readFolder(at);
    if (folder === null) throw new Error(`${at} is not there.`);
    const catalogue = linkRecords(readCabinet(folder).records);
    const expected = JSON.parse(readFileSync(`${CABINETS}/${rule}/expected.json`, 'utf8')) as Record<string, Expected>;
    const states = setStates(catalogue, publicPieces(catalogue));
    const found = Object.fromEntries(states.map((state) => [state.id, told(state, expected[state.id]?.because)]));
    expect(found).toEqual(expected);
  });
});
