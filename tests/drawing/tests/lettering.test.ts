import { expect, test } from 'vitest';
import { chanceFrom } from '../chance.ts';
import { letter, onRim } from '../lettering.ts';
import { rightToLeft } from '../motifs/east.ts';
import { legendsOf } from '../read-legend.ts';
import { fourWords } from '../recipes/edwardian.ts';
import { PUNCHES } from '../skeletons.ts';

const rim = { foot: 320, height: 124, from: 0, over: 360 } as const;
const letters = (drawing: string): number => drawing.split('rotate(').length - 1;

test('every capital, figure and sign of the English coinage has a punch', () => {
  for (const sign of "ABCDEFGHIJKLMNOPQRSTUVWXYZÆÐÞ0123456789+'·:-.")
    for (const punches of Object.values(PUNCHES)) expect(letter(sign, punches), sign).not.toBeNull();
});

test('a small letter is cut as its capital, and what no punch exists for is left out', () => {
  expect(letter('h', PUNCHES.lombardic)).toEqual(letter('H', PUNCHES.lombardic));
  expect(letter('ж', PUNCHES.lombardic)).toBeNull();
});

test('what a reader restores in brackets is cut faintly, and what is lost leaves room only', () => {
  const { whole, faint } = onRim('AB[CD]…E', PUNCHES.wedge, rim, chanceFrom('rim'));
  const bare = onRim('A', PUNCHES.wedge, rim, chanceFrom('rim'));
  expect(letters(whole) / letters(bare.whole)).toBe(3);
  expect(letters(faint) / letters(bare.whole)).toBe(2);
  expect(onRim('……', PUNCHES.wedge, rim, chanceFrom('rim'))).toEqual({ whole: '', faint: '' });
});

test('a legend is parted into the four quarters of a cross', () => {
  expect(fourWords('CIVI TAS EBO RACI')).toBe('CIVI TAS EBO RACI');
  expect(fourWords('CIVITAS EBORACI').split(' ')).toHaveLength(4);
  expect(fourWords('CIVITAS EBORACI').replace(/ /g, '')).toBe('CIVITASEBORACI');
  // As the dies of the groats have it.
  expect(fourWords('+POSVI DEVM ADIVTOREM MEV')).toBe('+POSVI DEVMA DIVTOR EMMEV');
  expect(fourWords('CIVITAS EB[ORACI]').replace(/ /g, '').replace(/\]\[/g, '')).toBe('CIVITASEB[ORACI]');
});

test('Arabic is set from right to left, its brackets turned with it', () => {
  expect(rightToLeft('[لا] اله')).toBe('هلا [ال]');
});

test("a face's legend is read from the piece's file, cut at its commas, Arabic ones too", () => {
  const file =
    '---\nnumber: "0001"\nobverse: { legend: "+OBAN M-O EOFR, CRVX" }\nreverse:\n  legend: "محمد، احمد"\n---\nA story.';
  expect(legendsOf(file)).toEqual({ obverse: ['+OBAN M-O EOFR', 'CRVX'], reverse: ['محمد', 'احمد'] });
  expect(legendsOf('No front matter.')).toEqual({});
});
