import { describe, expect, test } from 'vitest';
import { readDrawing } from '../../src/catalogue/types/read-drawing.ts';

const svg = (inside: string, more = 'viewBox="0 0 64 48"'): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" ${more}>${inside}</svg>`;
const PATH = '<path d="M1 1L9 9Z"/>';

describe('a drawing of a mark', () => {
  // SVG 2 (W3C, 2018), 12 (scripting), 16 (linking), 5.6 (use), 8.14 (image), 14 (foreignObject), 7.5 and SMIL (animation).
  test.for([
    '<script>alert(1)</script>',
    '<g><script href="https://example.org/x.js"/></g>',
    '<path d="M1 1L9 9Z" onclick="alert(1)"/>',
    '<a href="javascript:alert(1)"><path d="M1 1L9 9Z"/></a>',
    '<image href="https://example.org/x.png"/>',
    '<use xlink:href="https://example.org/x.svg#a"/>',
    '<foreignObject><p>x</p></foreignObject>',
    '<animate attributeName="href" to="javascript:alert(1)"/>',
    '<set attributeName="onload" to="alert(1)"/>',
    '<style>@import url(https://example.org/x.css);</style>',
    '<defs><script>alert(1)</script></defs>',
    '<metadata><a xlink:href="https://example.org/">x</a></metadata>',
  ])('is refused where it holds what runs or fetches: %s', (inside) => {
    const read = readDrawing(svg(inside + PATH));
    expect(read.ok ? read.value : read.problem).toMatch(/^This drawing holds /);
  });

  test.for([
    ['', 'Nothing is drawn'],
    ['<text>EDW</text>', '<text>'],
    ['<path d="M1 1L9 9Z;url(x)"/>', 'd="M1 1L9 9Z;url(x)"'],
    ['<circle cx="1" cy="1" r="calc(1px)"/>', 'r="calc(1px)"'],
    ['<path d="M1 1', 'no SVG that can be read'],
    ['<path transform="url(#a)" d="M1 1Z"/>', 'transform="url(#a)"'],
    ['<g>'.repeat(12) + PATH + '</g>'.repeat(12), 'in groups too deep'],
    [PATH.repeat(301), '301 shapes'],
    [`<path d="${'M1 1'.repeat(6000)}"/>`, 'letters'],
  ] as const)('is refused with a sentence where it cannot be drawn: %#', ([inside, says]) => {
    const read = readDrawing(svg(inside));
    expect(read.ok ? read.value : read.problem).toContain(says);
  });

  test('is refused without a size, and with entities of its own', () => {
    const problems = [svg(PATH, ''), `<!DOCTYPE svg [<!ENTITY a "b">]>${svg(PATH)}`, '<html/>'].map((text) => {
      const read = readDrawing(text);
      return read.ok ? '' : read.problem;
    });
    expect(problems).toEqual(
      [/viewBox/, /entities of its own/, /<svg>/].map((says) => expect.stringMatching(says) as string),
    );
  });

  // What drawing programs write into plain SVG besides the shapes (common practice).
  test('keeps its shapes alone: colours become ink and ground, and words are left out', () => {
    const read = readDrawing(
      svg(
        '<title>My coin, from Mr Smith</title><metadata><rdf:RDF/></metadata><defs/><sodipodi:namedview id="x"/>' +
          '<g id="layer1" class="c" transform="translate(1 2)"><path style="fill:none;stroke:#a00;stroke-width:2px" d="M1 1L9 9" id="p"/>' +
          '<circle cx="3" cy="4" r="1.5" fill="#FFFFFF"/></g>',
        'width="64px" height="48px" fill="none"',
      ),
    );
    expect(read.ok && read.value).toEqual({
      box: '0 0 64 48',
      shapes: [
        {
          element: 'g',
          attributes: { fill: 'none' },
          inside: [
            {
              element: 'g',
              attributes: { transform: 'translate(1 2)' },
              inside: [
                {
                  element: 'path',
                  attributes: { fill: 'none', stroke: 'ink', 'stroke-width': '2px', d: 'M1 1L9 9' },
                  inside: [],
                },
                { element: 'circle', attributes: { cx: '3', cy: '4', r: '1.5', fill: 'ground' }, inside: [] },
              ],
            },
          ],
        },
      ],
    });
  });
});
