import { tidy } from '../measures/amount.ts';
import type { Outcome } from '../outcome.ts';
import { good, refuse } from '../outcome.ts';
import type { Rarity, RarityClass, RarityScale } from './rarity.ts';
import { RARITY_SCALES, rarityScale } from './scales.ts';

const LONGEST = 80;
const IDS = RARITY_SCALES.map((scale) => scale.id).join(', ');

function unknownScale(named: string): string {
  return `No rarity scale is called "${named}" here. Write one of ${IDS}.`;
}

/** A class is the same with or without its hyphen and space, and in small letters: `r7` is `R-7`. */
function plainClass(name: string): string {
  return name.toUpperCase().replace(/[\s.-]+/gu, '');
}

function classNamed(scale: RarityScale, name: string): RarityClass | null {
  return scale.classes.find((row) => plainClass(row.name) === plainClass(name)) ?? null;
}

/** The scale a text names first or last, and the rest of it: `American R-7`, `R4 (RIC I)`. */
function takeScale(text: string): { readonly scale: RarityScale; readonly rest: string } | null {
  const names = RARITY_SCALES.flatMap((scale) => [scale.id, ...scale.names].map((name) => ({ scale, name })));
  const longestFirst = names.sort((one, other) => other.name.length - one.name.length);
  for (const { scale, name } of longestFirst) {
    const plain = text.toLowerCase();
    if (plain.startsWith(`${name} `)) return { scale, rest: text.slice(name.length).trim() };
    for (const ending of [` (${name})`, ` ${name}`])
      if (plain.endsWith(ending)) return { scale, rest: text.slice(0, -ending.length).trim() };
  }
  return null;
}

/** Reads `American R-7`, or `R-7` when the scale is given apart. A class without a scale is refused: `R5` means different things. */
export function parseRarity(text: string, scale?: string): Outcome<Rarity> {
  const written = tidy(text);
  if (written.length > LONGEST)
    return refuse(`A rarity is a scale and a class; this has ${written.length} characters. Write american R-7.`);
  const given = scale === undefined ? null : rarityScale(scale);
  if (scale !== undefined && given === null) return refuse(unknownScale(scale));
  const taken = given === null ? takeScale(written) : { scale: given, rest: takeScale(written)?.rest ?? written };
  if (taken === null)
    return refuse(
      `"${written.slice(0, 40)}" names no rarity scale that is known here. Write the scale first, one of ${IDS}: american R-7.`,
    );
  const row = classNamed(taken.scale, taken.rest);
  const classes = taken.scale.classes.map((one) => one.name).join(', ');
  if (row === null)
    return refuse(`The scale ${taken.scale.title} has no class "${taken.rest.slice(0, 40)}". Write one of ${classes}.`);
  return good({ text: written, scale: taken.scale.id, class: row.name, low: row.low, high: row.high });
}

/** The class a number of pieces known falls in. A scale that gives only words is refused. */
export function rarityOf(known: number, scale: string): Outcome<Rarity> {
  const given = rarityScale(scale);
  if (given === null) return refuse(unknownScale(scale));
  if (!Number.isSafeInteger(known) || known < 1) return refuse('The number known is a whole number from 1. Write 5.');
  const row = given.classes.find(({ low, high }) => low !== null && known >= low && (high === null || known <= high));
  if (row === undefined)
    return refuse(
      `The scale ${given.title} gives no class for ${known} pieces. Write the class itself, one of ${given.classes.map((one) => one.name).join(', ')}.`,
    );
  return good({ text: `${given.id} ${row.name}`, scale: given.id, class: row.name, low: row.low, high: row.high });
}

/** A rarity with its scale, as it is read back: `american R-7`. */
export function formatRarity(rarity: Pick<Rarity, 'scale' | 'class'>): string {
  return `${rarity.scale} ${rarity.class}`;
}
