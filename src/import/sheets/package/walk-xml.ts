import sax from 'sax';
import { LIMITS } from '../limits.ts';

/** What is told while XML is walked. Names carry the prefix given here for their namespace, whatever the file calls it. */
export type XmlTaker = {
  readonly open?: (name: string, attributes: Readonly<Record<string, string | undefined>>) => void;
  readonly close?: (name: string) => void;
  readonly text?: (text: string) => void;
};

/** Takes the bytes of one part; false once it will take no more, because `problem` says why or because it was told to stop. */
export type XmlWalker = {
  readonly write: (chunk: Uint8Array) => boolean;
  /** Ends the part; what was wrong with it, or null. */
  readonly end: () => string | null;
};

/** Transitional and strict names of one vocabulary count as one (ECMA-376 part 1, annex A; OpenDocument 1.3 part 3, 1.4). */
const PREFIXES: Readonly<Record<string, string>> = {
  'http://schemas.openxmlformats.org/spreadsheetml/2006/main': '',
  'http://purl.oclc.org/ooxml/spreadsheetml/main': '',
  'http://schemas.microsoft.com/office/spreadsheetml/2018/threadedcomments': 'threaded:',
  'http://schemas.openxmlformats.org/officeDocument/2006/relationships': 'r:',
  'http://purl.oclc.org/ooxml/officeDocument/relationships': 'r:',
  'http://schemas.openxmlformats.org/package/2006/relationships': 'package:',
  'http://schemas.openxmlformats.org/markup-compatibility/2006': 'mc:',
  'urn:oasis:names:tc:opendocument:xmlns:office:1.0': 'office:',
  'urn:oasis:names:tc:opendocument:xmlns:table:1.0': 'table:',
  'urn:oasis:names:tc:opendocument:xmlns:text:1.0': 'text:',
  'urn:oasis:names:tc:opendocument:xmlns:style:1.0': 'style:',
  'urn:oasis:names:tc:opendocument:xmlns:drawing:1.0': 'draw:',
  'urn:oasis:names:tc:opendocument:xmlns:manifest:1.0': 'manifest:',
  'urn:org:documentfoundation:names:experimental:calc:xmlns:calcext:1.0': 'calcext:',
  'http://purl.org/dc/elements/1.1/': 'dc:',
  'http://www.w3.org/1999/xlink': 'xlink:',
};

const DAMAGED = 'Its inner text breaks off or is not well formed. Open it in a spreadsheet program and save it again.';
const DECLARES =
  'It declares entities of its own, as no spreadsheet does. Copy its cells into a new workbook and save that.';
const NESTED =
  'Its inner text is nested deeper than any spreadsheet. Copy its cells into a new workbook and save that.';

/** Walks XML in chunks, never holding more than one. A document type is refused before anything in it could be resolved. */
export function xmlWalker(taker: XmlTaker): XmlWalker {
  const parser = sax.parser(true, { position: false });
  const names = namespaces();
  let decoder: TextDecoder | null = null;
  let problem: string | null = null;
  let depth = 0;
  // Inside a choice of markup that only some programs know, the fallback is what all do.
  let skippedFrom = Infinity;

  parser.onerror = () => {
    problem ??= DAMAGED;
  };
  parser.ondoctype = () => {
    problem ??= DECLARES;
  };
  parser.onopentag = (tag) => {
    if (problem !== null) return;
    depth += 1;
    if (depth > LIMITS.depth) problem = NESTED;
    const attributes = tag.attributes as Record<string, string>;
    names.enter(depth, attributes);
    const name = names.element(tag.name);
    if (name === 'mc:Choice') skippedFrom = Math.min(skippedFrom, depth);
    if (depth < skippedFrom) taker.open?.(name, names.attributes(attributes));
  };
  parser.onclosetag = (tag) => {
    if (problem !== null) return;
    if (depth < skippedFrom) taker.close?.(names.element(tag));
    if (depth === skippedFrom) skippedFrom = Infinity;
    names.leave(depth);
    depth -= 1;
  };
  const tell = (text: string): void => {
    if (problem === null && depth < skippedFrom) taker.text?.(text);
  };
  parser.ontext = tell;
  parser.oncdata = tell;

  const feed = (text: string): void => {
    for (let at = 0; at < text.length && problem === null; at += PIECE) parser.write(text.slice(at, at + PIECE));
  };
  return {
    write: (chunk) => {
      decoder ??= decoderOf(chunk);
      feed(decoder.decode(chunk, { stream: true }));
      return problem === null;
    },
    end: () => {
      if (problem !== null) return problem;
      feed(decoder?.decode() ?? '');
      parser.close();
      return problem;
    },
  };
}

const PIECE = 64 * 1024;

/** XML says its encoding by a mark or in its first line; otherwise it is UTF-8 (XML 1.0, appendix F). */
function decoderOf(bytes: Uint8Array): TextDecoder {
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return new TextDecoder('utf-16be');
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return new TextDecoder('utf-16le');
  const first = String.fromCharCode(...bytes.subarray(0, 120));
  const label = /^<\?xml[^>]*encoding=["']([\w.-]+)["']/.exec(first)?.[1] ?? 'utf-8';
  try {
    return new TextDecoder(label);
  } catch {
    return new TextDecoder();
  }
}

type Scope = { readonly depth: number; readonly prefixes: ReadonlyMap<string, string> };

/** Which vocabulary each name belongs to where one is in the file (Namespaces in XML 1.0). */
function namespaces() {
  const scopes: Scope[] = [{ depth: 0, prefixes: new Map() }];
  const known = new Map<string, string>();
  const prefixOf = (prefix: string): string => scopes.at(-1)?.prefixes.get(prefix) ?? 'unknown:';
  const canonical = (name: string, bare: string | null): string => {
    const before = known.get(name);
    if (before !== undefined) return before;
    const colon = name.indexOf(':');
    const found = colon === -1 ? `${bare ?? ''}${name}` : `${prefixOf(name.slice(0, colon))}${name.slice(colon + 1)}`;
    known.set(name, found);
    return found;
  };
  return {
    enter(depth: number, attributes: Readonly<Record<string, string>>): void {
      let prefixes: Map<string, string> | null = null;
      for (const name in attributes) {
        if (!name.startsWith('xmlns') || (name.length > 5 && name[5] !== ':')) continue;
        prefixes ??= new Map(scopes.at(-1)?.prefixes);
        prefixes.set(name.slice(6), PREFIXES[attributes[name] ?? ''] ?? 'unknown:');
      }
      if (prefixes === null) return;
      scopes.push({ depth, prefixes });
      known.clear();
    },
    leave(depth: number): void {
      if (scopes.length === 1 || scopes.at(-1)?.depth !== depth) return;
      scopes.pop();
      known.clear();
    },
    element: (name: string): string => (name.includes(':') ? canonical(name, null) : `${prefixOf('')}${name}`),
    /** An attribute without a prefix belongs to its element and has no namespace. */
    attributes(attributes: Readonly<Record<string, string>>): Readonly<Record<string, string | undefined>> {
      let renamed: Record<string, string> | null = null;
      for (const name in attributes) {
        if (!name.includes(':') || name.startsWith('xml')) continue;
        const to = canonical(name, null);
        if (to === name) continue;
        renamed ??= { ...attributes };
        renamed[to] = attributes[name] ?? '';
      }
      return renamed ?? attributes;
    },
  };
}
