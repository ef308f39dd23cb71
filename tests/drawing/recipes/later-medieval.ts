import { beaded, hammered, moved, quartered, rim } from '../die.ts';
import type { Inscription, Recipes } from '../die.ts';
import type { Face } from '../draw-face.ts';
import { inLine } from '../lettering.ts';
import { longCross, threePellets } from '../motifs/crosses.ts';
import { facingBust } from '../motifs/facing.ts';
import { enthroned, KEY, royalShield, tressure } from '../motifs/royal.ts';
import type { Layer } from '../relief.ts';
import { bar, crossPattee, dot, place, ring, round } from '../shapes.ts';
import { PUNCHES } from '../skeletons.ts';
import { edwardObverse, fourWords, longCrossReverse, QUATREFOIL } from './edwardian.ts';

type Own = Parameters<typeof hammered>[1];
const sign = (text: string, x: number, y: number, high: number, { hand }: Inscription): Layer => ({
  draw: inLine(text, PUNCHES.lombardic, x, y, high, hand),
  height: 13,
  round: 8,
});
const mullet = (x: number, y: number): string => place(round(bar(0, 0, 0, -30, 8, 10, 3), 5) + dot(0, 0, 12), x, y);
const fourLeaves = (x: number, y: number): string => place(round(dot(0, -17, 14), 4), x, y);

/** The bust of a groat or half-groat in its frame of arches. */
function groatObverse(
  extra: readonly Layer[],
  own: Own,
  breast?: (inscription: Inscription) => string,
): (inscription: Inscription) => Face {
  return (inscription) => {
    const {
      parts: [text = ''],
      hand,
    } = inscription;
    const bust = facingBust(breast === undefined ? {} : { breast: breast(inscription) });
    return hammered(
      [
        beaded(372, 7.5),
        beaded(486, 8),
        ...rim(text, 'lombardic', hand, { foot: 386, height: 84, space: 30 }),
        { draw: tressure(300), height: 11, round: 7 },
        ...moved(bust, 0, 22, 1.12),
        ...extra,
      ],
      own,
    );
  };
}

/** The reverse of a groat: two circles of lettering. */
function groatReverse(extra: readonly Layer[], own: Own): (inscription: Inscription) => Face {
  return ({ parts: [around = '', within = ''], hand }) =>
    hammered(
      [
        beaded(222, 7),
        beaded(352, 7),
        beaded(486, 8),
        ...quartered(fourWords(around), 'lombardic', hand, { foot: 372, height: 88, margin: 7 }),
        ...quartered(fourWords(within), 'lombardic', hand, { foot: 240, height: 84, margin: 9 }),
        { draw: longCross(), height: 14, round: 15, mode: 'over' },
        { draw: place(threePellets(150, 37), 0, 0, 0.72), height: 17, round: 26 },
        ...extra,
      ],
      own,
    );
}

export const LATER_MEDIEVAL: Readonly<Record<string, Recipes>> = {
  'edward-iii-york-half-groat': {
    obverse: groatObverse([], {
      strike: { x: 4, y: 2, turn: -2 },
      surface: { wear: 0.44 },
      flan: { shape: 'round', uneven: 0.013 },
    }),
    reverse: groatReverse([], { strike: { x: -6, y: 4, turn: 4 }, surface: { wear: 0.46 } }),
  },
  'edward-iii-york-penny': {
    obverse: edwardObverse({
      strike: { x: 8, y: -6, turn: 4, scale: 1.04 },
      surface: { wear: 0.54, weak: 0.5 },
      flan: {
        snips: [
          [140, 22],
          [300, 16],
        ],
      },
    }),
    reverse: longCrossReverse({
      strike: { x: -8, y: 4, turn: -5, scale: 1.04 },
      surface: { wear: 0.54, weak: 0.5 },
      extra: [QUATREFOIL],
    }),
  },
  'richard-ii-york-penny': {
    obverse: edwardObverse({
      metal: 'grey',
      bust: { hair: 'bushy', breast: crossPattee(0, 206, 34) },
      strike: { x: -12, y: 6, turn: -8, scale: 1.06 },
      surface: { wear: 0.56, weak: 0.6, grain: 0.5 },
      flan: {
        across: 500,
        down: 482,
        uneven: 0.02,
        snips: [
          [200, 26],
          [350, 14],
        ],
      },
    }),
    reverse: longCrossReverse({
      metal: 'grey',
      strike: { x: 10, y: 8, turn: 9, scale: 1.06 },
      surface: { wear: 0.56, weak: 0.6, grain: 0.5 },
      extra: [QUATREFOIL],
    }),
  },
  'henry-vi-york-penny': {
    // The stops are a rosette and a mascle, which a legend has no signs for.
    obverse: ({ parts: [text = ''], hand }) =>
      edwardObverse({
        strike: { x: 4, y: 6, turn: 3, scale: 1.02 },
        surface: { wear: 0.44 },
        extra: [{ draw: mullet(-190, -150) + mullet(190, -150), height: 13, round: 8 }],
      })({ parts: [text.replace('·', '✿').replace('·', '◇')], hand }),
    reverse: longCrossReverse({
      strike: { x: 4, y: -6, turn: -4, scale: 1.02 },
      surface: { wear: 0.44 },
      extra: [QUATREFOIL],
    }),
  },
  'sold-henry-vi-half-groat': {
    obverse: groatObverse([{ draw: ring(-150, 126, 22, 13) + ring(150, 126, 22, 13), height: 13, round: 7 }], {
      strike: { x: 0, y: 2, turn: 2 },
      surface: { wear: 0.26, tone: 0.45 },
      flan: { shape: 'round', uneven: 0.011 },
    }),
    reverse: groatReverse(
      [
        {
          draw: place(ring(0, -78, 19, 11), 0, 0, 1, 45) + place(ring(0, -78, 19, 11), 0, 0, 1, 225),
          height: 13,
          round: 7,
        },
      ],
      { strike: { x: 4, y: 0, turn: -3 }, surface: { wear: 0.28, tone: 0.45 } },
    ),
  },
  'edward-iv-york-groat': {
    obverse: groatObverse(
      [{ draw: fourLeaves(-152, 178) + fourLeaves(152, 178), height: 14, round: 9 }],
      {
        strike: { x: 10, y: -6, turn: -5, scale: 1.07 },
        surface: { wear: 0.52 },
        flan: {
          shape: 'round',
          across: 500,
          down: 486,
          uneven: 0.02,
          snips: [
            [20, 20],
            [120, 34],
            [250, 22],
          ],
        },
      },
      ({ hand }) => inLine('E', PUNCHES.lombardic, 0, 200, 64, hand),
    ),
    reverse: groatReverse([], { strike: { x: -8, y: 6, turn: 6, scale: 1.12 }, surface: { wear: 0.55, weak: 0.5 } }),
  },
  'edward-iv-york-penny': {
    obverse: (inscription) =>
      edwardObverse({
        metal: 'grey',
        strike: { x: 0, y: 10, turn: 6, scale: 1.16 },
        surface: { wear: 0.56, weak: 0.5, grain: 0.5 },
        flan: {
          across: 500,
          down: 478,
          uneven: 0.024,
          snips: [
            [330, 40],
            [90, 30],
            [200, 26],
          ],
        },
        extra: [sign('B', -204, 120, 110, inscription), { draw: place(KEY, 212, 110, 0.86), height: 13, round: 8 }],
      })(inscription),
    reverse: longCrossReverse({
      metal: 'grey',
      strike: { x: 10, y: 0, turn: -8, scale: 1.16 },
      surface: { wear: 0.56, weak: 0.5, grain: 0.5 },
      extra: [QUATREFOIL],
    }),
  },
  'richard-iii-york-penny': {
    obverse: (inscription) =>
      edwardObverse({
        metal: 'grey',
        bust: { hair: 'bushy' },
        strike: { x: -20, y: 16, turn: -9, scale: 1.26 },
        surface: { wear: 0.74, weak: 0.8, grain: 0.6, pits: 0.5, bent: 0.8 },
        flan: {
          across: 500,
          down: 470,
          uneven: 0.04,
          snips: [
            [300, 50],
            [60, 44],
            [180, 30],
          ],
        },
        extra: [sign('T', -206, 116, 110, inscription), { draw: place(KEY, 212, 110, 0.86), height: 13, round: 8 }],
      })(inscription),
    reverse: longCrossReverse({
      metal: 'grey',
      strike: { x: 24, y: -10, turn: 11, scale: 1.26 },
      surface: { wear: 0.74, weak: 0.8, grain: 0.6, pits: 0.5, bent: 0.8 },
      extra: [QUATREFOIL],
    }),
  },
  'henry-vii-york-penny': {
    obverse: ({ parts: [text = ''], hand }) =>
      hammered(
        [
          beaded(328, 8),
          beaded(484, 8),
          ...rim(text, 'lombardic', hand, { foot: 346, height: 112, from: 6, over: 348, space: 26 }),
          ...moved(enthroned(), 0, 24, 1.14),
        ],
        {
          strike: { x: 12, y: 8, turn: 4, scale: 1.1 },
          surface: { wear: 0.46, weak: 0.6 },
          flan: { shape: 'round', uneven: 0.026 },
        },
      ),
    reverse: ({ parts: [text = 'CIVITAS EBORACI'], hand }) =>
      hammered(
        [
          beaded(328, 8),
          beaded(484, 8),
          ...quartered(fourWords(text), 'lombardic', hand, { foot: 346, height: 112 }),
          { draw: longCross(), height: 13, round: 14, mode: 'over' },
          ...moved(royalShield(), 0, -44, 1.12),
          { draw: place(KEY, -70, 262, 0.62, 205) + place(KEY, 70, 262, 0.62, 155), height: 13, round: 6 },
        ],
        { strike: { x: -10, y: 0, turn: -6, scale: 1.1 }, surface: { wear: 0.46, weak: 0.5 } },
      ),
  },
};
