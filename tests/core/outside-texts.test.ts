import { expect, test } from 'vitest';
import type { Bound } from '../../src/core/dating/dating.ts';
import { parseDate } from '../../src/core/dating/parse-date.ts';
import { parseGrade } from '../../src/core/grade/parse-grade.ts';
import { parseAxis } from '../../src/core/measures/parse-axis.ts';
import { parseSize, type Size } from '../../src/core/measures/parse-size.ts';
import { parseWeight } from '../../src/core/measures/parse-weight.ts';
import { parseFineness } from '../../src/core/metal/parse-fineness.ts';
import type { Outcome } from '../../src/core/outcome.ts';
import { parseReferences } from '../../src/core/references/parse-reference.ts';
import type { Reference } from '../../src/core/references/reference.ts';
import {
  OUTSIDE_AXES,
  OUTSIDE_FINENESSES,
  OUTSIDE_GRADES,
  OUTSIDE_REFERENCES,
  OUTSIDE_SIZES,
  OUTSIDE_WEIGHTS,
  OUTSIDE_YEARS,
  type OutsideText,
} from '../published/outside-texts.ts';

const said = (bound: Bound): string => (bound === null ? '?' : bound === 'open' ? '..' : String(bound));
const span = (low: number, high: number): string => (low === high ? String(low) : `${String(low)}-${String(high)}`);
const faces = (size: Size): string =>
  size.shape === 'round' ? span(size.low, size.high) : `${String(size.height)} x ${String(size.width)}`;

function cited({ work, volume, number, to, page, plate, relation, doubtful }: Reference): string {
  const range = to === undefined ? number : `${number}-${to}`;
  const beside = [page === undefined ? '' : `p${page}`, plate === undefined ? '' : `pl${plate}`];
  const stands = relation === 'is' ? '' : relation;
  return [work, volume, range, ...beside, stands, doubtful === true ? '?' : ''].filter(Boolean).join(' ');
}

/** All at once, and a reference also by its number alone. */
function citedAsWell(references: readonly Reference[]): readonly string[] {
  const [only, ...more] = references;
  const all = references.map(cited).join(' + ');
  return only === undefined || more.length > 0 ? [all] : [all, `nr: ${only.number.replaceAll(' ', '')}`];
}

/** Fails when the text is read as what no specialist would take it for, or refused where it should be read. */
function expectAllowed<T>({ allowed }: OutsideText, outcome: Outcome<T>, say: (value: T) => readonly string[]): void {
  const read = outcome.ok ? say(outcome.value) : ['asks'];
  expect(
    read.some((one) => allowed.includes(one)),
    outcome.ok ? read[0] : outcome.problem,
  ).toBe(true);
}

test.for(OUTSIDE_YEARS)('the date $write ($source)', (row) => {
  expectAllowed(row, parseDate(row.write), ({ earliest, latest }) => [`${said(earliest)}/${said(latest)}`]);
});

test.for(OUTSIDE_REFERENCES)('the reference $write ($source)', (row) => {
  expectAllowed(row, parseReferences(row.write), citedAsWell);
});

test.for(OUTSIDE_WEIGHTS)('the weight $write ($source)', (row) => {
  expectAllowed(row, parseWeight(row.write), ({ grams }) => [String(grams)]);
});

test.for(OUTSIDE_SIZES)('the size $write ($source)', (row) => {
  expectAllowed(row, parseSize(row.write), (size) => [faces(size)]);
});

test.for(OUTSIDE_AXES)('the axis $write ($source)', (row) => {
  expectAllowed(row, parseAxis(row.write), ({ hours }) => [String(hours)]);
});

test.for(OUTSIDE_FINENESSES)('the fineness $write ($source)', (row) => {
  expectAllowed(row, parseFineness(row.write), ({ low, high }) => [span(low, high)]);
});

test.for(OUTSIDE_GRADES)('the grade $write ($source)', (row) => {
  const allowed = row.allowed.map((one) => (one === 'asks' ? one : one.toUpperCase()));
  expectAllowed({ ...row, allowed }, parseGrade(row.write), ({ words }) => [words.toUpperCase()]);
});

test.for([
  ['Monday 30 November 2026', '2026/2026'],
  ['Samstag, den 2. September 1752', '1752/1752'],
  ['Wednesday 2 September 1752 OS', '1752/1752'],
  ['Saturday 14 October 1066', '1066/1066'],
  ['Friday 14 October 1066', 'asks'],
  ['Thursday 14 September 1752', '1752/1752'],
  ['Friday 14 September 1752', 'asks'],
  ['Sunday October 2016', 'asks'],
  ['Late Edo period (1603-1868)', 'asks'],
  ['possibly Ming dynasty (1368-1644)', 'asks'],
  ['Possibly Ming Dynasty, 1368-1644', 'asks'],
  ['Ming Dynasty, 1368-1644', '1368/1644'],
  ['Ptolemaic Period, 332-30 BC', 'asks'],
  ['Ptolemaic Period, 332 BC-30 BC', '-331/-29'],
  ['Showa period, 15', 'asks'],
  ['Umayyad dynasty, 77-132', 'asks'],
  ['Umayyad dynasty, AH 77-132', '696/750'],
] as const)('%s is %s (the Calendar (New Style) Act 1750 for September 1752; common practice)', ([write, allowed]) => {
  const outcome = parseDate(write);
  expect(outcome.ok ? `${said(outcome.value.earliest)}/${said(outcome.value.latest)}` : 'asks').toBe(allowed);
});

test('a day of the week that only the Julian calendar has says so (the Calendar (New Style) Act 1750)', () => {
  expect(parseDate('Wednesday 2 September 1752')).toMatchObject({
    ok: false,
    problem: expect.stringContaining('write 2 September 1752 OS') as string,
  });
});

test.for([
  ['B.M.C. 12', 'bmc 12'],
  ['R.I.C. VI 16', 'ric VI 16'],
  ['[North 993]', 'north 993'],
  ['(cf. North 993)', 'north 993 cf.'],
  ['(North 993; Spink 1367)', 'north 993 + spink 1367'],
  ['RIC VI S. 403, Nr. 16', 'ric VI 16 p403'],
  ['BMC Nr. 12', 'bmc 12'],
] as const)('%s is %s (common practice)', ([write, reads]) => {
  const outcome = parseReferences(write);
  expect(outcome.ok ? outcome.value.map(cited).join(' + ') : outcome.problem).toBe(reads);
});

test.for(['g 1.075', 'Peso: g 12.340', '(gm 3.841)'])('the weight %s asks (common practice)', (write) => {
  expect(parseWeight(write)).toMatchObject({ ok: false, problem: expect.stringContaining('two ways') as string });
});
