import { parse } from 'parse5';
import type { DefaultTreeAdapterTypes } from 'parse5';

type Node = DefaultTreeAdapterTypes.ChildNode | DefaultTreeAdapterTypes.Document;
type Element = DefaultTreeAdapterTypes.Element;

/** What a browser would post of a form without its keeper touching it, in the order of the page (HTML, "constructing the entry list"). */
export function untouchedForm(page: string, action: string): URLSearchParams {
  const form = elementsIn(parse(page)).find((one) => one.tagName === 'form' && attribute(one, 'action') === action);
  if (form === undefined) throw new Error(`There is no form for ${action}.`);
  const entries = new URLSearchParams();
  for (const box of elementsIn(form)) {
    const name = attribute(box, 'name');
    if (name === null) continue;
    if (box.tagName === 'textarea') entries.append(name, textOf(box).replace(/\r\n?|\n/g, '\r\n'));
    if (box.tagName === 'select') {
      const options = elementsIn(box).filter(({ tagName }) => tagName === 'option');
      const chosen = options.find((one) => attribute(one, 'selected') !== null) ?? options[0];
      if (chosen !== undefined) entries.append(name, attribute(chosen, 'value') ?? textOf(chosen));
    }
    if (box.tagName !== 'input') continue;
    const type = attribute(box, 'type') ?? 'text';
    if (type === 'file' || (type === 'checkbox' && attribute(box, 'checked') === null)) continue;
    // What is typed on one line holds no line ends.
    entries.append(name, (attribute(box, 'value') ?? '').replace(/[\r\n]/g, ''));
  }
  return entries;
}

function elementsIn(node: Node): readonly Element[] {
  const inner = 'childNodes' in node ? node.childNodes.flatMap(elementsIn) : [];
  return 'tagName' in node ? [node, ...inner] : inner;
}

function textOf(node: Node): string {
  if (node.nodeName === '#text') return (node as DefaultTreeAdapterTypes.TextNode).value;
  return 'childNodes' in node ? node.childNodes.map(textOf).join('') : '';
}

function attribute(element: Element, name: string): string | null {
  return element.attrs.find((one) => one.name === name)?.value ?? null;
}
