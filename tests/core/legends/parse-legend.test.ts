import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formatLegend, parseLegend } from '../../../src/core/legends/parse-legend.ts';
import { tries } from '../../tries.ts';

function partsOf(text: string) {
  const outcome = parseLegend(text);
  return outcome.ok
    ? outcome.value.parts.map(({ kind, text: cut }) => `${kind} ${cut.trim()}`.trim())
    : outcome.problem;
}

/** Legends as a keeper might write them, with and without sense. */
const anyLegend = fc
  .array(
    fc.constantFrom(
      'EDW',
      'R',
      "'",
      ' ',
      '+',
      '·',
      ':',
      '…',
      '[',
      ']',
      '(',
      ')',
      'ustus',
      ', ',
      '/',
      'Æ',
      'محمد',
      'Σ',
      '12',
      '.',
      '...',
      'ſ',
      '-',
    ),
    { maxLength: 16 },
  )
  .map((pieces) => pieces.join(''));

describe('A legend is read', () => {
  test.for([
    ['CIVI TAS EBO RACI', ['cut CIVI', 'break', 'cut TAS', 'break', 'cut EBO', 'break', 'cut RACI']],
    ["+EDW R'", ['mark +', 'cut EDW', 'break', 'cut R', "stop '"]],
    ['ANGLO[RX]', ['cut ANGLO', 'restored RX']],
    ['AVG(ustus)', ['cut AVG', 'expanded ustus']],
    ['OSBCHE[…]RE', ['cut OSBCHE', 'lost …', 'cut RE']],
    ['OSBCHE...RE', ['cut OSBCHE', 'lost …', 'cut RE']],
    ['MEMORIA FELIX, PLN', ['cut MEMORIA', 'break', 'cut FELIX', 'break ,', 'cut PLN']],
    ['REX·ANGLIE', ['cut REX', 'stop ·', 'cut ANGLIE']],
  ] as const)(
    '%s, by the editing marks of Sandys, Latin Epigraphy (1927), and the stops of the trade',
    ([text, parts]) => {
      expect(partsOf(text)).toEqual(parts);
    },
  );

  test('an abbreviation completed inside a restoration keeps both', () => {
    const outcome = parseLegend('[AVG(ustus)]');
    expect(outcome).toMatchObject({
      ok: true,
      value: {
        parts: [
          { kind: 'restored', text: 'AVG' },
          { kind: 'expanded', text: 'ustus', supplied: true },
        ],
      },
    });
  });

  test.for([
    ['REX', 'ltr', 'latin'],
    ['ΒΑΣΙΛΕΩΣ', 'ltr', 'greek'],
    ['КОПЕЙКА', 'ltr', 'cyrillic'],
    ['محمد رسول الله', 'rtl', 'arabic'],
    ['ירושלים', 'rtl', 'hebrew'],
    ['ᚠᚢᚦ', 'ltr', 'runic'],
    ['𐭠𐭥', 'rtl', 'other'],
    ['1872', 'ltr', 'latin'],
  ] as const)(
    '%s runs %s in %s letters (Unicode Standard, scripts and bidirectional classes)',
    ([text, direction, script]) => {
      expect(parseLegend(text)).toMatchObject({ ok: true, value: { direction, script } });
    },
  );
});

describe('A legend is refused in a sentence', () => {
  test.for([
    ['', 'at least one letter'],
    ['ANGLO[RX', 'never closed'],
    ['ANGLO]', 'no partner'],
    ['AVG(us(tus))', 'no partner'],
    ['[]', 'nothing between'],
    ['/', 'at least one letter'],
    ['REX ( )', 'nothing between'],
    ['AVG(ustus.)', 'letters alone'],
    ['REX {ANGL}', '{'],
    ['A'.repeat(1001), 'at most 1000'],
  ] as const)('%#: %s', ([text, says]) => {
    const outcome = parseLegend(text);
    expect(outcome.ok ? 'read' : outcome.problem).toContain(says);
  });
});

test('there and back: what is read from a written legend is the legend that was written', () => {
  fc.assert(
    fc.property(anyLegend, (text) => {
      const first = parseLegend(text);
      if (!first.ok) return;
      const second = parseLegend(formatLegend(first.value));
      expect(second).toMatchObject({ ok: true, value: { parts: first.value.parts, script: first.value.script } });
    }),
    { numRuns: tries(10_000) },
  );
});

test('a restoration of several words keeps one pair of brackets', () => {
  for (const text of ['T[RAIANVS HA]DRIANVS', "+[EDW R' A]NGL", '[AVG(ustus) P P]']) {
    const outcome = parseLegend(text);
    expect(outcome.ok ? formatLegend(outcome.value) : outcome.problem).toBe(text);
  }
});
