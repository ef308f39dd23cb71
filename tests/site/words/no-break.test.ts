import { expect, test } from 'vitest';
import { tied } from '../../../src/site/words/no-break.ts';

// Common practice of setting text: a number stays with the name, the unit or the sign it belongs to. `_` stands for the tie, `+` for the joiner of no width.
const TIED = [
  ['Penny of Edward I, York', 'Penny of Edward_I, York'],
  ['from Edward VI to William III', 'from Edward_VI to William_III'],
  ['Æthelred II of England', 'Æthelred_II of England'],
  ['18.6 mm and 1.38 g', '18.6_mm and 1.38_g'],
  ['c. 1279, or AD 700', 'c._1279, or AD_700'],
  ['1280–81, 1.38 g ± 0.01, graded Good VF', '1280–+81, 1.38_g_±_0.01, graded Good_VF'],
  ['Penny of London, class 3b', 'Penny of London, class_3b'],
  ['no. 0123 of St Peter', 'no._0123 of St_Peter'],
  ['a stamped arm-ring, a half-crown of al-Shash', 'a stamped arm-+ring, a half-+crown of al-+Shash'],
  ['about AD 880–950, about EF', 'about AD_880–+950, about_EF'],
  ['928–39 and 398/97 BC', '928–+39 and 398/+97 BC'],
  ['before 14 November 1970', 'before 14_November 1970'],
] as const;
const UNTIED = [
  'Here am Ivy and I', 'I kept the coin', 'a good VANE', 'class of 1279', 'XX gold pieces', 'the Victorian VI-sided', 'mint IVAN', 'a coin-weight, Anglo-Scandinavian', '18 mmm', 'cos. 12',
] as const; // prettier-ignore

// Common practice of setting text: a book has no typewriter's apostrophe. The sign of a shortened word on a coin, and of a letter
// of another script, stays as it is written.
const APOSTROPHES = [
  ["King Henry's penny, and I can't say whose", 'King Henry’s penny, and I can’t say whose'],
  ["They are signed, which few kings' coins are", 'They are signed, which few kings’ coins are'],
  ["Roman numbers are RIC's", 'Roman numbers are RIC’s'],
  ["Groat in Henry VIII's name, Edward I's mint", 'Groat in Henry VIII’s name, Edward I’s mint'],
  ["the mark 'of kings' stands there", "the mark 'of kings' stands there"],
  ["EDW R' ANGL' DNS hYB'", "EDW R' ANGL' DNS hYB'"],
  ["Isma'il ibn Ahmad", "Isma'il ibn Ahmad"],
  ["CIVITAS'S", "CIVITAS'S"],
] as const;

test.for(APOSTROPHES)('%s is set as %s', ([text, set]) => {
  expect(tied(text)).toBe(set);
});

test.for(TIED)('%s is kept together as %s', ([text, kept]) => {
  expect(tied(text)).toBe(kept.replaceAll('_', '\u00a0').replaceAll('+', '\u2060'));
});

test.for(UNTIED)('%s is left as it is', (text) => {
  expect(tied(text)).toBe(text);
});
