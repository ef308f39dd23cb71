import type { Recipes } from '../die.ts';
import { EAST } from './east.ts';
import { EDWARDIAN } from './edwardian.ts';
import { JORVIK } from './jorvik.ts';
import { KIN } from './kin.ts';
import { LATER_MEDIEVAL } from './later-medieval.ts';
import { NORMAN } from './norman.ts';
import { NORTHUMBRIA } from './northumbria.ts';
import { ROME } from './rome.ts';
import { TUDOR_AND_STUART } from './tudor.ts';

/** Every piece that is drawn: its id, and a recipe for each face that has a photograph. */
export const RECIPES: Readonly<Record<string, Recipes>> = { ...ROME, ...NORTHUMBRIA, ...JORVIK, ...NORMAN, ...EDWARDIAN, ...LATER_MEDIEVAL, ...TUDOR_AND_STUART, ...KIN, ...EAST };
