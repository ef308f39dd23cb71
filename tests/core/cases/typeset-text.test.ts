import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { letterWidth, lineHeight, lineText, setText, widthOfText } from '../../../src/core/cases/typeset-text.ts';

const words = fc.array(fc.stringMatching(/^[a-zæþðA-Z0-9,.’-]{1,18}$/), { minLength: 1, maxLength: 60 });
const points = fc.integer({ min: 8, max: 36 });
const width = fc.integer({ min: 20, max: 200 });

describe('a text set in lines', () => {
  test('keeps every letter, in order', () => {
    fc.assert(
      fc.property(words, width, points, (text, wide, size) => {
        const lines = setText(text.join(' '), wide, size).map(lineText);
        expect(lines.join('').replaceAll(' ', '')).toBe(text.join(''));
      }),
    );
  });

  test('no line is wider than it may be, unless a single letter is', () => {
    fc.assert(
      fc.property(words, width, points, (text, wide, size) => {
        for (const line of setText(text.join(' '), wide, size).map(lineText))
          expect(line.length === 1 || widthOfText(line, size) <= wide + 1e-9).toBe(true);
      }),
    );
  });

  test('no word is left behind that would have fitted the line before', () => {
    fc.assert(
      fc.property(words, width, points, (text, wide, size) => {
        const lines = setText(text.join(' '), wide, size).map(lineText);
        lines.slice(1).forEach((line, index) => {
          const first = line.split(' ')[0] ?? '';
          if (widthOfText(first, size) < wide / 2)
            expect(widthOfText(`${lines[index] ?? ''} ${first}`, size)).toBeGreaterThan(wide - 1e-9);
        });
      }),
    );
  });

  test('an italic title keeps its style, and its full stop does not part from it', () => {
    const lines = setText([{ text: 'J. North, ' }, { text: 'English Coinage', italic: true }, { text: '.' }], 500, 12);
    expect(lines).toEqual([[{ text: 'J. North, ' }, { text: 'English Coinage', italic: true }, { text: '.' }]]);
  });

  test('a no-break space does not break', () => {
    expect(setText('weighs 1.38\u00a0g', widthOfText('weighs 1.38', 12) + 1, 12).map(lineText)).toEqual([
      'weighs',
      '1.38\u00a0g',
    ]);
  });

  test('no words, no lines', () => expect(setText('  ', 100, 12)).toEqual([]));

  test('accents take no room', () => {
    expect(letterWidth('é', false)).toBe(letterWidth('e', false));
    expect(letterWidth('\u0301', false)).toBe(0);
  });

  // 1 point = 1/72 inch (the point of PostScript and CSS); 18 × 25.4 / 72 × 1.25 = 7.9375.
  test('lines of 18 pt are 7.94 mm apart', () => expect(lineHeight(18)).toBeCloseTo(7.9375, 6));
});
