import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import process from 'node:process';
import { expect, test } from 'vitest';
import { withApostrophes } from '../../src/site/words/no-break.ts';
import { PLAIN_WORDS } from '../house/words.ts';

const BUILT = process.env['BUILT'] ?? 'dist';
const filesIn = (folder: string, ending: RegExp): readonly string[] =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((file) => ending.test(file))
    .map((file) => join(folder, file));

/** Letters and figures alone, a blank between words: so that a keeper's words are known again on a page. */
const plain = (text: string): string => text.replace(/[^\p{L}\p{N}]+/gu, ' ').toLowerCase();

/** What a page says: its text, without elements, scripts and styles. */
const seenOf = (html: string): string =>
  html
    .replace(/<(script|style)\b[\s\S]*?<\/\1>/g, ' ')
    .replace(/<[^>]*>/g, ' ')
    .replace(/&[#\w]+;|\s+/g, ' ');
const textOf = (html: string): string => plain(seenOf(html));

// The demo's stories, designs and notes are a keeper's own words, who may say that kings quarrelled.
const keepers = plain(
  filesIn('content', /\.(?:md|yaml)$/)
    .map((file) => readFileSync(file, 'utf8'))
    .join('\n'),
);

// Common practice of setting text: a book has no typewriter's apostrophe, nor a hyphen between the numbers of two pages. The page of
// readings shows what is typed, a legend has a sign of its own, and so has a file's name.
test('no page is set with the apostrophes and hyphens of a typewriter', () => {
  const wrong = filesIn(BUILT, /\.html$/)
    .filter((file) => !file.includes(join('about', 'readings')))
    .flatMap((file) =>
      readFileSync(file, 'utf8')
        .replace(/<(script|style|code|pre|head)\b[\s\S]*?<\/\1>/g, ' ')
        .split(/<[^>]*>/)
        .map((text) => text.replaceAll('&#39;', "'"))
        .filter((text) => withApostrophes(text) !== text || /\bpages? \d+-\d/.test(text))
        .map((text) => `${file}: ${text.trim()}`),
    );
  expect(wrong).toEqual([]);
});

// Common practice of setting text: a figure stays with its unit. What is typed, and what is printed and cut, is another matter.
test('no figure of a piece, a set, an exhibit or a comparison parts from its unit', () => {
  const wrong = filesIn(BUILT, /\.html$/)
    .filter((file) => /^(?:index|(?:pieces|sets|compare|exhibits(?![\s\S]*print))\b.*)/.test(relative(BUILT, file)))
    .flatMap((file) =>
      readFileSync(file, 'utf8')
        .replace(/<(script|style|code|pre|head|template)\b[\s\S]*?<\/\1>/g, ' ')
        .split(/<[^>]*>/)
        .filter((text) => /\d (?:mm|g|kg|gr|dwt)(?![\p{L}\p{N}])/u.test(text))
        .map((text) => `${file}: ${text.trim()}`),
    );
  expect(wrong).toEqual([]);
});

// Common English: one thing is told in the singular.
test('no page counts one thing in the plural', () => {
  const things = 'pieces|places|coins|types|dies|sets|rulers|mints|cases|sheets|copies|results|works|years|words';
  const wrong = filesIn(BUILT, /\.html$/).flatMap((file) =>
    [
      ...seenOf(readFileSync(file, 'utf8')).matchAll(new RegExp(`(?<![\\d.,] ?)\\b(?:all 1|1 (?:${things}))\\b`, 'gi')),
    ].map(([found]) => `${file}: ${found}`),
  );
  expect(wrong).toEqual([]);
});

test('no page says a word that a visitor would have to translate, unless the keeper wrote it', () => {
  const pages = filesIn(BUILT, /\.html$/);
  expect(pages.length).toBeGreaterThan(50);
  const wrong = pages.flatMap((file) => {
    const text = textOf(readFileSync(file, 'utf8'));
    return PLAIN_WORDS.flatMap(([word, instead]) =>
      [
        ...text.matchAll(new RegExp(`(?<before>(?:\\S+ ){0,2})(?<word>${word.source})(?<after>(?: \\S+){0,2})`, 'giu')),
      ].flatMap(({ groups: { before = '', word: found = '', after = '' } = {} }) =>
        keepers.includes(before + found) || keepers.includes(found + after)
          ? []
          : [`${file}: “${before}${found}${after}”: write ${instead}`],
      ),
    );
  });
  expect(wrong).toEqual([]);
});
