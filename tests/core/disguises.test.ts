import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseDate } from '../../src/core/dating/parse-date.ts';
import { formatGrade } from '../../src/core/grade/grade.ts';
import { parseGrade } from '../../src/core/grade/parse-grade.ts';
import { matchMask } from '../../src/core/legends/match-mask.ts';
import { normalLegend } from '../../src/core/legends/normal-legend.ts';
import { formatAxis, parseAxis } from '../../src/core/measures/parse-axis.ts';
import { parseLength } from '../../src/core/measures/parse-length.ts';
import { parseSize } from '../../src/core/measures/parse-size.ts';
import { parseWeight } from '../../src/core/measures/parse-weight.ts';
import { formatFineness, parseFineness } from '../../src/core/metal/parse-fineness.ts';
import { parseGravity } from '../../src/core/metal/specific-gravity.ts';
import { formatMoney, parseMoney } from '../../src/core/money/money.ts';
import type { Outcome } from '../../src/core/outcome.ts';
import { formatRarity, parseRarity } from '../../src/core/rarity/parse-rarity.ts';
import { parseReference } from '../../src/core/references/parse-reference.ts';
import { DATE_WORDINGS } from '../published/date-wordings.ts';
import {
  AXIS_WORDINGS,
  FINENESS_WORDINGS,
  LENGTH_WORDINGS,
  MONEY_WORDINGS,
  WEIGHT_WORDINGS,
} from '../published/measure-wordings.ts';
import { processorMilliseconds } from './cost-of.ts';
import { tries } from '../tries.ts';

/*
 * The same text as another keyboard, a spreadsheet or a web page types it: figures of full width or of Arabic, marks of
 * direction and of no width, blanks that do not break, dashes of every length, accents apart from their letters. It means
 * what it meant. A word too many means nothing at all.
 */
const DASHES = ['‐', '‑', '−'];
const BLANKS = ['\u00A0', '\u2009', '\u202F', '\u3000', '  '];
const UNSEEN = ['\u200E', '\u200F', '\u202A', '\u202C', '\u2066', '\u2069', '\u00AD', '\u200B', '\u2060', '\uFEFF'];

const wide = (text: string) => text.replace(/[0-9]/g, (digit) => String.fromCharCode(digit.charCodeAt(0) + 0xfee0));
const arabic = (text: string) => text.replace(/[0-9]/g, (digit) => String.fromCharCode(Number(digit) + 0x660));

type Disguise = (text: string) => string;

/** Between letters an unseen mark may join or part; here it stands at the ends and beside blanks. */
const unseen = fc.constantFrom(...UNSEEN).map(
  (mark): Disguise =>
    (text) =>
      mark + text.replaceAll(' ', ` ${mark}`) + mark,
);
const disguise: fc.Arbitrary<Disguise> = fc.oneof(
  fc.constant<Disguise>(wide),
  fc.constant<Disguise>((text) => text.normalize('NFD')),
  fc.constant<Disguise>((text) => ` ${text}\n`),
  unseen,
  fc.constantFrom(...BLANKS).map(
    (blank): Disguise =>
      (text) =>
        text.replaceAll(' ', blank),
  ),
  fc.constantFrom(...DASHES).map(
    (dash): Disguise =>
      (text) =>
        text.replaceAll('-', dash),
  ),
);

type Parser = {
  readonly name: string;
  readonly seeds: readonly string[];
  /** What is read, without the words it was read from. */
  readonly read: (text: string) => Outcome<unknown>;
  /** What is read, written and read again; undefined where that is told of elsewhere. */
  readonly again?: (text: string) => Outcome<unknown>;
};

function bare<T extends object>(outcome: Outcome<T>): Outcome<T & { readonly text: string }> {
  return outcome.ok ? { ok: true, value: { ...outcome.value, text: '' } } : outcome;
}

function again<T extends object>(parse: (text: string) => Outcome<T>, format: (value: T) => string) {
  return (text: string): Outcome<unknown> => {
    const outcome = parse(text);
    return outcome.ok ? bare(parse(format(outcome.value))) : outcome;
  };
}

const written = (rows: readonly { readonly write: string; readonly reads: unknown }[]) =>
  rows.flatMap(({ write, reads }) => (reads === null ? [] : [write]));

const years = (text: string): Outcome<unknown> => {
  const outcome = parseDate(text);
  if (!outcome.ok) return outcome;
  const { earliest, latest, about, doubtful, calendar } = outcome.value;
  return { ok: true, value: { earliest, latest, about, doubtful, calendar } };
};

/** A word at home on several scales reads back on the one it is printed for. */
const onOneScale = (text: string) => {
  const outcome = parseGrade(text);
  return outcome.ok ? parseGrade(text, { scale: outcome.value.scale }) : outcome;
};

const PARSERS: readonly Parser[] = [
  { name: 'date', seeds: DATE_WORDINGS.map(({ write }) => write).filter((text) => !/[٠-٩۰-۹]/.test(text)), read: years },
  { name: 'weight', seeds: written(WEIGHT_WORDINGS), read: (text) => bare(parseWeight(text)) },
  { name: 'length', seeds: written(LENGTH_WORDINGS), read: (text) => bare(parseLength(text)) },
  { name: 'size', seeds: ['9 x 24 mm', '18.2-19.4 mm', 'Ø 18.6 mm'], read: (text) => bare(parseSize(text)) },
  { name: 'fineness', seeds: written(FINENESS_WORDINGS), read: (text) => bare(parseFineness(text)), again: again(parseFineness, formatFineness) },
  { name: 'axis', seeds: written(AXIS_WORDINGS), read: (text) => bare(parseAxis(text)), again: again(parseAxis, formatAxis) },
  { name: 'money', seeds: written(MONEY_WORDINGS), read: (text) => bare(parseMoney(text)), again: again(parseMoney, formatMoney) },
  { name: 'grade', seeds: ['good VF/F', 'MS-63', 'AU-58+', 'ss-vz', 'TTB/SUP', 'EF details, cleaned', 'très beau', 'vorzüglich', 'not graded: cut'], read: (text) => bare(onOneScale(text)), again: again(onOneScale, formatGrade) },
  { name: 'rarity', seeds: ['american R-7', 'RIC I R4', 'fuld R-5'], read: (text) => bare(parseRarity(text)), again: again(parseRarity, formatRarity) },
]; // prettier-ignore

describe.for(PARSERS)('$name', ({ name, seeds, read }) => {
  test('is read the same in every disguise', () => {
    fc.assert(
      fc.property(fc.constantFrom(...seeds), fc.array(disguise, { minLength: 1, maxLength: 3 }), (seed, disguises) => {
        const disguised = disguises.reduce((text, put) => put(text), seed);
        expect(read(disguised)).toEqual(read(seed));
        expect(read(seed).ok).toBe(true);
      }),
      { numRuns: tries(400) },
    );
  });

  test('is refused with a word too many before it, after it or within', () => {
    const junk = fc.constantFrom('zqxj', '%%', 'zqxj 7', '#', '@9');
    fc.assert(
      fc.property(fc.constantFrom(...seeds), junk, fc.nat(2), (seed, word, where) => {
        const words = seed.split(' ');
        const at = where === 0 ? 0 : where === 1 ? words.length : Math.floor(words.length / 2);
        const text = [...words.slice(0, at), word, ...words.slice(at)].join(' ');
        // What follows "not graded" is the keeper's reason, and what follows "details" his problem.
        if (name === 'grade' && /^not graded|details/.test(text)) return;
        expect(read(text)).toMatchObject({ ok: false });
      }),
      { numRuns: tries(400) },
    );
  });
});

test.for(PARSERS.filter((parser) => parser.again !== undefined))(
  '$name reads back from print',
  ({ seeds, read, again: readAgain }) => {
    for (const seed of seeds) expect(readAgain?.(seed), seed).toEqual(read(seed));
  },
);

describe('figures of Arabic', () => {
  test.for(written(WEIGHT_WORDINGS).filter((text) => !/[٠-٩²]/.test(text)))('weigh the same: %s', (text) => {
    expect(bare(parseWeight(arabic(text)))).toEqual(bare(parseWeight(text)));
  });

  test('date only with their era', () => {
    expect(parseDate(arabic('AH 1255'))).toMatchObject({ ok: true, value: { earliest: 1839, latest: 1840 } });
    expect(parseDate(arabic('1255'))).toMatchObject({ ok: false });
  });
});

/** Texts that are long in one way each: of one sign, of words, of brackets, of marks over one letter. */
const LONG = [
  '1',
  ' ',
  '-',
  '(',
  '[',
  'c. ',
  '1279 or ',
  'AD ',
  'M',
  '½',
  '\u0301',
  '\u200F',
  'a.',
  '1/',
  '?',
  '*',
  '…',
  '"',
  '£',
  '9,',
  'VF-',
  '±',
  '𝟙',
  'ﷺ',
];

describe('a text however long is answered at once', () => {
  const all: readonly (readonly [string, (text: string) => unknown])[] = [
    ...PARSERS.map(({ name, read }) => [name, read] as const),
    ['gravity', (text) => parseGravity(text, '1 g', text)],
    ['reference', (text) => parseReference(text, [{ id: 'north', names: ['North'] }])],
    ['loose reference', (text) => parseReference(text, [])],
    ['legend', (text) => normalLegend(text)],
    ['mask', (text) => matchMask(text, text)],
  ];
  test.for(all)('%s: a hundred thousand signs, and three hundred', ([, read]) => {
    for (const piece of LONG) {
      for (const length of [300, 100_000]) {
        const text = piece.repeat(Math.ceil(length / piece.length)).slice(0, length);
        expect(processorMilliseconds(() => void read(text)), `${piece} × ${String(length)}`).toBeLessThan(50);
      }
    }
  });
}); // prettier-ignore
