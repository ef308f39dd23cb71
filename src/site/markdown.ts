import { micromark } from 'micromark';
import { gfm, gfmHtml } from 'micromark-extension-gfm';

/** A story as HTML. Raw HTML in it is shown as text, and addresses that could run anything are dropped: micromark's safe form. */
export function storyHtml(markdown: string): string {
  return micromark(markdown, { extensions: [gfm()], htmlExtensions: [gfmHtml()] });
}
