import { beaded, hammered, moved, quartered, rim } from '../die.ts';
import type { Inscription, Recipes } from '../die.ts';
import type { Face } from '../draw-face.ts';
import { inLine } from '../lettering.ts';
import { threePellets } from '../motifs/crosses.ts';
import { facingBust } from '../motifs/facing.ts';
import type { FacingBust } from '../motifs/facing.ts';
import { crossMoline, saxonBust, voidedCross } from '../motifs/saxon.ts';
import { fourWords } from './edwardian.ts';
import { bar, crossPattee, dot, leaf, place, ring, round } from '../shapes.ts';
import { PUNCHES } from '../skeletons.ts';
import type { Layer } from '../relief.ts';

const inner = beaded(296);
const outer = beaded(484);
type Own = Parameters<typeof hammered>[1];

const star = place(round(bar(0, 0, 0, -40, 7, 9, 4), 6) + dot(0, 0, 12), 0, 0);
const sceptre = (x: number, lean: number): string =>
  place(bar(0, 190, 0, -180, 13, 15) + crossPattee(0, -214, 40, 12, 32), x, 60, 1, lean);
const pommee = place(dot(0, 0, 20) + round(dot(0, -44, 26) + bar(0, 0, 0, -40, 12, 12), 4), 0, 0);
const smallSaltire = place(crossPattee(0, 0, 56, 15, 40), 0, 0, 1, 45);

/** The short-cross penny: the old king's head, whoever is reigning. */
function shortCrossObverse(own: Own, bust: FacingBust = {}): (inscription: Inscription) => Face {
  return ({ parts: [text = 'hENRICVS REX'], hand }) =>
    hammered(
      [
        inner,
        outer,
        ...rim(text, 'lombardic', hand, { foot: 314, height: 132, from: 40, over: 312 }),
        ...moved(facingBust({ crown: 'beads', hair: 'curls', beard: true, bust: 'none', ...bust }), 22, 40, 1.6),
        { draw: sceptre(-236, -14), height: 14, round: 8 },
      ],
      own,
    );
}

function shortCrossReverse(own: Own): (inscription: Inscription) => Face {
  return ({ parts: [text = ''], hand }) =>
    hammered(
      [
        inner,
        outer,
        ...rim(text, 'lombardic', hand, { foot: 314, height: 132, from: -8, over: 357 }),
        { draw: voidedCross(272, 22, 15, 'crescents') + dot(0, 0, 16), height: 13, round: 9 },
        {
          draw: [45, 135, 225, 315].map((turn) => place(place(pommee, 0, -166, 0.95, 45), 0, 0, 1, turn)).join(''),
          height: 15,
          round: 13,
        },
      ],
      own,
    );
}

export const NORMAN: Readonly<Record<string, Recipes>> = {
  'william-i-paxs-penny': {
    obverse: ({ parts: [text = '+PILLELM REX'], hand }) =>
      hammered(
        [
          inner,
          outer,
          ...rim(text, 'wedge', hand, { foot: 318, height: 128, from: -8 }),
          ...moved(facingBust({ crown: 'beads', hair: 'curls', bust: 'drapery' }), -24, 16, 1.26),
          { draw: sceptre(220, 6), height: 14, round: 8 },
        ],
        { strike: { x: 4, y: 4, turn: 3 }, surface: { wear: 0.28 } },
      ),
    reverse: ({ parts: [text = '', field = 'PAXS'], hand }) => {
      const lobes: Layer[] = Array.from(field).map((sign, at) => {
        const [x, y] = [[150, 150, -150, -150][at] ?? 0, [-150, 150, 150, -150][at] ?? 0];
        return { draw: inLine(sign, PUNCHES.wedge, x, y, 84, hand), height: 13, round: 9 };
      });
      return hammered(
        [
          beaded(286),
          outer,
          ...rim(text, 'wedge', hand, { foot: 312, height: 132 }),
          { draw: crossPattee(0, 0, 268, 28, 76), height: 14, round: 11 },
          { draw: [-150, 150].map((x) => ring(x, -150, 80, 13) + ring(x, 150, 80, 13)).join(''), height: 12, round: 7 },
          ...lobes,
        ],
        { strike: { x: -4, y: 2, turn: -4 }, surface: { wear: 0.28 } },
      );
    },
  },
  'stephen-york-penny': {
    obverse: ({ parts: [text = '+STIEF[NE R]EX'], hand }) =>
      hammered(
        [
          outer,
          ...rim(text, 'wedge', hand, { foot: 322, height: 122, from: 24, over: 300 }),
          ...moved(saxonBust({ wear: 'crown', sceptre: 'trefoil' }), -16, 22, 1.1),
        ],
        {
          metal: 'grey',
          strike: { x: 30, y: -10, turn: 8 },
          flan: {
            shape: 'round',
            across: 500,
            down: 470,
            uneven: 0.034,
            cracks: [
              [110, 80],
              [260, 50],
            ],
          },
          surface: { wear: 0.52, weak: 1, grain: 0.6, pits: 0.5, bent: 0.9, tone: 0.65 },
        },
      ),
    reverse: ({ parts: [text = '+[…]:ON:EVER:'], hand }) =>
      hammered(
        [
          beaded(290),
          outer,
          ...rim(text, 'wedge', hand, { foot: 314, height: 130 }),
          { draw: crossMoline(272), height: 14, round: 11 },
          {
            draw: [45, 135, 225, 315]
              .map((turn) => place(leaf(0, -150, 110, 40, 90) + dot(-34, -160, 18) + dot(34, -160, 18), 0, 0, 1, turn))
              .join(''),
            height: 13,
            round: 10,
          },
        ],
        {
          metal: 'grey',
          strike: { x: -24, y: 16, turn: -12 },
          surface: { wear: 0.6, weak: 1.15, grain: 0.6, pits: 0.5, bent: 0.9, tone: 0.65 },
        },
      ),
  },
  'henry-ii-tealby-penny': {
    obverse: ({ parts: [text = '+hENRI R[EX AN]G'], hand }) =>
      hammered(
        [
          inner,
          outer,
          ...rim(text, 'lombardic', hand, { foot: 314, height: 132 }),
          ...moved(facingBust({ crown: 'fleurs', hair: 'curls', bust: 'drapery' }), 10, 16, 1.14),
          { draw: sceptre(-210, -10), height: 14, round: 8 },
        ],
        {
          metal: 'grey',
          strike: { x: -34, y: 20, turn: 10 },
          second: { x: 34, y: -18, turn: 13, scale: 1, strong: 0.55 },
          flan: { shape: 'square', corners: 3.4, across: 480, down: 432, uneven: 0.035, snips: [[40, 20]] },
          surface: { wear: 0.6, weak: 1.2, grain: 0.7, pits: 0.4, bent: 1, tone: 0.6 },
        },
      ),
    reverse: ({ parts: [text = '+hERB[ERT:ON:]EVER'], hand }) =>
      hammered(
        [
          inner,
          outer,
          ...rim(text, 'lombardic', hand, { foot: 314, height: 132 }),
          { draw: crossPattee(0, 0, 276, 30, 84), height: 14, round: 12 },
          {
            draw: [45, 135, 225, 315].map((turn) => place(place(smallSaltire, 0, -168, 1, 45), 0, 0, 1, turn)).join(''),
            height: 14,
            round: 9,
          },
        ],
        {
          metal: 'grey',
          strike: { x: 36, y: -14, turn: -12 },
          second: { x: -30, y: 26, turn: -15, scale: 1, strong: 0.5 },
          surface: { wear: 0.62, weak: 1.25, grain: 0.7, pits: 0.4, bent: 1, tone: 0.6 },
        },
      ),
  },
  'short-cross-richard-york': {
    obverse: shortCrossObverse({ strike: { x: 6, y: 0, turn: -3 }, surface: { wear: 0.36 } }, { beard: 'full' }),
    reverse: shortCrossReverse({ strike: { x: -6, y: 6, turn: 5 }, surface: { wear: 0.36 } }),
  },
  'short-cross-john-york': {
    obverse: shortCrossObverse(
      { strike: { x: -4, y: 4, turn: 2 }, surface: { wear: 0.26, tone: 0.5 } },
      { hair: 'two-curls', beard: 'small' },
    ),
    reverse: shortCrossReverse({ strike: { x: 4, y: -4, turn: -6 }, surface: { wear: 0.28, tone: 0.5 } }),
  },
  'short-cross-cut-half-york': {
    obverse: shortCrossObverse({
      at: { x: 244 },
      strike: { x: 10, y: 0, turn: 4 },
      flan: { shape: 'round', uneven: 0.014, cut: [90, 10] },
      surface: { wear: 0.5, tone: 0.65 },
    }),
    reverse: ({ hand }) =>
      shortCrossReverse({ strike: { x: -8, y: 6, turn: -8 }, surface: { wear: 0.5, tone: 0.65 } })({
        parts: ['+ALAIN·ON·EVER'],
        hand,
      }),
  },
  'henry-iii-long-cross-york': {
    obverse: ({ parts: [text = "*hENRICVS REX·III'"], hand }) =>
      hammered(
        [
          inner,
          outer,
          ...rim(text.replace('*', ''), 'lombardic', hand, { foot: 314, height: 130, from: 12, over: 340 }),
          { draw: place(star, 0, -384, 1.3), height: 13, round: 8 },
          ...moved(facingBust({ crown: 'beads', hair: 'curls', beard: true, bust: 'none' }), 0, 40, 1.6),
        ],
        { strike: { x: 4, y: -2, turn: 3 }, surface: { wear: 0.34 } },
      ),
    reverse: ({ parts: [text = 'IER EMI EON EVE'], hand }) =>
      hammered(
        [
          inner,
          outer,
          ...quartered(fourWords(text), 'lombardic', hand, { foot: 314, height: 132, margin: 10 }),
          { draw: voidedCross(484, 17, 14), height: 13, round: 9, mode: 'over' },
          { draw: threePellets(160, 35) + dot(0, 0, 12), height: 19, round: 34 },
        ],
        { strike: { x: -6, y: 4, turn: -3 }, surface: { wear: 0.36 } },
      ),
  },
};
