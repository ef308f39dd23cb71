import type { Recipes } from '../die.ts';
import { ROME } from './rome.ts';

/** Every piece that is drawn: its id, and a recipe for each face that has a photograph. */
export const RECIPES: Readonly<Record<string, Recipes>> = { ...ROME };
