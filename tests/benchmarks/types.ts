import process from 'node:process';
import type { Answers } from '../../src/core/types/key/answers.ts';
import type { Character, Shown } from '../../src/core/types/key/character.ts';
import { USUAL } from '../../src/core/types/key/character.ts';
import { identify } from '../../src/core/types/key/identify.ts';
import { keyOf } from '../../src/core/types/key/key.ts';

/**
 * How long a key of 500 types and 30 characters, a legend among them, takes to answer. Run it with
 * `node tests/benchmarks/types.ts`; it ends with 1 when a limit is passed.
 */
const TYPES = 500;
const CHARACTERS = 30;
const MOST_MILLISECONDS = 50;

let state = 7;
function chance(most: number): number {
  state = (state * 48271) % 2147483647;
  return state % most;
}

const states = ['a', 'b', 'c', 'd', 'e', 'f'].map((id) => ({ id, label: id }));
const characters = Array.from({ length: CHARACTERS }, (_, at): Character => ({
  ...USUAL,
  id: `c${at}`,
  label: `c${at}`,
  kind: at === 0 ? 'legend' : 'states',
  states,
}));

function shownBy(character: Character): Shown {
  if (character.kind === 'legend')
    return { shows: 'legend', legends: [`EDWARDVS ${String.fromCharCode(65 + chance(26))} REX ANGLIE`] };
  return chance(10) === 0 ? { shows: 'unknown' } : { shows: 'states', states: [states[chance(6)]?.id ?? 'a'] };
}

const key = keyOf(
  characters,
  Array.from({ length: TYPES }, (_, at) => ({ id: `t${at}`, shown: characters.map(shownBy) })),
);
const answers: Answers = new Map([
  ['c0', { legend: 'EDW*?REX' }],
  ['c1', { states: ['a'] }],
  ['c2', { states: ['b', 'c'] }],
]);
identify(key, answers);
const times = Array.from({ length: 20 }, () => {
  const started = performance.now();
  identify(key, answers);
  return performance.now() - started;
}).sort((a, b) => a - b);
const [least = 0, middle = 0, most = 0] = [times[0], times[10], times[19]];
process.stdout.write(
  `a key of ${TYPES} types and ${CHARACTERS} characters: ${middle.toFixed(1)} ms an answer (${least.toFixed(1)} to ${most.toFixed(1)})\n`,
);
process.exitCode = middle > MOST_MILLISECONDS ? 1 : 0;
