import { expect, test } from 'vitest';
import { parseDate } from '../../../../src/core/dating/parse-date.ts';
import type { EraScheme } from '../../../../src/core/eras/era-scheme.ts';
import { placePiece } from '../../../../src/core/eras/place-in-scheme.ts';
import type { PublicPiece } from '../../../../src/publish/public-piece.ts';
import { doubtOf, tallyIn } from '../../../../src/site/models/eras/placed.ts';
import { erasWords } from '../../../../src/site/words/eras.ts';

/** As in the chapters of North, English Hammered Coinage I (1994): kings of all England, and beside them the Vikings of York. */
const byRulers: EraScheme = {
  id: 'by-rulers', title: '', source: '', ends: 'shared', appliesTo: ['England'],
  periods: [
    { id: 'saxon', name: 'Anglo-Saxon', from: 600, to: 1066, rulers: ['aethelstan', 'harold-ii'] },
    { id: 'viking', name: 'Anglo-Scandinavian', from: 885, to: 954, rulers: ['anlaf'] },
    { id: 'norman', name: 'Norman', from: 1066, to: 1154, rulers: ['william-i'] },
  ],
}; // prettier-ignore

/** Periods within one another, as finds are recorded under them (Portable Antiquities Scheme). */
const byYears: EraScheme = {
  id: 'by-years', title: '', source: '', ends: 'inclusive',
  periods: [
    { id: 'early', name: 'Early Medieval', from: 410, to: 1066 },
    { id: 'late', name: 'Late Early Medieval', from: 851, to: 1066 },
  ],
}; // prettier-ignore

const YORK = { mint: 'york', area: 'England', sure: 'certain' } as const;

/** A coin of York of these years, as far as a period asks. */
function coin(years: readonly [number, number], rulers: readonly string[], isDateSure = true): PublicPiece {
  const where = { made: YORK, found: null, rulers };
  const span = { low: years[0], high: years[1] };
  const sure = isDateSure ? {} : { date: 'probable' };
  const eras = { 'by-rulers': placePiece(span, where, byRulers), 'by-years': placePiece(span, where, byYears) };
  return {
    kind: 'coin',
    status: 'kept',
    sure,
    date: null,
    rulers: null,
    struckFor: [],
    eras,
  } as unknown as PublicPiece;
}

const { doubt } = erasWords;

test.for([
  ['a penny of a known king, whose years two periods have', coin([928, 939], ['aethelstan']), byRulers, 'saxon', null],
  ['a penny of a known king of a doubtful year', coin([1083, 1086], ['william-i'], false), byRulers, 'norman', null],
  ['an ingot of the years of two lines', coin([900, 930], []), byRulers, 'saxon', doubt.years(['Anglo-Scandinavian'])],
  ['the same in the other', coin([900, 930], []), byRulers, 'viking', doubt.years(['Anglo-Saxon'])],
  ['a nameless coin of one line and a doubtful year', coin([700, 750], [], false), byRulers, 'saxon', doubt.date],
  ['a coin of a period within another', coin([900, 930], []), byYears, 'early', null],
  ['a coin that runs out of the inner one', coin([840, 860], []), byYears, 'late', doubt.years([])],
] as const)('%s', ([, piece, scheme, period, expected]) => {
  expect(doubtOf(piece, scheme, period, {})).toBe(expected);
});

test('what may be of two lines makes the count of each a range, and what has a ruler does not', () => {
  const pieces = [coin([928, 939], ['aethelstan'], false), coin([900, 930], [])];
  expect(tallyIn(pieces, byRulers, 'saxon', {}).here).toEqual({ low: 1, high: 2 });
});

// The years of Æthelred II of Northumbria and of William I (Handbook of British Chronology, 3rd edition, 1986).
test.for([
  ['841', '849', 'early', null],
  ['841', '849', 'late', doubt.date],
  ['1066', '1087', 'early', doubt.date],
] as const)('a doubtful year under a king of %s to %s is a doubt about %s: %s', ([from, to, period, expected]) => {
  const date = (text: string) => {
    const read = parseDate(text);
    return read.ok ? read.value : expect.fail(read.problem);
  };
  const piece = { ...coin([860, 865], [], false), rulers: [{ id: 'king', name: 'A king' }], struckFor: [] };
  const king = { fields: { reigns: [{ from: date(`0${from}`.slice(-4)), to: date(`0${to}`.slice(-4)) }] } };
  expect(doubtOf(piece, byYears, period, { king } as unknown as Parameters<typeof doubtOf>[3])).toBe(expected);
});
