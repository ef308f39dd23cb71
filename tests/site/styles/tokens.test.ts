import { readFileSync } from 'node:fs';
import axe from 'axe-core';
import { parse } from 'postcss';
import { describe, expect, test } from 'vitest';

/** What is read, what it is read on (never a well: what is said of one lies on a slip), and what is only seen (a rim, a tick, a bar of a chart, the ring of the focus). */
const INKS = ['--ink', '--ink-quiet', '--follow', '--wanted'];
const GROUNDS = ['--ground', '--board', '--ticket', '--field'];
const SEEN = ['--tick', '--mark-edge', '--focus', '--follow-strong', '--chart-ink', '--chart-fill', '--chart-alert'];
const SCHEMES = ['light', 'dark'] as const;
type Scheme = (typeof SCHEMES)[number];

/** The value of every job, as the style sheet declares it: for all, and where the visitor asks for a dark page. */
const jobs: Record<Scheme, Map<string, string>> = { light: new Map(), dark: new Map() };
parse(readFileSync('src/site/styles/tokens.css', 'utf8')).walkDecls(/^--/, ({ prop, value, parent }) => {
  const around = parent?.parent;
  if (around?.type !== 'atrule') return;
  const { name, params } = around;
  if (name === 'layer') jobs.light.set(prop, value);
  if (params === '(prefers-color-scheme: dark)') jobs.dark.set(prop, value);
});

function colourOf(job: string, scheme: Scheme): string {
  const value = jobs[scheme].get(job) ?? jobs.light.get(job);
  if (value === undefined) throw new Error(`tokens.css declares no ${job}.`);
  const other = /^var\((--[a-z0-9-]+)\)$/.exec(value)?.[1];
  return other === undefined ? value : colourOf(other, scheme);
}

/** A part of axe-core that its types leave out. */
const { color } = axe.commons as unknown as {
  readonly color: { readonly Color: new () => { parseString(css: string): { r: number; g: number; b: number } } };
};

/** WCAG 2.2, "relative luminance", of sRGB from 0 to 1. The colour is read by axe-core. */
function luminance(colour: string): number {
  const { r, g, b } = new color.Color().parseString(colour);
  const [red = 0, green = 0, blue = 0] = [r, g, b].map((part) =>
    part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4,
  );
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

/** WCAG 2.2, "contrast ratio": 1 to 21. */
function contrast(one: string, other: string): number {
  const [dark = 0, light = 0] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (light + 0.05) / (dark + 0.05);
}

// The two ends of the scale by the definition itself, and the grey known as the lightest that white paper takes at AA.
test.for([
  ['#000', '#fff', 21],
  ['#fff', '#fff', 1],
  ['#767676', '#fff', 4.54],
] as const)('%s on %s is %f to 1 (WCAG 2.2, contrast ratio)', ([ink, ground, ratio]) => {
  expect(contrast(ink, ground)).toBeCloseTo(ratio, 2);
});

describe.for(SCHEMES)('in the %s', (scheme) => {
  const pairs = (inks: readonly string[], grounds: readonly string[]): readonly (readonly [string, string])[] =>
    inks.flatMap((ink) => grounds.map((ground) => [ink, ground] as const));

  // WCAG 2.2, 1.4.6 Contrast (Enhanced): 7 to 1 for text of any size but large.
  test.for([...pairs(INKS, GROUNDS), ['--ink', '--marked']] as const)('%s is read on %s', ([ink, ground]) => {
    expect(contrast(colourOf(ink, scheme), colourOf(ground, scheme))).toBeGreaterThanOrEqual(7);
  });

  // WCAG 2.2, 1.4.11 Non-text Contrast: 3 to 1 for what must be seen to understand a drawing.
  test.for([...pairs(SEEN, ['--ground', '--board', '--well']), ...pairs(['--well-rim'], ['--ground', '--board'])])(
    '%s is seen on %s',
    ([mark, ground]) => {
      expect(contrast(colourOf(mark, scheme), colourOf(ground, scheme))).toBeGreaterThanOrEqual(3);
    },
  );
});
