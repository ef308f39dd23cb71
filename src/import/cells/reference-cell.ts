import { parseReferences } from '../../core/references/parse-reference.ts';
import type { Said } from './cell-result.ts';

/** Between references, where one that cannot be read must not take the others with it. */
const BETWEEN = /\s*[;\n|]\s*/;

/** `N. 1018; S. 1380`: each book as the sheet names it, read as the core reads references; its name is joined to the list later. */
export function readReferences(text: string): readonly Said[] {
  return partsOf(text).flatMap((part) => readWith(part, parseReferences(part, { names: 'every word' })));
}

/** A cell of a column that cites one book. A stroke says that the book has no such piece. */
export function readReferenceTo(work: string, text: string): readonly Said[] {
  const works = [{ id: 'work', names: [work] }];
  return partsOf(text).flatMap((part) => {
    const bare = part.replace(/^(?:cf|vgl|compare)\.?\s*/iu, '');
    const isNamed = bare.toLowerCase().startsWith(work.toLowerCase());
    const relation = part.slice(0, part.length - bare.length);
    return readWith(part, parseReferences(isNamed ? part : `${relation}${work} ${bare}`, { works }), work);
  });
}

function partsOf(text: string): readonly string[] {
  return text.split(BETWEEN).filter((part) => part.trim() !== '');
}

function readWith(part: string, read: ReturnType<typeof parseReferences>, work?: string): readonly Said[] {
  if (!read.ok) return [{ kind: 'unread', field: 'references', because: read.problem, text: part }];
  return read.value.map((cited) => ({ kind: 'reference', name: work ?? cited.named, cited }));
}
