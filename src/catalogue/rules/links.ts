import type { Rule } from './place.ts';
import type { Problem } from '../problem.ts';
import { problem } from '../problem.ts';

/** A link in Markdown whose address begins at the root of the host. */
const ROOTED = /\]\((\/[^)\s]*)/;

/** A picture in Markdown: `![a mint](https://example.org/mint.jpg)`. */
const IMAGE = /!\[[^\]]*\]\s?[([]/;

/** A story shows no pictures: those of the piece are next to it, and what lies elsewhere would be fetched from there. */
export const checkImages: Rule = (records, place) =>
  [...records.pieces, ...records.exhibits].flatMap(({ file, story }): readonly Problem[] => {
    const image = IMAGE.exec(story)?.[0];
    return image === undefined ? [] : [problem('image-in-story', place(file, [], image))];
  });

/** A story's links hold also where the site is in a folder of its host. */
export const checkLinks: Rule = (records, place) =>
  [...records.pieces, ...records.exhibits].flatMap(({ file, story }): readonly Problem[] => {
    const address = ROOTED.exec(story)?.[1];
    return address === undefined ? [] : [problem('link-rooted', place(file, [], `](${address}`), address)];
  });
