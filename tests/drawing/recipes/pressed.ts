import { milled, moved, rim, rimBand, toothed, turnedRound } from '../die.ts';
import type { Recipes } from '../die.ts';
import { inLine } from '../lettering.ts';
import { cliffordsTower, minsterBurning, westFront } from '../motifs/buildings.ts';
import { wreath } from '../motifs/east.ts';
import { head } from '../motifs/heads.ts';
import { saintGeorge } from '../motifs/riders.ts';
import type { Layer } from '../relief.ts';
import { box, oval, place, stroke } from '../shapes.ts';
import { PUNCHES } from '../skeletons.ts';

const line = (text: string, y: number, high: number, hand: () => number, most = 620): Layer => ({
  draw: inLine(text, PUNCHES.milled, 0, y, high, hand, most),
  height: 9,
  round: 5,
});

const MEDAL = {
  metal: 'pewter',
  surface: { wear: 0.22, weak: 0.05, grain: 0.12, pits: 0.15, scratches: 0.7, bent: 0.15, tone: 0.55, dirt: 0.25 },
} as const;
const bruise = (angle: number): Layer => ({
  draw: place(oval(0, -496, 46, 26), 0, 0, 1, angle),
  height: 15,
  mode: 'sink',
  round: 22,
});

/** Pieces of the screw press and the steam press after 1790. */
export const PRESSED: Readonly<Record<string, Recipes>> = {
  'york-halfpenny-1795': {
    obverse: ({ parts: [text = 'YORK 1795'], hand }) =>
      milled(
        [
          ...toothed(490, 18, 130),
          ...rim(text.split(' ')[0] ?? '', 'milled', hand, {
            foot: 384,
            height: 76,
            from: -60,
            over: 120,
            set: 'middle',
          }),
          ...rim(text.split(' ')[1] ?? '', 'milled', hand, {
            foot: 452,
            height: 70,
            from: 210,
            over: 60,
            outward: true,
            set: 'middle',
          }),
          ...moved(westFront(), 0, 46, 1.1),
        ],
        { metal: 'copper', surface: { wear: 0.14, tone: 0.65, scratches: 0.3 } },
      ),
    reverse: ({ parts: [text = 'CLIFFORDS TOWER'], hand }) =>
      milled(
        [
          ...toothed(490, 18, 130),
          ...rim(text, 'milled', hand, { foot: 388, height: 72, from: 228, over: 264, space: 70 }),
          ...moved(cliffordsTower(), 0, 70, 1.06),
        ],
        { metal: 'copper', surface: { wear: 0.16, tone: 0.65, scratches: 0.3 } },
      ),
  },
  'minster-medal-1829': {
    obverse: ({ parts: [text = 'YORK MINSTER'], hand }) =>
      milled(
        [
          { draw: rimBand(500, 470), height: 13, round: 12 },
          ...rim(text, 'milled', hand, {
            foot: 450,
            height: 62,
            from: 224,
            over: 88,
            outward: true,
            set: 'middle',
            space: 60,
          }),
          ...moved(minsterBurning(), 0, 56, 1.06),
        ],
        { ...MEDAL, after: [bruise(64)] },
      ),
    reverse: ({ hand }) =>
      milled(
        [
          { draw: rimBand(500, 470), height: 13, round: 12 },
          { draw: wreath(392, 16, 86), height: 9, round: 6 },
          line('THE CHOIR', -158, 66, hand, 460),
          line('DESTROYED', -76, 62, hand, 520),
          line('BY FIRE', 6, 66, hand),
          line('FEB 2', 90, 66, hand),
          line('1829', 176, 76, hand),
        ],
        { ...MEDAL, after: [bruise(296)] },
      ),
    edge: () => ({
      layers: [{ draw: box(-520, -62, 1040, 11) + box(-520, 51, 1040, 11), height: 9, round: 6 }],
      after: [
        { draw: oval(148, -54, 46, 34), height: 22, mode: 'sink', round: 30 },
        { draw: stroke('M110 -24Q150 0 196 -28', 9), height: 7, round: 5 },
      ],
      flan: { shape: 'drawn', path: 'M-494 -58L494 -60Q500 0 494 60L-494 58Q-500 0 -494 -58Z', edge: 22, thick: 16 },
      metal: 'pewter',
      surface: { wear: 0.2, weak: 0, grain: 0.2, pits: 0.25, scratches: 0.8, bent: 0.1, tone: 0.5, dirt: 0.2 },
    }),
  },
  'victoria-sovereign-1872': {
    obverse: ({ parts: [text = ''], hand }) =>
      milled(
        [
          ...toothed(492, 18, 150),
          ...rim(text, 'milled', hand, { foot: 412, height: 50, from: 206, over: 308, space: 60 }),
          ...turnedRound(moved(head({ hair: 'bun', bust: 'neck', young: true }), 24, -4, 1.42)),
        ],
        { metal: 'gold', surface: { wear: 0.16, tone: 0.3, scratches: 0.6, grain: 0.08, pits: 0.03 } },
      ),
    reverse: ({ hand }) =>
      milled(
        [
          ...toothed(492, 18, 150),
          { draw: box(-290, 322, 580, 8), height: 8, round: 4 },
          ...moved(saintGeorge(), 6, 8, 1.04),
          ...rim('1872', 'milled', hand, { foot: 446, height: 52, from: 205, over: 50, outward: true, set: 'middle' }),
          { draw: inLine('B.P.', PUNCHES.milled, 256, 344, 18, hand), height: 4, round: 3 },
        ],
        { metal: 'gold', surface: { wear: 0.18, tone: 0.3, scratches: 0.6, grain: 0.08, pits: 0.03 } },
      ),
  },
};
