import type { Recipes } from '../die.ts';
import { EDWARDIAN } from './edwardian.ts';
import { JORVIK } from './jorvik.ts';
import { NORTHUMBRIA } from './northumbria.ts';
import { ROME } from './rome.ts';

/** Every piece that is drawn: its id, and a recipe for each face that has a photograph. */
export const RECIPES: Readonly<Record<string, Recipes>> = { ...ROME, ...NORTHUMBRIA, ...JORVIK, ...EDWARDIAN };
