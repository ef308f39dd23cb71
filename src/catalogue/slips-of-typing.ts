import type { Problem } from './problem.ts';
import { problem } from './problem.ts';

/** A value that stands whole in the quotation marks of a book, which YAML takes for letters. */
const CURLY = /^(\s*(?:- )?[\w-]+):\s+(?:[“”„«‟][^“”„«»‟]*[“”»‟]|[‘’‚][^‘’‚]*[‘’])\s*$/;
/** What no text holds: signs that steer a terminal or turn the direction of what follows (Unicode, Cc and the bidirectional controls). */
// eslint-disable-next-line no-control-regex -- it is what is looked for
const STEERING = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069]/;

/** Slips that a word processor or a copied text makes, line by line. */
export function slipsOfTyping(file: string, facts: string, from: number): readonly Problem[] {
  return facts.split('\n').flatMap((line, index) => {
    const spot = { file, line: from + index };
    const field = CURLY.exec(line)?.[1]?.replace(/^[\s-]+/, '');
    return [
      ...(field === undefined ? [] : [problem('curly-quotes', { ...spot, field })]),
      ...(STEERING.test(line) ? [problem('control-character', spot)] : []),
    ];
  });
}
