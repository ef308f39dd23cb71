import type { Outcome } from '../outcome.ts';
import { good, refuse } from '../outcome.ts';
import { quoted } from '../measures/amount.ts';
import { SOURCES } from './sources.ts';
import type { WordedGrade } from './read-words.ts';
import { HIGHEST, isStep, stepAbove, stepBelow } from './steps.ts';

type Prefix = { readonly names: readonly string[]; readonly low: number; readonly high: number; readonly proof?: true };

/** The letters before the number, and the numbers they go with. Common practice. */
const PREFIXES: readonly Prefix[] = [
  { names: ['PO', 'P', 'Poor'], low: 1, high: 1 },
  { names: ['FR', 'Fair'], low: 2, high: 2 },
  { names: ['AG'], low: 3, high: 3 },
  { names: ['G', 'Good'], low: 4, high: 6 },
  { names: ['VG'], low: 8, high: 10 },
  { names: ['F', 'Fine'], low: 12, high: 15 },
  { names: ['VF'], low: 20, high: 35 },
  { names: ['EF', 'XF'], low: 40, high: 45 },
  { names: ['AU'], low: 50, high: 58 },
  { names: ['MS', 'Unc', 'BU'], low: 60, high: 70 },
  { names: ['PR', 'PF', 'Proof', 'PRF'], low: 1, high: 70, proof: true },
  { names: ['SP'], low: 1, high: 70 },
];

/** `Choice` and `gem` before a number say nothing that the number does not. */
const PRAISE = /^(?:(?:very |superb )?(?:choice|gem)|ch\.?) (?=[a-z]{1,5}[ -]?\d)/i;
const NUMERIC = /^([a-z]+)?[ -]?(\d{1,3})(?: ?[-/] ?(\d{1,3}))?( ?\+)?$/i;

/** Reads `63`, `MS-63`, `VF 20`, `AU-58+`, `PR-65`, `MS 60-62`; null when there is no number to read. */
export function readNumeric(text: string): Outcome<WordedGrade> | null {
  const [, letters, first = '', second, plus] = NUMERIC.exec(text.replace(PRAISE, '')) ?? [];
  if (/^(?:ms|pr|pf|sp|au|ag|po|fr)-$/i.test(text))
    return refuse(`${quoted(text)} breaks off before its number. Write it like MS-63.`);
  if (first === '') return null;
  const prefix = PREFIXES.find(({ names }) => names.some((name) => name.toLowerCase() === letters?.toLowerCase()));
  if (letters !== undefined && prefix === undefined) return null;
  const [low, top] = [Number(first), Number(second ?? first)];
  for (const number of [low, top]) {
    const wrong = whatIsWrong(text, number, prefix);
    if (wrong !== null) return refuse(wrong);
  }
  if (low > top) return refuse(`${quoted(text)} runs from better to worse. Write ${top}-${low}.`);
  // A plus stands at its number and short of the next.
  const high = plus === undefined ? top : stepAbove(top);
  const name = prefix?.names[0] === undefined ? '' : `${prefix.names[0]}-`;
  const words = `${name}${low}${top === low ? '' : `/${top}`}${plus === undefined ? '' : '+'}`;
  return good({ words, mappings: [{ source: SOURCES.numeric, low, high }], proof: prefix?.proof === true, rank: null });
}

function whatIsWrong(text: string, number: number, prefix: Prefix | undefined): string | null {
  if (number < 1 || number > HIGHEST)
    return `The numeric scale runs from 1 to 70; this says ${quoted(text)}. Write a number from 1 to 70.`;
  if (!isStep(number)) {
    return `The numeric scale has no step ${number}. Write ${stepBelow(number)} or ${stepAbove(number)}.`;
  }
  if (prefix === undefined || (prefix.low <= number && number <= prefix.high)) return null;
  const right = PREFIXES.find(({ low, high }) => low <= number && number <= high);
  const span = prefix.low === prefix.high ? String(prefix.low) : `${prefix.low} to ${prefix.high}`;
  return `${prefix.names[0] ?? ''} goes with ${span}; this says ${quoted(text)}. Write ${right?.names[0] ?? 'MS'}-${number}.`;
}
