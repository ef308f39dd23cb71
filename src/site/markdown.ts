import { micromark } from 'micromark';
import { gfm, gfmHtml } from 'micromark-extension-gfm';
import { tied } from './words/no-break.ts';

/**
 * A story as HTML, with the quotation marks and apostrophes of a book. Raw HTML in it is shown as text, and addresses that
 * could run anything are dropped: micromark's safe form. A picture, which could be fetched from elsewhere, is its words alone.
 */
export function storyHtml(markdown: string): string {
  return asPrinted(paragraphsOf(markdown) ?? micromark(markdown, GFM).replace(IMAGE, '$1'));
}

const GFM = { extensions: [gfm()], htmlExtensions: [gfmHtml()] };

/** What Markdown gives a meaning, anywhere or at the end of a line; most stories have nothing of it. */
const SIGNS = /[\\`*_[\]<>&#|~@/\t\r\0]|www\.| {2}/i;
const PLAIN_LINE = /^[\p{L}"“(£].*\S$|^\p{L}?$/u;

/** Paragraphs without a sign of Markdown, as micromark makes them, at a tenth of its work; null where it is needed. */
export function paragraphsOf(markdown: string): string | null {
  if (SIGNS.test(markdown) || !markdown.split('\n').every((line) => PLAIN_LINE.test(line))) return null;
  const text = markdown.replace(/^\n+|\n+$/g, '');
  if (text === '') return null;
  const paragraphs = text.split(/\n{2,}/).map((one) => `<p>${one.replaceAll('"', '&quot;')}</p>`);
  return `${paragraphs.join('\n')}${markdown.endsWith('\n') ? '\n' : ''}`;
}

/** What micromark makes of a picture; what it says in its place is kept. */
const IMAGE = /<img\b[^>]*?\balt="([^"]*)"[^>]*>/g;
const BLOCK = /^<\/?(?:p|li|h\d|blockquote|td|th)\b/;

/**
 * Sets the text between tags. A quotation mark opens at the beginning, after a blank or a bracket; elsewhere it closes, or is
 * an inch after a figure, where none is open or another comes that closes. Code stays as it was typed.
 */
function asPrinted(html: string): string {
  let isOpen = false;
  let isCode = false;
  // What stands before a part, over the tags between.
  let before = '';
  return html
    .split(/(<[^>]*>)/)
    .map((part) => {
      if (part.startsWith('<')) {
        if (BLOCK.test(part)) [isOpen, before] = [false, ''];
        if (/^<\/?code\b/.test(part)) isCode = !part.startsWith('</');
        return part;
      }
      if (isCode) return part;
      const text = tied(part);
      const printed = text.replaceAll('&quot;', (whole: string, at: number) => {
        const last = at === 0 ? before : text.charAt(at - 1);
        const opens = /^[\s([=–—-]?$/.test(last);
        const isMoreToCome = (text.slice(at + whole.length).match(/&quot;/g) ?? []).length % 2 === 1;
        if (!opens && /\d/.test(last) && (!isOpen || isMoreToCome)) return whole;
        isOpen = opens;
        return opens ? '“' : '”';
      });
      before = text.slice(-1);
      return printed;
    })
    .join('');
}
