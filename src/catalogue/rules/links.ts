import type { Rule } from '../check-records.ts';
import type { Problem } from '../problem.ts';
import { problem } from '../problem.ts';

/** A link in Markdown whose address begins at the root of the host. */
const ROOTED = /\]\((\/[^)\s]*)/;

/** A story's links hold also where the site stands in a folder of its host. */
export const checkLinks: Rule = (records, place) =>
  [...records.pieces, ...records.exhibits].flatMap(({ file, story }): readonly Problem[] => {
    const address = ROOTED.exec(story)?.[1];
    return address === undefined ? [] : [problem('link-rooted', place(file, [], `](${address}`), address)];
  });
