import { beaded, hammered, moved, rim } from '../die.ts';
import type { Recipes } from '../die.ts';
import { inLine } from '../lettering.ts';
import { saintMichael } from '../motifs/riders.ts';
import { CROWN, rose } from '../motifs/royal.ts';
import { bar, beads, box, crescent, dot, fill, leaf, oval, place, ring, round, stroke } from '../shapes.ts';
import { PUNCHES } from '../skeletons.ts';

const lily =
  leaf(0, -34, 76, 30, 90) +
  crescent(-22, -8, 20, 26, 95, 290, 15) +
  crescent(22, -8, 20, 26, -110, 85, 15) +
  box(-24, 4, 48, 9) +
  bar(0, 6, 0, 34, 10, 18);
export const TOKENS: Readonly<Record<string, Recipes>> = {
  'york-token-1666': {
    obverse: ({ parts: [text = 'MARMADVKE SKELDER'], hand }) =>
      hammered(
        [
          beaded(322, 8),
          beaded(480, 9),
          ...rim(text, 'roman', hand, { foot: 344, height: 104, from: 6, over: 350, space: 40 }),
          {
            draw: fill(
              'M60 -214Q-190 -190 -190 10Q-190 200 60 226Q-40 150 -44 92L4 66Q-20 58 -22 44L-4 34Q-26 20 -18 10L34 -6Q0 -40 -14 -66Q-20 -140 60 -214Z',
            ),
            height: 17,
            round: 34,
          },
          {
            draw: crescent(-66, -36, 34, 20, 190, 350, 11) + dot(-60, -30, 11) + stroke('M-96 60Q-70 84 -40 70', 8),
            height: 7,
            round: 5,
          },
          {
            draw:
              place(round(bar(0, 0, 0, -40, 9, 14, 3), 6), 150, -90) +
              place(round(bar(0, 0, 0, -40, 9, 14, 3), 6), 170, 90),
            height: 13,
            round: 8,
          },
        ],
        {
          metal: 'brass',
          strike: { x: 6, y: -4, turn: 3 },
          surface: { wear: 0.54, grain: 0.4, pits: 0.5, corrosion: 0.08, tone: 0.75, dirt: 0.5 },
          flan: { shape: 'round', uneven: 0.012 },
        },
      ),
    reverse: ({ parts: [text = 'IN YORKE 1666'], hand }) =>
      hammered(
        [
          beaded(322, 8),
          beaded(480, 9),
          ...rim(`${text} *`, 'roman', hand, { foot: 344, height: 104, from: 6, over: 350, space: 40 }),
          {
            draw:
              inLine('S', PUNCHES.roman, 0, -96, 150, hand) +
              inLine('M', PUNCHES.roman, -112, 110, 150, hand) +
              inLine('A', PUNCHES.roman, 112, 110, 150, hand) +
              dot(0, 110, 17),
            height: 14,
            round: 9,
          },
        ],
        {
          metal: 'brass',
          strike: { x: -8, y: 6, turn: -5 },
          surface: { wear: 0.54, grain: 0.4, pits: 0.5, corrosion: 0.1, tone: 0.75, dirt: 0.5 },
        },
      ),
  },
  'lead-token': {
    obverse: () => ({
      layers: [
        { draw: bar(-4, -330, 8, 350, 44, 54, 50) + bar(-340, 12, 336, -8, 42, 50, 54), height: 20, round: 24 },
        {
          draw: dot(-166, -170, 56) + dot(170, -160, 52) + dot(-160, 176, 54) + dot(174, 170, 58),
          height: 24,
          round: 50,
        },
        { draw: ring(0, 0, 420, 34), height: 15, round: 17 },
        { draw: beads(470, 30, 17), height: 9, round: 15 },
      ],
      flan: { shape: 'round', across: 500, down: 478, uneven: 0.03, edge: 46, thick: 28, chips: [[250, 30]] },
      strike: { x: 16, y: -10, turn: 9, scale: 1 },
      metal: 'lead',
      surface: {
        wear: 0.6,
        weak: 0.5,
        grain: 0.9,
        pits: 1.2,
        corrosion: 0.3,
        scratches: 0.6,
        bent: 1,
        tone: 0.6,
        dirt: 0.45,
      },
    }),
  },
  'jeton-rose-orb': {
    obverse: ({ parts: [text = 'HANNS KRAVWINCKEL IN NVR'], hand }) =>
      hammered(
        [
          beaded(340, 7),
          beaded(480, 8),
          ...rim(text, 'roman', hand, { foot: 358, height: 92, from: 4, over: 352, space: 34 }),
          { draw: rose(70), height: 14, round: 9 },
          { draw: round(place(CROWN, 0, -196, 0.74), 3) + round(place(lily, 0, -196, 1), 3, 60), height: 12, round: 7 },
        ],
        {
          metal: 'brass',
          strike: { x: 4, y: 4, turn: 4 },
          surface: { wear: 0.34, grain: 0.24, tone: 0.6, bent: 0.7 },
          flan: { shape: 'round', uneven: 0.009, edge: 8, thick: 7 },
        },
      ),
    reverse: ({ parts: [text = 'GOTES GABEN SOL MAN LOB'], hand }) =>
      hammered(
        [
          beaded(340, 7),
          beaded(480, 8),
          ...rim(text, 'roman', hand, { foot: 358, height: 92, from: 4, over: 352, space: 34 }),
          {
            draw:
              round(crescent(0, -166, 122, 122, 168, 372, 16, 0.8), 3) +
              round(fill('M-40 -150L0 -250L40 -150L24 -146L0 -206L-24 -146Z'), 3, 60),
            height: 12,
            round: 7,
          },
          { draw: dot(0, 44, 104), height: 19, round: 90 },
          {
            draw:
              stroke('M-104 44L104 44M0 44L0 -58', 17) +
              bar(0, -60, 0, -164, 15, 22, 34) +
              bar(-46, -118, 46, -118, 14, 30),
            height: 11,
            round: 8,
          },
        ],
        {
          metal: 'brass',
          strike: { x: -8, y: 2, turn: -6 },
          surface: { wear: 0.36, grain: 0.24, tone: 0.6, bent: 0.7 },
        },
      ),
  },
  'coin-weight-angel': {
    obverse: () =>
      hammered([{ draw: beads(436, 60, 12), height: 11, round: 11 }, ...moved(saintMichael(), 0, 0, 1.26)], {
        metal: 'brass',
        strike: { x: 6, y: -4, turn: 3 },
        flan: { shape: 'square', across: 486, down: 480, uneven: 0.008, edge: 34, thick: 26, snips: [] },
        surface: { wear: 0.6, weak: 0.3, grain: 0.4, pits: 0.6, scratches: 0.9, bent: 0.2, tone: 0.8, dirt: 0.5 },
      }),
    reverse: () =>
      hammered(
        [
          { draw: ring(0, 0, 436, 13), height: 9, round: 7 },
          {
            draw: fill(
              'M-96 230L-110 40Q-190 -20 -196 -70Q-176 -100 -150 -66L-104 -20L-112 -190Q-96 -226 -74 -190L-52 -40L-40 -230Q-20 -266 2 -230L6 -40L36 -214Q60 -244 76 -206L62 -20L104 -136Q130 -160 138 -124L110 60L92 230Z',
            ),
            height: 17,
            round: 30,
          },
          {
            draw: oval(-274, 40, 26, 58, 6) + oval(262, 22, 44, 36) + oval(280, 74, 30, 26),
            height: 4,
            round: 44,
            soft: true,
          },
        ],
        {
          metal: 'brass',
          strike: { x: -10, y: 6, turn: -7 },
          surface: { wear: 0.7, weak: 0.6, grain: 0.45, pits: 0.7, scratches: 0.9, bent: 0.2, tone: 0.8, dirt: 0.5 },
        },
      ),
  },
};
