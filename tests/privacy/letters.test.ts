import { expect, test } from 'vitest';
import { lettersOf, pageParts, readMarkdown, spokenText, unescaped } from '../../src/privacy/letters.ts';

/** Sources: Unicode 16 (compatibility forms, categories Cf, Pd, Zs), WHATWG HTML §13.5, RFC 3986 §2.1, RFC 8259 §7. */
test.for([
  ['５３．９５８１２', '53.95812'],
  ['𝐎𝐬𝐠𝐨𝐨𝐝', 'Osgood'],
  ['boi\u00adl\u200ber', 'boiler'],
  ['1\u20132\u22123\u20114', '1-2-3-4'],
  ['K&auml;se &#38; B\\u0072ot', 'Käse & Brot'],
  ['a%20b%C3%A4, 50% off', 'a bä, 50% off'],
  ['a\\"b\\/c\\\'d', 'a"b/c\'d'],
  ['Käse', 'Käse'],
] as const)('“%s” without its escapes is “%s”', ([text, plain]) => {
  expect(unescaped(text)).toBe(plain);
});

test.for([
  ['𝐎𝐒𝐆𝐎𝐎𝐃', 'osgood'],
  ['Straße, Ægir, Œuvre, Søndergård, Łódź', 'strasse, aegir, oeuvre, sondergard, lodz'],
  ['‘a’ ‚b‛ 5′ c´s d`s', "'a' 'b' 5' c's d's"],
  ['“a” „b‟ 5″ «c»', '"a" "b" 5\'\' "c"'],
  ['bank\u00a0box\u2009of – mine\t\n_here', 'bank box of mine here'],
  ['bank\u2028box\u1680of\u2014mine', 'bank box of mine'],
  ['BANK-BOX+x', 'bank box x'],
  ['Čapkova Ὅμηρος', 'capkova ομηρος'],
] as const)('the letters of “%s” are “%s”', ([text, letters]) => {
  expect(lettersOf(text)).toBe(letters);
});

test.for([
  ['bo<em>i</em>l<B>e</B>r', 'boiler'],
  ['one<p>two</p>three<br>four', 'one two three four'],
  ['a <i title="b">c</i> d', 'a c d|<i title="b">'],
  ['a<i>b</i>', 'ab'],
  ['1 < 2 <i>b</i> and 3 > 2', '1 < 2 b and 3 > 2'],
  ['a <p class="x">b</p> and <p', 'a  b  and <p|<p class="x">'],
  ['<p>9</p> <li><b>10</b></li><li>20 a</li>', ' 9 | 10 | 20 a '],
  ['9<br>10 <b>20</b>', '9 10 20'],
  ['<style>p{font-family:"A b"}</style>', ' "A b" '],
] as const)('the page “%s” says “%s”', ([html, says]) => {
  const { seen, elements } = pageParts(html);
  expect([seen, ...elements].join('|')).toBe(says);
});

test('what is read aloud of a page is its text and the names of its elements, and no address', () => {
  const html = '<a href="kept/away" title="one">two</a><img src="three" alt="four"><p aria-label="five"></p>';
  expect(spokenText(html).split(/\s+/)).toEqual(['two', 'one', 'four', 'five']);
});

/** CommonMark 0.31: §2.4 backslashes, §6.2 emphasis, §6.3 links, §6.6 raw HTML, and the strokes of GitHub's. */
test.for([
  ['be**hind** the _boiler_ `now` ~~then~~', 'behind the boiler now then'],
  ['snake_case', 'snake_case'],
  ['behind [the boiler](../old-medal/ "x")', 'behind the boiler'],
  ['behind the \\*boiler\\*', 'behind the boiler'],
  ['a\\b', 'a\\b'],
  ['boi<b class="x">l</b>er<!-- a\nb -->s, 1 < 2 > 0', 'boilers, 1 < 2 > 0'],
] as const)('a reader of “%s” sees “%s”', ([text, seen]) => {
  expect(readMarkdown(text)).toBe(seen);
});
