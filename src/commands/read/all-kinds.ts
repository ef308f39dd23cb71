import { COUNTED, dateKind, gradeKind } from './dated.ts';
import { NOTHING } from './consulted.ts';
import type { Consulted } from './consulted.ts';
import type { Kind } from './kind.ts';
import { MEASURED } from './measured.ts';
import { concordKind } from './concorded.ts';
import { referenceKind, WRITTEN } from './written.ts';

/** Every kind of text that can be read, in the order of the help, with what a cabinet knows. */
export function kinds({ reigns, works, types }: Consulted = NOTHING): readonly Kind[] {
  return [
    dateKind(reigns),
    gradeKind,
    ...MEASURED,
    ...WRITTEN,
    referenceKind(works),
    concordKind(types, works),
    ...COUNTED,
  ];
}
