import { quoted, tidy } from '../measures/amount.ts';
import { good, refuse } from '../outcome.ts';
import type { Outcome } from '../outcome.ts';
import { PROBLEM_NOT_SAID, notGraded } from './grade.ts';
import type { Grade, ScaleId } from './grade.ts';
import { readWords, union } from './read-words.ts';
import type { WordedGrade } from './read-words.ts';
import { saysWhatWasDone } from './denied.ts';
import { besideGrade, readRemark } from './beside-grade.ts';
import type { Said } from './beside-grade.ts';
import { ASKED_FIRST, ASKED_LAST, SCALES } from './scales.ts';
import { SOURCES } from './sources.ts';
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

export type GradeOptions = { readonly scale?: ScaleId; readonly problem?: string };

const UNGRADED = [
  'not graded', 'ungraded', 'no grade', 'n/g', 'unbewertet', 'non class[ée]e?', 'non classificat[ao]', 'sin clasificar',
]; // prettier-ignore
const NOT_GRADED = new RegExp(String.raw`^(?:${UNGRADED.join('|')})(?:[:,; ]+\(?(.+?)\)?)?$`, 'i');
const DETAILS = /^(.+?),? \(?(?:details?|det\.?|detail grade)\)?(?:[:,;. -]+\(?(.+?)\)?)?$/i;
const COLOUR_AFTER = /^(.+\d\+?) ?(rd|rb|bn|pl|dpl|dmpl|prooflike|cam|dcam|ucam|(?:deep |ultra )?cameo)$/i;
/** `Ch XF 5/5 - 4/5`: on ancient coins the strike stands first, then the surface. Common practice. */
const TWICE_OUT_OF_FIVE = /,? ([1-5])\/5[ ,;-]{1,3}([1-5])\/5(?=$|[ ,;])/;
/** `III`, `II-III`, `III+`: how German lists of paper money grade; common practice. */
const OF_NOTES = /^(?:I{1,3}|IV|V)[+-]?(?:[-/](?:I{1,3}|IV|V)[+-]?)?$/;
const LONGEST = 160;

/** Reads a grade as it is written in lists: `MS-63 RD`, `good VF/F`, `fast ss`, `EF details, cleaned`, `not graded: cut`. */
export function parseGrade(text: string, options: GradeOptions = {}): Outcome<Grade> {
  const words = tidy(text).replace(/[“”"]/g, '').replace(TWICE_OUT_OF_FIVE, ', strike $1/5, surface $2/5');
  if (words === '' || words.length > LONGEST) return refuse(`${quoted(text)} is not a grade. ${ask(options.scale)}`);
  const ungraded = NOT_GRADED.exec(words);
  if (ungraded !== null) return good(notGraded(ungraded[1] ?? 'no reason given', text.trim()));
  const [, detailed, detailsOf] = DETAILS.exec(words) ?? [];
  const [first = '', ...rest] = phrases(detailed ?? words);
  const said = rest.map(readRemark);
  const leftOver = said.find((each) => each.kind === 'unknown');
  if (leftOver?.kind === 'unknown') {
    return refuse(
      `What ${quoted(leftOver.words)} says of the grade is not known here. Write it as the problem, or in the story.`,
    );
  }
  const stated = detailed === undefined ? undefined : (detailsOf ?? PROBLEM_NOT_SAID);
  const outcome = readOn(first, said, text, { ...options, stated });
  if (outcome.ok) return outcome;
  // `VF-30 cleaned`: what is said beside a grade without a comma, the shortest of it first.
  for (const [head, tail] of tailsOf(first)) {
    const beside = readRemark(tail);
    const split = beside.kind === 'unknown' ? outcome : readOn(head, [beside, ...said], text, { ...options, stated });
    if (split.ok) return split;
  }
  return outcome;
}

/** The most words that are taken for a remark without a comma before it. */
const LONGEST_TAIL = 3;

/** A phrase split before its last word, its last two, its last three. */
function tailsOf(phrase: string): readonly (readonly [head: string, tail: string])[] {
  const words = phrase.split(' ');
  const most = Math.min(LONGEST_TAIL, words.length - 1);
  return Array.from({ length: most }, (_, at) => [words.slice(0, -at - 1).join(' '), words.slice(-at - 1).join(' ')]);
}

type Read = readonly [ScaleId, WordedGrade];
type Stated = GradeOptions & { readonly stated: string | undefined };

function readOn(words: string, said: readonly Said[], text: string, options: Stated): Outcome<Grade> {
  const [, bare = words, after] = COLOUR_AFTER.exec(words) ?? [];
  const all = after === undefined ? said : [...said, readRemark(after)];
  const { scale } = options;
  if (scale !== 'nordic') {
    if (SMALL_FIGURES.test(bare) && (scale === undefined || /^0|[?+-]$/.test(bare)) && scale !== 'de')
      return refuse(askForFigures(words));
    const mark = OUT_OF.exec(bare)?.[1];
    if (mark !== undefined)
      return refuse(
        `${quoted(words)} may be a mark out of ${mark} or two steps of the numeric scale. Write one grade, such as VF-20.`,
      );
    const numeric = readNumeric(bare);
    if (numeric !== null && !numeric.ok) return numeric;
    if (numeric !== null && scale !== undefined && scale !== 'numeric' && scale !== 'us' && scale !== 'ancient') {
      return refuse(
        `${quoted(words)} is on the numeric scale and not the ${SCALES[scale].title} one. Write grade-scale: numeric.`,
      );
    }
    if (numeric !== null) return good(gradeFrom([['numeric', numeric.value]], all, text, options));
  }
  const on = (scales: readonly ScaleId[]) => scales.flatMap((id) => readOnScale(bare, id));
  const named = scale === undefined ? on(ASKED_FIRST) : on([scale]);
  const rarer = scale === undefined ? on(ASKED_LAST) : [];
  if (areFarApart(named, rarer)) return refuse(askForScale(words, named, rarer));
  const read = named.length === 0 ? rarer : named;
  const where = scale === undefined ? 'on any scale known here' : `on the ${SCALES[scale].title} scale`;
  if (OF_NOTES.test(words))
    return refuse(
      `${quoted(words)} is a grade of German paper money, from I (never used) to V (worn out), which has no scale here. Write it in words, such as ss or gebraucht in the notes.`,
    );
  if (read.length === 0) return refuse(`${quoted(words)} is not a grade ${where}. ${ask(scale)}`);
  return good(gradeFrom(read, all, text, options));
}

/** `1`, `01`, `1/1+`, `1-2`: the figures of the Scandinavian scale, of others that count from the best, and of the numeric one. */
const FIGURE = String.raw`(?:0?[0-6]|1\?)(?: ?\(\+\)|[+-])?`;
const SMALL_FIGURES = new RegExp(`^${FIGURE}(?: ?[/-] ?${FIGURE})?$`);

/** `8/10`: a mark out of ten, or from 8 to 10. */
const OUT_OF = /^\d{1,2} ?\/ ?(10|70)$/;

function askForFigures(words: string): string {
  const step = PREFIXES.find(({ low, high }) => low <= Number(words) && Number(words) <= high)?.names[0];
  const numeric = step === undefined ? 'a grade such as VF or VF-20' : `${step}-${Number(words)}`;
  return `${quoted(words)} is a grade on the Scandinavian scale and may be one on others. Write grade-scale: nordic beside it, or ${numeric}.`;
}

/** Whether letters are one grade on the scales asked first and quite another on the rest: `Fr` is fair, and Dutch for *fine*. */
function areFarApart(named: readonly Read[], rarer: readonly Read[]): boolean {
  if (named.length === 0 || rarer.length === 0) return false;
  const [here, there] = [named, rarer].map((reads) => union(reads.flatMap(([, { mappings }]) => mappings)));
  const isApart = (here?.high ?? 0) < (there?.low ?? 0) || (there?.high ?? 0) < (here?.low ?? 0);
  return isApart || named.some(([, { proof }]) => proof) !== rarer.some(([, { proof }]) => proof);
}

function askForScale(words: string, ...reads: readonly (readonly Read[])[]): string {
  const ids = reads.flatMap(([first]) => (first === undefined ? [] : [first[0]]));
  const titles = ids.map((id) => SCALES[id].title).join(' scale and another on the ');
  return `${quoted(words)} is one grade on the ${titles} one. Write ${ids.map((id) => `grade-scale: ${id}`).join(' or ')} beside it.`;
}

function readOnScale(words: string, id: ScaleId): readonly Read[] {
  const worded = readWords(words, id);
  return worded === null ? [] : [[id, worded]];
}

function gradeFrom(read: readonly Read[], said: readonly Said[], text: string, options: Stated): Grade {
  const mappings = read.flatMap(([, { mappings: each }]) => each);
  const problems = [
    options.stated,
    ...said.map((each) => (each.kind === 'problem' ? each.words : undefined)),
    options.problem,
  ];
  const known = problems.filter((each) => each !== undefined && each !== '');
  const named = known.length > 1 ? known.filter((each) => each !== PROBLEM_NOT_SAID) : known;
  const problem = [...new Set(named)].join('; ');
  const ranks = read.flatMap(([scale, { rank }]) => (rank === null ? [] : [{ scale, ...rank }]));
  return {
    text: text.trim(),
    scale: read[0]?.[0] ?? 'numeric',
    words: read[0]?.[1].words ?? '',
    ...union(mappings),
    mappings,
    ...(read.length > 1 ? { alsoOn: read.slice(1).map(([id]) => id) } : {}),
    ...(ranks.length === 0 ? {} : { ranks }),
    ...(problem === '' ? {} : { problem }),
    ...(read[0]?.[1].proof === true ? { proof: true as const } : {}),
    ...besideGrade(said),
  };
}

/** `VF but cleaned`: the word parts the grade from what is said against it. */
const BUT = /(?<=^[^ ,;]+(?: [^ ,;]+)?),? (?:but|though|although|aber|jedoch|mais|ma|pero|maar) (?=\S)/i;

/** The grade, then what is said beside it: `VF, toned (weak strike)` → `VF`, `toned`, `weak strike`. */
function phrases(words: string): readonly string[] {
  const [first = '', ...rest] = words
    .replace(BUT, ', ')
    .split(/[,;()]| with /)
    .map((phrase) => phrase.trim())
    .filter((phrase) => phrase !== '');
  return [first, ...deniedTogether(rest)];
}

/** `no scratches, hairlines or knocks` denies all three: a list under one denial is one phrase. */
function deniedTogether(phrases: readonly string[]): readonly string[] {
  const from = phrases.findIndex((phrase) =>
    /^(?:no|not|without|free (?:of|from)|ohne|keine?|sans|senza|sin|geen|zonder) /i.test(phrase),
  );
  const last = phrases.findIndex((phrase, at) => at > from && LAST_OF_LIST.test(phrase));
  if (from < 0 || last < 0 || last - from > LONGEST_LIST) return phrases;
  // No holes, cleaned or polished: what was done is not in a list of things.
  const isOfThings = !/^(?:not|nicht|niet) /i.test(phrases[from] ?? '');
  if (isOfThings && phrases.slice(from + 1, last + 1).some(saysWhatWasDone)) return phrases;
  return [...phrases.slice(0, from), phrases.slice(from, last + 1).join(', '), ...phrases.slice(last + 1)];
}

const LAST_OF_LIST = /(?:^| )(?:or|nor|oder|ou|o|of|ni|noch) \S/i;
const LONGEST_LIST = 4;

function ask(scale: ScaleId | undefined): string {
  if (scale === undefined || scale === 'numeric')
    return 'Write it like VF, good Fine, MS-63 or ss+, and name its scale.';
  const some = SCALES[scale].words.map(({ word }) => word).filter((_, at) => at % 2 === 1);
  return `Write it like ${some.slice(0, 4).join(', ')}.`;
}
