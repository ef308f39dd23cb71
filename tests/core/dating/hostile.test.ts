import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Dating } from '../../../src/core/dating/dating.ts';
import { formatDate } from '../../../src/core/dating/format-date.ts';
import { yearsOf } from '../../../src/core/dating/interval.ts';
import { parseDate } from '../../../src/core/dating/parse-date.ts';
import { DATE_EXAMPLES } from '../../../src/core/dating/date-examples.ts';
import { readStrictly, UNDER_EDWARD_I } from './read-as.ts';
import { tries } from '../../tries.ts';

/** Every way of writing a date that the table of readings teaches, to be broken. */
const SEEDS = DATE_EXAMPLES.flatMap(({ rows }) => rows.map(({ write }) => write));
const JOINTS = ['-', '/', ' ', ' to ', ' or ', ' and ', '(', ')', '?', 'c. ', 'X', '..', ' = ', ', '];

const scrap = fc.oneof(fc.constantFrom(...SEEDS, ...JOINTS), fc.string({ unit: 'binary', maxLength: 6 }));

/** A date with up to four of its letters lost, doubled or changed. */
const change = fc.tuple(
  fc.nat(40),
  fc.constantFrom('lost', 'doubled', 'changed'),
  fc.constantFrom(...'0123456789XuxYS?~%/.,[]{}()- cAHBCDIVé٢元ש'.split('')),
);
const mutated = fc
  .tuple(fc.constantFrom(...SEEDS), fc.array(change, { minLength: 1, maxLength: 4 }))
  .map(([seed, changes]) =>
    changes.reduce((text, [at, kind, letter]) => {
      const place = at % (text.length + 1);
      const put = kind === 'lost' ? '' : kind === 'doubled' ? text.slice(place, place + 1).repeat(2) : letter;
      return text.slice(0, place) + put + text.slice(place + 1);
    }, seed),
  );

const hostile = fc.oneof(
  fc.array(scrap, { maxLength: 7 }).map((scraps) => scraps.join('')),
  fc.string({ maxLength: 320 }),
  fc.string({ unit: 'binary', maxLength: 60 }),
  mutated,
);

const sense = ({ earliest, latest, about, doubtful }: Dating) => ({ earliest, latest, about, doubtful });

test('100,000 random and mutated texts: never an exception, and what is read is sound and reads back', () => {
  fc.assert(
    fc.property(hostile, (text) => {
      const outcome = parseDate(text, UNDER_EDWARD_I);
      if (!outcome.ok) {
        if (!/^\S.*\.$/su.test(outcome.problem)) expect.unreachable(outcome.problem);
        return;
      }
      const { low, high } = yearsOf(outcome.value);
      expect(low).toBeLessThanOrEqual(high);
      expect(JSON.stringify(outcome.value)).not.toContain('NaN');
      expect(sense(readStrictly(outcome.value.edtf))).toEqual(sense(outcome.value));
      expect(formatDate(outcome.value)).not.toMatch(/NaN|undefined|null/);
    }),
    { numRuns: tries(100_000) },
  );
}, 240_000);

/** The words and letters that date a piece without a figure: anything else has nothing to be read from. */
const DATES_WITHOUT_FIGURES =
  /\p{N}|[MDCLXVI]{2}|[\p{Script=Cyrillic}\p{Script=Hebrew}\p{Script=Han}]|cent|siècle|secolo|siglo|saec|jh|jahrh|\bs\.? [ivx]|s\.[ivx]|[ivx](?:er?|o) ?[cs]\b|[ivx] [cs]\.|n\.? ?d|s\.? ?[da]\b|o\.? ?j\b|date|datiert|unknown|ohne jahr|sine anno|\.\.|\/|reign|temp/iu;

test('20,000 texts without a figure or a word for a time are never a date', () => {
  const letters = fc.oneof(
    fc.string({ unit: 'grapheme', minLength: 1, maxLength: 40 }),
    fc.array(fc.constantFrom('before', 'about', 'AD', 'BC', 'AH', 'year', 'or', 'and', 'to', 'penny', '?', '-', 'early', 'the', 'March', 'spring', 'Edward', 'Meiji', 'c.'), { minLength: 1, maxLength: 8 }).map((words) => words.join(' ')),
  ); // prettier-ignore
  fc.assert(
    fc.property(
      letters.filter((text) => !DATES_WITHOUT_FIGURES.test(text.normalize('NFKC'))),
      (text) => {
        const outcome = parseDate(text);
        if (outcome.ok) expect.unreachable(`${text} was read as ${outcome.value.edtf}`);
      },
    ),
    { numRuns: tries(20_000) },
  );
});
