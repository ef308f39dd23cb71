import { expect, test } from 'vitest';
import { storyHtml } from '../../src/site/markdown.ts';

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
