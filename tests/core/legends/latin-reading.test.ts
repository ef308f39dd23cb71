import { expect, test } from 'vitest';
import { isLatinReading } from '../../../src/core/legends/suggest-reading.ts';

/**
 * Legends written out, with their language. Latin: the styles and mottoes of Jewitt and Head, *English Coins and Tokens* (1886), and
 * Stevenson, *A Dictionary of Roman Coins* (1889). Not Latin: Old English of moneyers' names, English of tokens, German; from memory.
 */
const READINGS: readonly (readonly [reading: string, isLatin: boolean])[] = [
  ['Edwardus rex Angliae dominus Hiberniae', true],
  ['Posui Deum adiutorem meum', true],
  ['Civitas Eboraci', true],
  ['Magnae Britanniae, Franciae et Hiberniae rex', true],
  ['Imperator Caesar Traianus Hadrianus Augustus', true],
  ['Victoria Dei gratia Britanniarum regina fidei defensor', true],
  ['Willelm rex', true],
  ['Thorr on Eoforwic', false],
  ['Ieremie on Everwic', false],
  ['York, 1795', false],
  ['When this you see, think on me', false],
  ['Henry, by the grace of God king of England', false],
  ['Muhammad is the messenger of God', false],
  ['Ein Pfennig der Stadt', false],
  ['Θεὸς βασιλεύς', false],
  ['1795', false],
];

test.for(READINGS)('%s: Latin %s', ([reading, isLatin]) => {
  expect(isLatinReading(reading)).toBe(isLatin);
});
