import type { Recipes } from '../die.ts';
import { EAST } from './east.ts';
import { EDWARDIAN } from './edwardian.ts';
import { ENGLISH_KINGS } from './english-kings.ts';
import { JORVIK } from './jorvik.ts';
import { LATE_ROME } from './late-rome.ts';
import { LATER_MEDIEVAL } from './later-medieval.ts';
import { LOVE_TOKEN } from './love-token.ts';
import { NORMAN } from './norman.ts';
import { NORTHUMBRIA } from './northumbria.ts';
import { PRESSED } from './pressed.ts';
import { ROME } from './rome.ts';
import { SILVER_BY_WEIGHT } from './silver-by-weight.ts';
import { STUART } from './stuart.ts';
import { TOKENS } from './tokens.ts';
import { TUDOR } from './tudor.ts';

/** Every piece that is drawn: its id, and a recipe for each face that has a photograph. */
export const RECIPES: Readonly<Record<string, Recipes>> = {
  ...ROME,
  ...LATE_ROME,
  ...NORTHUMBRIA,
  ...JORVIK,
  ...ENGLISH_KINGS,
  ...SILVER_BY_WEIGHT,
  ...NORMAN,
  ...EDWARDIAN,
  ...LATER_MEDIEVAL,
  ...TUDOR,
  ...STUART,
  ...TOKENS,
  ...LOVE_TOKEN,
  ...PRESSED,
  ...EAST,
};
