import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import process from 'node:process';
import type { Answers } from '../../src/core/types/key/answers.ts';
import type { Character, Shown } from '../../src/core/types/key/character.ts';
import { USUAL } from '../../src/core/types/key/character.ts';
import { identify } from '../../src/core/types/key/identify.ts';
import { keyOf } from '../../src/core/types/key/key.ts';
import { writeLargeCabinet } from './large-cabinet.ts';
import { run } from './measured-run.ts';
import type { Run } from './measured-run.ts';

/**
 * How long a key of 500 types and 30 characters, a legend among them, takes to answer; and what 5,000 types add to a build of
 * 12,000 pieces (`PIECES=2000` for fewer, with as many types in proportion). Run it with `node tests/benchmarks/types.ts`; it ends
 * with 1 when a limit is passed.
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
const answered = Array.from({ length: 20 }, () => {
  const started = performance.now();
  identify(key, answers);
  return performance.now() - started;
}).sort((a, b) => a - b);
const [least = 0, middle = 0, most = 0] = [answered[0], answered[10], answered[19]];
process.stdout.write(
  `a key of ${TYPES} types and ${CHARACTERS} characters: ${middle.toFixed(1)} ms an answer (${least.toFixed(1)} to ${most.toFixed(1)})\n`,
);
process.exitCode = middle > MOST_MILLISECONDS ? 1 : 0;

const PIECES = Number(process.env['PIECES'] ?? 12_000);
/** A cabinet with a series may take so many times the processor of the same without. */
const MOST_TIMES = 2;
const place = mkdtempSync(join(tmpdir(), 'bench-types-'));
const built = async (types: number): Promise<Run> => {
  const cabinet = join(place, `cabinet-${types}`);
  writeLargeCabinet(cabinet, 'content', { pieces: PIECES, types });
  return run(['src/commands/build.ts', '--cabinet', cabinet, '--out', join(place, `site-${types}`)], '.');
};
// The program is bundled once, before either.
await run(['src/commands/build.ts', '--out', join(place, 'demo')], '.');
const without = await built(0);
const types = Math.round((PIECES * 5) / 12);
const having = await built(types);
const times = having.processor / without.processor;
process.stdout.write(
  `${PIECES} pieces: ${without.processor.toFixed(1)} s of the processor, ${without.clock.toFixed(1)} by the clock, ${without.memory.toFixed(0)} MB; with ${types} types ${having.processor.toFixed(1)} s, ${having.clock.toFixed(1)} and ${having.memory.toFixed(0)} MB: ${times.toFixed(2)} times\n`,
);
if (times > MOST_TIMES) process.exitCode = 1;
rmSync(place, { recursive: true });
