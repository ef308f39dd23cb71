import { readOpenDataId } from '../../core/references/open-data-id.ts';
import { parseReferences } from '../../core/references/parse-reference.ts';
import type { Said } from './cell-result.ts';

/** Between references, where one that cannot be read must not take the others with it. */
const BETWEEN = /\s*[;\n|]\s*/;

/** `N. 1018; S. 1380`: each book as the sheet names it, read as the core reads references; its name is joined to the list later. */
export function readReferences(text: string): readonly Said[] {
  return partsOf(text).flatMap(
    (part) => readId(part) ?? readWith(part, parseReferences(part, { names: 'every word' })),
  );
}

/** A cell of a column that cites one book. A stroke says that the book has no such piece. */
export function readReferenceTo(work: string, text: string): readonly Said[] {
  const works = [{ id: 'work', names: [work] }];
  return partsOf(text).flatMap((part) => {
    const id = readId(part);
    if (id !== null) return id;
    const bare = part.replace(/^(?:cf|vgl|compare)\.?\s*/iu, '');
    const isNamed = bare.toLowerCase().startsWith(work.toLowerCase());
    const relation = part.slice(0, part.length - bare.length);
    return readWith(part, parseReferences(isNamed ? part : `${relation}${work} ${bare}`, { works }), work);
  });
}

/** An id of open data says its book itself, whatever its column is called. */
function readId(part: string): readonly Said[] | null {
  const read = readOpenDataId(part);
  if (read === null) return null;
  if (!read.ok) return [{ kind: 'unread', field: 'references', because: read.problem, text: part }];
  return [{ kind: 'reference', name: read.value.named, cited: { ...read.value, text: part } }];
}

function partsOf(text: string): readonly string[] {
  return text.split(BETWEEN).filter((part) => part.trim() !== '');
}

function readWith(part: string, read: ReturnType<typeof parseReferences>, work?: string): readonly Said[] {
  if (!read.ok) return [{ kind: 'unread', field: 'references', because: read.problem, text: part }];
  return read.value.map((cited) => ({ kind: 'reference', name: work ?? cited.named, cited }));
}
