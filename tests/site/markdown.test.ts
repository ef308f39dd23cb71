import { micromark } from 'micromark';
import { gfm, gfmHtml } from 'micromark-extension-gfm';
import { expect, test } from 'vitest';
import { paragraphsOf, storyHtml } from '../../src/site/markdown.ts';

// Common practice of setting text: quotation marks open and close in pairs; what is quoted as code, or measured in inches, is not speech.
test.for([
  { story: 'It says "York. Good."', html: '<p>It says “York. Good.”</p>' },
  { story: '"One" and "*two*"', html: '<p>“One” and “<em>two</em>”</p>' },
  { story: '"North 1017"', html: '<p>“North 1017”</p>' },
  { story: '"A 3" flan"', html: '<p>“A 3&quot; flan”</p>' },
  { story: '"Over two.\n\nIt closes here."', html: '<p>“Over two.</p>\n<p>It closes here.”</p>' },
  { story: 'It is 1" wide', html: '<p>It is 1&quot; wide</p>' },
  { story: '"Never closed\n\n"Closed"', html: '<p>“Never closed</p>\n<p>“Closed”</p>' },
  { story: '`a "b"`', html: '<p><code>a &quot;b&quot;</code></p>' },
  { story: '[a](/b "c \'s")', html: '<p><a href="/b" title="c \'s">a</a></p>' },
  { story: '<b onclick="x">no</b>', html: '<p>&lt;b onclick=“x”&gt;no&lt;/b&gt;</p>' },
])('$story', ({ story, html }) => {
  expect(storyHtml(story)).toBe(html);
});

// The library is the witness: CommonMark 0.31 with the extensions of GFM.
test('paragraphs made without micromark are those it makes, whatever stands in them', () => {
  const parts =
    'a|Word|\n|\n\n|\n\n\n| |  |1. |- |+ |= |===|---|"|“|”|(|)|.|!|?|: |, |£|é|—|\u00a0|http:|www.x.org|12|3)|%|{|\u2028|\ufeff|\u3000|𝔸|א|x@y|\v|\f|*b*|_|<b>|&amp;|\\|#'.split(
      '|',
    );
  let seed = 20_261_130;
  const next = (under: number): number => {
    seed = (Math.imul(seed, 1_103_515_245) + 12_345) >>> 0;
    return (seed >>> 8) % under;
  };
  let made = 0;
  for (let round = 0; round < 40_000; round += 1) {
    const text = Array.from({ length: 1 + next(12) }, () => parts[next(parts.length)] ?? '').join('');
    const paragraphs = paragraphsOf(text);
    if (paragraphs === null) continue;
    made += 1;
    expect(paragraphs).toBe(micromark(text, { extensions: [gfm()], htmlExtensions: [gfmHtml()] }));
  }
  expect(made).toBeGreaterThan(1_000);
});
