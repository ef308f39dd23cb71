import { beaded, hammered, moved, rim } from '../die.ts';
import type { Recipes } from '../die.ts';
import { inLine } from '../lettering.ts';
import { smallCross } from '../motifs/crosses.ts';
import { hammer, raven, vikingSword } from '../motifs/saxon.ts';
import type { Layer } from '../relief.ts';
import { bar, crossPattee, dot, place } from '../shapes.ts';
import { PUNCHES } from '../skeletons.ts';
import { crossFace, outer, rims, skinOf, twoLines, W } from './tenth-century.ts';

export const JORVIK: Readonly<Record<string, Recipes>> = {
  'viking-cnut-penny': {
    obverse: ({ hand }) => {
      const one = (text: string, x: number, y: number): Layer => ({
        draw: inLine(text, W, x, y, 126, hand),
        height: 14,
        round: 11,
      });
      return hammered(
        [
          outer,
          {
            draw:
              bar(0, -300, 0, 316, 26, 64, 64) +
              bar(-160, -150, 160, -150, 26, 60, 60) +
              bar(-300, 40, 300, 40, 26, 64, 64),
            height: 15,
            round: 13,
          },
          // As a hand makes the sign of blessing: top, foot, left, right; R, E and X follow C, T and N (Museums Victoria, item 58241).
          one('C', 0, -388),
          one('N', 0, 398),
          one('V', -396, 40),
          one('T', 396, 40),
          one('R', 216, -262),
          one('E', 216, 240),
          one('X', -216, 240),
          { draw: dot(-214, -262, 24) + dot(-270, -60, 17) + dot(272, -60, 17), height: 16, round: 22 },
        ],
        { strike: { x: 4, y: -6, turn: 3 }, surface: skinOf(0.26, { pecks: 0.8 }) },
      );
    },
    reverse: crossFace({ strike: { x: -8, y: 6, turn: -5 }, surface: skinOf(0.28, { pecks: 0.6 }) }, [
      { draw: dot(78, -78, 24) + dot(-78, 78, 24), height: 16, round: 22 },
    ]),
  },
  'st-peter-swordless': {
    obverse: (inscription) =>
      hammered(
        twoLines(
          inscription,
          [
            {
              draw:
                crossPattee(-150, 0, 50) +
                crossPattee(0, 0, 50) +
                crossPattee(150, 0, 50) +
                dot(-250, 0, 24) +
                dot(250, 0, 24),
              height: 15,
              round: 12,
            },
            {
              draw:
                dot(0, -330, 24) +
                dot(-60, -310, 22) +
                dot(60, -310, 22) +
                dot(0, 340, 24) +
                dot(-60, 320, 22) +
                dot(60, 320, 22),
              height: 15,
              round: 20,
            },
          ],
          ['SCIIE', 'TRIMO'],
          156,
        ),
        {
          strike: { x: 6, y: 4, turn: -4 },
          flan: { shape: 'round', across: 500, down: 486, uneven: 0.016 },
          surface: skinOf(0.34),
        },
      ),
    reverse: crossFace({ strike: { x: -14, y: -6, turn: 8 }, surface: skinOf(0.36) }),
  },
  'st-peter-sword': {
    obverse: (inscription) =>
      hammered(
        twoLines(
          inscription,
          [...moved(vikingSword(), 10, 0, 1.2), { draw: place(hammer(60), 130, 84, 0.9), height: 14, round: 12 }],
          ['SCIIIE', 'TRIMO'],
          200,
        ),
        {
          strike: { x: -10, y: 8, turn: 5 },
          surface: skinOf(0.48, { bent: 1.3, weak: 0.5 }),
          flan: { shape: 'round', uneven: 0.018, cracks: [[300, 70]] },
        },
      ),
    reverse: ({ parts: [text = '+EBRAICIT'], hand }) =>
      hammered(
        [
          beaded(272),
          outer,
          ...rim(text, 'wedge', hand, { ...rims, foot: 302, height: 146 }),
          { draw: hammer(176) + dot(-130, -90, 24) + dot(130, -90, 24), height: 17, round: 16 },
        ],
        { strike: { x: 12, y: 0, turn: -9 }, surface: skinOf(0.5, { bent: 1.3, weak: 0.5 }) },
      ),
  },
  'raven-replica': {
    obverse: ({ parts: [text = '+ANLAF CVNVNC'], hand }) => ({
      ...hammered(
        [
          beaded(300),
          outer,
          ...rim(text, 'wedge', hand, { ...rims, foot: 324, height: 118 }),
          ...moved(raven(), 0, -4, 1.14),
        ],
        {
          metal: 'pewter',
          flan: { shape: 'round', uneven: 0.006, edge: 18, thick: 15 },
          surface: { wear: 0.3, weak: 0.05, grain: 0.24, pits: 0.5, scratches: 0.3, bent: 0.15, tone: 0.55, dirt: 0.2 },
        },
      ),
      after: [{ draw: inLine('COPY', PUNCHES.milled, 0, 262, 46, hand), height: 7, mode: 'sink' as const, round: 4 }],
    }),
    reverse: ({ parts: [text = '+AÐELFERD MINETR'], hand }) =>
      hammered(
        [
          beaded(286),
          outer,
          ...rim(text, 'wedge', hand, { ...rims, foot: 312, height: 130 }),
          { draw: smallCross(130), height: 15, round: 13 },
        ],
        {
          metal: 'pewter',
          surface: { wear: 0.3, weak: 0.05, grain: 0.24, pits: 0.5, scratches: 0.3, bent: 0.15, tone: 0.55, dirt: 0.2 },
        },
      ),
  },
};
