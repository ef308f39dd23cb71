import { refuse, type Outcome } from '../outcome.ts';
import type { Reading } from './dating.ts';
import { AFTER_CHRIST, BEFORE_CHRIST } from './words.ts';
import { anyOf } from './written-text.ts';

/** Two dates read together, and the words they were read from once each had what it shares with the other. */
export interface Pair {
  readonly left: Outcome<Reading>;
  readonly right: Outcome<Reading>;
  readonly words: { readonly left: string; readonly right: string };
}

const ENDS_BEFORE_CHRIST = new RegExp(`${anyOf(BEFORE_CHRIST)}$`, 'i');
const ENDS_AFTER_CHRIST = new RegExp(`(?<=\\d ?)${anyOf(AFTER_CHRIST)}$`, 'i');
const NAMES_ERA = new RegExp(`${anyOf([...BEFORE_CHRIST, ...AFTER_CHRIST])}$|^AD `, 'i');

const BARE = /^\d{1,4}$/;
const ERA_ALONE = new RegExp(`^${anyOf([...BEFORE_CHRIST, ...AFTER_CHRIST])}$`, 'i');
/** A year in figures, its era before or after it; a century has letters or a full stop at its number. */
const YEAR_IN_FIGURES = /^(?:\D*[^\d-] )?\d{1,4}(?: \D+)?$/;

type Read = (text: string) => Outcome<Reading> | undefined;

/** Two days written with hyphens, joined by a hyphen, have five; more make no date. */
const MOST_JOINTS = 5;

/** Every way to cut a text in two at a joint. */
export function splits(text: string, joint: RegExp): readonly { left: string; right: string }[] {
  const joints = [...text.matchAll(joint)];
  if (joints.length > MOST_JOINTS) return [];
  return joints.map((found) => ({
    left: text.slice(0, found.index).trim(),
    right: text.slice(found.index + found[0].length).trim(),
  }));
}

/**
 * Reads two dates that may share words: "27-14 BC" lends its BC to the left, "AD 71-73" its AD to the right,
 * "late 1st to early 2nd century" its century, "20-25 November 1278" its month, "1279-81" its figures.
 */
export function readPair(left: string, right: string, read: Read): Pair | undefined {
  if (left === '' || right === '') return undefined;
  if (lacksYear(left, right)) return pairWithoutYear(left, right);
  const lent = lentByRight(left, right);
  // A bare number, or a century before one BC, takes the era of its partner before it is taken for a year of its own.
  const lentFirst = BARE.test(left) || (ENDS_BEFORE_CHRIST.test(right) && !NAMES_ERA.test(left));
  const leftFound = firstRead(lentFirst ? [...lent, left] : [left, ...lent], read);
  if (!leftFound) return undefined;
  const borrowed = lentByLeft(left, right);
  const rightFirst =
    BARE.test(right) && isOfAnotherEra(leftFound.outcome) ? [...borrowed, right] : [right, ...borrowed];
  const full = withFigures(left, right);
  const rightFound = firstRead(full === undefined ? rightFirst : [full, ...rightFirst], read);
  if (!rightFound) return undefined;
  return {
    left: leftFound.outcome,
    right: rightFound.outcome,
    words: { left: leftFound.words, right: rightFound.words },
  };
}

/** `9 BC-AD`: one end has a year, the other an era and no year. A century may lend itself: `1st century BC/AD`. */
function lacksYear(left: string, right: string): boolean {
  return [
    [left, right],
    [right, left],
  ].some(([era = '', other = '']) => ERA_ALONE.test(era) && YEAR_IN_FIGURES.test(other));
}

function pairWithoutYear(left: string, right: string): Pair {
  const [era, year] = ERA_ALONE.test(left) ? [left, right] : [right, left];
  const example = ENDS_BEFORE_CHRIST.test(year) ? `${year} - AD 14` : `9 BC - ${year}`;
  const refused = refuse(`One end names no year, only ${era}; write both years, such as ${example}, or ${year} alone.`);
  return { left: refused, right: refused, words: { left, right } };
}

function isOfAnotherEra(outcome: Outcome<Reading>): boolean {
  return outcome.ok && outcome.value.calendar !== 'gregorian' && outcome.value.calendar !== 'julian';
}

/** The first of several wordings that can be read; failing that, the first refusal. */
function firstRead(wordings: readonly string[], read: Read): { words: string; outcome: Outcome<Reading> } | undefined {
  let refused: { words: string; outcome: Outcome<Reading> } | undefined;
  for (const words of wordings) {
    const outcome = read(words);
    if (outcome?.ok) return { words, outcome };
    if (outcome) refused ??= { words, outcome };
  }
  return refused;
}

/** The last words of the right-hand date put after the left: most of them first. */
function lentByRight(left: string, right: string): readonly string[] {
  const words = right.split(/(?<=\.)(?=\p{L})| /u);
  return words.slice(1, 7).map((_, index) => `${left} ${words.slice(index + 1).join(' ')}`);
}

/** The first words of the left-hand date put before the right: most of them first. */
function lentByLeft(left: string, right: string): readonly string[] {
  const words = left.split(' ').slice(0, 7);
  // "14 AD-37" names the era of both; "14 BC-37" leaves open on which side of it the second lies.
  const era = BARE.test(right) ? ENDS_AFTER_CHRIST.exec(left)?.[0] : undefined;
  if (era !== undefined) return [`${right} ${era}`];
  return words.slice(1).map((_, index) => `${words.slice(0, words.length - 1 - index).join(' ')} ${right}`);
}

/** `1279-81` is 1281 and `AH 290-9` is AH 299: the leading figures of the left stand for those the right leaves out. */
function withFigures(left: string, right: string): string | undefined {
  const first = /^(?<before>\D*?)(?<year>\d{2,4})(?<after>\D*)$/.exec(left)?.groups;
  const second = /^(?<year>\d{1,3})(?<after>(?:'?s|er)?(?: \D*)?)$/.exec(right)?.groups;
  const year = first?.['year'] ?? '';
  const rest = second?.['year'] ?? '';
  if (!first || !second || rest.length >= year.length) return undefined;
  if (ENDS_BEFORE_CHRIST.test(left) || ENDS_BEFORE_CHRIST.test(right)) return undefined;
  const full = year.slice(0, year.length - rest.length) + rest;
  return `${first['before'] ?? ''}${full}${second['after'] ?? ''}${second['after'] ? '' : (first['after'] ?? '')}`;
}
