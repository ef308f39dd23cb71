import { parseReference } from '../../core/references/parse-reference.ts';
import type { Said } from './cell-result.ts';
import { unread } from './cell-result.ts';

const BETWEEN = /\s*[;\n|]\s*|\s+\/\s+|,\s+(?=\p{L}[\p{L}. ]*\d)|\s*=\s*(?=\p{L})/u;
const RELATION = /^((?:cf|cp|conf|vgl|compare|var|variant|unlisted)\b\.?\s*(?:of |in )?)(.*)$/is;
/** A volume in Roman figures belongs to the number: RIC II 243. */
const VOLUME = /^[IVXLC]+(?:[.,/]\w+)?$/;

const KEY = /^[a-z]+(?:-[a-z0-9]+)+$/;

/** `N. 1018; S. 1380`: each book as the sheet names it, a relation such as `cf.` before it, and the number there. */
export function readReferences(text: string): readonly Said[] {
  return text
    .split(BETWEEN)
    .filter((part) => part !== '')
    .flatMap((part) => {
      const { name, number } = parted(part);
      return checked(name, number, part);
    });
}

/** A cell of a column that cites one book. */
export function readReferenceTo(work: string, text: string): readonly Said[] {
  return text
    .split(/\s*[;\n|]\s*/)
    .filter((part) => part !== '')
    .flatMap((part) => {
      const [, relation = '', number = part] = RELATION.exec(part) ?? [];
      const bare = number.toLowerCase().startsWith(work.toLowerCase()) ? number.slice(work.length).trim() : number;
      if (bare === '' || bare === '-')
        return checked(work, relation.trim() === '' ? 'unlisted' : relation.trim(), part);
      return checked(`${relation}${work}`, bare, part);
    });
}

function parted(part: string): { readonly name: string; readonly number: string } {
  const [, relation = '', cited = part] = RELATION.exec(part.trim()) ?? [];
  const words = cited.trim().split(/\s+/);
  const [first = ''] = words;
  // `ric-4-1 161`: the key of a book, as our own tables have it.
  if (KEY.test(first) && words.length > 1) return { name: `${relation}${first}`, number: words.slice(1).join(' ') };
  const at = words.findIndex(
    (word, place) =>
      /\d/.test(word) || (place > 0 && VOLUME.test(word)) || (place > 0 && /^(?:unlisted|-|–|—)$/.test(word)),
  );
  if (at === 0) {
    // `N1018`: the letters are the book.
    const [, letters = '', figures = ''] = /^(\p{L}[\p{L}.]*)[-.]?(\d.*)$/u.exec(cited.trim()) ?? [];
    return { name: `${relation}${letters}`.trim(), number: figures };
  }
  if (at === -1) return { name: `${relation}${cited}`.trim(), number: '' };
  const number = words.slice(at).join(' ');
  return {
    name: `${relation}${words.slice(0, at).join(' ').replace(/[:,]$/, '')}`,
    number: /^[-–—]$/.test(number) ? 'unlisted' : number,
  };
}

function checked(name: string, number: string, part: string): readonly Said[] {
  const book = name.replace(RELATION, '$2').trim();
  if (book === '') return withText(unread('references', `"${part}" names no book. Write it like North 1018.`), part);
  const [first = ''] = book.split(' ');
  const read = parseReference(`${first.replace(/[^\p{L}\p{N}]/gu, '')} ${number}`, []);
  if (!read.ok && number === '') return withText(unread('references', read.problem), part);
  return [{ kind: 'reference', name: name.trim(), number }];
}

function withText(said: readonly Said[], text: string): readonly Said[] {
  return said.map((each) => (each.kind === 'unread' ? { ...each, text } : each));
}
