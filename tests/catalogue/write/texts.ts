import fc from 'fast-check';

/** Texts of any signs, and such as YAML takes for something else. */
export const texts = fc.oneof(
  fc.string({ unit: 'grapheme', minLength: 1, maxLength: 40 }),
  fc.string({ unit: 'binary', minLength: 1, maxLength: 12 }),
  fc.lorem({ mode: 'sentences', maxCount: 6 }),
  fc.constantFrom(
    '0123', '-0044', '1e3', '0x1F', 'yes', 'null', '~', '2011-05-14', '# 12', 'a #b', 'a: b', 'a:', '- a', '-', '---', '...', 'x ---',
    '[cut]', '{a}', '@home', '`', '%', '&a', '*b', '!c', '"q"', "it's", `both ' and "`, 'C:\\coins', '=HYPERLINK("http://a")', '<script>',
    ' lead', 'trail ', 'two\nlines', 'a\n\nb', '\tx', 'a\r\nb', '\u2028', '\u0085', '\u00a0', '\uFEFF', '+EDW R’ ANGL’', '? a', '| x', '> y', 'a,b',
  ), // prettier-ignore
);
