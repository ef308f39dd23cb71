import { good, type Outcome } from '../../../core/outcome.ts';
import { hasPart, readPart, type Package } from '../package/read-part.ts';

/** What a part of a package points to. */
export type Relation = {
  readonly id: string;
  /** The last word of its type, which transitional and strict workbooks share: `worksheet`, `comments`. */
  readonly type: string;
  /** A part of the package, or an address outside it. */
  readonly target: string;
  readonly isOutside: boolean;
};

/** The relations of a part, or of the whole package for the empty name; none where it has no such file (ECMA-376 part 2, 8). */
export function readRelations(from: Package, part: string): Outcome<readonly Relation[]> {
  const folder = part.slice(0, part.lastIndexOf('/') + 1);
  const file = `${folder}_rels/${part.slice(folder.length)}.rels`;
  if (!hasPart(from, file)) return good([]);
  const relations: Relation[] = [];
  const read = readPart(from, file, {
    open(name, attributes) {
      if (name !== 'package:Relationship') return;
      const target = attributes['Target'] ?? '';
      const isOutside = attributes['TargetMode'] === 'External';
      relations.push({
        id: attributes['Id'] ?? '',
        type: (attributes['Type'] ?? '').split('/').at(-1) ?? '',
        target: isOutside ? target : resolveTarget(folder, target),
        isOutside,
      });
    },
  });
  return read.ok ? good(relations) : read;
}

/** A target as the name of a part: from the root when it begins with a stroke, otherwise from the folder of what points to it. */
function resolveTarget(folder: string, target: string): string {
  const steps = target.startsWith('/') ? [] : folder.split('/').filter((step) => step !== '');
  for (const step of target.split('/')) {
    if (step === '..') steps.pop();
    else if (step !== '' && step !== '.') steps.push(step);
  }
  return steps.join('/');
}
