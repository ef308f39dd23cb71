// As much of the test runner as the tests of what guards a keeper use: a mutant wants only to know whether any test fails, and to
// start the whole of the runner for each would take hours.
import process from 'node:process';
import { isDeepStrictEqual } from 'node:util';

/** What a test says of the environment holds for those after it. */
export const vi = { stubEnv: (name, value) => void (process.env[name] = value) };

const tests = [];
const [before, beforeOne, after] = [[], [], []];
export const beforeAll = (work) => void before.push(work);
export const beforeEach = (work) => void beforeOne.push(work);
export const afterAll = (work) => void after.push(work);
const each =
  (put) =>
  (rows) =>
  (name, ...rest) => {
    const work = rest.find((one) => typeof one === 'function');
    for (const [at, row] of rows.entries()) put(`${name} (row ${at + 1})`, () => work(row));
  };
/** What a test is allowed, such as its time, may stand on either side of it and does not matter here. */
export const test = (name, ...rest) => void tests.push([name, rest.find((one) => typeof one === 'function')]);
test.for = each(test);
/** Its body may wait for something before it names its tests. */
const bodies = [];
export const describe = (_, body) => void bodies.push(body());
describe.for = each(describe);

const asks = Symbol('asks');
const flat = (value) => (value instanceof Map || value instanceof Set ? [...value] : value);
/** Whether a value is as wanted; in an object, only the fields that are wanted count when `loosely`. */
function matches(value, wanted, loosely) {
  if (wanted?.[asks] !== undefined) return wanted[asks](value);
  if (wanted instanceof Map || wanted instanceof Set) return matches(flat(value), flat(wanted), false);
  if (Array.isArray(wanted))
    return (
      Array.isArray(value) &&
      value.length === wanted.length &&
      wanted.every((one, at) => matches(value[at], one, loosely))
    );
  if (typeof wanted !== 'object' || wanted === null || Object.getPrototypeOf(wanted) !== Object.prototype)
    return isDeepStrictEqual(value, wanted);
  if (typeof value !== 'object' || value === null) return false;
  const keys = Object.keys(wanted).filter((key) => loosely || wanted[key] !== undefined);
  const isNoMore = loosely || Object.keys(value).every((key) => value[key] === undefined || key in wanted);
  return isNoMore && keys.every((key) => matches(value[key], wanted[key], loosely));
}
const holds = (value, part) =>
  typeof value === 'string' ? value.includes(part) : [...value].some((one) => matches(one, part, false));
const MATCHERS = {
  toBe: (value, wanted) => Object.is(value, wanted),
  toEqual: (value, wanted) => matches(value, wanted, false),
  toStrictEqual: isDeepStrictEqual,
  toMatchObject: (value, wanted) => matches(value, wanted, true),
  toContain: holds,
  toContainEqual: holds,
  toMatch: (value, wanted) => (wanted instanceof RegExp ? wanted.test(value) : value.includes(wanted)),
  toHaveLength: (value, wanted) => value.length === wanted,
  toHaveProperty: (value, name) => name in value,
  toBeNull: (value) => value === null,
  toBeUndefined: (value) => value === undefined,
  toBeDefined: (value) => value !== undefined,
  toBeTruthy: Boolean,
  toBeFalsy: (value) => !value,
  toBeGreaterThan: (value, wanted) => value > wanted,
  toBeGreaterThanOrEqual: (value, wanted) => value >= wanted,
  toBeLessThan: (value, wanted) => value < wanted,
  toBeLessThanOrEqual: (value, wanted) => value <= wanted,
  toBeCloseTo: (value, wanted, places = 2) => Math.abs(value - wanted) < 10 ** -places / 2,
  toThrow: (work) => {
    try {
      work();
      return false;
    } catch {
      return true;
    }
  },
};
export function expect(value) {
  const made = (isNot) =>
    Object.fromEntries(
      Object.entries(MATCHERS).map(([name, isSo]) => [
        name,
        (...wanted) => {
          if (Boolean(isSo(value, ...wanted)) === isNot) throw new Error(`${isNot ? 'not ' : ''}${name}`);
        },
      ]),
    );
  /** Of a promise: what it comes to, or the error that it ends in, as something that throws it. */
  const awaited = (settle) =>
    Object.fromEntries(
      Object.keys(MATCHERS).map((name) => [name, async (...wanted) => expect(await settle())[name](...wanted)]),
    );
  const rejected = async () => {
    try {
      await value;
    } catch (error) {
      return () => {
        throw error;
      };
    }
    throw new Error('it does not reject');
  };
  return { ...made(false), not: made(true), resolves: awaited(() => value), rejects: awaited(rejected) };
}
const asking = (isSo) => (part) => ({ [asks]: (value) => isSo(value, part) });
expect.anything = asking((value) => value !== null && value !== undefined);
expect.any = asking((value, kind) => Object(value) instanceof kind);
expect.stringContaining = asking((value, part) => String(value).includes(part));
expect.stringMatching = asking((value, part) => new RegExp(part).test(String(value)));
expect.arrayContaining = asking((value, parts) => parts.every((part) => holds(value, part)));
expect.objectContaining = asking((value, part) => matches(value, part, true));
expect.fail = (because) => {
  throw new Error(because);
};

/** Runs what the file imported last has put down, and forgets it; the name of the first test that fails, null when none does. */
export async function firstFailure() {
  let name = 'before all';
  try {
    await Promise.all(bodies);
    for (const work of before) await work();
    for (const [called, work] of tests) {
      name = called;
      for (const make of beforeOne) await make();
      await work();
    }
    for (const work of after) await work();
    return null;
  } catch (error) {
    return `${name}: ${String(error?.message ?? error).split('\n')[0]}`;
  } finally {
    for (const held of [bodies, tests, before, beforeOne, after]) held.length = 0;
  }
}
