import type { ComparedFile, ComparedPiece } from '../../compare/record.ts';
import { isId } from '../../compare/state.ts';
import { readJson } from '../read-json.ts';

/** What came of asking for a piece; addresses in it are meant from the file it came in. */
export type Asked =
  | { readonly came: 'piece'; readonly piece: ComparedPiece; readonly from: string }
  | { readonly came: 'nothing' | 'no answer' };

const held = new Map<string, Promise<Asked>>();

/** Asks for a piece by its id, once; `way` leads to the file of a piece, whose id takes the place of the star. */
export function fetchCompared(id: string, way: string): Promise<Asked> {
  if (!isId(id)) return Promise.resolve({ came: 'nothing' });
  const from = way.replace('*', id);
  const known = held.get(id);
  if (known !== undefined) return known;
  const asked = ask(from).then((answer) => {
    // What did not come for want of a connection may come another time.
    if (answer.came === 'no answer') held.delete(id);
    return answer;
  });
  held.set(id, asked);
  return asked;
}

async function ask(from: string): Promise<Asked> {
  try {
    return { came: 'piece', piece: ((await readJson(from)) as ComparedFile).compared, from };
  } catch (error) {
    // From a folder there is no telling why a file does not come; it lies there or it does not.
    const isMissing = location.protocol === 'file:' || (error instanceof Error && error.message === '404');
    return { came: isMissing ? 'nothing' : 'no answer' };
  }
}
