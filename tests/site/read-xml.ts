import { DOMParser } from '@xmldom/xmldom';
import type { Document, Element } from '@xmldom/xmldom';

/** An XML text, read strictly: what is not well formed throws. */
export function readXml(text: string): Document {
  const parser = new DOMParser({
    onError: (level, message) => {
      throw new Error(`${level}: ${message}`);
    },
  });
  return parser.parseFromString(text, 'application/xml');
}

/** Every element of that name, in the order of the text. */
export function elements(within: Document | Element, name: string): readonly Element[] {
  return [...within.getElementsByTagName(name)];
}

/** The text of every element of that name. */
export function texts(within: Document | Element, name: string): readonly string[] {
  return elements(within, name).map(({ textContent }) => textContent ?? '');
}
