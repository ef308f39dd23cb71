import { micromark } from 'micromark';
import { gfm, gfmHtml } from 'micromark-extension-gfm';
import { tied } from './words/tied.ts';

/**
 * A story as HTML, with the quotation marks and apostrophes of a book. Raw HTML in it is shown as text, and addresses that
 * could run anything are dropped: micromark's safe form.
 */
export function storyHtml(markdown: string): string {
  return asPrinted(micromark(markdown, { extensions: [gfm()], htmlExtensions: [gfmHtml()] }));
}

const BLOCK = /^<\/?(?:p|li|h\d|blockquote|td|th)\b/;

/** Sets the text between tags; quotation marks open and close in turn, anew in every block. Code stays as it was typed. */
function asPrinted(html: string): string {
  let isOpen = false;
  let isCode = false;
  return html
    .split(/(<[^>]*>)/)
    .map((part) => {
      if (part.startsWith('<')) {
        if (BLOCK.test(part)) isOpen = false;
        if (/^<\/?code\b/.test(part)) isCode = !part.startsWith('</');
        return part;
      }
      if (isCode) return part;
      return tied(part).replaceAll(/(\d?)&quot;/g, (whole, digit: string) => {
        // After a figure, where none is open, it is an inch.
        if (digit !== '' && !isOpen) return whole;
        isOpen = !isOpen;
        return `${digit}${isOpen ? '“' : '”'}`;
      });
    })
    .join('');
}
