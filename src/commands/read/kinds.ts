import type { Reign } from '../../core/dating/dating.ts';
import { COUNTED } from './counted.ts';
import { dateKind, gradeKind } from './dated.ts';
import type { Kind } from './kind.ts';
import { MEASURED } from './measured.ts';
import { WRITTEN } from './written.ts';

/** Every kind of text that can be read, in the order of the help. */
export function kinds(reigns: readonly Reign[] = []): readonly Kind[] {
  return [dateKind(reigns), gradeKind, ...MEASURED, ...WRITTEN, ...COUNTED];
}
